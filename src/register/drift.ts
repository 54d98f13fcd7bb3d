// How a wrench's deviation at a setting moved over its checks, and when it may reach its limit: only where the checks bear it.
//
// Statement  Deviation of each check's mean over days; a straight line since the last adjustment (mechanics/trend.ts).
//            A day is told only with four checks or more, a slope that leaves out 0 at 95 %, and no farther ahead than
//            twice as long as the checks reach back; else the reason why it is not.
// Holds      One kind of reference all along; a change of gauge may look like a drift, and is noted.
// Example    1.0, 1.5, 2.1, 2.5 % at half-yearly checks: 1 % a year, at 4 % about a year and a half after the last.
import { daysBetween } from '../mechanics/check-due.ts'
import { type Trend, trendOf } from '../mechanics/trend.ts'
import { type Book, gaugeOf, type Kept, newestFirst, type WrenchFolder } from './book.ts'
import { limitAt, limitOfCard } from './limit.ts'
import { type JudgedPoint, judge } from './verdict.ts'

export interface DriftDot {
  readonly check: string
  readonly date: string
  /** Days since the first check of the series. */
  readonly day: number
  /** Deviation of the mean [%]; > 0 delivers low. */
  readonly deviation: number
  /** Of the reference at this point [%]; where it is known. */
  readonly doubt?: number
  readonly failed: boolean
  /** Whether it counts for the line: made since the last adjustment or repair. */
  readonly counts: boolean
}

/** Why no day is told. */
export const driftGaps = ['too-few', 'one-day', 'slope-not-told', 'out-already', 'too-far'] as const
export type DriftGap = (typeof driftGaps)[number]

export type Outlook =
  | { readonly told: false; readonly why: DriftGap }
  /** ISO dates between which the line reaches the limit; no last one where that lies too far ahead to tell. */
  | {
      readonly told: true
      readonly limit: number
      readonly first: string
      readonly middle: string
      readonly last?: string
    }

/** A place on the line that is drawn through the checks. */
export interface LinePlace {
  readonly day: number
  readonly deviation: number
  /** Half-width of its band at 95 %. */
  readonly doubt: number
}

export interface Drift {
  /** N·m. */
  readonly setting: number
  /** What the wrench is held to here [%]. */
  readonly limit: number
  /** Oldest first. */
  readonly dots: readonly DriftDot[]
  /** The day of the adjustment or repair since which the line is drawn. */
  readonly since?: string
  /** Per year [%], with its half-width at 95 %; where a line can be drawn at all. */
  readonly slope?: { readonly perYear: number; readonly doubt: number; readonly isTold: boolean }
  /** Only where the slope is told; from the first check that counts to the last. */
  readonly line?: readonly LinePlace[]
  readonly gaugeChanged: boolean
  readonly outlook: Outlook
}

/** Fewer checks bear no line. */
export const ENOUGH_CHECKS = 4
/** As many times as long as the checks reach back, so far ahead the line is believed. */
export const AHEAD = 2
const YEAR = 365.25
/** Settings this near each other are one point of the scale. */
const SAME_SETTING = 0.01

const dayAfter = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + Math.round(days) * 86_400_000).toISOString().slice(0, 10)

const settingsOf = (folder: WrenchFolder): number[] => {
  const settings: number[] = []
  for (const { entry } of [...folder.checks].reverse()) {
    for (const { setting } of entry.body.points) {
      if (!settings.some((known) => isSame(known, setting.value))) settings.push(setting.value)
    }
  }
  return settings.sort((one, other) => one - other)
}

const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= SAME_SETTING * one

/** The last work on the wrench: checks before it say nothing of how it is now. */
const lastWork = (folder: WrenchFolder): Kept<'event'> | undefined =>
  folder.events.find(({ entry }) => entry.body.what === 'adjusted' || entry.body.what === 'repaired')

const isSince = (check: Kept<'check'>, work: Kept<'event'> | undefined): boolean => {
  if (!work) return true
  const { date, state } = check.entry.body
  if (date === work.entry.body.date && state === 'as-left') return true
  return newestFirst(check, work) < 0
}

const outlookOf = (trend: Trend | undefined, counted: readonly DriftDot[], limit: number): Outlook => {
  const [first, last] = [counted[0], counted.at(-1)]
  if (!first || !last || counted.length < ENOUGH_CHECKS) return { told: false, why: 'too-few' }
  if (!trend) return { told: false, why: 'one-day' }
  if (Math.abs(trend.at(last.day)) >= limit) return { told: false, why: 'out-already' }
  const level = Math.sign(trend.slope) * limit
  const reached = trend.reaches(level)
  if (!reached) return { told: false, why: 'slope-not-told' }
  const farthest = last.day + AHEAD * (last.day - first.day)
  if (reached.middle > farthest) return { told: false, why: 'too-far' }
  const dateOf = (day: number): string => dayAfter(first.date, day - first.day)
  return {
    told: true,
    limit,
    // The line may touch the limit before the last check; nobody needs a day that has gone by.
    first: dateOf(Math.max(reached.first, last.day)),
    middle: dateOf(reached.middle),
    ...(reached.last > farthest ? {} : { last: dateOf(reached.last) }),
  }
}

/** Straight, but its band is not: it is drawn by its places. */
const PLACES = 12

const lineOf = (trend: Trend, counted: readonly DriftDot[]): LinePlace[] => {
  const [from, to] = [counted[0]?.day ?? 0, counted.at(-1)?.day ?? 0]
  return Array.from({ length: PLACES + 1 }, (_, n) => {
    const day = from + ((to - from) * n) / PLACES
    return { day, deviation: trend.at(day), doubt: trend.doubtAt(day) }
  })
}

const doubtOf = (point: JudgedPoint): { doubt: number } | undefined => {
  const known = point.readings.flatMap(({ uncertainty }) => (uncertainty === undefined ? [] : [uncertainty]))
  return known.length === 0 ? undefined : { doubt: Math.max(...known) * 100 }
}

const driftAt = (book: Book, folder: WrenchFolder, setting: number): Drift => {
  const card = folder.card.entry.body
  const work = lastWork(folder)
  const found = [...folder.checks].reverse().flatMap((check) => {
    const judged = judge(check.entry.body, card, gaugeOf(book, check.entry.body.gauge)?.entry.body)
    const point = judged.points.find((one) => isSame(setting, one.setting))
    return point ? [{ check, point }] : []
  })
  const start = found[0]?.check.entry.body.date ?? ''
  const dots = found.map(({ check, point }): DriftDot => {
    const { id, body } = check.entry
    const counts = isSince(check, work)
    const day = daysBetween(start, body.date)
    const failed = point.verdict.startsWith('fail')
    return { check: id, date: body.date, day, deviation: point.deviation * 100, ...doubtOf(point), failed, counts }
  })
  const counted = dots.filter(({ counts }) => counts)
  const trend =
    counted.length < ENOUGH_CHECKS
      ? undefined
      : trendOf(counted.map(({ day, deviation }) => ({ x: day, y: deviation })))
  const gauges = new Set(found.filter((_, place) => dots[place]?.counts).map(({ check }) => check.entry.body.gauge))
  const limit = limitAt(limitOfCard(card), setting) * 100
  return {
    setting,
    limit,
    dots,
    ...(work ? { since: work.entry.body.date } : {}),
    ...(trend ? { slope: { perYear: trend.slope * YEAR, doubt: trend.slopeDoubt * YEAR, isTold: trend.isTold } } : {}),
    ...(trend?.isTold ? { line: lineOf(trend, counted) } : {}),
    gaugeChanged: gauges.size > 1,
    outlook: outlookOf(trend, counted, limit),
  }
}

/** The drift at every setting that was ever checked, lowest first. */
export const driftOf = (book: Book, folder: WrenchFolder): readonly Drift[] =>
  settingsOf(folder).map((setting) => driftAt(book, folder, setting))
