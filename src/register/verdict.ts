// A check judged: every reading against the wrench's own limit, guarded by the doubt of the reference where that is known.
// Codes and numbers only; what is to be said of a check besides its verdict are notes.

import { units } from '../core/unit.ts'
import { addMonths } from '../mechanics/check-due.ts'
import { type CheckVerdict, type DecisionRule, verdictOfDeviation, worstOf } from '../mechanics/check-verdict.ts'
import { deviation, LEAST_SHARE, referenceAtMost } from '../mechanics/deviation.ts'
import { mean } from '../mechanics/scale-pull.ts'
import { type CardLimit, limitAt, limitOfCard } from './limit.ts'
import type { Measured } from './parts.ts'
import type { Check, GaugeCard, WrenchCard } from './records.ts'
import { doubtOfReading, ownWeightOf, torqueOfReading } from './reference.ts'
import { sampleOfCard } from './sample.ts'

/** What stands beside a verdict, in the order in which it is told. */
export const checkNotes = [
  'unit-on-wrench',
  'beyond-most',
  'beyond-gauge',
  'below-a-fifth',
  'gauge-unknown',
  'gauge-too-coarse',
  'gauge-day-unknown',
  'gauge-overdue',
  'own-weight-open',
  'distance-not-lever',
  'temperature-outside',
  'few-points',
  'few-readings',
  'limit-by-most',
] as const
export type CheckNote = (typeof checkNotes)[number]

/** One reading of the reference; torques in N·m, the rest fractions. */
export interface JudgedReading {
  readonly torque: number
  readonly deviation: number
  readonly limit: number
  readonly uncertainty?: number
  readonly verdict: CheckVerdict
}

export interface JudgedPoint {
  readonly setting: number
  readonly readings: readonly JudgedReading[]
  readonly mean: number
  /** Deviation of the setting from the mean; > 0 delivers low, < 0 delivers high. */
  readonly deviation: number
  readonly spread: number
  readonly verdict: CheckVerdict
}

export interface JudgedCheck {
  readonly limit: CardLimit
  readonly rule: DecisionRule
  readonly points: readonly JudgedPoint[]
  readonly verdict: CheckVerdict
  /** The reading that is farthest off for its limit. */
  readonly worst: JudgedReading & { readonly setting: number }
  /** Every reading lies so near its setting that the reference cannot tell it from right. */
  readonly withinDoubt: boolean
  readonly notes: readonly CheckNote[]
}

/** So far off no wrench is: another unit was read off it (lbf·ft for N·m is 26 or 36 %). */
const ANOTHER_UNIT = 0.25
/** The temperatures [°C] between which the standard has a wrench checked (ISO 6789, from memory). */
const TEMPERATURES = { low: 18, high: 28 } as const
/** A hand this much off the lever [share of it] moves a tripping wrench more than nothing. */
const LEVER_SLACK = 0.02
/** A gauge is itself checked once a year: common practice. */
const GAUGE_MONTHS = 12
const SLACK = 1 + 1e-9

/** The gauge does not go as far: what it showed there has a doubt that nobody knows. */
const isBeyond = (reading: Measured, gauge: GaugeCard | undefined): boolean =>
  gauge?.most !== undefined &&
  units[gauge.most.unit].dimension === units[reading.unit].dimension &&
  reading.value > gauge.most.value * SLACK

const judgeReading = (
  setting: number,
  torque: number,
  limit: CardLimit,
  uncertainty: number | undefined,
  beyond: boolean,
): JudgedReading => {
  const off = deviation(setting, torque) / 100
  const l = limitAt(limit, torque)
  const known = uncertainty === undefined ? {} : { uncertainty }
  const verdict = verdictOfDeviation(off, { limit: l, rule: 'guarded', ...known })
  return {
    torque,
    deviation: off,
    limit: l,
    ...known,
    verdict: beyond && verdict === 'pass' ? 'pass-in-doubt' : verdict,
  }
}

const judgePoint = (
  { setting, readings }: Check['points'][number],
  check: Check,
  limit: CardLimit,
  gauge: GaugeCard | undefined,
): JudgedPoint => {
  const judged = readings.map((reading) =>
    judgeReading(
      setting.value,
      torqueOfReading(check, reading),
      limit,
      doubtOfReading(check, gauge, reading),
      isBeyond(reading, gauge),
    ),
  )
  const torques = judged.map(({ torque }) => torque)
  return {
    setting: setting.value,
    readings: judged,
    mean: mean(torques),
    deviation: deviation(setting.value, mean(torques)) / 100,
    spread: Math.max(...torques) - Math.min(...torques),
    verdict: worstOf(judged.map(({ verdict }) => verdict)),
  }
}

const notesOf = (
  check: Check,
  card: WrenchCard,
  gauge: GaugeCard | undefined,
  { limit, points }: Pick<JudgedCheck, 'limit' | 'points'>,
): CheckNote[] => {
  const readings = points.flatMap((point) => point.readings)
  const doubts = readings.flatMap(({ uncertainty, limit: l }) =>
    uncertainty === undefined ? [] : [{ uncertainty, l }],
  )
  const temperature = check.conditions?.['temperature-c']
  const { distance, date } = check
  const sample = sampleOfCard(card)
  const applies: Readonly<Record<CheckNote, boolean>> = {
    'unit-on-wrench': readings.some((reading) => Math.abs(reading.deviation) >= ANOTHER_UNIT),
    'beyond-most': points.some(({ setting }) => setting > limit.most * SLACK),
    'beyond-gauge': check.points.some(({ readings: all }) => all.some((reading) => isBeyond(reading, gauge))),
    'below-a-fifth': points.some(({ setting }) => setting * SLACK < limit.most * LEAST_SHARE),
    'gauge-unknown': doubts.length === 0,
    'gauge-too-coarse': doubts.some(({ uncertainty, l }) => uncertainty > referenceAtMost(l) * SLACK),
    'gauge-day-unknown': gauge !== undefined && gauge.checked === undefined,
    'gauge-overdue': gauge?.checked !== undefined && date >= addMonths(gauge.checked, GAUGE_MONTHS),
    'own-weight-open': ownWeightOf(check) === undefined,
    'distance-not-lever':
      distance !== undefined &&
      card.lever !== undefined &&
      Math.abs(distance.value / card.lever.value - 1) > LEVER_SLACK,
    'temperature-outside':
      temperature !== undefined && (temperature < TEMPERATURES.low || temperature > TEMPERATURES.high),
    'few-points': points.length < sample.shares.length,
    'few-readings': points.some((point) => point.readings.length < sample.readings),
    'limit-by-most': limit.by === 'most',
  }
  return checkNotes.filter((note) => applies[note])
}

/** Judges a check by the wrench's card and the gauge's, as both stand now. */
export const judge = (check: Check, card: WrenchCard, gauge: GaugeCard | undefined): JudgedCheck => {
  const limit = limitOfCard(card)
  const points = check.points.map((point) => judgePoint(point, check, limit, gauge))
  const readings = points.flatMap(({ setting, readings: all }) => all.map((reading) => ({ ...reading, setting })))
  const worst = readings.reduce((far, one) =>
    Math.abs(one.deviation) / one.limit > Math.abs(far.deviation) / far.limit ? one : far,
  )
  return {
    limit,
    rule: readings.some(({ uncertainty }) => uncertainty !== undefined) ? 'guarded' : 'simple',
    points,
    verdict: worstOf(points.map(({ verdict }) => verdict)),
    worst,
    withinDoubt: readings.every(({ deviation: off, uncertainty = 0 }) => Math.abs(off) <= uncertainty),
    notes: notesOf(check, card, gauge, { limit, points }),
  }
}
