// When a wrench is due for its next check. Days are ISO 8601 dates (2026-03-01), read as they stand; no clock in here.
//
// Statement  Due at the earliest of: last check + 12 months; the day on which 5000 uses are reached; the day of an event that
//            voids the check (drop, overload, repair, change of the tool, months left wound up).
// Symbols    days as ISO dates; uses counted since the last check up to a day.
// Source     ISO 6789-1:2017 (12 months or 5000 uses, and after overload, repair or mishandling; from memory). Wound up: common
//            practice, no source. The shop's own interval wins.
// Holds      An event on the day of the check counts as after it, unless both give the time: the safe side.
// Example    Checked 2026-01-31, no events: due 2027-01-31; one month after it instead: 2026-02-28.

/** Events that a check does not outlive. */
export const voidingEvents = ['dropped', 'overloaded', 'repaired', 'modified', 'wound-up'] as const
export type VoidingEvent = (typeof voidingEvents)[number]

export interface WrenchEvent {
  readonly kind: string
  /** When it happened; for a span, when it ended. ISO date, or date and time. */
  readonly at: string
}

export interface CheckInterval {
  readonly months: number
  readonly uses: number
}

export const usualInterval: CheckInterval = { months: 12, uses: 5000 }

export interface Wear {
  readonly lastCheck: string
  readonly interval?: Partial<CheckInterval>
  /** Uses since the last check, and the day up to which they were counted. */
  readonly uses?: number
  readonly countedOn?: string
  readonly events?: readonly WrenchEvent[]
}

export type DueReason =
  | { readonly why: 'months' | 'uses' | 'uses-foreseen' }
  | { readonly why: 'event'; readonly event: VoidingEvent }

export interface Due {
  /** ISO date from which the wrench is due. */
  readonly on: string
  readonly reason: DueReason
}

const DAY = 86_400_000

// Read as UTC whatever the shop's zone: only differences and order of days matter.
const instant = (iso: string): number => Date.parse(iso.length === 10 ? `${iso}T00:00:00Z` : iso)
const dayOf = (iso: string): string => iso.slice(0, 10)
const isoDay = (ms: number): string => new Date(ms).toISOString().slice(0, 10)

/** A day so many months later; the 31st becomes the month's last day. */
export const addMonths = (iso: string, months: number): string => {
  const [year, month, day] = dayOf(iso).split('-').map(Number) as [number, number, number]
  const lastOfMonth = new Date(Date.UTC(year, month + months, 0)).getUTCDate()
  return isoDay(Date.UTC(year, month - 1 + months, Math.min(day, lastOfMonth)))
}

/** Whole days from one day to another; negative where the other is the earlier. */
export const daysBetween = (from: string, to: string): number => (instant(dayOf(to)) - instant(dayOf(from))) / DAY

const isVoiding = (kind: string): kind is VoidingEvent => (voidingEvents as readonly string[]).includes(kind)

// With times on both sides the order is known; with a bare date on either, the same day counts as after the check.
const since = (at: string, check: string): boolean =>
  at.length > 10 && check.length > 10 ? instant(at) > instant(check) : dayOf(at) >= dayOf(check)

const byUses = ({ lastCheck, uses, countedOn }: Wear, allowed: number): Due | undefined => {
  if (uses === undefined) return undefined
  const counted = countedOn ?? lastCheck
  if (uses >= allowed) return { on: dayOf(counted), reason: { why: 'uses' } }
  const days = daysBetween(lastCheck, counted)
  if (uses === 0 || days <= 0) return undefined
  // Same pace as until now; rounded down, so that the check comes before the uses run out.
  const on = instant(dayOf(lastCheck)) + Math.floor((allowed / uses) * days) * DAY
  return { on: isoDay(Math.min(on, instant('9999-12-31'))), reason: { why: 'uses-foreseen' } }
}

/** The earliest reason for the next check; months win a tie against uses, an event against both. */
export const nextCheck = (wear: Wear): Due => {
  const { months, uses } = { ...usualInterval, ...wear.interval }
  const events = (wear.events ?? []).flatMap(({ kind, at }): Due[] =>
    isVoiding(kind) && since(at, wear.lastCheck) ? [{ on: dayOf(at), reason: { why: 'event', event: kind } }] : [],
  )
  const worn = byUses(wear, uses)
  const candidates: Due[] = [
    ...events,
    { on: addMonths(wear.lastCheck, months), reason: { why: 'months' } },
    ...(worn ? [worn] : []),
  ]
  return candidates.reduce((first, other) => (other.on < first.on ? other : first))
}

/** Whether it is due on a day. */
export const isDue = ({ on }: Due, today: string): boolean => dayOf(today) >= on
