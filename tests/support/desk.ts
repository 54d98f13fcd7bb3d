// Asks the desk as a door would. Every answer is held against the schema of the answer document on its way out.
import { createDesk } from '../../src/desk/desk.ts'
import type { RawInputs } from '../../src/desk/read.ts'
import { type Answer, answerSchema, type ShownQuantity, type ShownResult } from '../../src/questions/answer.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { loanFor } from './fleet.ts'

export const desks = {
  metric: createDesk({ system: 'metric', locale: 'en' }),
  inch: createDesk({ system: 'inch', locale: 'en' }),
}

/** The answer to a question, whatever its status; throws where the document is not what the schema says. */
export const ask = (question: QuestionName, inputs: RawInputs, system: 'metric' | 'inch' = 'metric'): Answer => {
  const answer = desks[system].ask(question, inputs, { door: 'terminal' }, loanFor(question))
  const read = answerSchema.parse(answer)
  // zod drops what a schema does not name: nothing may be dropped.
  if (JSON.stringify(sorted(read)) !== JSON.stringify(sorted(answer))) {
    throw new Error(`an answer of ${question} holds more than its schema`)
  }
  return answer
}

const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, inner]) => [name, sorted(inner)]),
  )
}

/** The answer to a question that must be answered; the faults or gaps are in the message where it is not. */
export const answered = (question: QuestionName, inputs: RawInputs, system: 'metric' | 'inch' = 'metric'): Answer => {
  const answer = ask(question, inputs, system)
  if (answer.status !== 'answered') throw new Error(`${question} was ${answer.status}: ${answer.headline}`)
  return answer
}

const isQuantity = (result: ShownResult | undefined): result is ShownQuantity =>
  result !== undefined && !Array.isArray(result) && 'value' in result && typeof result.value === 'number'

/** One quantity among the results. */
export const quantityIn = (results: Answer['results'], name: string): ShownQuantity => {
  const result = results[name]
  if (!isQuantity(result)) throw new Error(`no quantity ${name} among ${Object.keys(results).join(', ')}`)
  return result
}

export const resultOf = (answer: Answer, name: string): ShownQuantity => quantityIn(answer.results, name)
export const numberOf = (answer: Answer, name: string): number => resultOf(answer, name).value

type Cells = Record<
  string,
  { readonly value: number; readonly unit: string; readonly low?: number; readonly high?: number }
>

/** A result that is a list of rows of quantities. */
export const rowsOf = (answer: Answer, name: string): readonly Cells[] => {
  const result = answer.results[name]
  if (!Array.isArray(result)) throw new Error(`no list ${name} among ${Object.keys(answer.results).join(', ')}`)
  return result as readonly Cells[]
}

/** A result that is one row of quantities: mark-below {setting, torque}. */
export const rowOf = (answer: Answer, name: string): Cells => answer.results[name] as Cells

export const cautionsOf = (answer: Answer): string[] => answer.cautions.map(({ code }) => code)
export const codesOf = (answer: Answer): string[] => answer.faults.map(({ code }) => code)
