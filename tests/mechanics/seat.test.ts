import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ballRadius, coneRadius, flatRadius, seatHolds, seatRadius, seatTorque } from '../../src/mechanics/seat.ts'

const ring = { dw: 0.018, dh: 0.013 }
const seed = 20261125

describe('the radius of a seat', () => {
  it('of 18 over 13 mm is 7.75 mm flat and 15.5 mm on a 60° cone, as the file says', () => {
    expect(seatRadius({ kind: 'flat', ...ring })).toBeCloseTo(0.00775, 12)
    expect(seatRadius({ kind: 'cone', ...ring, alpha: 30 })).toBeCloseTo(0.0155, 12)
  })

  it('on a cone of half angle 90° is the flat one', () => {
    expect(coneRadius(0.00775, 90)).toBeCloseTo(0.00775, 15)
  })

  it('on a ball is that of the cone that touches it there', () => {
    // At r on a ball of radius R the surface leans by asin(r/R) from flat, so half the cone's angle is its complement.
    const [r, R] = [0.00775, 0.014]
    const alpha = 90 - (Math.asin(r / R) * 180) / Math.PI
    expect(ballRadius(r, R)).toBeCloseTo(coneRadius(r, alpha), 12)
    expect(seatRadius({ kind: 'ball', ...ring, R })).toBeCloseTo(ballRadius(r, R), 15)
  })

  it('under even pressure lies outside the mean one, and meets it on a narrow ring', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.05, noNaN: true }),
        fc.double({ min: 0.05, max: 0.99, noNaN: true }),
        (dw, part) => flatRadius(dw, dw * part, 'even-pressure') >= flatRadius(dw, dw * part) - 1e-15,
      ),
      { seed },
    )
    expect(flatRadius(0.018, 0.01799, 'even-pressure')).toBeCloseTo(flatRadius(0.018, 0.01799), 9)
  })

  it('cannot be where the ring has no width, the cone no angle, or the ball is smaller than its ring', () => {
    expect(seatHolds({ kind: 'flat', ...ring })).toBe(true)
    expect(seatHolds({ kind: 'flat', dw: 0.013, dh: 0.013 })).toBe(false)
    expect(seatHolds({ kind: 'cone', ...ring, alpha: 0 })).toBe(false)
    expect(seatHolds({ kind: 'cone', ...ring, alpha: 91 })).toBe(false)
    expect(seatHolds({ kind: 'ball', ...ring, R: 0.0077 })).toBe(false)
    expect(seatHolds({ kind: 'ball', ...ring, R: 0.014 })).toBe(true)
  })

  it('makes the torque with force and friction', () => {
    expect(seatTorque(40_000, 0.15, 0.00775)).toBeCloseTo(46.5, 9)
  })
})
