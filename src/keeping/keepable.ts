// What can be kept, declared as questions are: its inputs once, what else it needs, what cannot be, and the body made of them.
// Validation, OpenAPI, chat options and forms derive from this list as they do from a question's. Pure.
import type { Fault } from '../core/fault.ts'
import type { Quantity } from '../core/quantity.ts'
import type { GivenTo, Inputs, PartlyGiven } from '../questions/question.ts'
import { LONGEST_ENTERED, type Measured, measured } from '../register/parts.ts'
import type { BodyOf, Kind } from '../register/records.ts'
import { text } from './inputs.ts'

/** Keeps a quantity with the text that it was entered as. */
export type Keep = (input: string, value: Quantity) => Measured

interface Definition<K extends Kind, I extends Inputs> {
  readonly kind: K
  readonly inputs: I
  readonly alsoNeeded?: (given: PartlyGiven<I>) => ReadonlyArray<keyof I & string>
  readonly check?: (given: PartlyGiven<I>) => readonly Fault[]
  readonly body: (given: GivenTo<I>, keep: Keep) => BodyOf<K>
}

type Values = Readonly<Record<string, unknown>>

/** What the desk and the doors see of it; the same parts that a question is read by. */
export interface Keepable<K extends Kind = Kind> {
  readonly kind: K
  readonly inputs: Inputs
  readonly oneOf: readonly []
  readonly alsoNeeded: (given: Values) => readonly string[]
  readonly check: (given: Values) => readonly Fault[]
  /** Needs every needed input; `raw` lends the texts as they were entered. */
  readonly body: (given: Values, raw: Values) => BodyOf<K>
}

/** Of every kind: which entry it corrects, and why. */
export const correction = {
  supersedes: text({ longest: 64, sample: 'e-0042' }),
  why: text({ longest: 500, sample: 'misread by one' }),
}

const keepFrom =
  (raw: Values): Keep =>
  (input, value) => {
    const typed = raw[input]
    const single = Array.isArray(typed) && typed.length === 1 ? (typed[0] as unknown) : typed
    const entered = typeof single === 'string' ? single.trim() : ''
    // A line end between number and unit is read, and is nothing to be shown again.
    const isKept = entered !== '' && entered.length <= LONGEST_ENTERED && !/[\p{Cc}\p{Cs}]/u.test(entered)
    return isKept ? measured(value, entered) : measured(value)
  }

/** Declares something that is kept; its inputs' types reach its body, and are forgotten here once. */
export const defineKeepable = <const K extends Kind, const I extends Inputs>(
  definition: Definition<K, I>,
): Keepable<K> => ({
  kind: definition.kind,
  inputs: { ...definition.inputs, ...correction },
  oneOf: [],
  alsoNeeded: (given) => [
    ...(definition.alsoNeeded?.(given as PartlyGiven<I>) ?? []),
    ...(given['supersedes'] !== undefined ? ['why'] : []),
    ...(given['why'] !== undefined || definition.kind === 'withdrawal' ? ['supersedes'] : []),
  ],
  check: (given) => definition.check?.(given as PartlyGiven<I>) ?? [],
  body: (given, raw) => definition.body(given as GivenTo<I>, keepFrom(raw)),
})

/** Only what is there: a body has no field that is undefined. */
export const present = <T extends object>(fields: T): { [P in keyof T]: Exclude<T[P], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [P in keyof T]: Exclude<T[P], undefined>
  }
