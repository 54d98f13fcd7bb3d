// How one screen shows the desk: kept in a cookie of that browser, read by the style sheet and the script. Nothing personal.

export const distances = ['near', 'arm', 'far'] as const
export const idles = ['0', '60', '120', '300'] as const
export const contrasts = ['usual', 'high'] as const
export const keyWhen = ['touch', 'always'] as const

export interface ScreenSetting {
  /** Points of the screen to a real millimetre. */
  readonly mm: number
  /** Height of a key [mm]. */
  readonly key: number
  readonly far: (typeof distances)[number]
  readonly idle: (typeof idles)[number]
  readonly contrast: (typeof contrasts)[number]
  readonly keys: (typeof keyWhen)[number]
}

// A CSS millimetre, where nobody has measured.
const usual: ScreenSetting = { mm: 3.78, key: 15, far: 'near', idle: '0', contrast: 'usual', keys: 'touch' }

const within = (text: string | null, least: number, most: number, without: number): number => {
  const value = Number((text ?? '').replace(',', '.'))
  return text !== null && text !== '' && value >= least && value <= most ? value : without
}

const oneOf = <T extends string>(list: readonly T[], text: string | null, without: T): T =>
  list.find((one) => one === text) ?? without

/** From the fields of the form or from the cookie; what cannot be used is as usual. */
export const readScreen = (told: URLSearchParams): ScreenSetting => ({
  mm: within(told.get('mm'), 1.5, 20, usual.mm),
  key: within(told.get('key'), 9, 30, usual.key),
  far: oneOf(distances, told.get('far'), usual.far),
  idle: oneOf(idles, told.get('idle'), usual.idle),
  contrast: oneOf(contrasts, told.get('contrast'), usual.contrast),
  keys: oneOf(keyWhen, told.get('keys'), usual.keys),
})

export const screenOf = (cookie: string | undefined): ScreenSetting => {
  const [, value = ''] = /(?:^|;\s*)screen=([^;]{0,200})/.exec(cookie ?? '') ?? []
  return readScreen(new URLSearchParams(decode(value)))
}

const decode = (text: string): string => {
  try {
    return decodeURIComponent(text)
  } catch {
    return ''
  }
}

const YEAR_S = 31_536_000

/** Readable by the script of the page, which needs it before the first touch. */
export const cookieOf = (setting: ScreenSetting): string => {
  const told = new URLSearchParams(
    Object.entries(setting).map(([name, value]): [string, string] => [name, String(value)]),
  )
  return `screen=${encodeURIComponent(told.toString())}; Path=/; Max-Age=${YEAR_S}; SameSite=Strict`
}

const sizes: Readonly<Record<ScreenSetting['far'], number>> = { near: 1, arm: 1.25, far: 1.7 }

/** What the setting changes, as a sheet of its own behind the common one. */
export const screenSheet = ({ mm, key, far, contrast }: ScreenSetting): string =>
  [
    `:root { --key: ${(mm * key).toFixed(1)}px; --far: ${sizes[far]} }`,
    ...(contrast === 'high'
      ? [
          ':root { --paper: light-dark(#fff, #000); --sheet: light-dark(#fff, #000); --ink: light-dark(#000, #fff); --quiet: light-dark(#000, #fff); --rule: light-dark(#000, #fff) }',
        ]
      : []),
  ].join('\n')
