// Published decision rules against the verdicts on a check. Measured size of a deviation beside its limit, doubt normal, U = 2u.
// All numbers from memory: ILAC-G8:09/2019 (guard bands), JCGM 106:2012 (probability of conformity).
import erfc from '@stdlib/math-base-special-erfc'
import { describe, expect, it } from 'vitest'
import { type CheckVerdict, verdictOfDeviation } from '../../src/mechanics/check-verdict.ts'

/** Standard normal share below z. */
const below = (z: number): number => 0.5 * erfc(-z / Math.SQRT2)
/** The chance that the true size lies within the limit. */
const conforms = (size: number, limit: number, u: number): number => below((limit - size) / u)
const verdict = (size: number, limit: number, u: number): CheckVerdict =>
  verdictOfDeviation(size, { limit, rule: 'guarded', uncertainty: 2 * u })

describe('ILAC-G8:09/2019: guard band w = U, decisions of four kinds', () => {
  // Along a limit of 4 % and u = 0.5 %: the worst case of each verdict stands at the edge to the next.
  const sizes = Array.from({ length: 601 }, (_, place) => place * 0.0001)
  const chances = (wanted: CheckVerdict): number[] =>
    sizes.filter((size) => verdict(size, 0.04, 0.005) === wanted).map((size) => conforms(size, 0.04, 0.005))

  it('a pass is wrong at most 2.5 times in a hundred', () => {
    expect(1 - Math.min(...chances('pass'))).toBeLessThan(0.025)
  })

  it('a pass in doubt is wrong at most every second time', () => {
    expect(1 - Math.min(...chances('pass-in-doubt'))).toBeLessThanOrEqual(0.5 + 1e-9)
    expect(1 - Math.max(...chances('pass-in-doubt'))).toBeGreaterThan(0.02)
  })

  it('a fail in doubt is wrong at most every second time, a fail at most 2.5 times in a hundred', () => {
    expect(Math.max(...chances('fail-in-doubt'))).toBeLessThan(0.5)
    expect(Math.max(...chances('fail'))).toBeLessThan(0.025)
  })
})

describe('JCGM 106:2012: worked examples of conformity', () => {
  it('7.3, breakdown voltage at most −5.40 V, measured −5.47 V with u = 0.05 V: 92 %, a pass in doubt', () => {
    // As a size below a limit: 10 V less is the same question.
    expect(conforms(10 - 5.47, 10 - 5.4, 0.05)).toBeCloseTo(0.92, 2)
    expect(verdict(10 - 5.47, 10 - 5.4, 0.05)).toBe('pass-in-doubt')
  })

  it('7.4, burst strength at least 490 kPa, measured 509.7 kPa with u = 8.6 kPa: 99 %, a pass', () => {
    expect(conforms(1000 - 509.7, 1000 - 490, 8.6)).toBeCloseTo(0.989, 3)
    expect(verdict(1000 - 509.7, 1000 - 490, 8.6)).toBe('pass')
  })

  it('8.3.3, guarded rejection: 100 km/h is exceeded for sure (99.9 %) from 107 km/h on with u = 2 %: a fail', () => {
    expect(1 - conforms(107, 100, 0.02 * 107)).toBeGreaterThan(0.999)
    expect(1 - conforms(106, 100, 0.02 * 106)).toBeLessThan(0.999)
    expect(verdict(107, 100, 0.02 * 107)).toBe('fail')
    expect(verdict(103, 100, 0.02 * 103)).toBe('fail-in-doubt')
  })
})
