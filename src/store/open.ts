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

export const openStore = async (url: string, options: OpenOptions = {}): Promise<Store> => {
  const kind = storeKindOf(url)
  if (kind === 'memory') return memoryStore()
  if (kind === 'sqlite') return (await import('./sqlite.ts')).openSqlite(pathOf(url))
  if (kind === 'postgres') return (await import('./postgres.ts')).openPostgres(url, options)
  // The address may hold a password: it is not repeated.
  throw new Outage('unreachable', 'DATABASE_URL leads to no store: file:./data/armlength.db, postgres://… or memory:')
}
