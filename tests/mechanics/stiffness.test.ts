import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boltForce, boltShare, boltStiffness, jointStiffness } from '../../src/mechanics/stiffness.ts'
import { inchThread } from '../../src/mechanics/thread-friction.ts'

const IN = 0.0254
const M_LBF_IN = (1e6 * 4.4482216152605) / IN
const E = 30e6 * 6894.757293168361
const bolt = { d: 0.5 * IN, As: inchThread(0.5 * IN, IN / 13).As, shank: 2.25 * IN, threaded: 0.75 * IN }
const seed = 20261125

describe('bolt and joint as springs', () => {
  it('are 1.79 and 11.33 Mlbf/in for 1/2-13 through 3 in, the bolt taking 0.136, as the file says', () => {
    const kb = boltStiffness(bolt, 'not-counted', E) / M_LBF_IN
    const kj = jointStiffness(0.5 * IN, 3 * IN, E) / M_LBF_IN
    expect(kb).toBeCloseTo(1.79, 2)
    expect(kj).toBeCloseTo(11.33, 2)
    expect(boltShare(1.79, 11.33)).toBeCloseTo(0.136, 3)
  })

  it('agree with the printed short form of the cone for any grip', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 12, noNaN: true }), (l) => {
        const d = 0.5
        const short =
          (0.5774 * Math.PI * 30 * d) / (2 * Math.log((5 * (0.5774 * l + 0.5 * d)) / (0.5774 * l + 2.5 * d)))
        return Math.abs(jointStiffness(d * IN, l * IN, E) / M_LBF_IN / short - 1) < 5e-4
      }),
      { seed },
    )
  })

  it('a bolt is softer with its ends counted, with a longer grip and with more thread', () => {
    expect(boltStiffness(bolt, 'counted')).toBeLessThan(boltStiffness(bolt, 'not-counted'))
    expect(boltStiffness({ ...bolt, shank: 3 * IN }, 'counted')).toBeLessThan(boltStiffness(bolt, 'counted'))
    expect(boltStiffness({ ...bolt, shank: 0, threaded: 3 * IN }, 'counted')).toBeLessThan(
      boltStiffness(bolt, 'counted'),
    )
  })

  it('count half a diameter of head and of thread in the nut, and 0.4 of the nut', () => {
    const A = (Math.PI / 4) * bolt.d ** 2
    const more = 1 / boltStiffness(bolt, 'counted', E) - 1 / boltStiffness(bolt, 'not-counted', E)
    expect(more * E * A).toBeCloseTo((0.5 + 0.4) * bolt.d + (0.5 * bolt.d * A) / bolt.As, 12)
  })

  it('the bolt feels its share of an outer pull on top of the preload', () => {
    expect(boltForce(25, 6, 0.32)).toBeCloseTo(26.92, 9)
  })
})
