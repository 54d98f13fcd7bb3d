// How numbers look to people: one rounding policy, and the decimal mark of the reader's language.
// Never a thousands mark, never an exponent, never a trailing zero behind the mark (30.0 is misread as 300).

/** `decimal` is the mark between units and tenths: '.' or ','. */
export interface NumberStyle {
  readonly decimal: '.' | ','
}

export const pointStyle: NumberStyle = { decimal: '.' }
export const commaStyle: NumberStyle = { decimal: ',' }

/** The number style of a BCP 47 locale, from the platform's own locale data. */
export const styleOf = (locale: string): NumberStyle => {
  const mark = new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === 'decimal')
  return mark?.value === ',' ? commaStyle : pointStyle
}

/** How many significant figures a number is shown with: four where its first digit is 1, else three. */
export const figuresOf = (value: number): 3 | 4 => {
  const size = Math.abs(value)
  const lead = size / 10 ** Math.floor(Math.log10(size))
  // A hair below 2 is shown as 2 with three figures or with four: the last bit of a logarithm cannot matter.
  return lead >= 1 && lead < 2 ? 4 : 3
}

// Through a double and back drops the zeros behind the mark; only very small and very large numbers come with an exponent.
const rounded = (value: number, figures: number): string => {
  const shortest = String(Number(value.toPrecision(figures)))
  return shortest.includes('e') ? expand(shortest) : shortest === '-0' ? '0' : shortest
}

/** Which way a number that is a bound is rounded: "at most" never up, "at least" never down. */
export type Toward = 'down' | 'up'

// One step of the last figure shown, toward the side where the bound still holds.
const roundedToward = (value: number, figures: number, toward: Toward): string => {
  const nearest = Number(value.toPrecision(figures))
  const slack = Math.abs(value) * 1e-12
  if (toward === 'down' ? nearest <= value + slack : nearest >= value - slack) return rounded(value, figures)
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - figures + 1)
  return rounded(nearest + (toward === 'down' ? -step : step), figures)
}

/** A number rounded for people: 78.3, 144.7, 0.0123, 2350. Throws (a bug) on what is not finite. */
export const showNumber = (value: number, style: NumberStyle = pointStyle, toward?: Toward): string => {
  if (!Number.isFinite(value)) throw new Error('bug: a number that is not finite was about to be shown')
  const text = toward ? roundedToward(value, figuresOf(value), toward) : rounded(value, figuresOf(value))
  return text.replace('.', style.decimal)
}

const WORKING_FIGURES = 5

/** A number inside a formula: figures enough that the printed arithmetic gives the printed result. */
export const workNumber = (value: number, style: NumberStyle = pointStyle): string => {
  if (!Number.isFinite(value)) throw new Error('bug: a number that is not finite was about to be shown')
  return rounded(value, WORKING_FIGURES).replace('.', style.decimal)
}

/** A number to as many figures as it was typed with (at most 12): for echoing what went in. */
export const echoNumber = (value: number, style: NumberStyle = pointStyle): string => {
  if (!Number.isFinite(value)) throw new Error('bug: a number that is not finite was about to be shown')
  return rounded(value, 12).replace('.', style.decimal)
}

/**
 * A number that can be typed back and is read as exactly this number: shortest digits that round-trip,
 * with one more zero where it would otherwise look like a thousands mark (1.2340, not 1.234).
 */
export const writeNumber = (value: number, style: NumberStyle = pointStyle): string => {
  if (!Number.isFinite(value)) throw new Error('bug: a number that is not finite was about to be written')
  const shortest = String(value)
  const plain = shortest.includes('e') ? expand(shortest) : shortest
  const guarded = /^-?[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain
  return guarded.replace('.', style.decimal)
}

const expand = (shortest: string): string => {
  const [mantissa = '0', exponent = '0'] = shortest.split('e')
  const sign = mantissa.startsWith('-') ? '-' : ''
  const [whole = '0', fraction = ''] = mantissa.replace('-', '').split('.')
  const digits = whole + fraction
  const point = whole.length + Number(exponent)
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`
  if (point >= digits.length) return sign + digits + '0'.repeat(point - digits.length)
  return `${sign}${digits.slice(0, point)}.${digits.slice(point)}`
}
