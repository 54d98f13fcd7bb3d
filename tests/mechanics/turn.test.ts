import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clampForTurn, pastYield, turnForClamp } from '../../src/mechanics/turn.ts'

const stiff = fc.double({ min: 1e7, max: 1e10, noNaN: true })
const seed = 20261125

describe('turn of the nut', () => {
  it('is 30.86° for 1/2-13 at 63750 psi over 3 in with a rigid joint, as the file says', () => {
    expect(turnForClamp(63_750, 1 / 13, 29e6 / 3, Number.POSITIVE_INFINITY)).toBeCloseTo(30.86, 2)
  })

  it('and clamp force lead back to each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), stiff, stiff, (degrees, kb, kj) => {
        const F = clampForTurn(degrees, 0.00175, kb, kj)
        return Math.abs(turnForClamp(F, 0.00175, kb, kj) / degrees - 1) < 1e-12
      }),
      { seed },
    )
  })

  it('gives less clamp force on a softer joint', () => {
    expect(clampForTurn(60, 0.00175, 3e8, 1e9)).toBeLessThan(clampForTurn(60, 0.00175, 3e8, 2e9))
  })

  it('stops at yield', () => {
    expect(pastYield(54_000, 640e6, 84.3e-6)).toBe(true)
    expect(pastYield(53_900, 640e6, 84.3e-6)).toBe(false)
  })
})
