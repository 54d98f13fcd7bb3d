// One measure of free text, at the place where it begins: by the same parsers that read an input, and by what people write around them.
import { readNumber } from '../core/number-text.ts'
import { parseDate } from '../core/parse-date.ts'
import { parseQuantity } from '../core/parse-quantity.ts'
import { parseSize } from '../core/parse-size.ts'
import type { Spelling } from '../core/unit.ts'
import { classNames } from '../tables/property-classes.ts'
import type { Measure } from './measure.ts'
import { numberWordAt } from './number-words.ts'
import { countedAt, unitAt } from './unit-at.ts'

export interface MeasureAt {
  readonly measure: Measure
  readonly end: number
}

// No number and no name of a thread is longer.
const LONGEST = 28
const FIRST_YEAR = 1930
const LAST_YEAR = 2060

const date = /\d{4}-\d{2}-\d{2}(?![\d-])/y
const ratio = /(\d{1,3}(?:[.,]\d{1,3})?)(?:\s?:\s?|\sto\s)1(?![\d:°'"]|[.,]\d|\s?(?:nm|ft|lb|in)(?![a-z]))/y
const times = /(?:x\s?-?\s?)(\d{1,2}(?:[.,]\d)?)(?=\s(?:torque\s)?multipl)/y
const spigot = /\d{1,2}x\d{1,2}(?![\d.,])/y
const metricSize = /m\s?\d{1,3}(?:[.,]5)?(?:\s?[x*]\s?\d(?:[.,]\d{1,3})?)?(?![\da-z]|\.\d)/y
const inchSize =
  /(?:#\d{1,2}\s?-\s?\d{2,3}|(?:\d[- ])?\d{1,2}\/\d{1,2}\s?(?:"|in\.?)?\s?-\s?\d{1,2}|\d{1,2}-(?:24|28|32|40))(?![\d/]|\.\d)(?:\s?un[cfj]+(?![a-z]))?/y
const propertyClass = /(?:a[24]-?[578]0|\d{1,2}\.\d)(?![\d.,]\d|[\d])/y
const feetAndInches =
  /\d{1,2}\s?(?:'|ft\.?|foot|feet)\s?\d{1,2}(?:[\s-]\d{1,2}\/\d{1,2}|\.\d{1,2})?\s?(?:"|in(?:ch(?:es)?)?(?![a-z]))/y
// `2 -1/4`, `1- 1/2`: a mixed number with a space too many, as long as a unit of length follows.
const looseMixed = /(\d{1,2})\s?-\s?(\d{1,2}\/\d{1,2})(?=\s?(?:"|in(?![a-z])|inch))/y
const partNumber = /[a-z]{0,12}\d[a-z\d-]{0,24}/y

const matchAt = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at
  return pattern.exec(text)
}

const noise = (raw: string, value = Number.NaN): Measure => ({ kind: 'noise', value, raw })

const SLASH_OF_A_UNIT = /[a-z]\/|\/[a-z]/

const spellingsToMeasure = (spelled: readonly Spelling[], value: number, raw: string): Measure => {
  const weight = spelled.some(({ unit }) => unit.symbol === 'lb')
    ? 'lb'
    : spelled.some(({ unit }) => unit.symbol === 'kg')
      ? 'kg'
      : undefined
  const [first] = spelled as [Spelling]
  return {
    kind: 'quantity',
    value: value * first.times,
    unit: first.unit,
    raw,
    ...(weight ? { weight } : {}),
    ...(raw.slice(0, 8).includes('/') && !SLASH_OF_A_UNIT.test(raw) ? { fraction: true } : {}),
  }
}

const SIZES = [metricSize, inchSize] as const
const SPACE_OF_A_SIZE = /^m\s/

// What else than a digit a name can begin with: M12, #10-32, A2-70, x-4.
const NAMED = /(?:m\s?\d|#\d|a[24]|x[\s\d-])/y

// `grade 5 3/8-16` is a class and a thread, no thread of five inches and more.
const GRADED = /\b(?:grade|gr|class|sae)\.?\s?$/
const SMALL = /\d{1,2}(?=\s)/y

const named = (text: string, at: number): MeasureAt | undefined => {
  const char = text[at] as string
  const digit = char >= '0' && char <= '9'
  NAMED.lastIndex = at
  if (!digit && !NAMED.test(text)) return undefined
  const day = digit ? matchAt(date, text, at) : null
  if (day && parseDate(day[0], '').ok)
    return { measure: { kind: 'date', value: 0, name: day[0], raw: day[0] }, end: at + day[0].length }
  const grade = digit && GRADED.test(text.slice(Math.max(0, at - 8), at)) ? matchAt(SMALL, text, at) : null
  if (grade) return { measure: noise(grade[0], Number(grade[0])), end: at + grade[0].length }
  for (const pattern of SIZES) {
    const found = matchAt(pattern, text, at)
    const size = found && parseSize(found[0].replace(SPACE_OF_A_SIZE, 'm'), '')
    if (
      found &&
      size?.ok &&
      (size.value.pitch === undefined || size.value.pitch.unit.system !== 'inch' || size.value.pitch.value <= 1 / 4)
    ) {
      return {
        measure: {
          kind: 'size',
          value: size.value.diameter.value,
          unit: size.value.diameter.unit,
          name: size.value.name,
          raw: found[0],
        },
        end: at + found[0].length,
      }
    }
  }
  const geared = matchAt(ratio, text, at) ?? matchAt(times, text, at)
  if (geared)
    return {
      measure: { kind: 'ratio', value: Number((geared[1] as string).replace(',', '.')), raw: geared[0] },
      end: at + geared[0].length,
    }
  const square = matchAt(spigot, text, at)
  if (square) return { measure: { kind: 'spigot', value: Number.NaN, raw: square[0] }, end: at + square[0].length }
  const strength = matchAt(propertyClass, text, at)
  const name =
    strength && classNames.find((known) => known.toLowerCase().replace('-', '') === strength[0].replace('-', ''))
  if (strength && name && !unitAt(text, at + strength[0].length)) {
    return {
      measure: { kind: 'class', value: Number.parseFloat(name), name, raw: strength[0] },
      end: at + strength[0].length,
    }
  }
  return undefined
}

const FOUR_DIGITS = /^\d{4}$/
const isYear = (value: number, raw: string): boolean =>
  FOUR_DIGITS.test(raw) && value >= FIRST_YEAR && value <= LAST_YEAR

const temperature = /^\s?(?:f|c|fahrenheit|celsius|centigrade)(?![a-z])/

// `99 101 Nm` are two readings, `1 234 Nm` may be one number: only the second is left to be refused.
const APART = /\d{2,3}(?= \d{3}(?!\d))/y
const ENDED = /[.,](?:\s[\s\S]*)?$|[.,]\s[\s\S]*$/
const RUN = /^[\d.,]+(?:[\s'’]\d{3})*/
const LAST_MARKS = /[.,]+$/

const numbered = (text: string, at: number, typed: string): MeasureAt | undefined => {
  const compound = matchAt(feetAndInches, text, at)
  const feet = compound && parseQuantity(compound[0], { input: '', dimensions: ['length'] })
  if (compound && feet?.ok) {
    return {
      measure: { kind: 'quantity', value: feet.value.value, unit: feet.value.unit, raw: compound[0] },
      end: at + compound[0].length,
    }
  }
  const loose = matchAt(looseMixed, text, at)
  const apart = matchAt(APART, text, at)
  // A mark with a space behind it ends the number: `3/4, 2 in`.
  const window = apart ? apart[0] : loose ? `${loose[1]}-${loose[2]}` : text.slice(at, at + LONGEST).replace(ENDED, '')
  const number = readNumber(window)
  const length = loose ? loose[0].length : window.length - number.rest.length
  const end = at + Math.max(1, length)
  if (!number.ok) {
    // Digits and marks that cannot be read one way stay together, with their unit: the question says why it refuses them.
    const run = RUN.exec(window)?.[0].replace(LAST_MARKS, '') ?? window.slice(0, 1)
    const unit = unitAt(text, at + run.length)
    const stop = unit?.end ?? at + run.length
    const raw = typed.slice(at, stop)
    return unit
      ? { measure: { ...spellingsToMeasure(unit.spelled, Number.parseFloat(run), raw), doubtful: true }, end: stop }
      : { measure: noise(raw), end: stop }
  }
  const unit = unitAt(text, end, typed)
  if (unit) {
    const raw = text.slice(at, unit.end)
    if (unit.spelled.some((one) => one.unit.symbol === '°') && temperature.test(text.slice(unit.end, unit.end + 14))) {
      return { measure: noise(raw, number.value), end: unit.end }
    }
    return { measure: spellingsToMeasure(unit.spelled, number.value, raw), end: unit.end }
  }
  const raw = text.slice(at, end)
  const tally = countedAt(text, end)
  if (tally) return { measure: noise(text.slice(at, tally.end), number.value), end }
  const part = matchAt(partNumber, text, at)
  if (part && part[0].length > raw.length && LETTER.test(part[0]))
    return { measure: noise(part[0]), end: at + part[0].length }
  if (isYear(number.value, raw)) return { measure: noise(raw, number.value), end }
  return { measure: { kind: 'bare', value: number.value, raw, ...(raw.includes('/') ? { fraction: true } : {}) }, end }
}

const MONEY = /[$£€]/
const MONEY_NEXT = /[\s\d]/
const PRICE = /[$£€]\s?[\d.,]+/y
const NUMERIC = /[\d½¼¾⅓⅔⅛⅜⅝⅞]/
const LETTER = /[a-z]/
const DIGIT = /\d/
const FOOT_OR_INCH = /foot|inch/

/** The measure that begins at `at`, a place where no word runs on from the left. */
export const measureAt = (text: string, at: number, typed: string): MeasureAt | undefined => {
  const char = text[at] as string
  if (MONEY.test(char) && MONEY_NEXT.test(text[at + 1] ?? '')) {
    const price = matchAt(PRICE, text, at)
    return price ? { measure: noise(price[0]), end: at + price[0].length } : undefined
  }
  const known = named(text, at)
  if (known) return known
  if (NUMERIC.test(char) || (char === '.' && DIGIT.test(text[at + 1] ?? ''))) return numbered(text, at, typed)
  if (!LETTER.test(char)) return undefined
  const word = numberWordAt(text, at)
  const unit = word && unitAt(text, word.end, typed)
  if (word && unit) {
    const measure = spellingsToMeasure(unit.spelled, word.value, text.slice(at, unit.end))
    const { dimension } = measure.unit ?? {}
    // `a pound`, `an in`: only a foot or an inch is meant as a length by its article.
    if (!word.article || (dimension === 'length' && FOOT_OR_INCH.test(measure.raw))) return { measure, end: unit.end }
  }
  const part = matchAt(partNumber, text, at)
  return part && LETTER.test(part[0]) ? { measure: noise(part[0]), end: at + part[0].length } : undefined
}
