// What each length of a text is: lever, adapter, bar, hand, drive, jaw … by the noun that holds it nearest.

import { units } from '../core/unit.ts'
import type { Cue, CueTag } from './cues.ts'
import { isDimension, type Measure, siOf } from './measure.ts'
import { type Near, nearby, type Placed, pull, type Scene } from './scene.ts'

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
const SHORT_JAW = 0.0245 // m: behind its noun a larger one is more likely a length
const LONGEST_JAW_INCH = 1.51 * 0.0254

export const isDriveSize = ({ value, unit, kind, fraction }: Measure): boolean =>
  drives.includes(value) && (unit?.symbol === 'in' || (kind === 'bare' && fraction === true))

/** `17 mm crowfoot`, `3/4 crowfoot`, `crowfoot 3/4`: beside such a noun that is mostly its jaw, not how far it reaches. */
const mayBeJaw = ({ value, unit, fraction, kind }: Measure, before: boolean): boolean => {
  if (unit?.symbol === 'mm') return Number.isInteger(value) && value / 1000 <= (before ? LONGEST_JAW : SHORT_JAW)
  return fraction === true && (unit?.symbol === 'in' || kind === 'bare') && value * 0.0254 <= LONGEST_JAW_INCH
}

const wordAt = (scene: Scene, at: number): string => {
  const piece = scene.pieces[at]
  return piece?.kind === 'word' ? piece.text : ''
}

const spokenOf = (scene: Scene, placed: Placed, ...words: readonly string[]): boolean =>
  [1, 2, 3].some((back) => words.includes(wordAt(scene, placed.at - back)))

const wantsUnit = 10

/** The nouns that one length each can be of: `crowfoot on 400 mm` is no second length of the crowfoot. */
const nouns: ReadonlySet<CueTag> = new Set<CueTag>([
  'crowfoot',
  'adapter',
  'spanner',
  'extension',
  'wrench',
  'lever-arm',
  'arm',
])

/** What is far too short to be a wrench leaves the noun to the length that is one; a drive size may stand before it. */
const mayHold = ({ tag }: Cue, { measure }: Placed): boolean =>
  tag === 'drive'
    ? isDriveSize(measure)
    : tag !== 'wrench' || measure.kind === 'bare' || isDriveSize(measure) || siOf(measure) >= SHORTEST_LEVER

/** For each length the cue that holds it: the strongest pairs first, each noun once; a row of lengths may share one. */
const heldBy = (scene: Scene, all: readonly Placed[]): ReadonlyMap<Placed, Near> => {
  const pairs: Array<{ readonly placed: Placed; readonly near: Near }> = []
  for (const placed of all)
    for (const { cue, score, after } of nearby(scene, placed, tags).filter(({ cue: near }) => mayHold(near, placed)))
      pairs.push({ placed, near: { cue, score: score + (roles.get(cue.tag)?.[1] ?? 0), after } })
  pairs.sort((one, other) => other.near.score - one.near.score)
  const held = new Map<Placed, Near>()
  const taken = new Map<Cue, number | undefined>()
  for (const { placed, near } of pairs) {
    if (held.has(placed)) continue
    const { list } = placed.measure
    const shared = list !== undefined && taken.get(near.cue) === list
    if (nouns.has(near.cue.tag) && taken.has(near.cue) && !shared) continue
    held.set(placed, near)
    taken.set(near.cue, list)
  }
  return held
}

const roleOf = (scene: Scene, placed: Placed, best: Near | undefined): Omit<Length, keyof Placed> => {
  const { measure } = placed
  const unitless = measure.kind === 'bare'
  const usual = spokenOf(scene, placed, 'normal', 'usual', 'normally', 'usually', 'instead') && scene.has('hand')
  if (usual && !unitless) return { role: 'lever', score: best?.score ?? 5, unitless }
  if (!best) return { role: undefined, score: 0, unitless }
  const role = roles.get(best.cue.tag)?.[0]
  if (isDriveSize(measure) && ['drive', 'dr'].includes(wordAt(scene, placed.at + 1)))
    return { role: 'drive', score: best.score, unitless }
  // An arm is the wrench's where it is long, and that of a tool where it is short.
  if (best.cue.tag === 'arm' && !unitless && siOf(measure) < SHORT_ARM) {
    return { role: 'adapter', score: best.score, unitless }
  }
  // `the centre of the crowfoot is 34 mm from the drive`
  if (role === 'from-drive' && !unitless && siOf(measure) < SHORT_ARM && pull(scene, placed, 'crowfoot', 'adapter') > 5)
    return { role: 'adapter', score: best.score, unitless }
  const adjectival = best.after && best.score >= 9.5
  if (
    isDriveSize(measure) &&
    (role === 'drive' || role === 'jaw' || (role === 'lever' && (unitless || siOf(measure) < SHORTEST_LEVER)))
  ) {
    return { role: role === 'jaw' ? 'jaw' : 'drive', score: best.score, unitless }
  }
  if (unitless && best.score < wantsUnit) return { role: undefined, score: 0, unitless }
  if (role === 'lever' && !unitless && siOf(measure) < SHORTEST_LEVER) return { role: undefined, score: 0, unitless }
  const jawed = best.cue.tag === 'crowfoot' || best.cue.tag === 'spanner'
  const told = ['from', 'hole', 'centre', 'center', 'c', 'long', 'between', 'measured', 'out'].includes(
    wordAt(scene, placed.at + 1),
  )
  if (role === 'adapter' && jawed && !told && mayBeJaw(measure, adjectival))
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

/** `10 inches from the drive instead of 16`: the other one is in the same unit. */
const inItsUnit = (scene: Scene, placed: Placed, before: readonly Length[]): Placed => {
  const unit = before.at(-1)?.measure.unit
  const isOther = wordAt(scene, placed.at - 1) === 'of' && wordAt(scene, placed.at - 2) === 'instead'
  return placed.measure.kind === 'bare' && isOther && unit?.dimension === 'length'
    ? { ...placed, measure: { ...placed.measure, kind: 'quantity', unit } }
    : placed
}

const ROW_BREAK = 9.5

/** Every length with its role. `taken`: bare numbers that are something else already. What stands in one row with another takes its role where it has none of its own. */
export const lengthsOf = (scene: Scene, taken: ReadonlySet<number>): readonly Length[] => {
  const out: Length[] = []
  const all = scene.placed.filter(
    ({ measure, at }) => isDimension(measure, 'length') || (measure.kind === 'bare' && !taken.has(at)),
  )
  const held = heldBy(scene, all)
  for (const written of all) {
    const placed = inItsUnit(scene, written, out)
    const { measure } = placed
    const length = inInches({ ...placed, ...roleOf(scene, placed, held.get(written)) })
    const before = out.at(-1)
    const row = measure.list !== undefined && before?.measure.list === measure.list
    const apart = before && placed.at - before.at === 2 && ['or', 'and'].includes(wordAt(scene, placed.at - 1))
    const plus = scene.pieces[placed.at - 1]
    const isAdded = before?.role === 'adapter' && plus?.kind === 'mark' && plus.text === '+' && length.score < ROW_BREAK
    if (before?.role && (row || apart || isAdded) && length.score < ROW_BREAK)
      out.push({ ...length, role: before.role, score: before.score })
    else if (before && !before.role && (row || apart) && length.role) {
      out.pop()
      out.push({ ...before, role: length.role, score: length.score }, length)
    } else out.push(length)
  }
  return out.filter(({ unitless, role }) => !unitless || role !== undefined)
}
