// The languages there are, and the one that a reader gets. Shapes are held against the English ones at compile time.
import { type NumberStyle, styleOf } from '../core/number-style.ts'
import { de } from './de/index.ts'
import { en } from './en/index.ts'
import { es } from './es/index.ts'
import { fr } from './fr/index.ts'
import type { Words } from './shape.ts'

export type { Words } from './shape.ts'

export interface Language {
  readonly locale: string
  readonly words: Words
  readonly style: NumberStyle
}

const language = (locale: string, words: Words): Language => ({ locale, words, style: styleOf(locale) })

/** By language; and by region where its numbers look otherwise than where the language is at home. */
export const languages = {
  en: language('en', en),
  de: language('de', de),
  'de-CH': language('de-CH', de),
  es: language('es', es),
  fr: language('fr', fr),
  'es-419': language('es-419', es),
} as const satisfies Record<string, Language>
export type LocaleName = keyof typeof languages
export const localeNames = Object.keys(languages) as readonly LocaleName[]

const languageOf = (tag: string): string => tag.split('-', 1)[0] as string
/** What is picked from a list, as it is read; what has no words of its own (1/2, 8.8) is read as it is. */
export const choiceIn = ({ choices }: Words, value: string): string =>
  // A tag may be called as anything is that every object has.
  Object.hasOwn(choices, value) ? ((choices as Readonly<Record<string, string>>)[value] ?? value) : value

/** A topic of does-it-matter as it is read where one is picked; its slug where there is no such topic. */
export const topicIn = ({ matterTopics: { names } }: Words, slug: string): string =>
  Object.hasOwn(names, slug) ? names[slug as keyof typeof names] : slug

/** How numbers look beside words where only the words are at hand: as they do where the language is at home. */
export const styleFor = (words: Words): NumberStyle =>
  Object.values(languages).find((one: Language) => one.words === words)?.style ?? languages.en.style

/** A text to type with the decimal mark of its reader; the names of threads keep their point. */
export const exampleIn = (text: string, { decimal }: NumberStyle): string =>
  decimal === ',' ? text.replace(/(?<!x\d*)(\d)\.(?=\d)/g, '$1,') : text

/** The languages themselves, without regions: what a reader chooses from. */
export const homeNames = localeNames.filter((name) => name === languageOf(name))

// What the platform knows of a tag takes some µs to ask; there are few tags, and nobody can make it keep more.
const MOST_TAGS = 500
const styles = new Map<string, NumberStyle | undefined>()
const styleAt = (tag: string): NumberStyle | undefined => {
  if (styles.has(tag)) return styles.get(tag)
  let style: NumberStyle | undefined
  try {
    style = styleOf(tag)
  } catch {
    // Not a tag: the language before its hyphen is all that can be known.
  }
  if (styles.size >= MOST_TAGS) styles.clear()
  styles.set(tag, style)
  return style
}

const nameFor = (tag: string, fallback: LocaleName): LocaleName | undefined => {
  const home = homeNames.find((name) => name === languageOf(tag))
  if (home === undefined) return undefined
  // A language without a region is written as the shop writes it.
  if (tag === home) return languageOf(fallback) === home ? fallback : home
  const style = styleAt(tag)
  return localeNames.find((name) => languageOf(name) === home && languages[name].style === style) ?? home
}

/** The first language of an Accept-Language header or a locale tag that is spoken here; else the fallback. */
export const languageFor = (accepted: string | undefined, fallback: LocaleName): Language => {
  const wanted = (accepted ?? '')
    .slice(0, 200)
    .split(',')
    .map((part, order) => {
      const [tag = '', ...parameters] = part.trim().split(';')
      const q = parameters.map((text) => /^\s*q=([\d.]+)$/.exec(text)?.[1]).find((found) => found !== undefined)
      return { tag: tag.toLowerCase(), q: q === undefined ? 1 : Number(q), order }
    })
    .filter(({ q }) => q > 0)
    .sort((one, other) => other.q - one.q || one.order - other.order)
  for (const { tag } of wanted) {
    const name = nameFor(tag, fallback)
    if (name) return languages[name]
  }
  return languages[fallback]
}
