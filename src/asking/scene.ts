// A text as the reader sees it: its pieces, its cues and its measures with their places; and how near a cue stands to a measure.
import { combine, sameTold } from './combine.ts'
import { type Cue, type CueTag, cuesOf } from './cues.ts'
import { doubted } from './doubts.ts'
import { fold } from './fold.ts'
import { inEnglish } from './in-english.ts'
import { languageOf } from './language.ts'
import type { Measure } from './measure.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { type UnitNamed, unitsNamedIn } from './units-named.ts'

export interface Placed {
  readonly measure: Measure
  /** Which piece it is. */
  readonly at: number
  readonly start: number
  readonly end: number
}

export interface Scene {
  /** In English phrases; see in-english.ts. */
  readonly text: string
  /** What was typed from one place to another. */
  readonly quote: (start: number, end: number) => string
  readonly folded: string
  readonly pieces: readonly Piece[]
  readonly cues: readonly Cue[]
  readonly placed: readonly Placed[]
  /** Those too that tell one again in another unit. */
  readonly everyPlaced: readonly Placed[]
  /** How the part begins that was not read, where the text is too long for a question. */
  readonly unread: ReadonlyArray<{ readonly start: number; readonly end: number }>
  readonly has: (...tags: readonly CueTag[]) => boolean
  readonly count: (tag: CueTag) => number
  readonly cuesAt: (at: number) => readonly Cue[]
  readonly cuesBefore: (next: number) => readonly Cue[]
  readonly unitsNamed: readonly UnitNamed[]
  /** What was looked for already: the cues near a measure, which stays the same object while roles are put to it. */
  readonly nears: Map<Measure, readonly Near[]>
}

const none: readonly Cue[] = []

/** The cues by the piece that they begin at, or that stands behind them. */
const byPlace = (cues: readonly Cue[], key: 'first' | 'next', places: number): ReadonlyArray<Cue[] | undefined> => {
  const lists = new Array<Cue[] | undefined>(places + 1)
  for (const cue of cues) {
    const known = lists[cue[key]]
    if (known) known.push(cue)
    else lists[cue[key]] = [cue]
  }
  return lists
}

/** The same value told again in another unit, close behind, is told once: the first counts. */
const toldOnce = (placed: readonly Placed[]): Placed[] =>
  placed.filter((one, index) => {
    const before = placed[index - 1]
    return !(before && one.at - before.at <= 4 && sameTold(before.measure, one.measure))
  })

const SHOWN = 80

const unreadOf = (pieces: readonly Piece[], folded: string): Scene['unread'] => {
  const end = pieces.at(-1)?.end ?? folded.length
  const more = folded.slice(end).search(/\S/)
  return more === -1 ? [] : [{ start: end + more, end: Math.min(folded.length, end + more + SHOWN) }]
}

interface InPieces {
  readonly text: string
  readonly folded: string
  readonly pieces: readonly Piece[]
  readonly quote: Scene['quote']
}

/** The text in pieces; one in another language put into English first. */
const inPieces = (typed: string): InPieces => {
  const folded = fold(typed)
  const pieces = piecesOf(folded, typed)
  const name = languageOf(pieces)
  if (name === undefined) return { text: typed, folded, pieces, quote: (start, end) => typed.slice(start, end) }
  const { text, quote } = inEnglish(typed, name)
  const english = fold(text)
  return { text, folded: english, pieces: piecesOf(english, text), quote }
}

export const sceneOf = (typed: string): Scene => {
  const { text, folded, pieces: all, quote } = inPieces(typed)
  const pieces = doubted(combine(all, folded), folded, quote)
  const cues = cuesOf(pieces)
  const everyPlaced: Placed[] = []
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at] as Piece
    if (piece.kind === 'measure') everyPlaced.push({ measure: piece.measure, at, start: piece.start, end: piece.end })
  }
  const placed = toldOnce(everyPlaced)
  const counts = new Map<CueTag, number>()
  for (const { tag } of cues) counts.set(tag, (counts.get(tag) ?? 0) + 1)
  const byFirst = byPlace(cues, 'first', pieces.length)
  const byNext = byPlace(cues, 'next', pieces.length)
  return {
    text,
    quote,
    folded,
    pieces,
    cues,
    placed,
    everyPlaced,
    unread: unreadOf(pieces, folded),
    has: (...tags) => tags.some((tag) => counts.has(tag)),
    count: (tag) => counts.get(tag) ?? 0,
    cuesAt: (at) => byFirst[at] ?? none,
    cuesBefore: (next) => byNext[next] ?? none,
    unitsNamed: unitsNamedIn(pieces, folded),
    nears: new Map(),
  }
}

export interface Near {
  readonly cue: Cue
  readonly score: number
  readonly after: boolean
}

const REACH = 14
const AFTER = 12
const BEFORE = 11
const AFTER_COST = 3
const BEFORE_COST = 1.5
const SHARED = 2

// Words between a number and its noun that carry nothing.
const free = new Set(
  (
    'a an the is are was of long about approx approximately roughly only just it its my your at be reads measures measured measure with ' +
    'which that this length around exactly nearly almost by s has have torque steel big little thick flat on one wide to from'
  ).split(' '),
)
const hard = new Set(['.', '?', '!', ';', '\n'])

const costOf = (piece: Piece, near: Placed): number | undefined => {
  if (piece.kind === 'word') return free.has(piece.text) ? 0 : 1
  if (piece.kind === 'measure') return piece.measure.unit?.dimension === near.measure.unit?.dimension ? 4 : 1.5
  if (hard.has(piece.text)) return undefined
  return piece.text === ',' ? 2.5 : 0.3
}

const LONGEST_ASIDE = 40

const isMark = (piece: Piece | undefined, text: string): boolean => piece?.kind === 'mark' && piece.text === text

/** What stands in brackets is said aside: a noun before it still holds what comes after. */
const pastAside = (scene: Scene, at: number, step: 1 | -1): number => {
  const opens = step === 1 ? '(' : ')'
  const closes = step === 1 ? ')' : '('
  if (!isMark(scene.pieces[at], opens)) return at
  for (let away = 1; away < LONGEST_ASIDE; away++)
    if (isMark(scene.pieces[at + step * away], closes)) return at + step * (away + 1)
  return at
}

/** `wrench 380 mm`, `wrench of 380 mm`; `from` is what other languages have for `of`. */
const holdsNext = ({ pieces }: Scene, { next }: Cue): boolean => {
  const piece = pieces[next]
  if (piece?.kind === 'measure') return piece.measure.unit?.dimension !== 'angle'
  return (
    piece?.kind === 'word' && (piece.text === 'of' || piece.text === 'from') && pieces[next + 1]?.kind === 'measure'
  )
}

const look = (scene: Scene, placed: Placed, step: 1 | -1, found: Near[]): void => {
  let cost = 0
  let at = placed.at
  for (let away = 1; away < REACH; away++) {
    at = pastAside(scene, at + step, step)
    const piece = scene.pieces[at]
    if (piece === undefined) break
    for (const cue of step === 1 ? scene.cuesAt(at) : scene.cuesBefore(at + 1)) {
      if (cue.denied) continue
      // `at 40 Nm spec 38 Nm`: a noun right before another number may be that one's.
      const shared = step === 1 && holdsNext(scene, cue) ? SHARED : 0
      const score = step === 1 ? AFTER - AFTER_COST * cost - shared : BEFORE - BEFORE_COST * cost
      if (score > 0) found.push({ cue, score, after: step === 1 })
    }
    const more = costOf(piece, placed)
    if (more === undefined) break
    cost += more
  }
}

/** All cues near a measure, nearest first; looked for once. */
const allNear = (scene: Scene, placed: Placed): readonly Near[] => {
  const before = scene.nears.get(placed.measure)
  if (before) return before
  const found: Near[] = []
  look(scene, placed, 1, found)
  look(scene, placed, -1, found)
  if (found.length > 1) found.sort((one, other) => other.score - one.score)
  scene.nears.set(placed.measure, found)
  return found
}

/** Every cue of the tags near a measure, nearest first. What stands behind it must stand close: `3 in crowfoot`. */
export const nearby = (scene: Scene, placed: Placed, tags: ReadonlySet<CueTag>): readonly Near[] =>
  allNear(scene, placed).filter(({ cue }) => tags.has(cue.tag))

/** The nearest of them. */
export const nearest = (scene: Scene, placed: Placed, tags: ReadonlySet<CueTag>): Near | undefined =>
  allNear(scene, placed).find(({ cue }) => tags.has(cue.tag))

/** How strongly any cue of these tags holds a measure; 0 where none does. */
export const pull = (scene: Scene, placed: Placed, ...tags: readonly CueTag[]): number =>
  allNear(scene, placed).find(({ cue }) => tags.includes(cue.tag))?.score ?? 0
