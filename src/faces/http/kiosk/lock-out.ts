// Guessing the PIN is made slow, address by address: after some wrong ones each further one waits longer. Whoever is signed in
// stays so, and a right PIN from another address is taken meanwhile. The clock is handed in.

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

interface Tries {
  readonly wrong: number
  readonly last: number
}

export const createLockOut = (now: () => number): LockOut => {
  const tries = new Map<string, Tries>()
  let working = 0
  const known = (address: string): Tries | undefined => {
    const found = tries.get(address)
    if (found && now() - found.last > FORGOTTEN_AFTER_MS) {
      tries.delete(address)
      return undefined
    }
    return found
  }
  return {
    waitOf: (address) => {
      const found = known(address)
      if (!found || found.wrong < FREE_TRIES) return 0
      const wait = Math.min(FIRST_WAIT_MS * 2 ** (found.wrong - FREE_TRIES), LONGEST_WAIT_MS)
      return Math.max(0, found.last + wait - now())
    },
    failed: (address) => {
      const wrong = (known(address)?.wrong ?? 0) + 1
      tries.delete(address)
      tries.set(address, { wrong, last: now() })
      // The oldest goes: a crowd of addresses costs no memory.
      for (const oldest of tries.keys()) {
        if (tries.size <= MOST_ADDRESSES) break
        tries.delete(oldest)
      }
    },
    succeeded: (address) => void tries.delete(address),
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
