// Which topics a text may be about, and how strongly: by the things that it names and by the quantities that it gives.
import { checkScore, isJudged, isPointed } from './check-score.ts'
import { convertScore } from './convert-score.ts'
import type { CueTag } from './cues.ts'
import { bendAngles, type Facts, turnsOf, wholeRange } from './facts.ts'
import { isHalfWidth } from './half-width.ts'
import { LEAST, when } from './score.ts'

export type TopicName =
  | 'reach'
  | 'bar'
  | 'swivel'
  | 'flex-head'
  | 'fitting'
  | 'multiplier'
  | 'hand'
  | 'pull'
  | 'lubricant'
  | 'clamp'
  | 'nut-factor'
  | 'bolt'
  | 'turn'
  | 'prevailing'
  | 'scale'
  | 'check'
  | 'band'
  | 'range'
  | 'interval'
  | 'compare'
  | 'convert'
  | 'which'

export type Scores = Readonly<Record<TopicName, number>>

const reachScore = (facts: Facts): number => {
  const { scene, lengthOf } = facts
  const has = (...tags: readonly CueTag[]): boolean => scene.has(...tags)
  const levered = lengthOf('lever', 'from-drive', 'overall') !== undefined
  const bent = facts.bends.known.length > 0 || facts.bends.hinted || bendAngles(facts).length > 0
  // `straight` alone may be said of a bar as well; a direction from the wrench, or a way out, is said of an adapter.
  const outward =
    bendAngles(facts).length > 0 ||
    facts.bends.known.some(
      (cue) =>
        cue.angle !== 0 ||
        cue.next - cue.first > 1 ||
        (scene.pieces[cue.first]?.kind === 'word' &&
          /^(?:in|inline|out|forward)/.test((scene.pieces[cue.first] as { text: string }).text)),
    )
  const extended = has('extension') ? 3 + when(outward && !has('vertical', 'bar'), levered ? 5 : 2) : 0
  const named = when(has('crowfoot'), 7) + when(has('adapter'), 5) + when(has('spanner'), 3)
  const base = Math.max(named, extended)
  // Both lengths with their roles are an adapter on a wrench, whatever it is called.
  if (base === 0 && levered && lengthOf('adapter') !== undefined) return 6
  if (base === 0) return when(has('formula') && levered && lengthOf('longer') !== undefined, 3)
  return (
    base +
    when(levered && named > 0 && lengthOf('adapter', 'extension') !== undefined, 2) +
    when(bent && named > 0, 1) +
    when(has('formula'), 1)
  )
}

const barScore = (facts: Facts): number => {
  const { scene, lengthOf } = facts
  const has = (...tags: readonly CueTag[]): boolean => scene.has(...tags)
  const levered = lengthOf('lever', 'from-drive') !== undefined
  const base = Math.max(when(has('bar'), 6), when(has('extension'), 3))
  return base === 0 ? 0 : base + when(has('vertical'), 4) - when(levered && !has('vertical'), 2)
}

/** Oil by itself is not of this desk: something must be tightened with it. */
export const ofTightening = ({ scene, torques, percents, nutFactors, states }: Facts): boolean =>
  (states.to !== undefined && scene.has('nut', 'bolt') && !scene.has('repair')) ||
  torques.length > 0 ||
  percents.length > 0 ||
  nutFactors.length > 0 ||
  scene.has('wrench', 'clamp', 'k-factor', 'sourced', 'reduce') ||
  /\b(?:torqu|tight)/.test(scene.folded)

/** A word of the trade, without which `old` or `dropped` says nothing about a torque wrench. */
export const ofTools = ({ scene }: Facts): boolean =>
  scene.has('wrench', 'pair', 'interval', 'tolerance', 'check', 'compare') ||
  /\b(?:torq|retorq|re-torq|tight|click|jerk|wind|wound|spring|zero)/.test(scene.folded)

const lubricantScore = (facts: Facts): number => {
  const { scene, states, torques, nutFactors, forces } = facts
  const named = Math.max(when(states.to !== undefined || states.from !== undefined, 6), when(states.general, 6))
  const dryOnly = !states.general && [states.to, states.from].every((cue) => cue === undefined || cue.name === 'dry')
  if (named === 0 || !ofTightening(facts)) return 0
  return (
    named +
    when(torques.length > 0, 1) +
    when(nutFactors.length > 1, 4) +
    when(scene.has('reduce'), 1) +
    when(states.from !== undefined && states.to !== undefined, 3) -
    when(dryOnly, 4) -
    when(forces.length > 0 && nutFactors.length === 1, 2)
  )
}

const clampScore = ({ scene, size, nutFactors, frictions, torques, forces }: Facts): number =>
  when(scene.has('clamp'), 4) +
  when(scene.has('clamp') && size !== undefined, 2) +
  when(size !== undefined, 2) +
  when(nutFactors.length === 1 || frictions.length > 0, 3) +
  when(torques.length > 0 && size !== undefined, 1) +
  when(forces.length > 0 && size !== undefined, 1) +
  when(scene.has('strength') && torques.length > 0 && size !== undefined, 6) -
  when(nutFactors.length > 1, 3)

/** How hard to pull, in so many words. */
const asksPull = ({ scene, torques, size }: Facts): boolean =>
  /\bhow (?:hard|much (?:force|weight|push|pull))\b/.test(scene.folded) ||
  (size === undefined &&
    torques.length > 0 &&
    /\bhow many (?:pounds|lbs|kilos|kg|newtons)\b(?! of torque)|\bpounds on the scale\b/.test(scene.folded))

/** `20-200 Nm, good at 25 Nm?`: a wrench by both ends of its range, and one torque in question. */
const asksRange = (facts: Facts): boolean =>
  /\?/.test(facts.scene.text) && facts.scene.has('wrench', 'drive') && wholeRange(facts) !== undefined

/** How far to turn a bolt. */
const asksTurn = ({ scene }: Facts): boolean =>
  /\b(?:turn(?:ing)? angle|angle of turn|how far (?:do i |should i |to )?turn|how many degrees)\b/.test(scene.folded) ||
  (scene.has('snug') && /\b(?:angle|degrees?|how much clamp)\b|°/.test(scene.folded))

/** Which of the shop's wrenches does it: one torque is told, and no wrench. */
const asksWhich = ({ scene, torques, lengthOf }: Facts): boolean => {
  const wanted = torques.filter(({ role }) => role !== 'range')
  return (
    scene.has('ask-which') &&
    wanted.length === 1 &&
    wanted.every(({ role }) => role !== 'dialled' && role !== 'at-setting') &&
    lengthOf('lever', 'from-drive', 'overall') === undefined &&
    !scene.has('ask-got', 'ask-setting', 'repair')
  )
}

export const scoresOf = (facts: Facts): Scores => {
  const { scene, torques, forces, percents, ratios, size, grade, lengthOf, weighed } = facts
  const has = (...tags: readonly CueTag[]): boolean => scene.has(...tags)
  const reach = reachScore(facts)
  const usable = torques.some(({ role }) => role !== 'range')
  return {
    reach,
    bar: barScore(facts),
    swivel: when(has('swivel'), 8),
    'flex-head': when(has('flex-head'), 8),
    fitting:
      when(has('fitting'), 6) +
      when(has('fitting') && lengthOf('longer', 'shorter') !== undefined, 4) +
      when(has('socket') && !has('fitting') && lengthOf('longer', 'shorter') !== undefined, 7),
    multiplier: when(has('multiplier'), ratios.length > 0 ? 10 : 5) + when(ratios.length > 0 && usable, 2),
    hand:
      when(has('hand'), 4) -
      when(has('crowfoot', 'adapter'), 4) +
      when(has('pipe'), 5) +
      when(lengthOf('hand') !== undefined && lengthOf('lever') !== undefined, 3) +
      when(has('lever-arm') && has('hand'), 2),
    pull: when(asksPull(facts), 6) + when(has('pipe') && usable, 1),
    lubricant: lubricantScore(facts),
    clamp: clampScore(facts),
    'nut-factor':
      when(has('k-factor') && facts.nutFactors.length === 0, 7) +
      when(forces.length > 0 && usable && size !== undefined && facts.nutFactors.length === 0 && has('k-factor'), 5),
    bolt:
      when(size !== undefined && grade !== undefined && !usable, 8) + when(has('strength') && size !== undefined, 3),
    turn: when(
      (turnsOf(facts).length > 0 || asksTurn(facts)) && size !== undefined && !usable,
      asksTurn(facts) ? 9 : 6,
    ),
    prevailing: when(has('prevailing'), 7),
    scale: when(weighed, 7) + when(weighed && forces.length > 0, 3) + when(weighed && facts.lengths.length > 0, 1),
    check: checkScore(facts),
    band:
      when(has('which-end') && torques.some(({ measure, role }) => measure.low !== undefined && role !== 'range'), 6) +
      when(
        percents.length > 0 &&
          (has('tolerance', 'of-scale', 'of-reading') || percents.some((one) => isHalfWidth(facts, one))),
        6,
      ) +
      when(has('of-scale') && has('of-reading'), 2) -
      // What a tester showed is judged, not foretold.
      when((has('tester') && torques.length > 1) || isJudged(facts), 6),
    range:
      when(has('lowest') && has('range', 'wrench', 'weigh-scale'), 8) +
      when(has('ask-matter') && torques.some(({ role }) => role === 'range') && usable && reach < LEAST, 5) +
      when(asksRange(facts) && !has('ask-matter') && reach < LEAST, 5),
    interval:
      when(has('interval'), 4) +
      when(
        scene.placed.some(({ measure }) => measure.kind === 'date'),
        3,
      ),
    compare:
      when(has('compare'), 5) +
      when(has('compare') && (torques.length > 1 || has('pair')), 2) +
      when(
        !isPointed(facts) &&
          scene.placed.some(({ measure }) => measure.list === 2 && measure.unit?.dimension !== 'length'),
        7,
      ),
    convert: convertScore(facts, reach),
    which: when(asksWhich(facts), 12),
  }
}

/** The strongest topic; of two that are as strong the one that stands first. */
export const strongest = (scores: Scores): TopicName => {
  let best: TopicName = 'reach'
  for (const topic in scores) if (scores[topic as TopicName] > scores[best]) best = topic as TopicName
  return best
}
