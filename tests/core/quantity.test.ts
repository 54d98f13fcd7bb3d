// A measurement keeps its unit: SI on reading, back again, and never into another kind.
import { describe, expect, it } from 'vitest'
import { everydayUnit, fromSi, inUnit, quantity, si, systemOf } from '../../src/core/quantity.ts'
import { units } from '../../src/core/unit.ts'

describe('a quantity', () => {
  it.each(Object.values(units))('in $symbol comes back from SI as it was', (unit) => {
    expect(fromSi(si(quantity(12.5, unit)), unit).value).toBeCloseTo(12.5, 12)
  })

  it('in its own unit keeps its number to the last digit', () => {
    const q = quantity(0.1 + 0.2, units['lbf·ft'])
    expect(inUnit(q, units['lbf·ft'])).toBe(q)
  })

  it('goes into another unit of its kind', () => {
    expect(inUnit(quantity(1, units.ft), units.in).value).toBeCloseTo(12, 12)
    expect(inUnit(quantity(1, units['lbf·ft']), units['lbf·in']).value).toBeCloseTo(12, 12)
  })

  it('in a unit of another kind is a bug', () => {
    expect(() => inUnit(quantity(1, units.ft), units['N·m'])).toThrow('bug: ft cannot be told in N·m')
  })

  it('speaks the system of its unit; angles and percentages speak neither', () => {
    expect(systemOf(quantity(1, units.mm))).toBe('metric')
    expect(systemOf(quantity(1, units.lbf))).toBe('inch')
    expect(systemOf(quantity(1, units['°']))).toBe('either')
    expect(everydayUnit('torque', 'inch')).toBe(units['lbf·ft'])
    expect(everydayUnit('torque', 'metric')).toBe(units['N·m'])
  })
})
