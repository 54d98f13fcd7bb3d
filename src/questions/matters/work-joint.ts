// The size of what changes the joint at the same click: friction by two nut factors, and the run-on of a locking nut.
import { fromSi, si } from '../../core/quantity.ts'
import { finalTorque } from '../../mechanics/prevailing.ts'
import { citations } from '../../tables/citation.ts'
import { caution, put, result, step } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { percentOf } from '../reach-doubt.ts'
import type { Work } from './topic.ts'

/** The asker's own nut factors; no table's, which scatter too far for one number. */
export const workClamp: Work = (given) => {
  const { 'k-from': from, 'k-to': to } = given
  if (!from || !to) return undefined
  const change = percentOf(si(from) / si(to) - 1)
  const key = change.value === 0 ? 'matter.clamp-same' : change.value > 0 ? 'matter.clamp-more' : 'matter.clamp-less'
  return {
    code: change.value === 0 ? 'no' : 'yes',
    headline: key === 'matter.clamp-same' ? phrase(key) : phrase(key, { change }),
    results: { 'clamp-change': result(change) },
    steps: [step(phrase('matter.clamp'), 'F_to/F_from − 1 = K_from/K_to − 1', put`${from} / ${to} − 1`, change)],
    assumed: [],
    cautions: [caution('one-joint')],
    sources: [citations.nutFactor],
  }
}

export const workRunOn: Work = (given, { of }) => {
  const { torque, 'run-on': runOn } = given
  if (!torque || !runOn) return undefined
  const final = fromSi(finalTorque(si(torque), si(runOn)), of('torque'))
  return {
    results: { 'final-torque': result(final) },
    steps: [step(phrase('matter.run-on'), 'final = target + run-on', put`${torque} + ${runOn}`, final)],
    assumed: [],
    cautions: [caution('run-on-while-turning')],
    sources: [citations.runOnAviation, citations.runOnArmy],
  }
}
