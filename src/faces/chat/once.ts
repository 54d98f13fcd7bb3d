// Each id once, of an interaction or of a message, and none that is older than an answer is waited for. Memory is bounded: ids older than the window are let go.

const DISCORD_EPOCH = 1_420_070_400_000n
/** Discord drops an interaction that has no first response within this. */
export const FIRST_RESPONSE_MS = 3000
const REMEMBER_MS = 20 * 60_000
const MOST_IDS = 100_000

/** When an id was made, in ms since 1970; undefined where it is no snowflake. */
export const madeAt = (id: string): number | undefined =>
  /^\d{1,20}$/.test(id) ? Number((BigInt(id) >> 22n) + DISCORD_EPOCH) : undefined

export type Admission = 'new' | 'twice' | 'too-old' | 'unknown'

/** `longestMs`: how old it may be when it comes. */
export const createOnce = (now: () => number, longestMs = FIRST_RESPONSE_MS): ((id: string) => Admission) => {
  const seen = new Map<string, number>()
  return (id) => {
    const made = madeAt(id)
    if (made === undefined) return 'unknown'
    if (seen.has(id)) return 'twice'
    const time = now()
    if (time - made > longestMs) return 'too-old'
    seen.set(id, time)
    // A Map keeps the order of arrival: the oldest stand first.
    for (const [old, when] of seen) {
      if (seen.size <= MOST_IDS && time - when < REMEMBER_MS) break
      seen.delete(old)
    }
    return 'new'
  }
}
