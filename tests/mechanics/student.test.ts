import tCdf from '@stdlib/stats-base-dists-t-cdf'
import tQuantile from '@stdlib/stats-base-dists-t-quantile'
import { describe, expect, it } from 'vitest'
import { tBelow, tPoint } from '../../src/mechanics/student.ts'
import { tBelowByHand } from '../support/student-by-hand.ts'

describe("Student's t", () => {
  // Table of percentage points, any textbook (from memory).
  it.each([
    [0.95, 1, 6.314],
    [0.975, 1, 12.706],
    [0.95, 4, 2.132],
    [0.975, 4, 2.776],
    [0.975, 10, 2.228],
    [0.995, 10, 3.169],
    [0.975, 30, 2.042],
  ])('has the tabled point for %f and %i degrees of freedom: %f (from memory)', (p, nu, printed) => {
    expect(tPoint(p, nu)).toBeCloseTo(printed, 3)
  })

  it.each([
    [0.95, 3],
    [0.975, 7.43],
    [0.975, 17.776],
    [0.995, 42],
  ])('has the point for %f and %f degrees of freedom that integration gives, to 1e-9', (p, nu) => {
    expect(Math.abs(tBelowByHand(tPoint(p, nu), nu) - p)).toBeLessThan(1e-9)
  })

  it('agrees with a reference library to 1e-10, from a third of a degree of freedom to a hundred thousand', () => {
    for (const nu of [0.3, 1, 1.3, 2, 4.4, 11.2, 39, 41, 200, 998, 20_000, 100_000]) {
      for (const p of [0.5001, 0.6, 0.74, 0.76, 0.95, 0.975, 0.995, 0.9999, 0.999999]) {
        const point = tQuantile(p, nu)
        expect(Math.abs(tPoint(p, nu) / point - 1), `point ${p} ${nu}`).toBeLessThan(1e-10)
        expect(Math.abs(tBelow(-point, nu) / tCdf(-point, nu) - 1), `share ${p} ${nu}`).toBeLessThan(1e-10)
      }
    }
  })

  // One degree of freedom is Cauchy's distribution, and two have a root: both in closed form.
  it.each([0.51, 0.7, 0.9, 0.975, 0.9999])('has the closed forms at %f', (p) => {
    expect(tPoint(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 8)
    expect(tPoint(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 10)
  })

  it('inverts its own points on both sides', () => {
    for (const nu of [1, 2.5, 9, 60]) {
      for (const p of [0.001, 0.05, 0.3, 0.8, 0.975, 0.9999]) {
        expect(Math.abs(tBelow(tPoint(p, nu), nu) - p), `${p} ${nu}`).toBeLessThan(1e-12)
      }
      expect(tBelow(0, nu)).toBe(0.5)
    }
  })

  it('is the normal point where the degrees of freedom have no end', () => {
    expect(tPoint(0.975, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959964, 5)
  })
})
