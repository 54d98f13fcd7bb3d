// A quantity as people see it: number, a space, canonical symbol; degrees close up, a plain number stands alone.
import { describe, expect, it } from 'vitest'
import { commaStyle } from '../../src/core/number-style.ts'
import { quantity } from '../../src/core/quantity.ts'
import { echoQuantity, showQuantity, writeQuantity } from '../../src/core/quantity-text.ts'
import { type UnitSymbol, units } from '../../src/core/unit.ts'

describe('a quantity', () => {
  it.each<[number, UnitSymbol, string, string, string]>([
    [78.26, 'N·m', '78.3 N·m', '78.26 N·m', '78.26 N·m'],
    [1.2347, 'lbf·ft', '1.235 lbf·ft', '1.2347 lbf·ft', '1.2347 lbf·ft'],
    [1.234, 'lbf·ft', '1.234 lbf·ft', '1.234 lbf·ft', '1.2340 lbf·ft'],
    [45, '°', '45°', '45°', '45°'],
    [-12.5, '°', '-12.5°', '-12.5°', '-12.5°'],
    [4, '%', '4 %', '4 %', '4 %'],
    [1.142857, '1', '1.143', '1.142857', '1.142857'],
    [14.5, 'in', '14.5 in', '14.5 in', '14.5 in'],
    [304.8, 'mm', '305 mm', '304.8 mm', '304.8 mm'],
  ])('of %d %s is shown, echoed and written as %j, %j and %j', (value, symbol, shown, echoed, written) => {
    const q = quantity(value, units[symbol])
    expect([showQuantity(q), echoQuantity(q), writeQuantity(q)]).toEqual([shown, echoed, written])
    expect(showQuantity(q, commaStyle)).toBe(shown.replace('.', ','))
    expect(echoQuantity(q, commaStyle)).toBe(echoed.replace('.', ','))
    expect(writeQuantity(q, commaStyle)).toBe(written.replace('.', ','))
  })
})
