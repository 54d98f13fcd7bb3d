// What an asker can mend: a value with a code, never an exception. The words for it live elsewhere, under its `tell`.
import type { Quantity } from './quantity.ts'

export type FactValue = string | Quantity | readonly string[]

/**
 * Every way in which an input can be wrong, and the code it is told under. A `tell` is finer than its code:
 * `100 lb` and `14 in` for a torque are both unit-wrong-kind, but what to type next differs.
 */
export const faultTells = {
  'unit-missing': 'unit-missing',
  'unit-unknown': 'unit-unknown',
  'adapters-unparted': 'trailing',
  'inches-unmarked': 'unit-missing',
  'unit-wrong-kind': 'unit-wrong-kind',
  'pound-alone': 'unit-wrong-kind',
  'unit-after-plain-number': 'trailing',
  'two-readings': 'two-readings',
  'spec-holds-figure': 'maker-figure',
  'thousands-or-decimal': 'two-readings',
  'words-around': 'two-readings',
  'words-around-angle': 'two-readings',
  'words-around-hand': 'two-readings',
  'not-a-number': 'not-a-number',
  exponent: 'not-a-number',
  'thousands-mark': 'not-a-number',
  negative: 'negative',
  'adapter-negative': 'negative',
  empty: 'empty',
  'point-empty': 'empty',
  'point-without-setting': 'empty',
  'point-without-readings': 'empty',
  trailing: 'trailing',
  'unknown-input': 'unknown-input',
  repeated: 'repeated',
  'angle-twice': 'conflict',
  'pivot-and-type': 'conflict',
  'angle-with-chain': 'conflict',
  'least-above-most': 'conflict',
  'hand-at-lever': 'conflict',
  'pulls-do-not-fit': 'conflict',
  'pairs-uneven': 'conflict',
  'diameter-not-size': 'conflict',
  'two-ratios': 'conflict',
  'ratio-holds-losses': 'conflict',
  'class-not-of-type': 'conflict',
  'readings-differ': 'conflict',
  'interval-twice': 'conflict',
  'not-a-text': 'not-allowed',
  'not-an-object': 'not-allowed',
  'not-a-choice': 'not-allowed',
  'not-a-size': 'not-allowed',
  'not-a-seat': 'not-allowed',
  'not-a-point': 'not-allowed',
  'kinds-differ': 'unit-wrong-kind',
  'not-a-share': 'not-allowed',
  'no-usual-pitch': 'not-allowed',
  'class-not-for-size': 'not-allowed',
  'friction-twice': 'conflict',
  'seat-cannot-be': 'out-of-range',
  'no-proof-load': 'not-allowed',
  'thread-part-above-torque': 'out-of-range',
  'force-past-yield': 'out-of-range',
  'turn-or-force': 'conflict',
  'own-factors-and-where': 'conflict',
  'not-a-unit': 'not-allowed',
  'not-a-topic': 'not-allowed',
  'several-topics': 'two-readings',
  'one-value-only': 'not-allowed',
  'span-reversed': 'not-allowed',
  'point-without-colon': 'not-allowed',
  'point-two-colons': 'not-allowed',
  'not-whole': 'not-allowed',
  'not-an-interval': 'not-allowed',
  'not-an-event': 'not-allowed',
  'event-without-day': 'not-allowed',
  'event-one-day': 'not-allowed',
  'days-reversed': 'not-allowed',
  'no-register': 'not-allowed',
  'no-register-here': 'not-allowed',
  'key-taken': 'conflict',
  'sheet-unreadable': 'not-allowed',
  'sheet-column': 'unknown-input',
  'sheet-column-twice': 'repeated',
  'sheet-empty': 'empty',
  'sheet-too-long': 'too-many',
  'sheet-cells': 'too-many',
  'sheet-missing': 'empty',
  'sheet-head': 'not-allowed',
  'sheet-twice': 'repeated',
  'sheet-not-utf8': 'not-allowed',
  'text-hidden': 'not-allowed',
  'text-one-line': 'not-allowed',
  'others-write': 'conflict',
  'wrench-not-here': 'not-in-register',
  'not-a-date': 'not-a-date',
  'no-such-day': 'not-a-date',
  'too-many': 'too-many',
  'too-many-in-point': 'too-many',
  'too-few': 'too-few',
  'too-few-readings': 'too-few',
  'too-long': 'too-long',
  'above-limit': 'out-of-range',
  'below-limit': 'out-of-range',
  'hand-inside-pivot': 'out-of-range',
  'pivot-past-hand': 'out-of-range',
  'head-past-lever': 'out-of-range',
  'head-too-long': 'out-of-range',
  'hinge-past-lever': 'out-of-range',
  'hand-inside-any-pivot': 'out-of-range',
  'weight-beats-pull': 'out-of-range',
  'balance-past-pull': 'out-of-range',
  'mean-not-above-zero': 'out-of-range',
  'year-out-of-range': 'out-of-range',
  'too-doubtful': 'out-of-range',
  'pivot-decides': 'out-of-range',
  'not-a-tag': 'not-allowed',
  'not-a-tolerance': 'not-allowed',
  'not-a-temperature': 'not-allowed',
  'readings-not-of-way': 'conflict',
  'distance-not-of-way': 'conflict',
  'units-differ': 'conflict',
  'most-not-of-gauge': 'conflict',
  'no-such-wrench': 'not-in-register',
  'no-such-gauge': 'not-in-register',
  'no-such-entry': 'not-in-register',
  'tag-taken': 'conflict',
  'tag-fixed': 'conflict',
  'superseded-already': 'conflict',
  'entry-of-other-kind': 'conflict',
  'card-in-use': 'conflict',
  'wrench-retired': 'conflict',
  'no-such-run': 'not-in-register',
  'no-such-condition': 'not-allowed',
  'no-such-reading': 'not-in-register',
  'not-a-condition': 'not-allowed',
  'conditions-alike': 'conflict',
  'condition-in-use': 'conflict',
  'not-months': 'not-allowed',
  'not-planned': 'not-allowed',
  'run-finished': 'conflict',
  'run-full': 'too-many',
  'run-in-use': 'conflict',
  'lists-uneven': 'conflict',
  'not-a-run-reference': 'not-allowed',
  'run-not-finished': 'not-allowed',
  'which-condition': 'two-readings',
  'run-without-factor': 'not-allowed',
  'run-without-verdict': 'not-allowed',
  'run-too-doubtful': 'out-of-range',
  'one-run-wanted': 'too-many',
  'two-runs-wanted': 'too-few',
  'no-bench': 'not-allowed',
  'event-without-setting': 'conflict',
  'why-missing': 'empty',
  'reading-by-ten': 'out-of-range',
  'reading-in-other-unit': 'out-of-range',
  'reading-not-asked': 'conflict',
  'gauge-not-of-way': 'conflict',
  'weight-is-enough': 'out-of-range',
  'day-ahead': 'out-of-range',
  'behind-the-hand': 'behind-the-hand',
  'angle-stage': 'angle-stage',
  'text-too-long': 'too-long',
  'maker-figure': 'maker-figure',
  'out-of-scope': 'out-of-scope',
} as const

export type FaultTell = keyof typeof faultTells
export type FaultCode = (typeof faultTells)[FaultTell]

export interface Fault {
  readonly code: FaultCode
  readonly tell: FaultTell
  readonly input: string
  /** What was got, word for word, cut to a length that can be shown. */
  readonly got: string
  readonly facts: Readonly<Record<string, FactValue>>
}

const SHOWN = 80

export const fault = (
  tell: FaultTell,
  input: string,
  got: string,
  facts: Readonly<Record<string, FactValue>> = {},
): Fault => ({ code: faultTells[tell], tell, input, got: cut(got), facts: cutFacts(facts) })

// A fact may quote what was typed; it is cut like `got`, so that a hint can always be shown whole.
const cutFacts = (facts: Fault['facts']): Fault['facts'] =>
  Object.fromEntries(Object.entries(facts).map(([name, told]) => [name, typeof told === 'string' ? cut(told) : told]))

const cut = (text: string): string => {
  const points = Array.from(text.slice(0, SHOWN * 2 + 2))
  return points.length > SHOWN ? `${points.slice(0, SHOWN).join('')}…` : text
}

/** A reading that succeeded, or the faults that kept it from doing so. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] }

export const read = <T>(value: T): Read<T> => ({ ok: true, value })
export const refuse = (...faults: readonly Fault[]): Read<never> => ({ ok: false, faults })
