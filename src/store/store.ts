// THE PORT: what the register asks of its store, in the shop's words. Entries are only ever added; what is kept is never changed.
// A store that cannot do what it is asked throws an Outage and has then written nothing of it, or all of it (see append).
import type { By, Entry, Kind } from '../register/records.ts'

/** An entry with its place in the record; places are 1, 2, 3 … without a gap, in the order in which they were kept. */
export interface Filed<K extends Kind = Kind> {
  readonly seq: number
  readonly entry: Entry<K>
}

/** The last place under a tag that the caller knew of when it decided; 0 if there was none. */
export interface Expected {
  readonly tag: string
  readonly seq: number
}

export const cardKinds = ['wrench', 'gauge', 'run'] as const
export type CardKind = (typeof cardKinds)[number]

export interface CardName {
  readonly kind: CardKind
  readonly tag: string
}

/**
 * What stands of one wrench, gauge or bench run, folded from its entries by the register: for lists, without reading a history.
 * Its status is not in it, as that follows from the day on which it is looked at.
 */
export interface Card extends CardName {
  readonly name: string
  readonly place?: string | undefined
  /** The day on which it is due. */
  readonly due?: string | undefined
  readonly retired: boolean
  /** Whatever else the register wants to know at a glance: anything that JSON can tell. */
  readonly summary: unknown
}

export interface FiledCard extends Card {
  /** The last place under its tag when it was folded. */
  readonly seq: number
}

export interface Append {
  readonly entries: readonly Entry[]
  /** Every tag that the entries belong to, and those of the entries that they supersede. */
  readonly expects: readonly Expected[]
  /** The last place in the whole record that was looked at, where the decision hangs on all of it. */
  readonly asOf?: number | undefined
  /** The cards as they are with these entries. */
  readonly cards: readonly Card[]
  /** Cards that are no more. */
  readonly dropped?: readonly CardName[] | undefined
}

export type Appended =
  | { readonly kind: 'kept'; readonly seqs: readonly number[] }
  /** Somebody else added to this tag meanwhile, or to the record as a whole where that was looked at; nothing was written. Read again, decide again, append again. */
  | { readonly kind: 'moved'; readonly tag: string; readonly seq: number }
  /** All of this was kept before under the same keys or ids; nothing was written, and this is what was kept. */
  | { readonly kind: 'known'; readonly filed: readonly Filed[] }
  /** A key or id was used before for something else; nothing was written. */
  | { readonly kind: 'clash'; readonly by: 'key' | 'id'; readonly value: string }

export const cardOrders = ['place', 'tag', 'due'] as const
export type CardOrder = (typeof cardOrders)[number]

export interface CardsWanted {
  readonly order: CardOrder
  readonly limit: number
  /** Where an earlier page ended, as that page told. Any text is a place in the order. */
  readonly after?: string | undefined
  /** Only what is due on this day or before. */
  readonly dueBy?: string | undefined
  readonly kind?: CardKind | undefined
  /** Retired ones are left out unless asked for. */
  readonly withRetired?: boolean | undefined
}

export interface CardPage {
  readonly cards: readonly FiledCard[]
  /** Absent on the last page. */
  readonly next?: string | undefined
}

export interface FindWanted {
  readonly limit: number
  readonly kind?: CardKind | undefined
  readonly withRetired?: boolean | undefined
}

export interface LeaseWanted {
  readonly name: string
  readonly owner: string
  /** Instants in UTC as ISO 8601 writes them, all with the same number of decimals. */
  readonly now: string
  readonly until: string
}

/** No lease ends later than this after it is taken. */
const LONGEST_LEASE_MS = 86_400_000

/** The instant after which a lease cannot end, unless the clock of whoever took it was ahead. */
export const leaseHorizon = (now: string): string => new Date(Date.parse(now) + LONGEST_LEASE_MS).toISOString()

export interface Setting {
  readonly scope: string
  readonly name: string
  /** Null takes the setting away. */
  readonly value: string | null
  readonly at: string
  readonly by: By
}

/** What somebody keeps for themselves; of a text only what a column can hold. Null takes it away. */
export interface OwnSetting {
  readonly owner: string
  readonly name: string
  readonly value: string | null
  readonly at: string
}

/** All cards of a tag, from its whole history; none where nothing stands any more. */
export type FoldCards = (tag: string, history: readonly Filed[]) => readonly Card[]

export interface Store {
  /**
   * Adds all entries and cards, or nothing. The keys and ids of the entries make it safe to repeat: after an outage, when it is
   * not known whether it was kept, append the same again and get `kept` or `known`.
   */
  append(wanted: Append): Promise<Appended>
  /** All entries of a tag in order, superseded ones too, with those that a correction moved here from another tag or away. */
  history(tag: string): Promise<readonly Filed[]>
  history<K extends Kind>(tag: string, kind: K): Promise<ReadonlyArray<Filed<K>>>
  entry(id: string): Promise<Filed | undefined>
  /** The entries that were kept under a key, in order. */
  known(key: string): Promise<readonly Filed[]>
  /** The next entries after a place, at most so many. */
  since(seq: number, limit: number): Promise<readonly Filed[]>
  card(wanted: CardName): Promise<FiledCard | undefined>
  cards(wanted: CardsWanted): Promise<CardPage>
  /** By any part of tag or name, however typed; tags that begin so come first, then names, then the rest. */
  find(text: string, wanted: FindWanted): Promise<readonly FiledCard[]>
  /** Folds all cards anew from the entries, a few tags at a time; gives the number of cards. */
  rebuild(fold: FoldCards): Promise<number>
  /** Takes or prolongs a lease; false while another owner has it, unless it ends so late that a wrong clock must have made it. */
  lease(wanted: LeaseWanted): Promise<boolean>
  /** Marks a job as done under a key; true for the one who was first. */
  mark(job: string, key: string, at: string): Promise<boolean>
  marked(job: string, key: string): Promise<boolean>
  /** The greatest key below this one under which a job was marked. */
  markedBefore(job: string, key: string): Promise<string | undefined>
  /** What is set in a scope now. */
  settings(scope: string): Promise<Readonly<Record<string, string>>>
  set(setting: Setting): Promise<void>
  /** Every setting of a scope that ever was, in order. */
  settingsHistory(scope: string): Promise<readonly Setting[]>
  /** What somebody keeps for themselves now; there is no history of it. */
  own(owner: string): Promise<Readonly<Record<string, string>>>
  setOwn(setting: OwnSetting): Promise<void>
  /** Notes that an owner's settings were used, so that they are not let go. */
  usedOwn(owner: string, at: string): Promise<void>
  /** Erases all that an owner keeps; gives how much it was. */
  forgetOwn(owner: string): Promise<number>
  /** Erases what no owner has set or used since an instant; gives the number of owners. */
  forgetIdle(before: string): Promise<number>
  /** Throws unless it can be read and written now. */
  check(): Promise<void>
  /** Writes a verified copy to a path; gives the last place in it. */
  backup(path: string): Promise<number>
  close(): Promise<void>
}
