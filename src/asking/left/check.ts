// Left aside beside a pull or a check: how the pull stood, another pull, a reading.
import type { Facts } from '../facts.ts'
import { isDimension } from '../measure.ts'
import type { Proposal } from '../proposal.ts'
import type { Placed } from '../scene.ts'
import { isTaken, type Left, spare } from './spare.ts'

const isSquare = ({ measure }: Placed): boolean => measure.value === 0 || measure.value === 90
const NEAR = 1.2

/** What changes a pull: another direction than square, a pull of about the same size, a wrench that did not click. */
export const leftPulls = ({ scene, angles, forces }: Facts, proposal: Proposal): readonly Left[] => {
  const pulls = forces.filter((one) => isTaken(one, proposal.entries))
  const isPull = ({ measure }: Placed): boolean =>
    (measure.kind === 'bare' || measure.weight !== undefined) &&
    pulls.some((one) => measure.value < NEAR * one.measure.value && one.measure.value < NEAR * measure.value)
  return [
    ...angles.filter((one) => !one.turn && !isSquare(one)).map(() => ({ input: 'pull-angle' })),
    ...(pulls.length > 0 && spare(scene.placed, proposal).some(isPull) ? [{ input: 'force' }] : []),
    ...(UNCLICKED.test(scene.folded) || UNSURE.test(scene.folded) ? [{ input: 'force' }] : []),
  ]
}

/** `should it click?`: nothing did yet. */
const UNSURE = /\bshould (?:it|the wrench|that) (?:click|trip)/

const UNCLICKED =
  /\b(?:not|never|no|without|(?:did|does|do|would|wo|could)n['’]?t|didnt|doesnt|wont|wouldnt) (?:even |quite |yet )?(?:a )?(?:click|trip|break|pop)/

/** Readings of another day are none of this check. */
const BEFORE = /\b(?:last|previous) (?:year|time|check|month|week)\b/

const FARTHEST = 1.5

/** A reading of about the size of the others that is in no point. */
export const leftReadings = ({ scene }: Facts, { entries }: Proposal): readonly Left[] => {
  const points = entries.filter(({ input, assumed }) => input === 'points' && !assumed)
  const told = points.flatMap(({ text }) => [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => Number(number)))
  const isLost = ({ measure }: Placed): boolean =>
    !measure.fraction &&
    measure.low === undefined &&
    (measure.kind === 'bare' || isDimension(measure, 'torque')) &&
    !told.includes(measure.value) &&
    (measure.list !== undefined || told.some((one) => measure.value < FARTHEST * one && one < FARTHEST * measure.value))
  return scene.placed.some(isLost) || ((scene.has('pair') || BEFORE.test(scene.folded)) && told.length > 2)
    ? [{ input: 'points' }]
    : []
}
