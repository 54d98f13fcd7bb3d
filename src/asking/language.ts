// Which language a text is written in: by the little words that only one of them has, and its words of the trade. English wherever
// that is not plain.
import { fold } from './fold.ts'
import { type ForeignName, phrasesOf, plainWord } from './foreign-words.ts'
import { frenchMarks } from './lexicon/french.ts'
import { germanMarks } from './lexicon/german.ts'
import { spanishMarks } from './lexicon/spanish.ts'
import { things } from './lexicon/things.ts'
import { intentWords, outWords, roleWords } from './lexicon/words.ts'
import { type Piece, piecesOf } from './pieces.ts'

// Words that no text in the other three has.
const englishMarks =
  'the of and to is my i it on for what how do does should with in at not you this that was have has need if can will be are from when or but'

const marks = { german: germanMarks, french: frenchMarks, spanish: spanishMarks } as const
const names = ['german', 'french', 'spanish'] as const satisfies readonly ForeignName[]

const LONG = 5

const ofEnglish: ReadonlySet<string> = new Set(
  [...Object.values(things), ...Object.values(roleWords), ...Object.values(intentWords), ...Object.values(outWords)]
    .join('|')
    .split(/[| ]/),
)

/** What a word speaks for; a long one of the trade that English does not have speaks for its language too. */
const speaksFor: ReadonlyMap<string, ReadonlySet<ForeignName | 'english'>> = (() => {
  const all = new Map<string, Set<ForeignName | 'english'>>()
  const add = (word: string, name: ForeignName | 'english'): void => {
    all.set(word, (all.get(word) ?? new Set()).add(name))
  }
  for (const word of englishMarks.split(' ')) add(word, 'english')
  for (const name of names) {
    for (const word of marks[name].split(' ')) add(word, name)
    for (const word of phrasesOf[name].next.keys()) if (word.length >= LONG && !ofEnglish.has(word)) add(word, name)
  }
  return all
})()

const LEAST = 2

type Scores = Readonly<Record<ForeignName | 'english', number>>

const scoresOf = (pieces: readonly Piece[]): Scores => {
  const scores = { english: 0, german: 0, french: 0, spanish: 0 }
  for (const piece of pieces) {
    if (piece.kind !== 'word') continue
    const names = speaksFor.get(plainWord(piece.text))
    if (names) for (const name of names) scores[name]++
  }
  return scores
}

const mostForeign = (scores: Scores): ForeignName => {
  let best: ForeignName = 'german'
  for (const name of names) if (scores[name] > scores[best]) best = name
  return best
}

/** The language of the words of a text, where it is plainly German, French or Spanish. */
export const languageOf = (pieces: readonly Piece[]): ForeignName | undefined => {
  const scores = scoresOf(pieces)
  const best = mostForeign(scores)
  return scores[best] >= LEAST && scores[best] > scores.english ? best : undefined
}

/** The same for a text as it was typed, English among them; undefined where it is not plain. */
export const languageTold = (text: string): ForeignName | 'english' | undefined => {
  const scores = scoresOf(piecesOf(fold(text), text))
  const best = mostForeign(scores)
  if (scores.english >= LEAST && scores.english > scores[best]) return 'english'
  return scores[best] >= LEAST && scores[best] > scores.english ? best : undefined
}
