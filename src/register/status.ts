// The status of a wrench on a day: what follows from its book by the rules of status-rules.ts, each with its reason and day.
// The day is handed in; what happened after it does not count.
import { addMonths, type Due, daysBetween, isDue, nextCheck } from '../mechanics/check-due.ts'
import { LEAST_SHARE } from '../mechanics/deviation.ts'
import { type Book, gaugeOf, type Kept, type WrenchFolder } from './book.ts'
import { lastingOf } from './event-rules.ts'
import type { WrenchCard } from './records.ts'
import {
  type ReasonCode,
  reasonCodes,
  reasonStatus,
  type Status,
  statuses,
  WARN_DAYS,
  WOUND_UP_MONTHS,
} from './status-rules.ts'
import { isAfter, usesSince } from './usage.ts'
import { type JudgedCheck, judge } from './verdict.ts'

export interface Reason {
  readonly code: ReasonCode
  /** Since when it holds; of what is only coming, the day on which it will. */
  readonly date: string
  /** The entry that it follows from. */
  readonly entry: string
}

export interface WrenchStatus {
  readonly status: Status
  /** All that hold, the one that leads first; never empty. */
  readonly reasons: readonly [Reason, ...Reason[]]
  /** When the next check is due by months and uses; not where none is recorded yet. */
  readonly due?: Due
  /** Days from today until then; negative where it has passed. */
  readonly daysLeft?: number
  readonly lastCheck?: { readonly kept: Kept<'check'>; readonly judged: JudgedCheck }
}

export interface Today {
  /** ISO date in the shop's time zone. */
  readonly today: string
  readonly warnDays?: number
}

type KeptEvent = Kept<'event'>

const eventReason = (code: ReasonCode, { entry }: KeptEvent): Reason => ({
  code,
  date: entry.body.date,
  entry: entry.id,
})

// An as-left check is made after the work of its day, in whatever order the two were written down.
const coveredBy = (event: KeptEvent, check: Kept<'check'>): boolean => {
  const { what, date } = event.entry.body
  const { state, date: checked } = check.entry.body
  if (state === 'as-left' && date === checked && (what === 'repaired' || what === 'adjusted')) return true
  return !isAfter(event, check)
}

/** Left at or below its lowest mark it was not wound up; for less than a month since the check weeks change little. */
const isHarmless = ({ entry: { body } }: KeptEvent, card: WrenchCard, lastCheck: string | undefined): boolean => {
  if (body.what !== 'wound-up') return false
  const low = Math.max(card.least?.value ?? 0, card.most.value * LEAST_SHARE)
  if (body.setting && body.setting.value <= low) return true
  if (body.from === undefined) return false
  const from = lastCheck !== undefined && lastCheck > body.from ? lastCheck : body.from
  return body.date < addMonths(from, WOUND_UP_MONTHS)
}

const sinceCheck = (events: readonly KeptEvent[], card: WrenchCard, check: Kept<'check'> | undefined): Reason[] =>
  events.flatMap((event) => {
    const { what } = event.entry.body
    if (reasonStatus[what] !== 'check-before-use') return []
    if (check && coveredBy(event, check)) return []
    return isHarmless(event, card, check?.entry.body.date) ? [] : [eventReason(what, event)]
  })

const whereabouts = (events: readonly KeptEvent[]): Reason[] => {
  const { retired, moved } = lastingOf(events)
  const away = moved && reasonStatus[moved.entry.body.what] === 'set-aside' ? [moved] : []
  return [...(retired ? [retired] : []), ...away].map((event) => eventReason(event.entry.body.what, event))
}

const checked: Readonly<Record<JudgedCheck['verdict'], ReasonCode>> = {
  pass: 'passed',
  'pass-in-doubt': 'passed-in-doubt',
  'fail-in-doubt': 'failed-in-doubt',
  fail: 'failed',
}

const dueOf = (folder: WrenchFolder, check: Kept<'check'>, today: string): Due => {
  const counts = folder.uses.filter(({ entry }) => entry.body.date <= today)
  const { months, uses } = folder.card.entry.body.interval ?? {}
  return nextCheck({
    lastCheck: check.entry.body.date,
    interval: { ...(months === undefined ? {} : { months }), ...(uses === undefined ? {} : { uses }) },
    ...usesSince(counts, check),
  })
}

const dueReasons = (due: Due, check: Kept<'check'>, { today, warnDays = WARN_DAYS }: Today): Reason[] => {
  const { on, reason } = due
  const because = { date: on, entry: check.entry.id }
  if (isDue(due, today)) return reason.why === 'event' ? [] : [{ code: reason.why, ...because }]
  return daysBetween(today, on) <= warnDays ? [{ code: 'due-soon', ...because }] : []
}

const leading = (one: Reason, other: Reason): number => {
  const rank = ({ code }: Reason): number => statuses.indexOf(reasonStatus[code])
  return rank(one) - rank(other) || reasonCodes.indexOf(one.code) - reasonCodes.indexOf(other.code)
}

/** The status of a wrench today, with every reason for it. */
export const statusOf = (book: Book, folder: WrenchFolder, now: Today): WrenchStatus => {
  const { today } = now
  const card = folder.card.entry.body
  const events = folder.events.filter(({ entry }) => entry.body.date <= today)
  const check = folder.checks.find(({ entry }) => entry.body.date <= today)
  const base = [...whereabouts(events), ...sinceCheck(events, card, check)]
  if (!check) {
    const { id, at } = folder.card.entry
    const never: Reason = { code: 'never-checked', date: at.slice(0, 10), entry: id }
    const [first, ...rest] = [...base, never].sort(leading) as [Reason, ...Reason[]]
    return { status: reasonStatus[first.code], reasons: [first, ...rest] }
  }
  const { id, body } = check.entry
  const judged = judge(body, card, gaugeOf(book, body.gauge)?.entry.body)
  const due = dueOf(folder, check, today)
  const found: Reason = { code: checked[judged.verdict], date: body.date, entry: id }
  const reasons = [...base, found, ...dueReasons(due, check, now)].sort(leading) as [Reason, ...Reason[]]
  return {
    status: reasonStatus[reasons[0].code],
    reasons,
    due,
    daysLeft: daysBetween(today, due.on),
    lastCheck: { kept: check, judged },
  }
}
