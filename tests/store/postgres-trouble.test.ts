// PostgreSQL when the world fails it: stopped, crashed, silent, locked, read-only; and several processes at once. Each is one
// clear outage within a few seconds, nothing is lost or doubled, and the store goes on by itself when the server is back.
import pg from 'pg'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import type { Outage } from '../../src/core/outage.ts'
import { migrations } from '../../src/store/migrations/index.ts'
import { openStore } from '../../src/store/open.ts'
import { openPostgres } from '../../src/store/postgres.ts'
import type { Store } from '../../src/store/store.ts'
import { startAppending } from '../support/append-process.ts'
import { appendTo, card, checkEntry, wrenchEntry } from '../support/entries.ts'
import { type Cluster, hasPostgres, mustHavePostgres, startCluster } from '../support/postgres.ts'

it('PostgreSQL is there where it must be', () => {
  expect(hasPostgres || !mustHavePostgres).toBe(true)
})

describe.runIf(hasPostgres)('the store on PostgreSQL', () => {
  let cluster: Cluster
  const opened: Store[] = []
  const raws: pg.Client[] = []
  beforeAll(async () => {
    cluster = await startCluster()
  }, 60_000)
  afterEach(async () => {
    await Promise.all(raws.splice(0).map((client) => client.end().catch(() => undefined)))
    await Promise.all(opened.splice(0).map((store) => store.close().catch(() => undefined)))
  })
  afterAll(() => cluster.remove())

  const open = async (url: string): Promise<Store> => {
    const store = await openStore(url)
    opened.push(store)
    return store
  }
  const rawly = async (url: string): Promise<pg.Client> => {
    const client = new pg.Client({ connectionString: url })
    client.on('error', () => undefined)
    await client.connect()
    raws.push(client)
    return client
  }
  const idsIn = async (store: Store): Promise<string[]> => (await store.since(0, 100_000)).map(({ entry }) => entry.id)

  const outageOf = async (doing: () => Promise<unknown>, withinMs: number): Promise<Outage> => {
    const before = performance.now()
    const told = await doing().then(
      () => undefined,
      (error: unknown) => error as Outage,
    )
    expect(told).toMatchObject({ name: 'Outage' })
    expect(performance.now() - before).toBeLessThan(withinMs)
    return told as Outage
  }
  const untilWorks = async <T>(doing: () => Promise<T>): Promise<T> => {
    for (let left = 20; ; left--) {
      try {
        return await doing()
      } catch (error) {
        if (left === 0 || (error as Error).name !== 'Outage') throw error
        await new Promise((resolve) => setTimeout(resolve, 100))
      }
    }
  }

  it.each(['orderly', 'crash'] as const)(
    'stopped (%s) it says so; started again it goes on by itself',
    async (how) => {
      const store = await open(await cluster.database())
      await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
      await cluster.stop(how)
      try {
        expect((await outageOf(() => store.check(), 3000)).code).toBe('unreachable')
        expect((await outageOf(() => store.history('W-1'), 3000)).code).toBe('unreachable')
        const lost = () => appendTo(store, 'W-1', [checkEntry('lost', 'W-1', 99)])
        expect((await outageOf(lost, 3000)).code).toBe('unreachable')
      } finally {
        await cluster.start()
      }
      await untilWorks(() => store.check())
      await appendTo(store, 'W-1', [checkEntry('c', 'W-1', 99)])
      expect(await idsIn(store)).toEqual(['w', 'c'])
    },
    60_000,
  )

  it('silent, as behind a cut cable, it says so within 2 to 3 seconds, and goes on when it answers', async () => {
    const store = await open(await cluster.database())
    await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
    const thaw = cluster.freeze()
    try {
      expect((await outageOf(() => store.history('W-1'), 3000)).code).toBe('unreachable')
      const wanted = { entries: [checkEntry('x', 'W-1', 99)], expects: [{ tag: 'W-1', seq: 1 }], cards: [] }
      expect((await outageOf(() => store.append(wanted), 3000)).code).toBe('unreachable')
    } finally {
      thaw()
    }
    await untilWorks(() => store.check())
    // Whether the silent one kept it nobody was told: asked again it is there once.
    await appendTo(store, 'W-1', [checkEntry('x', 'W-1', 99)])
    expect(await idsIn(store)).toEqual(['w', 'x'])
  }, 60_000)

  it('that is not there cannot be opened, and says so at once', async () => {
    expect((await outageOf(() => openStore('postgres://shop@127.0.0.1:1/shop'), 3000)).code).toBe('unreachable')
  })

  it('without the database, or without being let in, it says that it is refused', async () => {
    const url = await cluster.database()
    expect((await outageOf(() => openStore(url.replace(/\/\w+$/, '/nowhere')), 3000)).code).toBe('refused')
    expect((await outageOf(() => openStore(url.replace('armlength@', 'stranger@')), 3000)).code).toBe('refused')
  })

  it('a connection that is cut while nobody uses it is told of, and is no harm', async () => {
    const url = await cluster.database()
    const lost: Error[] = []
    const store = await openPostgres(url, { lost: (error) => lost.push(error) })
    opened.push(store)
    await store.check()
    const raw = await rawly(url)
    await raw.query(
      "select pg_terminate_backend(pid) from pg_stat_activity where application_name = 'armlength' and datname = current_database()",
    )
    await expect.poll(() => lost.length, { timeout: 5000 }).toBeGreaterThan(0)
    await store.check()
  })

  it('locked by another, it says so; reading goes on; afterwards writing too', async () => {
    const url = await cluster.database()
    const store = await open(url)
    await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
    const raw = await rawly(url)
    await raw.query('begin; select pg_advisory_xact_lock(1095912780, 1)')
    expect((await outageOf(() => store.check(), 3000)).code).toBe('locked')
    expect(await idsIn(store)).toEqual(['w'])
    await raw.query('rollback')
    await store.check()
  })

  it('that may only be read says so', async () => {
    const url = await cluster.database()
    await open(url)
    const raw = await rawly(url)
    await raw.query(`alter database ${new URL(url).pathname.slice(1)} set default_transaction_read_only = on`)
    const other = await openPostgres(url).catch((error: unknown) => error as Outage)
    expect(other).toMatchObject({ name: 'Outage', code: 'read-only' })
  })

  it.each([
    ["update armlength.entries set kind = 'x'", 'entries are only ever added'],
    ['delete from armlength.entries', 'entries are only ever added'],
    ['truncate armlength.entries cascade', 'only ever added'],
    ["insert into armlength.entries values (1, 'x', '', 'check', null, null, '{}')", 'duplicate key'],
    ["insert into armlength.entries values (2, 'w', '', 'check', null, null, '{}')", 'duplicate key'],
    ["insert into armlength.entries values (0, 'x', '', 'check', null, null, '{}')", 'check constraint'],
    ["insert into armlength.entries values (2, 'x', '', 'check', null, null, 'no json')", 'invalid input syntax'],
    ["insert into armlength.entries values (2, 'x', '', 'check', 'nobody', null, '{}')", 'foreign key'],
    ["update armlength.filings set tag = 'w-2'", 'filings are only ever added'],
    ['delete from armlength.filings', 'filings are only ever added'],
    ['delete from armlength.marks', 'marks are only ever added'],
    ["update armlength.settings set value = 'x'", 'settings are only ever added'],
  ])('refuses from any other door: %s', async (sql, says) => {
    const url = await cluster.database()
    const store = await open(url)
    await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
    const raw = await rawly(url)
    await expect(raw.query(sql)).rejects.toThrow(says)
    expect(await idsIn(store)).toEqual(['w'])
  })

  it('leaves what else is in the database alone', async () => {
    const url = await cluster.database()
    const raw = await rawly(url)
    await raw.query('create table entries (theirs integer); insert into entries values (1)')
    await appendTo(await open(url), 'W-1', [wrenchEntry('w', 'W-1')])
    expect((await raw.query('select * from public.entries')).rows).toEqual([{ theirs: 1 }])
  })

  it('from before the bench runs takes cards of runs once it is brought up to date', async () => {
    const url = await cluster.database()
    const older = await openPostgres(url, { migrations: migrations.slice(0, 2) })
    const run = {
      entries: [wrenchEntry('r', 'B-1')],
      expects: [{ tag: 'B-1', seq: 0 }],
      cards: [card('B-1', { kind: 'run' })],
    }
    await expect(older.append(run)).rejects.toThrow()
    await older.close()
    expect((await (await open(url)).append(run)).kind).toBe('kept')
  })

  it('with the schema of a newer program is refused; two that open it at once make it once', async () => {
    const url = await cluster.database()
    await Promise.all([open(url), open(url), open(url)])
    const later = {
      number: migrations.length + 1,
      brings: 'more',
      sqlite: [],
      postgres: ['create table more (a integer)'],
    }
    opened.push(await openPostgres(url, { migrations: [...migrations, later] }))
    expect((await outageOf(() => openStore(url), 3000)).code).toBe('too-new')
  })

  it('is as it was where a migration fails half-way', async () => {
    const url = await cluster.database()
    await open(url)
    const failing = {
      number: migrations.length + 1,
      brings: 'more',
      sqlite: [],
      postgres: ['create table more (a integer)', 'nonsense'],
    }
    await expect(openPostgres(url, { migrations: [...migrations, failing] })).rejects.toThrow('nonsense')
    await (await open(url)).check()
    const raw = await rawly(url)
    expect((await raw.query("select to_regclass('armlength.more') as more")).rows).toEqual([{ more: null }])
  })

  it('is backed up by its own tools, and says so', async () => {
    const store = await open(await cluster.database())
    const told = await outageOf(() => store.backup('copy.db'), 1000)
    expect(told).toMatchObject({ code: 'not-offered', message: expect.stringContaining('pg_dump') })
  })

  it('two processes on one tag lose no update and number nothing twice', async () => {
    const url = await cluster.database()
    const two = ['a', 'b'].map((prefix) => startAppending(url, 'W-1', prefix, 100))
    expect(await Promise.all(two.map(({ ended }) => ended)), two.map((one) => one.complaints()).join()).toEqual([0, 0])
    const store = await open(url)
    const history = await store.history('W-1')
    expect(history.map(({ seq }) => seq)).toEqual(Array.from({ length: 200 }, (_, n) => n + 1))
    expect(new Set(history.map(({ entry }) => entry.id)).size).toBe(200)
    expect(await store.card({ kind: 'wrench', tag: 'W-1' })).toMatchObject({ seq: 200 })
  }, 120_000)

  it('who follows the record while many append misses none', async () => {
    const url = await cluster.database()
    const stores = await Promise.all([open(url), open(url), open(url)])
    const writing = Promise.all(
      stores.flatMap((store, s) =>
        Array.from({ length: 30 }, (_, n) =>
          appendTo(store, `W-${s}-${n}`, [wrenchEntry(`w${s}-${n}`, `W-${s}-${n}`)]),
        ),
      ),
    )
    const followed: number[] = []
    const reader = await open(url)
    while (followed.length < 90) followed.push(...(await reader.since(followed.at(-1) ?? 0, 7)).map(({ seq }) => seq))
    await writing
    expect(followed).toEqual(Array.from({ length: 90 }, (_, n) => n + 1))
  })

  // Bounded for every day; the whole of it with KILL_COUNT=10000.
  const killAfter = Number(process.env.KILL_COUNT ?? 2000)

  it(`a process killed after ${killAfter} acknowledged appends and more has lost none of them`, async () => {
    const url = await cluster.database()
    const child = startAppending(url, 'W', 'a', killAfter * 20)
    await child.reached(killAfter)
    child.kill()
    await child.ended
    const acknowledged = child.acknowledged()
    expect(acknowledged.length, child.complaints()).toBeGreaterThanOrEqual(killAfter)
    const store = await open(url)
    // The lock of the dead goes with its connection: the next one can write at once.
    await untilWorks(() => store.check())
    const kept = await idsIn(store)
    expect(kept.slice(0, acknowledged.length)).toEqual(acknowledged)
    expect(kept.length - acknowledged.length).toBeLessThanOrEqual(1)
    const history = await store.history('W')
    const wanted = {
      entries: [checkEntry('after', 'W', 99)],
      expects: [{ tag: 'W', seq: kept.length }],
      cards: [card('W')],
    }
    expect(history).toHaveLength(kept.length)
    expect((await store.append(wanted)).kind).toBe('kept')
  }, 300_000)
})
