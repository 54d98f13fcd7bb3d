// Raw options to a question's values: every option by the question's own declaration, all faults at once, each naming its input.
import type { TextReading } from '../asking/read-text.ts'
import { type Fault, fault } from '../core/fault.ts'
import type { Quantity } from '../core/quantity.ts'
import type { Caution, Given } from '../questions/outcome.ts'
import type { FleetKnown, Question } from '../questions/question.ts'
import type { Citation } from '../tables/citation.ts'
import { type System, withOwnUnits } from './own-units.ts'

/** What a door received: texts or lists of texts; anything else is a fault, never coerced. */
export type RawInputs = Readonly<Record<string, unknown>>

export interface Reading {
  readonly values: Readonly<Record<string, unknown>>
  readonly given: readonly Given[]
  readonly faults: readonly Fault[]
  readonly missing: readonly string[]
}

/** What was handed in, as a fault tells it. */
export const shownRaw = (raw: unknown): string => {
  if (typeof raw === 'string') return raw
  if (raw === undefined) return ''
  try {
    return JSON.stringify(raw) ?? String(raw)
  } catch {
    // Nested deeper than the stack: what it holds does not matter, that it is no text does.
    return Array.isArray(raw) ? '[…]' : '{…}'
  }
}

const textsOf = (raw: unknown): readonly string[] | undefined => {
  if (typeof raw === 'string') return [raw]
  return Array.isArray(raw) && raw.every((text) => typeof text === 'string') ? raw : undefined
}

/** What reading needs of a declaration: a question's, or that of something that is kept. */
export type Declared = Pick<Question, 'inputs' | 'oneOf' | 'alsoNeeded' | 'check'>

const readInput = (question: Declared, name: string, raw: unknown): { value?: unknown; faults: readonly Fault[] } => {
  const input = question.inputs[name]
  if (input === undefined) {
    return { faults: [fault('unknown-input', name, shownRaw(raw), { inputs: Object.keys(question.inputs) })] }
  }
  const texts = textsOf(raw)
  if (texts === undefined) return { faults: [fault('not-a-text', name, shownRaw(raw))] }
  if (texts.length === 0) return { faults: [fault('empty', name, '')] }
  const reading = input.read(texts, name)
  return reading.ok ? { value: reading.value, faults: [] } : { faults: reading.faults }
}

const missingOf = (
  question: Declared,
  values: Readonly<Record<string, unknown>>,
  tried: ReadonlySet<string>,
): string[] => {
  const lacks = (name: string): boolean => values[name] === undefined && !tried.has(name)
  const needed = Object.keys(question.inputs).filter((name) => question.inputs[name]?.needed && lacks(name))
  const groups = question.oneOf.filter((group) => group.every(lacks)).map((group) => group[0] as string)
  const besides = question.alsoNeeded(values).filter(lacks)
  return [...new Set([...needed, ...groups, ...besides])]
}

/** Reads in the order of the declaration, so that every door gives the same document whatever order it received. */
export const readQuestion = (question: Declared, raw: unknown, loan?: Loan, own?: System): Reading =>
  raw !== null && typeof raw === 'object' && !Array.isArray(raw)
    ? readInputs(question, raw as RawInputs, loan, own)
    : {
        values: {},
        given: [],
        missing: [],
        faults: [fault('not-an-object', '', shownRaw(raw), { example: '{"torque": "120 N·m"}' })],
      }

/** What the shop's own record lends to a question, as texts that anybody could have typed. */
export interface Loan {
  /** All wrenches of the shop, where the question chooses among them. */
  readonly fleet?: FleetKnown | undefined
  readonly inputs: RawInputs
  /** What is wrong with the loan itself: there is no such wrench. */
  readonly faults: readonly Fault[]
  /** Where numbers of the loan come from, where it is no book. */
  readonly sources?: readonly Citation[] | undefined
  /** Which of the inputs were measured on the bench; the others are of the register. */
  readonly bench?: ReadonlySet<string> | undefined
  /** What leads the answer: out of limit, check due. */
  readonly cautions: readonly Caution[]
  /** How a free text reads with the wrench that it names. */
  readonly text?: TextReading | undefined
}

// The asker's own word goes before the register's.
const withLoan = (question: Declared, raw: RawInputs, loan: Loan | undefined): ReadonlySet<string> =>
  new Set(
    Object.keys(loan?.inputs ?? {}).filter(
      (name) => Object.hasOwn(question.inputs, name) && (!Object.hasOwn(raw, name) || raw[name] === undefined),
    ),
  )

const readInputs = (question: Declared, asked: RawInputs, loan: Loan | undefined, own: System | undefined): Reading => {
  const lent = withLoan(question, asked, loan)
  const raw: RawInputs = { ...asked, ...Object.fromEntries([...lent].map((name) => [name, loan?.inputs[name]])) }
  const values: Record<string, unknown> = {}
  const faults: Fault[] = []
  const given: Given[] = []
  const declared = Object.keys(question.inputs)
  const unknown = Object.keys(raw).filter((name) => !Object.hasOwn(question.inputs, name))
  const tried = new Set<string>()
  for (const name of [...declared.filter((known) => Object.hasOwn(raw, known)), ...unknown]) {
    if (raw[name] === undefined) continue
    tried.add(name)
    const whole = withOwnUnits(question.inputs[name], textsOf(raw[name]) ?? [], own)
    const reading = Object.hasOwn(question.inputs, name)
      ? readInput(question, name, whole ?? raw[name])
      : { faults: [fault('unknown-input', name.slice(0, 64), shownRaw(raw[name]), { inputs: declared })] }
    faults.push(...reading.faults)
    if (reading.faults.length > 0) continue
    values[name] = reading.value
    const told = question.inputs[name]?.given(reading.value, name) ?? []
    const from = lent.has(name) ? (loan?.bench?.has(name) ? 'bench' : 'register') : whole ? 'assumed' : undefined
    given.push(...(from ? told.map((one): Given => ({ ...one, from })) : told))
  }
  const { wrench } = values
  if (typeof wrench === 'string' && question.inputs['wrench']?.kind === 'wrench')
    faults.push(...(loan?.faults ?? [fault('no-register', 'wrench', wrench)]))
  if (values['bench'] !== undefined && question.inputs['bench']?.kind === 'bench')
    faults.push(...(loan?.faults ?? [fault('no-bench', 'bench', shownRaw(raw['bench']))]))
  faults.push(...question.check(values))
  return { values, given, faults, missing: missingOf(question, values, tried) }
}

/** The quantities that were given, in the order of the declaration: they choose the units of the results. */
export const quantitiesOf = (given: readonly Given[]): Quantity[] =>
  given.flatMap(({ value }) => (typeof value === 'object' ? [value] : []))
