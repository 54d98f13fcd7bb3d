// What an answerer hands back: results, steps, cautions and sources as facts; no word of any language.
import type { Toward } from '../core/number-style.ts'
import type { Quantity } from '../core/quantity.ts'
import type { Citation, Standing } from '../tables/citation.ts'
import type { en } from '../words/en/index.ts'
import type { QuestionName } from './index.ts'
import type { Param, Phrase } from './phrase.ts'

export type CautionCode = keyof (typeof en)['cautions']
export type PointerKey = keyof (typeof en)['pointers']
export type InputName = keyof (typeof en)['inputs']
export type WordCode = keyof (typeof en)['codes']

export type BoundKind = Toward | 'window' | 'low'

/** `low` and `high` in the unit of the quantity. */
export interface QuantityResult {
  readonly quantity: Quantity
  readonly low?: number
  readonly high?: number
  /** The value is a bound, and its text is rounded toward the side where it holds; `window`: both ends are, inward; `low`: the low end alone is. */
  readonly bound?: BoundKind
  /** No number may be acted on: people read the range, and neither its middle nor that in other units. */
  readonly rangeOnly?: boolean
}
export interface WordResult {
  readonly word: WordCode
}
/** A statement in whole sentences, and the standing of what it is from. */
export interface TextResult {
  readonly code: string
  readonly say: Phrase
  readonly standings: readonly Standing[]
}
/** An ISO day. `passed`: it is past, on a day that nobody knows better than this one. */
export interface DateResult {
  readonly date: string
  readonly passed?: boolean
}
/** Something of the shop's own, by its tag: no word of any language. */
export interface NamedResult {
  readonly named: string
  readonly text: string
}
/** Several words, the one that weighs most first. */
export interface WordsResult {
  readonly words: readonly [WordCode, ...WordCode[]]
}
export type Cell = QuantityResult | WordResult | WordsResult | NamedResult | DateResult
export type Row = Readonly<Record<string, Cell>>
/** `row`: a result that is a small group of quantities (`mark-below {setting, torque}`); `rows`: a list of them. */
/** Quantities side by side; those named in `exact` are marks or the like, and are never rounded. */
export interface RowResult {
  readonly row: Readonly<Record<string, Quantity>>
  readonly exact?: readonly string[]
}

export type Result = Cell | TextResult | RowResult | { readonly rows: readonly Row[] }

/** Numbers put into a formula: text and quantities in reading order. */
export type Numbers = readonly (string | Quantity)[]

export interface Step {
  readonly say: Phrase
  readonly formula: string
  readonly numbers: Numbers
  readonly value: Quantity
  /** In the unit of the value; what is shown in its place. */
  readonly ends?: { readonly low: number; readonly high: number }
}

export interface Given {
  readonly input: string
  readonly value: Quantity | WordCode | string
  /** What it is called where that says more than the value (a thread size: M12). */
  readonly name?: string
  readonly low?: number
  readonly high?: number
  readonly index?: number
  readonly angle?: number
  /** Readings that are told in one line with the value (behind it, where it is a quantity). */
  readonly values?: readonly Quantity[]
  readonly from: 'asked' | 'assumed' | 'table' | 'register' | 'bench'
}

export interface Caution {
  readonly code: CautionCode
  readonly with?: Readonly<Record<string, Param>>
}

export interface Related {
  readonly question: QuestionName
  readonly inputs: Readonly<Record<string, string | readonly string[]>>
  readonly label: Phrase
}

export interface Outcome {
  readonly headline: Phrase
  readonly assumed: readonly Given[]
  readonly results: Readonly<Record<string, Result>>
  readonly steps: readonly Step[]
  readonly cautions: readonly Caution[]
  readonly pointers: readonly PointerKey[]
  readonly sources: readonly Citation[]
  readonly related: readonly Related[]
}

/** Formula numbers as they are read: put`${T} · ${L} / ${sum}`. */
export const put = (texts: TemplateStringsArray, ...values: readonly (Quantity | string)[]): Numbers =>
  texts.flatMap((text, index) => {
    const value = values[index]
    const here: (string | Quantity)[] = text === '' ? [] : [text]
    return value === undefined ? here : [...here, value]
  })

export const step = (say: Phrase, formula: string, numbers: Numbers, value: Quantity): Step => ({
  say,
  formula,
  numbers,
  value,
})

export const result = (quantity: Quantity, low?: number, high?: number): QuantityResult =>
  low === undefined || high === undefined ? { quantity } : { quantity, low, high }

/** A result of which no one value may be acted on. */
export const rangeOnly = (one: QuantityResult): QuantityResult => ({ ...one, rangeOnly: true })

/** A step that comes to a range: what is shown of it are its ends, in the unit of its value. */
export const stepTo = (one: Step, low: number, high: number): Step => ({ ...one, ends: { low, high } })

/** A result that is a bound, or a window of which both ends are. */
export const bounded = (one: QuantityResult, bound: BoundKind): QuantityResult => ({ ...one, bound })

export const caution = (code: CautionCode, params?: Caution['with']): Caution =>
  params === undefined ? { code } : { code, with: params }
