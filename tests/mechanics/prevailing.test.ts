import { describe, expect, it } from 'vitest'
import { finalTorque, finalTorqueFromThird } from '../../src/mechanics/prevailing.ts'

describe('run-on torque', () => {
  it('is added: 35 and 8.9 make 43.9 lbf·in, as the file says', () => {
    expect(finalTorque(35, 8.9)).toBeCloseTo(43.9, 12)
  })

  it('by the army manual is forgotten below a third of the target and added from there on', () => {
    expect(finalTorqueFromThird(60, 19)).toBe(60)
    expect(finalTorqueFromThird(60, 30)).toBe(90)
    expect(finalTorqueFromThird(100, 33)).toBe(133)
  })
})
