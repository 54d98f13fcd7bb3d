import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  halfRange,
  leastOf,
  scatterBand,
  settingBelow,
  tighteningFactor,
} from '../../src/mechanics/tightening-scatter.ts'

const seed = 20261125

describe('the spread of a tightening method', () => {
  it('of factor 1.8 is ±28.6 %, and 41.9 kN at most mean 23.3 at least, as the file says', () => {
    expect(halfRange(1.8) * 100).toBeCloseTo(28.6, 1)
    expect(leastOf(41.9, 1.8)).toBeCloseTo(23.3, 1)
  })

  it('as factor and as half range lead back to each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 4, noNaN: true }), (alpha) => {
        const { low, high } = scatterBand(1, halfRange(alpha))
        return Math.abs(tighteningFactor(halfRange(alpha)) - alpha) < 1e-9 && Math.abs(high / low - alpha) < 1e-9
      }),
      { seed },
    )
  })

  it('never passes the most when set below it', () => {
    expect(scatterBand(settingBelow(2280, 0.23), 0.23).high).toBeCloseTo(2280, 9)
  })
})
