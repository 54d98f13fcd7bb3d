// Text to one quantity, or the fault that says what was got, what is allowed and what to type. One number, one unit, nothing behind it.
import { type Fault, fault, type Read, read, refuse } from './fault.ts'
import { type NumberTrouble, readNumber, slashTwoWays } from './number-text.ts'
import { type Quantity, quantity } from './quantity.ts'
import { writeQuantity } from './quantity-text.ts'
import { type Dimension, everyday, type Spelling, spelledUnits, units, unitsOf } from './unit.ts'

/** No number that a wrench, a bolt or a scale has needs more than this. */
export const LONGEST_QUANTITY = 64

/** Which dimensions an input takes, the likeliest first. A bare number is degrees for an angle and itself for a plain number. */
export interface Wanted {
  readonly input: string
  readonly dimensions: readonly Dimension[]
}

const first = (wanted: Wanted): Dimension => wanted.dimensions[0] as Dimension

const symbols = (wanted: Wanted): string[] =>
  wanted.dimensions.flatMap((dimension) => unitsOf(dimension).map((unit) => unit.symbol))

/** What to type next, with the number that was got where there was one. */
const options = (wanted: Wanted, value: number | undefined): string[] => {
  const shown = value === undefined || !Number.isFinite(value) ? 50 : Math.abs(value)
  const { metric, inch } = everyday[first(wanted)]
  const offered = metric === inch ? [metric] : [metric, inch]
  return offered.map((unit) => writeQuantity(quantity(shown, unit)))
}

const kind = (wanted: Wanted): Record<string, string | string[]> => ({ kind: first(wanted), units: symbols(wanted) })

export const numberFault = (trouble: NumberTrouble, wanted: Wanted, got: string, unitText: string): Fault => {
  if (trouble.why !== 'two-readings') {
    return fault(trouble.why, wanted.input, got, { ...kind(wanted), options: options(wanted, undefined) })
  }
  const spelling = pick(spelledUnits(unitText), wanted)
  // A spelling that is a multiple of its unit (kNm) is said back as it was typed.
  const unit = spelling && spelling.times !== 1 ? unitText.trim() : spelling?.unit.symbol
  const readings = trouble.readings.map((reading) => {
    if (unit === undefined || unit === '1') return reading
    return unit === '°' ? `${reading}°` : `${reading} ${unit}`
  })
  const [, decimal = ''] = trouble.readings
  if (!/^\d{1,3}\.\d{3}$/.test(decimal)) return fault('two-readings', wanted.input, got, { ...kind(wanted), readings })
  // One more zero is no thousands mark any more: what is told to type is then read.
  const [whole = '', part = ''] = readings
  const safe = [whole, part.replace(decimal, `${decimal}0`)]
  return fault('thousands-or-decimal', wanted.input, got, { ...kind(wanted), readings, options: safe })
}

const pick = (spelled: readonly Spelling[], wanted: Wanted): Spelling | undefined => {
  for (const dimension of wanted.dimensions) {
    const found = spelled.find(({ unit }) => unit.dimension === dimension)
    if (found) return found
  }
  return undefined
}

/** Puts a unit's name behind a number, or says what is wrong with it. `got` is the whole text, for the fault. */
export const withUnit = (value: number, unitText: string, wanted: Wanted, got: string): Read<Quantity> => {
  const trimmed = unitText.trim()
  const bare = first(wanted) === 'angle' ? units['°'] : first(wanted) === 'number' ? units['1'] : undefined
  if (trimmed === '') {
    if (bare) return read(quantity(value, bare))
    return refuse(fault('unit-missing', wanted.input, got, { ...kind(wanted), options: options(wanted, value) }))
  }
  const spelled = spelledUnits(trimmed)
  const spelling = pick(spelled, wanted)
  const inches = spelling?.unit === units.in || spelling?.unit === units.ft
  const twoWays = spelling && slashTwoWays(got, inches)
  if (twoWays) return refuse(numberFault({ why: 'two-readings', readings: twoWays }, wanted, got, trimmed))
  if (spelling) return read(quantity(value * spelling.times, spelling.unit))
  if (first(wanted) === 'number' && wanted.dimensions.length === 1)
    return refuse(fault('unit-after-plain-number', wanted.input, got, { extra: trimmed }))
  if (spelled.length > 0) return refuse(wrongKind(value, spelled, wanted, got))
  // 1' 2 may be two inches more or a slip: asked for with both marks, never cut to one foot.
  if (feetThenNumber.test(got.trim()) && wanted.dimensions.includes('length')) {
    return refuse(fault('inches-unmarked', wanted.input, got))
  }
  const known = knownThenMore(trimmed, wanted)
  if (known !== undefined) return refuse(fault('trailing', wanted.input, got, { extra: known }))
  return refuse(fault('unit-unknown', wanted.input, got, { ...kind(wanted), options: options(wanted, value) }))
}

const wrongKind = (value: number, spelled: readonly Spelling[], wanted: Wanted, got: string): Fault => {
  const facts = { ...kind(wanted), options: options(wanted, value) }
  const pound = first(wanted) === 'torque' && spelled.some(({ unit }) => unit === units.lb || unit === units.lbf)
  if (!pound) return fault('unit-wrong-kind', wanted.input, got, facts)
  const meant = [units['lbf·ft'], units['lbf·in']].map((unit) => writeQuantity(quantity(Math.abs(value), unit)))
  return fault('pound-alone', wanted.input, got, { ...facts, options: meant })
}

// No unit is spelled in more pieces than this; looking further would take a time that grows with the square of the text.
const UNIT_PIECES = 16

// "120 Nm please": the longest run of leading words that is a unit, and what stands behind it.
const knownThenMore = (unitText: string, wanted: Wanted): string | undefined => {
  const words = unitText.split(/(?<=[^a-zA-Z°º"'%])|(?=[^a-zA-Z°º"'%])|(?<=[°º"'%])/)
  for (let taken = Math.min(words.length - 1, UNIT_PIECES); taken > 0; taken--) {
    const more = words.slice(taken).join('').trim()
    // N/m is no N: a slash behind a unit makes another unit, which is not to be left out.
    if (pick(spelledUnits(words.slice(0, taken).join('')), wanted)) return more.startsWith('/') ? undefined : more
  }
  return undefined
}

// 1' 2" and 1 ft 2 in: feet, then inches below twelve.
const feetAndInches = /^\s*(\d{1,3})\s*(?:'|′|’|ft\.?|foot|feet)\s*[-‐‑–]?\s*(\d.*|[.,½¼¾⅛⅜⅝⅞].*)$/i

const feetThenNumber = /^\d{1,3}\s*(?:'|′|’|ft\.?|foot|feet)\s*\d+(?:[.,]\d+)?$/i

const readFeetAndInches = (text: string): Quantity | undefined => {
  const parts = feetAndInches.exec(text)
  if (!parts) return undefined
  const inches = readNumber(parts[2] as string)
  if (!inches.ok || inches.value < 0 || inches.value >= 12) return undefined
  if (!spelledUnits(inches.rest).some(({ unit }) => unit === units.in)) return undefined
  return quantity(Number(parts[1]) * 12 + inches.value, units.in)
}

/** One quantity from a text. Faults: empty, too-long, two-readings, not-a-number, unit-missing, unit-unknown, unit-wrong-kind, trailing. */
export const parseQuantity = (text: string, wanted: Wanted): Read<Quantity> => {
  const trimmed = text.trim()
  if (trimmed === '')
    return refuse(fault('empty', wanted.input, text, { ...kind(wanted), options: options(wanted, undefined) }))
  if (text.length > LONGEST_QUANTITY) {
    return refuse(fault('too-long', wanted.input, text, { ...kind(wanted), most: String(LONGEST_QUANTITY) }))
  }
  if (wanted.dimensions.includes('length')) {
    const compound = readFeetAndInches(trimmed)
    if (compound) return read(compound)
  }
  const number = readNumber(trimmed)
  if (!number.ok) return refuse(numberFault(number.trouble, wanted, text, number.rest))
  return withUnit(number.value, number.rest, wanted, text)
}
