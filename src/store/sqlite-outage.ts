// What SQLite and the file system failed to do, as an outage; what we did wrong stays as it is.
import { Outage, type OutageCode } from '../core/outage.ts'

// The first that fits: a code of SQLite may be longer than its kind (SQLITE_IOERR_FSYNC).
const codes: ReadonlyArray<readonly [begins: string, code: OutageCode]> = [
  ['SQLITE_FULL', 'disk-full'],
  ['ENOSPC', 'disk-full'],
  ['EDQUOT', 'disk-full'],
  ['SQLITE_BUSY', 'locked'],
  ['SQLITE_LOCKED', 'locked'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_PERM', 'read-only'],
  ['EROFS', 'read-only'],
  ['EACCES', 'read-only'],
  ['EPERM', 'read-only'],
  ['SQLITE_CANTOPEN', 'unreachable'],
  ['ENOENT', 'unreachable'],
  ['ENOTDIR', 'unreachable'],
  ['EISDIR', 'unreachable'],
  ['EEXIST', 'unreachable'],
  ['SQLITE_CORRUPT', 'broken'],
  ['SQLITE_NOTADB', 'broken'],
  ['SQLITE_IOERR', 'broken'],
  ['EIO', 'broken'],
]

export const sqliteOutage = (error: unknown): unknown => {
  if (!(error instanceof Error) || error instanceof Outage) return error
  if (/database connection is not open/.test(error.message)) return new Outage('closed', 'the store is closed', error)
  const { code } = error as { readonly code?: unknown }
  if (typeof code !== 'string') return error
  const found = codes.find(([begins]) => code.startsWith(begins))
  return found ? new Outage(found[1], `${error.message} (${code})`, error) : error
}
