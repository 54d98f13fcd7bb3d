// What sits in the line of the drive: bars, swivels, tilted heads, other heads; and where the hand pulls.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { bendAngles, type Facts, percentBy, pickTorque, wholeRange } from '../facts.ts'
import { isDriveSize, type Length } from '../lengths.ts'
import { siOf, textOf } from '../measure.ts'
import { type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import { type Torque, torqueText } from '../torques.ts'
import { rangeEntries, unitChoices, wrenchTypeOf } from './reach.ts'

export const torqueEntry = (input: string, torque: Torque | undefined): Entry | undefined =>
  torque?.unit ? entry(input, torqueText(torque), torque, torque.assumed) : undefined

const anyTorque = ['wanted', undefined, 'dialled', 'at-setting', 'claimed'] as const

export const unitOffers = (
  question: Proposal['question'],
  entries: readonly (Entry | undefined)[],
  input: string,
  torque: Torque | undefined,
) => unitChoices(input, torque).map((change) => otherwise(question, entries, change))

export const composeBar = (facts: Facts): Proposal => {
  const { torque } = pickTorque({ ...facts, torques: facts.torques.filter(({ role }) => role !== 'range') }, anyTorque)
  // `12" extension 3/8`: a bare fraction of that size is its drive.
  const isDrive = ({ unitless, measure }: Length): boolean =>
    unitless && measure.fraction === true && isDriveSize(measure)
  const bars = facts.lengthsOf('bar', 'extension').filter((one) => !isDrive(one))
  const [bar, ...more] = bars
  const drive = facts.lengthOf('drive') ?? facts.lengths.find(isDrive)
  const entries = [
    torqueEntry('torque', torque),
    bar && entry('length', textOf(bar.measure), bar),
    drive &&
      entry(
        'drive',
        drive.measure.fraction ? drive.measure.raw.replace(/[^\d/].*$/, '') : textOf(drive.measure),
        drive,
      ),
  ]
  return proposal('extension-bar', entries, {
    others: [
      ...more.map((one) => otherwise('extension-bar', entries, { length: textOf(one.measure) })),
      ...unitOffers('extension-bar', entries, 'torque', torque),
    ],
  })
}

export const composeSwivel = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, ['dialled', 'wanted', undefined, 'at-setting'])
  const [angle] = bendAngles(facts)
  const entries = [
    torqueEntry('torque', torque),
    angle && entry('angle', `${angle.measure.raw.replace(/[^\d.,].*$/, '')}°`, angle),
  ]
  return proposal('swivel', entries, { others: unitOffers('swivel', entries, 'torque', torque) })
}

/** `400 mm long`: of the only thing that is named, the wrench; shown as assumed. */
const longOne = ({ lengths, scene }: Facts): Length | undefined => {
  const [only, ...more] = lengths.filter(({ unitless }) => !unitless)
  const behind = only && scene.pieces[only.at + 1]
  const isLong = behind?.kind === 'word' && behind.text === 'long'
  // At the end of a clause it stands for itself: `100 Nm dialled, 450 mm`.
  const isAlone = behind === undefined || behind.kind === 'mark'
  return only && more.length === 0 && only.role === undefined && (isLong || isAlone) ? only : undefined
}

/** `hinge 1.5 in from the drive`. */
const hingeOf = ({ lengths, scene }: Facts): Length | undefined =>
  lengths.find(({ at, unitless }) => {
    const before = scene.pieces[at - 1]
    return !unitless && before?.kind === 'word' && before.text === 'hinge'
  })

export const composeFlexHead = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, ['dialled', 'wanted', undefined, 'at-setting'])
  const [tilt] = bendAngles(facts)
  const hinge = hingeOf(facts)
  const lever = facts.lengthOf('lever') ?? [facts.lengthOf('from-drive') ?? longOne(facts)].find((one) => one !== hinge)
  const entries = [
    torqueEntry('torque', torque),
    lever && entry('lever', textOf(lever.measure), lever, lever.role === undefined),
    hinge && entry('hinge', textOf(hinge.measure), hinge),
    tilt && entry('tilt', `${tilt.measure.raw.replace(/[^\d.,].*$/, '')}°`, tilt),
  ]
  return proposal('flex-head', entries, { others: unitOffers('flex-head', entries, 'torque', torque) })
}

/** [m] */
const LONG = 0.15

export const composeFitting = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, anyTorque)
  const change = facts.lengthOf('longer', 'shorter')
  // `a 350 mm interchangeable head wrench`: no head is that long.
  const whole = facts.lengthsOf('fitting').find(({ measure, unitless }) => !unitless && siOf(measure) >= LONG)
  const lever = facts.lengthOf('lever', 'from-drive') ?? whole
  const sign = change?.role === 'shorter' ? '-' : ''
  const entries = [
    torqueEntry('torque', torque),
    lever && entry('lever', textOf(lever.measure), lever),
    change && entry('fitting-change', `${sign}${textOf(change.measure)}`, change),
  ]
  return proposal('end-fitting', entries, { others: unitOffers('end-fitting', entries, 'torque', torque) })
}

/** Beside the usual grip the only other length is where the hand is now; shown as assumed. */
const otherThan = ({ lengths, scene }: Facts, lever: Length | undefined): Length | undefined => {
  const usual = scene.has('usual')
  const others = lengths.filter(
    (one) => one !== lever && !one.unitless && (one.role === undefined || (usual && one.role === 'lever')),
  )
  return lever !== undefined && others.length === 1 ? others[0] : undefined
}

export const composeHand = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, ['dialled', 'wanted', undefined, 'at-setting'])
  const lever = facts.lengthOf('lever')
  // How long a pipe is says nothing of how far out the hand is: that is asked.
  const held = facts.lengthOf('hand', 'from-drive')
  const hand = held ?? otherThan(facts, lever)
  const entries = [
    torqueEntry('setting', torque),
    lever && entry('lever', textOf(lever.measure), lever),
    hand && entry('hand', textOf(hand.measure), hand, held === undefined),
    wrenchTypeOf(facts),
  ]
  return proposal('hand-position', entries, { others: unitOffers('hand-position', entries, 'setting', torque) })
}

/** How hard to pull, at the hand or the end of a pipe. */
export const composePull = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, anyTorque)
  const at = facts.lengthOf('hand', 'pipe', 'from-drive') ?? facts.lengthOf('lever', 'overall')
  // `with a 1 m bar`, `at 450 mm`: pulled there; shown as assumed.
  const wordAt = (place: number): string => {
    const piece = facts.scene.pieces[place]
    return piece?.kind === 'word' ? piece.text : ''
  }
  const bar = facts.lengths.find(
    ({ unitless, at: place }) =>
      !unitless && (['bar', 'breaker'].includes(wordAt(place + 1)) || wordAt(place - 1) === 'at'),
  )
  const taken = at ?? bar
  const entries = [
    torqueEntry('torque', torque),
    taken && entry('hand', textOf(taken.measure), taken, at === undefined),
  ]
  return proposal('pull', entries, { others: unitOffers('pull', entries, 'torque', torque) })
}

/** A setting low in the range of the wrench. */
export const composeRange = (facts: Facts): Proposal => {
  const whole = wholeRange(facts)
  const end = whole?.range.measure.high
  if (whole?.range.unit && end !== undefined) {
    const most = entry('most', writeQuantity(quantity(end, whole.range.unit)), whole.range)
    return proposal('does-it-matter', [entry('topic', 'under-a-fifth'), torqueEntry('setting', whole.other), most])
  }
  const { torque } = pickTorque(facts, ['dialled', 'at-setting', undefined, 'wanted'])
  const most = rangeEntries(facts)
    .filter(({ input }) => input === 'most')
    .slice(0, 1)
  return proposal('does-it-matter', [entry('topic', 'under-a-fifth'), torqueEntry('setting', torque), ...most])
}

export const composeBand = (facts: Facts): Proposal => {
  const { scene } = facts
  const { torque } = pickTorque(facts, ['dialled', 'at-setting', undefined, 'wanted'])
  const tolerance = percentBy(facts, 'tolerance', 'of-scale', 'of-reading') ?? facts.percents[0]
  const ranges = rangeEntries(facts)
    .filter(({ input }) => input === 'most')
    .slice(0, 1)
  const spec = facts.torques.find(({ measure, role }) => measure.low !== undefined && role !== 'range')
  // Asked for a span alone, the wrench is taken to be set to its middle.
  const middle =
    spec && spec === torque && spec.unit ? writeQuantity(quantity(spec.measure.value, spec.unit)) : undefined
  const [scale, reading] = [scene.has('of-scale'), scene.has('of-reading')]
  const of = scale && !reading ? 'full-scale' : undefined
  const entries = [
    middle === undefined ? torqueEntry('setting', torque) : entry('setting', middle, undefined, true),
    tolerance
      ? entry('tolerance', textOf(tolerance.measure), tolerance)
      : middle !== undefined && scene.has('which-end')
        ? entry('tolerance', '4 %', undefined, true)
        : undefined,
    of ? entry('of', of) : undefined,
    ...ranges,
    spec && torqueEntry('spec', spec),
  ]
  const both = scale && reading && ranges.length > 0
  return proposal('tolerance-band', entries, {
    others: [
      ...(both ? [otherwise('tolerance-band', entries, { of: 'full-scale' })] : []),
      ...unitOffers('tolerance-band', entries, 'setting', torque),
    ],
  })
}
