import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BEND_UNCORRECTED, swivelInput, swivelOutput, swivelRatio, swivelRatioAt } from '../../src/mechanics/swivel.ts'

const seed = 20261125

describe('a swivel', () => {
  it('lets 0.866 to 1.155 of the torque through at 30°, as the file says', () => {
    const { low, high } = swivelRatio(30)
    expect(low).toBeCloseTo(0.8660254, 7)
    expect(high).toBeCloseTo(1.1547005, 7)
  })

  it('changes nothing when it is straight', () => {
    expect(swivelRatio(0)).toEqual({ low: 1, high: 1 })
    expect(swivelOutput(95, 0)).toEqual({ low: 95, high: 95 })
  })

  it('loses or adds 3.4 to 3.5 % at the bend that two engine manuals leave uncorrected', () => {
    const { low, high } = swivelOutput(100, BEND_UNCORRECTED)
    expect(low).toBeCloseTo(96.59, 2)
    expect(high).toBeCloseTo(103.53, 2)
  })

  it('runs between its ends over a turn and meets both', () => {
    expect(swivelRatioAt(25, 0)).toBeCloseTo(swivelRatio(25).low, 12)
    expect(swivelRatioAt(25, 90)).toBeCloseTo(swivelRatio(25).high, 12)
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: -360, max: 360, noNaN: true }),
        (beta, gamma) => {
          const { low, high } = swivelRatio(beta)
          const ratio = swivelRatioAt(beta, gamma)
          return ratio >= low - 1e-12 && ratio <= high + 1e-12
        },
      ),
      { seed },
    )
  })

  it('passes as much work in a whole turn as goes in: the mean of in over out is 1', () => {
    const steps = 3600
    let sum = 0
    for (let step = 0; step < steps; step++) sum += 1 / swivelRatioAt(30, (step * 360) / steps)
    expect(sum / steps).toBeCloseTo(1, 9)
  })

  it('brackets what the wrench showed for a torque at the fastener', () => {
    const { low, high } = swivelInput(100, 20)
    expect(swivelOutput(low, 20).high).toBeCloseTo(100, 10)
    expect(swivelOutput(high, 20).low).toBeCloseTo(100, 10)
  })
})
