// What a run promises, kept over many drawn runs: two to six conditions, read, folded out of entries and judged as every run is.
// A count must lie where the binomial law puts it for the stated chance, but for one in ten thousand.
import { describe, expect, it } from 'vitest'
import { foldRuns, runOf } from '../../src/bench/book.ts'
import { type ConditionsJudged, judgeConditions } from '../../src/bench/judge.ts'
import { foresee } from '../../src/bench/power.ts'
import type { RunEntry } from '../../src/bench/run.ts'
import { quantity } from '../../src/core/quantity.ts'
import { units } from '../../src/core/unit.ts'
import { measured } from '../../src/register/parts.ts'
import { fewestOf, mostOf } from '../support/binomial.ts'
import { normalFrom, type Random, SEED, seeded } from '../support/random.ts'

const ALPHA = 0.05
const margin = { m: 0.04, confidence: 1 - ALPHA }
const names = ['A', 'B', 'C', 'D', 'E', 'F']
const MIDDLE = 30 // kN

const entry = (kind: string, body: object, n: number): RunEntry =>
  ({ kind, body, id: `e${n}`, at: '2026-03-01T10:00:00.000Z', by: { role: 'mechanic', door: 'chat' } }) as RunEntry

const judged = (sets: ReadonlyArray<readonly number[]>): ConditionsJudged => {
  const conditions = names.slice(0, sets.length).map((name) => ({ name, what: name }))
  const body = { tag: 'B-01', date: '2026-03-01', asked: 'Does it differ?', same: [], conditions }
  const readings = sets.map((values, at) =>
    entry(
      'run-reading',
      {
        run: 'B-01',
        date: '2026-03-01',
        condition: names[at],
        readings: values.map((value) => ({ clamp: measured(quantity(value, units.kN)) })),
      },
      at + 1,
    ),
  )
  const run = runOf(foldRuns([entry('run', body, 0), ...readings]), 'B-01')
  const found = run ? judgeConditions(run, 'clamp', margin) : undefined
  if (!found?.told) throw new Error('not judged')
  return found.value
}

/** Readings of the first condition, then of each other one so far from it; scatter as a fraction of the first. */
const drawnSets = (random: Random, differences: readonly number[], n: number, spread: number): number[][] =>
  [0, ...differences].map((d) =>
    Array.from({ length: n }, () => MIDDLE * (1 + d) + spread * MIDDLE * normalFrom(random)),
  )

const alike = (conditions: number): number[] => Array(conditions - 1).fill(0)
const only = (conditions: number, difference: number): number[] => [difference, ...alike(conditions - 1)]

const verdictsOf = ({ each }: ConditionsJudged): string[] =>
  each.map(({ comparison }) => (comparison.told ? comparison.value.verdict : 'untold'))
const seen = ['seen-too-small-to-matter', 'seen-not-decided', 'a-difference-that-matters']
const inside = ['seen-too-small-to-matter', 'no-difference-that-matters']
const isAny = (all: readonly string[], of: readonly string[]): boolean => all.some((one) => of.includes(one))

const counted = (
  trials: number,
  draw: (random: Random) => number[][],
  is: (found: ConditionsJudged, sets: number[][]) => boolean,
): number => {
  const random = seeded(SEED)
  let count = 0
  for (let trial = 0; trial < trials; trial++) {
    const sets = draw(random)
    if (is(judged(sets), sets)) count++
  }
  return count
}

describe('counts that chance gives', () => {
  // Ten fair coins, by hand: 10 heads once in 1024, 9 or 10 eleven times in 1024.
  it('are bounded as the law has it', () => {
    expect(mostOf(10, 0.5, 1.5 / 1024)).toBe(9)
    expect(mostOf(10, 0.5, 11.5 / 1024)).toBe(8)
    expect(fewestOf(10, 0.5, 11.5 / 1024)).toBe(2)
  })
})

describe.each([2, 3, 4, 5, 6])('runs of %i conditions', (conditions) => {
  const TRIALS = 1000
  const FEWER = 400

  it('all alike: a difference is told of any of them about as seldom as is stated, neither more often nor never', () => {
    const alarms = counted(
      TRIALS,
      (random) => drawnSets(random, alike(conditions), 6, 0.03),
      (found) => isAny(verdictsOf(found), seen),
    )
    expect(alarms).toBeLessThanOrEqual(mostOf(TRIALS, ALPHA))
    // They share a baseline, so that the steps err less than stated, but never down to half of it.
    expect(alarms).toBeGreaterThanOrEqual(fewestOf(TRIALS, ALPHA / 2))
  })

  it('all intervals together hold what is true as often as is stated, or more often', () => {
    const truths = names.slice(1, conditions).map((_, at) => 0.03 * (at - 1))
    const missed = counted(
      FEWER,
      (random) => drawnSets(random, truths, 6, 0.03),
      ({ each }) =>
        each.some(({ comparison }, at) => {
          if (!comparison.told) return true
          const { low = -1, high = 1 } = comparison.value.difference
          const truth = truths[at] as number
          return truth < low || truth > high
        }),
    )
    expect(missed).toBeLessThanOrEqual(mostOf(FEWER, ALPHA))
  })

  it.each([0.04, -0.04])('all on the margin, %d: told to be inside it, or beyond, no more often', (edge) => {
    let [within, beyond] = [0, 0]
    const random = seeded(SEED)
    for (let trial = 0; trial < FEWER; trial++) {
      const told = verdictsOf(judged(drawnSets(random, Array(conditions - 1).fill(edge), 8, 0.015)))
      if (isAny(told, inside)) within++
      if (isAny(told, ['a-difference-that-matters'])) beyond++
    }
    expect(within).toBeLessThanOrEqual(mostOf(FEWER, ALPHA))
    expect(beyond).toBeLessThanOrEqual(mostOf(FEWER, ALPHA))
  })

  it('the smallest difference that is promised to be seen is missed one time in five, not more, not less', () => {
    const { smallestSeen } = foresee(6, 0.03, conditions, margin)
    const found = counted(
      FEWER,
      (random) => drawnSets(random, only(conditions, smallestSeen), 6, 0.03),
      (one) => isAny(verdictsOf(one).slice(0, 1), seen),
    )
    expect(found).toBeGreaterThanOrEqual(fewestOf(FEWER, 0.8))
    expect(found).toBeLessThanOrEqual(mostOf(FEWER, 0.8))
  })

  it('so many readings as are promised to tell alike from alike do it four times in five or more', () => {
    const n = foresee(6, 0.03, conditions, margin).toTellAlike as number
    const told = counted(
      FEWER / 2,
      (random) => drawnSets(random, alike(conditions), n, 0.03),
      (one) => isAny(verdictsOf(one).slice(0, 1), inside),
    )
    expect(told).toBeGreaterThanOrEqual(fewestOf(FEWER / 2, 0.8))
  })
})

describe('without the care for all of them together', () => {
  it('six conditions, each judged in a run of its own with the first, would pass the bound', () => {
    const TRIALS = 500
    const alarms = counted(
      TRIALS,
      (random) => drawnSets(random, alike(6), 6, 0.03),
      (_, [first, ...others]) => others.some((one) => isAny(verdictsOf(judged([first as number[], one])), seen)),
    )
    expect(alarms).toBeGreaterThan(mostOf(TRIALS, ALPHA))
  })
})
