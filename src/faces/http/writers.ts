// Who may write over HTTP: keys, each with a role. Only their hashes are kept in the file, a line each: role, name, hash.
import { createHash, timingSafeEqual } from 'node:crypto'
import type { By } from '../../register/records.ts'

export interface WriterKey {
  readonly role: By['role']
  readonly name: string
  readonly hash: Buffer
}

const lineForm = /^(mechanic|keeper|import)\s+(\S{1,40})\s+([0-9a-f]{64})$/

/** The keys of a file. Throws with the number of the line, never with what stands in it. */
export const readWriters = (text: string): readonly WriterKey[] =>
  text.split('\n').flatMap((line, index): WriterKey[] => {
    const told = line.trim()
    if (told === '' || told.startsWith('#')) return []
    const [, role, name, hash] = lineForm.exec(told) ?? []
    if (!role || !name || !hash) throw new Error(`API_KEYS_FILE, line ${index + 1}: role, name and SHA-256 in hex`)
    return [{ role: role as By['role'], name, hash: Buffer.from(hash, 'hex') }]
  })

export const hashOfKey = (key: string): string => createHash('sha256').update(key).digest('hex')

/** The role of an Authorization header; undefined where the key is none of ours. Every key is compared, whatever fits. */
export const roleOf = (keys: readonly WriterKey[], header: string | undefined): By['role'] | undefined => {
  const [, key] = /^Bearer ([\x21-\x7e]{16,256})$/i.exec(header ?? '') ?? []
  if (key === undefined) return undefined
  const hash = Buffer.from(hashOfKey(key), 'hex')
  const found = keys.filter((one) => timingSafeEqual(one.hash, hash))
  return found[0]?.role
}
