// Several readings as one text: to be read by people, and to be typed again.
import { describe, expect, it } from 'vitest'
import { commaStyle } from '../../src/core/number-style.ts'
import { parseReadings } from '../../src/core/parse-list.ts'
import { type Quantity, quantity } from '../../src/core/quantity.ts'
import { echoReadings, writeReadings } from '../../src/core/readings-text.ts'
import { type UnitSymbol, units } from '../../src/core/unit.ts'

const list = (unit: UnitSymbol, ...values: readonly number[]): Quantity[] =>
  values.map((value) => quantity(value, units[unit]))

describe('readings', () => {
  it.each<[string, readonly Quantity[], string]>([
    ['name their unit once, behind them all', list('N·m', 99.5, 101, 100.2), '99.5; 101; 100.2 N·m'],
    ['name none where they are plain numbers', list('1', 1.5, 2), '1.5; 2'],
    ['have a mark each where they are angles', list('°', 45, 46.5), '45°; 46.5°'],
    ['name each unit where they differ', [...list('N·m', 20), ...list('lbf·ft', 15)], '20 N·m; 15 lbf·ft'],
    ['one alone', list('kN', 24.1), '24.1 kN'],
  ])('%s', (_, readings, text) => {
    expect(echoReadings(readings)).toBe(text)
  })

  it('of many show the first, the last and how many', () => {
    const many = list('N·m', ...Array.from({ length: 500 }, (_, n) => n + 0.5))
    expect(echoReadings(many)).toBe('0.5; 1.5; 2.5; 3.5; 4.5; 5.5; …; 497.5; 498.5; 499.5 N·m (n = 500)')
  })

  it('take the decimal mark of the reader', () => {
    expect(echoReadings(list('N·m', 99.5, 101), commaStyle)).toBe('99,5; 101 N·m')
  })

  it('that are written are read as exactly these, however many', () => {
    const all = list('N·m', ...Array.from({ length: 500 }, (_, n) => 100 + n / 997), 1.234, 12.345)
    expect(parseReadings([writeReadings(all)], { input: 'x', dimensions: ['torque'] }, { longest: 20_000 })).toEqual({
      ok: true,
      value: all,
    })
  })
})
