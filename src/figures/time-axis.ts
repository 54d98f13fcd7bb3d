// Days along a line: where a day lies, and which months or years are marked so that their words keep apart.

const DAY = 86_400_000
/** Days since 1970 of an ISO date. */
export const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY

export interface TimeAxis {
  readonly at: (date: string) => number
  readonly ticks: ReadonlyArray<{ readonly x: number; readonly text: string }>
}

/** Months between two marks. */
const STEPS = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600] as const
/** Of the whole time, left free at both ends. */
const ROOM = 0.04

/** The first days of months between two days; every step counts from January of the year 0, so that years are among them. */
const monthsBetween = (first: string, last: string, step: number): string[] => {
  const days: string[] = []
  for (let n = Math.floor((Number(first.slice(0, 4)) * 12) / step) * step; ; n += step) {
    const day = `${String(Math.floor(n / 12)).padStart(4, '0')}-${String((n % 12) + 1).padStart(2, '0')}-01`
    if (day > last) return days
    if (day >= first) days.push(day)
  }
}

/** The axis from one day to another between two x, with at most so many marks. A day alone lies in the middle. */
export const timeAxis = (first: string, last: string, left: number, right: number, most: number): TimeAxis => {
  const [from, to] = [dayNumber(first), dayNumber(last)]
  const room = (right - left) * ROOM
  const scale = to === from ? 0 : (right - left - 2 * room) / (to - from)
  const at = (date: string): number =>
    to === from ? (left + right) / 2 : left + room + (dayNumber(date) - from) * scale
  const found = STEPS.map((step) => ({ step, days: monthsBetween(first, last, step) })).find(
    ({ days }) => days.length <= most,
  )
  // Too short for two marks of the calendar: its own days are told.
  if (!found || found.days.length < 2) {
    return { at, ticks: [...new Set([first, last])].map((day) => ({ x: at(day), text: day })) }
  }
  return {
    at,
    ticks: found.days.map((day) => ({ x: at(day), text: day.slice(0, found.step >= 12 ? 4 : 7) })),
  }
}
