// What the reader proposes: a question, its inputs as texts, and from which words of the asker each was taken.
import type { QuestionName } from '../questions/index.ts'
import type { Placed } from './scene.ts'

/** One input taken from the text. `assumed`: not written so, shown as assumed. */
export interface Entry {
  readonly input: string
  readonly text: string
  readonly from?: { readonly start: number; readonly end: number } | undefined
  readonly assumed?: boolean
}

export type Inputs = Readonly<Record<string, string | readonly string[]>>

export interface Alternative {
  readonly question: QuestionName
  readonly inputs: Inputs
}

export interface Proposal {
  readonly question: QuestionName
  readonly entries: readonly Entry[]
  /** Inputs that the question could do without but this text must not: a bend without its angle. */
  readonly asks: readonly string[]
  readonly others: readonly Alternative[]
}

export const inputsOf = (entries: readonly Entry[]): Inputs => {
  const inputs: Record<string, string | string[]> = {}
  for (const { input, text } of entries) {
    const known = inputs[input]
    inputs[input] = known === undefined ? text : [...(typeof known === 'string' ? [known] : known), text]
  }
  return inputs
}

export const entry = (
  input: string,
  text: string,
  from?: Placed | { start: number; end: number },
  assumed = false,
): Entry => ({
  input,
  text,
  ...(from ? { from: { start: from.start, end: from.end } } : {}),
  ...(assumed ? { assumed } : {}),
})

export const proposal = (
  question: QuestionName,
  entries: readonly (Entry | undefined)[],
  more: { readonly asks?: readonly string[]; readonly others?: readonly Alternative[] } = {},
): Proposal => ({
  question,
  entries: entries.filter((one) => one !== undefined),
  asks: more.asks ?? [],
  others: more.others ?? [],
})

/** The same with some inputs put in place of what they were. */
export const otherwise = (
  question: QuestionName,
  entries: readonly (Entry | undefined)[],
  change: Inputs = {},
): Alternative => {
  const kept = entries.filter((one): one is Entry => one !== undefined && !Object.hasOwn(change, one.input))
  return { question, inputs: { ...inputsOf(kept), ...change } }
}
