import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  inchThread,
  metricThread,
  screwEfficiency,
  threadForms,
  threadLever,
  threadTorque,
  wedgeLever,
} from '../../src/mechanics/thread-friction.ts'

const m10 = metricThread(0.01, 0.0015)
const seed = 20261125

describe('the diameters of a thread', () => {
  it('of M10 are those of ISO 724, to the micrometre', () => {
    const thread = metricThread(0.01, 0.0015, 'micrometre')
    expect(thread.d2).toBeCloseTo(0.009026, 12)
    expect(thread.d3).toBeCloseTo(0.00816, 12)
    expect(thread.As * 1e6).toBeCloseTo(57.99, 2)
  })

  it('use the constants that the standards print', () => {
    expect((m10.d - m10.d2) / m10.P).toBeCloseTo(0.649519, 6)
    expect((m10.d - m10.d3) / m10.P).toBeCloseTo(1.226869, 6)
    expect((m10.d - m10.d0) / m10.P).toBeCloseTo(0.938194, 6)
    const inch = inchThread(0.0127, 0.0254 / 13)
    expect((inch.d - inch.d3) / inch.P).toBeCloseTo(1.299038, 6)
    expect((inch.d - inch.d0) / inch.P).toBeCloseTo(0.9743, 12)
  })
})

describe('the torque in a thread', () => {
  it('of M10 at 0.12 and 1 kN is 0.8704, 0.8641 or 0.8682 N·m by form, as the file says', () => {
    expect(threadForms.map((form) => threadTorque(1000, m10, 0.12, form).toFixed(4))).toEqual([
      '0.8704',
      '0.8641',
      '0.8682',
    ])
  })

  it('without friction is the work of the pitch alone', () => {
    expect(threadLever(m10, 0, 'wedge')).toBeCloseTo(0.0015 / (2 * Math.PI), 15)
    expect(threadLever(m10, 0, 'linear')).toBeCloseTo(0.0015 / (2 * Math.PI), 15)
  })

  it('grows with friction in every form, and the wedge is never below the linear form', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        (mu, more) =>
          threadForms.every((form) => threadLever(m10, mu + more, form) > threadLever(m10, mu, form)) &&
          threadLever(m10, mu, 'wedge') >= threadLever(m10, mu, 'linear'),
      ),
      { seed },
    )
  })

  it('of a square screw without friction gives all work back', () => {
    const lever = wedgeLever({ lead: 0.005, dm: 0.0225, mu: 0, flank: 0 })
    expect(screwEfficiency(1000, 0.005, 1000 * lever)).toBeCloseTo(1, 12)
  })

  it('asks less to loosen than to tighten, and nothing holds a slippery steep screw', () => {
    const wedge = { lead: 0.0015, dm: m10.d2, mu: 0.12 }
    expect(wedgeLever(wedge, 'loosen')).toBeLessThan(wedgeLever(wedge))
    expect(wedgeLever({ lead: 0.02, dm: 0.02, mu: 0.05 }, 'loosen')).toBeLessThan(0)
  })
})
