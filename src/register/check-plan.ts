// The plan of a check, before the first pull: where to set the wrench, within which window the gauge must show then, how often,
// and whether this gauge will do. A check with readings that are right to the last digit is judged as any other is, so that
// the plan says of limit, doubt and notes what the verdict will say.
import { quantity, tidy } from '../core/quantity.ts'
import { type Unit, units } from '../core/unit.ts'
import { referenceAtMost } from '../mechanics/deviation.ts'
import { forceWays } from './bodies.ts'
import { type CardLimit, windowAt } from './limit.ts'
import { type Measured, measured } from './parts.ts'
import type { Check, GaugeCard, WrenchCard } from './records.ts'
import { type CheckSetup, readingOfTorque } from './reference.ts'
import { sampleOfCard, settingsOfCard } from './sample.ts'
import { type CheckNote, judge } from './verdict.ts'

/** All of a check but what was read. */
export type CheckHead = Omit<Check, 'points'>

export interface Span {
  readonly low: number
  readonly high: number
}

/** What the gauge shows at a setting, in SI of what it reads: the middle where the wrench is right, the ends at its limit. */
export interface Showing extends Span {
  readonly middle: number
}

export interface PlannedPoint {
  readonly setting: Measured
  /** Of the largest torque. */
  readonly share: number
  /** The references [N·m] within the limit. */
  readonly window: Span
  readonly shows: Showing
  /** Allowed deviation [fraction]. */
  readonly limit: number
  /** U of the reference there [fraction]; absent where nothing is known of the gauge. */
  readonly uncertainty?: number
  /** Whether that is a quarter of the limit or less; absent with it. */
  readonly fineEnough?: boolean
  /** Whether the gauge goes as far as the window's upper end; absent where its most is not known. */
  readonly reaches?: boolean
}

/** What only a plan has to say, in the order in which it is told. */
const ownNotes = ['gauge-runs-out', 'gauge-most-unknown', 'marks-unknown', 'kind-by-type'] as const
/** What the verdict would say as well, and can be mended before the first pull. */
const foreseen = [
  'below-a-fifth',
  'gauge-unknown',
  'gauge-too-coarse',
  'gauge-day-unknown',
  'gauge-overdue',
  'own-weight-open',
  'distance-not-lever',
  'temperature-outside',
  'limit-by-most',
] as const satisfies readonly CheckNote[]
export const planNotes = [...ownNotes, ...foreseen] as const
export type PlanNote = (typeof planNotes)[number]

export interface CheckPlan {
  readonly limit: CardLimit
  /** What the gauge reads. */
  readonly reads: 'force' | 'torque'
  /** The unit that the gauge reads in, as far as it is known. */
  readonly unit: Unit
  /** Rising; they are pulled in this order. */
  readonly points: readonly PlannedPoint[]
  /** To the largest torque, before the first reading, unrecorded. */
  readonly prePulls: number
  readonly readings: number
  /** The shortest distance [m] at which a gauge that runs out would do. */
  readonly farEnough?: number
  readonly notes: readonly PlanNote[]
}

/** What the gauge shows at a setting [N·m]. */
export const showingAt = (head: CheckSetup, limit: CardLimit, setting: number): Showing => {
  const { low, high } = windowAt(limit, setting)
  const shown = (torque: number): number => readingOfTorque(head, torque)
  return { low: shown(low), middle: shown(setting), high: shown(high) }
}

const unitRead = (head: CheckHead, card: WrenchCard, gauge: GaugeCard | undefined): Unit => {
  const reads = forceWays.includes(head.way) ? 'force' : 'torque'
  if (gauge?.most && units[gauge.most.unit].dimension === reads) return units[gauge.most.unit]
  if (reads === 'torque') return units[card.unit]
  return head.distance && units[head.distance.unit].system === 'inch' ? units.lbf : units.N
}

const SLACK = 1 + 1e-9

/** The plan of a check of this wrench in this way; needs a distance where the way reads a force. */
export const planCheck = (head: CheckHead, card: WrenchCard, gauge: GaugeCard | undefined): CheckPlan => {
  const unit = unitRead(head, card, gauge)
  const sample = sampleOfCard(card)
  const settings = settingsOfCard(card)
  const right = (setting: Measured): Measured => {
    const value = readingOfTorque(head, setting.value)
    return { ...measured(tidy(quantity(value / unit.factor, unit))), value }
  }
  const ideal: Check = {
    ...head,
    points: settings.map((setting) => ({
      setting,
      readings: Array.from({ length: sample.readings }, () => right(setting)),
    })),
  }
  const judged = judge(ideal, card, gauge)
  const most = gauge?.most && units[gauge.most.unit].dimension === unit.dimension ? gauge.most.value : undefined
  const points = settings.map((setting, place): PlannedPoint => {
    const [reading] = (judged.points[place] as (typeof judged.points)[number]).readings
    const { limit, uncertainty } = reading as NonNullable<typeof reading>
    const shows = showingAt(head, judged.limit, setting.value)
    return {
      setting,
      share: setting.value / card.most.value,
      window: windowAt(judged.limit, setting.value),
      shows,
      limit,
      ...(uncertainty === undefined ? {} : { uncertainty, fineEnough: uncertainty <= referenceAtMost(limit) * SLACK }),
      ...(most === undefined ? {} : { reaches: shows.high <= most * SLACK }),
    }
  })
  const runsOut = points.some(({ reaches }) => reaches === false)
  const highest = points.at(-1) as PlannedPoint
  const applies: Readonly<Record<(typeof ownNotes)[number], boolean>> = {
    'gauge-runs-out': runsOut,
    'gauge-most-unknown': gauge !== undefined && most === undefined,
    'marks-unknown': card.mark === undefined && points.length > 1,
    'kind-by-type': card['iso-type'] === undefined,
  }
  return {
    limit: judged.limit,
    reads: unit.dimension === 'force' ? 'force' : 'torque',
    unit,
    points,
    prePulls: sample.prePulls,
    readings: sample.readings,
    // Force and distance trade one for the other: F · D stays.
    ...(runsOut && head.distance && most ? { farEnough: (highest.shows.high * head.distance.value) / most } : {}),
    notes: [...ownNotes.filter((note) => applies[note]), ...foreseen.filter((note) => judged.notes.includes(note))],
  }
}
