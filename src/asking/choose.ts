// What a text is asking: which question with which inputs, one of several, a maker's figure, or nothing of ours.

import { questions } from '../questions/index.ts'
import type { Slug } from '../questions/matters/topic.ts'
import { composeCompare, composeConvert, composeInterval, composeScale } from './compose/check.ts'
import {
  composeBolt,
  composeClamp,
  composeLubricant,
  composeNutFactor,
  composePrevailing,
  composeTurn,
} from './compose/joint.ts'
import {
  composeBand,
  composeBar,
  composeFitting,
  composeFlexHead,
  composeHand,
  composePull,
  composeRange,
  composeSwivel,
} from './compose/line.ts'
import { composeMatter, topicOf, topicsIn } from './compose/matter.ts'
import { composeMultiplier } from './compose/multiplier.ts'
import { composeReach, composeWhich } from './compose/reach.ts'
import { checkEitherWay, composeCheck } from './compose/wrench-check.ts'
import type { Facts } from './facts.ts'
import { isMakersJoint } from './makers-joint.ts'
import { type Alternative, otherwise, type Proposal } from './proposal.ts'
import { LEAST } from './score.ts'
import { ofTightening, ofTools, type Scores, scoresOf, strongest, type TopicName } from './topics.ts'

const composers: Readonly<Record<TopicName, (facts: Facts) => Proposal>> = {
  reach: composeReach,
  bar: composeBar,
  swivel: composeSwivel,
  'flex-head': composeFlexHead,
  fitting: composeFitting,
  multiplier: composeMultiplier,
  hand: composeHand,
  pull: composePull,
  lubricant: composeLubricant,
  clamp: composeClamp,
  'nut-factor': composeNutFactor,
  bolt: composeBolt,
  turn: composeTurn,
  prevailing: composePrevailing,
  scale: composeScale,
  check: composeCheck,
  band: composeBand,
  range: composeRange,
  interval: composeInterval,
  compare: composeCompare,
  convert: composeConvert,
  which: composeWhich,
}

/** How many of the needed inputs a proposal does not have. */
const lacking = ({ question, entries, asks }: Proposal): number => {
  const told = new Set(entries.map(({ input }) => input))
  const { inputs, oneOf } = questions[question]
  const needed = Object.keys(inputs).filter((name) => inputs[name]?.needed && !told.has(name))
  return needed.length + oneOf.filter((group) => !group.some((name) => told.has(name))).length + asks.length
}

// The wrench itself has torque in its name.
const ASKS_TORQUE = /\btorq(?!ue[\s-](?:wrench|spanner|tool))/
const GOES_TO =
  /\bwhat (?:do|does|should)\b.{0,60}\b(?:go(?:es)? to|(?:be )?do(?:ne)? up to|tighten(?:ed)? to)\s?[?.!]?$/

/** What a bolt bears and how hard it clamps is another thing after a turn than after the torque before it. */
const turnedOn: ReadonlySet<TopicName> = new Set<TopicName>(['clamp', 'bolt', 'lubricant', 'nut-factor'])

/** A maker's figure is asked for: a torque for a part, and none is given that something could be worked out from. */
const asksMaker = (facts: Facts, topic: TopicName, best: number, about: () => boolean): boolean => {
  const { scene, torques, size, grade } = facts
  // Torque and turn are two stages of a maker's procedure: not for us to confirm.
  if (facts.angles.some(({ joined }) => joined) && (best < 6 || turnedOn.has(topic))) return true
  const named = scene.has('vehicle') || scene.has('nut', 'bolt')
  if (best < LEAST && named && !scene.has('repair') && ASKS_TORQUE.test(scene.folded) && !about()) return true
  if (best < LEAST && named && torques.length === 0 && GOES_TO.test(scene.folded)) return true
  // With a wrench and its lever beside the torque it is for us to work out, whatever the part is called.
  if (
    facts.lengthOf('lever', 'from-drive') &&
    torques.some(({ role }) => role === 'wanted') &&
    facts.lengths.length > 1
  )
    return false
  const isConversion = scene.has('convert') && !scene.has('vehicle', 'nut', 'bolt')
  if (isConversion && scene.everyPlaced.some(({ measure }) => measure.kind === 'quantity')) return false
  const isOfTools = scene.has('extension', 'bar', 'swivel')
  const forPart = !isOfTools && (scene.has('vehicle') || (scene.has('ask-matter') && scene.has('nut')))
  if (best < LEAST && forPart && torques.length > 0 && !scene.has('repair') && !about()) return true
  if (!scene.has('ask-spec')) return false
  const given = torques.some(({ role, unit }) => role !== 'range' && role !== 'claimed' && unit !== undefined)
  const engineering = size !== undefined && grade !== undefined && !scene.has('vehicle')
  if (engineering) return false
  return given ? best < (scene.has('vehicle') ? 7 : 5) : scene.has('vehicle') || best < 6
}

/** Repairs, greetings, purchases: nothing of ours, unless something of ours is clearly asked too. */
const isOut = (facts: Facts, best: number): boolean => facts.scene.has('repair') && best < 5

/** An extension that may be the adapter out front or the bar under the drive. */
const eitherWay = ({ reach, bar }: Scores, facts: Facts): boolean =>
  facts.scene.has('extension') &&
  !facts.scene.has('crowfoot', 'adapter', 'spanner', 'bar') &&
  Math.abs(reach - bar) <= 2 &&
  Math.max(reach, bar) >= 3

/** `clicked at 80 with a crowfoot`: the torque that was wanted, or what the wrench said. Which, nothing tells. */
const onlyDialled = ({ scene, torques }: Facts): boolean =>
  !scene.has('ask-setting', 'ask-got') &&
  torques.some(({ role }) => role === 'dialled') &&
  !torques.some(({ role }) => role === 'wanted' || role === undefined)

const careTopics: readonly Alternative[] = ['calibration', 'stored-wound-up'].map((topic) => ({
  question: 'does-it-matter',
  inputs: { topic },
}))

const measured: ReadonlySet<string> = new Set(['lever', 'adapter', 'length', 'hand'])

/** Topics whose own search asks for a nut, a washer or a wheel already. */
const ofJoints: ReadonlySet<string> = new Set(['re-used-nut', 'washers', 'wheel-re-torque'])

const careful: ReadonlySet<string> = new Set([
  'stored-wound-up',
  'dropped',
  'loosening-with-it',
  'clicked-twice',
  'jerked',
  're-used-nut',
  'washers',
  'wheel-re-torque',
  'digital-or-click',
  'price',
  'calibration',
  'under-a-fifth',
  'size-adapters',
])

const chosen = (
  facts: Facts,
  scores: Scores,
  topicsOf: () => readonly Slug[],
): Proposal | readonly Alternative[] | undefined => {
  const { scene } = facts
  const topic = strongest(scores)
  const best = scores[topic]
  // Without any number an extension is what is mostly called so, the bar under the drive; the other reading is offered.
  if (eitherWay(scores, facts) && scene.placed.length === 0 && topicsOf().includes('bars')) {
    return composeMatter('bars', [], ['adapter-straight'])
  }
  if (best < LEAST) {
    const topics = topicsOf()
    const [slug] = topics
    if (eitherWay(scores, facts))
      return [composeReach(facts), composeBar(facts)].map(({ question, entries }) => otherwise(question, entries))
    if (slug === undefined && scene.has('care') && scene.has('wrench', 'pair')) return careTopics
    if (slug === undefined || !(ofTightening(facts) || (careful.has(slug) && (ofJoints.has(slug) || ofTools(facts)))))
      return undefined
    return topics.length === 1
      ? composeMatter(slug, [])
      : topics.map((one) => ({ question: 'does-it-matter', inputs: { topic: one } }))
  }
  if (eitherWay(scores, facts)) {
    const ways = [composeReach(facts), composeBar(facts)]
    return ways.map(({ question, entries }) => otherwise(question, entries))
  }
  // Two wrenches without a number: that they agree proves neither.
  if (
    topic === 'compare' &&
    !facts.scene.placed.some(({ measure }) => measure.list === 2) &&
    !facts.torques.some(({ role }) => role !== 'range') &&
    facts.scene.placed.filter(({ measure }) => measure.kind === 'bare').length < 2
  )
    return composeMatter('calibration', [])
  const ways = topic === 'check' ? checkEitherWay(facts) : undefined
  if (ways) return ways
  const proposed = composers[topic](facts)
  if (topic === 'reach' && onlyDialled(facts)) {
    const [other] = proposed.others.filter(({ question }) => question !== proposed.question)
    if (other) return [otherwise(proposed.question, proposed.entries), other]
  }
  const lacks = lacking(proposed)
  if (lacks === 0) return proposed
  const asked = scene.has('ask-matter') && !scene.has('ask-setting', 'ask-got')
  const about = topicOf(topic, facts)
  const topics = topicsOf()
  const [single] = topics.length === 1 ? topics : []
  if (single !== undefined && careful.has(single) && best < 6) return composeMatter(single, proposed.entries)
  const bare =
    lacks > 1 &&
    /\?/.test(scene.text) &&
    !proposed.entries.some(({ input }) => measured.has(input)) &&
    !scene.has('ask-setting', 'ask-got')
  if (about !== undefined && ((asked && (lacks > 1 || topic === 'bar')) || (bare && topic === 'bar'))) {
    const matter = composeMatter(about, proposed.entries, topics)
    return { ...matter, others: [otherwise(proposed.question, proposed.entries), ...matter.others] }
  }
  return proposed
}

/** What was found: a proposal, several readings of which none is taken, or why there is none. */
export type Choice = Proposal | readonly Alternative[] | 'maker-figure' | 'out-of-scope'

export const isSeveral = (choice: Choice): choice is readonly Alternative[] => Array.isArray(choice)

export const choose = (facts: Facts): Choice => {
  const scores = scoresOf(facts)
  const topic = strongest(scores)
  const best = scores[topic]
  // The search costs as much as all the rest: it is made where something hangs on it, and once.
  let found: readonly Slug[] | undefined
  const topics = (): readonly Slug[] => {
    found ??= topicsIn(facts)
    return found
  }
  const ofCare = (): boolean => topics().some((slug, place) => place === 0 && careful.has(slug))
  // A torque from size and class alone, wherever in the text its joint is named.
  if (topic === 'bolt' && isMakersJoint(facts.scene)) return 'maker-figure'
  if (asksMaker(facts, topic, best, ofCare)) return 'maker-figure'
  if (isOut(facts, best)) return 'out-of-scope'
  return chosen(facts, scores, topics) ?? 'out-of-scope'
}
