// What every door calls: a question's raw options in, the Answer document out. Faults and gaps are answers too; only a bug throws.
import type { TextReading } from '../asking/read-text.ts'
import { fault } from '../core/fault.ts'
import type { Answer } from '../questions/answer.ts'
import { type QuestionName, questions } from '../questions/index.ts'
import type { Outcome } from '../questions/outcome.ts'
import { phrase } from '../questions/phrase.ts'
import { type FleetKnown, type Question, resultUnits } from '../questions/question.ts'
import { type LocaleName, languageFor } from '../words/index.ts'
import { answerText, readAsked, type Work, withText } from './ask-text.ts'
import { always, blank } from './blank.ts'
import { ladder } from './ladder.ts'
import { readNamed, type TagOf } from './named-wrench.ts'
import type { System } from './own-units.ts'
import { type Loan, quantitiesOf, type Reading, readQuestion } from './read.ts'
import { type Sayer, sayerFor } from './say.ts'
import type { Specs } from './specs.ts'

/** Who asks: the language they read (a tag or an Accept-Language text) and the door they came by. */
export interface Asker {
  readonly locale?: string | undefined
  readonly door: 'chat' | 'http' | 'kiosk' | 'terminal'
  /** The units of their own, for bare numbers and for what comes first. */
  readonly own?: System | undefined
  /** What comes first where they have none of their own. */
  readonly prefers?: System | undefined
  /** The system that they want this answer in, whatever they typed. */
  readonly shown?: System | undefined
  /** Inputs that the door put in from what the asker has set: told as assumed. */
  readonly assumed?: readonly string[] | undefined
}

type Liking = Pick<Asker, 'own' | 'prefers' | 'shown' | 'assumed'>

/** What is kept of an ask, for counting: no values, nobody's name. */
export interface Asked {
  /** `none` where a free text held no question of ours. */
  readonly question: QuestionName | 'none'
  readonly status: Answer['status']
  readonly door: Asker['door']
  readonly faults: readonly string[]
}

export interface Desk {
  /** `raw` is what the door received: an object of texts and lists of texts. Anything else in it is told as a fault. */
  readonly ask: (name: QuestionName, raw: unknown, asker: Asker, loan?: Loan) => Answer
  /** What the register lends where a question names a wrench; undefined where there is nothing to look up. Throws an Outage. */
  readonly borrow: (name: QuestionName, raw: unknown) => Promise<Loan> | undefined
  /** Free text: the same document, with how it was read. Told as a fault where it is no text, empty or too long. */
  readonly askText: (text: unknown, asker: Asker, loan?: Loan) => Answer
  /** What the register lends to the question that a text holds, or to the wrench that it names. Throws an Outage. */
  readonly borrowForText: (text: unknown) => Promise<Loan | undefined> | undefined
  /** Counts an answer that a door gives again from what it kept. */
  readonly again: (asked: Asked) => void
  readonly system: System
  readonly locale: LocaleName
  /** Another number where the same question may be answered with other pointers. */
  readonly pointersVersion: () => number
}

/** The shop's own pointers to makers' figures; see specs.ts. */
export type OwnPointers = Pick<Specs, 'pointersFor' | 'version'>

export interface DeskSettings {
  readonly system: System
  readonly locale: LocaleName
  readonly record?: (asked: Asked) => void
  readonly borrow?: Desk['borrow']
  /** Knows the shop's wrenches by their tags; without it free text names none. */
  readonly tagOf?: TagOf
  readonly specs?: OwnPointers
}

const missingOf = (reading: Reading, say: Sayer): Answer['missing'] =>
  reading.missing.map((input) => {
    const words = say.words.inputs[input as keyof Sayer['words']['inputs']]
    return { input, ask: words.ask, measure: words.measure }
  })

const refused = (name: QuestionName, reading: Reading, say: Sayer): Answer => {
  const faults = reading.faults.map(say.fault)
  const key = faults.length === 1 ? 'refused.one' : 'refused.several'
  return {
    ...blank(name),
    status: 'refused',
    headline: say.phrase(phrase(key, { hint: faults[0]?.hint ?? '' })),
    given: reading.given.map(say.given),
    cautions: always(say),
    pointers: [{ text: say.words.pointers['torque-figure'] }],
    missing: missingOf(reading, say),
    faults,
  }
}

const incomplete = (
  question: Question<QuestionName>,
  reading: Reading,
  say: Sayer,
  system: 'metric' | 'inch',
  fleet: FleetKnown | undefined,
  asks: readonly string[],
): Answer => {
  const missing = missingOf(reading, say)
  // Of an input that holds several, of which a text told more than one, a rung for one alone would be a wrong number.
  const isOfSeveral = asks.some((input) => (question.inputs[input]?.most ?? 1) > 1)
  const { ladder: rungs, cautions } = isOfSeveral
    ? { ladder: undefined, cautions: [] }
    : ladder(question, reading, say, system, fleet)
  return {
    ...blank(question.name),
    status: 'incomplete',
    headline: say.phrase(
      phrase(missing.length === 1 ? 'incomplete.one' : 'incomplete.several', {
        ask: missing.map(({ ask }) => ask).join('; '),
      }),
    ),
    given: reading.given.map(say.given),
    cautions: [...cautions.map(say.caution), ...always(say)],
    pointers: [{ text: say.words.pointers['torque-figure'] }],
    missing,
    ...(rungs ? { ladder: rungs } : {}),
  }
}

const answered = (name: QuestionName, reading: Reading, outcome: Outcome, say: Sayer): Answer => ({
  ...blank(name),
  status: 'answered',
  headline: say.phrase(outcome.headline),
  given: [...reading.given, ...outcome.assumed].map(say.given),
  results: say.results(outcome.results),
  steps: outcome.steps.map(say.step),
  cautions: [...outcome.cautions.map(say.caution), ...always(say)],
  pointers: outcome.pointers.map((key) => ({ text: say.words.pointers[key] })),
  sources: uniqueSources(outcome.sources),
  related: outcome.related.map(say.related),
})

const uniqueSources = (sources: Outcome['sources']): Answer['sources'] => {
  const seen = new Map(sources.map((source) => [`${source.title}\n${source.where}`, source]))
  return [...seen.values()].map(({ title, where, standing }) => ({ title, where, standing }))
}

/** What is counted of an answer. */
export const askedOf = (question: QuestionName | 'none', answer: Answer, door: Asker['door']): Asked => ({
  question,
  status: answer.status,
  door,
  faults: answer.faults.map(({ code }) => code),
})

// The shop's own come first: they say where, and the others only what to look for.
const withOwnPointers = (answer: Answer, specs: OwnPointers | undefined, asked: unknown): Answer => {
  const texts = typeof asked === 'string' ? [asked] : Object.values((asked ?? {}) as object).flat()
  const given = answer.given.map(({ text }) => text)
  const told = [...texts.filter((text) => typeof text === 'string'), ...given, answer.question ?? '']
  const own = specs?.pointersFor(told) ?? []
  return own.length === 0 ? answer : { ...answer, pointers: [...own, ...answer.pointers] }
}

const nothingLent: Loan = { inputs: {}, faults: [], cautions: [] }

export const createDesk = ({ system, locale, record, borrow, tagOf, specs }: DeskSettings): Desk => {
  const sayers = new Map<string, Sayer>()
  const sayer = (accepted: string | undefined): Sayer => {
    const language = languageFor(accepted, locale)
    let known = sayers.get(language.locale)
    if (!known) {
      known = sayerFor(language)
      sayers.set(language.locale, known)
    }
    return known
  }
  const workFor =
    ({ own, prefers: wanted, shown, assumed = [] }: Liking): Work =>
    (name, raw, say, about, loan) => {
      const question: Question<QuestionName> = questions[name]
      const read = readQuestion(question, raw, loan, about ? undefined : own)
      const reading = withText(read, about ?? { asks: [], assumed, doubts: [] })
      const prefers = own ?? wanted ?? system
      if (reading.faults.length > 0) return refused(name, reading, say)
      if (reading.missing.length > 0) return incomplete(question, reading, say, prefers, loan?.fleet, about?.asks ?? [])
      if (question.needsFleet && !loan?.fleet)
        return refused(name, { ...reading, faults: [fault('no-register-here', '', '')] }, say)
      const units = resultUnits(quantitiesOf(reading.given), prefers, shown)
      const outcome = question.answer(reading.values, units, loan?.fleet)
      const known = {
        ...outcome,
        cautions: [...(loan?.cautions ?? []), ...outcome.cautions],
        sources: [...(loan?.sources ?? []), ...outcome.sources],
      }
      return answered(name, reading, known, say)
    }
  // The text that was looked at for what it borrows is the one that is answered next: read once.
  let last: { readonly text: unknown; readonly reading: ReturnType<typeof readAsked> } | undefined
  const readOnce = (text: unknown): ReturnType<typeof readAsked> =>
    last !== undefined && last.text === text ? last.reading : readAsked(text)
  return {
    system,
    locale,
    pointersVersion: () => specs?.version() ?? 0,
    again: (asked) => record?.(asked),
    borrow: borrow ?? (() => undefined),
    borrowForText: (text) => {
      const reading = readAsked(text)
      last = { text, reading }
      const lentTo = ({ question, inputs }: Pick<TextReading, 'question' | 'inputs'>): Promise<Loan> | undefined =>
        question === null ? undefined : borrow?.(question, inputs)
      if (!reading) return undefined
      const naming = tagOf && readNamed(text, tagOf)
      if (!naming) return lentTo(reading)
      return naming.then(async (named) =>
        named ? { ...nothingLent, ...(await lentTo(named)), text: named } : lentTo(reading),
      )
    },
    askText: (text, asker, loan) => {
      const told = answerText(text, loan?.text ?? readOnce(text), sayer(asker.locale), workFor(asker), loan)
      last = undefined
      const answer = withOwnPointers(told, specs, text)
      record?.(askedOf((answer.question as QuestionName | null) ?? 'none', answer, asker.door))
      return answer
    },
    ask: (name, raw, asker, loan) => {
      const answer = withOwnPointers(workFor(asker)(name, raw, sayer(asker.locale), undefined, loan), specs, raw)
      record?.(askedOf(name, answer, asker.door))
      return answer
    },
  }
}

/** Asks with what the register lends: at once where nothing is to be looked up. What every door calls. */
export const askKnowing = (desk: Desk, name: QuestionName, raw: unknown, asker: Asker): Answer | Promise<Answer> => {
  const pending = desk.borrow(name, raw)
  return pending ? pending.then((loan) => desk.ask(name, raw, asker, loan)) : desk.ask(name, raw, asker)
}

/** Free text with what the register lends. What every door calls. */
export const askTextKnowing = (desk: Desk, text: unknown, asker: Asker): Answer | Promise<Answer> => {
  const pending = desk.borrowForText(text)
  return pending ? pending.then((loan) => desk.askText(text, asker, loan)) : desk.askText(text, asker)
}
