// A copy of the register back into its place: looked at first, put there whole, and what was there is moved aside, never lost.
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { Outage } from '../core/outage.ts'
import { openSqlite } from './sqlite.ts'
import { assertSound, isOurs, loadDriver } from './sqlite-file.ts'
import type { Store } from './store.ts'

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

const lastOf = async (store: Store): Promise<number> => {
  let last = 0
  for (;;) {
    const page = await store.since(last, 5000)
    if (page.length === 0) return last
    last = page.at(-1)?.seq ?? last
  }
}

// Opened as the desk would open it: ours, sound, and of a schema that this program knows.
const lookAt = async (path: string): Promise<number> => {
  const Driver = await loadDriver()
  const file = new Driver(path, { fileMustExist: true })
  try {
    // An empty file would be opened as a new register, and what is there given up for nothing.
    if (!isOurs(file)) throw new Outage('not-ours', 'the copy holds no register')
    assertSound(file, path)
  } finally {
    file.close()
  }
  const store = await openSqlite(path)
  try {
    return await lastOf(store)
  } finally {
    await store.close()
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
  copyFileSync(copy, fresh)
  try {
    const last = await lookAt(fresh)
    if (!existsSync(target)) {
      renameSync(fresh, target)
      return { last }
    }
    const before = await lookAt(target).catch(() => Number.POSITIVE_INFINITY)
    if (before > 0 && !replace)
      throw new Outage('not-offered', `${target} has entries: say --replace, and it is moved aside`)
    await assertUnused(target)
    const aside = `${target}.before-${stamp}`
    for (const end of ends) if (existsSync(target + end)) renameSync(target + end, aside + end)
    renameSync(fresh, target)
    return { last, aside }
  } finally {
    for (const end of ends) rmSync(fresh + end, { force: true })
  }
}
