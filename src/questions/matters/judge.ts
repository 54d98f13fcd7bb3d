// When a change is worth a correction, and what is shown of it. A change below a quarter of the wrench's own tolerance is lost in
// it: the same quarter that standards leave to the reference of a check.
import { fromSi, type Quantity, quantity, si } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { referenceAtMost } from '../../mechanics/deviation.ts'
import { type Given, put, type QuantityResult, result, type Step, step } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import type { ResultUnits } from '../question.ts'
import { percentOf, toleranceOf } from '../reach-doubt.ts'
import type { Asked } from './inputs.ts'
import type { Worked } from './topic.ts'

/** What the wrench is dialled to: what was told, else the torque itself, which is what the question is about. */
export const dialled = (given: Asked): Quantity | undefined => given.setting ?? given.torque

export const assumedSetting = (given: Asked): Given[] =>
  given.setting === undefined && given.torque ? [{ input: 'setting', value: given.torque, from: 'assumed' }] : []

export const assumedTolerance = (given: Asked): Given[] =>
  given.tolerance ? [] : [{ input: 'tolerance', value: toleranceOf(given), from: 'assumed' }]

/** A percentage between its ends; one value where they are the same. */
export const between = (low: number, high: number): QuantityResult =>
  low === high ? result(percentOf(low)) : result(percentOf((low + high) / 2), low * 100, high * 100)

/**
 * The verdict on a relative change of the torque that lies between two ends (fractions, signed). `swings`: it goes through the
 * whole span in use, so the largest counts; else one unknown place of it is the true one.
 */
export const judge = (given: Asked, low: number, high: number, swings = false): Pick<Worked, 'code' | 'headline'> => {
  const tolerance = toleranceOf(given)
  const quarter = referenceAtMost(tolerance.value)
  const largest = Math.max(Math.abs(low), Math.abs(high))
  const least = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high))
  // Twelve figures: a lever that was converted from inches and back is the same lever.
  if (largest < 1e-12) return { code: 'no', headline: phrase('matter.nothing') }
  const span = { low: percentOf(low), high: percentOf(high) }
  if (largest * 100 < quarter) {
    return {
      code: 'no',
      headline:
        low === high
          ? phrase('matter.too-small', { change: span.low, tolerance })
          : phrase('matter.too-small-between', { ...span, tolerance }),
    }
  }
  if (least * 100 < quarter && !swings) {
    return { code: 'depends', headline: phrase('matter.perhaps', { ...span, tolerance }) }
  }
  return {
    code: 'yes',
    headline: low === high ? phrase('matter.changes', { change: span.low }) : phrase('matter.changes-between', span),
  }
}

/** The same with the number to act on, where a correction is known and wanted. */
export const judgeWith = (
  given: Asked,
  share: number,
  correction: Quantity | undefined,
): Pick<Worked, 'code' | 'headline'> => {
  const judged = judge(given, share, share)
  if (judged.code !== 'yes' || !correction || !given.torque) return judged
  return {
    code: 'yes',
    headline: phrase('matter.changes-dial', {
      change: percentOf(share),
      torque: given.torque,
      setting: correction,
    }),
  }
}

/** The change and, where a setting is known, the torque that the fastener gets by it. */
export const changed = (
  given: Asked,
  units_: ResultUnits,
  low: number,
  high: number,
): Pick<Worked, 'results' | 'steps' | 'assumed'> => {
  const S = dialled(given)
  const change = between(low, high)
  if (!S) return { results: { change }, steps: [], assumed: [] }
  const unit = units_.of('torque')
  const at = (share: number): Quantity => fromSi(si(S) * (1 + share), unit)
  const middle = at((low + high) / 2)
  const ends = low === high ? {} : { low: at(low).value, high: at(high).value }
  const steps: Step[] =
    low === high
      ? [step(phrase('matter.torque'), 'T = S · T/S', put`${S} · ${quantity(1 + low, units['1'])}`, middle)]
      : [step(phrase('matter.torque-between'), 'T = S · T/S', put`${at(low)} … ${at(high)}`, middle)]
  return { results: { change, torque: { quantity: middle, ...ends } }, steps, assumed: assumedSetting(given) }
}
