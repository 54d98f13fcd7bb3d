// A wrench checked with a scale or a weight: the pull, the wrench's own weight, and the spread of several pulls.
import { describe, expect, it } from 'vitest'
import {
  forceFor,
  mean,
  STANDARD_GRAVITY,
  sampleDeviation,
  torqueOfPull,
  weightTorque,
} from '../../src/mechanics/scale-pull.ts'

const LBF = 4.4482216152605
const FOOT = 0.3048

describe('a pull', () => {
  it('of the worked example: 50 lbf at 12 in is 50 lbf·ft', () => {
    expect(torqueOfPull({ F: 50 * LBF, D: FOOT, psi: 0 }, 0) / (LBF * FOOT)).toBeCloseTo(50, 12)
  })

  it.each([
    [0, 1],
    [10, 0.984_807_753],
    [60, 0.5],
    [-60, 0.5],
    [90, 0],
  ])('at %d° from square gives the share %d', (psi, share) => {
    expect(torqueOfPull({ F: 100, D: 1, psi }, 0) / 100).toBeCloseTo(share, 9)
  })

  it('and the force for a torque undo each other', () => {
    expect(torqueOfPull({ F: forceFor(87.5, 0.35), D: 0.35, psi: 0 }, 0)).toBeCloseTo(87.5, 12)
  })
})

describe('the wrench’s own weight', () => {
  it('adds where the pull turns the handle down, and takes away where it turns it up', () => {
    expect(weightTorque(1.2, 0.18, 'down')).toBeCloseTo(1.2 * 9.80665 * 0.18, 12)
    expect(weightTorque(1.2, 0.18, 'up')).toBe(-weightTorque(1.2, 0.18, 'down'))
    expect(torqueOfPull({ F: 100, D: 0.4, psi: 0 }, weightTorque(1.2, 0.18, 'up'))).toBeLessThan(40)
  })

  it('uses standard gravity, by definition', () => {
    expect(STANDARD_GRAVITY).toBe(9.80665)
  })
})

describe('several pulls', () => {
  it.each([
    [[5], 5, 0],
    [[4, 6], 5, Math.SQRT2],
    [[2, 4, 4, 4, 5, 5, 7, 9], 5, Math.sqrt(32 / 7)],
    [[5, 5, 5], 5, 0],
  ])('%j have the mean %d and the standard deviation %d', (values, middle, s) => {
    expect(mean(values)).toBeCloseTo(middle, 12)
    expect(sampleDeviation(values)).toBeCloseTo(s, 12)
  })
})
