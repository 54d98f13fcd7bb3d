// The store in this process's memory: for trying out and for tests. It is gone when the process ends.
import { Outage } from '../core/outage.ts'
import type { Kind } from '../register/records.ts'
import { assertExpected, filingsOf, type Placed } from './filing.ts'
import { knownOf } from './known.ts'
import { byCodePoint, dueOrder, folded, orderOf, tagOrder } from './order.ts'
import { type Cursor, cursorOf, pageOf, soughtIn } from './paging.ts'
import { settingsNow } from './settings-now.ts'
import {
  type Append,
  type Appended,
  type CardName,
  type CardsWanted,
  type Filed,
  type FiledCard,
  type FoldCards,
  leaseHorizon,
  type OwnSetting,
  type Setting,
  type Store,
} from './store.ts'

interface Held {
  readonly entries: Filed[]
  readonly byId: Map<string, Filed>
  readonly byKey: Map<string, Filed[]>
  /** Places under each tag, in order. */
  readonly filings: Map<string, number[]>
  readonly cards: Map<string, FiledCard>
  readonly leases: Map<string, { readonly owner: string; readonly until: string }>
  readonly marks: Set<string>
  readonly settings: Setting[]
  readonly own: Map<string, OwnSetting & { readonly value: string }>
}

// What is kept is a copy, as it would be after a database: whoever changes an object afterwards changes nothing here.
const copied = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T

const nameOf = ({ kind, tag }: CardName): string => `${kind} ${folded(tag)}`

const placedIn = ({ byId, filings }: Held): Map<string, Placed> => {
  const tags = new Map<number, Set<string>>()
  for (const [tag, seqs] of filings) for (const seq of seqs) tags.set(seq, (tags.get(seq) ?? new Set()).add(tag))
  return new Map(
    [...byId].map(([id, { seq, entry }]) => [
      id,
      { seq, tags: tags.get(seq) ?? new Set(), supersedes: entry.supersedes },
    ]),
  )
}

const lastSeq = ({ filings }: Held, tag: string): number => filings.get(folded(tag))?.at(-1) ?? 0

const foundIn = ({ byId, byKey }: Held, { entries }: Append): Filed[] => {
  const found = entries.flatMap(({ id, key }) => [
    ...(key === undefined ? [] : (byKey.get(key) ?? [])),
    ...(byId.has(id) ? [byId.get(id) as Filed] : []),
  ])
  return [...new Set(found)].sort((one, other) => one.seq - other.seq)
}

const file = (held: Held, filed: Filed): void => {
  const { id, key } = filed.entry
  held.entries.push(filed)
  held.byId.set(id, filed)
  if (key !== undefined) held.byKey.set(key, [...(held.byKey.get(key) ?? []), filed])
}

const append = (held: Held, wanted: Append): Appended => {
  const { entries, expects, asOf, cards, dropped = [] } = wanted
  const known = knownOf(entries, foundIn(held, wanted))
  if (known) return copied(known)
  const moved = expects.find(({ tag, seq }) => lastSeq(held, tag) !== seq)
  if (moved) return { kind: 'moved', tag: moved.tag, seq: lastSeq(held, moved.tag) }

  if (new Set(entries.map(({ id }) => id)).size < entries.length) throw new Error('bug: two entries have one id')
  const first = held.entries.length + 1
  if (asOf !== undefined && asOf !== first - 1) return { kind: 'moved', tag: expects[0]?.tag ?? '', seq: first - 1 }
  const corrects = entries.some(({ supersedes }) => supersedes !== undefined)
  const { filings, touched } = filingsOf(entries, first, corrects ? placedIn(held) : new Map())
  assertExpected(touched, new Map(expects.map(({ tag, seq }) => [folded(tag), seq])))
  const kept = copied(entries)
  const standing = copied(cards)

  for (const [n, entry] of kept.entries()) file(held, { seq: first + n, entry })
  for (const { tag, seq } of filings) {
    const seqs = held.filings.get(tag) ?? []
    held.filings.set(
      tag,
      [...seqs, seq].sort((one, other) => one - other),
    )
  }
  for (const card of standing) held.cards.set(nameOf(card), { ...card, seq: lastSeq(held, card.tag) })
  for (const name of dropped) held.cards.delete(nameOf(name))
  return { kind: 'kept', seqs: kept.map((_, n) => first + n) }
}

const historyOf = (held: Held, tag: string, kind?: Kind): Filed[] =>
  (held.filings.get(folded(tag)) ?? [])
    .map((seq) => held.entries[seq - 1] as Filed)
    .filter(({ entry }) => kind === undefined || entry.kind === kind)

const inLine = ({ cards }: Held, { kind, withRetired }: Pick<CardsWanted, 'kind' | 'withRetired'>): FiledCard[] =>
  [...cards.values()].filter((card) => (kind === undefined || card.kind === kind) && (withRetired || !card.retired))

const compare = (one: Cursor, other: Cursor): number =>
  byCodePoint(one[0], other[0]) || byCodePoint(one[1], other[1]) || byCodePoint(one[2], other[2])

const sorted = (cards: readonly FiledCard[], cursor: (card: FiledCard) => Cursor): FiledCard[] =>
  [...cards].sort((one, other) => compare(cursor(one), cursor(other)))

const cardsOf = (held: Held, wanted: CardsWanted) => {
  const { order, limit, after, dueBy } = wanted
  const cursor = (card: FiledCard): Cursor => [orderOf[order](card), tagOrder(card.tag), card.kind]
  const from = after === undefined ? undefined : cursorOf(after)
  const start: Cursor | undefined = from && (order === 'tag' ? ['', from[1], from[2]] : from)
  const cards = inLine(held, wanted)
    .filter((card) => dueBy === undefined || byCodePoint(orderOf.due(card), dueOrder(dueBy)) <= 0)
    .filter((card) => start === undefined || compare(cursor(card), start) > 0)
  return pageOf(sorted(cards, cursor).slice(0, limit + 1), order, limit)
}

const findIn = (held: Held, text: string, wanted: Parameters<Store['find']>[1]): FiledCard[] => {
  const sought = soughtIn(text)
  if (sought === undefined) return []
  const having = inLine(held, wanted).filter(({ tag, name }) => [tag, name].some((one) => folded(one).includes(sought)))
  const rank = ({ tag, name }: FiledCard): string =>
    folded(tag).startsWith(sought) ? '0' : folded(name).startsWith(sought) ? '1' : '2'
  return sorted(having, (card) => [rank(card), tagOrder(card.tag), card.kind]).slice(0, wanted.limit)
}

const rebuild = (held: Held, fold: FoldCards): number => {
  const made = [...held.filings.keys()].flatMap((tag) =>
    fold(tag, copied(historyOf(held, tag))).map((card) => {
      if (folded(card.tag) !== tag) throw new Error(`bug: the fold of ${tag} made another's card`)
      return { ...copied(card), seq: lastSeq(held, tag) }
    }),
  )
  held.cards.clear()
  for (const card of made) held.cards.set(nameOf(card), card)
  return made.length
}

const lease = ({ leases }: Held, { name, owner, now, until }: Parameters<Store['lease']>[0]): boolean => {
  const there = leases.get(name)
  if (there && there.until > now && there.until <= leaseHorizon(now) && there.owner !== owner) return false
  leases.set(name, { owner, until })
  return true
}

const markedBefore = ({ marks }: Held, job: string, key: string): string | undefined =>
  [...marks]
    .map((one) => JSON.parse(one) as [string, string])
    .flatMap(([its, at]) => (its === job && at < key ? [at] : []))
    .sort()
    .at(-1)

const ownIn = (
  { own }: Held,
  doing: <T>(work: () => T) => Promise<T>,
): Pick<Store, 'own' | 'setOwn' | 'usedOwn' | 'forgetOwn' | 'forgetIdle'> => {
  const keysOf = (owner: string): string[] => [...own].filter(([, one]) => one.owner === owner).map(([key]) => key)
  const forget = (owner: string): number => keysOf(owner).filter((key) => own.delete(key)).length
  return {
    own: (owner) =>
      doing(() => Object.fromEntries(keysOf(owner).map((key) => [own.get(key)?.name, own.get(key)?.value]))),
    setOwn: ({ value, ...one }) =>
      doing(() => {
        const key = JSON.stringify([one.owner, one.name])
        if (value === null) own.delete(key)
        else own.set(key, { ...one, value })
      }),
    usedOwn: (owner, at) =>
      doing(() => {
        for (const key of keysOf(owner)) {
          const one = own.get(key)
          if (one) own.set(key, { ...one, at })
        }
      }),
    forgetOwn: (owner) => doing(() => forget(owner)),
    forgetIdle: (before) =>
      doing(() => {
        const used = new Set([...own.values()].filter(({ at }) => at >= before).map(({ owner }) => owner))
        const idle = new Set([...own.values()].map(({ owner }) => owner).filter((owner) => !used.has(owner)))
        for (const owner of idle) forget(owner)
        return idle.size
      }),
  }
}

export const memoryStore = (): Store => {
  const held: Held = {
    entries: [],
    byId: new Map(),
    byKey: new Map(),
    filings: new Map(),
    cards: new Map(),
    leases: new Map(),
    marks: new Set(),
    settings: [],
    own: new Map(),
  }
  let open = true
  const doing = async <T>(work: () => T): Promise<T> => {
    if (!open) throw new Outage('closed', 'the store is closed')
    return work()
  }
  const giving = <T>(work: () => T): Promise<T> => doing(() => copied({ given: work() }).given)
  const settingsOf = (scope: string): Setting[] => held.settings.filter((one) => one.scope === scope)
  return {
    append: (wanted) => doing(() => append(held, wanted)),
    history: (tag: string, kind?: Kind) => giving(() => historyOf(held, tag, kind)) as never,
    entry: (id) => giving(() => held.byId.get(id)),
    known: (key) => giving(() => held.byKey.get(key) ?? []),
    since: (seq, limit) => giving(() => held.entries.slice(seq, seq + limit)),
    card: (name) => giving(() => held.cards.get(nameOf(name))),
    cards: (wanted) => giving(() => cardsOf(held, wanted)),
    find: (text, wanted) => giving(() => findIn(held, text, wanted)),
    rebuild: (fold) => doing(() => rebuild(held, fold)),
    lease: (wanted) => doing(() => lease(held, wanted)),
    mark: (job, key) =>
      doing(() => {
        const one = JSON.stringify([job, key])
        return !held.marks.has(one) && held.marks.add(one) !== undefined
      }),
    marked: (job, key) => doing(() => held.marks.has(JSON.stringify([job, key]))),
    markedBefore: (job, key) => doing(() => markedBefore(held, job, key)),
    settings: (scope) => doing(() => settingsNow(settingsOf(scope))),
    set: (setting) => doing(() => void held.settings.push(copied(setting))),
    settingsHistory: (scope) => giving(() => settingsOf(scope)),
    ...ownIn(held, doing),
    check: () => doing(() => undefined),
    backup: () =>
      doing(() => {
        throw new Outage('not-offered', 'a store in memory is not backed up: set DATABASE_URL to a file')
      }),
    close: () =>
      doing(() => {
        open = false
      }),
  }
}
