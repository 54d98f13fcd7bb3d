import { describe, expect, it } from 'vitest'
import { foldRuns, readingsUnder, runOf } from '../../src/bench/book.ts'
import {
  judgeConditions,
  judgeFollowing,
  judgeNutFactor,
  judgePairs,
  judgeSeries,
  valuesUnder,
} from '../../src/bench/judge.ts'
import { foresee, foundSpread } from '../../src/bench/power.ts'
import type { RunDraft, RunEntry, RunReading } from '../../src/bench/run.ts'
import { quantity } from '../../src/core/quantity.ts'
import { units } from '../../src/core/unit.ts'
import { measured } from '../../src/register/parts.ts'
import { entrySchema } from '../../src/register/records.ts'
import { normalFrom, SEED, seeded } from '../support/random.ts'

const by = { role: 'mechanic', door: 'chat' } as const
const nm = (value: number) => measured(quantity(value, units['N·m']))
const kn = (value: number) => measured(quantity(value, units.kN))

let made = 0
const entry = (draft: Omit<RunDraft, 'by'>): RunEntry => {
  made += 1
  return { by, id: `e${made}`, at: '2026-03-01T10:00:00.000Z', ...draft } as RunEntry
}
const conditions = ['A', 'B', 'C'].map((name) => ({ name, what: `grease ${name}` }))
const opening = entry({
  kind: 'run',
  body: {
    tag: 'R-012',
    date: '2026-03-01',
    asked: 'Does the grease change the clamp force?',
    same: ['wrench W-07', 'M10 8.8'],
    conditions,
    diameter: measured(quantity(10, units.mm)),
    again: [1, 3, 6],
  },
})
const read = (condition: string, readings: RunReading['readings'], more: Partial<RunReading> = {}): RunEntry =>
  entry({ kind: 'run-reading', body: { run: 'r-012', date: '2026-03-01', condition, readings, ...more } })
const clamps = (values: readonly number[]) => values.map((value) => ({ torque: nm(50), clamp: kn(value) }))
const run = (...entries: readonly RunEntry[]) => {
  const found = runOf(foldRuns([opening, ...entries]), 'R-012')
  if (!found) throw new Error('no run')
  return found
}

const A = read('A', clamps([25, 25.2, 24.8, 25.1, 24.9]))
const B = read('b', clamps([28, 28.3, 27.8, 28.1, 27.9]))

describe('entries of a run', () => {
  it('are of the shape that a store hands back', () => {
    for (const one of [opening, A, B]) expect(entrySchema.safeParse(JSON.parse(JSON.stringify(one))).success).toBe(true)
  })

  it('are refused without any reading, with two conditions of one name, with a correction without why', () => {
    const twice = { ...opening, body: { ...opening.body, conditions: [conditions[0], { name: 'a', what: 'x' }] } }
    expect(entrySchema.safeParse(twice).success).toBe(false)
    expect(entrySchema.safeParse({ ...A, body: { ...A.body, readings: [{ piece: '1' }] } }).success).toBe(false)
    expect(entrySchema.safeParse({ ...A, supersedes: 'e1' }).success).toBe(false)
    const backwards = { ...opening, body: { ...opening.body, again: [3, 1] } }
    expect(entrySchema.safeParse(backwards).success).toBe(false)
  })
})

describe('the book of runs', () => {
  it('keeps readings in order with their day and who took them, and the plan with its due days', () => {
    const month = read('A', clamps([24.5]), { again: 1, date: '2026-04-02' })
    const found = run(A, B, month)
    expect(readingsUnder(found, 'a').map(({ clamp, role }) => [clamp?.value, role])).toEqual(
      [25_000, 25_200, 24_800, 25_100, 24_900].map((force) => [force, 'mechanic']),
    )
    expect(found.again).toEqual([
      { months: 1, due: '2026-04-01', isDone: true },
      { months: 3, due: '2026-06-01', isDone: false },
      { months: 6, due: '2026-09-01', isDone: false },
    ])
  })

  it('puts a correction in the place of what it corrects, which stays to be seen', () => {
    const mended = { ...read('A', clamps([26, 26])), supersedes: A.id, why: 'misread' }
    const found = run(A, B, mended)
    expect(valuesUnder(found, 'A', 'clamp')).toEqual([26_000, 26_000])
    expect(found.readings[0]?.earlier).toEqual([A])
  })

  it('lists what fits nowhere with its reason', () => {
    const end = () => entry({ kind: 'run-finish', body: { run: 'R-012', date: '2026-03-02' } })
    const odd = [
      A,
      read('D', clamps([1])),
      read('A', clamps([1]), { run: 'R-999' }),
      { ...read('A', clamps([1])), supersedes: 'gone', why: 'x' },
      { ...end(), supersedes: A.id, why: 'x' },
      end(),
      end(),
      A,
    ]
    const { strays } = foldRuns([opening, ...odd])
    expect(strays.map(({ reason }) => reason).sort()).toEqual(
      [
        'finished-already',
        'no-such-condition',
        'no-such-run',
        'same-id',
        'supersedes-other-kind',
        'supersedes-unknown',
      ].sort(),
    )
  })
})

describe('what a run says', () => {
  it('each condition against the first; one not read yet is told as such and already counts', () => {
    const judged = judgeConditions(run(A, B), 'clamp')
    if (!judged.told) throw new Error(judged.why)
    expect(judged.value.eachAt).toBeCloseTo(0.975, 12)
    const [b, c] = judged.value.each
    expect(b?.comparison.told && b.comparison.value.verdict).toBe('a-difference-that-matters')
    expect(b?.comparison.told && b.comparison.value.difference.value).toBeCloseTo(0.12, 2)
    expect(c?.comparison).toEqual({ told: false, why: 'too-few' })
  })

  it('nothing where there is too little, and why', () => {
    expect(judgeConditions(run(read('A', clamps([25]))), 'clamp')).toEqual({ told: false, why: 'too-few' })
    expect(judgeNutFactor(run(read('A', clamps([25]))), 'A')).toEqual({ told: false, why: 'too-few' })
    expect(judgeFollowing(run(A), 'A')).toEqual({ told: false, why: 'no-line' })
    expect(judgeSeries(run(A), 'A', 'clamp')).toEqual({ told: false, why: 'no-line' })
  })

  it('K with the next bolt: 50 N·m, 25 kN, 10 mm is 0.2', () => {
    const found = judgeNutFactor(run(A), 'A')
    if (!found.told) throw new Error(found.why)
    expect(found.value.mean).toBeCloseTo(0.2, 4)
    // t(0.975, 4) = 2.776, s of K about 0.00127, √(1 + 1/5).
    expect(found.value.halfWidth).toBeCloseTo(0.00385, 4)
  })

  it('pairs by piece, and names the piece that has no partner', () => {
    const of = (values: readonly number[]) => values.map((value, at) => ({ torque: nm(value), piece: String(at + 1) }))
    const found = judgePairs(
      run(read('A', of([80, 100, 120, 140])), read('B', of([88.1, 110, 132.2]))),
      ['A', 'B'],
      'torque',
    )
    if (!found.told) throw new Error(found.why)
    expect(found.value.n).toBe(3)
    expect(found.value.unpaired).toEqual(['4'])
    expect(found.value.verdict).toBe('a-difference-that-matters')
  })

  it('a fall over its re-runs, by days and not by readings', () => {
    const later = (again: number, date: string, values: readonly number[]) => read('A', clamps(values), { again, date })
    const found = judgeSeries(
      run(
        A,
        later(1, '2026-04-01', [24.5, 24.6]),
        later(3, '2026-06-01', [23.7]),
        later(6, '2026-09-01', [22.1, 22.3]),
      ),
      'A',
      'clamp',
    )
    if (!found.told) throw new Error(found.why)
    expect(found.value.dots).toHaveLength(4)
    expect(found.value.relative.value).toBeCloseTo(-0.112, 2)
    expect(found.value.verdict).toBe('a-difference-that-matters')
  })

  it('a wrench that reads 2 % high all along follows its reference so', () => {
    const noise = [0.05, -0.05, 0.02, -0.04, 0.03]
    const readings = [20, 40, 60, 80, 100].map((torque, at) => ({
      torque: nm(torque),
      wrench: nm(1.02 * torque + (noise[at] as number)),
    }))
    const found = judgeFollowing(run(read('A', readings)), 'A')
    if (!found.told) throw new Error(found.why)
    expect(found.value.gain.value).toBeCloseTo(0.02, 3)
    expect(found.value.verdict).toBe('seen-too-small-to-matter')
    expect(Math.abs(found.value.offset.value)).toBeLessThan(found.value.offset.high - found.value.offset.value)
  })
})

describe('a wrench at one setting', () => {
  it('follows nothing: what scatters around it is no line', () => {
    const one = [99, 101, 98.5, 100.4, 99.7].map((torque) => ({ torque: nm(torque), wrench: nm(100) }))
    expect(judgeFollowing(run(read('A', one)), 'A')).toEqual({ told: false, why: 'no-line' })
    const scattered = one.map(({ torque }, at) => ({ torque, wrench: nm(100 + at / 10) }))
    expect(judgeFollowing(run(read('A', scattered)), 'A')).toEqual({ told: false, why: 'no-line' })
  })
})

describe('before the first reading', () => {
  const margin = { m: 0.04, confidence: 0.95 }

  it('more readings see less, more conditions take more', () => {
    const few = foresee(5, 0.03, 2, margin)
    expect(foresee(10, 0.03, 2, margin).smallestSeen).toBeLessThan(few.smallestSeen)
    expect(foresee(5, 0.03, 4, margin).smallestSeen).toBeGreaterThan(few.smallestSeen)
    expect(foresee(5, 0.03, 4, margin).toSeeMargin as number).toBeGreaterThan(few.toSeeMargin as number)
  })

  it('the numbers promised keep what they promise in drawn runs of three conditions', () => {
    const TRIALS = 600
    const { smallestSeen: delta } = foresee(6, 0.05, 3, margin)
    const random = seeded(SEED)
    const draw = (middle: number) => clamps(Array.from({ length: 6 }, () => middle + 0.05 * 25 * normalFrom(random)))
    let seen = 0
    for (let trial = 0; trial < TRIALS; trial++) {
      const judged = judgeConditions(run(read('A', draw(25)), read('B', draw(25 * (1 + delta)))), 'clamp')
      const b = judged.told ? judged.value.each[0]?.comparison : undefined
      if (b?.told && !['not-decided', 'no-difference-that-matters'].includes(b.value.verdict)) seen++
    }
    expect(Math.abs(seen / TRIALS - 0.8)).toBeLessThan(3 * Math.sqrt(0.16 / TRIALS))
  })

  it('takes the spread from what was read', () => {
    expect(
      foundSpread([
        [99, 100, 101],
        [109, 110, 111],
      ]),
    ).toBeCloseTo(0.01, 12)
    expect(foundSpread([[100], [101]])).toBeUndefined()
    expect(foundSpread([[100, 100]])).toBeUndefined()
  })
})
