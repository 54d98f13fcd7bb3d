// How entries are read: one, those of a tag, those under a key, the next after a place.
import type { Kind } from '../register/records.ts'
import { folded, plain } from './order.ts'
import { type Build, firstOf, type Plan, rowsOf } from './plan.ts'
import { filedFrom } from './rows.ts'
import type { Filed } from './store.ts'

export function* historyPlan(db: Build, tag: string, kind?: Kind): Plan<Filed[]> {
  const all = db
    .selectFrom('filings')
    .innerJoin('entries', 'entries.seq', 'filings.seq')
    .select(['entries.seq', 'entries.entry'])
    .where('filings.tag', '=', folded(tag))
    .orderBy('filings.seq')
  return (yield* rowsOf(kind === undefined ? all : all.where('entries.kind', '=', kind))).map(filedFrom)
}

export function* entryPlan(db: Build, id: string): Plan<Filed | undefined> {
  const row = yield* firstOf(db.selectFrom('entries').select(['seq', 'entry']).where('id', '=', plain(id)))
  return row && filedFrom(row)
}

export function* knownPlan(db: Build, key: string): Plan<Filed[]> {
  const rows = yield* rowsOf(
    db.selectFrom('entries').select(['seq', 'entry']).where('key', '=', plain(key)).orderBy('seq'),
  )
  return rows.map(filedFrom)
}

export function* sincePlan(db: Build, seq: number, limit: number): Plan<Filed[]> {
  const rows = yield* rowsOf(
    db.selectFrom('entries').select(['seq', 'entry']).where('seq', '>', seq).orderBy('seq').limit(limit),
  )
  return rows.map(filedFrom)
}
