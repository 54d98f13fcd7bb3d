// A second set of questions as people ask them: each with the outcomes that are right and, where one number is right, that number.
// Written down before the reader was tried on them.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readText } from '../../src/asking/read-text.ts'
import { spelledUnits } from '../../src/core/unit.ts'
import type { Loan } from '../../src/desk/read.ts'
import type { Answer } from '../../src/questions/answer.ts'
import { numbersIn } from './asked-score.ts'
import { desks } from './desk.ts'
import { loanFor } from './fleet.ts'

export type Outcome = 'answered' | 'asked' | 'refused' | 'maker-figure' | 'out-of-scope'

export interface MoreItem {
  readonly id: string
  readonly text: string
  readonly outcomes: readonly Outcome[]
  readonly questions: readonly string[]
  readonly number?: { readonly value: number; readonly unit: string }
  readonly note?: string
}

export const more = JSON.parse(
  readFileSync(join(import.meta.dirname, '../fixtures/asked-more.json'), 'utf8'),
) as readonly MoreItem[]

export type MoreVerdict = 'right' | 'asked without need' | 'wrong topic' | 'wrong number'

const outcomeOf = ({ status, faults }: Answer): Outcome => {
  const [code] = faults.map((one) => one.code)
  if (code === 'maker-figure' || code === 'out-of-scope') return code
  return status === 'incomplete' ? 'asked' : status
}

/** The questions that an answer is about: its own, or those that it offers. */
const aboutOf = ({ question, reading }: Answer): readonly string[] =>
  question === null ? (reading?.alternatives ?? []).map((one) => one.question) : [question]

const NEAR = 0.005

const hasNumber = ({ results, given, reading }: Answer, { value, unit }: NonNullable<MoreItem['number']>): boolean => {
  const { 'as-quoted': _theirs, ...own } = results
  const factor = spelledUnits(unit)[0]?.unit.factor ?? 1
  const wanted = value * factor
  // What was worked back from the text (torque in times ratio) is told under given, not as typed.
  const worked = given.filter(
    ({ from, input }) => from === 'assumed' && reading?.taken.some((one) => one.input === input),
  )
  return numbersIn([own, worked]).some((one) => Math.abs(one.value - wanted) <= NEAR * Math.abs(wanted))
}

export const judgeMore = ({ outcomes, questions, number }: MoreItem, answer: Answer): MoreVerdict => {
  const outcome = outcomeOf(answer)
  const numbers = numbersIn(answer.results)
  const topic = questions.length === 0 || aboutOf(answer).some((question) => questions.includes(question))
  if (outcome === 'answered') {
    const given = number === undefined || hasNumber(answer, number)
    if (outcomes.includes('answered') && topic && given) return 'right'
    return numbers.length > 0 ? 'wrong number' : 'wrong topic'
  }
  if (outcome === 'maker-figure' || outcome === 'out-of-scope' || outcome === 'refused')
    return outcomes.includes(outcome) ? 'right' : 'wrong topic'
  if (!topic) return 'wrong topic'
  return outcomes.includes('asked') ? 'right' : 'asked without need'
}

export interface MoreScored {
  readonly item: MoreItem
  readonly answer: Answer
  readonly verdict: MoreVerdict
}

/** What the register lends to a text, as a door has it looked up. */
const lentTo = (text: string): Loan | undefined => {
  const { question } = readText(text)
  return question === null ? undefined : loanFor(question)
}

export const scoreMore = (items: readonly MoreItem[]): readonly MoreScored[] =>
  items.map((item) => {
    const answer = desks.inch.askText(item.text, { door: 'terminal' }, lentTo(item.text))
    return { item, answer, verdict: judgeMore(item, answer) }
  })
