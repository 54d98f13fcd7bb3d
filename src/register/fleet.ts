// The shop's wrenches at a glance: each with its status, in the order in which they hang, and what needs doing.
import { addMonths, daysBetween } from '../mechanics/check-due.ts'
import type { Book, WrenchFolder } from './book.ts'
import { statusOf, type Today, type WrenchStatus } from './status.ts'
import { hangs, type Status, statuses } from './status-rules.ts'

export interface FleetRow {
  readonly folder: WrenchFolder
  readonly status: WrenchStatus
}

/** What a list shows of a wrench. */
export interface ListedRow {
  readonly folder: Pick<WrenchFolder, 'tag' | 'card'>
  readonly status: Pick<WrenchStatus, 'status' | 'reasons' | 'due'>
}

export interface Fleet {
  /** As they hang: by place, then by tag; those without a place last. */
  readonly rows: readonly FleetRow[]
  /** How many there are of each status; every status is there. */
  readonly counts: Readonly<Record<Status, number>>
  /** Due by the end of this month, or already; the earliest first. Retired and set-aside wrenches are left out. */
  readonly dueThisMonth: readonly FleetRow[]
  readonly outOfLimit: readonly FleetRow[]
  readonly checkBeforeUse: readonly FleetRow[]
  readonly neverChecked: readonly FleetRow[]
  readonly setAside: readonly FleetRow[]
}

// One order wherever it runs: W-2 hangs before W-10.
const natural = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

export const asTheyHang = (one: ListedRow['folder'], other: ListedRow['folder']): number => {
  const [place, otherPlace] = [one.card.entry.body.place, other.card.entry.body.place]
  if (place !== undefined && otherPlace === undefined) return -1
  if (place === undefined && otherPlace !== undefined) return 1
  return natural.compare(place ?? '', otherPlace ?? '') || natural.compare(one.tag, other.tag)
}

/** The last day of the month of a day. */
export const endOfMonth = (day: string): string => {
  const nextFirst = addMonths(`${day.slice(0, 7)}-01`, 1)
  const first = `${day.slice(0, 7)}-01`
  return `${day.slice(0, 7)}-${String(daysBetween(first, nextFirst)).padStart(2, '0')}`
}

export const fleetOf = (book: Book, now: Today): Fleet => {
  const rows = [...book.wrenches.values()]
    .sort(asTheyHang)
    .map((folder): FleetRow => ({ folder, status: statusOf(book, folder, now) }))
  const having = (wanted: Status): FleetRow[] => rows.filter(({ status }) => status.status === wanted)
  const active = rows.filter(({ status }) => hangs(status.status))
  const end = endOfMonth(now.today)
  const dueOn = ({ status }: FleetRow): string => status.due?.on ?? ''
  return {
    rows,
    counts: Object.fromEntries(statuses.map((status) => [status, having(status).length])) as Record<Status, number>,
    dueThisMonth: active
      .filter(({ status }) => status.due !== undefined && status.due.on <= end)
      .sort((one, other) => (dueOn(one) < dueOn(other) ? -1 : dueOn(one) > dueOn(other) ? 1 : 0)),
    outOfLimit: having('out-of-limit'),
    checkBeforeUse: having('check-before-use'),
    neverChecked: active.filter(({ status }) => status.lastCheck === undefined),
    setAside: having('set-aside'),
  }
}
