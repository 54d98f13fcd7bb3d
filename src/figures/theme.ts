// How figures look: ink, steel, the hand's colour, the fastener's colour. Light, dark, print, or whatever the reader has.

export const themes = ['auto', 'light', 'dark', 'print'] as const
export type Theme = (typeof themes)[number]

interface Palette {
  readonly paper: string
  readonly ink: string
  readonly steel: string
  readonly faint: string
  readonly hand: string
  readonly fastener: string
  readonly warning: string
}

const palettes: Readonly<Record<'light' | 'dark' | 'print', Palette>> = {
  light: {
    paper: '#fbfaf7',
    ink: '#1b1e20',
    steel: '#5d6a73',
    faint: '#6f6a60',
    hand: '#a8430c',
    fastener: '#0f6b5c',
    warning: '#9c1c2e',
  },
  dark: {
    paper: '#15181a',
    ink: '#f1efe9',
    steel: '#9fb0bb',
    faint: '#b3afa5',
    hand: '#ffab66',
    fastener: '#6fd6c1',
    warning: '#ff8f9b',
  },
  print: {
    paper: '#ffffff',
    ink: '#000000',
    steel: '#444444',
    faint: '#333333',
    hand: '#000000',
    fastener: '#000000',
    warning: '#000000',
  },
}

const colours = (palette: Palette): string =>
  `text{stroke:${palette.paper}}.paper{fill:${palette.paper}}.ink{fill:${palette.ink}}.faint{fill:${palette.faint}}.hand{fill:${palette.hand}}.nut{fill:${palette.fastener}}.warn{fill:${palette.warning}}` +
  `.steel{fill:${palette.steel}}.bar{stroke:${palette.steel}}.rule{stroke:${palette.ink}}.rule-tip{fill:${palette.ink}}.axis{stroke:${palette.faint}}` +
  `.pull{stroke:${palette.hand}}.pull-tip{fill:${palette.hand}}.link{stroke:${palette.fastener}}.hole{fill:${palette.paper};stroke:${palette.steel}}.grip{fill:${palette.ink}}.ring{fill:none;stroke:${palette.hand}}`

const shapes =
  "text{paint-order:stroke;stroke-width:9px;stroke-linejoin:round;font-family:Inter,'Helvetica Neue',Arial,sans-serif}.big{font-weight:700}.strong{font-weight:600}" +
  '.bar{stroke-linecap:round}.link{stroke-linecap:round}.rule,.axis{stroke-width:2.5;fill:none}.axis{stroke-dasharray:10 8}.pull{stroke-width:9;stroke-linecap:butt}'

export const styleOf = (theme: Theme): string => {
  if (theme !== 'auto') return shapes + colours(palettes[theme])
  return `${shapes}${colours(palettes.light)}@media (prefers-color-scheme:dark){${colours(palettes.dark)}}@media print{${colours(palettes.print)}}`
}
