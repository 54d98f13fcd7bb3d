// The store on a PostgreSQL server, for several processes or machines. Appends run one after another under one lock: what a plan
// read still holds when it writes, and places become visible in their order, so that `since` misses none.
import {
  CompiledQuery,
  DummyDriver,
  Kysely,
  PostgresAdapter,
  PostgresIntrospector,
  PostgresQueryCompiler,
} from 'kysely'
import type pg from 'pg'
import { Outage } from '../core/outage.ts'
import { type Migration, migratePlan } from './migrations/index.ts'
import type { Plan } from './plan.ts'
import { plannedStore } from './planned.ts'
import { postgresOutage } from './postgres-outage.ts'
import { openForMigrating, openPool, SCHEMA } from './postgres-pool.ts'
import type { Tables } from './rows.ts'
import type { Store } from './store.ts'

/** Only builds statements; they are run here. */
const build = new Kysely<Tables>({
  dialect: {
    createAdapter: () => new PostgresAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (db) => new PostgresIntrospector(db),
    createQueryCompiler: () => new PostgresQueryCompiler(),
  },
})

/** "ARML"; the second number tells what is locked. */
const lock = (of: 'writing' | 'migrating'): CompiledQuery =>
  CompiledQuery.raw(`select pg_advisory_xact_lock(${0x41_52_4d_4c}, ${of === 'writing' ? 1 : 2})`)

type Asker = Pick<pg.ClientBase, 'query'>

const ask = async (asker: Asker, { sql, parameters }: CompiledQuery): Promise<readonly unknown[]> =>
  (await asker.query(sql, [...parameters])).rows

const runPlan = async <T>(plan: Plan<T>, asker: Asker): Promise<T> => {
  let step = plan.next([])
  while (!step.done) step = plan.next(await ask(asker, step.value))
  return step.value
}

/** Rolls nothing back: where it throws, the connection is closed, which does the same, and does not wait for a lost server. */
const inTransaction = async <T>(client: pg.ClientBase, plan: () => Plan<T>, first: CompiledQuery): Promise<T> => {
  await client.query('begin isolation level read committed')
  await ask(client, first)
  const made = await runPlan(plan(), client)
  await client.query('commit')
  return made
}

const write = async <T>(pool: pg.Pool, plan: () => Plan<T>): Promise<T> => {
  const client = await pool.connect()
  // A connection that breaks between two statements says so here; the next statement then fails.
  const ignore = (): void => undefined
  client.on('error', ignore)
  let closed = true
  try {
    const made = await inTransaction(client, plan, lock('writing'))
    closed = false
    return made
  } finally {
    client.release(closed)
    if (!closed) client.off('error', ignore)
  }
}

const migrate = async (url: string, migrations: readonly Migration[] | undefined): Promise<void> => {
  const client = openForMigrating(url)
  try {
    await client.connect()
    await inTransaction(
      client,
      function* () {
        yield CompiledQuery.raw(`create schema if not exists ${SCHEMA}`)
        yield CompiledQuery.raw(`set local search_path = ${SCHEMA}`)
        yield* migratePlan('postgres', migrations)
      },
      lock('migrating'),
    )
  } catch (error) {
    throw postgresOutage(error)
  } finally {
    await client.end().catch(() => undefined)
  }
}

const asOutage = async <T>(work: Promise<T>): Promise<T> => {
  try {
    return await work
  } catch (error) {
    throw postgresOutage(error)
  }
}

export interface PostgresOptions {
  /** Told of connections that broke while nobody used them. */
  readonly lost?: (error: Error) => void
  readonly migrations?: readonly Migration[]
}

export const openPostgres = async (
  url: string,
  { lost = () => undefined, migrations }: PostgresOptions = {},
): Promise<Store> => {
  await migrate(url, migrations)
  const pool = openPool(url, lost)
  return plannedStore({
    build,
    once: (plan) => asOutage(runPlan(plan(), pool)),
    write: (plan) => asOutage(write(pool, plan)),
    backup: async () => {
      throw new Outage('not-offered', 'a PostgreSQL store is backed up by its own tools: run pg_dump')
    },
    close: () => asOutage(pool.end()),
  })
}
