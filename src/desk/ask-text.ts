// Free text at the desk: read, answered by the question that was found, and the same document with how it was read. What is quoted never leads.
import type { Claim, ClaimName } from '../asking/claims.ts'
import type { Alternative } from '../asking/proposal.ts'
import { readText, type TextReading } from '../asking/read-text.ts'
import { type Fault, fault } from '../core/fault.ts'
import type { Answer } from '../questions/answer.ts'
import type { QuestionName } from '../questions/index.ts'
import type { CautionCode } from '../questions/outcome.ts'
import { phrase } from '../questions/phrase.ts'
import { always, blank } from './blank.ts'
import { type Loan, type Reading, shownRaw } from './read.ts'
import type { Sayer } from './say.ts'

/** What free text adds to the reading of a question: inputs that it must be asked, and those that were not written so. */
export type AboutText = Pick<TextReading, 'asks' | 'assumed' | 'doubts'>

export type Work = (name: QuestionName, raw: unknown, say: Sayer, about?: AboutText, loan?: Loan) => Answer

const MOST_BYTES = 10_000
const bytes = new TextEncoder()

const doubtTells = { number: 'words-around', angle: 'words-around-angle', hand: 'words-around-hand' } as const

const doubtFault = ({ input, raw, as }: AboutText['doubts'][number]): Fault =>
  // A pull is counted from square, an adapter from straight ahead.
  fault(input === 'pull-angle' ? 'words-around' : doubtTells[as], input, raw, { typed: raw })

export const withText = (reading: Reading, { asks, assumed, doubts }: AboutText): Reading => ({
  ...reading,
  faults: [
    ...reading.faults.filter((one) => !doubts.some(({ input }) => input === one.input)),
    ...doubts.map(doubtFault),
  ],
  given: reading.given.map((given) => (assumed.includes(given.input) ? { ...given, from: 'assumed' } : given)),
  missing: [...new Set([...reading.missing, ...asks.filter((input) => reading.values[input] === undefined)])],
})

const joined = (value: string | readonly string[]): string => [value].flat().join(' + ')

/** `What to dial with an adapter on: Torque 75 lbf·ft, Lever 18 in`. */
const labelOf = ({ question, inputs }: Alternative, { words }: Sayer): string => {
  const told = Object.entries(inputs).map(([input, value]) => {
    const { label } = words.inputs[input as keyof Sayer['words']['inputs']]
    return `${label} ${joined(value)}`
  })
  return told.length === 0 ? words.questions[question] : `${words.questions[question]}: ${told.join(', ')}`
}

const shownReading = ({ taken, ignored, alternatives }: TextReading, say: Sayer): NonNullable<Answer['reading']> => ({
  taken: taken.map((one) => ({ ...one })),
  ignored: [...ignored],
  alternatives: alternatives.map((one) => ({
    question: one.question,
    inputs: Object.fromEntries(
      Object.entries(one.inputs).map(([name, value]) => [name, typeof value === 'string' ? value : [...value]]),
    ),
    label: labelOf(one, say),
  })),
})

const unread: NonNullable<Answer['reading']> = { taken: [], ignored: [], alternatives: [] }

const refused = (found: Fault, reading: NonNullable<Answer['reading']>, say: Sayer): Answer => {
  const shown = say.fault(found)
  return {
    ...blank(null),
    status: 'refused',
    headline: shown.hint,
    cautions: always(say),
    pointers: [{ text: say.words.pointers['torque-figure'] }],
    faults: [shown],
    reading,
  }
}

const cautionOf: Readonly<Record<ClaimName, CautionCode>> = {
  'turn-stage': 'turn-left-aside',
  'one-minus': 'quoted-one-minus',
  'one-foot': 'quoted-one-foot',
  'square-same': 'quoted-square-same',
  'percent-off': 'quoted-percent-off',
  'bar-as-adapter': 'quoted-bar-as-adapter',
}

// While something is missing, a rule that holds under a condition gives no number: the condition is what is missing.
const withoutMore: ReadonlySet<ClaimName> = new Set(['percent-off', 'square-same'])

const withClaims = (answer: Answer, claims: readonly Claim[], say: Sayer): Answer => {
  if (claims.length === 0 || answer.status === 'refused') return answer
  const told = claims.find(
    ({ claim, value }) => value !== undefined && (answer.status === 'answered' || withoutMore.has(claim)),
  )
  return {
    ...answer,
    results: {
      ...answer.results,
      ...(told?.value ? say.results({ 'as-quoted': { quantity: told.value } }) : {}),
    },
    cautions: [...claims.map(({ claim }) => say.caution({ code: cautionOf[claim] })), ...answer.cautions],
  }
}

/** A text that is neither empty nor too long, read. */
export const readAsked = (text: unknown): TextReading | undefined =>
  typeof text === 'string' && text.trim() !== '' && bytes.encode(text).length <= MOST_BYTES ? readText(text) : undefined

/** The answer to a text, with how it was read and what the register lends. `work` answers a question, with what the text adds. */
export const answerText = (
  text: unknown,
  read: TextReading | undefined,
  say: Sayer,
  work: Work,
  loan?: Loan,
): Answer => {
  if (text === undefined) return refused(fault('empty', 'text', ''), unread, say)
  if (typeof text !== 'string') return refused(fault('not-a-text', 'text', shownRaw(text)), unread, say)
  if (text.trim() === '') return refused(fault('empty', 'text', text), unread, say)
  if (read === undefined)
    return refused(fault('text-too-long', 'text', text, { most: String(MOST_BYTES) }), unread, say)
  const reading = read
  const shown = shownReading(reading, say)
  if (reading.outcome === 'choice') {
    return {
      ...blank(null),
      status: 'incomplete',
      headline: say.phrase(phrase('ask.choice')),
      cautions: always(say),
      pointers: [{ text: say.words.pointers['torque-figure'] }],
      reading: shown,
    }
  }
  if (reading.question === null) {
    return refused(
      fault(reading.outcome === 'maker-figure' ? 'maker-figure' : 'out-of-scope', 'text', text),
      shown,
      say,
    )
  }
  const answer = work(reading.question, reading.inputs, say, reading, loan)
  return { ...withClaims(answer, reading.claims, say), reading: shown }
}
