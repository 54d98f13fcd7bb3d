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

  it('inverts its own points on both sides', () => {
    for (const nu of [1, 2.5, 9, 60]) {
      for (const p of [0.001, 0.05, 0.3, 0.8, 0.975, 0.9999]) {
        expect(Math.abs(tBelow(tPoint(p, nu), nu) - p), `${p} ${nu}`).toBeLessThan(1e-12)
      }
      // Beside the middle the library's points are good to 1e-8 only; no verdict is taken there.
      expect(tBelow(0, nu)).toBeCloseTo(0.5, 7)
    }
  })

  it('is the normal point where the degrees of freedom have no end', () => {
    expect(tPoint(0.975, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959964, 5)
  })
})
