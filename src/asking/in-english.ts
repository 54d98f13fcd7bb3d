// A text in German, French or Spanish put into the English phrases that the reader knows, word for word; numbers, marks and words
// that are not known stay as they are. Every place in it leads back to where it was typed.
import { type ForeignName, type PhraseNode, phrasesOf, plainWord, stepTo } from './foreign-words.ts'

export interface Rendered {
  readonly text: string
  /** What was typed from one place of the rendered text to another. */
  readonly quote: (start: number, end: number) => string
}

interface Word {
  readonly plain: string
  readonly start: number
  readonly end: number
}

// A longer text stays as it is behind this: no question has as many words.
const MOST_WORDS = 500
const WORD = /[a-zà-öø-ÿœß]+/gi

const wordsOf = (text: string): Word[] => {
  const words: Word[] = []
  WORD.lastIndex = 0
  for (let found = WORD.exec(text); found && words.length < MOST_WORDS; found = WORD.exec(text))
    words.push({ plain: plainWord(found[0]), start: found.index, end: WORD.lastIndex })
  return words
}

// What may stand between two words of one phrase.
const JOINT = /^[\s'’-]{1,3}$/

const longestFrom = (words: readonly Word[], at: number, text: string, name: ForeignName) => {
  let here: PhraseNode | undefined = phrasesOf[name]
  let best: { english: string; next: number } | undefined
  for (let next = at; here && next < words.length; next++) {
    const word = words[next] as Word
    if (next > at && !JOINT.test(text.slice((words[next - 1] as Word).end, word.start))) break
    here = stepTo(here, word.plain, name)
    if (here?.english !== undefined) best = { english: here.english, next: next + 1 }
  }
  return best
}

interface Part {
  readonly start: number
  readonly end: number
  readonly from: number
  readonly to: number
  /** Taken over letter by letter. */
  readonly same: boolean
}

const isApostrophe = (char: string | undefined): boolean => char === "'" || char === '’'
const capital = (english: string): string => (english[0] as string).toUpperCase() + english.slice(1)

const quoteFrom =
  (text: string, parts: readonly Part[]): Rendered['quote'] =>
  (start, end) => {
    const partAt = (place: number): Part | undefined => parts.find((part) => part.start <= place && place < part.end)
    const [first, last] = [partAt(start), partAt(Math.max(start, end - 1))]
    if (!first || !last) return ''
    return text.slice(
      first.same ? first.from + start - first.start : first.from,
      last.same ? last.from + end - last.start : last.to,
    )
  }

export const inEnglish = (text: string, name: ForeignName): Rendered => {
  const words = wordsOf(text)
  const parts: Part[] = []
  let out = ''
  const add = (piece: string, from: number, to: number, same: boolean): void => {
    if (piece === '') return
    parts.push({ start: out.length, end: out.length + piece.length, from, to, same })
    out += piece
  }
  let done = 0
  for (let at = 0; at < words.length; ) {
    const found = longestFrom(words, at, text, name)
    if (!found) {
      at++
      continue
    }
    const { start } = words[at] as Word
    const { end } = words[found.next - 1] as Word
    add(text.slice(done, start), done, start, true)
    // A capital begins a sentence, and the dot before it is no part of a unit.
    const first = text[start] as string
    add(first === first.toLowerCase() ? found.english : capital(found.english), start, end, false)
    done = end
    // `l'adaptateur` is two words.
    if (isApostrophe(text[end])) {
      done = end + 1
      add(' ', end, done, false)
    }
    at = found.next
  }
  add(text.slice(done), done, text.length, true)
  return { text: out, quote: quoteFrom(text, parts) }
}
