// What each torque of a text is: wanted, dialled, an end of the wrench's range, somebody's result. Pounds beside a wrench are lbf·ft, shown as assumed.

import { type Unit, units } from '../core/unit.ts'
import { marksBehind } from './combine.ts'
import type { CueTag } from './cues.ts'
import { isDimension, type Measure, textOf } from './measure.ts'
import type { Piece } from './pieces.ts'
import { nearest, type Placed, type Scene } from './scene.ts'

export type TorqueRole = 'wanted' | 'dialled' | 'range' | 'claimed' | 'at-setting' | 'prevailing'

export interface Torque extends Placed {
  readonly role: TorqueRole | undefined
  readonly score: number
  /** A book or a spec says so; nobody said that it is wanted here. */
  readonly sourced: boolean
  /** The unit that it is taken in; undefined where none can be told. */
  readonly unit: Unit | undefined
  /** The unit was not written at the number, or not as a torque. */
  readonly assumed: boolean
}

const roles: ReadonlyMap<CueTag, TorqueRole> = new Map<CueTag, TorqueRole>([
  ['wanted', 'wanted'],
  ['sourced', 'wanted'],
  ['dialled', 'dialled'],
  ['range', 'range'],
  ['claimed', 'claimed'],
  ['about', 'claimed'],
  ['at-setting', 'at-setting'],
  ['prevailing', 'prevailing'],
])
const tags: ReadonlySet<CueTag> = new Set(roles.keys())

/** The one torque unit that a text speaks, where it speaks one only. */
const soleUnit = (scene: Scene): Unit | undefined => {
  const written = scene.placed.flatMap(({ measure }) =>
    isDimension(measure, 'torque') && measure.unit ? [measure.unit] : [],
  )
  const all = new Set([...written, ...scene.unitsNamed.map(({ unit }) => unit)])
  return all.size === 1 ? [...all][0] : undefined
}

const word = (scene: Scene, at: number): string => {
  const piece = scene.pieces[at]
  return piece?.kind === 'word' ? piece.text : ''
}

const wrenchTags: ReadonlySet<CueTag> = new Set<CueTag>(['wrench'])

const isWrenchNear = (scene: Scene, placed: Placed): boolean => {
  const near = nearest(scene, placed, wrenchTags)
  // `40 on the clicker` is what it is set to; `a 40 Nm wrench` is how far it goes.
  return near?.after === true && near.score > 10 && word(scene, placed.at + 1) !== 'on'
}

/** `set 40`: dialled, where it is not asked what to set. */
const isSet = (scene: Scene, placed: Placed): boolean =>
  word(scene, placed.at - 1) === 'set' && !scene.cuesBefore(placed.at).some(({ tag }) => tag === 'ask-setting')

const LEAST_HELD = 3
/** What a tester shows is not farther from the setting. */
const ALIKE = 0.3

const settingMark = (scene: Scene, { at }: Placed): boolean => {
  const piece = scene.pieces[at + 1]
  return (piece?.kind === 'mark' && piece.text === ':') || marksBehind(scene.pieces, at) > 0
}

const roleOf = (scene: Scene, placed: Placed): Pick<Torque, 'role' | 'score' | 'sourced'> => {
  if (isSet(scene, placed)) return { role: 'dialled', score: 11, sourced: false }
  if (isWrenchNear(scene, placed)) return { role: 'range', score: 12, sourced: false }
  if (settingMark(scene, placed)) return { role: 'at-setting', score: 12, sourced: false }
  const best = nearest(scene, placed, tags)
  const before = scene.pieces[placed.at - 1]
  if (placed.measure.kind === 'bare' && before?.kind === 'word' && before.text === 'at' && (best?.score ?? 0) < 9) {
    return { role: 'at-setting', score: 9, sourced: false }
  }
  if (!best || best.score < LEAST_HELD) return { role: undefined, score: 0, sourced: false }
  return { role: roles.get(best.cue.tag), score: best.score, sourced: best.cue.tag === 'sourced' }
}

/** `of torque` behind pounds, or a wrench and a spec around them. */
const poundsAreTorque = (scene: Scene, placed: Placed, weighed: boolean): boolean => {
  const behind = [1, 2].map((ahead) => word(scene, placed.at + ahead))
  // `5000 lb on a 3/8-16, K 0.2` is how hard it clamps.
  if (
    scene.has('k-factor') &&
    !behind.includes('torque') &&
    scene.placed.some(({ measure }) => measure.kind === 'size')
  )
    return false
  if (
    behind.some((one) =>
      ['push', 'pull', 'force', 'clamp', 'tension', 'weight', 'preload', 'load', 'of'].includes(one),
    ) &&
    !behind.includes('torque')
  )
    return false
  return !weighed || behind.includes('torque')
}

const torqueUnit = (
  scene: Scene,
  placed: Placed,
  weighed: boolean,
  sole: Unit | undefined,
): { unit: Unit | undefined; assumed: boolean } | undefined => {
  const { measure } = placed
  if (isDimension(measure, 'torque')) return { unit: measure.unit, assumed: false }
  if (measure.weight === 'lb')
    return poundsAreTorque(scene, placed, weighed) ? { unit: units['lbf·ft'], assumed: true } : undefined
  if (measure.kind !== 'bare' || measure.fraction) return undefined
  return { unit: sole, assumed: sole !== undefined }
}

const HELD = 8 // a bare number must be held closely to be a torque at all
const SMALLEST_BARE = 2

/** What a wrench showed is no farther from what was set. */
const FARTHEST = 1.5

/** `at 150 ft-lb: 144 145 143`: a row behind a setting and its colon is what was read there. */
const readAt = (scene: Scene, { measure, at }: Placed, before: readonly Torque[]): boolean => {
  const last = before.at(-1)
  if (measure.fraction || last === undefined) return false
  const between = scene.pieces[at - 1]
  if (last.at === at - 2 && between?.kind === 'word' && gave.has(between.text)) return last.unit !== undefined
  // `tester 97 98 96` behind `100 Nm`: a row of about its size.
  if (measure.list !== undefined && last.unit !== undefined) {
    const share = measure.value / last.measure.value
    if (share < FARTHEST && share > 1 / FARTHEST && scene.has('tester', 'check', 'dialled')) return true
  }
  const isNext =
    last.at + marksBehind(scene.pieces, last.at) >= at - 2 &&
    (last.at + marksBehind(scene.pieces, last.at) === at - 1 || isMark(between))
  return isNext && (settingMark(scene, last) || (last.measure.kind === 'bare' && last.role === 'claimed'))
}

const read: Pick<Torque, 'role' | 'score' | 'sourced'> = { role: 'claimed', score: 8, sourced: false }
const gave = new Set(['got', 'gave', 'get', 'gives', 'read', 'reads', 'showed', 'shows'])
const isMark = (piece: Piece | undefined): boolean => piece?.kind === 'mark' && [':', ',', ';'].includes(piece.text)

/** No spec is so wide: from here on a span beside another torque is how far a wrench goes. */
const WIDE = 3

export const isWide = ({ measure: { low, high } }: Pick<Torque, 'measure'>): boolean =>
  low !== undefined && high !== undefined && high >= WIDE * low

const isWrenchRange = (one: Torque, all: readonly Torque[]): boolean =>
  isWide(one) && all.some((other) => other !== one && other.measure.low === undefined)

/** `103.8 at 100 Nm` beside a tester: what it showed, and where. */
const isShownAt = (scene: Scene, { measure, at }: Placed): boolean => {
  const setting = scene.pieces[at + 2]
  return (
    scene.has('tester', 'check') &&
    !measure.fraction &&
    word(scene, at + 1) === 'at' &&
    setting?.kind === 'measure' &&
    isDimension(setting.measure, 'torque') &&
    Math.abs(measure.value / setting.measure.value - 1) < ALIKE
  )
}

/** Every torque. `weighed`: the text is about a scale, so that pounds and kilos are pulls. */
export const torquesOf = (scene: Scene, weighed: boolean, taken: ReadonlySet<number>): readonly Torque[] => {
  const sole = soleUnit(scene)
  const torques: Torque[] = []
  for (const placed of scene.placed) {
    const unit = taken.has(placed.at) ? undefined : torqueUnit(scene, placed, weighed, sole)
    if (!unit) continue
    const { measure, at, start, end } = placed
    // How far it may be off is no torque.
    if (word(scene, at - 1) === 'tolerance') continue
    const shown =
      measure.kind === 'bare' &&
      !settingMark(scene, placed) &&
      (readAt(scene, placed, torques) || isShownAt(scene, placed))
    const { role, score, sourced } = shown ? read : roleOf(scene, placed)
    if (measure.kind === 'bare' && !shown && (score < HELD || measure.value < SMALLEST_BARE)) continue
    torques.push({ measure, at, start, end, role, score, sourced, ...unit })
  }
  return torques.map((one) =>
    isWrenchRange(one, torques) ? { ...one, role: 'range', score: 12, sourced: false } : one,
  )
}

/** As an input takes it, in the unit that it was taken in. */
export const torqueText = ({ measure, unit }: { measure: Measure; unit: Unit | undefined }): string =>
  textOf(measure, unit)
