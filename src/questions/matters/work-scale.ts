// The size of what lies in the wrench and its scale or in the pull: share of the range, tolerance, a jerk; from own numbers.
import { fromSi, quantity, si } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { LEAST_SHARE } from '../../mechanics/deviation.ts'
import { JERK_AT_MOST } from '../../tables/matters.ts'
import { caution, put, result, step } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { percentOf, toleranceOf } from '../reach-doubt.ts'
import { assumedSetting, assumedTolerance, dialled } from './judge.ts'
import type { Work } from './topic.ts'

/** How much of its range the wrench is put to; told, not judged. */
export const workShare: Work = (given) => {
  const S = dialled(given)
  if (!S || !given.most) return undefined
  const share = percentOf(si(S) / si(given.most))
  return {
    results: { 'share-of-most': result(share) },
    steps: [step(phrase('matter.share'), 'S/most', put`${S} / ${given.most}`, share)],
    assumed: assumedSetting(given),
    cautions: share.value > 100 ? [caution('beyond-range', { setting: S, limit: given.most })] : [],
    sources: [],
  }
}

/** Whether a setting lies below a fifth of the scale, and what a tolerance of full scale becomes there. */
export const workFifth: Work = (given, units_) => {
  const S = dialled(given)
  const worked = workShare(given, units_)
  if (!S || !given.most || !worked) return undefined
  const tolerance = toleranceOf(given)
  const fraction = si(S) / si(given.most)
  const share = percentOf(fraction)
  const fifth = fromSi(si(given.most) * LEAST_SHARE, given.most.unit)
  const ofSetting = quantity(tolerance.value / fraction, units['%'])
  // A fifth of 150 lbf·ft is 30 lbf·ft and no hair more.
  const below = fraction < LEAST_SHARE * (1 - 1e-12)
  const above = fraction > 1 + 1e-12
  return {
    ...worked,
    code: below || above ? 'yes' : 'no',
    headline: below
      ? phrase('matter.below-fifth', { setting: S, share, fifth })
      : above
        ? phrase('matter.above-most', { setting: S, most: given.most })
        : phrase('matter.in-range', { setting: S, share, fifth }),
    results: { ...worked.results, 'full-scale-tolerance': result(ofSetting) },
    steps: [
      ...worked.steps,
      step(phrase('matter.fifth'), 'most/5', put`${given.most} / 5`, fifth),
      step(phrase('matter.full-scale'), 'l · most/S', put`${tolerance} · ${given.most} / ${S}`, ofSetting),
    ],
    assumed: [...worked.assumed, ...assumedTolerance(given)],
    cautions: [...worked.cautions, ...(below ? [caution('below-a-fifth', { fifth })] : [])],
  }
}

/** What a wrench that holds its tolerance may deliver. */
export const workTolerance: Work = (given, { of }) => {
  const S = dialled(given)
  if (!S) return undefined
  const tolerance = toleranceOf(given)
  const unit = of('torque')
  const [low, high] = [-1, 1].map((sign) => fromSi(si(S) * (1 + (sign * tolerance.value) / 100), unit)) as [
    typeof S,
    typeof S,
  ]
  return {
    results: { torque: result(fromSi(si(S), unit), low.value, high.value) },
    steps: [step(phrase('matter.tolerance'), 'S (1 ± l)', put`${low} … ${high}`, tolerance)],
    assumed: [...assumedSetting(given), ...assumedTolerance(given)],
    cautions: [],
    sources: [],
  }
}

/** What a jerked pull may make of a setting, by what one manual warns of. */
export const workJerk: Work = (given, { of }) => {
  const S = dialled(given)
  if (!S) return undefined
  const unit = of('torque')
  const high = fromSi(si(S) * (1 + JERK_AT_MOST), unit)
  return {
    results: { torque: result(fromSi(si(S), unit), fromSi(si(S), unit).value, high.value) },
    steps: [step(phrase('matter.jerk'), 'S … 1.5 S', put`${S} … ${high}`, high)],
    assumed: assumedSetting(given),
    cautions: [],
    sources: [],
  }
}

/** On kinds that keep no spring loaded at rest nothing is left wound up. */
export const workNoSpring: Work = (given) => {
  const type = given['wrench-type']
  if (type === undefined || type === 'click') return undefined
  return {
    code: 'no',
    headline: phrase('matter.no-spring'),
    results: {},
    steps: [],
    assumed: [],
    cautions: [],
    sources: [],
  }
}
