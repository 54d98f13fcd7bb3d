// A check as it grows: what has been read so far against its plan, the verdict so far, what is asked for next, and what looks
// like a slip. Nothing is remembered here: whoever asks hands in all that was read before.
import type { CheckVerdict } from '../mechanics/check-verdict.ts'
import { type CheckHead, type CheckPlan, type Showing, showingAt } from './check-plan.ts'
import { type Measured, quantityOf } from './parts.ts'
import { type Slip, slipOf } from './reading-slip.ts'
import type { Check, GaugeCard, WrenchCard } from './records.ts'
import { type JudgedCheck, type JudgedPoint, judge } from './verdict.ts'

export type ReadPoint = Check['points'][number]

export interface GrowingPoint {
  readonly setting: Measured
  /** Of the plan; a point that somebody added is none. */
  readonly planned: boolean
  readonly readings: readonly Measured[]
  readonly missing: number
  readonly shows: Showing
  /** Absent before the first reading. */
  readonly judged?: JudgedPoint
}

export interface NextReading {
  readonly setting: Measured
  /** The first is 1. */
  readonly nth: number
  readonly of: number
  readonly shows: Showing
}

export interface FoundSlip extends Slip {
  readonly setting: Measured
  readonly reading: Measured
  readonly shows: Showing
}

export interface GrowingCheck {
  readonly points: readonly GrowingPoint[]
  readonly taken: number
  readonly missing: number
  /** Of what was read so far; absent before the first reading. */
  readonly judged?: JudgedCheck
  readonly verdict?: CheckVerdict
  /** Absent once all that the plan asks for has been read. */
  readonly next?: NextReading
  readonly slips: readonly FoundSlip[]
}

/** A setting this near to a planned one stands for it: marks do not always fall on it, and a scale is read a little aside. */
const NEAR = 0.1

/** Each planned point with what was read at it, the nearest first; and what was read besides. */
const matched = (plan: CheckPlan, read: readonly ReadPoint[]): ReadonlyArray<number | undefined> => {
  const taken = new Set<number>()
  return plan.points.map(({ setting }) => {
    const away = (point: ReadPoint): number => Math.abs(point.setting.value / setting.value - 1)
    const near = [...read.keys()]
      .filter((place) => !taken.has(place) && away(read[place] as ReadPoint) <= NEAR)
      .sort((one, other) => away(read[one] as ReadPoint) - away(read[other] as ReadPoint))
    if (near[0] !== undefined) taken.add(near[0])
    return near[0]
  })
}

interface Growing {
  readonly head: CheckHead
  readonly card: WrenchCard
  readonly gauge: GaugeCard | undefined
  readonly plan: CheckPlan
}

/** The check so far. Points are told in the order of the plan, added ones where they were entered, behind it. */
export const growCheck = ({ head, card, gauge, plan }: Growing, read: readonly ReadPoint[]): GrowingCheck => {
  const judged = read.length > 0 ? judge({ ...head, points: read }, card, gauge) : undefined
  const places = matched(plan, read)
  const shows = (setting: Measured): Showing => showingAt(head, plan.limit, setting.value)
  const pointAt = (place: number | undefined, wanted: Measured | undefined): GrowingPoint => {
    const found = place === undefined ? undefined : read[place]
    const setting = (found?.setting ?? wanted) as Measured
    const readings = found?.readings ?? []
    const own = place === undefined ? undefined : judged?.points[place]
    return {
      setting,
      planned: wanted !== undefined,
      readings,
      missing: wanted ? Math.max(plan.readings - readings.length, 0) : 0,
      shows: shows(setting),
      ...(own ? { judged: own } : {}),
    }
  }
  const points = [
    ...plan.points.map(({ setting }, index) => pointAt(places[index], setting)),
    ...[...read.keys()].filter((place) => !places.includes(place)).map((place) => pointAt(place, undefined)),
  ]
  const open = points.find(({ missing }) => missing > 0)
  const slips = points.flatMap(({ setting, readings, shows: window }) =>
    readings.flatMap((reading): FoundSlip[] => {
      const slip = slipOf(quantityOf(reading), window.middle)
      return slip ? [{ ...slip, setting, reading, shows: window }] : []
    }),
  )
  return {
    points,
    taken: points.reduce((sum, { readings }) => sum + readings.length, 0),
    missing: points.reduce((sum, { missing }) => sum + missing, 0),
    ...(judged ? { judged, verdict: judged.verdict } : {}),
    ...(open
      ? { next: { setting: open.setting, nth: open.readings.length + 1, of: plan.readings, shows: open.shows } }
      : {}),
    slips,
  }
}

/** What was read so far with one reading more: at the point that it was asked for. */
export const withReading = (read: readonly ReadPoint[], next: NextReading, reading: Measured): readonly ReadPoint[] => {
  const place = read.findIndex(({ setting }) => setting.value === next.setting.value)
  if (place < 0) return [...read, { setting: next.setting, readings: [reading] }]
  return read.map((point, index) => (index === place ? { ...point, readings: [...point.readings, reading] } : point))
}
