// Left aside beside a bolt, a locking nut, a swivel or a tilted head.
import type { Facts } from '../facts.ts'
import { isDimension } from '../measure.ts'
import type { Proposal } from '../proposal.ts'
import type { Placed } from '../scene.ts'
import { isTold, type Left, spare } from './spare.ts'

const TWO = /\b(?:two|2|double|both|three) (?:\w+ )?(?:u[ -]?joints?|joints?|swivels?|universals?|heads?)\b/

/** A swivel or a head bends by one angle; of several, or of a span, the answer would be of the first. */
export const leftBends = ({ scene, angles }: Facts, input: string): readonly Left[] => {
  const bends = angles.filter(({ turn }) => !turn)
  const isSpan = bends.some(({ measure }) => measure.low !== undefined || measure.fraction)
  return isSpan || bends.length > 1 || TWO.test(scene.folded) ? [{ input }] : []
}

/** `0.15..0.25` */
const SPAN = /\d\.\.+\d/

/** Pieces: `K 0.15 to 0.25`, `K 0.2 +/- 0.05`. */
const NEAR_K = 5

const FINE = /\b(?:fine|pitch)\b/

/** A second size, nut factor, torque or share, and a pitch that is told beside the size. */
export const leftOfJoint = (facts: Facts, proposal: Proposal): readonly Left[] => {
  const { scene, torques } = facts
  const size = proposal.entries.find(({ input }) => input === 'size')?.text
  const isFine = size !== undefined && /^M[\d.]+$/i.test(size) && FINE.test(scene.folded)
  const rest = spare(scene.placed, proposal)
  const k = proposal.entries.some(({ input }) => input === 'k') ? facts.nutFactors[0] : undefined
  const isShare = ({ measure, at }: Placed): boolean =>
    measure.kind === 'bare' &&
    measure.value > 0 &&
    measure.value < 1 &&
    k !== undefined &&
    Math.abs(at - k.at) <= NEAR_K
  return [
    ...(isFine || rest.some(({ measure }) => measure.kind === 'size') ? [{ input: 'size' }] : []),
    ...(k && (k.measure.low !== undefined || SPAN.test(scene.folded) || rest.some(isShare)) ? [{ input: 'k' }] : []),
    ...(proposal.question === 'clamp-force' &&
    spare(torques, proposal).some((one) => isDimension(one.measure, 'torque') && !isTold(one, facts, proposal))
      ? [{ input: 'torque' }]
      : []),
    ...(proposal.question === 'bolt-torque' && spare(facts.percents, proposal).length > 0 ? [{ input: 'share' }] : []),
  ]
}

/** The run-on torque may be in the figure already. */
export const INCLUDED =
  /\b(?:includ\w*|net|total|minus|clicked at|clamped|already in|compris\w*|enthalten|inbegriffen|inclui\w*)\b/
