// What people and servers have set for themselves, as an answer needs it: from the store, held for some seconds. A store that is
// away or slow is no reason to wait: the answer is given as if nothing had been set.
import { inTime } from '../../core/in-time.ts'
import { neverBack } from '../../core/never-back.ts'
import type { System } from '../../desk/own-units.ts'
import type { RegisterStore } from '../../store/lazy.ts'

export interface OwnSettings {
  readonly units?: System
  readonly wrench?: string
}

export interface ServerSettings {
  readonly units?: System
  /** Channels in which every answer is for the asker alone. */
  readonly quiet: readonly string[]
  /** The channel to which answers that look wrong are sent. */
  readonly reports?: string
}

export const ownScope = (user: string): string => `user:${user}`
export const serverScope = (server: string): string => `server:${server}`

const systemOf = (text: string | undefined): System | undefined =>
  text === 'metric' || text === 'inch' ? text : undefined

const readOwn = ({ units, wrench }: Readonly<Record<string, string>>): OwnSettings => {
  const system = systemOf(units)
  return { ...(system ? { units: system } : {}), ...(wrench ? { wrench } : {}) }
}

const readServer = ({ units, quiet, reports }: Readonly<Record<string, string>>): ServerSettings => {
  const system = systemOf(units)
  return {
    quiet: (quiet ?? '').split(',').filter((id) => id !== ''),
    ...(system ? { units: system } : {}),
    ...(reports ? { reports } : {}),
  }
}

const HELD_MS = 10_000
const PATIENCE_MS = 250
const MOST_HELD = 10_000
const DAY_MS = 86_400_000
const nothing: ServerSettings = { quiet: [] }

export interface Likings {
  readonly own: (user: string) => Promise<OwnSettings>
  readonly server: (server: string | undefined) => Promise<ServerSettings>
  /** After something was set here: the next answer knows of it. */
  readonly changed: (scope: string) => void
}

/** Where nothing can be set. */
export const noLikings: Likings = {
  own: async () => ({}),
  server: async () => nothing,
  changed: () => {},
}

type LikingStore = Pick<RegisterStore, 'own' | 'settings' | 'usedOwn'>

export const createLikings = (store: LikingStore, now: () => number): Likings => {
  const steady = neverBack(now)
  const held = new Map<string, { readonly at: number; readonly value: Promise<unknown> }>()
  const used = new Map<string, number>()

  const known = async <T>(scope: string, look: () => Promise<T>, without: T): Promise<T> => {
    const one = held.get(scope)
    if (one && steady() - one.at < HELD_MS) return one.value as Promise<T>
    const value = inTime(look(), PATIENCE_MS, without)
    held.delete(scope)
    held.set(scope, { at: steady(), value })
    for (const oldest of held.keys()) {
      if (held.size <= MOST_HELD) break
      held.delete(oldest)
    }
    return value
  }

  // Once a day is enough to know that settings are used.
  const noteUse = (scope: string): void => {
    const time = now()
    // What was noted by a clock that was ahead is put right.
    if (Math.abs(time - (used.get(scope) ?? 0)) < DAY_MS) return
    if (used.size >= MOST_HELD) used.clear()
    used.set(scope, time)
    store.usedOwn(scope, new Date(time).toISOString()).catch(() => undefined)
  }

  return {
    own: async (user) => {
      const scope = ownScope(user)
      const own = await known(scope, async () => readOwn(await store.own(scope)), {})
      if (Object.keys(own).length > 0) noteUse(scope)
      return own
    },
    server: async (server) => {
      if (server === undefined) return nothing
      const scope = serverScope(server)
      return known(scope, async () => readServer(await store.settings(scope)), nothing)
    },
    changed: (scope) => {
      held.delete(scope)
    },
  }
}
