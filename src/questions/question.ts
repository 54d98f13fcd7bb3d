// THE CONTRACT of a question: its inputs declared once, what else it needs, what cannot be, and its answerer. Pure.
import type { Fault } from '../core/fault.ts'
import type { Quantity } from '../core/quantity.ts'
import { type Dimension, everyday, type Unit } from '../core/unit.ts'
import type { Book } from '../register/book.ts'
import type { Today } from '../register/status.ts'
import type { Input } from './input.ts'
import type { InputName, Outcome } from './outcome.ts'

export type Inputs = Readonly<Record<string, Input<unknown>>>

type ValueOf<I> = I extends Input<infer T> ? T : never
type NeededNames<I extends Inputs> = { [K in keyof I]: I[K] extends Input<unknown, true> ? K : never }[keyof I]

/** What was given, by input name: every needed input, and of the others those that were told. */
export type GivenTo<I extends Inputs> = { readonly [K in NeededNames<I>]: ValueOf<I[K]> } & {
  readonly [K in Exclude<keyof I, NeededNames<I>>]?: ValueOf<I[K]>
}
export type PartlyGiven<I extends Inputs> = { readonly [K in keyof I]?: ValueOf<I[K]> }

/** The unit that results of a dimension take: of the first given input of it, else by the system of the first quantity. */
export interface ResultUnits {
  readonly of: (dimension: Dimension) => Unit
  /** The unit of the first given input of a dimension, where there is one. */
  readonly given: (dimension: Dimension) => Unit | undefined
  readonly system: 'metric' | 'inch'
}

/** `shown`: the system that the asker wants results in, whatever was given; what is of either system stays as given. */
export const resultUnits = (
  given: readonly Quantity[],
  fallback: 'metric' | 'inch',
  shown?: 'metric' | 'inch',
): ResultUnits => {
  const spoken = given.find((q) => q.unit.system !== 'either')?.unit.system
  const system = shown ?? (spoken === undefined || spoken === 'either' ? fallback : spoken)
  const unitGiven = (dimension: Dimension): Unit | undefined =>
    given.find((q) => q.unit.dimension === dimension && (!shown || [shown, 'either'].includes(q.unit.system)))?.unit
  return {
    system,
    of: (dimension) => unitGiven(dimension) ?? everyday[dimension][system],
    given: unitGiven,
  }
}

/** The shop's wrenches as they stand today, for questions that choose among them. */
export interface FleetKnown {
  readonly book: Book
  readonly now: Today
}

interface Definition<Name extends string, I extends Inputs> {
  readonly name: Name
  /** Every name has its words; one that has none does not compile. */
  readonly inputs: I & { readonly [Unspoken in Exclude<keyof I, InputName>]: never }
  /** Names of results in the order in which they are shown; a test holds answers against it. */
  readonly results: readonly string[]
  /** Groups of which one input is enough (lever or hand). The first of a group is what is asked for. */
  readonly oneOf?: ReadonlyArray<ReadonlyArray<keyof I & string>>
  /** What is needed besides, because of what was given. */
  readonly alsoNeeded?: (given: PartlyGiven<I>) => ReadonlyArray<keyof I & string>
  /** Rungs for a missing input that depend on what was given (pivot: shares of the lever). */
  readonly rungs?: (given: PartlyGiven<I>, missing: string) => readonly unknown[] | undefined
  /** What cannot be, whatever else is still missing. */
  readonly check?: (given: PartlyGiven<I>) => readonly Fault[]
  /** Answered from the shop's register, and from nothing else. */
  readonly needsFleet?: boolean
  readonly answer: (given: GivenTo<I>, units: ResultUnits, fleet: FleetKnown | undefined) => Outcome
}

/** A question as the desk and the doors see it. */
export interface Question<Name extends string = string> {
  readonly name: Name
  readonly inputs: Inputs
  readonly results: readonly string[]
  readonly oneOf: ReadonlyArray<readonly string[]>
  readonly alsoNeeded: (given: Readonly<Record<string, unknown>>) => readonly string[]
  readonly rungs: (given: Readonly<Record<string, unknown>>, missing: string) => readonly unknown[] | undefined
  readonly check: (given: Readonly<Record<string, unknown>>) => readonly Fault[]
  /** Needs every needed input; the desk asks for them first. */
  readonly needsFleet: boolean
  readonly answer: (given: Readonly<Record<string, unknown>>, units: ResultUnits, fleet?: FleetKnown) => Outcome
}

/** Declares a question; its inputs' types reach its answerer, and are forgotten here once. */
export const defineQuestion = <const Name extends string, const I extends Inputs>(
  definition: Definition<Name, I>,
): Question<Name> => ({
  name: definition.name,
  inputs: definition.inputs,
  results: definition.results,
  oneOf: definition.oneOf ?? [],
  alsoNeeded: (given) => definition.alsoNeeded?.(given as PartlyGiven<I>) ?? [],
  rungs: (given, missing) => definition.rungs?.(given as PartlyGiven<I>, missing),
  check: (given) => definition.check?.(given as PartlyGiven<I>) ?? [],
  needsFleet: definition.needsFleet ?? false,
  answer: (given, units, fleet) => definition.answer(given as GivenTo<I>, units, fleet),
})
