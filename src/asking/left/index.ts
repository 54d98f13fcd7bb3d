// What a text told besides what was taken, where the answer would hang on it: a second adapter, another torque, the angle of a pull, a
// reading. Then the input is asked for, and nothing is worked out without it.
import { composeReach } from '../compose/reach.ts'
import type { Facts } from '../facts.ts'
import { otherwise, type Proposal } from '../proposal.ts'
import { leftPulls, leftReadings } from './check.ts'
import { INCLUDED, leftBends, leftOfJoint } from './joint.ts'
import { leftOfLine, leftTorques } from './line.ts'
import { type Left, spare } from './spare.ts'

/** `oil on them, and a 50 mm crowfoot on a 400 mm wrench`: two steps, and the torque of the second is what comes out of the first. */
const leftOfLubricant = (facts: Facts): readonly Left[] => {
  if (!facts.lengthOf('adapter') || !facts.lengthOf('lever')) return []
  const { question, entries } = composeReach(facts)
  return [{ input: 'torque', others: [otherwise(question, entries)] }]
}

/** `20 times a day`: how many in all is what counts. */
const RATE = /\b\d+ ?(?:x|times|uses|clicks|pulls|cycles) (?:a|per|each|every) (?:day|week|month|shift)\b/

const leftIn = (facts: Facts, proposal: Proposal): readonly Left[] => {
  switch (proposal.question) {
    case 'adapter-setting':
      return leftOfLine(facts, proposal, 'torque')
    case 'adapter-reading':
      return leftOfLine(facts, proposal, 'reading')
    case 'prevailing':
      return [
        ...leftTorques(facts, proposal, 'run-on'),
        ...(INCLUDED.test(facts.scene.folded) ? [{ input: 'torque' }] : []),
      ]
    case 'scale-check':
    case 'scale-plan':
      return leftPulls(facts, proposal)
    case 'swivel':
      return leftBends(facts, 'angle')
    case 'flex-head':
      return leftBends(facts, 'tilt')
    case 'lubricant':
      return leftOfLubricant(facts)
    case 'multiplier':
      return [
        ...leftTorques(facts, proposal, 'torque'),
        ...spare(facts.percents, proposal).map(() => ({ input: 'efficiency' })),
        ...(facts.lengthOf('adapter') ? [{ input: 'torque' }] : []),
      ]
    case 'clamp-force':
    case 'bolt-torque':
      return leftOfJoint(facts, proposal)
    case 'next-check':
      return RATE.test(facts.scene.folded) && proposal.entries.every(({ input }) => input !== 'uses')
        ? [{ input: 'uses' }]
        : []
    case 'wrench-check':
      return leftReadings(facts, proposal)
    default:
      return []
  }
}

/** The proposal without what may be another than was taken: that is asked for, each reading of it offered. */
export const withoutDoubt = (facts: Facts, proposal: Proposal): Proposal => {
  // One in doubt is refused as it is.
  if (facts.scene.placed.some(({ measure }) => measure.unclear)) return proposal
  const left = leftIn(facts, proposal)
  if (left.length === 0) return proposal
  const inputs = new Set(left.map(({ input }) => input))
  const taken = proposal.entries.filter(({ input }) => inputs.has(input))
  const mains = taken.length > 0 ? [otherwise(proposal.question, proposal.entries)] : []
  return {
    ...proposal,
    // With another link in the line, nobody said that all of them point the one way.
    entries: proposal.entries.filter(
      ({ input }) => !inputs.has(input) && !(inputs.has('adapter') && input === 'angle'),
    ),
    asks: [...new Set([...proposal.asks, ...inputs])],
    others: [...mains, ...left.flatMap(({ others = [] }) => others), ...proposal.others],
  }
}
