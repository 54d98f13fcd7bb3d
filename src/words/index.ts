// The languages there are, and the one that a reader gets. Shapes are held against the English ones at compile time.
import { type NumberStyle, styleOf } from '../core/number-style.ts'
import { en } from './en/index.ts'
import type { Words } from './shape.ts'

export type { Words } from './shape.ts'

export interface Language {
  readonly locale: string
  readonly words: Words
  readonly style: NumberStyle
}

const language = (locale: string, words: Words): Language => ({ locale, words, style: styleOf(locale) })

export const languages = { en: language('en', en) } as const satisfies Record<string, Language>
export type LocaleName = keyof typeof languages
export const localeNames = Object.keys(languages) as readonly LocaleName[]

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
    const name = localeNames.find((known) => tag === known || tag.startsWith(`${known}-`))
    if (name) return languages[name]
  }
  return languages[fallback]
}
