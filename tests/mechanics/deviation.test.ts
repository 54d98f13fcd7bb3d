// How far a wrench is off: the sign of a deviation, the window of a reference, and the limits of the standard.
import { describe, expect, it } from 'vitest'
import {
  checkShares,
  deviation,
  LEAST_SHARE,
  referenceAtMost,
  referenceWindow,
  standardLimit,
} from '../../src/mechanics/deviation.ts'

describe('a deviation', () => {
  it('of the worked example: 100 said, 104 reached: −3.846 %', () => {
    expect(deviation(100, 104)).toBeCloseTo(-3.8462, 4)
  })

  it('is above zero where the wrench delivers low, below where it delivers high, and of the reference', () => {
    expect(deviation(100, 96)).toBeCloseTo(4.1667, 4)
    expect(deviation(100, 104)).toBeLessThan(0)
    expect(deviation(100, 100)).toBe(0)
    expect(deviation(104, 100)).toBeCloseTo(4, 12)
  })
})

describe('the window of the reference', () => {
  it('of the worked example: 100 at 4 %: 96.15 to 104.17', () => {
    const { low, high } = referenceWindow(100, 0.04)
    expect(low).toBeCloseTo(96.1538, 4)
    expect(high).toBeCloseTo(104.1667, 4)
  })

  it.each([0.01, 0.04, 0.06])('has exactly the limit of %d as the deviation at both ends', (l) => {
    const { low, high } = referenceWindow(80, l)
    expect(deviation(80, low)).toBeCloseTo(l * 100, 10)
    expect(deviation(80, high)).toBeCloseTo(-l * 100, 10)
  })
})

describe('the standard', () => {
  it.each([
    [2, 0.06],
    [10, 0.06],
    [10.001, 0.04],
    [300, 0.04],
  ])('allows a tool up to %d N·m a deviation of %d', (most, limit) => {
    expect(standardLimit(most)).toBe(limit)
  })

  it('checks at 20, 60 and 100 % of most, rising, and promises nothing below a fifth', () => {
    expect(checkShares).toEqual([0.2, 0.6, 1])
    expect(LEAST_SHARE).toBe(checkShares[0])
  })

  it('wants a reference no worse than a quarter of the limit: ±2 % fails for ±4 %', () => {
    expect(referenceAtMost(4)).toBe(1)
    expect(referenceAtMost(4)).toBeLessThan(2)
  })
})
