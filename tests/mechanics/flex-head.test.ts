import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  straightPull,
  tiltedArm,
  tiltedPull,
  tiltedTorque,
  tiltedTorqueUnknown,
} from '../../src/mechanics/flex-head.ts'

const head = { S: 100, L: 0.4, h: 0, phi: 15 }
const seed = 20261125

describe('a flex head', () => {
  it('that trips behind the hinge gives 3.4 % less at 15°, as the file says', () => {
    expect(tiltedTorque(head, 'behind')).toBeCloseTo(96.593, 3)
  })

  it('that senses ahead of the hinge gives what it says and asks for more pull', () => {
    expect(tiltedTorque(head, 'ahead')).toBe(100)
    expect(tiltedPull(head, 'ahead')).toBeCloseTo(100 / tiltedArm(head), 12)
    expect(tiltedPull(head, 'ahead')).toBeGreaterThan(straightPull(head))
  })

  it('that trips behind the hinge takes the same pull as when straight', () => {
    expect(tiltedPull(head, 'behind')).toBeCloseTo(straightPull(head), 12)
  })

  it('of unknown kind lies between the two', () => {
    const { low, middle, high } = tiltedTorqueUnknown(head)
    expect(low).toBe(tiltedTorque(head, 'behind'))
    expect(high).toBe(100)
    expect(middle).toBeCloseTo((low + high) / 2, 12)
  })

  it('loses less the farther out the hinge is, and nothing when straight', () => {
    expect(tiltedTorque({ ...head, phi: 0 }, 'behind')).toBe(100)
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 0.39, noNaN: true }),
        (phi, h) => {
          const torque = tiltedTorque({ ...head, phi, h }, 'behind')
          return torque <= 100 + 1e-9 && torque >= tiltedTorque({ ...head, phi, h: 0 }, 'behind') - 1e-9
        },
      ),
      { seed },
    )
  })
})
