// Whether a register file is built as this program builds one: each table, index, trigger and view, word for word. Nothing of the
// file runs while that is found out: a trigger of somebody else's could do to the entries whatever it likes.
import type { Database } from 'better-sqlite3'
import { Outage } from '../core/outage.ts'
import { assertKnown, migrations } from './migrations/index.ts'
import { sqliteStore } from './sqlite.ts'
import { loadDriver } from './sqlite-file.ts'

/** What a schema is made of, and how each part was made, by its kind and name. */
type Parts = ReadonlyMap<string, string>

interface Part {
  readonly type: string
  readonly name: string
  readonly on: string
  readonly sql: string | null
}

// What SQLite itself adds where somebody had it count the rows (ANALYZE): numbers by which it plans, nothing that acts.
const counted: Parts = new Map([
  ['table sqlite_stat1', 'sqlite_stat1: CREATE TABLE sqlite_stat1(tbl,idx,stat)'],
  ['table sqlite_stat4', 'sqlite_stat4: CREATE TABLE sqlite_stat4(tbl,idx,neq,nlt,ndlt,sample)'],
])

// SQLite itself refuses a file in which a part goes by another name than its statement says.
const partsOf = (db: Database): Parts => {
  const parts = new Map<string, string>()
  for (const row of db.prepare('select type, name, tbl_name as "on", sql from sqlite_schema').all()) {
    const { type, name, on, sql } = row as Part
    const called = `${type} ${name}`
    const made = `${on}: ${(sql ?? '').replace(/[ \t\r\n]+/g, ' ')}`
    if (counted.get(called) !== made) parts.set(called, made)
  }
  return parts
}

const partsOfNew = async (version: number): Promise<Parts> => {
  const Driver = await loadDriver()
  const db = new Driver(':memory:')
  const store = sqliteStore(db, migrations.slice(0, version))
  try {
    return partsOf(db)
  } finally {
    await store.close()
  }
}

const differenceAt = (name: string, found: Parts, wanted: Parts): string | undefined => {
  if (found.get(name) === wanted.get(name)) return undefined
  if (!found.has(name)) return `${name} is missing`
  return `${name} is not ${wanted.has(name) ? 'as this program makes it' : 'of this program'}`
}

const assertSame = (names: readonly string[], found: Parts, wanted: Parts): void => {
  const difference = names.map((name) => differenceAt(name, found, wanted)).find((one) => one !== undefined)
  if (difference !== undefined) throw new Outage('not-ours', `the copy is no register of this program: ${difference}`)
}

/** Throws unless a file has the schema that its number stands for, of those that this program knows. */
export const assertOurSchema = async (db: Database): Promise<void> => {
  const found = partsOf(db)
  const newest = await partsOfNew(migrations.length)
  // The number is read only out of a table that is ours.
  assertSame(['table migrations'], found, newest)
  const number = db.prepare('select coalesce(max(number), 0) from migrations').pluck().get() as number
  assertKnown(number, migrations.length)
  const wanted = number === migrations.length ? newest : await partsOfNew(Math.max(0, number))
  assertSame([...wanted.keys(), ...found.keys()], found, wanted)
}
