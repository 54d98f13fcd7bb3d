// SQLite when the world fails it: a full disk, a file that may not be written, a lock that is held, a process killed in the
// middle, a log torn at its end. Each is one clear outage, nothing is half-written, and what was acknowledged is there.
import {
  appendFileSync,
  chmodSync,
  copyFileSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, describe, expect, it } from 'vitest'
import type { Outage } from '../../src/core/outage.ts'
import type { Entry } from '../../src/register/records.ts'
import { openSqlite, sqliteStore } from '../../src/store/sqlite.ts'
import { openSqliteFile } from '../../src/store/sqlite-file.ts'
import type { Store } from '../../src/store/store.ts'
import { startAppending } from '../support/append-process.ts'
import { appendTo, card, checkEntry, eventEntry, wrenchEntry } from '../support/entries.ts'

const folder = mkdtempSync(join(tmpdir(), 'armlength-trouble-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
let files = 0
const newPath = (): string => join(folder, `${files++}.db`)

const outageOf = async (doing: Promise<unknown>): Promise<Outage> => {
  const told = await doing.then(
    () => undefined,
    (error: unknown) => error as Outage,
  )
  expect(told?.name).toBe('Outage')
  return told as Outage
}

const assertSound = (path: string): void => {
  const db = new Database(path)
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok')
  expect(db.pragma('foreign_key_check')).toEqual([])
  db.close()
}

const idsIn = async (store: Store): Promise<string[]> => (await store.since(0, 100_000)).map(({ entry }) => entry.id)
const add = (store: Store, tag: string, seq: number, entries: Entry[]) =>
  store.append({ entries, expects: [{ tag, seq }], cards: [card(tag)] })

describe('a full disk', () => {
  it('is said so, leaves nothing half-written, and is over when there is room again', async () => {
    const path = newPath()
    const db = await openSqliteFile(path)
    const store = sqliteStore(db)
    await add(store, 'W-1', 0, [wrenchEntry('w', 'W-1')])
    db.pragma(`max_page_count = ${(db.pragma('page_count', { simple: true }) as number) + 4}`)
    const many = Array.from({ length: 100 }, (_, n) => eventEntry(`e${n}`, 'W-1', 'x'.repeat(400)))
    expect((await outageOf(add(store, 'W-1', 1, many))).code).toBe('disk-full')
    expect(await idsIn(store)).toEqual(['w'])
    expect(await store.history('W-1')).toHaveLength(1)
    expect(await store.card({ kind: 'wrench', tag: 'W-1' })).toMatchObject({ seq: 1 })
    // A little fits still, and once there is room all of it does.
    expect((await add(store, 'W-1', 1, [checkEntry('c', 'W-1', 99)])).kind).toBe('kept')
    db.pragma('max_page_count = 100000')
    expect((await add(store, 'W-1', 2, many)).kind).toBe('kept')
    await store.close()
    assertSound(path)
  })
})

describe('a file that may not be written', () => {
  // The rules of the file system do not bind root: the test becomes nobody while it opens.
  const NOBODY = 65534
  const asNobody = async <T>(work: () => Promise<T>): Promise<T> => {
    if (process.getuid?.() !== 0) return work()
    process.seteuid?.(NOBODY)
    try {
      return await work()
    } finally {
      process.seteuid?.(0)
    }
  }

  it('is said to be read-only', async () => {
    const path = newPath()
    const store = await openSqlite(path)
    await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
    await store.close()
    chmodSync(folder, 0o755)
    chmodSync(path, 0o444)
    expect((await asNobody(() => outageOf(openSqlite(path)))).code).toBe('read-only')
    const again = await openSqlite(path)
    expect(await idsIn(again)).toEqual(['w'])
    await again.close()
  })

  it('so is a folder in which none can be made', async () => {
    const path = join(folder, 'not-ours', 'shop.db')
    chmodSync(folder, 0o555)
    const told = await asNobody(() => outageOf(openSqlite(path)))
    chmodSync(folder, 0o755)
    expect(told.code).toBe('read-only')
  })

  it('a connection that may only read says so when it is to write', async () => {
    const db = await openSqliteFile(newPath())
    const store = sqliteStore(db)
    db.pragma('query_only = ON')
    expect((await outageOf(store.check())).code).toBe('read-only')
    expect((await outageOf(add(store, 'W-1', 0, [wrenchEntry('w', 'W-1')]))).code).toBe('read-only')
    db.pragma('query_only = OFF')
    await store.check()
    await store.close()
  })
})

describe('a lock that another holds', () => {
  it('is waited for, then said; reading goes on; afterwards writing too', async () => {
    const path = newPath()
    const store = await openSqlite(path, 200)
    await add(store, 'W-1', 0, [wrenchEntry('w', 'W-1')])
    const other = new Database(path)
    other.exec('begin immediate')
    const before = performance.now()
    expect((await outageOf(add(store, 'W-1', 1, [checkEntry('c', 'W-1', 99)]))).code).toBe('locked')
    const waited = performance.now() - before
    expect(waited).toBeGreaterThanOrEqual(150)
    expect(waited).toBeLessThan(2000)
    expect((await outageOf(store.check())).code).toBe('locked')
    expect(await idsIn(store)).toEqual(['w'])
    other.exec('rollback')
    other.close()
    expect((await add(store, 'W-1', 1, [checkEntry('c', 'W-1', 99)])).kind).toBe('kept')
    await store.close()
  })
})

// Bounded for every day; the whole of it with KILL_COUNT=10000.
const KILL_AFTER = Number(process.env.KILL_COUNT ?? 2000)

describe('a process that is killed', () => {
  it(`after ${KILL_AFTER} acknowledged appends and more has lost none of them`, async () => {
    const path = newPath()
    const child = startAppending(`file:${path}`, 'W', 'a', KILL_AFTER * 20)
    await child.reached(KILL_AFTER)
    child.kill()
    await child.ended
    const acknowledged = child.acknowledged()
    expect(acknowledged.length, child.complaints()).toBeGreaterThanOrEqual(KILL_AFTER)
    const store = await openSqlite(path)
    const kept = await idsIn(store)
    // At most the one in hand was kept without being told.
    expect(kept.slice(0, acknowledged.length)).toEqual(acknowledged)
    expect(kept.length - acknowledged.length).toBeLessThanOrEqual(1)
    await store.close()
    assertSound(path)
  }, 300_000)

  it('two processes on one file lose nothing and number nothing twice', async () => {
    const address = `file:${newPath()}`
    const two = ['a', 'b'].map((prefix) => startAppending(address, 'W-1', prefix, 100))
    expect(await Promise.all(two.map(({ ended }) => ended)), two.map((one) => one.complaints()).join()).toEqual([0, 0])
    const store = await openSqlite(address.slice('file:'.length))
    const history = await store.history('W-1')
    expect(history.map(({ seq }) => seq)).toEqual(Array.from({ length: 200 }, (_, n) => n + 1))
    expect(new Set(history.map(({ entry }) => entry.id)).size).toBe(200)
    await store.close()
  }, 120_000)
})

describe('a log that is torn', () => {
  // A copy taken while the store is open has what a power cut leaves: the file, and beside it a log that was not worked in.
  const left = async (): Promise<{ path: string; wal: string }> => {
    const path = newPath()
    const store = await openSqlite(path)
    for (let n = 0; n < 40; n++) await add(store, `W-${n}`, 0, [wrenchEntry(`w${n}`, `W-${n}`)])
    const copy = newPath()
    copyFileSync(path, copy)
    copyFileSync(`${path}-wal`, `${copy}-wal`)
    await store.close()
    return { path: copy, wal: `${copy}-wal` }
  }
  const all = Array.from({ length: 40 }, (_, n) => `w${n}`)
  const keptIn = async (path: string): Promise<string[]> => {
    const store = await openSqlite(path)
    const kept = await idsIn(store)
    // What there is, is whole: each entry is filed and has its card.
    for (const id of kept) {
      expect(await store.history(`W-${id.slice(1)}`)).toHaveLength(1)
      expect(await store.card({ kind: 'wrench', tag: `W-${id.slice(1)}` })).toBeDefined()
    }
    await add(store, 'after', 0, [wrenchEntry('after', 'after')])
    await store.close()
    assertSound(path)
    return kept
  }

  it('not at all gives everything', async () => {
    const { path } = await left()
    expect(await keptIn(path)).toEqual(all)
  })

  it.each([1, 100, 4095, 20_000, 200_000])('%i bytes short opens, sound, with all before the tear', async (bytes) => {
    const { path, wal } = await left()
    truncateSync(wal, Math.max(statSync(wal).size - bytes, 0))
    const kept = await keptIn(path)
    expect(kept).toEqual(all.slice(0, kept.length))
    // A tear within the last commit loses that commit and no other.
    if (bytes < 4096) expect(kept).toHaveLength(39)
    else expect(kept.length).toBeLessThan(40)
  })

  it('with rubbish at its end gives everything', async () => {
    const { path, wal } = await left()
    appendFileSync(wal, Buffer.alloc(5000, 0x5a))
    expect(await keptIn(path)).toEqual(all)
  })

  it('and is gone altogether gives what was worked in before, sound', async () => {
    const { path, wal } = await left()
    const db = new Database(path)
    db.pragma('wal_checkpoint(TRUNCATE)')
    db.close()
    rmSync(wal, { force: true })
    expect(await keptIn(path)).toEqual(all)
  })
})

describe('a backup', () => {
  it('is a whole store in one file, verified, while the store goes on', async () => {
    const path = newPath()
    const store = await openSqlite(path)
    for (let n = 0; n < 30; n++) await add(store, `W-${n}`, 0, [wrenchEntry(`w${n}`, `W-${n}`)])
    const copy = newPath()
    expect(await store.backup(copy)).toBe(30)
    await add(store, 'later', 0, [wrenchEntry('later', 'later')])
    assertSound(copy)
    const restored = await openSqlite(copy)
    expect(await restored.since(0, 100)).toEqual((await store.since(0, 100)).slice(0, 30))
    expect(await restored.cards({ order: 'tag', limit: 30 })).toMatchObject({ cards: { length: 30 } })
    await restored.close()
    await store.close()
  })

  it('never writes over what is there, and leaves nothing behind where it cannot be', async () => {
    const store = await openSqlite(newPath())
    const copy = newPath()
    await store.backup(copy)
    expect((await outageOf(store.backup(copy))).code).toBe('not-offered')
    expect((await outageOf(store.backup(join(copy, 'inside-a-file.db')))).code).toBe('unreachable')
    const elsewhere = join(folder, 'backups')
    await store.backup(join(elsewhere, 'copy.db'))
    expect(readdirSync(elsewhere)).toEqual(['copy.db'])
    await store.close()
  })
})
