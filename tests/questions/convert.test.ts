// convert: the same quantity in another unit; what a pound or a kilogram means follows from what is asked for.
import { describe, expect, it } from 'vitest'
import { units } from '../../src/core/unit.ts'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf } from '../support/desk.ts'

describe('a quantity', () => {
  it.each([
    ['1 lbf·ft', 'N·m', 1.355_817_948_3],
    ['12 in-lb', 'ft-lb', 1],
    ['20 N·m', 'in-lb', 177.014_915_8],
    ['1 kgf·m', 'Nm', 9.80665],
    ['16 oz-in', 'in-lb', 1],
    ['1 ft', 'mm', 304.8],
    ['14 1/2 in', 'mm', 368.3],
    ['20 lb', 'N', 88.964_432_3],
    ['20 kg', 'N', 196.133],
    ['20 lb', 'kg', 9.071_847_4],
    ['20 lbf', 'kg', 9.071_847_4],
    ['100 ksi', 'MPa', 689.475_729_3],
    ['-5 N·m', 'lbf·ft', -3.687_810_7],
    ['0 mm', 'in', 0],
  ])('%s in %s is %d', (quantity, to, expected) => {
    expect(numberOf(answered('convert', { quantity, to }), 'value')).toBeCloseTo(expected, 6)
  })

  it.each(Object.values(units).filter(({ dimension }) => !['angle', 'percent', 'number'].includes(dimension)))(
    'in $symbol is told in the usual other unit, where none is named, and comes back from there',
    ({ symbol, dimension }) => {
      const value = resultOf(answered('convert', { quantity: `12.5 ${symbol}` }), 'value')
      expect(value.unit).not.toBe(symbol)
      const back = resultOf(answered('convert', { quantity: `${value.value} ${value.unit}`, to: symbol }), 'value')
      expect(back.value, dimension).toBeCloseTo(12.5, 9)
    },
  )

  it('that is a span keeps both ends', () => {
    const value = resultOf(answered('convert', { quantity: '19.5–24 lb-ft', to: 'N·m' }), 'value')
    expect(value.low).toBeCloseTo(19.5 * 1.355_817_948_3, 6)
    expect(value.high).toBeCloseTo(24 * 1.355_817_948_3, 6)
    expect(value.value).toBeCloseTo(21.75 * 1.355_817_948_3, 6)
  })

  it('is echoed as typed and answered rounded', () => {
    expect(answered('convert', { quantity: '101.25 ft-lb' }).headline).toBe('101.25 lbf·ft is 137.3 N·m.')
  })

  it('of a large number is written out, never with an exponent', () => {
    expect(answered('convert', { quantity: '999999999 N·m', to: 'ozf·in' }).headline).not.toMatch(/\de[+-]?\d/)
  })

  it('of torque is warned of: read the unit off the wrench', () => {
    expect(cautionsOf(answered('convert', { quantity: '20 N·m' }))).toEqual(['unit-on-wrench', 'maker-first'])
    expect(cautionsOf(answered('convert', { quantity: '20 mm' }))).toEqual(['maker-first'])
  })
})

describe('a conversion is refused', () => {
  it.each<[string, Record<string, string>, string, string]>([
    ['from a torque to a length', { quantity: '20 N·m', to: 'mm' }, 'to', 'unit-wrong-kind'],
    [
      'from a mass to a torque: a pound alone is no torque',
      { quantity: '20 lb', to: 'ft-lb' },
      'to',
      'unit-wrong-kind',
    ],
    ['to what is no unit', { quantity: '20 N·m', to: 'bananas' }, 'to', 'not-allowed'],
    ['to a multiple that is not shown', { quantity: '20 N·m', to: 'kNm' }, 'to', 'not-allowed'],
    ['of an angle, which has one unit', { quantity: '45°' }, 'quantity', 'unit-wrong-kind'],
    ['of a bare number', { quantity: '20' }, 'quantity', 'unit-missing'],
    ['of a torque and a turn', { quantity: '20 Nm + 90°' }, 'quantity', 'angle-stage'],
    ['to nothing', { quantity: '20 N·m', to: ' ' }, 'to', 'empty'],
  ])('%s', (_, inputs, input, code) => {
    const answer = ask('convert', inputs)
    expect(answer.faults.map((one) => [one.input, one.code])).toEqual([[input, code]])
    expect(codesOf(answer)).toHaveLength(1)
  })
})
