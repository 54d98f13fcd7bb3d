// What a wrench has been through, as people type it: an interval (`12 months; 5000 uses`) and events (`dropped@2026-03-01`).
import { type Fault, fault, type Read, read, refuse } from './fault.ts'
import { readNumber } from './number-text.ts'
import { parseDate } from './parse-date.ts'
import { LONGEST_LIST } from './parse-list.ts'
import { LONGEST_QUANTITY, numberFault } from './parse-quantity.ts'
import { quantity } from './quantity.ts'
import { units } from './unit.ts'

export interface IntervalRead {
  readonly months?: number
  readonly uses?: number
}

/** `from` is there where it was a span. Days are ISO dates. */
export interface EventRead<Kind extends string> {
  readonly kind: Kind
  readonly from?: string
  readonly to: string
}

const counted: Readonly<Record<string, { readonly of: keyof IntervalRead; readonly times: number }>> = {
  month: { of: 'months', times: 1 },
  months: { of: 'months', times: 1 },
  year: { of: 'months', times: 12 },
  years: { of: 'months', times: 12 },
  use: { of: 'uses', times: 1 },
  uses: { of: 'uses', times: 1 },
  cycles: { of: 'uses', times: 1 },
  pulls: { of: 'uses', times: 1 },
  clicks: { of: 'uses', times: 1 },
}
const mostOf: Readonly<Record<keyof IntervalRead, number>> = { months: 120, uses: 1_000_000 }
const plain = (value: number) => quantity(value, units['1'])

/** A whole number, 0 or more, and what stands behind it. */
export const parseWhole = (text: string, input: string): Read<{ value: number; rest: string }> => {
  if (text.trim() === '') return refuse(fault('empty', input, text, { kind: 'number' }))
  if (text.length > LONGEST_QUANTITY)
    return refuse(fault('too-long', input, text, { kind: 'number', most: String(LONGEST_QUANTITY) }))
  const number = readNumber(text.trim())
  if (!number.ok) return refuse(numberFault(number.trouble, { input, dimensions: ['number'] }, text, ''))
  if (number.value < 0) return refuse(fault('negative', input, text, { kind: 'number' }))
  if (!Number.isInteger(number.value)) return refuse(fault('not-whole', input, text))
  return read({ value: number.value, rest: number.rest.trim() })
}

const parseShare = (text: string, input: string): Read<{ of: keyof IntervalRead; value: number }> => {
  if (text.length <= LONGEST_QUANTITY && text.trim() !== '' && !/\d/.test(text)) {
    return refuse(fault('not-an-interval', input, text))
  }
  const whole = parseWhole(text, input)
  if (!whole.ok) return whole
  const word = whole.value.rest.toLowerCase()
  const known = Object.hasOwn(counted, word) ? counted[word] : undefined
  if (!known) return refuse(fault('not-an-interval', input, text))
  const value = whole.value.value * known.times
  if (value < 1) return refuse(fault('below-limit', input, text, { limit: plain(1) }))
  if (value > mostOf[known.of]) return refuse(fault('above-limit', input, text, { limit: plain(mostOf[known.of]) }))
  return read({ of: known.of, value })
}

/** Months, uses or both, each once. Faults of all parts. */
export const parseInterval = (texts: readonly string[], input: string): Read<IntervalRead> => {
  const faults: Fault[] = []
  const interval: { months?: number; uses?: number } = {}
  for (const part of texts.flatMap((text) => (text.length > LONGEST_QUANTITY ? [text] : text.split(/;|,\s|\+/)))) {
    const share = parseShare(part, input)
    if (!share.ok) faults.push(...share.faults)
    else if (interval[share.value.of] !== undefined) faults.push(fault('interval-twice', input, texts.join('; ')))
    else interval[share.value.of] = share.value.value
  }
  return faults.length > 0 ? refuse(...faults) : read(interval)
}

const foldWord = (text: string): string => text.toLowerCase().replace(/[\s\-_]/g, '')
const spanMark = /\s?(?:\.{2,3}|…|–|\/)\s?/

/** What may happen to a wrench: the spellings of each, folded, and whether it lasts (takes a span of days). */
export type EventKinds<Kind extends string> = Readonly<
  Record<Kind, { readonly spellings: readonly string[]; readonly lasts: boolean }>
>

const parseEvent = <Kind extends string>(
  text: string,
  input: string,
  kinds: EventKinds<Kind>,
): Read<EventRead<Kind>> => {
  const names = Object.keys(kinds) as Kind[]
  if (text.trim() === '') return refuse(fault('empty', input, text))
  if (text.length > LONGEST_QUANTITY) return refuse(fault('too-long', input, text, { most: String(LONGEST_QUANTITY) }))
  const [word = '', when, ...more] = text.split('@')
  const folded = foldWord(word)
  const kind = names.find((name) => foldWord(name) === folded || kinds[name].spellings.includes(folded))
  if (kind === undefined) return refuse(fault('not-an-event', input, text, { options: names }))
  if (when === undefined || when.trim() === '' || more.length > 0) {
    return refuse(fault('event-without-day', input, text, { event: kind }))
  }
  const [first = '', second, ...others] = when.trim().split(spanMark)
  if (others.length > 0) return refuse(fault('not-a-date', input, text))
  const from = parseDate(first, input)
  if (second === undefined) return from.ok ? read({ kind, to: from.value }) : from
  if (!kinds[kind].lasts) return refuse(fault('event-one-day', input, text, { event: kind }))
  const to = parseDate(second, input)
  if (!from.ok || !to.ok) return refuse(...(from.ok ? [] : from.faults), ...(to.ok ? [] : to.faults))
  if (to.value < from.value) return refuse(fault('days-reversed', input, text))
  return read({ kind, from: from.value, to: to.value })
}

/** Events, each `what@day` or `what@day..day`, several with `;` or a comma and a space. Faults of all of them. */
export const parseEvents = <Kind extends string>(
  texts: readonly string[],
  input: string,
  kinds: EventKinds<Kind>,
  most: number,
): Read<ReadonlyArray<EventRead<Kind>>> => {
  const parts = texts.flatMap((text) => (text.length > LONGEST_LIST ? [text] : text.split(/;|,\s|\n/)))
  if (parts.length > most) return refuse(fault('too-many', input, texts.join('; '), { most: String(most) }))
  const all = parts.map((part) => parseEvent(part, input, kinds))
  const faults = all.flatMap((one) => (one.ok ? [] : one.faults))
  return faults.length > 0 ? refuse(...faults) : read(all.flatMap((one) => (one.ok ? [one.value] : [])))
}
