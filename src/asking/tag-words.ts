// Words of a text that have the shape of a tag in a shop: `W-03`, `tw7`. Whether there is such a tag is not known here: most of them
// are names of models, and stay what they are.
import { classNames } from '../tables/property-classes.ts'
import { fold } from './fold.ts'

export interface TagWord {
  /** As it was typed. */
  readonly text: string
  /** In lower case, with the plain hyphen that a tag has. */
  readonly plain: string
  readonly start: number
  readonly end: number
}

const WORD = /[\p{L}\p{N}][\p{L}\p{N}._-]*/gu
const SHAPE = /^\p{L}.*\p{N}/u
const TRAILING = /[._-]+$/
const LONGEST = 24
const MOST_WORDS = 6
// A shop may call a wrench M12; a text that says so means the thread.
const THREAD = /^m\d/
const classes: ReadonlySet<string> = new Set(classNames.map((name) => name.toLowerCase()))

/** In the order in which they stand; the first few of a text that is full of them. */
export const tagWordsIn = (text: string): readonly TagWord[] => {
  const words: TagWord[] = []
  for (const { 0: found, index: start } of fold(text).matchAll(WORD)) {
    if (words.length === MOST_WORDS) break
    const word = found.replace(TRAILING, '')
    if (word.length > LONGEST || !SHAPE.test(word) || THREAD.test(word) || classes.has(word)) continue
    const end = start + word.length
    words.push({ text: text.slice(start, end), plain: word, start, end })
  }
  return words
}

/** The text without these words, everything else in its place. */
export const withoutWords = (text: string, words: readonly TagWord[]): string =>
  words.reduce((rest, { start, end }) => rest.slice(0, start) + ' '.repeat(end - start) + rest.slice(end), text)
