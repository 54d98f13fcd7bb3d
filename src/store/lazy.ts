// A store that is opened when it is first asked, and again after it could not be: questions do not wait for it, and a server
// that comes back later is found.
import { Outage } from '../core/outage.ts'
import type { Store } from './store.ts'

/** What the desk asks of the store. */
export type RegisterStore = Pick<
  Store,
  | 'append'
  | 'history'
  | 'entry'
  | 'known'
  | 'since'
  | 'cards'
  | 'find'
  | 'lease'
  | 'mark'
  | 'marked'
  | 'markedBefore'
  | 'settings'
  | 'set'
  | 'own'
  | 'setOwn'
  | 'usedOwn'
  | 'forgetOwn'
  | 'forgetIdle'
  | 'check'
>

export interface LazyStore {
  readonly store: RegisterStore
  readonly close: () => Promise<void>
}

export const lazyStore = (open: () => Promise<Store>): LazyStore => {
  let opening: Promise<Store> | undefined
  let closed = false
  const get = (): Promise<Store> => {
    if (closed) return Promise.reject(new Outage('closed', 'the register was closed before it was asked'))
    opening ??= open().catch((error: unknown) => {
      opening = undefined
      throw error
    })
    return opening
  }
  const store: RegisterStore = {
    append: async (wanted) => (await get()).append(wanted),
    history: (async (tag: string) => (await get()).history(tag)) as Store['history'],
    entry: async (id) => (await get()).entry(id),
    known: async (key) => (await get()).known(key),
    since: async (seq, limit) => (await get()).since(seq, limit),
    cards: async (wanted) => (await get()).cards(wanted),
    find: async (text, wanted) => (await get()).find(text, wanted),
    lease: async (wanted) => (await get()).lease(wanted),
    mark: async (job, key, at) => (await get()).mark(job, key, at),
    marked: async (job, key) => (await get()).marked(job, key),
    markedBefore: async (job, key) => (await get()).markedBefore(job, key),
    settings: async (scope) => (await get()).settings(scope),
    set: async (setting) => (await get()).set(setting),
    own: async (owner) => (await get()).own(owner),
    setOwn: async (setting) => (await get()).setOwn(setting),
    usedOwn: async (owner, at) => (await get()).usedOwn(owner, at),
    forgetOwn: async (owner) => (await get()).forgetOwn(owner),
    forgetIdle: async (before) => (await get()).forgetIdle(before),
    check: async () => (await get()).check(),
  }
  return {
    store,
    close: async () => {
      closed = true
      // Never opened, or it could not be: there is nothing to close.
      const opened = await opening?.catch(() => undefined)
      await opened?.close()
    },
  }
}
