import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { muSeat, muThread, muTotal } from '../../src/mechanics/mu-total.ts'
import { metricThread, threadTorque } from '../../src/mechanics/thread-friction.ts'
import { tighteningLever } from '../../src/mechanics/torque-split.ts'

const m10 = metricThread(0.01, 0.0015)
const rs = 0.012815 / 2
const seed = 20261125

describe('one friction number from torque and clamp force', () => {
  it('is 0.1204 for M10 at 48.46 N·m and 29.6 kN, as the file says', () => {
    expect(muTotal(48.46, 29_600, { P: 0.0015, d2: 0.009026 }, rs)).toBeCloseTo(0.1204, 4)
  })

  it('returns the friction that went in, by the linear form', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.6, noNaN: true }), (mu) => {
        const T = 20_000 * tighteningLever(m10, { thread: mu, seat: mu }, rs, 'linear')
        return Math.abs(muTotal(T, 20_000, m10, rs) - mu) < 1e-12
      }),
      { seed },
    )
  })

  it('comes apart into thread and seat where the torque in the thread is known', () => {
    const T_th = threadTorque(20_000, m10, 0.1, 'linear')
    const T = T_th + 20_000 * 0.16 * rs
    expect(muThread(T_th, 20_000, m10)).toBeCloseTo(0.1, 12)
    expect(muSeat(T, T_th, 20_000, rs)).toBeCloseTo(0.16, 12)
  })

  it('comes out negative where the torque does not even pay for the pitch', () => {
    expect(muTotal(4, 20_000, m10, rs)).toBeLessThan(0)
  })
})
