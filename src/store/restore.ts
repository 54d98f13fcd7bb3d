// A copy of the register back into its place: looked at first, put there whole, and what was there is moved aside, never lost.
import {
  closeSync,
  existsSync,
  fchmodSync,
  mkdirSync,
  openSync,
  readSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { dirname } from 'node:path'
import type { Database } from 'better-sqlite3'
import { Outage } from '../core/outage.ts'
import { entrySchema } from '../register/records.ts'
import { sqliteStore } from './sqlite.ts'
import { assertSound, isOurs, loadDriver, openSqliteFile } from './sqlite-file.ts'
import { sqliteOutage } from './sqlite-outage.ts'
import { assertOurSchema } from './sqlite-schema.ts'

export interface Restored {
  /** The last place in the record that is now in use. */
  readonly last: number
  /** Where the one before went; absent where there was none. */
  readonly aside?: string | undefined
}

const ends = ['', '-wal', '-shm', '-journal'] as const

// A connection that is open keeps the log: where it cannot be folded away, somebody is still writing to this file, and what
// they write after it was moved aside would be lost with it.
const assertUnused = async (path: string): Promise<void> => {
  const Driver = await loadDriver()
  const file = new Driver(path, { fileMustExist: true, timeout: 0 })
  try {
    const mode = file.pragma('journal_mode = DELETE', { simple: true })
    if (mode !== 'delete') throw new Error(`the log stays: ${mode}`)
  } catch (error) {
    if (isDamaged(error)) return
    throw new Outage('locked', `${path} is in use: stop the desk first`, error)
  } finally {
    file.close()
  }
}

const isDamaged = (error: unknown): boolean =>
  ['SQLITE_NOTADB', 'SQLITE_CORRUPT'].includes((error as { code?: string }).code ?? '')

/** As the unit has files made: the desk writes, its group reads, nobody else. */
const MODE = 0o640
const PIECE = 1024 * 1024

// Its mode is set before anything is in it; a plain copy would take the mode of the other, and be read by all meanwhile.
const copyInto = (path: string, from: string): void => {
  const source = openSync(from, 'r')
  try {
    const made = openSync(path, 'wx', MODE)
    try {
      fchmodSync(made, MODE)
      const piece = Buffer.alloc(PIECE)
      for (let read = readSync(source, piece); read > 0; read = readSync(source, piece))
        writeFileSync(made, piece.subarray(0, read))
    } finally {
      closeSync(made)
    }
  } finally {
    closeSync(source)
  }
}

const faultOf = (text: string): string | undefined => {
  try {
    const issue = entrySchema.safeParse(JSON.parse(text)).error?.issues[0]
    return issue && `${issue.path.join('.') || 'the whole'}: ${issue.message}`
  } catch (error) {
    return (error as Error).message
  }
}

// One at a time, however many there are. An entry always takes the place after the last, and none is ever taken away: a gap is
// an entry that is missing.
const readThrough = (file: Database): number => {
  let last = 0
  for (const row of file.prepare('select seq, entry from entries order by seq').iterate()) {
    const { seq, entry } = row as { readonly seq: number; readonly entry: string }
    if (seq !== last + 1) throw new Outage('broken', `the copy is damaged: after entry ${last} comes entry ${seq}`)
    const fault = faultOf(entry)
    if (fault !== undefined) throw new Outage('broken', `entry ${seq} of the copy cannot be read (${fault})`)
    last = seq
  }
  return last
}

// Ours in each part of its schema, sound, brought up to date as the desk would, and every entry one that the desk can read.
const lookAt = async (path: string): Promise<number> => {
  const Driver = await loadDriver()
  const file = new Driver(path, { fileMustExist: true })
  try {
    // An empty file would be opened as a new register, and what is there given up for nothing.
    if (!isOurs(file)) throw new Outage('not-ours', 'the copy holds no register')
    await assertOurSchema(file)
    assertSound(file, path)
  } finally {
    file.close()
  }
  const opened = await openSqliteFile(path)
  const store = sqliteStore(opened)
  try {
    return readThrough(opened)
  } finally {
    await store.close()
  }
}

// Looked at as it is: what may be put aside is not brought up to date first.
const isEmpty = async (path: string): Promise<boolean> => {
  const Driver = await loadDriver()
  const file = new Driver(path, { fileMustExist: true })
  try {
    if (!isOurs(file)) return false
    assertSound(file, path)
    return file.prepare('select 1 from entries').get() === undefined
  } catch {
    return false
  } finally {
    file.close()
  }
}

/**
 * Puts a copy in the place of a SQLite register; no other process may have it open. `stamp` names what is moved aside.
 * Throws an Outage where the copy is none, or where a register with entries is there and `replace` is not said.
 */
export const restoreSqlite = async (
  copy: string,
  target: string,
  { replace, stamp }: { readonly replace: boolean; readonly stamp: string },
): Promise<Restored> => {
  if (!existsSync(copy)) throw new Outage('not-offered', `there is no ${copy}`)
  mkdirSync(dirname(target), { recursive: true })
  const fresh = `${target}.restoring`
  for (const end of ends) rmSync(fresh + end, { force: true })
  try {
    copyInto(fresh, copy)
    const last = await lookAt(fresh)
    if (!existsSync(target)) {
      renameSync(fresh, target)
      return { last }
    }
    if (!replace && !(await isEmpty(target)))
      throw new Outage('not-offered', `${target} has entries: say --replace, and it is moved aside`)
    await assertUnused(target)
    const aside = `${target}.before-${stamp}`
    for (const end of ends) if (existsSync(target + end)) renameSync(target + end, aside + end)
    renameSync(fresh, target)
    return { last, aside }
  } catch (error) {
    throw sqliteOutage(error)
  } finally {
    for (const end of ends) rmSync(fresh + end, { force: true })
  }
}
