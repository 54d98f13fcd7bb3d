// An adapter out front: what to dial, or what the fastener got. Which way it points is taken from words or degrees, and asked where it is only hinted at.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import { type Facts, looseAngles, percentBy, pickTorque } from '../facts.ts'
import { isHalfWidth } from '../half-width.ts'
import type { Length } from '../lengths.ts'
import { siOf, textOf } from '../measure.ts'
import { type Alternative, type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import type { Placed } from '../scene.ts'
import { type Torque, torqueText } from '../torques.ts'
import { chainEntries, eitherOne, isChained, linksBehind, ofLastOrAll, tied } from './chain.ts'
import { degrees, directionsOf, isTorn, pointsTwoWays } from './directions.ts'

const adaptersOf = (facts: Facts): readonly Length[] => {
  const sure = [...facts.lengthsOf('adapter'), ...linksBehind(facts)].sort((one, other) => one.at - other.at)
  // An adapter that moves the fastener 50 mm further out is 50 mm long.
  const all =
    [sure, facts.lengthsOf('extension', 'swivel'), facts.lengthsOf('longer', 'shorter')].find(
      (some) => some.length > 0,
    ) ?? []
  // The same length said twice is one adapter, unless there are two of them.
  const distinct = all.filter(
    (one, index) => all.findIndex((other) => siOf(other.measure) === siOf(one.measure)) === index,
  )
  return isChained(facts) ? all : distinct
}

interface Reach {
  readonly entries: readonly (Entry | undefined)[]
  readonly asks: readonly string[]
  readonly others: ReadonlyArray<Readonly<Record<string, string | readonly string[]>>>
}

const straightLever = (facts: Facts): { lever?: Length; rivals: readonly Length[] } => {
  const levers = [...facts.lengthsOf('lever', 'from-drive')]
    .filter(({ unitless }) => !unitless)
    .sort((one, other) => other.score - one.score)
  const [lever] = levers
  if (!lever) return { rivals: [] }
  return {
    lever,
    rivals: levers.filter((one) => Math.abs(siOf(one.measure) - siOf(lever.measure)) > 0.02 * siOf(lever.measure)),
  }
}

const wrenchTypes: ReadonlyArray<readonly [string, RegExp]> = [
  ['split-beam', /\bsplit[\s-]beam\b/],
  ['click', /\bclick(?:er|s|ed)?\b/],
  ['beam', /\bbeam\b/],
  ['dial', /\bdial (?:type|wrench)\b/],
  ['electronic', /\b(?:electronic|digital)\b/],
]

export const wrenchTypeOf = (facts: Facts): Entry | undefined => {
  const found = wrenchTypes.filter(([, pattern]) => pattern.test(facts.scene.folded))
  const [one] = found
  const match = one && found.length === 1 ? one[1].exec(facts.scene.folded) : null
  return one && match
    ? entry('wrench-type', one[0], { start: match.index, end: match.index + match[0].length })
    : undefined
}

export const rangeEntries = (facts: Facts): Entry[] =>
  facts.torques.flatMap((torque) => {
    const { measure, unit, role } = torque
    if (role !== 'range' || unit === undefined) return []
    if (measure.low !== undefined && measure.high !== undefined) {
      return [
        entry('least', writeQuantity(quantity(measure.low, unit)), torque, torque.assumed),
        entry('most', writeQuantity(quantity(measure.high, unit)), torque, torque.assumed),
      ]
    }
    return [entry('most', torqueText(torque), torque, torque.assumed)]
  })

const onceEach = (entries: readonly Entry[]): Entry[] =>
  entries.filter(({ input }, index) => entries.findIndex((one) => one.input === input) === index)

/** What the wrench is told to be good for: it widens the doubt, and moves no setting. */
const toleranceOf = (facts: Facts): Entry | undefined => {
  const [one, ...more] = facts.percents.filter((percent) => isHalfWidth(facts, percent))
  const told = one ?? percentBy(facts, 'tolerance')
  const behind = told && facts.scene.pieces[told.at + 1]
  // `is 5 % low` is how far it is off, not what it is good for.
  const isOff = behind?.kind === 'word' && ['low', 'high'].includes(behind.text)
  return told && more.length === 0 && !isOff && !facts.scene.has('of-scale')
    ? entry('tolerance', textOf(told.measure), told)
    : undefined
}

const reachOf = (facts: Facts): Reach => {
  const { lever, rivals } = straightLever(facts)
  const links = adaptersOf(facts).filter(({ unitless }) => !unitless)
  const directions = directionsOf(facts)
  const [direction, ...turned] = directions
  const hand = facts.lengthOf('hand')
  const others: Array<Record<string, string | readonly string[]>> = []
  const isLoose = looseAngles(facts).length > 0
  const isHinted =
    ((facts.bends.hinted || isLoose) && directions.every(({ value }) => value === 0)) ||
    (isLoose && directions.some(({ value }) => value === 180))
  const chain = links.length > 1 && isChained(facts)
  // Said to point two ways, and no second question is asked: each is offered, and none is taken.
  const isTwofold = !chain && pointsTwoWays(facts, directions)
  const asks = isHinted || isTorn(facts) || isTwofold ? ['angle'] : []
  const usedLever = rivals.length === 0 ? lever : undefined
  if (lever && rivals.length > 0) for (const one of [lever, ...rivals]) others.push({ lever: textOf(one.measure) })
  // Several adapters that nothing puts together: each is offered, and none is taken.
  const choice = links.length > 1 && !chain
  if (choice) for (const one of links) others.push({ adapter: textOf(one.measure) })
  if (choice && !eitherOne.test(facts.scene.folded))
    others.push({ adapter: links.map(({ measure }) => textOf(measure)) })
  for (const { value } of chain ? [] : isTwofold ? directions : turned) others.push({ angle: degrees(value) })
  const [link] = links
  // `50 mm + 30 mm at 45`: of the last one, or of both? Each is offered, and none is taken.
  const shared = chain ? ofLastOrAll(facts, links, directionsOf(facts, true)) : undefined
  if (shared) for (const adapter of shared) others.push({ adapter })
  const adapters =
    choice || shared
      ? []
      : chain
        ? chainEntries(links, directionsOf(facts, true), tied.test(facts.scene.folded))
        : link
          ? [entry('adapter', textOf(link.measure), link)]
          : []
  const angle =
    !chain && direction && asks.length === 0
      ? entry('angle', direction.doubt ?? degrees(direction.value), direction.from)
      : undefined
  return {
    entries: [
      usedLever && entry('lever', textOf(usedLever.measure), usedLever, usedLever.assumed),
      ...adapters,
      angle,
      hand && entry('hand', textOf(hand.measure), hand),
      hand && wrenchTypeOf(facts),
      toleranceOf(facts),
    ],
    asks,
    others,
  }
}

const torqueEntry = (input: string, torque: Torque | undefined): Entry | undefined =>
  torque?.unit ? entry(input, torqueText(torque), torque, torque.assumed) : undefined

/** Where a number has no unit, each unit that it may have is offered. */
export const unitChoices = (input: string, torque: Torque | undefined): ReadonlyArray<Record<string, string>> =>
  torque && torque.unit === undefined
    ? [units['N·m'], units['lbf·ft'], units['lbf·in']].map((unit) => ({
        [input]: torqueText({ measure: torque.measure, unit }),
      }))
    : []

const others = (
  question: Alternative['question'],
  entries: readonly (Entry | undefined)[],
  changes: ReadonlyArray<Readonly<Record<string, string | readonly string[]>>>,
): Alternative[] => changes.map((change) => otherwise(question, entries, change))

/** The torque that the fastener reached is asked for, not what to dial. */
const wantsReading = (facts: Facts): boolean => {
  const { scene } = facts
  if (!scene.has('ask-got') || scene.has('ask-setting')) return false
  // `the book says 80 with the tool on`: what the nut gets may be asked of a figure that a book gives.
  return !facts.torques.some(({ role, score, sourced }) => role === 'wanted' && !sourced && score > 9)
}

export const composeReach = (facts: Facts): Proposal => {
  const reach = reachOf(facts)
  if (wantsReading(facts)) {
    const { torque } = pickTorque(facts, ['dialled', undefined, 'wanted', 'claimed'])
    const entries = [torqueEntry('reading', torque), ...reach.entries]
    return proposal('adapter-reading', entries, {
      asks: reach.asks,
      others: [...others('adapter-reading', entries, [...unitChoices('reading', torque), ...reach.others])],
    })
  }
  const { torque, rivals } = pickTorque(facts, ['wanted', undefined, 'dialled', 'at-setting', 'claimed'])
  const used = rivals.length === 0 ? torque : undefined
  const rivalTorques =
    torque && rivals.length > 0
      ? [torque, ...rivals].filter(({ unit }) => unit !== undefined).map((one) => ({ torque: torqueText(one) }))
      : []
  const entries = [torqueEntry('torque', used), ...reach.entries, ...onceEach(rangeEntries(facts))]
  // Where it is clear what is wanted, the other way round is no other reading.
  const clear = used?.role === 'wanted' || facts.scene.has('ask-setting')
  const swapped =
    used?.unit && !clear ? [otherwise('adapter-reading', [entry('reading', torqueText(used)), ...reach.entries])] : []
  // `60 Nm with anti-seize and a crowfoot`: what the paste does is a question of its own, before this one.
  const { to, from } = facts.states
  const paste =
    to?.name !== undefined && to.name !== 'dry' && used
      ? [
          otherwise('lubricant', [torqueEntry('torque', used)], {
            ...(from?.name ? { from: from.name } : {}),
            to: to.name,
          }),
        ]
      : []
  return proposal('adapter-setting', entries, {
    asks: reach.asks,
    others: [
      ...paste,
      ...others('adapter-setting', entries, [...unitChoices('torque', used), ...rivalTorques, ...reach.others]),
      ...swapped,
    ],
  })
}

/** Which of the shop's wrenches does it, with the adapter where one is told. */
export const composeWhich = (facts: Facts): Proposal => {
  const reach = reachOf(facts)
  const { torque } = pickTorque(facts, ['wanted', undefined, 'claimed'])
  const ofAdapter = reach.entries.filter((one) => one?.input === 'adapter' || one?.input === 'angle')
  const entries = [
    torqueEntry('torque', torque),
    ...(ofAdapter.some((one) => one?.input === 'adapter') ? ofAdapter : []),
  ]
  return proposal('which-wrench', entries, {
    asks: reach.asks,
    others: others('which-wrench', entries, [
      ...unitChoices('torque', torque),
      ...reach.others.filter((change) => change['adapter'] !== undefined),
    ]),
  })
}

/** Two readings of `extension`: the adapter out front, and the bar under the drive. Neither is taken. */
export const reachOrBar = (
  facts: Facts,
  bar: Alternative,
): { readonly adapter: Alternative; readonly bar: Alternative } => {
  const { question, entries } = composeReach(facts)
  return { adapter: otherwise(question, entries), bar }
}

export const placedText = (placed: Placed | undefined, input: string): Entry | undefined =>
  placed && entry(input, textOf(placed.measure), placed)
