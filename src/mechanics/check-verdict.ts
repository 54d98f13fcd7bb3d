// Verdict on a check of a wrench against a reference. Deviations and limits as fractions (0.04), torque in N·m.
//
// Statement  a_i = (X_a − X_r)/X_r for every reading, limit l, uncertainty U of the reference.
//            simple   pass while every |a_i| ≤ l, else fail
//            guarded  pass while every |a_i| ≤ l − U; pass in doubt while ≤ l; fail in doubt while ≤ l + U; else fail
//            A point is as good as its worst reading, a check as its worst point: the mean alone says nothing.
// Symbols    X_a what the wrench says, X_r the reference [N·m]; l, U, a [1].
// Source     Rules: ILAC-G8:09/2019, guard band w = U. Limits: ISO 6789-1:2017 by kind and class (from memory): indicating classes
//            A, D and setting classes D to G 6 % throughout; the others 6 % up to 10 N·m of most and 4 % above.
// Holds      From a fifth of the scale up; a maker's own limit wins. With U ≥ l a guarded pass cannot happen.
// Example    Limit 4 %, U 1 %: 3.0 % pass, 3.5 % pass in doubt, 4.5 % fail in doubt, 5.1 % fail.
import { deviation, standardLimit } from './deviation.ts'
import { mean } from './scale-pull.ts'

export const isoTypes = ['indicating', 'setting'] as const
export type IsoType = (typeof isoTypes)[number]
export const isoClasses = ['A', 'B', 'C', 'D', 'E', 'F', 'G'] as const
export type IsoClass = (typeof isoClasses)[number]

/** Classes that each kind of tool has. */
export const classesOf: Readonly<Record<IsoType, readonly IsoClass[]>> = {
  indicating: ['A', 'B', 'C', 'D', 'E'],
  setting: ['A', 'B', 'C', 'D', 'E', 'F', 'G'],
}

const WIDE: Readonly<Record<IsoType, readonly IsoClass[]>> = {
  indicating: ['A', 'D'],
  setting: ['D', 'E', 'F', 'G'],
}

/** The standard's limit [fraction] of a kind and class, by the tool's most [N·m]. */
export const limitOf = (type: IsoType, isoClass: IsoClass, most: number): number =>
  WIDE[type].includes(isoClass) ? 0.06 : standardLimit(most)

export const decisionRules = ['simple', 'guarded'] as const
export type DecisionRule = (typeof decisionRules)[number]

/** Best first. */
export const checkVerdicts = ['pass', 'pass-in-doubt', 'fail-in-doubt', 'fail'] as const
export type CheckVerdict = (typeof checkVerdicts)[number]

export interface Limits {
  /** l [fraction]. */
  readonly limit: number
  readonly rule: DecisionRule
  /** U [fraction]; counts with the guarded rule. */
  readonly uncertainty?: number
}

// A reading at the limit is within it; 96.15384… as typed must not fail by a last bit.
const atMost = (value: number, bound: number): boolean => value <= bound + 1e-9

/** Verdict on one reading's deviation [fraction]. */
export const verdictOfDeviation = (a: number, { limit, rule, uncertainty = 0 }: Limits): CheckVerdict => {
  const size = Math.abs(a)
  const U = rule === 'guarded' ? uncertainty : 0
  if (atMost(size, limit - U)) return 'pass'
  if (U === 0) return 'fail'
  if (atMost(size, limit)) return 'pass-in-doubt'
  return atMost(size, limit + U) ? 'fail-in-doubt' : 'fail'
}

/** The worst of several; none at all is no pass. */
export const worstOf = (verdicts: readonly CheckVerdict[]): CheckVerdict =>
  checkVerdicts[Math.max(...verdicts.map((verdict) => checkVerdicts.indexOf(verdict)))] ?? 'fail'

export interface CheckPoint {
  readonly setting: number
  readonly references: readonly number[]
}

export interface PointResult {
  readonly setting: number
  /** Mean of the references [N·m]. */
  readonly mean: number
  /** Deviation of the setting from that mean [fraction]. */
  readonly deviation: number
  /** Every reading's own deviation [fraction]. */
  readonly deviations: readonly number[]
  /** Largest less smallest reference [N·m]. */
  readonly spread: number
  readonly verdict: CheckVerdict
}

/** A setting and what the reference showed each time. */
export const judgePoint = ({ setting, references }: CheckPoint, limits: Limits): PointResult => {
  const deviations = references.map((reference) => deviation(setting, reference) / 100)
  const middle = mean(references)
  return {
    setting,
    mean: middle,
    deviation: deviation(setting, middle) / 100,
    deviations,
    spread: Math.max(...references) - Math.min(...references),
    verdict: worstOf(deviations.map((a) => verdictOfDeviation(a, limits))),
  }
}

/** A whole check: every point, and the worst of them. */
export const judgeCheck = (
  points: readonly CheckPoint[],
  limits: Limits,
): { points: PointResult[]; verdict: CheckVerdict } => {
  const judged = points.map((point) => judgePoint(point, limits))
  return { points: judged, verdict: worstOf(judged.map(({ verdict }) => verdict)) }
}
