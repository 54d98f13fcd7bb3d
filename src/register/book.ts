// THE BOOK: the record folded into what stands now. Entries come in the order in which they were added; nothing is lost:
// what was superseded or withdrawn stays with the entry that did so, and what fits nowhere is listed with the reason.
import { foldTag } from './parts.ts'
import { type Entry, isOf, type Kind, kindNames, tagOf } from './records.ts'
import { type RunFolder, runFolders } from './run-folders.ts'

/** An entry that stands, with what it replaced. */
export interface Kept<K extends Kind = Kind> {
  readonly entry: Entry<K>
  /** Its place in the record; a correction keeps the place of what it corrects. */
  readonly order: number
  /** What it replaced, oldest first; why is told by the entry after it. */
  readonly earlier: readonly Entry[]
}

/** A chain that was taken back: the last entry is the withdrawal, which says why. */
export interface Withdrawn {
  readonly by: Entry<'withdrawal'>
  readonly earlier: readonly Entry[]
}

/** All that is known of one wrench; lists newest first. */
export interface WrenchFolder {
  readonly tag: string
  readonly card: Kept<'wrench'>
  readonly checks: ReadonlyArray<Kept<'check'>>
  readonly events: ReadonlyArray<Kept<'event'>>
  readonly uses: ReadonlyArray<Kept<'uses'>>
  readonly withdrawn: readonly Withdrawn[]
}

/** Why an entry stands nowhere. The record refuses these at the door; a file from elsewhere may hold them. */
export const strayReasons = [
  'same-id',
  'supersedes-unknown',
  'superseded-already',
  'supersedes-other-kind',
  'tag-changed',
  'tag-taken',
  'no-such-wrench',
  'no-such-run',
  'no-such-condition',
  'finished-already',
] as const
export type StrayReason = (typeof strayReasons)[number]

export interface Stray {
  readonly entry: Entry
  readonly reason: StrayReason
}

export interface Book {
  /** By folded tag. */
  readonly wrenches: ReadonlyMap<string, WrenchFolder>
  readonly gauges: ReadonlyMap<string, Kept<'gauge'>>
  readonly runs: ReadonlyMap<string, RunFolder>
  readonly strays: readonly Stray[]
  /** Everything that stands, by the id of its entry; and the ids of what no longer does. */
  readonly standing: ReadonlyMap<string, Kept>
  readonly past: ReadonlySet<string>
}

interface Chain {
  readonly order: number
  readonly entries: readonly Entry[]
}

const last = (chain: Chain): Entry => chain.entries[chain.entries.length - 1] as Entry

const clash = (entry: Entry, replaced: Entry): StrayReason | undefined => {
  if (entry.kind === 'withdrawal') return undefined
  if (entry.kind !== replaced.kind) return 'supersedes-other-kind'
  const isCard = entry.kind === 'wrench' || entry.kind === 'gauge' || entry.kind === 'run'
  return isCard && foldTag(tagOf(entry) ?? '') !== foldTag(tagOf(replaced) ?? '') ? 'tag-changed' : undefined
}

const chainsOf = (entries: readonly Entry[]): { chains: readonly Chain[]; strays: readonly Stray[] } => {
  const seen = new Set<string>()
  const byEnd = new Map<string, Chain>()
  const strays: Stray[] = []
  const step = (entry: Entry, order: number): Chain | StrayReason => {
    if (seen.has(entry.id)) return 'same-id'
    if (entry.supersedes === undefined) {
      return entry.kind === 'withdrawal' ? 'supersedes-unknown' : { order, entries: [entry] }
    }
    const chain = byEnd.get(entry.supersedes)
    if (!chain) return seen.has(entry.supersedes) ? 'superseded-already' : 'supersedes-unknown'
    if (last(chain).kind === 'withdrawal') return 'superseded-already'
    return clash(entry, last(chain)) ?? { order: chain.order, entries: [...chain.entries, entry] }
  }
  entries.forEach((entry, order) => {
    const next = step(entry, order)
    if (typeof next === 'string') {
      strays.push({ entry, reason: next })
      return
    }
    seen.add(entry.id)
    if (entry.supersedes !== undefined) byEnd.delete(entry.supersedes)
    byEnd.set(entry.id, next)
  })
  return { chains: [...byEnd.values()].sort((one, other) => one.order - other.order), strays }
}

const keptOf = <K extends Kind>(chains: readonly Chain[], kind: K): Array<Kept<K>> =>
  chains.flatMap((chain): Array<Kept<K>> => {
    const entry = last(chain)
    return isOf(kind)(entry)
      ? [{ entry: entry as unknown as Entry<K>, order: chain.order, earlier: chain.entries.slice(0, -1) }]
      : []
  })

/** Later day first; on one day what was recorded later first. */
export const newestFirst = (
  one: { readonly entry: { readonly body: { readonly date: string } }; readonly order: number },
  other: { readonly entry: { readonly body: { readonly date: string } }; readonly order: number },
): number => {
  const [day, otherDay] = [one.entry.body.date, other.entry.body.date]
  if (day !== otherDay) return day < otherDay ? 1 : -1
  return other.order - one.order
}

/** The first card of a tag holds it; a second that does not replace the first is a stray. */
const byTag = <K extends 'wrench' | 'gauge'>(cards: ReadonlyArray<Kept<K>>, strays: Stray[]): Map<string, Kept<K>> => {
  const held = new Map<string, Kept<K>>()
  for (const card of cards) {
    const tag = foldTag(card.entry.body.tag)
    if (held.has(tag)) strays.push({ entry: card.entry as Entry, reason: 'tag-taken' })
    else held.set(tag, card)
  }
  return held
}

const grouped = <T>(all: readonly T[], tag: (one: T) => string): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>()
  for (const one of all) {
    const key = foldTag(tag(one))
    const group = groups.get(key)
    if (group) group.push(one)
    else groups.set(key, [one])
  }
  return groups
}

const withdrawnOf = (chains: readonly Chain[]): Withdrawn[] =>
  chains.flatMap((chain) => {
    const by = last(chain)
    return isOf('withdrawal')(by) ? [{ by, earlier: chain.entries.slice(0, -1) }] : []
  })

/** Folds the record into the book. The same record gives the same book, whoever folds it. */
export const foldBook = (entries: readonly Entry[]): Book => {
  const { chains, strays: found } = chainsOf(entries)
  const strays = [...found]
  const cards = byTag(keptOf(chains, 'wrench'), strays)
  const gauges = byTag(keptOf(chains, 'gauge'), strays)
  const runs = runFolders(
    {
      openings: keptOf(chains, 'run'),
      readings: keptOf(chains, 'run-reading'),
      finishes: keptOf(chains, 'run-finish'),
    },
    strays,
  )
  const checks = grouped(keptOf(chains, 'check').sort(newestFirst), ({ entry }) => entry.body.wrench)
  const events = grouped(keptOf(chains, 'event').sort(newestFirst), ({ entry }) => entry.body.wrench)
  const uses = grouped(keptOf(chains, 'uses').sort(newestFirst), ({ entry }) => entry.body.wrench)
  const withdrawn = grouped(withdrawnOf(chains), ({ earlier }) => tagOf(earlier.at(-1) as Entry) ?? '')
  for (const group of [checks, events, uses]) {
    for (const [tag, kept] of group) {
      if (!cards.has(tag)) strays.push(...kept.map(({ entry }): Stray => ({ entry, reason: 'no-such-wrench' })))
    }
  }
  const wrenches = new Map(
    [...cards].map(([tag, card]): [string, WrenchFolder] => [
      tag,
      {
        tag: card.entry.body.tag,
        card,
        checks: checks.get(tag) ?? [],
        events: events.get(tag) ?? [],
        uses: uses.get(tag) ?? [],
        withdrawn: withdrawn.get(tag) ?? [],
      },
    ]),
  )
  const kept = kindNames.filter((kind) => kind !== 'withdrawal').flatMap((kind): Kept[] => keptOf(chains, kind))
  const stray = new Set(strays.map(({ entry }) => entry))
  const standing = new Map(kept.filter(({ entry }) => !stray.has(entry)).map((one) => [one.entry.id, one]))
  const past = new Set(entries.map(({ id }) => id).filter((id) => !standing.has(id)))
  return { wrenches, gauges, runs, strays, standing, past }
}

export const wrenchOf = (book: Book, tag: string): WrenchFolder | undefined => book.wrenches.get(foldTag(tag))
export const runOf = (book: Pick<Book, 'runs'>, tag: string): RunFolder | undefined => book.runs.get(foldTag(tag))
export const gaugeOf = (book: Book, tag: string | undefined): Kept<'gauge'> | undefined =>
  tag === undefined ? undefined : book.gauges.get(foldTag(tag))
