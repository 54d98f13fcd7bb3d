import { describe, expect, it } from 'vitest'
import { againstFirst, holmSteps } from '../../src/mechanics/against-first.ts'
import { compareSamples, findingsOf, type Margin } from '../../src/mechanics/two-samples.ts'
import { normalFrom, SEED, seeded } from '../support/random.ts'

const usual: Margin = { m: 0.04, confidence: 0.95 }
const claimsFor = (ps: readonly number[]) => (index: number, level: number) => (ps[index] as number) <= level

describe('Holm’s steps', () => {
  // 0.01 ≤ 0.05/4, then 0.0133 ≤ 0.05/3, then 0.03 > 0.05/2: worked by hand.
  it('let two of four stand, where Bonferroni would let one', () => {
    expect(holmSteps(4, 0.05, claimsFor([0.03, 0.01, 0.0133, 0.04]))).toEqual([false, true, true, false])
  })

  it('stop at the first that fails, although a later one is below α', () => {
    expect(holmSteps(3, 0.05, claimsFor([0.02, 0.03, 0.04]))).toEqual([false, false, false])
  })
})

describe('sets against the first', () => {
  const base = [100, 101, 99, 100, 100.5]

  it('with one other are the comparison of two', () => {
    const other = [104, 105, 103, 104]
    const { each, eachAt } = againstFirst(base, [other], usual)
    expect(eachAt).toBe(0.95)
    expect(each[0]).toEqual(compareSamples(base, other, usual))
  })

  it('hold their intervals together, so each is wider', () => {
    const others = [
      [110, 111, 109, 110],
      [100.4, 101, 99.6, 100.2, 99.9],
      [97, 103, 95, 108],
    ]
    const { each, eachAt } = againstFirst(base, others, usual)
    expect(eachAt).toBeCloseTo(1 - 0.05 / 3, 12)
    expect(each.map(({ verdict }) => verdict)).toEqual([
      'a-difference-that-matters',
      'no-difference-that-matters',
      'not-decided',
    ])
    for (const [index, other] of others.entries()) {
      const alone = compareSamples(base, other, usual)
      expect(each[index]?.absolute.low).toBeLessThan(alone.absolute.low)
      expect(each[index]?.absolute.high).toBeGreaterThan(alone.absolute.high)
    }
    expect(each[2]?.readingsNeeded).toBeGreaterThan(0)
  })
})

describe('false words over many runs', () => {
  const TRIALS = 1500
  const atMost = 0.05 + 3 * Math.sqrt((0.05 * 0.95) / TRIALS)
  const drawn = (differences: readonly number[], n: number, s: number) => {
    const random = seeded(SEED)
    const draw = (middle: number) => Array.from({ length: n }, () => middle + s * normalFrom(random))
    return Array.from({ length: TRIALS }, () =>
      againstFirst(
        draw(100),
        differences.map((d) => draw(100 * (1 + d))),
        usual,
      ),
    )
  }
  const share = <T>(all: readonly T[], is: (one: T) => boolean): number => all.filter(is).length / all.length

  it.each([2, 3, 4, 6])(
    '%i conditions alike: any difference seen, or any interval without 0, in 5 % at most',
    (count) => {
      const runs = drawn(Array(count - 1).fill(0), 6, 2)
      expect(
        share(runs, ({ each }) =>
          each.some(({ verdict }) => verdict.startsWith('seen') || verdict.startsWith('a-diff')),
        ),
      ).toBeLessThan(atMost)
      expect(
        share(runs, ({ each }) => each.some(({ absolute }) => absolute.low > 0 || absolute.high < 0)),
      ).toBeLessThan(atMost)
    },
  )

  it('alone each of five would cry out far more often: the control is needed', () => {
    const runs = drawn(Array(5).fill(0), 6, 2)
    const alone = share(runs, ({ each }) => each.some(({ a, b }) => findingsOf(a, b, usual).excludesZero))
    expect(alone).toBeGreaterThan(0.1)
  })

  it.each([2, 4, 6])('%i conditions on the margin: none is told inside or beyond in more than 5 %', (count) => {
    const runs = drawn(Array(count - 1).fill(0.04), 8, 1.5)
    const told = (start: readonly string[]) =>
      share(runs, ({ each }) => each.some(({ verdict }) => start.includes(verdict)))
    expect(told(['no-difference-that-matters', 'seen-too-small-to-matter'])).toBeLessThan(atMost)
    expect(told(['a-difference-that-matters'])).toBeLessThan(atMost)
  })

  it('one of four that differs by 15 % is found nearly always', () => {
    const runs = drawn([0, 0.15, 0], 8, 2)
    expect(share(runs, ({ each }) => each[1]?.verdict === 'a-difference-that-matters')).toBeGreaterThan(0.98)
  })
})
