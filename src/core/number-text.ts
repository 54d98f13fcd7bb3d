// Reads the number at the start of a text: both decimal marks, mixed fractions, and a refusal of what can be read two ways.
// Knows nothing of units: what follows the number is handed back.

/** Why no number could be read; `readings` names both ways without a thousands mark. */
export type NumberTrouble =
  | { readonly why: 'not-a-number' | 'exponent' | 'thousands-mark' }
  | { readonly why: 'two-readings'; readonly readings: readonly [string, string] }

export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly trouble: NumberTrouble; readonly rest: string }

const vulgar: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}
/** Every fraction that is one sign, as one text: for patterns. */
export const VULGAR = Object.keys(vulgar).join('')

const digitsAndMarks = /^(?:\d+(?:[.,]\d+)*|[.,]\d+)/
const vulgarAlone = new RegExp(`^([${VULGAR}])`)
const vulgarAfter = new RegExp(`^ ?([${VULGAR}])`)
const fractionAlone = /^(\d{1,4})[/⁄](\d{1,4})(?![\d.,/])/
const fractionAfter = /^(?: {1,2}|-|‐|‑)(\d{1,4})[/⁄](\d{1,4})(?![\d.,/])/
// 1e3, 1E-3 and 0x10 are how machines write, and `1e3 N·m` typed by hand is a slip: refused, never read.
const exponentAfter = /^\s?[eE][+\-−]?\d/
const hexAfter = /^[xX][0-9a-fA-F]/
// A space, a no-break space or an apostrophe between digits may be a thousands mark, a foot mark or a forgotten comma.
const groupAfter = /^[ \u00a0\u2009\u202f'’]\d{3}(?!\d|[.,]\d{4}|\/|⁄)/

const ok = (value: number, rest: string): NumberRead => ({ ok: true, value, rest })
const bad = (trouble: NumberTrouble, rest: string): NumberRead => ({ ok: false, trouble, rest })

/** Reads `13,5`, `14 1/2`, `14-1/2`, `2½`, `.5`, `-5`; refuses `1,234`, `1 234`, `1e3`, `0x10`, `1.2.3`, `∞`. */
export const readNumber = (text: string): NumberRead => {
  const signed = /^([+\-−–]?)\s?/.exec(text) as RegExpExecArray
  const sign = signed[1] !== '' && signed[1] !== '+' ? -1 : 1
  const body = text.slice(signed[0].length)
  const unsigned = readUnsigned(body)
  return unsigned.ok ? ok(sign === -1 ? -unsigned.value : unsigned.value, unsigned.rest) : unsigned
}

const readUnsigned = (text: string): NumberRead => {
  const lone = vulgarAlone.exec(text)
  if (lone?.[1] !== undefined) return ok(vulgar[lone[1]] as number, text.slice(1))
  const fraction = fractionAlone.exec(text)
  if (fraction) {
    const part = divide(fraction[1], fraction[2])
    return part === undefined ? bad({ why: 'not-a-number' }, text) : ok(part, text.slice(fraction[0].length))
  }
  const run = digitsAndMarks.exec(text)
  if (!run) return bad({ why: 'not-a-number' }, text)
  const rest = text.slice(run[0].length)
  if (exponentAfter.test(rest)) return bad({ why: 'exponent' }, rest)
  if (hexAfter.test(rest)) return bad({ why: 'not-a-number' }, rest)
  if (groupAfter.test(rest) && /^\d{1,3}$/.test(run[0])) return bad({ why: 'thousands-mark' }, rest)
  const whole = readMarks(run[0])
  if ('why' in whole) return bad(whole, rest)
  return /^\d+$/.test(run[0]) ? withFraction(whole.value, rest) : ok(whole.value, rest)
}

const withFraction = (whole: number, rest: string): NumberRead => {
  const glyph = vulgarAfter.exec(rest)
  if (glyph?.[1] !== undefined) return ok(whole + (vulgar[glyph[1]] as number), rest.slice(glyph[0].length))
  const fraction = fractionAfter.exec(rest)
  if (!fraction) return ok(whole, rest)
  const part = divide(fraction[1], fraction[2])
  if (part === undefined || part >= 1 || !ruled.has(Number(fraction[2]))) return bad({ why: 'not-a-number' }, rest)
  return ok(whole + part, rest.slice(fraction[0].length))
}

/** Parts that rulers and dials are marked in: behind a whole number nothing else is a fraction. */
export const ruled: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 8, 10, 16, 32, 64])

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b))

/** The readings of a slash between two whole numbers that may be one value or two; undefined where it is surely a fraction.
 *  `inches`: a length in inches or feet, where sixteenths and the like are everyday. */
export const slashTwoWays = (text: string, inches: boolean): [string, string] | undefined => {
  const slashed = fractionAlone.exec(text.trim().replace(/^[+\-−–]\s?/, ''))
  if (!slashed) return undefined
  const [top, bottom] = [Number(slashed[1]), Number(slashed[2])]
  const lowest = common(top, bottom) === 1
  const onRuler = inches && lowest && (bottom === 3 || [2, 4, 8, 16, 32, 64].includes(bottom)) && top < 4 * bottom
  const everyday =
    lowest &&
    top < 4 * bottom &&
    ([2, 3, 4].includes(bottom) || (top === 1 && bottom <= 10) || (bottom === 8 && top < 7))
  return onRuler || everyday ? undefined : [`${top} to ${bottom}`, String(Number((top / bottom).toPrecision(4)))]
}

const divide = (top: string | undefined, bottom: string | undefined): number | undefined => {
  const part = Number(top) / Number(bottom)
  return Number.isFinite(part) ? part : undefined
}

const readMarks = (run: string): { value: number } | NumberTrouble => {
  const marks = run.match(/[.,]/g) ?? []
  const groups = run.split(/[.,]/)
  const [first = '', second = ''] = groups
  if (marks.length === 0) return { value: Number(run) }
  if (marks.length === 1) {
    const decimal = `${first === '' ? '0' : first}.${second}`
    // A thousands mark is possible only before exactly three digits and after one to three that do not begin with 0.
    if (second.length === 3 && /^[1-9]\d{0,2}$/.test(first)) {
      return { why: 'two-readings', readings: [first + second, decimal] }
    }
    return { value: Number(decimal) }
  }
  // 1,234.5 and 1.234,5 can be read one way only: all marks but the last are alike, the last differs, groups of three.
  const last = marks.at(-1)
  const thousands = groups.slice(0, -1)
  const alike = marks.slice(0, -1).every((mark) => mark === marks[0] && mark !== last)
  const grouped = /^[1-9]\d{0,2}$/.test(first) && thousands.slice(1).every((group) => group.length === 3)
  if (alike && grouped) return { value: Number(`${thousands.join('')}.${groups.at(-1)}`) }
  return { why: 'thousands-mark' }
}
