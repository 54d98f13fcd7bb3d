// How fast one shard may identify again while the process runs: a Discord that ends session after session would otherwise use up
// the day's logins within hours. Reconnecting to resume is not held back.

const FIRST_MS = 5000
const LONGEST_MS = 300_000
const CALM_MS = 600_000

export interface IdentifyPace {
  /** How long this shard is to wait yet. One that is cut off while it waits does not wait anew. */
  readonly waitFor: (shard: number) => number
  readonly identified: (shard: number) => void
}

export const createIdentifyPace = (now: () => number): IdentifyPace => {
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
    identified: (shard) => {
      const before = recent(shard)
      last.set(shard, { at: now(), wait: before ? Math.min(before.wait * 2, LONGEST_MS) : FIRST_MS })
    },
  }
}
