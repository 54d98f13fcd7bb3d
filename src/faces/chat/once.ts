// Each id once, of an interaction or of a message, and none that is older than an answer is waited for. Memory is bounded: ids
// older than the window are let go.
import { neverBack } from '../../core/never-back.ts'

const DISCORD_EPOCH = 1_420_070_400_000n
/** Discord drops an interaction that has no first response within this. */
export const FIRST_RESPONSE_MS = 3000
/** A token lives for 15 minutes: what seems to be this old says that the clock here is wrong, and nothing of its age. */
const NO_AGE_MS = 3_600_000
const REMEMBER_MS = 20 * 60_000
const MOST_IDS = 100_000

/** When an id was made, in ms since 1970; undefined where it is no snowflake. */
export const madeAt = (id: string): number | undefined =>
  /^\d{1,20}$/.test(id) ? Number((BigInt(id) >> 22n) + DISCORD_EPOCH) : undefined

/** How old what was made then is, in ms; 0 where the clocks say nothing that can be. */
export const ageAt = (made: number, now: number): number => {
  const age = now - made
  return age > NO_AGE_MS ? 0 : Math.max(age, 0)
}

export type Admission = 'new' | 'twice' | 'too-old' | 'unknown'

/** `longestMs`: how old it may be when it comes. */
export const createOnce = (now: () => number, longestMs = FIRST_RESPONSE_MS): ((id: string) => Admission) => {
  const steady = neverBack(now)
  const seen = new Map<string, number>()
  return (id) => {
    const made = madeAt(id)
    if (made === undefined) return 'unknown'
    if (seen.has(id)) return 'twice'
    if (ageAt(made, now()) > longestMs) return 'too-old'
    const time = steady()
    seen.set(id, time)
    // A Map keeps the order of arrival: the oldest stand first.
    for (const [old, when] of seen) {
      if (seen.size <= MOST_IDS && time - when < REMEMBER_MS) break
      seen.delete(old)
    }
    return 'new'
  }
}
