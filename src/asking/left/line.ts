// Left aside beside an adapter: another length, another torque, another direction, a share.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import { another } from '../compose/directions.ts'
import type { Facts } from '../facts.ts'
import type { Length, LengthRole } from '../lengths.ts'
import { isDimension, siOf, textOf } from '../measure.ts'
import { otherwise, type Proposal } from '../proposal.ts'
import { type Placed, pull, type Scene } from '../scene.ts'
import { type Torque, torqueText } from '../torques.ts'
import { isSame, isTaken, type Left, spare } from './spare.ts'

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
      const isBar = one.role === 'bar' || one.role === 'extension'
      if (ofHead.has(one.role) || (isBar && scene.has('vertical'))) return []
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

const SPAN_LENGTH = 8
const ofElse: ReadonlySet<Torque['role']> = new Set<Torque['role']>(['range', 'dialled', 'at-setting', 'claimed'])

const told = /^(?:used|new|high|low|off)$/

/** `75 Nm used bolts`, `reads 3 Nm high`: that too may be what counts. */
const isToldOf = ({ pieces }: Scene, { at }: Placed): boolean => {
  const behind = pieces[at + 1]
  return behind?.kind === 'word' && told.test(behind.text)
}

/** `80 à 90 Nm`, `80 a 90 Nm`, `80 bis 90 Nm`: a span in words that are read otherwise. */
const SPAN = /\d\s?(?:à|a|bis)\s?\d/i

/** Another torque that may be the one that is meant, or is to be added. */
export const leftTorques = ({ scene, torques }: Facts, proposal: Proposal, input: string): readonly Left[] => {
  const used = torques.filter((one) => isTaken(one, proposal.entries))
  const isSpan = used.some(({ start, end }) => SPAN.test(scene.quote(Math.max(start - SPAN_LENGTH, 0), end)))
  if (isSpan) return [{ input }]
  const isElse = (one: Torque): boolean =>
    ofElse.has(one.role) && !(one.role === 'dialled' && (input === 'reading' || isToldOf(scene, one)))
  return spare(torques, proposal)
    .filter((one) => isDimension(one.measure, 'torque') && !isElse(one) && !isDenied(scene, one))
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
    .filter(({ joined, loose, measure }) => !joined && !loose && isDimension(measure, 'angle'))
    .filter(({ measure }) => !told.includes(writeQuantity(quantity(measure.value, units['1']))))
    .map(() => ({ input: 'angle' }))
}

/** `reduce by 15 %`, `plus 10 %`: a share of the torque that is wanted. */
const leftShares = ({ scene, percents }: Facts, proposal: Proposal, input: string): readonly Left[] =>
  spare(percents, proposal).flatMap((one) =>
    pull(scene, one, 'reduce', 'loss', 'deviation') > pull(scene, one, 'tolerance') ? [{ input }] : [],
  )

/** Where the hand is, in words that no length goes with. */
const HELD =
  /\b(?:half ?way (?:down|up|along)|one (?:hand )?on the head|hand on the head|(?:by|near|close to) the head|end of the handle)\b/

/** Of a question with an adapter in it; `torque` is its input for the torque that was told. */
export const leftOfLine = (facts: Facts, proposal: Proposal, torque: string): readonly Left[] => [
  ...leftLengths(facts, proposal),
  ...leftTorques(facts, proposal, torque),
  ...leftAngles(facts, proposal),
  ...leftShares(facts, proposal, torque),
  ...(HELD.test(facts.scene.folded) && facts.scene.has('hand') ? [{ input: 'hand' }] : []),
]
