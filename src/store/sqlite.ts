// The store in one SQLite file, for one machine. Every plan runs at once, without a pause in which anything else could run.
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Database, Statement } from 'better-sqlite3'
import { type CompiledQuery, DummyDriver, Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely'
import { Outage } from '../core/outage.ts'
import { type Migration, migratePlan } from './migrations/index.ts'
import type { Plan } from './plan.ts'
import { plannedStore } from './planned.ts'
import type { Tables } from './rows.ts'
import { assertSound, BUSY_MS, loadDriver, markOurs, openSqliteFile } from './sqlite-file.ts'
import { sqliteOutage } from './sqlite-outage.ts'
import type { Store } from './store.ts'

/** Only builds statements; they are run here. */
const build = new Kysely<Tables>({
  dialect: {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (db) => new SqliteIntrospector(db),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  },
})

// Lists come in few lengths, so there are few statements; should there be many, preparing them anew is no harm.
const MOST_PREPARED = 200

const askerOf = (db: Database) => {
  const prepared = new Map<string, Statement>()
  return ({ sql, parameters }: CompiledQuery): readonly unknown[] => {
    if (prepared.size > MOST_PREPARED) prepared.clear()
    const statement = prepared.get(sql) ?? db.prepare(sql)
    prepared.set(sql, statement)
    if (statement.reader) return statement.all(...parameters)
    statement.run(...parameters)
    return []
  }
}

const runPlan = <T>(plan: Plan<T>, ask: (query: CompiledQuery) => readonly unknown[]): T => {
  let step = plan.next([])
  while (!step.done) step = plan.next(ask(step.value))
  return step.value
}

const discard = (path: string): void => {
  try {
    for (const end of ['', '-wal', '-shm', '-journal']) rmSync(path + end, { force: true })
  } catch {
    // What kept it from being made may keep it from being removed; the first of the two is the one to tell.
  }
}

const backUp = async (db: Database, path: string): Promise<number> => {
  if (existsSync(path)) throw new Outage('not-offered', `${path} is there already: give the backup another name`)
  const Driver = await loadDriver()
  const unfinished = `${path}.unfinished`
  try {
    mkdirSync(dirname(path), { recursive: true })
    discard(unfinished)
    await db.backup(unfinished)
    const copy = new Driver(unfinished, { fileMustExist: true })
    try {
      assertSound(copy, path)
      // One file that can be carried away, without a log beside it.
      copy.pragma('journal_mode = DELETE')
      const last = copy.prepare('select coalesce(max(seq), 0) from entries').pluck().get() as number
      copy.close()
      renameSync(unfinished, path)
      return last
    } finally {
      copy.close()
    }
  } catch (error) {
    discard(unfinished)
    throw sqliteOutage(error)
  }
}

/** A store over an opened database; brings its schema up to date. */
export const sqliteStore = (db: Database, migrations?: readonly Migration[]): Store => {
  const ask = askerOf(db)
  const alone = db.transaction((work: () => unknown): unknown => work())
  const write = <T>(work: () => T): T => alone.immediate(work) as T
  // A thrown outage must reach the caller as a rejected promise, hence async.
  const asOutage = async <T>(work: () => T): Promise<T> => {
    try {
      return work()
    } catch (error) {
      throw sqliteOutage(error)
    }
  }
  try {
    write(() => {
      runPlan(migratePlan('sqlite', migrations), ask)
      markOurs(db)
    })
  } catch (error) {
    db.close()
    throw sqliteOutage(error)
  }
  return plannedStore({
    build,
    once: (plan) => asOutage(() => runPlan(plan(), ask)),
    write: (plan) => asOutage(() => write(() => runPlan(plan(), ask))),
    // The log still holds the pages as they were: it is folded in and emptied. Where another process holds it, the next time does it.
    erased: () => asOutage(() => void db.pragma('wal_checkpoint(TRUNCATE)')),
    backup: (path) => backUp(db, path),
    close: () => asOutage(() => void db.close()),
  })
}

export const openSqlite = async (path: string, busyMs: number = BUSY_MS): Promise<Store> =>
  sqliteStore(await openSqliteFile(path, busyMs))
