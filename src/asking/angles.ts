// Angles of a text: the turn of a tightening, which no lever changes, and the direction of an adapter, the bend of a joint or a head.
import type { Cue, CueTag } from './cues.ts'
import { isDimension } from './measure.ts'
import { nearest, type Placed, type Scene } from './scene.ts'

export interface Angle extends Placed {
  readonly turn: boolean
  /** A stage behind a torque: `20 Nm + 90°`. */
  readonly joined: boolean
  /** Nothing says that it is how an adapter stands: room to swing, the angle of a bench. */
  readonly loose: boolean
}

const turnTags: ReadonlySet<CueTag> = new Set<CueTag>(['turn'])
const TURN_HELD = 7
const reachTags: ReadonlySet<CueTag> = new Set<CueTag>(['crowfoot', 'adapter', 'spanner', 'extension'])
const STANDS = 6
const moreWords = new Set(['another', 'further', 'then', 'extra', 'more', 'additional', 'plus'])
const torqueTags: ReadonlySet<CueTag> = new Set<CueTag>(['wanted', 'sourced', 'dialled', 'claimed', 'range', 'wrench'])

const text = (scene: Scene, at: number): string => {
  const piece = scene.pieces[at]
  return piece === undefined || piece.kind === 'measure' ? '' : piece.text
}

const joinedToTorque = (scene: Scene, placed: Placed): boolean => {
  const mark = text(scene, placed.at - 1)
  if (!['+', 'plus', 'then', 'and', '&'].includes(mark)) return false
  const before = scene.pieces[placed.at - 2]
  if (before?.kind !== 'measure') return mark === '+' || mark === 'plus'
  const { measure } = before
  // `45° and 25 Nm` is a bend with a torque; `25 Nm + 45°` and `25 Nm then 45°` are two stages.
  return mark !== 'and' && mark !== '&'
    ? isDimension(measure, 'torque') || isDimension(measure, 'angle') || measure.kind === 'bare'
    : false
}

const bendWords = new Set([
  '@',
  'at',
  'to',
  'about',
  'around',
  'bent',
  'of',
  'turned',
  'rotated',
  'angle',
  'angled',
  'tipped',
  'swung',
])
const LARGEST = 180

/** `50 mm at 30`. */
const isOfLink = (scene: Scene, { measure, at }: Placed): boolean => {
  const link = scene.pieces[at - 2]
  const isBare = measure.kind === 'bare' && !measure.fraction
  return isBare && text(scene, at - 1) === 'at' && link?.kind === 'measure' && isDimension(link.measure, 'length')
}

/** `at 45`, `bent 30`: a number without a unit that only a bend can mean. */
const bareAngle = (scene: Scene, placed: Placed): boolean => {
  const { measure, at } = placed
  if (measure.kind !== 'bare' || measure.fraction || measure.value > LARGEST || measure.value % 5 !== 0) return false
  const isNamed = text(scene, [':', '='].includes(text(scene, at - 1)) ? at - 2 : at - 1) === 'angle'
  if (isNamed) return true
  if (!bendWords.has(text(scene, at - 1))) return false
  if (measure.value === 90 || measure.value === 180 || text(scene, at - 1) === '@') return true
  // `50 mm at 30 and 30 mm at 45°`: each link has its own.
  const stands = (one: Placed): boolean => isDimension(one.measure, 'angle') || isOfLink(scene, one)
  if (isOfLink(scene, placed) && scene.placed.some((one) => one.at !== at && stands(one))) return true
  // `the adapter is at 135`: held by its noun, more than by any word that a torque goes with.
  if (
    (nearest(scene, placed, reachTags)?.score ?? 0) > Math.max(STANDS, nearest(scene, placed, torqueTags)?.score ?? 0)
  )
    return true
  return scene.has('swivel', 'flex-head') || scene.cuesBefore(at - 1).some(({ tag }) => tag === 'bend')
}

const standWords = new Set([
  'at',
  'to',
  'turned',
  'bent',
  'angled',
  'angle',
  'is',
  '=',
  '@',
  'cranked',
  'offset',
  'points',
  'pointing',
  'set',
  'about',
  'or',
  'and',
  'of',
])
const roomWords = new Set([
  'swing',
  'room',
  'move',
  'movement',
  'sweep',
  'clearance',
  'space',
  'tooth',
  'ratchets',
  'travel',
  'swings',
  'moves',
])
const NEAR = 4

const isApart = ({ pieces }: Scene, at: number): boolean =>
  [at - 1, at + 1].every((place) => {
    const piece = pieces[place]
    return piece === undefined || (piece.kind === 'mark' && [',', ';', '.', '?'].includes(piece.text))
  })

/** Words around it say that it is a direction: `at 45°`, `a 45° crowfoot`, `90° to the wrench`. */
const isBend = (scene: Scene, { at }: Placed, stands: boolean): boolean => {
  const around = Array.from({ length: 2 * NEAR + 1 }, (_, place) => text(scene, at - NEAR + place))
  if (around.some((word) => roomWords.has(word))) return false
  if (stands || scene.has('swivel', 'flex-head')) return true
  // `crowfoot 50 mm, 45°, 90 Nm`: the only angle beside the one thing that can stand at one.
  const isOnly = scene.placed.filter(({ measure }) => isDimension(measure, 'angle')).length === 1
  if (isOnly && scene.has('crowfoot', 'adapter', 'spanner') && isApart(scene, at)) return true
  if (
    standWords.has([':', '=', '('].includes(text(scene, at - 1)) ? text(scene, at - 2) : text(scene, at - 1)) ||
    ['to', 'from', 'angle', 'bend', 'offset', 'off'].includes(text(scene, at + 1))
  )
    return true
  return [at - 2, at - 1, at + 1].some((place) => scene.cuesAt(place).some(({ tag }) => tag === 'bend'))
}

/** `crowfoot 50 mm, both at 45, wrench 400 mm, 50 Nm`: beside a torque with its unit that may be how the adapter stands, and is asked. */
const mayBeBend = (scene: Scene, placed: Placed): boolean => {
  const { measure, at } = placed
  if (measure.kind !== 'bare' || measure.fraction || measure.value > LARGEST || measure.value % 5 !== 0) return false
  const isAt =
    text(scene, at - 1) === 'at' &&
    !['set', 'clicked', 'dialled', 'dialed'].includes(text(scene, at - 2)) &&
    !scene.cuesBefore(at).some(({ tag }) => torqueTags.has(tag))
  const isEnd = ['', ',', '.', ';', '?', ')'].includes(text(scene, at + 1)) && scene.pieces[at + 1]?.kind !== 'measure'
  return (
    isAt &&
    isEnd &&
    scene.has('crowfoot', 'adapter', 'spanner') &&
    scene.placed.some((one) => isDimension(one.measure, 'torque'))
  )
}

/** All angles, degrees written or not. */
export const anglesOf = (scene: Scene, mayBeBare: boolean): readonly Angle[] =>
  scene.placed.flatMap((placed) => {
    if (!isDimension(placed.measure, 'angle') && !(mayBeBare && bareAngle(scene, placed)))
      return mayBeBare && mayBeBend(scene, placed) ? [{ ...placed, joined: false, turn: false, loose: true }] : []
    const held = nearest(scene, placed, turnTags)?.score ?? 0
    const joined = joinedToTorque(scene, placed)
    // `the crowfoot is turned 90°` is how it stands, not how far anything is tightened.
    const stands = (nearest(scene, placed, reachTags)?.score ?? 0) > STANDS
    const more = [1, 2].some((back) => moreWords.has(text(scene, placed.at - back)))
    const turn = joined || (held > TURN_HELD && (more || !stands))
    return [{ ...placed, joined, turn, loose: !turn && !isBend(scene, placed, stands) }]
  })

const pullWords = new Set([
  'pull',
  'pulling',
  'pulled',
  'push',
  'pushing',
  'force',
  'hand',
  'swing',
  'load',
  'effort',
  'hold',
])

/** `pull at right angles to the handle` says how to pull, not how the adapter stands. */
const ofThePull = (scene: Scene, cue: Cue): boolean =>
  [1, 2, 3].some((back) => pullWords.has(text(scene, cue.first - back))) ||
  ['pull', 'push'].includes(text(scene, cue.next))

/** In line, and no word of which way along it. */
const along =
  /^(?:dead |all |in an? |in one )?(?:straight|in[ -]?line|straight line|line)(?: in line| with the (?:wrench|handle))?$/
const NEAR_BACK = 5

/** `in line but reversed`, `inline toward the handle`: along the wrench, and the other word tells which way. */
const isTurnedBack = (scene: Scene, cue: Cue, backs: readonly Cue[]): boolean =>
  cue.angle === 0 &&
  along.test(
    scene.pieces
      .slice(cue.first, cue.next)
      .map((_, at) => text(scene, cue.first + at))
      .join(' '),
  ) &&
  backs.some((back) => Math.abs(back.first - cue.next) <= NEAR_BACK || Math.abs(cue.first - back.next) <= NEAR_BACK)

/** Which way an adapter points, by words: known angles in reading order, and whether a bend was only hinted at. */
export const bendsOf = (scene: Scene): { readonly known: readonly Cue[]; readonly hinted: boolean } => {
  const bends = scene.cues.filter((cue) => cue.tag === 'bend' && !cue.denied && !ofThePull(scene, cue))
  // `not straight` hints at a bend as much as `bent` does.
  const deniedStraight = scene.cues.some(({ tag, denied, angle }) => tag === 'bend' && denied && angle === 0)
  const backs = bends.filter(({ angle }) => angle === 180)
  return {
    known: bends.filter((cue) => cue.angle !== undefined && !isTurnedBack(scene, cue, backs)),
    hinted: deniedStraight || bends.some(({ angle }) => angle === undefined),
  }
}
