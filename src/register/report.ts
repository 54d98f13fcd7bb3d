// The data of a check report: the check as it was entered, how it was judged and by what, and what follows. No sentences.
// It is the shop's own check, not an accredited calibration; the words say so.
import { type Book, gaugeOf, type Kept, type WrenchFolder, wrenchOf } from './book.ts'
import { windowAt } from './limit.ts'
import type { GaugeCard, WrenchCard } from './records.ts'
import { statusOf, type Today, type WrenchStatus } from './status.ts'
import { type JudgedCheck, judge } from './verdict.ts'

export interface CheckReport {
  readonly check: Kept<'check'>
  readonly wrench: WrenchCard
  readonly gauge?: GaugeCard
  readonly judged: JudgedCheck
  /** For each point the references [N·m] that lie within the limit. */
  readonly windows: ReadonlyArray<{ readonly setting: number; readonly low: number; readonly high: number }>
  /** The other check of the same day: what was found, beside what was left. */
  readonly companion?: { readonly check: Kept<'check'>; readonly judged: JudgedCheck }
  /** The wrench as it stands today. */
  readonly status: WrenchStatus
  /** Whether a later check has taken this one's place as the last. */
  readonly isLatest: boolean
}

const companionOf = (book: Book, folder: WrenchFolder, { entry }: Kept<'check'>): CheckReport['companion'] => {
  const other = folder.checks.find(
    (one) => one.entry.body.date === entry.body.date && one.entry.body.state !== entry.body.state,
  )
  if (!other) return undefined
  const { body } = other.entry
  return { check: other, judged: judge(body, folder.card.entry.body, gaugeOf(book, body.gauge)?.entry.body) }
}

/** The report of a check by its wrench and the id of its entry; undefined where the book has no such check. */
export const checkReport = (book: Book, tag: string, id: string, now: Today): CheckReport | undefined => {
  const folder = wrenchOf(book, tag)
  const check = folder?.checks.find(({ entry }) => entry.id === id)
  if (!folder || !check) return undefined
  const wrench = folder.card.entry.body
  const gauge = gaugeOf(book, check.entry.body.gauge)?.entry.body
  const judged = judge(check.entry.body, wrench, gauge)
  const companion = companionOf(book, folder, check)
  const status = statusOf(book, folder, now)
  return {
    check,
    wrench,
    ...(gauge ? { gauge } : {}),
    judged,
    windows: judged.points.map(({ setting }) => ({ setting, ...windowAt(judged.limit, setting) })),
    ...(companion ? { companion } : {}),
    status,
    isLatest: status.lastCheck?.kept.entry.id === id,
  }
}
