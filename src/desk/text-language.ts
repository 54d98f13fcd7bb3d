// The language in which a text is answered where its writer told none: its own, if that is plain; else the one of the place.
import { languageTold } from '../asking/language.ts'
import { type Language, type LocaleName, languageFor } from '../words/index.ts'

const tags = { english: 'en', german: 'de', french: 'fr', spanish: 'es' } as const

/** `place` is the locale of where it was written, where that is known; numbers look as they do there if the language is the same. */
export const languageForText = (text: string, place: string | undefined, fallback: LocaleName): Language => {
  const there = languageFor(place, fallback)
  const told = languageTold(text)
  return told === undefined ? there : languageFor(tags[told], there.locale as LocaleName)
}
