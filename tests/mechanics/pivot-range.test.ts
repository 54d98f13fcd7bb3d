// Where a wrench trips, by kind: common practice, no source; what must hold of the table whatever its numbers.
import { describe, expect, it } from 'vitest'
import { pivotShareByType, pivotShareUnknown, wrenchTypes } from '../../src/mechanics/pivot-range.ts'

describe('the pivot by kind of wrench', () => {
  it.each(wrenchTypes)('of a %s wrench is a span of the lever, from 0 up and short of the hand', (type) => {
    const { low, high } = pivotShareByType[type]
    expect(low).toBeGreaterThanOrEqual(0)
    expect(high).toBeGreaterThanOrEqual(low)
    expect(high).toBeLessThan(0.5)
  })

  it.each([
    ['click', 0.02, 0.1],
    ['split-beam', 0.02, 0.1],
    ['beam', 0.2, 0.3],
    ['dial', 0, 0],
    ['electronic', 0, 0],
  ] as const)('of a %s wrench goes from %d to %d of the lever', (type, low, high) => {
    expect(pivotShareByType[type]).toEqual({ low, high })
  })

  it('of an unknown kind covers the drive and the click wrenches', () => {
    expect(pivotShareUnknown.low).toBe(pivotShareByType.dial.low)
    expect(pivotShareUnknown.high).toBe(pivotShareByType.click.high)
  })
})
