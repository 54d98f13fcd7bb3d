import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flatRadius } from '../../src/mechanics/seat.ts'
import { metricThread, threadForms } from '../../src/mechanics/thread-friction.ts'
import { clampRatio, nutFactorByFriction, tighteningLever, torqueShares } from '../../src/mechanics/torque-split.ts'

const m10 = metricThread(0.01, 0.0015)
const rs = flatRadius(0.01463, 0.011)
const even = (mu: number) => ({ thread: mu, seat: mu })
const mu = fc.double({ min: 0.02, max: 0.5, noNaN: true })
const seed = 20261125

describe('where the torque goes', () => {
  it('is 14.6 % pitch, 38.3 % thread and 47.1 % seat for M10 at 0.12, as the file says', () => {
    const { pitch, thread, seat } = torqueShares(m10, even(0.12), rs)
    expect([pitch, thread, seat].map((share) => (share * 100).toFixed(1))).toEqual(['14.6', '38.3', '47.1'])
    expect(nutFactorByFriction(m10, even(0.12), rs, 'linear')).toBeCloseTo(0.163, 3)
  })

  it('always adds up to the whole', () => {
    fc.assert(
      fc.property(mu, mu, (inThread, seat) => {
        const shares = torqueShares(m10, { thread: inThread, seat }, rs)
        return Math.abs(shares.pitch + shares.thread + shares.seat - 1) < 1e-12
      }),
      { seed },
    )
  })

  it('leaves less clamp force for more friction, in thread or seat, in every form', () => {
    fc.assert(
      fc.property(mu, mu, fc.double({ min: 1e-4, max: 0.2, noNaN: true }), (inThread, seat, more) =>
        threadForms.every(
          (form) =>
            tighteningLever(m10, { thread: inThread + more, seat }, rs, form) >
              tighteningLever(m10, { thread: inThread, seat }, rs, form) &&
            tighteningLever(m10, { thread: inThread, seat: seat + more }, rs, form) >
              tighteningLever(m10, { thread: inThread, seat }, rs, form),
        ),
      ),
      { seed },
    )
  })

  it('gives far less for oil on the threads alone than on threads and seat: M12 × 1.5 on a 60° cone, +10 % and +45 %', () => {
    const thread = metricThread(0.012, 0.0015)
    const both = clampRatio(thread, 0.0155, even(0.15), even(0.1), 'linear')
    const threads = clampRatio(thread, 0.0155, even(0.15), { thread: 0.1, seat: 0.15 }, 'linear')
    expect(threads - 1).toBeCloseTo(0.0995, 3)
    expect(both - 1).toBeCloseTo(0.4508, 3)
  })
})
