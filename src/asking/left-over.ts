// What a text told besides what was taken, where the answer would hang on it: a second adapter, another torque, the angle of a pull, a
// reading. Then the input is asked for, and nothing is worked out without it.
import { quantity } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { another } from './compose/directions.ts'
import type { Facts } from './facts.ts'
import type { Length, LengthRole } from './lengths.ts'
import { isDimension, siOf, textOf } from './measure.ts'
import { type Alternative, type Entry, otherwise, type Proposal } from './proposal.ts'
import { type Placed, pull, type Scene } from './scene.ts'
import { type Torque, torqueText } from './torques.ts'

interface Left {
  readonly input: string
  /** How else the text may be read with it. */
  readonly others?: readonly Alternative[]
}

const isTaken = ({ start, end }: Placed, entries: readonly Entry[]): boolean =>
  entries.some(({ from }) => from !== undefined && from.start < end && start < from.end)

const spare = <T extends Placed>(all: readonly T[], { entries }: Proposal): readonly T[] =>
  all.filter((one) => !isTaken(one, entries))

const ALIKE = 0.01
const isSame = (one: Placed, other: Placed): boolean =>
  one.measure.unit?.dimension === other.measure.unit?.dimension &&
  Math.abs(siOf(one.measure) - siOf(other.measure)) <= ALIKE * siOf(other.measure)

/** [m] No jaw and no bolt is that large. */
const SMALL = 0.1
const ofHead: ReadonlySet<LengthRole | undefined> = new Set<LengthRole>(['size', 'jaw'])
const held: ReadonlySet<LengthRole | undefined> = new Set<LengthRole>(['hand', 'pipe'])
const beside: ReadonlySet<LengthRole | undefined> = new Set<LengthRole>(['drive', 'overall', 'lever', 'from-drive'])

/** Lengths of the line from hand to fastener that were left aside. */
const leftLengths = (facts: Facts, proposal: Proposal): readonly Left[] => {
  const { scene, lengths } = facts
  const used = lengths.filter((one) => isTaken(one, proposal.entries))
  const isNew = (one: Length): boolean =>
    !one.unitless && !beside.has(one.role) && !used.some((other) => isSame(one, other))
  return spare(lengths, proposal)
    .filter(isNew)
    .flatMap((one): Left[] => {
      const byHand = pull(scene, one, 'hand') > 0
      if (held.has(one.role) || (ofHead.has(one.role) && byHand && siOf(one.measure) > SMALL))
        return [{ input: 'hand' }]
      if (ofHead.has(one.role) || (one.role === 'bar' && scene.has('vertical'))) return []
      const links = proposal.entries.filter(({ input }) => input === 'adapter').map(({ text }) => text)
      if (links.length === 0) return []
      const chain = { adapter: [...links, textOf(one.measure)] }
      return [{ input: 'adapter', others: [otherwise(proposal.question, proposal.entries, chain)] }]
    })
}

/** `60 ft lb, not 50 ft lb`: what it is not. */
const isDenied = ({ pieces }: Scene, { at }: Placed): boolean => {
  const before = pieces[at - 1]
  return before?.kind === 'word' && /^(?:not|isnt|never)$/.test(before.text)
}

const ofElse: ReadonlySet<Torque['role']> = new Set<Torque['role']>(['range', 'dialled', 'at-setting', 'claimed'])

/** Another torque that may be the one that is meant, or is to be added. */
const leftTorques = ({ scene, torques }: Facts, proposal: Proposal, input: string): readonly Left[] => {
  const used = torques.filter((one) => isTaken(one, proposal.entries))
  return spare(torques, proposal)
    .filter((one) => isDimension(one.measure, 'torque') && !ofElse.has(one.role) && !isDenied(scene, one))
    .filter((one) => used.length > 0 && !used.some((other) => isSame(one, other)))
    .map((one) => ({
      input,
      others:
        one.role === 'prevailing' ? [] : [otherwise(proposal.question, proposal.entries, { [input]: torqueText(one) })],
    }))
}

const leftAngles = ({ scene, angles }: Facts, proposal: Proposal): readonly Left[] => {
  if (another.test(scene.folded)) return []
  // A link has its own behind its length.
  const told = proposal.entries.flatMap(({ input, text }) =>
    input === 'angle' ? [text.replace('°', '')] : [/@(.+)$/.exec(text)?.[1] ?? ''],
  )
  return spare(angles, proposal)
    .filter(({ loose, measure }) => !loose && isDimension(measure, 'angle'))
    .filter(({ measure }) => !told.includes(writeQuantity(quantity(measure.value, units['1']))))
    .map(() => ({ input: 'angle' }))
}

/** `reduce by 15 %`, `plus 10 %`: a share of the torque that is wanted. */
const leftShares = ({ scene, percents }: Facts, proposal: Proposal, input: string): readonly Left[] =>
  spare(percents, proposal).flatMap((one) =>
    pull(scene, one, 'reduce', 'loss', 'deviation') > pull(scene, one, 'tolerance') ? [{ input }] : [],
  )

const isSquare = ({ measure }: Placed): boolean => measure.value === 0 || measure.value === 90
const NEAR = 1.2

/** What changes a pull: another direction than square, a pull of about the same size, a wrench that did not click. */
const leftPulls = ({ scene, angles, forces }: Facts, proposal: Proposal): readonly Left[] => {
  const pulls = forces.filter((one) => isTaken(one, proposal.entries))
  const isPull = ({ measure }: Placed): boolean =>
    (measure.kind === 'bare' || measure.weight !== undefined) &&
    pulls.some((one) => measure.value < NEAR * one.measure.value && one.measure.value < NEAR * measure.value)
  return [
    ...angles.filter((one) => !one.turn && !isSquare(one)).map(() => ({ input: 'pull-angle' })),
    ...(pulls.length > 0 && spare(scene.placed, proposal).some(isPull) ? [{ input: 'force' }] : []),
    ...(UNCLICKED.test(scene.folded) ? [{ input: 'force' }] : []),
  ]
}

const UNCLICKED =
  /\b(?:not|never|no|without|(?:did|does|do|would|wo|could)n['’]?t|didnt|doesnt|wont|wouldnt) (?:even |quite |yet )?(?:a )?(?:click|trip|break|pop)/

/** The run-on torque may be in the figure already. */
const INCLUDED = /\b(?:includ\w*|already in|compris\w*|enthalten|inbegriffen|inclui\w*)\b/

const FARTHEST = 1.5

/** A reading of about the size of the others that is in no point. */
const leftReadings = ({ scene }: Facts, { entries }: Proposal): readonly Left[] => {
  const points = entries.filter(({ input, assumed }) => input === 'points' && !assumed)
  const told = points.flatMap(({ text }) => [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => Number(number)))
  const isLost = ({ measure }: Placed): boolean =>
    !measure.fraction &&
    measure.low === undefined &&
    (measure.kind === 'bare' || isDimension(measure, 'torque')) &&
    !told.includes(measure.value) &&
    (measure.list !== undefined || told.some((one) => measure.value < FARTHEST * one && one < FARTHEST * measure.value))
  return scene.placed.some(isLost) || (scene.has('pair') && told.length > 2) ? [{ input: 'points' }] : []
}

/** Where the hand is, in words that no length goes with. */
const HELD =
  /\b(?:half ?way (?:down|up|along)|one (?:hand )?on the head|hand on the head|(?:by|near|close to) the head|end of the handle)\b/

const leftIn = (facts: Facts, proposal: Proposal): readonly Left[] => {
  switch (proposal.question) {
    case 'adapter-setting':
    case 'adapter-reading': {
      const torque = proposal.question === 'adapter-setting' ? 'torque' : 'reading'
      return [
        ...leftLengths(facts, proposal),
        ...leftTorques(facts, proposal, torque),
        ...leftAngles(facts, proposal),
        ...leftShares(facts, proposal, torque),
        ...(HELD.test(facts.scene.folded) && facts.scene.has('hand') ? [{ input: 'hand' }] : []),
      ]
    }
    case 'prevailing':
      return [
        ...leftTorques(facts, proposal, 'run-on'),
        ...(INCLUDED.test(facts.scene.folded) ? [{ input: 'torque' }] : []),
      ]
    case 'scale-check':
    case 'scale-plan':
      return leftPulls(facts, proposal)
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
