// Guessing the PIN is made slow, address by address: after some wrong ones each further one waits longer. Whoever is signed in
// stays so, and a right PIN from another address is taken meanwhile; but where a crowd of addresses guesses, only those that
// signed in before are let in. The clock is handed in.
import { neverBack } from '../../../core/never-back.ts'

export interface LockOut {
  /** Milliseconds until this address may try again; 0 where it may now. */
  readonly waitOf: (address: string) => number
  readonly failed: (address: string) => void
  readonly succeeded: (address: string) => void
  /** Does work that is dear, few at a time; undefined where too many are at it already. */
  readonly few: <T>(work: () => Promise<T>) => Promise<T | undefined>
}

const FREE_TRIES = 5
const FIRST_WAIT_MS = 30_000
const LONGEST_WAIT_MS = 600_000
/** An address that was quiet for so long begins anew. */
const FORGOTTEN_AFTER_MS = 3_600_000
const MOST_ADDRESSES = 5000
const MOST_AT_ONCE = 2
/** Wrong guesses of all addresses together within the hour, after which only the known may try. */
export const CROWD_TRIES = 100
const MOST_KNOWN = 200

interface Tries {
  readonly wrong: number
  readonly last: number
}

const trim = (
  kept: { readonly size: number; readonly delete: (key: string) => void },
  keys: Iterable<string>,
  most: number,
): void => {
  // The oldest goes: a crowd of addresses costs no memory.
  for (const oldest of keys) {
    if (kept.size <= most) break
    kept.delete(oldest)
  }
}

export const createLockOut = (clock: () => number): LockOut => {
  // A clock that was set back makes nobody wait for the time between.
  const now = neverBack(clock)
  const tries = new Map<string, Tries>()
  const trusted = new Set<string>()
  let crowd: number[] = []
  let working = 0
  const since = (then: number): number => now() - then
  const lately = (): number[] => {
    crowd = crowd.filter((then) => since(then) < FORGOTTEN_AFTER_MS)
    return crowd
  }
  const known = (address: string): Tries | undefined => {
    const found = tries.get(address)
    if (found && since(found.last) > FORGOTTEN_AFTER_MS) {
      tries.delete(address)
      return undefined
    }
    return found
  }
  return {
    waitOf: (address) => {
      const times = lately()
      const oldest = times[times.length - CROWD_TRIES]
      if (oldest !== undefined && !trusted.has(address)) return FORGOTTEN_AFTER_MS - since(oldest)
      const found = known(address)
      if (!found || found.wrong < FREE_TRIES) return 0
      const wait = Math.min(FIRST_WAIT_MS * 2 ** (found.wrong - FREE_TRIES), LONGEST_WAIT_MS)
      return Math.max(0, wait - since(found.last))
    },
    failed: (address) => {
      const wrong = (known(address)?.wrong ?? 0) + 1
      tries.delete(address)
      tries.set(address, { wrong, last: now() })
      trim(tries, tries.keys(), MOST_ADDRESSES)
      crowd = [...lately(), now()].slice(-CROWD_TRIES)
    },
    succeeded: (address) => {
      tries.delete(address)
      trusted.delete(address)
      trusted.add(address)
      trim(trusted, trusted.values(), MOST_KNOWN)
    },
    few: async (work) => {
      if (working >= MOST_AT_ONCE) return undefined
      working++
      try {
        return await work()
      } finally {
        working--
      }
    },
  }
}
