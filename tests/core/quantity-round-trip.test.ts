// What is written can be typed back: every unit, in the numbers of every language that a chat client may be set to.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { styleOf } from '../../src/core/number-style.ts'
import { parseQuantity } from '../../src/core/parse-quantity.ts'
import { type Quantity, quantity } from '../../src/core/quantity.ts'
import { showQuantity, writeQuantity } from '../../src/core/quantity-text.ts'
import { units } from '../../src/core/unit.ts'
import { chatLocales } from '../support/locales.ts'
import { SEED } from '../support/random.ts'

const sizes = fc.oneof(
  fc.double({ min: 1e-6, max: 1e12, noNaN: true }),
  fc.integer({ min: 1, max: 999_999 }).map((thousandths) => thousandths / 1000),
  fc.integer({ min: 1, max: 99_999 }),
)
const quantities = fc
  .tuple(fc.constantFrom(...Object.values(units)), sizes, fc.boolean())
  .map(([unit, size, below]) => quantity(below ? -size : size, unit))

const parse = (text: string, q: Quantity) => parseQuantity(text, { input: 'x', dimensions: [q.unit.dimension] })
const runs = { seed: SEED, numRuns: 400 }

describe.each(chatLocales)(`in the numbers of %s (seed ${SEED})`, (locale) => {
  const style = styleOf(locale)

  it('a written quantity is read as exactly that quantity', () => {
    fc.assert(
      fc.property(quantities, (q) => {
        expect(parse(writeQuantity(q, style), q)).toEqual({ ok: true, value: q })
      }),
      runs,
    )
  })

  it('a shown quantity is read within its rounding, or refused exactly where its mark could be a thousands mark', () => {
    fc.assert(
      fc.property(quantities, (q) => {
        const text = showQuantity(q, style)
        const reading = parse(text, q)
        if (/^-?[1-9]\d{0,2}[.,]\d{3}(?!\d)/.test(text)) {
          expect(reading).toMatchObject({ ok: false, faults: [{ code: 'two-readings' }] })
          return
        }
        if (!reading.ok) throw new Error(`${text} was refused`)
        expect(reading.value.unit).toBe(q.unit)
        const figures = Math.abs(q.value).toExponential()[0] === '1' ? 4 : 3
        const lastDigit = 10 ** (Math.floor(Math.log10(Math.abs(q.value))) + 1 - figures)
        expect(Math.abs(reading.value.value - q.value)).toBeLessThanOrEqual((lastDigit / 2) * (1 + 1e-9))
        expect(showQuantity(reading.value, style)).toBe(text)
      }),
      runs,
    )
  })
})

it('both outcomes of a shown quantity occur: 1.235 is refused, 12.35 is read', () => {
  expect(parse(showQuantity(quantity(1.2347, units['N·m'])), quantity(1, units['N·m']))).toMatchObject({ ok: false })
  expect(parse(showQuantity(quantity(12.345, units['N·m'])), quantity(1, units['N·m']))).toMatchObject({ ok: true })
})
