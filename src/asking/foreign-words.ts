// The words of German, French and Spanish that are known here, without accents, and how a phrase of them is followed word by word.
import { french } from './lexicon/french.ts'
import { german } from './lexicon/german.ts'
import { spanish } from './lexicon/spanish.ts'

export type ForeignName = 'german' | 'french' | 'spanish'

export interface PhraseNode {
  readonly next: Map<string, PhraseNode>
  /** What the phrase that ends here is in English. */
  english?: string
}

const learn = (phrases: Readonly<Record<string, string>>): PhraseNode => {
  const root: PhraseNode = { next: new Map() }
  for (const [english, foreign] of Object.entries(phrases))
    for (const phrase of foreign.split('|')) {
      let here = root
      for (const word of phrase.split(' ')) {
        const known = here.next.get(word) ?? { next: new Map() }
        here.next.set(word, known)
        here = known
      }
      here.english ??= english
    }
  return root
}

export const phrasesOf: Readonly<Record<ForeignName, PhraseNode>> = {
  german: learn(german),
  french: learn(french),
  spanish: learn(spanish),
}

const MARKED = /[^a-z]/
const ACCENTS = /\p{M}/gu

/** Small letters without accents, ß as ss. */
export const plainWord = (word: string): string => {
  const small = word.toLowerCase()
  if (!MARKED.test(small)) return small
  return small.normalize('NFD').replace(ACCENTS, '').replaceAll('ß', 'ss').replaceAll('œ', 'oe')
}

const endings: Readonly<Record<ForeignName, readonly string[]>> = {
  german: ['n', 's', 'e', 'en', 'es', 'er', 'em', 'ns'],
  french: ['s', 'e', 'x', 'es'],
  spanish: ['s', 'es'],
}
const SHORTEST_STEM = 4

// ae, oe and ue are how an umlaut is typed where there is no key for it.
const UMLAUT_TYPED = /([aou])e/g

const exactly = (here: PhraseNode, word: string, name: ForeignName): PhraseNode | undefined =>
  here.next.get(word) ?? (name === 'german' ? here.next.get(word.replace(UMLAUT_TYPED, '$1')) : undefined)

/** One word further along the phrases of a language, with its ending or without. */
export const stepTo = (here: PhraseNode, word: string, name: ForeignName): PhraseNode | undefined => {
  const known = exactly(here, word, name)
  if (known) return known
  for (const ending of endings[name]) {
    if (word.length - ending.length < SHORTEST_STEM || !word.endsWith(ending)) continue
    const stemmed = exactly(here, word.slice(0, -ending.length), name)
    if (stemmed) return stemmed
  }
  return undefined
}
