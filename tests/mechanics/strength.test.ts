import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  clampAtPlainShare,
  clampAtYieldShare,
  plainShare,
  stressOf,
  twistModulus,
  yieldShare,
} from '../../src/mechanics/strength.ts'
import { metricThread, threadForms, threadLever } from '../../src/mechanics/thread-friction.ts'

const m12 = metricThread(0.012, 0.00175)
const seed = 20261125

describe('the clamp force that a bolt bears while it is turned', () => {
  it('is 63.2 kN for M12 10.9 at 0.12 and 90 % of yield, 11 % below the pull alone, as the file says', () => {
    const F = clampAtYieldShare(0.9, 940e6, m12, threadLever(m12, 0.12, 'wedge'), 'plastic')
    expect(F / 1000).toBeCloseTo(63.2, 1)
    expect(F / (0.9 * 940e6 * m12.As)).toBeCloseTo(0.887, 3)
  })

  it('puts exactly that share of yield on the bolt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0.02, max: 0.4, noNaN: true }),
        fc.constantFrom('plastic', 'elastic'),
        fc.constantFrom(...threadForms),
        (nu, mu, modulus, form) => {
          const lever = threadLever(m12, mu, form)
          const F = clampAtYieldShare(nu, 660e6, m12, lever, modulus)
          return Math.abs(yieldShare(F, 660e6, m12, lever, modulus) - nu) < 1e-12
        },
      ),
      { seed },
    )
  })

  it('falls with friction, and the older modulus allows less', () => {
    const at = (mu: number, modulus: 'plastic' | 'elastic') =>
      clampAtYieldShare(0.9, 940e6, m12, threadLever(m12, mu, 'wedge'), modulus)
    expect(at(0.14, 'plastic')).toBeLessThan(at(0.12, 'plastic'))
    expect(at(0.12, 'elastic')).toBeLessThan(at(0.12, 'plastic'))
    expect(twistModulus(0.01, 'plastic') / twistModulus(0.01, 'elastic')).toBeCloseTo(4 / 3, 12)
  })

  it('without twist is the stress on the area', () => {
    expect(stressOf(10_000, 0, m12, 'plastic').reduced).toBeCloseTo(10_000 / m12.As, 3)
    expect(clampAtPlainShare(0.75, 580e6, m12.As)).toBeCloseTo(0.75 * 580e6 * m12.As, 6)
    expect(plainShare(clampAtPlainShare(0.75, 580e6, m12.As), 580e6, m12.As)).toBeCloseTo(0.75, 12)
  })
})
