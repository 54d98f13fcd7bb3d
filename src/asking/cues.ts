// The cues of a text: words and phrases that say what is asked or what a number is for. Found by one walk over the pieces; the longest phrase counts.
import { bends, generalLubricants, states } from './lexicon/states.ts'
import { things } from './lexicon/things.ts'
import { intentWords, outWords, roleWords } from './lexicon/words.ts'
import type { Piece } from './pieces.ts'

export type ThingTag = keyof typeof things
export type RoleTag = keyof typeof roleWords
export type IntentTag = keyof typeof intentWords
export type OutTag = keyof typeof outWords
export type CueTag = ThingTag | RoleTag | IntentTag | OutTag | 'state' | 'lubricant' | 'bend'

interface Meaning {
  readonly tag: CueTag
  /** The condition of a `state`, the angle of a `bend`. */
  readonly name: string | undefined
  readonly angle: number | undefined
}

/** A cue and the pieces that it covers: from `first` up to, not with, `next`. */
export interface Cue extends Meaning {
  readonly first: number
  readonly next: number
  /** `not`, `no` or `isn't` stands before it. */
  readonly denied: boolean
}

interface Node {
  readonly children: Map<string, Node>
  meanings: Meaning[]
}

const node = (): Node => ({ children: new Map(), meanings: [] })
const root = node()

const learn = (phrases: string, tag: CueTag, name?: string, angle?: number): void => {
  for (const phrase of phrases.split('|')) {
    let here = root
    for (const word of phrase.split(' ')) {
      const next = here.children.get(word) ?? node()
      here.children.set(word, next)
      here = next
    }
    here.meanings.push({ tag, name, angle })
  }
}

const groups = { ...things, ...roleWords, ...intentWords, ...outWords }
for (const [tag, phrases] of Object.entries(groups)) learn(phrases, tag as CueTag)
for (const [name, phrases] of Object.entries(states)) learn(phrases, 'state', name)
learn(generalLubricants, 'lubricant')
for (const [angle, phrases] of bends) learn(phrases, 'bend', undefined, angle)

const LONGEST_PHRASE = 7

// Little words inside a phrase say nothing: `grip to the drive` is `grip to drive`.
const little = new Set(['the', 'a', 'an', 'my', 'of', 'own', 'this', 'that', 'your', 'our'])

const ES = /(?:ch|sh|x)es$/

/** The word in the singular, where it may be a plural. */
const singular = (word: string): string | undefined => {
  if (word.length <= 3 || !word.endsWith('s') || word.endsWith('ss')) return undefined
  return word.slice(0, ES.test(word) ? -2 : -1)
}

const wordOf = (piece: Piece | undefined): string | undefined =>
  piece?.kind === 'word' ? piece.text : piece?.kind === 'mark' && piece.text === '=' ? '=' : undefined

const isJoint = (piece: Piece | undefined): boolean =>
  piece?.kind === 'mark' && (piece.text === '-' || piece.text === '/')

interface Found {
  meanings: readonly Meaning[]
  next: number
}

/** Follows the phrases from a place on, each way once; lists of ways would be most of what a read leaves to be swept up. */
const follow = (pieces: readonly Piece[], here: Node, at: number, depth: number, best: Found): void => {
  const place = depth > 0 && isJoint(pieces[at]) ? at + 1 : at
  const word = wordOf(pieces[place])
  if (word === undefined) return
  const one = singular(word)
  step(pieces, here.children.get(word), place + 1, depth, best)
  if (one !== undefined) step(pieces, here.children.get(one), place + 1, depth, best)
  if (depth > 0 && little.has(word)) step(pieces, here, place + 1, depth, best)
}

const step = (pieces: readonly Piece[], here: Node | undefined, next: number, depth: number, best: Found): void => {
  if (here === undefined) return
  if (here.meanings.length > 0 && next > best.next) {
    best.meanings = here.meanings
    best.next = next
  }
  if (depth + 1 < LONGEST_PHRASE) follow(pieces, here, next, depth + 1, best)
}

/** Where the longest phrase from `at` ends, and what it means; into `best`, which is handed on. */
const longest = (pieces: readonly Piece[], at: number, best: Found): boolean => {
  best.meanings = none
  best.next = at
  follow(pieces, root, at, 0, best)
  return best.next > at
}

const none: readonly Meaning[] = []

const denials = new Set(['not', 'no', 'isnt', 'arent', 'never', 'without', 'wasnt', 'nor'])

// `not quite straight`, `isn't really dry` deny as much as `not straight` does.
const between = new Set([
  ...little,
  ...'quite exactly really fully completely perfectly entirely totally all very in is at'.split(' '),
])

const isDenied = (pieces: readonly Piece[], first: number): boolean => {
  for (let back = 1; back <= 3; back++) {
    const word = wordOf(pieces[first - back])
    if (word === undefined) return false
    if (denials.has(word)) return true
    if (!between.has(word)) return false
  }
  return false
}

const ofWrench = { tag: 'wrench', name: undefined, angle: undefined } as const

/** `a 400 mm wrench at 45°`: what it is set to stands behind it, and its length before it. */
const isLengthOfWrench = (pieces: readonly Piece[], at: number, meanings: readonly Meaning[]): boolean => {
  const before = pieces[at - 1]
  return (
    wordOf(pieces[at]) === 'wrench' &&
    before?.kind === 'measure' &&
    before.measure.unit?.dimension === 'length' &&
    meanings.every(({ tag }) => tag !== 'wrench')
  )
}

/** All cues in reading order. A phrase that means several things gives a cue for each. */
export const cuesOf = (pieces: readonly Piece[]): readonly Cue[] => {
  const cues: Cue[] = []
  const found: Found = { meanings: none, next: 0 }
  for (let at = 0; at < pieces.length; ) {
    if (!longest(pieces, at, found)) {
      at++
      continue
    }
    const { next } = found
    const denied = isDenied(pieces, at)
    for (const { tag, name, angle } of found.meanings) cues.push({ tag, name, angle, first: at, next, denied })
    if (isLengthOfWrench(pieces, at, found.meanings)) cues.push({ ...ofWrench, first: at, next: at + 1, denied })
    at = next
  }
  return cues
}
