// The size of what stands between wrench and fastener or tilts the handle: tilt, swivel, bar, squares; from the asker's own numbers.
import { fromSi, quantity, si } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { tiltedTorqueUnknown } from '../../mechanics/flex-head.ts'
import { BEND_UNCORRECTED, swivelRatio } from '../../mechanics/swivel.ts'
import { twistOf } from '../../mechanics/twist.ts'
import { driveTable } from '../../tables/square-drives.ts'
import { put, result, step } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import type { ResultUnits } from '../question.ts'
import { percentOf } from '../reach-doubt.ts'
import type { Asked } from './inputs.ts'
import { assumedSetting, assumedTolerance, changed, dialled, judge } from './judge.ts'
import type { Work, Worked } from './topic.ts'

const magnitude = (degrees: number) => quantity(Math.abs(degrees), units['°'])

/** The band between a wrench that senses ahead of the hinge and one that trips behind it, the hinge taken at the drive. */
export const workTilt: Work = (given, units_) => {
  if (!given.tilt) return undefined
  const phi = magnitude(given.tilt.value)
  // As a fraction of the setting the lever drops out where the hinge lies at the drive.
  const { low, high } = tiltedTorqueUnknown({ S: 1, L: 1, h: 0, phi: phi.value })
  const change = changed(given, units_, low - 1, high - 1)
  return {
    ...judge(given, low - 1, high - 1),
    results: change.results,
    steps: [
      step(phrase('matter.tilt'), 'cos φ − 1 … 0', put`cos ${phi} − 1`, percentOf(low - 1)),
      step(phrase('matter.tilt-pull'), '1/cos φ − 1', put`1 / cos ${phi} − 1`, percentOf(1 / low - 1)),
      ...change.steps,
    ],
    assumed: [
      ...change.assumed,
      { input: 'hinge', value: quantity(0, units_.of('length')), from: 'assumed' },
      ...assumedTolerance(given),
    ],
    cautions: [],
    sources: [],
  }
}

/** Up to 15° two manuals use it uncorrected although it swings more than a quarter of a tolerance: neither yes nor no. */
export const workBend: Work = (given, units_) => {
  if (!given.angle) return undefined
  const beta = magnitude(given.angle.value)
  const { low, high } = swivelRatio(beta.value)
  const change = changed(given, units_, low - 1, high - 1)
  const { torque } = change.results
  const S = dialled(given)
  const judged = judge(given, low - 1, high - 1, true)
  const allowed = beta.value <= BEND_UNCORRECTED && judged.code === 'yes'
  return {
    ...(allowed
      ? {
          code: 'depends' as const,
          headline: phrase('matter.swivel-allowed', {
            angle: beta,
            low: percentOf(low - 1),
            high: percentOf(high - 1),
          }),
        }
      : judged),
    results: {
      // It swings about what is dialled; the middle of its ends is nothing that the fastener gets more than the rest.
      change: low === high ? result(percentOf(0)) : result(percentOf(0), (low - 1) * 100, (high - 1) * 100),
      ...(torque && S ? { torque: { ...torque, quantity: fromSi(si(S), units_.of('torque')) } } : {}),
    },
    steps: [
      step(phrase('matter.swing'), 'cos β − 1 … 1/cos β − 1', put`cos ${beta} … 1 / cos ${beta}`, percentOf(low - 1)),
      ...change.steps,
    ],
    assumed: [...change.assumed, ...assumedTolerance(given)],
    cautions: [],
    sources: [],
  }
}

const twistWork = (given: Asked): Pick<Worked, 'results' | 'steps'> & { readonly headline?: Worked['headline'] } => {
  const T = dialled(given)
  if (!T || !given.length || !given.drive) return { results: {}, steps: [] }
  const { square } = driveTable[given.drive]
  const twist = quantity(twistOf(si(T), si(given.length), square), units['°'])
  const d = fromSi(square, given.length.unit)
  return {
    headline: phrase('matter.twist', { twist }),
    results: { twist: result(twist) },
    steps: [
      step(
        phrase('matter.twist-step'),
        'θ = T l/(G π d⁴/32)',
        put`T ${T}, l ${given.length}, d ${d}, G 79.3 GPa`,
        twist,
      ),
    ],
  }
}

const workSquare = (given: Asked, { of }: ResultUnits): Worked | undefined => {
  const T = dialled(given)
  if (!T || !given.drive) return undefined
  const row = driveTable[given.drive]
  const rating = fromSi(row.rating, of('torque'))
  const share = si(T) / row.rating
  const told = { torque: T, share: percentOf(share), rating }
  return {
    code: share > 1 ? 'yes' : 'no',
    headline: share > 1 ? phrase('matter.over-rating', told) : phrase('matter.under-rating', told),
    results: { rating: result(rating), 'rating-share': result(percentOf(share)) },
    steps: [step(phrase('matter.rating'), 'T/T_test', put`${T} / ${rating}`, percentOf(share))],
    assumed: assumedSetting(given),
    cautions: [],
    sources: [row.from],
  }
}

export const workSizes: Work = workSquare

/** A bar: how far it winds up, and what its square carries; the verdict turns only where the square is overloaded. */
export const workBar: Work = (given, units_) => {
  const square = workSquare(given, units_)
  if (!square) return undefined
  const { headline, results, steps } = twistWork(given)
  const spoken = square.code === 'no' && headline ? { ...square, headline } : square
  return { ...spoken, results: { ...results, ...square.results }, steps: [...steps, ...square.steps] }
}
