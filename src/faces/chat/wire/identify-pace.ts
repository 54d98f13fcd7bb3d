// How fast one shard may identify again while the process runs, where sessions end one after another. Whether any logins are left
// is looked at beside it: see login-budget.ts. Reconnecting to resume is not held back.
import { neverBack } from '../../../core/never-back.ts'

const FIRST_MS = 5000
const LONGEST_MS = 30_000
const CALM_MS = 60_000

export interface IdentifyPace {
  /** How long this shard is to wait yet. One that is cut off while it waits does not wait anew. */
  readonly waitFor: (shard: number) => number
  readonly identified: (shard: number) => void
  /** Whether it did so before. */
  readonly isAgain: (shard: number) => boolean
}

export const createIdentifyPace = (clock: () => number): IdentifyPace => {
  const now = neverBack(clock)
  const last = new Map<number, { readonly at: number; readonly wait: number }>()
  const recent = (shard: number) => {
    const before = last.get(shard)
    return before && now() - before.at <= CALM_MS ? before : undefined
  }
  return {
    waitFor: (shard) => {
      const before = recent(shard)
      return before ? Math.max(before.at + before.wait - now(), 0) : 0
    },
    isAgain: (shard) => last.has(shard),
    identified: (shard) => {
      const before = recent(shard)
      last.set(shard, { at: now(), wait: before ? Math.min(before.wait * 2, LONGEST_MS) : FIRST_MS })
    },
  }
}
