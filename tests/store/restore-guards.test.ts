// What a copy must be before the register in use is put aside for it: built as ours, read entry by entry, without a gap.
import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { migrations } from '../../src/store/migrations/index.ts'
import { restoreSqlite } from '../../src/store/restore.ts'
import { openSqlite, sqliteStore } from '../../src/store/sqlite.ts'
import { openSqliteFile } from '../../src/store/sqlite-file.ts'
import { appendTo, checkEntry, eventEntry, wrenchEntry } from '../support/entries.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'restore-guards-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const at = (name: string): string => join(folder, name)
const entries = [wrenchEntry('a', 'W-1'), checkEntry('b', 'W-1', 101), eventEntry('c', 'W-1', 'from the bench')]
const over = { stamp: '2026', replace: true }

const made = async (name: string, version = migrations.length): Promise<string> => {
  const store = sqliteStore(await openSqliteFile(at(name)), migrations.slice(0, version))
  await appendTo(store, 'W-1', entries)
  await store.close()
  return at(name)
}
const copyOf = async (version?: number): Promise<string> => {
  const store = sqliteStore(await openSqliteFile(await made('a.db', version)), migrations.slice(0, version))
  await store.backup(at('copy.db'))
  await store.close()
  return at('copy.db')
}
const change = <T>(path: string, work: (db: Database.Database) => T): T => {
  const db = new Database(path)
  try {
    return work(db)
  } finally {
    db.close()
  }
}
const changed = async (sql: string, version?: number): Promise<string> => {
  const copy = await copyOf(version)
  change(copy, (db) => db.exec(sql))
  return copy
}
const numberOf = (path: string): unknown =>
  change(path, (db) => db.prepare('select max(number) from migrations').pluck().get())
/** The triggers go and come back, word for word: nothing but the entries tells of it. */
const unguarded = (path: string, sql: string): void =>
  change(path, (db) => {
    const triggers = db.prepare("select name, sql from sqlite_schema where type = 'trigger'").all()
    for (const { name } of triggers as Array<{ name: string }>) db.exec(`drop trigger ${name}`)
    db.exec(sql)
    for (const trigger of triggers as Array<{ sql: string }>) db.exec(trigger.sql)
  })

const refuses = async (copy: string, what: object): Promise<void> => {
  const target = await made('b.db')
  await expect(restoreSqlite(copy, target, over)).rejects.toMatchObject({ name: 'Outage', ...what })
  expect(readdirSync(folder).filter((name) => /restoring|before/.test(name))).toEqual([])
  const store = await openSqlite(target)
  expect((await store.history('W-1')).map(({ entry }) => entry)).toEqual(entries)
  await store.close()
}

describe('a copy is not restored where its schema is not ours', () => {
  const differs = (what: string) => ({ code: 'not-ours', message: `the copy is no register of this program: ${what}` })

  it.each([
    ['drop trigger entries_no_delete', 'trigger entries_no_delete is missing'],
    [
      'create trigger gone before insert on entries begin delete from cards; end',
      'trigger gone is not of this program',
    ],
    [
      'drop trigger marks_no_delete; create trigger marks_no_delete before delete on marks begin select 1; end',
      'trigger marks_no_delete is not as this program makes it',
    ],
    ['drop index entries_by_key', 'index entries_by_key is missing'],
    ['create index more on entries (at)', 'index more is not of this program'],
    ['create view more as select 1', 'view more is not of this program'],
    ['create table more (one integer)', 'table more is not of this program'],
    ['alter table own add column more text', 'table own is not as this program makes it'],
    ['alter table migrations add column more text', 'table migrations is not as this program makes it'],
    ['drop table migrations', 'table migrations is missing'],
    ['delete from migrations', 'table entries is not of this program'],
  ])('%s', async (sql, says) => {
    await refuses(await changed(sql), differs(says))
  })

  it('where an older one was changed, which its own schema tells', async () => {
    const copy = await changed('drop trigger entries_no_update', 1)
    await refuses(copy, differs('trigger entries_no_update is missing'))
  })

  it('where a newer program made it, with the words for that', async () => {
    await refuses(await changed("insert into migrations values (999, 'more')"), { code: 'too-new' })
  })
})

describe('a copy of ours is restored', () => {
  it.each(migrations.map(({ number }) => number))('with schema %i, and is brought up to date', async (number) => {
    const copy = await copyOf(number)
    expect(await restoreSqlite(copy, at('b.db'), over)).toEqual({ last: 3 })
    expect(numberOf(at('b.db'))).toBe(migrations.length)
    expect(numberOf(copy)).toBe(number)
  })

  it('where somebody had SQLite count its rows', async () => {
    expect(await restoreSqlite(await changed('analyze'), at('b.db'), over)).toEqual({ last: 3 })
  })

  it('and what is there is left as it is, of whatever schema, where it is not to be replaced', async () => {
    const copy = await copyOf()
    const target = await made('b.db', 1)
    await expect(restoreSqlite(copy, target, { ...over, replace: false })).rejects.toMatchObject({
      code: 'not-offered',
    })
    expect(numberOf(target)).toBe(1)
  })

  it.each([0o666, 0o600, 0o440])('to be read by its owner and its group, where the copy has mode %o', async (mode) => {
    const copy = await copyOf()
    chmodSync(copy, mode)
    await restoreSqlite(copy, at('b.db'), over)
    expect(statSync(at('b.db')).mode & 0o777).toBe(0o640)
  })
})

describe('a copy is not restored where its record does not hold', () => {
  const row = (text: string): string =>
    `insert into entries values (4, 'd', '2026-03-01T08:00:00.000Z', 'event', null, null, '${text}')`

  it('for an entry that is none of ours', async () => {
    await refuses(await changed(row('{}')), { code: 'broken', message: expect.stringMatching(/^entry 4 .*kind/) })
  })

  it('for an entry of ours that holds what none may hold', async () => {
    const { body, ...head } = eventEntry('d', 'W-1', 'late')
    const text = JSON.stringify({ ...head, body: { ...body, wrench: '<script>' } })
    await refuses(await changed(row(text)), {
      code: 'broken',
      message: expect.stringMatching(/^entry 4 .*body.wrench/),
    })
  })

  it('for an entry that is no JSON', async () => {
    const copy = await changed(`pragma ignore_check_constraints = on; ${row('not JSON')}`)
    await refuses(copy, { code: 'broken' })
  })

  it.each([1, 2])('for entry %i that is missing: places have no gap', async (seq) => {
    const copy = await copyOf()
    unguarded(copy, `delete from filings where seq = ${seq}; delete from entries where seq = ${seq}`)
    const message = `the copy is damaged: after entry ${seq - 1} comes entry ${seq + 1}`
    await refuses(copy, { code: 'broken', message })
  })
})
