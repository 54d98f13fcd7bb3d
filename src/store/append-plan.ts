// How entries are added: known already? moved meanwhile? else entries, filings and cards in one go. Runs alone, under the lock
// of its database, so that what it read still holds when it writes.
import { assertExpected, filingsOf, type Placed } from './filing.ts'
import { knownOf } from './known.ts'
import { folded, plain } from './order.ts'
import { type Build, batches, firstOf, type Plan, parts, rowsOf, run } from './plan.ts'
import { cardRow, entryRow, filedFrom } from './rows.ts'
import type { Append, Appended, Card, CardName, Filed } from './store.ts'

const given = (texts: ReadonlyArray<string | undefined>): string[] => [
  ...new Set(texts.filter((text) => text !== undefined).map(plain)),
]

function* foundPlan(db: Build, { entries }: Append): Plan<Filed[]> {
  const found = new Map<number, Filed>()
  for (const column of ['key', 'id'] as const) {
    for (const list of parts(given(entries.map((entry) => entry[column])))) {
      const rows = yield* rowsOf(db.selectFrom('entries').select(['seq', 'entry']).where(column, 'in', list))
      for (const row of rows) found.set(row.seq, filedFrom(row))
    }
  }
  return [...found.values()].sort((one, other) => one.seq - other.seq)
}

/** What the entries supersede, and what that superseded, up to the beginning. */
function* placedPlan(db: Build, entries: Append['entries']): Plan<Map<string, Placed>> {
  const placed = new Map<string, Placed>()
  const own = new Set(entries.map(({ id }) => id))
  let ids = given(entries.map(({ supersedes }) => supersedes)).filter((id) => !own.has(id))
  while (ids.length > 0) {
    const above: string[] = []
    for (const list of parts(ids)) {
      const rows = yield* rowsOf(
        db
          .selectFrom('entries')
          .innerJoin('filings', 'filings.seq', 'entries.seq')
          .select(['entries.seq', 'entries.id', 'entries.supersedes', 'filings.tag'])
          .where('entries.id', 'in', list),
      )
      for (const { seq, id, supersedes, tag } of rows) {
        const tags = new Set([...(placed.get(id)?.tags ?? []), tag])
        placed.set(id, { seq, tags, supersedes: supersedes ?? undefined })
        if (supersedes !== null) above.push(supersedes)
      }
    }
    ids = given(above).filter((id) => !placed.has(id))
  }
  return placed
}

/** The last place under each tag; tags without entries are absent. */
export function* lastSeqsPlan(db: Build, tags: Iterable<string>): Plan<Map<string, number>> {
  const last = new Map<string, number>()
  for (const list of parts([...tags])) {
    const rows = yield* rowsOf(
      db
        .selectFrom('filings')
        .select((eb) => ['tag', eb.fn.max<number>('seq').as('seq')])
        .where('tag', 'in', list)
        .groupBy('tag'),
    )
    for (const { tag, seq } of rows) last.set(tag, Number(seq))
  }
  return last
}

export function* putCardsPlan(db: Build, cards: readonly Card[], seqOf: (tag: string) => number): Plan<void> {
  // A statement may not meet the same row twice: of two cards of one name the later stands.
  const rows = new Map(
    cards.map((card) => {
      const row = cardRow(card, seqOf(folded(card.tag)))
      return [`${row.kind} ${row.tag}`, row]
    }),
  )
  for (const batch of batches([...rows.values()])) {
    yield* run(
      db
        .insertInto('cards')
        .values(batch)
        .onConflict((on) =>
          on.columns(['kind', 'tag']).doUpdateSet((eb) => ({
            name: eb.ref('excluded.name'),
            tag_order: eb.ref('excluded.tag_order'),
            place_order: eb.ref('excluded.place_order'),
            due_order: eb.ref('excluded.due_order'),
            retired: eb.ref('excluded.retired'),
            seq: eb.ref('excluded.seq'),
            card: eb.ref('excluded.card'),
          })),
        ),
    )
  }
}

export function* dropCardPlan(db: Build, { kind, tag }: CardName): Plan<void> {
  yield* run(db.deleteFrom('cards').where('kind', '=', kind).where('tag', '=', folded(tag)))
}

export function* appendPlan(db: Build, wanted: Append): Plan<Appended> {
  const { entries, expects, asOf, cards, dropped = [] } = wanted
  const known = knownOf(entries, yield* foundPlan(db, wanted))
  if (known) return known

  const expected = new Map(expects.map(({ tag, seq }) => [folded(tag), seq]))
  const seqs = yield* lastSeqsPlan(db, expected.keys())
  const moved = expects.find(({ tag, seq }) => (seqs.get(folded(tag)) ?? 0) !== seq)
  if (moved) return { kind: 'moved', tag: moved.tag, seq: seqs.get(folded(moved.tag)) ?? 0 }

  const last = yield* firstOf(db.selectFrom('entries').select((eb) => eb.fn.max<number | null>('seq').as('seq')))
  const first = Number(last?.seq ?? 0) + 1
  if (asOf !== undefined && asOf !== first - 1) return { kind: 'moved', tag: expects[0]?.tag ?? '', seq: first - 1 }
  const { filings, touched } = filingsOf(entries, first, yield* placedPlan(db, entries))
  assertExpected(touched, expected)
  for (const batch of batches(entries.map((entry, n) => entryRow(entry, first + n)))) {
    yield* run(db.insertInto('entries').values(batch))
  }
  for (const batch of batches(filings)) yield* run(db.insertInto('filings').values(batch))
  for (const { tag, seq } of filings) seqs.set(tag, Math.max(seq, seqs.get(tag) ?? 0))
  yield* putCardsPlan(db, cards, (tag) => seqs.get(tag) ?? 0)
  for (const name of dropped) yield* dropCardPlan(db, name)
  return { kind: 'kept', seqs: entries.map((_, n) => first + n) }
}
