// What is to be said, as a key and its numbers; the words themselves are put in by the desk, in the asker's language.
// Only the type of the English words is known here, so that a key or a number that does not exist fails to compile.
import type { Toward } from '../core/number-style.ts'
import type { Quantity } from '../core/quantity.ts'
import type { en } from '../words/en/index.ts'
import type { Places } from '../words/shape.ts'

export type PhraseKey = keyof (typeof en)['say']

/** A number as it was typed, not rounded for people. */
export interface Echoed {
  readonly echo: Quantity
}

/** A number that is a bound: rounded so that what is said still holds. */
export interface Bound {
  readonly bound: Quantity
  readonly toward: Toward
}

/** An ISO day, written as the reader's language writes days. */
export interface Dated {
  readonly date: string
}

export type Param = Quantity | Echoed | Bound | Dated | string | Phrase

export type ParamsOf<Key extends PhraseKey> = { readonly [Name in Places<(typeof en)['say'][Key]>]: Param }

export interface Phrase {
  readonly key: PhraseKey
  readonly with: Readonly<Record<string, Param>>
}

/** A phrase with every number that its English words name. */
export const phrase = <Key extends PhraseKey>(
  ...[key, params]: [Places<(typeof en)['say'][Key]>] extends [never] ? [Key] : [Key, ParamsOf<Key>]
): Phrase => ({ key, with: params ?? {} })

export const atMost = (q: Quantity): Bound => ({ bound: q, toward: 'down' })
export const atLeast = (q: Quantity): Bound => ({ bound: q, toward: 'up' })
export const echo = (q: Quantity): Echoed => ({ echo: q })
export const day = (date: string): Dated => ({ date })
