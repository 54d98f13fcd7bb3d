// All that a run says: each kind of reading by itself, condition against condition, piece by piece, over its re-runs; K; how the
// wrench follows; and what the run can see. Data only, no sentences.
import type { UnitSymbol } from '../core/unit.ts'
import type { Margin } from '../mechanics/two-samples.ts'
import { looksAlike } from '../mechanics/welch.ts'
import type { Measured } from '../register/parts.ts'
import { readingsUnder, type StandingRun } from './book.ts'
import {
  type ConditionsJudged,
  type Judged,
  judgeConditions,
  judgeFollowing,
  judgeNutFactor,
  judgePairs,
  judgeSeries,
  marginOf,
  type NutFactorFound,
  type PairsJudged,
  type Subject,
  valuesUnder,
} from './judge.ts'
import { type Foresight, foresee, foundSpread } from './power.ts'
import { resolutionOf } from './resolution.ts'
import { type Measure, measures } from './run.ts'

export interface SetOfReadings {
  readonly condition: string
  readonly what: string
  /** In SI, in the order in which they were taken. */
  readonly values: readonly number[]
}

export type SeriesJudged = Extract<ReturnType<typeof judgeSeries>, { told: true }>['value']
export type FollowingJudged = Extract<ReturnType<typeof judgeFollowing>, { told: true }>['value']

export interface SubjectFound {
  readonly subject: Subject
  /** In which it was typed; K has none. */
  readonly unit?: UnitSymbol
  readonly sets: readonly SetOfReadings[]
  readonly judged: Judged<ConditionsJudged>
  /** Where the same pieces were read under the first condition and another. */
  readonly pairs: ReadonlyArray<{ readonly condition: string; readonly value: PairsJudged }>
  readonly series: ReadonlyArray<{ readonly condition: string; readonly value: SeriesJudged }>
}

export interface Outlook extends Foresight {
  readonly n: number
  readonly spread: number
  /** Whether the spread was found in the readings, or is taken as nothing is known. */
  readonly isFound: boolean
}

export interface RunFindings {
  readonly margin: Margin
  /** The one that answers the question first. */
  readonly subjects: readonly SubjectFound[]
  readonly factors: ReadonlyArray<{ readonly condition: string; readonly value: NutFactorFound }>
  readonly following: ReadonlyArray<{
    readonly condition: string
    readonly unit: UnitSymbol
    readonly value: FollowingJudged
  }>
  /** Absent with one condition: there is nothing to tell apart. */
  readonly outlook?: Outlook
  readonly readings: number
}

/** Before anything is known of the scatter: what carefully pulled readings of one bench show (common practice). */
export const TAKEN_SPREAD = 0.03
const USUAL_READINGS = 5

const conditionsOf = (run: StandingRun) => run.opening.entry.body.conditions

const measuredOf = (run: StandingRun, measure: Measure): Measured[] =>
  run.readings.flatMap(({ entry }) => entry.body.readings.flatMap((reading) => reading[measure] ?? []))

const setsOf = (run: StandingRun, subject: Subject): SetOfReadings[] =>
  conditionsOf(run).map(({ name, what }) => ({ condition: name, what, values: valuesUnder(run, name, subject) }))

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** Of K: what the steps of torque and force make of it. */
const resolutionFor = (run: StandingRun, subject: Subject, sets: readonly SetOfReadings[]): number => {
  if (subject !== 'K') return resolutionOf(measuredOf(run, subject))
  const share = (measure: Measure): number => {
    const all = measuredOf(run, measure)
    return all.length === 0 ? 0 : resolutionOf(all) / meanOf(all.map(({ value }) => value))
  }
  const values = sets.flatMap((set) => set.values)
  return values.length === 0 ? 0 : meanOf(values) * Math.hypot(share('torque'), share('clamp'))
}

const subjectFound = (run: StandingRun, subject: Subject): SubjectFound | undefined => {
  const sets = setsOf(run, subject)
  const again = run.again.some(({ isDone }) => isDone)
  if (sets.every(({ values }) => values.length === 0) && !again) return undefined
  const unit = subject === 'K' ? undefined : measuredOf(run, subject)[0]?.unit
  if (subject !== 'K' && unit === undefined) return undefined
  const resolution = resolutionFor(run, subject, sets)
  const [first, ...others] = conditionsOf(run).map(({ name }) => name)
  const pairs = others.flatMap((condition) => {
    const judged = judgePairs(run, [first as string, condition], subject, marginOf(run), resolution)
    return judged.told ? [{ condition, value: judged.value }] : []
  })
  const series = conditionsOf(run).flatMap(({ name: condition }) => {
    const judged = again ? judgeSeries(run, condition, subject) : undefined
    return judged?.told ? [{ condition, value: judged.value }] : []
  })
  const judged = judgeConditions(run, subject, marginOf(run), resolution)
  return { subject, ...(unit ? { unit } : {}), sets, judged, pairs, series }
}

/** What was held the same to the last digit is no outcome; where all was, it is shown all the same. */
const outcomes = (found: readonly SubjectFound[]): readonly SubjectFound[] => {
  const moved = found.filter(({ sets }) => {
    const all = sets.flatMap(({ values }) => values)
    return all.length < 2 || !looksAlike(all)
  })
  return moved.length > 0 ? moved : found
}

const order = ['clamp', 'torque', 'angle', 'wrench', 'K'] as const satisfies readonly Subject[]

/** Where torque and clamp force both moved, neither alone is the outcome: K is. */
const leadFirst = (found: readonly SubjectFound[]): readonly SubjectFound[] => {
  const has = (subject: Subject): boolean => found.some((one) => one.subject === subject)
  if (!(has('K') && has('clamp') && has('torque'))) return found
  return [...found.filter(({ subject }) => subject === 'K'), ...found.filter(({ subject }) => subject !== 'K')]
}

const subjectsOf = (run: StandingRun): readonly SubjectFound[] => {
  const hasFactor = run.opening.entry.body.diameter !== undefined
  const wanted = order.filter((subject) =>
    subject === 'K' ? hasFactor : (measures as readonly string[]).includes(subject),
  )
  return leadFirst(outcomes(wanted.flatMap((subject) => subjectFound(run, subject) ?? [])))
}

// Worked out by a search of some ten milliseconds, and asked with every look at a page: what is alike is kept.
const known = new Map<string, Foresight>()
const MOST_KNOWN = 500

const foreseen = (n: number, spread: number, conditions: number, margin: Margin): Foresight => {
  const key = `${n} ${spread} ${conditions} ${margin.m} ${margin.confidence}`
  const there = known.get(key)
  if (there) return there
  const made = foresee(n, spread, conditions, margin)
  if (known.size >= MOST_KNOWN) known.delete(known.keys().next().value as string)
  known.set(key, made)
  return made
}

const MOST_FORESEEN = 200

/** What n readings of each would see; n is told or what is there, the spread what was found, to two figures. */
const outlookOf = (
  run: StandingRun,
  lead: SubjectFound | undefined,
  planned: number | undefined,
): Outlook | undefined => {
  const conditions = conditionsOf(run).length
  if (conditions < 2) return undefined
  const sets = lead?.sets.map(({ values }) => values) ?? []
  const found = foundSpread(sets)
  const fewest = sets.length === 0 ? 0 : Math.min(...sets.map((values) => values.length))
  const n = Math.min(planned ?? (fewest < 2 ? USUAL_READINGS : fewest), MOST_FORESEEN)
  const spread = Math.min(Math.max(Number((found ?? TAKEN_SPREAD).toPrecision(2)), 0.0001), 1)
  return { ...foreseen(n, spread, conditions, marginOf(run)), n, spread, isFound: found !== undefined }
}

/** What a run says as it stands. `planned`: so many readings of each are meant to be taken. */
export const findingsOfRun = (run: StandingRun, planned?: number): RunFindings => {
  const subjects = subjectsOf(run)
  const names = conditionsOf(run).map(({ name }) => name)
  const factors = names.flatMap((condition) => {
    const judged = judgeNutFactor(run, condition, resolutionFor(run, 'K', setsOf(run, 'K')))
    return judged.told ? [{ condition, value: judged.value }] : []
  })
  const following = names.flatMap((condition) => {
    const judged = judgeFollowing(run, condition)
    const unit = readingsUnder(run, condition).find(({ wrench }) => wrench)?.wrench?.unit
    return judged.told && unit ? [{ condition, unit, value: judged.value }] : []
  })
  const outlook = outlookOf(run, subjects[0], planned)
  const readings = run.readings.reduce((sum, { entry }) => sum + entry.body.readings.length, 0)
  return { margin: marginOf(run), subjects, factors, following, ...(outlook ? { outlook } : {}), readings }
}
