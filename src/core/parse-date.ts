// Days, intervals and events as people write them: 2026-03-01; 12 months, 5000 uses; dropped@2026-03-01, wound-up@2026-01-01..2026-07-01.
import { fault, type Read, read, refuse } from './fault.ts'

const day = /^(\d{4})-(\d{2})-(\d{2})$/

/** A day of the calendar, ISO 8601. Faults: empty, not-a-date. */
export const parseDay = (text: string, input: string): Read<string> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text, { options: ['2026-03-01'] }))
  const [, year = '', month = '', date = ''] = day.exec(trimmed) ?? []
  const time = new Date(Date.UTC(Number(year), Number(month) - 1, Number(date)))
  const real =
    year !== '' &&
    Number(year) >= 1900 &&
    time.getUTCMonth() === Number(month) - 1 &&
    time.getUTCDate() === Number(date)
  return real ? read(trimmed) : refuse(fault('not-a-date', input, text))
}

export interface IntervalText {
  readonly months?: number
  readonly uses?: number
}

/** `12 months`, `1 year`, `5000 uses`; several in one text with `;` or `or`. */
export const parseInterval = (texts: readonly string[], input: string): Read<IntervalText> => {
  let found: IntervalText = {}
  for (const text of texts.flatMap((one) => one.slice(0, 200).split(/\s*(?:;|,|\bor\b|\band\b)\s*/))) {
    const [, amount = '', word = ''] = /^(\d{1,7})\s*(months?|years?|uses?|cycles?|pulls?)$/i.exec(text.trim()) ?? []
    const kind = /^m|^y/i.test(word) ? 'months' : 'uses'
    if (amount === '' || Number(amount) === 0 || found[kind] !== undefined)
      return refuse(fault('not-an-interval', input, text))
    found = { ...found, [kind]: Number(amount) * (/^y/i.test(word) ? 12 : 1) }
  }
  return read(found)
}

export interface EventText {
  readonly kind: string
  readonly at: string
  readonly from?: string
}

/** Events of a list of kinds, each at a day or over days: `dropped@2026-03-01`, `wound-up@2026-01-01..2026-07-01`. */
export const parseEvents = (
  texts: readonly string[],
  input: string,
  kinds: readonly string[],
): Read<readonly EventText[]> => {
  const events: EventText[] = []
  for (const text of texts.flatMap((one) => one.slice(0, 1000).split(/\s*[;,]\s*/))) {
    const [kind = '', when = ''] = text.trim().split('@')
    const [first = '', last] = when.split('..')
    const begin = parseDay(first, input)
    const end = last === undefined ? begin : parseDay(last, input)
    if (!kinds.includes(kind)) return refuse(fault('not-an-event', input, text, { options: kinds }))
    if (!begin.ok) return begin
    if (!end.ok) return end
    if (end.value < begin.value) return refuse(fault('span-reversed', input, text))
    events.push({ kind, at: end.value, ...(last === undefined ? {} : { from: begin.value }) })
  }
  return read(events)
}
