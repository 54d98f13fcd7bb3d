// Everything that is known of a text before a topic is chosen: its scene, and what each of its quantities is.
import type { Unit } from '../core/unit.ts'
import { type Angle, anglesOf, bendsOf } from './angles.ts'
import type { Cue, CueTag } from './cues.ts'
import {
  classOf,
  frictionsOf,
  type NutFactor,
  nutFactorsOf,
  type States,
  sizeOf,
  statesOf,
  type Told,
} from './joint-facts.ts'
import { type Length, type LengthRole, lengthsOf } from './lengths.ts'
import { isDimension } from './measure.ts'
import { nearest, type Placed, pull, type Scene } from './scene.ts'
import { isWide, type Torque, torquesOf } from './torques.ts'

export interface Facts {
  readonly scene: Scene
  readonly weighed: boolean
  readonly lengths: readonly Length[]
  readonly torques: readonly Torque[]
  readonly angles: readonly Angle[]
  readonly bends: { readonly known: readonly Cue[]; readonly hinted: boolean }
  readonly forces: readonly Placed[]
  readonly percents: readonly Placed[]
  readonly ratios: readonly Placed[]
  readonly nutFactors: readonly NutFactor[]
  readonly frictions: readonly Placed[]
  readonly states: States
  readonly size: Told | undefined
  readonly grade: Told | undefined
  readonly lengthOf: (...roles: readonly LengthRole[]) => Length | undefined
  readonly lengthsOf: (...roles: readonly LengthRole[]) => readonly Length[]
}

/** Kilos and pounds that are pulls on a scale or hung weights, newtons, and forces in a bolt. */
const forcesOf = (scene: Scene, torques: readonly Torque[]): readonly Placed[] => {
  const taken = new Set(torques.map(({ at }) => at))
  return scene.placed.filter(
    ({ measure, at }) =>
      !taken.has(at) && measure.kind === 'quantity' && (measure.weight !== undefined || isDimension(measure, 'force')),
  )
}

const SCALE_HELD = 6
const ASKS_WEIGHT =
  /\b(?:what|how much|need|need a|needs) (?:weight|load)\b|\bhow (?:heavy|many (?:kilos|kg|pounds|lbs?))\b/

const isWeighed = (scene: Scene): boolean => {
  if (scene.has('weigh-scale')) return true
  if (scene.has('weight') && ASKS_WEIGHT.test(scene.folded)) return true
  const weights = scene.placed.filter(({ measure }) => measure.weight !== undefined)
  if (scene.has('weight') && weights.length > 0) return true
  // `30 lb at 2 feet gives how much torque`: a pull and how far out.
  const pulled = weights.length > 0 || scene.placed.some(({ measure }) => isDimension(measure, 'force'))
  const far = scene.placed.some(({ measure }) => isDimension(measure, 'length'))
  const torque = scene.placed.some(({ measure }) => isDimension(measure, 'torque'))
  const plain = far && !scene.has('crowfoot', 'adapter', 'clamp', 'bolt')
  if (pulled && plain && !torque && /\b(?:how much|what|gives?|gives what) torque\b|\btorque ?\?/.test(scene.folded))
    return true
  if (weights.length > 0 && plain && torque && scene.has('scales')) return true
  // `45 lb on the scale`: the scale of a wrench shows no pounds beside it, unless an adapter is the matter.
  return (
    scene.has('scales') &&
    !scene.has('crowfoot', 'adapter') &&
    weights.some((one) => pull(scene, one, 'scales') > SCALE_HELD)
  )
}

const kTags: ReadonlySet<CueTag> = new Set<CueTag>(['k-factor', 'friction'])

export const factsOf = (scene: Scene): Facts => {
  const weighed = isWeighed(scene)
  const angles = anglesOf(scene, true)
  const lengths = lengthsOf(scene, new Set(angles.map(({ at }) => at)))
  const nutFactors = nutFactorsOf(scene)
  const used = new Set([
    ...lengths.filter(({ unitless }) => unitless).map(({ at }) => at),
    ...angles.map(({ at }) => at),
    ...nutFactors.map(({ at }) => at),
    ...scene.placed
      .filter((one) => one.measure.kind === 'bare' && (nearest(scene, one, kTags)?.score ?? 0) > 9)
      .map(({ at }) => at),
  ])
  const torques = torquesOf(scene, weighed, used)
  const lengthsWith = (...roles: readonly LengthRole[]): readonly Length[] =>
    lengths.filter(({ role }) => role !== undefined && roles.includes(role))
  return {
    scene,
    weighed,
    lengths,
    torques,
    angles,
    bends: bendsOf(scene),
    forces: forcesOf(scene, torques),
    percents: scene.placed.filter(({ measure }) => isDimension(measure, 'percent')),
    ratios: scene.placed.filter(({ measure }) => measure.kind === 'ratio'),
    nutFactors,
    frictions: frictionsOf(scene),
    states: statesOf(scene),
    size: sizeOf(scene, lengths),
    grade: classOf(scene),
    lengthsOf: lengthsWith,
    lengthOf: (...roles) => {
      let best: Length | undefined
      for (const length of lengths)
        if (
          length.role !== undefined &&
          roles.includes(length.role) &&
          (best === undefined || length.score > best.score)
        )
          best = length
      return best
    },
  }
}

/** The range of a wrench told as a span (`20-200 Nm`), where one other torque stands beside it; and that torque. */
export const wholeRange = ({ torques }: Facts): { readonly range: Torque; readonly other: Torque } | undefined => {
  const range = torques.find(isWide)
  const [other, ...more] = torques.filter((one) => one !== range)
  return range && other && more.length === 0 && other.measure.low === undefined ? { range, other } : undefined
}

export const turnsOf = ({ angles }: Facts): readonly Angle[] => angles.filter(({ turn }) => turn)
export const bendAngles = ({ angles }: Facts): readonly Angle[] => angles.filter(({ turn, loose }) => !turn && !loose)
export const looseAngles = ({ angles }: Facts): readonly Angle[] => angles.filter(({ loose }) => loose)

/** The torque that a question is about. `rivals`: others that could be meant as well. */
export interface Picked {
  readonly torque: Torque | undefined
  readonly rivals: readonly Torque[]
}

const CLOSE = 2
const same = (one: Torque, other: Torque): boolean =>
  one.measure.value === other.measure.value && one.unit === other.unit

/** The torque of the roles, in their order of weight; one that has no role at all counts last. */
export const pickTorque = ({ torques }: Facts, roles: ReadonlyArray<Torque['role']>): Picked => {
  const rank = ({ role, score }: Torque): number => {
    const place = roles.indexOf(role)
    return place === -1 ? Number.NEGATIVE_INFINITY : (roles.length - place) * 20 + score
  }
  const sorted = torques.filter((one) => roles.includes(one.role)).sort((one, other) => rank(other) - rank(one))
  const [torque] = sorted
  const rivals = torque ? sorted.filter((one) => !same(one, torque) && rank(torque) - rank(one) < CLOSE) : []
  return { torque, rivals }
}

export interface UnitlessTorque {
  readonly placed: Placed
  readonly unit: Unit | undefined
}

/** How strongly a percentage is held by words of a kind. */
export const percentBy = (facts: Facts, ...tags: readonly CueTag[]): Placed | undefined =>
  [...facts.percents]
    .map((one) => ({ one, score: pull(facts.scene, one, ...tags) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)[0]?.one
