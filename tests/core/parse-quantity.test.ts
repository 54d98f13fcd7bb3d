// One number and one unit from a text: what is read, and what is refused with which code and which words to type instead.
import { describe, expect, it } from 'vitest'
import type { Read } from '../../src/core/fault.ts'
import { LONGEST_QUANTITY, parseQuantity } from '../../src/core/parse-quantity.ts'
import type { Quantity } from '../../src/core/quantity.ts'
import { type Dimension, type UnitSymbol, units } from '../../src/core/unit.ts'

const parse = (text: string, ...dimensions: Dimension[]): Read<Quantity> =>
  parseQuantity(text, { input: 'x', dimensions })

describe('a quantity is read', () => {
  it.each<[string, Dimension, number, UnitSymbol]>([
    ['95 N·m', 'torque', 95, 'N·m'],
    ['13,5 Nm', 'torque', 13.5, 'N·m'],
    ['13.5Nm', 'torque', 13.5, 'N·m'],
    ['  95   N·m  ', 'torque', 95, 'N·m'],
    ['12 in-lb', 'torque', 12, 'lbf·in'],
    ['20 kgf·m', 'torque', 20, 'kgf·m'],
    ['3 kN·m', 'torque', 3000, 'N·m'],
    ['14 1/2 ft-lb', 'torque', 14.5, 'lbf·ft'],
    ['1.2345 lbf·ft', 'torque', 1.2345, 'lbf·ft'],
    ['1,234.5 lbf·ft', 'torque', 1234.5, 'lbf·ft'],
    ['14 1/2 in', 'length', 14.5, 'in'],
    ['14-1/2 in', 'length', 14.5, 'in'],
    ['2½"', 'length', 2.5, 'in'],
    ['2½”', 'length', 2.5, 'in'],
    ['1\' 2"', 'length', 14, 'in'],
    ['1′ 2″', 'length', 14, 'in'],
    ['1 ft 2 in', 'length', 14, 'in'],
    ['1 foot 2 1/2 inches', 'length', 14.5, 'in'],
    ["1'", 'length', 1, 'ft'],
    ['1 ft', 'length', 1, 'ft'],
    ['380 mm', 'length', 380, 'mm'],
    ['0.4 m', 'length', 0.4, 'm'],
    ['20 lb', 'force', 20, 'lbf'],
    ['20 kg', 'force', 20, 'kgf'],
    ['1.5 kN', 'force', 1.5, 'kN'],
    ['20 lb', 'mass', 20, 'lb'],
    ['45°', 'angle', 45, '°'],
    ['45 deg', 'angle', 45, '°'],
    ['-30 degrees', 'angle', -30, '°'],
    ['45', 'angle', 45, '°'],
    ['0.2', 'number', 0.2, '1'],
    ['0,2', 'number', 0.2, '1'],
    ['4 %', 'percent', 4, '%'],
    ['4%', 'percent', 4, '%'],
    ['75 percent', 'percent', 75, '%'],
    ['600 N/mm²', 'stress', 600, 'MPa'],
    ['120 ksi', 'stress', 120, 'ksi'],
  ])('%j as a %s of %d %s', (text, dimension, value, symbol) => {
    expect(parse(text, dimension)).toEqual({ ok: true, value: { value, unit: units[symbol] } })
  })

  it('as the first dimension that its unit fits, where several are taken', () => {
    expect(parse('20 lb', 'mass', 'force')).toMatchObject({ value: { unit: units.lb } })
    expect(parse('20 lb', 'force', 'mass')).toMatchObject({ value: { unit: units.lbf } })
  })
})

describe('a quantity is refused', () => {
  it.each<[string, Dimension, string, string, string]>([
    ['', 'torque', 'empty', 'empty', 'nothing was typed'],
    ['   ', 'torque', 'empty', 'empty', 'only spaces'],
    ['95', 'torque', 'unit-missing', 'unit-missing', 'a bare number has no unit'],
    ['4', 'percent', 'unit-missing', 'unit-missing', 'a percentage wants its mark'],
    ['95 mm', 'torque', 'unit-wrong-kind', 'unit-wrong-kind', 'a length for a torque'],
    ['95 N·m', 'length', 'unit-wrong-kind', 'unit-wrong-kind', 'a torque for a length'],
    ['45 rad', 'angle', 'unit-unknown', 'unit-unknown', 'radians are not used here'],
    ['100 lb', 'torque', 'unit-wrong-kind', 'pound-alone', 'a pound alone beside a wrench'],
    ['100 pounds', 'torque', 'unit-wrong-kind', 'pound-alone', 'a pound alone beside a wrench'],
    ['95 bananas', 'torque', 'unit-unknown', 'unit-unknown', 'no unit'],
    ['95 N/m', 'torque', 'unit-unknown', 'unit-unknown', 'a stiffness'],
    ['95 N·m please', 'torque', 'trailing', 'trailing', 'more behind the unit'],
    ['95 N·m 3', 'torque', 'trailing', 'trailing', 'a number behind the unit'],
    ['0.2 N', 'number', 'trailing', 'unit-after-plain-number', 'a plain number takes no unit'],
    ['1,234 lbf·ft', 'torque', 'two-readings', 'thousands-or-decimal', 'a comma that may be a thousands mark'],
    ['1.234 N·m', 'torque', 'two-readings', 'thousands-or-decimal', 'a point that may be a thousands mark'],
    ['1 234 N·m', 'torque', 'not-a-number', 'thousands-mark', 'a space that may be a thousands mark'],
    ['1e3 N·m', 'torque', 'not-a-number', 'exponent', 'an exponent'],
    ['0x10 N·m', 'torque', 'not-a-number', 'not-a-number', 'hex'],
    ['∞ N·m', 'torque', 'not-a-number', 'not-a-number', 'infinity'],
    ['N·m', 'torque', 'not-a-number', 'not-a-number', 'a unit alone'],
    ['about 95 N·m', 'torque', 'not-a-number', 'not-a-number', 'a word before the number'],
    [`${'9'.repeat(LONGEST_QUANTITY)} N·m`, 'torque', 'too-long', 'too-long', 'longer than any quantity'],
    ['1\' 14"', 'length', 'trailing', 'trailing', 'more than twelve inches behind feet'],
    ["1' 2", 'length', 'unit-missing', 'inches-unmarked', 'inches without their mark'],
  ])('%j for a %s as %s (%s): %s', (text, dimension, code, tell) => {
    expect(parse(text, dimension)).toMatchObject({ ok: false, faults: [{ code, tell, input: 'x' }] })
  })

  it('with both readings and the unit, where a number can be read two ways', () => {
    expect(parse('1,234 ft-lb', 'torque')).toMatchObject({
      faults: [{ facts: { readings: ['1234 lbf·ft', '1.234 lbf·ft'], options: ['1234 lbf·ft', '1.2340 lbf·ft'] } }],
    })
    // What is told to type is read, each as its reading.
    expect(parse('1234 lbf·ft', 'torque')).toMatchObject({ ok: true, value: { value: 1234 } })
    expect(parse('1.2340 lbf·ft', 'torque')).toMatchObject({ ok: true, value: { value: 1.234 } })
    expect(parse('1,234', 'angle')).toMatchObject({ faults: [{ facts: { readings: ['1234', '1.234'] } }] })
    expect(parse('1.234°', 'angle')).toMatchObject({ faults: [{ facts: { readings: ['1234°', '1.234°'] } }] })
  })

  it('with the torques that a lone pound may mean, and the number that was typed', () => {
    expect(parse('100 lb', 'torque')).toMatchObject({ faults: [{ facts: { options: ['100 lbf·ft', '100 lbf·in'] } }] })
    expect(parse('95', 'torque')).toMatchObject({ faults: [{ facts: { options: ['95 N·m', '95 lbf·ft'] } }] })
  })

  it('with what stands behind the unit, word for word', () => {
    expect(parse('95 N·m please', 'torque')).toMatchObject({ faults: [{ facts: { extra: 'please' } }] })
    expect(parse('2" long', 'length')).toMatchObject({ faults: [{ facts: { extra: 'long' } }] })
  })

  it('with what was got, cut to what can be shown', () => {
    const long = parse('9'.repeat(10_000), 'torque')
    expect(long.ok ? '' : long.faults[0]?.got).toBe(`${'9'.repeat(80)}…`)
  })

  it('with options that can be typed as they stand', () => {
    for (const dimension of ['torque', 'length', 'force', 'mass', 'percent', 'stress'] as const) {
      const reading = parse('95', dimension)
      const options = reading.ok ? [] : (reading.faults[0]?.facts['options'] as string[])
      expect(options.length).toBeGreaterThan(0)
      for (const option of options) expect(parse(option, dimension), option).toMatchObject({ ok: true })
    }
  })
})
