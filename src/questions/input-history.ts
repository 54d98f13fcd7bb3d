// Inputs of what a wrench has been through: the day of a check, uses counted, an interval, events with their days.
import { fault, read, refuse } from '../core/fault.ts'
import { parseDate } from '../core/parse-date.ts'
import {
  type EventKinds,
  type EventRead,
  type IntervalRead,
  parseEvents,
  parseInterval,
  parseWhole,
} from '../core/parse-history.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { asked, common, type Input, type Options, one, same } from './input.ts'
import type { Given } from './outcome.ts'

/** A day, ISO 8601. */
export const date = <N extends boolean = false>(options: Options<N> = {}): Input<string, N> => ({
  kind: 'date',
  most: 1,
  ...common(options, same('2026-03-01')),
  read: (texts, input) => {
    const text = one(texts, input)
    return text.ok ? parseDate(text.value, input) : text
  },
  given: (value, input) => [asked(input, value)],
})

const MOST_COUNTED = 1_000_000_000

/** A whole number, 0 or more, bare. */
export const count = <N extends boolean = false>(options: Options<N> = {}): Input<Quantity, N> => ({
  kind: 'count',
  most: 1,
  ...common(options, same('1200')),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const whole = parseWhole(text.value, input)
    if (!whole.ok) return whole
    const { value, rest } = whole.value
    if (rest !== '') return refuse(fault('unit-after-plain-number', input, text.value, { extra: rest }))
    const limit = quantity(MOST_COUNTED, units['1'])
    if (value > MOST_COUNTED) return refuse(fault('above-limit', input, text.value, { limit }))
    return read(quantity(value, units['1']))
  },
  given: (value, input) => [asked(input, value)],
})

/** An interval as it is typed, a part each: `12 months`, `5000 uses`. */
export const intervalParts = ({ months, uses }: IntervalRead): string[] => [
  ...(months === undefined ? [] : [`${months} months`]),
  ...(uses === undefined ? [] : [`${uses} uses`]),
]

/** Months, uses, or both. */
export const interval = <N extends boolean = false>(options: Options<N> = {}): Input<IntervalRead, N> => ({
  kind: 'interval',
  most: 2,
  ...common(options, same('12 months; 5000 uses')),
  read: parseInterval,
  given: (value, input) => intervalParts(value).map((part): Given => asked(input, part)),
})

const MOST_EVENTS = 20

/** What happened and when: `dropped@2026-03-01`, and of what lasts `wound-up@2026-01-01..2026-07-01`. */
export const events = <Kind extends string, N extends boolean = false>(
  options: Options<N> & { readonly of: EventKinds<Kind> },
): Input<ReadonlyArray<EventRead<Kind>>, N> => ({
  kind: 'events',
  most: MOST_EVENTS,
  ...common(options, same('dropped@2026-03-01')),
  read: (texts, input) => parseEvents(texts, input, options.of, MOST_EVENTS),
  given: (all, input) =>
    all.map(({ kind, from, to }, index) => ({
      ...asked(input, `${kind}@${from === undefined ? '' : `${from}..`}${to}`),
      index,
    })),
})
