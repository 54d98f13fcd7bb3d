import { describe, expect, it } from 'vitest'
import { inputByTorqueRatio, inputByTurnsRatio, outputByTurnsRatio } from '../../src/mechanics/multiplier.ts'

describe('a multiplier', () => {
  it('by its torque ratio takes the torque over the ratio', () => {
    expect(inputByTorqueRatio(1000, 4.5)).toBeCloseTo(222.222, 3)
  })

  it('by its turns ratio takes 210.5 to 266.7 N·m for 1000, the lowest first, as the file says', () => {
    const { low, high } = inputByTurnsRatio(1000, 5)
    expect(low).toBeCloseTo(210.526, 3)
    expect(high).toBeCloseTo(266.667, 3)
  })

  it('never passes the asked torque at the lowest input, whatever its efficiency', () => {
    const { low } = inputByTurnsRatio(1000, 5)
    const out = outputByTurnsRatio(low, 5)
    expect(out.high).toBeCloseTo(1000, 9)
    expect(out.low).toBeLessThan(1000)
  })

  it('of known efficiency has no band', () => {
    const { low, high } = inputByTurnsRatio(1000, 5, { low: 0.9, high: 0.9 })
    expect(low).toBe(high)
  })
})
