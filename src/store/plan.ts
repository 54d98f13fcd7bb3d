// A plan: what is asked of a database, one query after another, written once for both. It yields queries and is handed their
// rows; who runs it decides how: SQLite at once and without a pause, PostgreSQL with a wait for each.
import type { Compilable, CompiledQuery, Kysely } from 'kysely'
import type { Tables } from './rows.ts'

export type Build = Kysely<Tables>
export type Plan<T> = Generator<CompiledQuery, T, readonly unknown[]>

export function* rowsOf<R>(query: Compilable<R>): Plan<readonly R[]> {
  return (yield query.compile()) as readonly R[]
}

export function* firstOf<R>(query: Compilable<R>): Plan<R | undefined> {
  return (yield* rowsOf(query))[0]
}

export function* run(query: Compilable<unknown>): Plan<void> {
  yield query.compile()
}

const MOST_IN_LIST = 256

/**
 * A list in parts for `in (…)`, each filled up to a power of two with its last value, so that there are few different
 * statements to prepare.
 */
export const parts = <T>(list: readonly T[]): readonly T[][] => {
  const all: T[][] = []
  for (let at = 0; at < list.length; at += MOST_IN_LIST) {
    const part = list.slice(at, at + MOST_IN_LIST)
    const size = 2 ** Math.ceil(Math.log2(part.length))
    all.push([...part, ...Array<T>(size - part.length).fill(part.at(-1) as T)])
  }
  return all
}

const MOST_ROWS = 200

/** Rows in parts for `insert … values`: the number of parameters of a statement is bounded. */
export const batches = <T>(rows: readonly T[]): readonly T[][] =>
  Array.from({ length: Math.ceil(rows.length / MOST_ROWS) }, (_, n) => rows.slice(n * MOST_ROWS, (n + 1) * MOST_ROWS))
