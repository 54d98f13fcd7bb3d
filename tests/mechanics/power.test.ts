import { describe, expect, it } from 'vitest'
import { chanceInside, chanceSeen, fewestFor, MOST_READINGS, smallestSeen } from '../../src/mechanics/power.ts'
import { findingsOf } from '../../src/mechanics/two-samples.ts'
import { summaryOf } from '../../src/mechanics/welch.ts'
import { normalFrom, SEED, seeded } from '../support/random.ts'

const TRIALS = 6000
const margin = { m: 0.04, confidence: 0.95 }

const drawn = (n: number, sigma: number, delta: number) => {
  const random = seeded(SEED)
  const set = (middle: number) => summaryOf(Array.from({ length: n }, () => middle + 100 * sigma * normalFrom(random)))
  const found = Array.from({ length: TRIALS }, () => findingsOf(set(100), set(100 * (1 + delta)), margin))
  return {
    seen: found.filter(({ excludesZero }) => excludesZero).length / TRIALS,
    inside: found.filter(({ inside }) => inside).length / TRIALS,
  }
}
// Three standard deviations of a count at one half.
const NEAR = 3 * Math.sqrt(0.25 / TRIALS)

describe('what a run can see', () => {
  it.each([
    [2, 0.02, 0.1],
    [3, 0.05, 0.15],
    [5, 0.05, 0.1],
    [5, 0.05, 0],
    [10, 0.08, 0.06],
    [30, 0.08, 0.06],
  ])('n = %i, spread %f, difference %f: as often as drawn', (n, sigma, delta) => {
    expect(Math.abs(chanceSeen(n, sigma, delta, 0.95) - drawn(n, sigma, delta).seen)).toBeLessThan(NEAR)
  })

  it.each([
    [4, 0.01],
    [8, 0.03],
    [20, 0.04],
  ])('n = %i, spread %f: told alike as often as drawn', (n, sigma) => {
    expect(Math.abs(chanceInside(n, sigma, 0.04, 0.95) - drawn(n, sigma, 0).inside)).toBeLessThan(NEAR + 0.01)
  })

  // Two-sided t test, n = 17 of each sees 1 σ with 0.80 at 95 % (Cohen 1988, table 2.3.5, from memory).
  it('17 of each see one spread in four of five, as the printed tables have it', () => {
    expect(chanceSeen(17, 1, 1, 0.95)).toBeGreaterThan(0.8)
    expect(chanceSeen(16, 1, 1, 0.95)).toBeLessThan(0.8)
    expect(fewestFor((n) => chanceSeen(n, 1, 1, 0.95), 0.8)).toBe(17)
  })

  it('the smallest difference seen is the one seen with that chance', () => {
    const delta = smallestSeen(6, 0.05, 0.95, 0.8)
    expect(chanceSeen(6, 0.05, delta, 0.95)).toBeCloseTo(0.8, 6)
    expect(smallestSeen(12, 0.05, 0.95, 0.8)).toBeLessThan(delta)
    expect(smallestSeen(6, 0.1, 0.95, 0.8)).toBeCloseTo(2 * delta, 9)
  })

  it('gives no number where no sensible run would do', () => {
    expect(fewestFor((n) => chanceSeen(n, 1, 0.01, 0.95), 0.8)).toBeUndefined()
    expect(chanceSeen(MOST_READINGS, 1, 0.01, 0.95)).toBeLessThan(0.1)
  })
})
