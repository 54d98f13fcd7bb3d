// What a shop wants to hear once a week: which wrenches must not be used, which are overdue, which are due soon; which bench runs
// are to be measured again. Pure: from the shop as it stands on a day. What needs nothing is left out; each wrench is told once, where it weighs most.
import type { Book } from './book.ts'
import { asTheyHang } from './fleet.ts'
import type { RunFolder } from './run-folders.ts'
import { statusOf, type Today } from './status.ts'
import type { Status } from './status-rules.ts'

export const digestParts = ['out-of-limit', 'check-before-use', 'overdue', 'soon', 'set-aside', 'again'] as const
export type DigestPart = (typeof digestParts)[number]

export interface DigestLine {
  readonly tag: string
  readonly name: string
  readonly place?: string | undefined
  /** Since when, or when it is due. */
  readonly date: string
}

export type Digest = Readonly<Record<DigestPart, readonly DigestLine[]>>

/** How far ahead the digest looks. */
export const SOON_DAYS = 14

const partOf = (status: Status, due: string | undefined, until: string): DigestPart | undefined => {
  if (status === 'out-of-limit' || status === 'check-before-use' || status === 'set-aside') return status
  if (status === 'check-due') return 'overdue'
  return status === 'in-service' && due !== undefined && due <= until ? 'soon' : undefined
}

/** The last day that the digest looks at. */
export const horizonOf = ({ today }: Pick<Today, 'today'>): string =>
  new Date(Date.parse(`${today}T00:00:00Z`) + SOON_DAYS * 86_400_000).toISOString().slice(0, 10)

const againOf = (runs: readonly RunFolder[], until: string): DigestLine[] =>
  runs.flatMap(({ opening, again }) => {
    const next = again.find(({ isDone }) => !isDone)
    const { tag, asked } = opening.entry.body
    return next && next.due <= until ? [{ tag, name: asked, date: next.due }] : []
  })

/** `runs`: those that may be due to be measured again. */
export const digestOf = (book: Book, now: Today, runs: readonly RunFolder[] = []): Digest => {
  const until = horizonOf(now)
  const told = [...book.wrenches.values()].sort(asTheyHang).flatMap((folder) => {
    const { status, reasons, due } = statusOf(book, folder, now)
    const part = partOf(status, due?.on, until)
    if (!part) return []
    const { tag, name, place } = folder.card.entry.body
    const date = part === 'soon' ? (due?.on ?? reasons[0].date) : reasons[0].date
    return [{ part, line: { tag, name, date, ...(place === undefined ? {} : { place }) } }]
  })
  const of = (part: DigestPart): readonly DigestLine[] =>
    part === 'again' ? againOf(runs, until) : told.filter((one) => one.part === part).map(({ line }) => line)
  return Object.fromEntries(digestParts.map((part) => [part, of(part)])) as Digest
}

export const isQuiet = (digest: Digest): boolean => digestParts.every((part) => digest[part].length === 0)
