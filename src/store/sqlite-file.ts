// Opens the file of a SQLite store: makes its folder, sets what keeps it safe and asserts that it holds, refuses files of others.
import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Database } from 'better-sqlite3'
import { Outage } from '../core/outage.ts'
import { sqliteOutage } from './sqlite-outage.ts'

type Driver = typeof import('better-sqlite3')

/** How long another process may hold the file before we say so. Nothing else runs here while we wait. */
export const BUSY_MS = 2000

/** Stands in the head of our files: "ARML". */
const APPLICATION_ID = 0x41_52_4d_4c

/** What is set, and what must be read back. FULL syncs the log with every commit: what was acknowledged outlives a power cut. */
const pragmas: ReadonlyArray<readonly [name: string, set: string, reads: string | number]> = [
  ['journal_mode', 'WAL', 'wal'],
  ['synchronous', 'FULL', 2],
  ['foreign_keys', 'ON', 1],
  ['trusted_schema', 'OFF', 0],
  // What is erased is overwritten, not only let go.
  ['secure_delete', 'ON', 1],
]

/** The driver is a package that needs a compiler where none was built; without it all but the register still works. */
export const loadDriver = async (
  load: () => Promise<{ readonly default: Driver }> = () => import('better-sqlite3'),
): Promise<Driver> => {
  try {
    const { default: Driver } = await load()
    // Loaded without its binary it fails only at the first opening.
    new Driver(':memory:').close()
    return Driver
  } catch (error) {
    throw new Outage(
      'no-driver',
      'better-sqlite3 is not usable on this machine: install python3, make and g++ and run npm ci again, or set DATABASE_URL to a postgres:// address',
      error,
    )
  }
}

/** Whether it says in a file's head that it is one of ours. */
export const isOurs = (db: Database): boolean => db.pragma('application_id', { simple: true }) === APPLICATION_ID

const assertOurs = (db: Database, path: string): void => {
  const id = db.pragma('application_id', { simple: true })
  const tables = db.prepare('select count(*) from sqlite_schema').pluck().get() as number
  if (id === APPLICATION_ID || (id === 0 && tables === 0)) return
  throw new Outage('not-ours', `${path} is a database of another program`)
}

const prepare = (db: Database, path: string, busyMs: number): void => {
  db.pragma(`busy_timeout = ${busyMs}`)
  assertOurs(db, path)
  for (const [name, set, reads] of pragmas) {
    db.pragma(`${name} = ${set}`)
    const got = db.pragma(name, { simple: true })
    if (got !== reads) throw new Outage('unreachable', `${path} does not take ${name} = ${set}: it reads ${got}`)
  }
  if (db.pragma('busy_timeout', { simple: true }) !== busyMs) throw new Error('bug: busy_timeout does not hold')
}

/** The file, ready to be migrated; see `markOurs`. */
export const openSqliteFile = async (path: string, busyMs: number = BUSY_MS): Promise<Database> => {
  const Driver = await loadDriver()
  let db: Database | undefined
  try {
    mkdirSync(dirname(path), { recursive: true })
    db = new Driver(path, { timeout: busyMs })
    prepare(db, path, busyMs)
    return db
  } catch (error) {
    db?.close()
    throw sqliteOutage(error)
  }
}

/** Says in the file's head whose it is; in the transaction that first writes to it. */
export const markOurs = (db: Database): void => void db.pragma(`application_id = ${APPLICATION_ID}`)

/** Throws unless every page, index and reference of a database is sound. */
export const assertSound = (db: Database, path: string): void => {
  const said = db.pragma('integrity_check', { simple: true })
  if (said !== 'ok') throw new Outage('broken', `${path} is damaged: ${said}`)
  if ((db.pragma('foreign_key_check') as unknown[]).length > 0) {
    throw new Outage('broken', `${path} is damaged: entries are missing`)
  }
}
