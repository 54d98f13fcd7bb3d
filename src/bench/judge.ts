// What may be said from a run's readings: conditions against the first, the same pieces under two, a series over months, K, and
// the wrench against what was delivered. Every verdict is one of two-samples.ts; where too little is there, the reason instead.
// Every reading counts: a doubtful one is told (farthest), never left out.
import { againstFirst } from '../mechanics/against-first.ts'
import { daysBetween } from '../mechanics/check-due.ts'
import { changeAlong, type Following, followingOf, type LineChange } from '../mechanics/line-verdicts.ts'
import { nextBolt, nutFactorOf } from '../mechanics/nut-factor.ts'
import { type Pair, type PairedChange, pairedChange } from '../mechanics/pairs.ts'
import type { Dot } from '../mechanics/trend.ts'
import type { Comparison, Margin } from '../mechanics/two-samples.ts'
import { coverage } from '../mechanics/uncertainty.ts'
import { readingsUnder, type StandingRun, type TakenReading } from './book.ts'
import type { Measure } from './run.ts'

export const usualMargin: Margin = { m: 0.04, confidence: 0.95 }

/** By which a run is judged: as it was begun or corrected, else the usual. */
export const marginOf = ({ opening }: StandingRun): Margin => {
  const { margin, confidence } = opening.entry.body
  return {
    m: margin ? margin.value / 100 : usualMargin.m,
    confidence: confidence ? confidence.value / 100 : usualMargin.confidence,
  }
}

export const DAYS_OF_MONTH = 365.25 / 12

/** What is compared: a reading as it is, or K made from torque and clamp force. */
export type Subject = Measure | 'K'

export const runGaps = ['one-condition', 'too-few', 'baseline-not-above-0', 'no-line', 'no-diameter'] as const
export type RunGap = (typeof runGaps)[number]

export type Judged<T> = { readonly told: true; readonly value: T } | { readonly told: false; readonly why: RunGap }
const told = <T>(value: T): Judged<T> => ({ told: true, value })
const untold = (why: RunGap): Judged<never> => ({ told: false, why })

const diameterOf = (run: StandingRun): number | undefined => run.opening.entry.body.diameter?.value

const subjectOf = (run: StandingRun, reading: TakenReading, subject: Subject): number | undefined => {
  if (subject !== 'K') return reading[subject]?.value
  const d = diameterOf(run)
  const { torque, clamp } = reading
  return d !== undefined && torque && clamp ? nutFactorOf(torque.value, d, clamp.value) : undefined
}

/** The values of a subject under a condition, in order, in SI. */
export const valuesUnder = (run: StandingRun, condition: string, subject: Subject, again?: number): number[] =>
  readingsUnder(run, condition, again).flatMap((reading) => subjectOf(run, reading, subject) ?? [])

const namesOf = (run: StandingRun): string[] => run.opening.entry.body.conditions.map(({ name }) => name)
const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

export interface ConditionVerdict {
  readonly condition: string
  readonly comparison: Judged<Comparison>
}

export interface ConditionsJudged {
  readonly baseline: string
  readonly each: readonly ConditionVerdict[]
  /** The confidence of each interval, so that all hold together. */
  readonly eachAt: number
}

/** Every condition against the first. Those planned but not yet read are counted too, so that a verdict does not weaken later. */
export const judgeConditions = (
  run: StandingRun,
  subject: Subject,
  margin: Margin = marginOf(run),
  resolution = 0,
): Judged<ConditionsJudged> => {
  const [baseline, ...others] = namesOf(run)
  if (baseline === undefined || others.length === 0) return untold('one-condition')
  if (subject === 'K' && diameterOf(run) === undefined) return untold('no-diameter')
  const first = valuesUnder(run, baseline, subject)
  if (first.length < 2) return untold('too-few')
  if (!(meanOf(first) > 0)) return untold('baseline-not-above-0')
  const sets = others.map((condition) => ({ condition, values: valuesUnder(run, condition, subject) }))
  const read = sets.filter(({ values }) => values.length >= 2)
  const { each, eachAt } = againstFirst(
    first,
    read.map(({ values }) => values),
    margin,
    resolution,
    others.length,
  )
  return told({
    baseline,
    eachAt,
    each: sets.map(({ condition }) => {
      const comparison = each[read.findIndex((set) => set.condition === condition)]
      return { condition, comparison: comparison ? told(comparison) : untold('too-few') }
    }),
  })
}

export interface PairsJudged extends PairedChange {
  /** Pieces read under one of the two alone; they could not count. */
  readonly unpaired: readonly string[]
}

/** The same pieces under two conditions; a piece read more than once under one counts with its mean. */
export const judgePairs = (
  run: StandingRun,
  [before, after]: readonly [string, string],
  subject: Subject,
  margin: Margin = marginOf(run),
  resolution = 0,
): Judged<PairsJudged> => {
  const byPiece = (condition: string): Map<string, number> => {
    const groups = new Map<string, number[]>()
    for (const reading of readingsUnder(run, condition)) {
      const value = subjectOf(run, reading, subject)
      if (value === undefined || reading.piece === undefined) continue
      groups.set(reading.piece, [...(groups.get(reading.piece) ?? []), value])
    }
    return new Map([...groups].map(([piece, values]) => [piece, meanOf(values)]))
  }
  const [one, other] = [byPiece(before), byPiece(after)]
  const pairs = [...one].flatMap(([piece, value]): Pair[] => {
    const then = other.get(piece)
    return then === undefined ? [] : [{ before: value, after: then }]
  })
  if (pairs.length < 2) return untold('too-few')
  if (!(meanOf(pairs.map((pair) => pair.before)) > 0)) return untold('baseline-not-above-0')
  const unpaired = [...one.keys(), ...other.keys()].filter((piece) => !(one.has(piece) && other.has(piece)))
  return told({ ...pairedChange(pairs, margin, resolution), unpaired })
}

/** A condition over its re-runs: the mean of each day against months since the opening. */
export const judgeSeries = (
  run: StandingRun,
  condition: string,
  subject: Subject,
  margin: Margin = marginOf(run),
): Judged<LineChange & { readonly dots: readonly Dot[] }> => {
  const { date, again = [] } = run.opening.entry.body
  const byDay = new Map<string, number[]>()
  for (const reading of [undefined, ...again].flatMap((months) => readingsUnder(run, condition, months))) {
    const value = subjectOf(run, reading, subject)
    if (value !== undefined) byDay.set(reading.date, [...(byDay.get(reading.date) ?? []), value])
  }
  // Readings of one day share that day's setting-up: only the day counts as independent.
  const dots = [...byDay].map(([day, values]) => ({ x: daysBetween(date, day) / DAYS_OF_MONTH, y: meanOf(values) }))
  const change = changeAlong(dots, margin)
  return change ? told({ ...change, dots }) : untold('no-line')
}

export interface NutFactorFound {
  readonly values: readonly number[]
  readonly mean: number
  /** Of the next bolt, at 95 %. */
  readonly halfWidth: number
}

/** K under a condition with the interval for the next bolt. */
export const judgeNutFactor = (run: StandingRun, condition: string, resolution = 0): Judged<NutFactorFound> => {
  if (diameterOf(run) === undefined) return untold('no-diameter')
  const values = valuesUnder(run, condition, 'K')
  const { mean, halfWidth } = nextBolt(values)
  if (halfWidth === undefined) return untold('too-few')
  // Alike to the last digit is no scatter of nothing: one that the step of the gauges hides.
  const n = values.length
  const hidden = coverage(0.95, n - 1) * (resolution / Math.sqrt(12)) * Math.sqrt(1 + 1 / n)
  return told({ values, mean, halfWidth: Math.max(halfWidth, hidden) })
}

/** From the lowest to the highest that the wrench said, at least; less is one setting read again and again. */
const LEAST_SPAN = 1.5

/** What the wrench said against what was delivered, under a condition. */
export const judgeFollowing = (
  run: StandingRun,
  condition: string,
  margin: Margin = marginOf(run),
): Judged<Following> => {
  const dots = readingsUnder(run, condition).flatMap(({ wrench, torque }): Dot[] =>
    wrench && torque ? [{ x: torque.value, y: wrench.value }] : [],
  )
  // At one setting the readings scatter and follow nothing: a line through them would say that the wrench does not move.
  const said = dots.map(({ y }) => y)
  const isSpread = Math.max(...said) >= LEAST_SPAN * Math.min(...said)
  const found = isSpread ? followingOf(dots, margin) : undefined
  return found ? told(found) : untold('no-line')
}
