// Picks the store by its address: file:./data/armlength.db, postgres://…, memory:. Each is loaded only when it is picked.
import { fileURLToPath } from 'node:url'
import { Outage } from '../core/outage.ts'
import { memoryStore } from './memory.ts'
import type { Store } from './store.ts'

/** Where an address leads; undefined where it leads nowhere. The settings check addresses with it. */
export const storeKindOf = (url: string): 'sqlite' | 'postgres' | 'memory' | undefined => {
  if (url === 'memory:') return 'memory'
  if (/^file:[^?#]*[^?#/]$/.test(url) && !/^file:\/\/[^/]/.test(url)) return 'sqlite'
  return /^postgres(ql)?:\/\/./.test(url) && URL.canParse(url) ? 'postgres' : undefined
}

/** The file of a `file:` address. */
export const pathOf = (url: string): string =>
  url.startsWith('file://') ? fileURLToPath(url) : url.slice('file:'.length)

export interface OpenOptions {
  /** Told of connections to a server that broke while nobody used them. */
  readonly lost?: (error: Error) => void
}

/**
 * Reads the program of the store that an address leads to, without opening it. Node keeps a failure to read a module for as long as
 * it runs: where it is read only once the register is asked, a moment without file handles would shut the register for good.
 */
export const loadStore = async (url: string): Promise<void> => {
  const kind = storeKindOf(url)
  // A driver that is not there is told to whoever asks the register.
  if (kind === 'sqlite') {
    await import('./sqlite.ts')
    await (await import('./sqlite-file.ts')).loadDriver().catch(() => undefined)
  }
  if (kind === 'postgres') await import('./postgres.ts')
}

export const openStore = async (url: string, options: OpenOptions = {}): Promise<Store> => {
  const kind = storeKindOf(url)
  if (kind === 'memory') return memoryStore()
  if (kind === 'sqlite') return (await import('./sqlite.ts')).openSqlite(pathOf(url))
  if (kind === 'postgres') return (await import('./postgres.ts')).openPostgres(url, options)
  // The address may hold a password: it is not repeated.
  throw new Outage('unreachable', 'DATABASE_URL leads to no store: file:./data/armlength.db, postgres://… or memory:')
}
