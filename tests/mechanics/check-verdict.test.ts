import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  checkVerdicts,
  classesOf,
  type IsoClass,
  isoTypes,
  judgeCheck,
  judgePoint,
  limitOf,
  verdictOfDeviation,
  worstOf,
} from '../../src/mechanics/check-verdict.ts'
import { referenceWindow } from '../../src/mechanics/deviation.ts'

const simple = { limit: 0.04, rule: 'simple' } as const
const guarded = { limit: 0.04, rule: 'guarded', uncertainty: 0.01 } as const
const seed = 20261125

describe('the verdict on one deviation', () => {
  it('with a guard band of 1 % in 4 % falls as the file says, on both sides', () => {
    for (const sign of [1, -1]) {
      expect(verdictOfDeviation(sign * 0.03, guarded)).toBe('pass')
      expect(verdictOfDeviation(sign * 0.035, guarded)).toBe('pass-in-doubt')
      expect(verdictOfDeviation(sign * 0.045, guarded)).toBe('fail-in-doubt')
      expect(verdictOfDeviation(sign * 0.051, guarded)).toBe('fail')
    }
  })

  it('by the simple rule knows pass and fail only, and the limit itself passes', () => {
    expect(verdictOfDeviation(0.04, simple)).toBe('pass')
    expect(verdictOfDeviation(0.0401, simple)).toBe('fail')
    expect(verdictOfDeviation(0.0401, { ...simple, uncertainty: 0.02 })).toBe('fail')
  })

  it('cannot be a plain pass where the reference is as doubtful as the limit', () => {
    expect(verdictOfDeviation(0, { limit: 0.04, rule: 'guarded', uncertainty: 0.05 })).toBe('pass-in-doubt')
  })

  it('without uncertainty is the same by both rules', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        (a) => verdictOfDeviation(a, simple) === verdictOfDeviation(a, { ...guarded, uncertainty: 0 }),
      ),
      { seed },
    )
  })

  it('never gets better as the deviation grows', () => {
    const size = fc.double({ min: 0, max: 0.2, noNaN: true })
    fc.assert(
      fc.property(size, size, (one, other) => {
        const rank = (a: number) => checkVerdicts.indexOf(verdictOfDeviation(a, guarded))
        return one <= other ? rank(one) <= rank(other) : rank(other) <= rank(one)
      }),
      { seed },
    )
  })
})

describe('the verdict on a point', () => {
  it('is that of its worst reading, not of its mean', () => {
    const point = judgePoint({ setting: 100, references: [106, 94, 100] }, simple)
    expect(point.mean).toBeCloseTo(100, 12)
    expect(point.deviation).toBeCloseTo(0, 12)
    expect(point.verdict).toBe('fail')
    expect(point.spread).toBe(12)
  })

  it('passes exactly inside the window of the reference', () => {
    const { low, high } = referenceWindow(100, 0.04)
    expect(judgePoint({ setting: 100, references: [low, high] }, simple).verdict).toBe('pass')
    expect(judgePoint({ setting: 100, references: [low - 0.01] }, simple).verdict).toBe('fail')
    expect(judgePoint({ setting: 100, references: [high + 0.01] }, simple).verdict).toBe('fail')
  })

  it('without a reading is no pass', () => {
    expect(worstOf([])).toBe('fail')
  })
})

describe('the verdict on a check', () => {
  it('is that of its worst point', () => {
    const points = [
      { setting: 20, references: [20.1, 20.2, 19.9] },
      { setting: 60, references: [62.2, 62.1, 62.3] },
      { setting: 100, references: [100, 100.4, 99.8] },
    ]
    const { points: judged, verdict } = judgeCheck(points, guarded)
    expect(judged.map((point) => point.verdict)).toEqual(['pass', 'pass-in-doubt', 'pass'])
    expect(verdict).toBe('pass-in-doubt')
  })
})

describe('the limit of a kind and class', () => {
  const wide: Readonly<Record<string, readonly IsoClass[]>> = {
    indicating: ['A', 'D'],
    setting: ['D', 'E', 'F', 'G'],
  }
  for (const type of isoTypes) {
    for (const isoClass of classesOf[type]) {
      it(`${type} ${isoClass} is 6 % up to 10 N·m and ${wide[type]?.includes(isoClass) ? 6 : 4} % above`, () => {
        expect(limitOf(type, isoClass, 10)).toBe(0.06)
        expect(limitOf(type, isoClass, 10.1)).toBe(wide[type]?.includes(isoClass) ? 0.06 : 0.04)
      })
    }
  }
})
