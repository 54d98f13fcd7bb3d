// Where every wrench of the shop stands today, kept at hand: lists and counts need no walk through ten thousand cards.
// It follows the record by its places, whoever adds to it, and is made anew on another day or where a gauge changed.
import { type Book, foldBook, wrenchOf } from '../register/book.ts'
import { asTheyHang, endOfMonth, type ListedRow } from '../register/fleet.ts'
import { foldTag } from '../register/parts.ts'
import { type Entry, tagOf } from '../register/records.ts'
import { statusOf, type Today } from '../register/status.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Filed } from '../store/store.ts'

export const shows = ['due', 'out', 'never'] as const
export type Show = (typeof shows)[number]

export interface ListPage {
  readonly rows: readonly ListedRow[]
  readonly next?: string | undefined
}

export interface FleetIndex {
  readonly list: (show: Show, limit: number, after?: string) => Promise<ListPage>
  readonly counts: () => Promise<Readonly<Record<Show, number>>>
}

interface Standing {
  readonly day: string
  readonly seq: number
  readonly rows: Map<string, ListedRow>
  lists?: Readonly<Record<Show, readonly ListedRow[]>> | undefined
}

const PAGE = 500

// What a list shows and no more: a row for each wrench stays in memory.
const listed = (book: Book, tag: string, now: Today): ListedRow | undefined => {
  const folder = wrenchOf(book, tag)
  if (!folder) return undefined
  const { status, reasons, due } = statusOf(book, folder, now)
  return { folder: { tag: folder.tag, card: folder.card }, status: { status, reasons, ...(due ? { due } : {}) } }
}

const isActive = ({ status }: ListedRow): boolean => status.status !== 'retired' && status.status !== 'set-aside'

const listsOf = (all: readonly ListedRow[], end: string): Record<Show, readonly ListedRow[]> => {
  // Sorting costs most, and most wrenches are in no list.
  const hanging = (isIn: (row: ListedRow) => boolean): ListedRow[] =>
    all.filter(isIn).sort((one, other) => asTheyHang(one.folder, other.folder))
  const dueOn = ({ status }: ListedRow): string => status.due?.on ?? ''
  return {
    due: hanging((row) => isActive(row) && dueOn(row) !== '' && dueOn(row) <= end).sort((one, other) =>
      dueOn(one) < dueOn(other) ? -1 : dueOn(one) > dueOn(other) ? 1 : 0,
    ),
    out: hanging(({ status }) => status.status === 'out-of-limit'),
    // Without a check there is no day on which the next is due.
    never: hanging((row) => isActive(row) && row.status.due === undefined),
  }
}

export interface FleetIndexParts {
  readonly store: RegisterStore
  readonly today: () => Today
  /** Every gauge that stands. */
  readonly gauges: () => Promise<readonly Entry[]>
  /** The book of a wrench, with the gauges that checked it. */
  readonly bookOf: (tag: string) => Promise<Book>
}

export const createFleetIndex = ({ store, today, gauges, bookOf }: FleetIndexParts): FleetIndex => {
  let standing: Standing | undefined

  /** The last place in the record; they have no gaps, so that it is found by halves. */
  const lastSeq = async (): Promise<number> => {
    const isAfter = async (seq: number): Promise<boolean> => (await store.since(seq, 1)).length > 0
    let [low, high] = [0, 1]
    while (await isAfter(high)) [low, high] = [high, high * 2]
    while (low < high) {
      const middle = Math.floor((low + high) / 2)
      if (await isAfter(middle)) low = middle + 1
      else high = middle
    }
    return low
  }

  const made = async (now: Today): Promise<Standing> => {
    // Before the cards are read: what is added meanwhile is followed later, if need be a second time.
    const seq = await lastSeq()
    const gaugeEntries = await gauges()
    const rows = new Map<string, ListedRow>()
    let after: string | undefined
    do {
      const page = await store.cards({ order: 'tag', kind: 'wrench', limit: PAGE, after, withRetired: true })
      const book = foldBook([...gaugeEntries, ...page.cards.flatMap(({ summary }) => summary as Entry[])])
      for (const { tag } of page.cards) {
        const row = listed(book, tag, now)
        if (row) rows.set(foldTag(tag), row)
      }
      after = page.next
    } while (after !== undefined)
    return { day: now.today, seq, rows }
  }

  /** The tags that new entries touch; undefined where a gauge is among them, by which any wrench may be judged. */
  const touchedBy = async (filed: readonly Filed[]): Promise<ReadonlySet<string> | undefined> => {
    const tags = new Set<string>()
    for (const { entry } of filed) {
      const meant = entry.kind === 'withdrawal' ? (await store.entry(entry.supersedes ?? ''))?.entry : entry
      if (meant?.kind === 'gauge') return undefined
      const tag = meant && tagOf(meant)
      if (tag !== undefined) tags.add(foldTag(tag))
    }
    return tags
  }

  const followed = async (now: Today): Promise<Standing> => {
    if (standing?.day !== now.today) return made(now)
    const filed = await store.since(standing.seq, PAGE)
    if (filed.length === 0) return standing
    const tags = filed.length < PAGE ? await touchedBy(filed) : undefined
    if (tags === undefined) return made(now)
    const seq = (filed.at(-1) as Filed).seq
    for (const tag of tags) {
      const row = listed(await bookOf(tag), tag, now)
      if (row) standing.rows.set(tag, row)
      else standing.rows.delete(tag)
    }
    return { day: standing.day, seq, rows: standing.rows }
  }

  // One at a time: two that follow the record at once would both write down the same rows.
  let turn: Promise<unknown> = Promise.resolve()
  const current = (): Promise<Readonly<Record<Show, readonly ListedRow[]>>> => {
    const mine = turn.then(async () => {
      const now = today()
      standing = await followed(now)
      standing.lists ??= listsOf([...standing.rows.values()], endOfMonth(now.today))
      return standing.lists
    })
    turn = mine.catch(() => undefined)
    return mine
  }

  return {
    counts: async () => {
      const { due, out, never } = await current()
      return { due: due.length, out: out.length, never: never.length }
    },
    list: async (show, limit, after) => {
      const rows = (await current())[show]
      const from = after === undefined ? 0 : rows.findIndex(({ folder }) => foldTag(folder.tag) === foldTag(after)) + 1
      const page = rows.slice(from, from + limit)
      const last = page.at(-1)
      return { rows: page, ...(last && from + limit < rows.length ? { next: last.folder.tag } : {}) }
    },
  }
}
