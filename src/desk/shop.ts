// The shop's register behind the desk, read as it stands; what is new is kept by keep-entry.ts, sheets are read in by intake.ts.
// Takes the store's port, the clock and the ids; knows no door.
import { type Book, foldBook, wrenchOf } from '../register/book.ts'
import { asTheyHang, type FleetRow } from '../register/fleet.ts'
import { type Entry, isOf } from '../register/records.ts'
import { statusOf, type Today } from '../register/status.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Card, CardKind } from '../store/store.ts'
import { entriesIn } from './card-rows.ts'
import { createFleetIndex, type FleetIndex, lastSeqOf } from './fleet-index.ts'
import { gaugeTags, historyOf } from './histories.ts'
import { type Intake, intakeOf } from './intake.ts'
import { createKeeper, type Keeper, type Writer } from './keep-entry.ts'
import { presentCards } from './present-rows.ts'
import { createRuns, type Runs } from './runs.ts'
import { shopDay } from './shop-day.ts'

export { type CardKind, cardKinds } from '../store/store.ts'
export type { Judging, Keeping, Writer } from './keep-entry.ts'

export interface ShopParts {
  readonly store: RegisterStore
  /** An instant in UTC. */
  readonly now: () => Date
  readonly id: () => string
  /** IANA name; days are the shop's own. */
  readonly timeZone: string
}

export interface DueWrench {
  readonly tag: string
  readonly name: string
  readonly due: string
  readonly place?: string | undefined
}

export interface BoardPage {
  readonly rows: readonly FleetRow[]
  readonly next?: string | undefined
}

export interface Shop extends Keeper {
  /** All that is known of a wrench, with the gauges that checked it; undefined where there is none of this tag. */
  readonly wrench: (tag: string) => Promise<{ readonly book: Book; readonly row: FleetRow } | undefined>
  readonly board: (limit: number, after?: string) => Promise<BoardPage>
  /** The wrenches that have a day on which they are due, the earliest first; retired ones left out. */
  readonly due: () => Promise<readonly DueWrench[]>
  /** One entry by its id, superseded or not. */
  readonly entry: (id: string) => Promise<Entry | undefined>
  /** What needs doing: lists and counts of every wrench by where it stands today. */
  readonly lists: FleetIndex
  readonly gauges: () => Promise<readonly Entry<'gauge'>[]>
  /** The bench runs. */
  readonly runs: Runs
  /** Every wrench that is not retired, as it stands: for choosing among them. */
  readonly fleet: () => Promise<Book>
  /** Wrenches or gauges by any part of tag or name, the likeliest first. */
  readonly find: (kind: CardKind, text: string) => Promise<ReadonlyArray<Pick<Card, 'tag' | 'name'>>>
  /** Reads a sheet in, all of it or nothing; dry: only judges it. */
  readonly takeIn: (sheet: string, who: Writer, dryRun: boolean) => Promise<Intake>
  readonly since: RegisterStore['since']
  readonly today: () => Today
}

const MOST_GAUGES = 500
const PAGE = 500
const MOST_FOUND = 25
const MOST_SOUGHT = 200
const LONGEST_SOUGHT = 80

export const createShop = ({ store: kept, now, id, timeZone }: ShopParts): Shop => {
  const dayOf = shopDay(timeZone)
  const dayOfInstant = (instant: string): string => dayOf(new Date(instant))
  const today = (): Today => ({ today: dayOf(now()), dayOf: dayOfInstant })
  const store: RegisterStore = { ...kept, cards: presentCards(kept, today) }

  const gauges = async (): Promise<Entry<'gauge'>[]> =>
    entriesIn(await store.cards({ order: 'tag', kind: 'gauge', limit: MOST_GAUGES })).filter(isOf('gauge'))

  const bookOf = async (tag: string): Promise<Book> => {
    const own = await store.history(tag)
    const filed = await historyOf(store, [tag, ...gaugeTags(own.map(({ entry }) => entry))])
    return foldBook(filed.map(({ entry }) => entry))
  }

  // Folded once until something is kept: a question that chooses among all wrenches may be asked by anybody.
  let whole: { readonly seq: number; readonly book: Book } | undefined

  return {
    today,
    since: store.since,
    entry: async (entryId) => (await store.entry(entryId))?.entry,
    ...createKeeper({ store, now, id, today }),
    wrench: async (tag) => {
      const book = await bookOf(tag)
      const folder = wrenchOf(book, tag)
      return folder && { book, row: { folder, status: statusOf(book, folder, today()) } }
    },
    board: async (limit, after) => {
      const page = await store.cards({ order: 'place', kind: 'wrench', limit, after, withRetired: true })
      const entries = entriesIn(page)
      // Only the gauges that checked these: to find all of them would be a walk past every wrench.
      const named = (await historyOf(store, gaugeTags(entries))).map(({ entry }) => entry)
      const book = foldBook([...named.filter(({ kind }) => kind === 'gauge' || kind === 'withdrawal'), ...entries])
      const rows = [...book.wrenches.values()]
        .sort(asTheyHang)
        .map((folder) => ({ folder, status: statusOf(book, folder, today()) }))
      return { rows, ...(page.next === undefined ? {} : { next: page.next }) }
    },
    fleet: async () => {
      if (whole && (await store.since(whole.seq, 1)).length === 0) return whole.book
      // Before the cards are read: what is kept meanwhile makes it be read again.
      const seq = await lastSeqOf(store)
      const found: Entry[] = [...(await gauges())]
      let after: string | undefined
      do {
        const page = await store.cards({ order: 'tag', kind: 'wrench', limit: PAGE, after })
        found.push(...entriesIn(page))
        after = page.next
      } while (after !== undefined)
      whole = { seq, book: foldBook(found) }
      return whole.book
    },
    due: async () => {
      const found: DueWrench[] = []
      let after: string | undefined
      do {
        const page = await store.cards({ order: 'due', kind: 'wrench', limit: PAGE, after })
        for (const { tag, name, due, place } of page.cards) {
          if (due !== undefined) found.push({ tag, name, due, ...(place === undefined ? {} : { place }) })
        }
        after = page.next
      } while (after !== undefined)
      return found.sort((one, other) => (one.due < other.due ? -1 : one.due > other.due ? 1 : 0))
    },
    find: async (kind, text) => {
      const sought = text.trim().slice(0, LONGEST_SOUGHT)
      if (sought === '') return (await store.cards({ order: 'tag', kind, limit: MOST_FOUND })).cards
      const whole = await store.find(sought, { kind, limit: MOST_FOUND })
      const words = sought.toLowerCase().split(/\s+/)
      if (whole.length > 0 || words.length === 1) return whole
      // `oil M12` finds what has both words, wherever they stand: the longest is the rarest.
      const [longest = ''] = [...words].sort((one, other) => other.length - one.length)
      const some = await store.find(longest, { kind, limit: MOST_SOUGHT })
      return some
        .filter(({ tag, name }) => words.every((word) => `${tag} ${name}`.toLowerCase().includes(word)))
        .slice(0, MOST_FOUND)
    },
    takeIn: intakeOf({ store, now, id, timeZone }),
    lists: createFleetIndex({ store, today, gauges, bookOf }),
    gauges,
    runs: createRuns(store),
  }
}
