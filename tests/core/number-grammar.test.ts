// Numbers and units generated together with their answer: whatever way a number is written, it is read as that number or refused.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readNumber, ruled } from '../../src/core/number-text.ts'
import { parseReadings } from '../../src/core/parse-list.ts'
import { parseQuantity } from '../../src/core/parse-quantity.ts'
import { allSpellings } from '../../src/core/unit.ts'
import { SEED } from '../support/random.ts'

const runs = { seed: SEED, numRuns: 2000 }
const mark = fc.constantFrom('.', ',')
const digits = (least: number, most: number) =>
  fc.array(fc.integer({ min: 0, max: 9 }), { minLength: least, maxLength: most }).map((all) => all.join(''))
const whole = fc.integer({ min: 0, max: 9999 })
const fraction = fc.tuple(fc.integer({ min: 1, max: 63 }), fc.integer({ min: 2, max: 64 }))

const read = (text: string): number => {
  const reading = readNumber(text)
  if (!reading.ok) throw new Error(`${text} was refused as ${reading.trouble.why}`)
  expect(reading.rest).toBe('')
  return reading.value
}

describe(`a generated number (seed ${SEED})`, () => {
  it('with a decimal mark is read as it stands, unless the mark may be a thousands mark', () => {
    fc.assert(
      fc.property(whole, mark, digits(1, 6), (before, sign, after) => {
        const text = `${before}${sign}${after}`
        const ambiguous = after.length === 3 && before > 0 && before < 1000
        if (ambiguous) expect(readNumber(text)).toMatchObject({ ok: false, trouble: { why: 'two-readings' } })
        else expect(read(text)).toBe(Number(`${before}.${after}`))
      }),
      runs,
    )
  })

  it('that is a fraction is read as one', () => {
    fc.assert(
      fc.property(fraction, fc.constantFrom('/', '⁄'), ([top, bottom], bar) => {
        expect(read(`${top}${bar}${bottom}`)).toBe(top / bottom)
      }),
      runs,
    )
  })

  it('that is mixed is read as whole and part, or refused where the part is no part', () => {
    fc.assert(
      fc.property(whole, fraction, fc.constantFrom(' ', '-', '‐', '‑', '  '), (before, [top, bottom], gap) => {
        const text = `${before}${gap}${top}/${bottom}`
        if (top < bottom && ruled.has(bottom)) expect(read(text)).toBe(before + top / bottom)
        else expect(readNumber(text)).toMatchObject({ ok: false, trouble: { why: 'not-a-number' } })
      }),
      runs,
    )
  })

  it('with thousands marks and another decimal mark can be read one way only', () => {
    const groups = fc.array(digits(3, 3), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), groups, digits(1, 4), mark, (first, rest, after, thousands) => {
        const decimal = thousands === '.' ? ',' : '.'
        const text = `${[first, ...rest].join(thousands)}${decimal}${after}`
        expect(read(text)).toBe(Number(`${first}${rest.join('')}.${after}`))
      }),
      runs,
    )
  })

  it('with thousands marks alone is refused', () => {
    const groups = fc.array(digits(3, 3), { minLength: 2, maxLength: 4 })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), groups, mark, (first, rest, thousands) => {
        expect(readNumber([first, ...rest].join(thousands)).ok).toBe(false)
      }),
      runs,
    )
  })

  it('with an exponent is refused', () => {
    fc.assert(
      fc.property(whole, fc.constantFrom('e', 'E'), fc.constantFrom('', '+', '-'), whole, (before, e, sign, power) => {
        expect(readNumber(`${before}${e}${sign}${power}`)).toMatchObject({ trouble: { why: 'exponent' } })
      }),
      runs,
    )
  })
})

describe(`a generated unit (seed ${SEED})`, () => {
  const spelled = fc.constantFrom(
    ...[...allSpellings].flatMap(([word, meant]) => meant.map(({ unit, times }) => ({ word, unit, times }))),
  )

  it('is read in any case, with or without space and full stop', () => {
    fc.assert(
      fc.property(
        spelled,
        whole,
        fc.boolean(),
        fc.constantFrom('', ' ', '  '),
        fc.boolean(),
        (one, n, upper, gap, dot) => {
          const name = (upper ? one.word.toUpperCase() : one.word) + (dot && /[a-z]$/.test(one.word) ? '.' : '')
          const reading = parseQuantity(`${n}${gap}${name}`, { input: 'x', dimensions: [one.unit.dimension] })
          expect(reading).toEqual({ ok: true, value: { value: n * one.times, unit: one.unit } })
        },
      ),
      runs,
    )
  })

  it('of another kind is refused as that', () => {
    fc.assert(
      fc.property(spelled, whole, (one, n) => {
        const meant = allSpellings.get(one.word)?.map(({ unit }) => unit.dimension) ?? []
        const other = (['torque', 'length', 'force', 'mass', 'stress', 'percent'] as const).find(
          (dimension) => !meant.includes(dimension),
        )
        const reading = parseQuantity(`${n} ${one.word}`, { input: 'x', dimensions: [other ?? 'torque'] })
        expect(reading).toMatchObject({ ok: false, faults: [{ code: 'unit-wrong-kind' }] })
      }),
      runs,
    )
  })
})

describe(`a generated list of readings (seed ${SEED})`, () => {
  it('is read whatever stands between them, unless a mark may be a thousands mark', () => {
    const readings = fc.array(fc.tuple(fc.integer({ min: 1, max: 999 }), digits(0, 2)), { minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(readings, mark, fc.constantFrom('; ', ';', ', ', ' '), (all, decimal, between) => {
        const texts = all.map(([before, after]) => (after === '' ? `${before}` : `${before}${decimal}${after}`))
        const values = all.map(([before, after]) => Number(`${before}.${after}`))
        const reading = parseReadings([`${texts.join(between)} N·m`], { input: 'x', dimensions: ['torque'] })
        expect(reading.ok && reading.value.map(({ value }) => value)).toEqual(values)
      }),
      runs,
    )
  })
})
