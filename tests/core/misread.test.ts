// Texts that once were, or easily are, read as another value than was meant: wrong by ten, by a thousand, or cut in two.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseAdapters, parseReadings } from '../../src/core/parse-list.ts'
import { parseQuantity } from '../../src/core/parse-quantity.ts'
import { parseSize } from '../../src/core/parse-size.ts'
import { parseTarget } from '../../src/core/parse-target.ts'
import { si } from '../../src/core/quantity.ts'
import { allSpellings, units } from '../../src/core/unit.ts'

const torque = { input: 'torque', dimensions: ['torque'] } as const
const force = { input: 'force', dimensions: ['force'] } as const
const torqueSpellings = [...allSpellings].filter(([, meant]) => meant.some(({ unit }) => unit.dimension === 'torque'))

const codesOf = (read: { ok: boolean; faults?: readonly { code: string }[] }): string[] =>
  read.ok ? [] : (read.faults ?? []).map(({ code }) => code)

describe('a span whose left side is bare', () => {
  it.each(torqueSpellings.map(([word]) => word))('takes the unit as it is spelled on the right: %s', (word) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 9 }), (low, more) => {
        const bare = parseTarget(`${low} to ${low + more} ${word}`, torque)
        const both = parseTarget(`${low} ${word} to ${low + more} ${word}`, torque)
        expect(bare).toEqual(both)
        expect(bare.ok).toBe(true)
      }),
      { numRuns: 20, seed: 20261125 },
    )
  })

  it.each([
    ['1.0–1.2 kNm', 1000, 1200],
    ['10-12 daNm', 100, 120],
    ['20 ± 2 Ncm', 0.18, 0.22],
    ['1.2 ± 0.1 kNm', 1100, 1300],
    ['5-10 cNm', 0.05, 0.1],
  ])('%s is %s to %s N·m', (text, low, high) => {
    const target = parseTarget(text, torque)
    if (!target.ok) throw new Error(codesOf(target).join())
    expect(target.value.low).toBeCloseTo(low, 9)
    expect(target.value.high).toBeCloseTo(high, 9)
  })
})

describe('a slash between two numbers', () => {
  it.each(['100/120 Nm', '60/65 Nm', '60/64 Nm', '7/8 Nm', '10/12 lbf·ft', '60/65-70 Nm'])(
    '%s is asked back, not divided',
    (text) => {
      expect(codesOf(parseTarget(text, torque)).length).toBeGreaterThan(0)
    },
  )

  it.each(['20/21 kg', '19/20 N', '20/21 21/22 kg'])('%s is asked back among readings', (text) => {
    expect(codesOf(parseReadings([text], force))).toContain('two-readings')
  })

  it('names both ways', () => {
    expect(parseTarget('100/120 Nm', torque)).toMatchObject({
      faults: [{ code: 'two-readings', facts: { readings: ['100 to 120 N·m', '0.8333 N·m'] } }],
    })
  })

  it.each([
    ['7/8 in', 0.875],
    ['15/16 in', 0.9375],
    ['63/64 in', 0.984375],
    ['1/2 in', 0.5],
  ])('%s is a length on a ruler', (text, inches) => {
    const length = parseQuantity(text, { input: 'lever', dimensions: ['length'] })
    expect(length.ok && si(length.value)).toBeCloseTo(inches * 0.0254, 12)
  })

  it.each(['15/16 mm', '100/120 mm', '24/32 in', '40/16 ft'])('%s is not', (text) => {
    expect(codesOf(parseQuantity(text, { input: 'lever', dimensions: ['length'] }))).toEqual(['two-readings'])
  })

  it('3/4 lb-ft is three quarters', () => {
    expect(parseQuantity('3/4 lb-ft', torque)).toMatchObject({
      ok: true,
      value: { value: 0.75, unit: units['lbf·ft'] },
    })
  })
})

describe('a fraction behind a space in a list', () => {
  it.each(['14 ½; 15 kg', '1 ½ kg', '14  1/2 kg', '3 14 ¼ kg'])('%s may be one or two: asked back', (text) => {
    expect(codesOf(parseReadings([text], force))).toEqual(['two-readings'])
  })

  it('offers both as they are to be typed, and both can be', () => {
    const asked = parseReadings(['14 ½ kg'], force)
    expect(asked).toMatchObject({ faults: [{ facts: { readings: ['14½ kg', '14; ½ kg'] } }] })
    expect(parseReadings(['14½ kg'], force)).toMatchObject({ ok: true, value: [{ value: 14.5 }] })
  })
})

describe('a thread size without its mark', () => {
  it.each(['0-80', '4-40', '6-32', '8-32', '10-24', '10-32', '12-24', '10-32 UNF'])('%s is a numbered size', (text) => {
    expect(parseSize(text, 'size')).toEqual(parseSize(`#${text}`, 'size'))
    expect(parseSize(text, 'size')).toMatchObject({ ok: true, value: { name: `#${text.split(' ')[0]}` } })
  })

  it.each([
    ['1-8', 1],
    ['2-12', 2],
    ['1-20', 1],
  ])('%s is in inches', (text, inches) => {
    expect(parseSize(text, 'size')).toMatchObject({ ok: true, value: { diameter: { value: inches, unit: units.in } } })
  })

  it.each(['5-32', '9-32', '99-1', '#99-32', '12-40', '8-4'])('%s is no size', (text) => {
    expect(codesOf(parseSize(text, 'size'))).toEqual(['not-allowed'])
  })
})

it.each(['5 mN', '5 MN', '5 m N'])('%s is a force nobody pulls, and no torque', (text) => {
  expect(codesOf(parseQuantity(text, torque))).toEqual(['unit-unknown'])
})

it.each(['2 in+3 in', '2 in, 3 in', '2 in@45, 3 in@30'])(
  '%s: told how to part adapters, not to leave one out',
  (text) => {
    expect(parseAdapters([text], 'adapter')).toMatchObject({
      faults: [{ code: 'trailing', tell: 'adapters-unparted' }],
    })
  },
)

it.each(['1\'-2"', '1 ft-2 in', '1\' 2"'])('%s is fourteen inches', (text) => {
  expect(parseQuantity(text, { input: 'lever', dimensions: ['length'] })).toMatchObject({
    ok: true,
    value: { value: 14, unit: units.in },
  })
})

it('20 N/m is an unknown unit, not 20 N with something behind it', () => {
  expect(codesOf(parseQuantity('20 N/m', force))).toEqual(['unit-unknown'])
})
