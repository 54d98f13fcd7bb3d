// What any language must have: the keys of the English words, and in each text the same places. What differs does not compile.
// This also holds of what is missing: a key, or a {place} that a text would leave unsaid.
import type { en } from './en/index.ts'

type English = typeof en
type Shape<T> = { readonly [K in keyof T]: T[K] extends string ? string : Shape<T[K]> }

/** The words of any language. */
export type Words = Shape<English>

/** The names in braces of a text. */
export type Places<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Places<Rest>
  : never

type Same<One, Other> = [One] extends [Other] ? ([Other] extends [One] ? true : false) : false

/** `Texts` where it says what the English says; in the place of a text that does not, what it should hold. */
type Held<Model, Texts> = {
  readonly [K in keyof Texts]: K extends keyof Model
    ? Texts[K] extends string
      ? Model[K] extends string
        ? Same<Places<Model[K]>, Places<Texts[K]>> extends true
          ? Texts[K]
          : { readonly places: Places<Model[K]> }
        : never
      : Held<Model[K], Texts[K]>
    : never
}

/** The words of a language, once they say all that the English ones say. */
export const inShape = <const Texts extends Words>(texts: Texts & Held<English, Texts>): Words => texts
