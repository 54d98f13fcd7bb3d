// A day as ISO 8601 writes it: 2026-03-01. Kept as that text; nothing here knows what day it is.
import { fault, type Read, read, refuse } from './fault.ts'

export const LONGEST_DATE = 64
const FIRST_YEAR = 1900
const LAST_YEAR = 2199

const isoDay = /^(\d{4})-(\d{2})-(\d{2})$/

/** Days of a month, by the Gregorian calendar. */
const daysIn = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate()

/** A day that there is. Faults: empty, not-a-date (written another way, or no such day), out-of-range, too-long. */
export const parseDate = (text: string, input: string): Read<string> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text))
  if (text.length > LONGEST_DATE) return refuse(fault('too-long', input, text, { most: String(LONGEST_DATE) }))
  const parts = isoDay.exec(trimmed)
  if (!parts) return refuse(fault('not-a-date', input, text))
  const [year = 0, month = 0, day = 0] = parts.slice(1).map(Number)
  if (month < 1 || month > 12) return refuse(fault('not-a-date', input, text))
  if (year < FIRST_YEAR || year > LAST_YEAR) {
    return refuse(fault('year-out-of-range', input, text, { first: String(FIRST_YEAR), last: String(LAST_YEAR) }))
  }
  const last = daysIn(year, month)
  if (day < 1 || day > last) {
    return refuse(fault('no-such-day', input, text, { last: `${parts[1]}-${parts[2]}-${last}` }))
  }
  return read(trimmed)
}
