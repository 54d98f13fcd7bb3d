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
  readonly name?: string
  readonly angle?: number
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

const learn = (phrases: string, meaning: Meaning): void => {
  for (const phrase of phrases.split('|')) {
    let here = root
    for (const word of phrase.split(' ')) {
      const next = here.children.get(word) ?? node()
      here.children.set(word, next)
      here = next
    }
    here.meanings.push(meaning)
  }
}

const groups = { ...things, ...roleWords, ...intentWords, ...outWords }
for (const [tag, phrases] of Object.entries(groups)) learn(phrases, { tag: tag as CueTag })
for (const [name, phrases] of Object.entries(states)) learn(phrases, { tag: 'state', name })
learn(generalLubricants, { tag: 'lubricant' })
for (const [angle, phrases] of bends) learn(phrases, { tag: 'bend', ...(angle === undefined ? {} : { angle }) })

const LONGEST_PHRASE = 7

// Little words inside a phrase say nothing: `grip to the drive` is `grip to drive`.
const little = new Set(['the', 'a', 'an', 'my', 'of', 'own', 'this', 'that', 'your', 'our'])

/** The word in the singular, where it may be a plural. */
const singular = (word: string): string | undefined =>
  word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : undefined

const wordOf = (piece: Piece | undefined): string | undefined =>
  piece?.kind === 'word' ? piece.text : piece?.kind === 'mark' && piece.text === '=' ? '=' : undefined

const isJoint = (piece: Piece | undefined): boolean =>
  piece?.kind === 'mark' && (piece.text === '-' || piece.text === '/')

interface Found {
  readonly meanings: readonly Meaning[]
  readonly next: number
}

const longest = (pieces: readonly Piece[], at: number): Found | undefined => {
  // Most words begin no phrase.
  const first = wordOf(pieces[at])
  if (first === undefined || !(root.children.has(first) || root.children.has(singular(first) ?? first)))
    return undefined
  let reached: ReadonlyArray<{ readonly here: Node; readonly at: number }> = [{ here: root, at }]
  let best: Found | undefined
  for (let depth = 0; depth < LONGEST_PHRASE && reached.length > 0; depth++) {
    const steps: Array<{ here: Node; at: number }> = []
    for (const { here, at: place } of reached) {
      const place2 = depth > 0 && isJoint(pieces[place]) ? place + 1 : place
      const word = wordOf(pieces[place2])
      if (word === undefined) continue
      const child = here.children.get(word)
      if (child) steps.push({ here: child, at: place2 + 1 })
      const one = singular(word)
      const other = one === undefined ? undefined : here.children.get(one)
      if (other) steps.push({ here: other, at: place2 + 1 })
      if (depth > 0 && little.has(word)) steps.push({ here, at: place2 + 1 })
    }
    for (const { here, at: next } of steps) {
      if (here.meanings.length > 0 && (best === undefined || next > best.next)) best = { meanings: here.meanings, next }
    }
    reached = steps.slice(0, 4)
  }
  return best
}

const denials = new Set(['not', 'no', 'isnt', 'arent', 'never', 'without', 'wasnt', 'nor'])

const isDenied = (pieces: readonly Piece[], first: number): boolean => {
  for (let back = 1; back <= 3; back++) {
    const word = wordOf(pieces[first - back])
    if (word === undefined) return false
    if (denials.has(word)) return true
    if (!little.has(word)) return false
  }
  return false
}

/** All cues in reading order. A phrase that means several things gives a cue for each. */
export const cuesOf = (pieces: readonly Piece[]): readonly Cue[] => {
  const cues: Cue[] = []
  for (let at = 0; at < pieces.length; ) {
    const found = longest(pieces, at)
    if (!found) {
      at++
      continue
    }
    const denied = isDenied(pieces, at)
    for (const meaning of found.meanings) cues.push({ ...meaning, first: at, next: found.next, denied })
    at = found.next
  }
  return cues
}
