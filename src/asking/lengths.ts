// What each length of a text is: lever, adapter, bar, hand, drive, jaw … by the noun that holds it nearest.

import { units } from '../core/unit.ts'
import type { CueTag } from './cues.ts'
import { isDimension, type Measure, siOf } from './measure.ts'
import { nearby, type Placed, pull, type Scene } from './scene.ts'

export type LengthRole =
  | 'lever'
  | 'adapter'
  | 'extension'
  | 'bar'
  | 'hand'
  | 'pipe'
  | 'overall'
  | 'from-drive'
  | 'hook'
  | 'fitting'
  | 'longer'
  | 'shorter'
  | 'drive'
  | 'jaw'
  | 'size'
  | 'swivel'

export interface Length extends Placed {
  readonly role: LengthRole | undefined
  /** How strongly its noun holds it. */
  readonly score: number
  /** No unit was written. */
  readonly unitless: boolean
  /** Its unit was not written. */
  readonly assumed?: boolean
}

const roles: ReadonlyMap<CueTag, readonly [LengthRole, number]> = new Map<CueTag, readonly [LengthRole, number]>([
  ['crowfoot', ['adapter', 0]],
  ['adapter', ['adapter', 0]],
  ['spanner', ['adapter', -1]],
  ['extension', ['extension', 0]],
  ['bar', ['bar', 0.5]],
  ['wrench', ['lever', 0]],
  ['lever-arm', ['lever', 1]],
  ['arm', ['lever', 0]],
  ['handle', ['lever', -1]],
  ['overall', ['overall', 2]],
  ['hand', ['hand', 0]],
  ['from-drive', ['from-drive', 1]],
  ['pipe', ['pipe', 0]],
  ['hook', ['hook', 0]],
  ['fitting', ['fitting', 0]],
  ['longer', ['longer', 0.5]],
  ['shorter', ['shorter', 0.5]],
  ['drive', ['drive', 1]],
  ['socket', ['jaw', 0]],
  ['bolt', ['size', 0]],
  ['nut', ['jaw', 0]],
  ['swivel', ['swivel', 0]],
  ['flex-head', ['lever', -2]],
])
const tags: ReadonlySet<CueTag> = new Set(roles.keys())

const drives = [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1]
const SHORTEST_LEVER = 0.1 // m: nothing shorter is a torque wrench; 1/2 in before one is its drive
const SHORT_ARM = 0.2 // m
const LONGEST_JAW = 0.0365 // m
const LONGEST_JAW_INCH = 1.51 * 0.0254

const isDriveSize = ({ value, unit, kind, fraction }: Measure): boolean =>
  drives.includes(value) && (unit?.symbol === 'in' || (kind === 'bare' && fraction === true))

/** `17 mm crowfoot`, `3/4 crowfoot`: what stands before such a noun is mostly its jaw, not how far it reaches. */
const mayBeJaw = ({ value, unit, fraction, kind }: Measure): boolean => {
  if (unit?.symbol === 'mm') return Number.isInteger(value) && value / 1000 <= LONGEST_JAW
  return fraction === true && (unit?.symbol === 'in' || kind === 'bare') && value * 0.0254 <= LONGEST_JAW_INCH
}

const wordAt = (scene: Scene, at: number): string => {
  const piece = scene.pieces[at]
  return piece?.kind === 'word' ? piece.text : ''
}

const spokenOf = (scene: Scene, placed: Placed, ...words: readonly string[]): boolean =>
  [1, 2, 3].some((back) => words.includes(wordAt(scene, placed.at - back)))

const wantsUnit = 10

const roleOf = (scene: Scene, placed: Placed): Omit<Length, keyof Placed> => {
  const { measure } = placed
  const unitless = measure.kind === 'bare'
  const [best] = nearby(scene, placed, tags)
    .map((near) => ({ ...near, score: near.score + (roles.get(near.cue.tag)?.[1] ?? 0) }))
    .sort((one, other) => other.score - one.score)
  const usual = spokenOf(scene, placed, 'normal', 'usual', 'normally', 'usually', 'instead') && scene.has('hand')
  if (usual && !unitless) return { role: 'lever', score: best?.score ?? 5, unitless }
  if (!best) return { role: undefined, score: 0, unitless }
  const role = roles.get(best.cue.tag)?.[0]
  // An arm is the wrench's where it is long, and that of a tool where it is short.
  if (best.cue.tag === 'arm' && !unitless && siOf(measure) < SHORT_ARM) {
    return { role: 'adapter', score: best.score, unitless }
  }
  const adjectival = best.after && best.score >= 9.5
  if (
    isDriveSize(measure) &&
    (role === 'drive' || role === 'jaw' || (role === 'lever' && siOf(measure) < SHORTEST_LEVER))
  ) {
    return { role: role === 'jaw' ? 'jaw' : 'drive', score: best.score, unitless }
  }
  if (unitless && best.score < wantsUnit) return { role: undefined, score: 0, unitless }
  if (role === 'lever' && !unitless && siOf(measure) < SHORTEST_LEVER) return { role: undefined, score: 0, unitless }
  const jawed = best.cue.tag === 'crowfoot' || best.cue.tag === 'spanner'
  if (role === 'adapter' && adjectival && jawed && mayBeJaw(measure))
    return { role: 'jaw', score: best.score, unitless }
  if (role === 'from-drive' || role === 'lever') {
    if (pull(scene, placed, 'hand') > (role === 'lever' ? best.score : 4))
      return { role: 'hand', score: best.score, unitless }
  }
  return { role, score: best.score, unitless }
}

/** A fraction of a length is inches, whoever leaves the unit out; shown as assumed. */
const inInches = (length: Length): Length =>
  length.unitless && length.measure.fraction && (length.role === 'adapter' || length.role === 'lever')
    ? { ...length, measure: { ...length.measure, kind: 'quantity', unit: units.in }, unitless: false, assumed: true }
    : length

const ROW_BREAK = 9.5

/** Every length with its role. What stands in one row with another takes its role where it has none of its own. */
export const lengthsOf = (scene: Scene): readonly Length[] => {
  const out: Length[] = []
  for (const placed of scene.placed) {
    const { measure } = placed
    if (!isDimension(measure, 'length') && measure.kind !== 'bare') continue
    const length = inInches({ ...placed, ...roleOf(scene, placed) })
    const before = out.at(-1)
    const row = measure.list !== undefined && before?.measure.list === measure.list
    const apart = before && placed.at - before.at === 2 && ['or', 'and'].includes(wordAt(scene, placed.at - 1))
    if (before?.role && (row || apart) && length.score < ROW_BREAK)
      out.push({ ...length, role: before.role, score: before.score })
    else if (before && !before.role && (row || apart) && length.role) {
      out.pop()
      out.push({ ...before, role: length.role, score: length.score }, length)
    } else out.push(length)
  }
  return out.filter(({ unitless, role }) => !unitless || role !== undefined)
}
