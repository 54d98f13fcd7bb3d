// Where every wrench of the shop stands today, kept at hand: lists and counts need no walk through ten thousand cards.
// It follows the record by its places, whoever adds to it, and is made anew on another day or where a gauge changed.
import { type Book, foldBook, wrenchOf } from '../register/book.ts'
import { asTheyHang, endOfMonth, type ListedRow } from '../register/fleet.ts'
import { foldTag } from '../register/parts.ts'
import { type Entry, tagOf } from '../register/records.ts'
import { statusOf, type Today } from '../register/status.ts'
import { hangs } from '../register/status-rules.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Filed } from '../store/store.ts'

export const shows = ['due', 'before', 'out', 'never'] as const
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
  readonly lists: Lists
}

const PAGE = 500

// What a list shows and no more: a row for each wrench stays in memory.
const listed = (book: Book, tag: string, now: Today): ListedRow | undefined => {
  const folder = wrenchOf(book, tag)
  if (!folder) return undefined
  const { status, reasons, due } = statusOf(book, folder, now)
  return { folder: { tag: folder.tag, card: folder.card }, status: { status, reasons, ...(due ? { due } : {}) } }
}

const isActive = ({ status }: ListedRow): boolean => hangs(status.status)

type Lists = Readonly<Record<Show, readonly ListedRow[]>>
type Order = (one: ListedRow, other: ListedRow) => number

const hanging: Order = (one, other) => asTheyHang(one.folder, other.folder)
const dueOn = ({ status }: ListedRow): string => status.due?.on ?? ''
const dueFirst: Order = (one, other) =>
  dueOn(one) < dueOn(other) ? -1 : dueOn(one) > dueOn(other) ? 1 : hanging(one, other)
const orders: Readonly<Record<Show, Order>> = { due: dueFirst, before: hanging, out: hanging, never: hanging }

const isIn: Readonly<Record<Show, (row: ListedRow, end: string) => boolean>> = {
  due: (row, end) => isActive(row) && row.status.due !== undefined && row.status.due.on <= end,
  before: ({ status }) => status.status === 'check-before-use',
  out: ({ status }) => status.status === 'out-of-limit',
  // Without a check there is no day on which the next is due.
  never: (row) => isActive(row) && row.status.due === undefined,
}

const eachList = (made: (show: Show) => readonly ListedRow[]): Lists => ({
  due: made('due'),
  before: made('before'),
  out: made('out'),
  never: made('never'),
})

const listsOf = (all: readonly ListedRow[], end: string): Lists =>
  eachList((show) => all.filter((row) => isIn[show](row, end)).sort(orders[show]))

/** The lists with some rows as they are now: sorting thousands anew after each check would be felt. */
const moved = (lists: Lists, tags: ReadonlySet<string>, rows: readonly ListedRow[], end: string): Lists =>
  eachList((show) => {
    const list = lists[show].filter(({ folder }) => !tags.has(foldTag(folder.tag)))
    for (const row of rows.filter((one) => isIn[show](one, end))) {
      const place = list.findIndex((one) => orders[show](row, one) < 0)
      list.splice(place === -1 ? list.length : place, 0, row)
    }
    return list
  })

export interface FleetIndexParts {
  readonly store: RegisterStore
  readonly today: () => Today
  /** Every gauge that stands. */
  readonly gauges: () => Promise<readonly Entry[]>
  /** The book of a wrench, with the gauges that checked it. */
  readonly bookOf: (tag: string) => Promise<Book>
}

/** The last place in the record; places have no gaps, so that it is found by halves. */
export const lastSeqOf = async (store: Pick<RegisterStore, 'since'>): Promise<number> => {
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

export const createFleetIndex = ({ store, today, gauges, bookOf }: FleetIndexParts): FleetIndex => {
  let standing: Standing | undefined

  const made = async (now: Today): Promise<Standing> => {
    // Before the cards are read: what is added meanwhile is followed later, if need be a second time.
    const seq = await lastSeqOf(store)
    const gaugeEntries = await gauges()
    const rows: ListedRow[] = []
    let after: string | undefined
    do {
      const page = await store.cards({ order: 'tag', kind: 'wrench', limit: PAGE, after, withRetired: true })
      const book = foldBook([...gaugeEntries, ...page.cards.flatMap(({ summary }) => summary as Entry[])])
      for (const { tag } of page.cards) {
        const row = listed(book, tag, now)
        if (row) rows.push(row)
      }
      after = page.next
    } while (after !== undefined)
    return { day: now.today, seq, lists: listsOf(rows, endOfMonth(now.today)) }
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
    const rows = await Promise.all([...tags].map(async (tag) => listed(await bookOf(tag), tag, now)))
    const known = rows.filter((row) => row !== undefined)
    return { day: standing.day, seq, lists: moved(standing.lists, tags, known, endOfMonth(now.today)) }
  }

  // One at a time: two that follow the record at once would both write down the same rows.
  let turn: Promise<unknown> = Promise.resolve()
  const current = (): Promise<Lists> => {
    const mine = turn.then(async () => {
      standing = await followed(today())
      return standing.lists
    })
    turn = mine.catch(() => undefined)
    return mine
  }

  return {
    counts: async () => {
      const { due, before, out, never } = await current()
      return { due: due.length, before: before.length, out: out.length, never: never.length }
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
