// The shop's register behind the desk: reading it, and keeping what is new. A duty: what is answered as kept is in the store.
// Takes the store's port, the clock and the ids; knows no door.
import { type Fault, fault } from '../core/fault.ts'
import { keepables } from '../keeping/index.ts'
import { admissionFaults, mayRecord } from '../register/admit.ts'
import { type Book, foldBook, gaugeOf, runOf, wrenchOf } from '../register/book.ts'
import { asTheyHang, type FleetRow } from '../register/fleet.ts'
import { foldTag } from '../register/parts.ts'
import { type By, type Draft, type Entry, entryFrom, isOf, type Kind, tagOf } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import { statusOf, type Today } from '../register/status.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Card, CardKind, Filed } from '../store/store.ts'
import { cardsOf, entriesIn } from './card-rows.ts'
import { createFleetIndex, type FleetIndex, lastSeqOf } from './fleet-index.ts'
import { type Intake, intakeOf } from './intake.ts'
import { readQuestion } from './read.ts'
import { createRuns, type Runs } from './runs.ts'

export { type CardKind, cardKinds } from '../store/store.ts'

export interface ShopParts {
  readonly store: RegisterStore
  /** An instant in UTC. */
  readonly now: () => Date
  readonly id: () => string
  /** IANA name; days are the shop's own. */
  readonly timeZone: string
}

/** Who writes, and the sender's own name for it: the same key a second time is the same entry. */
export interface Writer extends By {
  readonly key?: string | undefined
}

export type Keeping =
  | { readonly kind: 'kept'; readonly entry: Entry; readonly again: boolean }
  | { readonly kind: 'refused'; readonly faults: readonly Fault[]; readonly missing: readonly string[] }
  | { readonly kind: 'forbidden' }

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

export interface Shop {
  readonly keep: (kind: Kind, raw: unknown, who: Writer) => Promise<Keeping>
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
  /** Reads a sheet in, all of it or nothing; dry: only judges it. */
  /** Wrenches or gauges by any part of tag or name, the likeliest first. */
  readonly find: (kind: CardKind, text: string) => Promise<ReadonlyArray<Pick<Card, 'tag' | 'name'>>>
  readonly takeIn: (sheet: string, who: Writer, dryRun: boolean) => Promise<Intake>
  readonly since: RegisterStore['since']
  readonly today: () => Today
}

const MOST_GAUGES = 500
const PAGE = 500
const MOST_TRIES = 5
const MOST_FOUND = 25
const LONGEST_SOUGHT = 80

const draftOf = (kind: Kind, values: Readonly<Record<string, unknown>>, raw: unknown, who: Writer): Draft => {
  const { supersedes, why } = values as { supersedes?: string; why?: string }
  const body = keepables[kind].body(values, raw as Record<string, unknown>)
  return {
    kind,
    body,
    by: { role: who.role, door: who.door },
    ...(supersedes === undefined ? {} : { supersedes }),
    ...(why === undefined ? {} : { why }),
    ...(who.key === undefined ? {} : { key: who.key }),
  } as Draft
}

/** The tags that an entry names beside its own: the gauge of a check, the wrench of a run. */
export const namedIn = (draft: Pick<Draft, 'kind' | 'body'>): string[] => {
  const { gauge, wrench } = draft.body as { readonly gauge?: string; readonly wrench?: string }
  const named = draft.kind === 'check' ? gauge : draft.kind === 'run' ? wrench : undefined
  return named === undefined ? [] : [named]
}

const correctionIn = (raw: unknown): { readonly supersedes?: string } =>
  typeof raw === 'object' && raw !== null && 'supersedes' in raw ? { supersedes: String(raw.supersedes) } : {}

export const createShop = ({ store, now, id, timeZone }: ShopParts): Shop => {
  const days = new Intl.DateTimeFormat('sv-SE', { timeZone })
  const today = (): Today => ({ today: days.format(now()) })

  const historyOf = async (tags: readonly string[]): Promise<Filed[]> => {
    const unique = [...new Map(tags.map((tag) => [foldTag(tag), tag])).values()]
    const all = (await Promise.all(unique.map((tag) => store.history(tag)))).flat()
    const once = new Map(all.map((filed) => [filed.seq, filed]))
    return [...once.values()].sort((one, other) => one.seq - other.seq)
  }

  const gaugeTags = (entries: readonly Entry[]): string[] =>
    entries.flatMap((entry) => (isOf('check')(entry) && entry.body.gauge !== undefined ? [entry.body.gauge] : []))

  /** The tags that a draft touches: its own, those of what it supersedes; and those that it names besides. */
  const touched = async (draft: Draft): Promise<{ own: string[]; read: string[] }> => {
    const replaced = draft.supersedes === undefined ? undefined : await store.entry(draft.supersedes)
    const own = [tagOf(draft), replaced && tagOf(replaced.entry)].filter((tag) => tag !== undefined)
    return { own, read: [...own, ...namedIn(draft)] }
  }

  const lastSeq = (filed: readonly Filed[]): number => filed.at(-1)?.seq ?? 0

  const tryOnce = async (draft: Draft): Promise<Keeping | 'again'> => {
    const { own, read } = await touched(draft)
    const expects = await Promise.all(
      [...new Map(own.map((tag) => [foldTag(tag), tag])).values()].map(async (tag) => ({
        tag,
        seq: lastSeq(await store.history(tag)),
      })),
    )
    const found = await historyOf(read)
    const filed = await historyOf([...read, ...gaugeTags(found.map(({ entry }) => entry))])
    const book = foldBook(filed.map(({ entry }) => entry))
    if (draft.key !== undefined) {
      const [known] = await store.known(draft.key)
      if (known) return sameOr(known.entry, draft)
    }
    const faults = admissionFaults(book, draft, today().today)
    if (faults.length > 0) return { kind: 'refused', faults, missing: [] }
    const entry = entryFrom(draft, id(), now().toISOString())
    const after = foldBook([...filed.map((one) => one.entry), entry])
    const cards = own.flatMap((tag) => cardsOf(after, tag, today()))
    const dropped = own.flatMap((tag) => [
      ...(wrenchOf(book, tag) && !wrenchOf(after, tag) ? [{ kind: 'wrench' as const, tag }] : []),
      ...(gaugeOf(book, tag) && !gaugeOf(after, tag) ? [{ kind: 'gauge' as const, tag }] : []),
      ...(runOf(book, tag) && !runOf(after, tag) ? [{ kind: 'run' as const, tag }] : []),
    ])
    const appended = await store.append({ entries: [entry], expects, cards, dropped })
    if (appended.kind === 'kept') return { kind: 'kept', entry, again: false }
    if (appended.kind === 'known') return sameOr((appended.filed[0] as Filed).entry, draft)
    if (appended.kind === 'moved') return 'again'
    return { kind: 'refused', faults: [fault('key-taken', 'key', appended.value)], missing: [] }
  }

  // A sender who heard nothing sends again: the same content is the same entry, another one is a slip.
  const sameOr = (entry: Entry, draft: Draft): Keeping =>
    isSameDraft(entry, draft)
      ? { kind: 'kept', entry, again: true }
      : { kind: 'refused', faults: [fault('key-taken', 'key', draft.key ?? '')], missing: [] }

  const gauges = async (): Promise<Entry<'gauge'>[]> =>
    entriesIn(await store.cards({ order: 'tag', kind: 'gauge', limit: MOST_GAUGES })).filter(isOf('gauge'))

  const bookOf = async (tag: string): Promise<Book> => {
    const own = await store.history(tag)
    const filed = await historyOf([tag, ...gaugeTags(own.map(({ entry }) => entry))])
    return foldBook(filed.map(({ entry }) => entry))
  }

  // Folded once until something is kept: a question that chooses among all wrenches may be asked by anybody.
  let whole: { readonly seq: number; readonly book: Book } | undefined

  return {
    today,
    since: store.since,
    entry: async (entryId) => (await store.entry(entryId))?.entry,
    keep: async (kind, raw, who) => {
      // Before anything is read: whoever may not write learns nothing of what is there.
      if (!mayRecord({ by: who, kind, ...correctionIn(raw) })) return { kind: 'forbidden' }
      const reading = readQuestion(keepables[kind], raw)
      if (reading.faults.length > 0 || reading.missing.length > 0) {
        return { kind: 'refused', faults: reading.faults, missing: reading.missing }
      }
      const draft = draftOf(kind, reading.values, raw, who)
      for (let tries = 0; tries < MOST_TRIES; tries++) {
        const kept = await tryOnce(draft)
        if (kept !== 'again') return kept
      }
      return { kind: 'refused', faults: [fault('others-write', '', '')], missing: [] }
    },
    wrench: async (tag) => {
      const book = await bookOf(tag)
      const folder = wrenchOf(book, tag)
      return folder && { book, row: { folder, status: statusOf(book, folder, today()) } }
    },
    board: async (limit, after) => {
      const page = await store.cards({ order: 'place', kind: 'wrench', limit, after, withRetired: true })
      const entries = entriesIn(page)
      // Only the gauges that checked these: to find all of them would be a walk past every wrench.
      const named = (await historyOf(gaugeTags(entries))).map(({ entry }) => entry)
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
      return found
    },
    find: async (kind, text) =>
      text.trim() === ''
        ? (await store.cards({ order: 'tag', kind, limit: MOST_FOUND })).cards
        : store.find(text.trim().slice(0, LONGEST_SOUGHT), { kind, limit: MOST_FOUND }),
    takeIn: intakeOf({ store, now, id, timeZone }),
    lists: createFleetIndex({ store, today, gauges, bookOf }),
    gauges,
    runs: createRuns(store),
  }
}
