// Discord allows so many logins (identifies) a day, and takes the token away from who exceeds them. What is left is made to last:
// a process that starts over and over waits longer and longer, and in the end stays out.

export interface SessionStartLimit {
  readonly total: number
  readonly remaining: number
  /** Milliseconds until the allowance is whole again. */
  readonly reset_after: number
}

/** Below this part of the day's allowance, logins are spread over what is left of the day. */
const PLENTY = 0.1

const isCount = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value >= 0

/** How long to wait before a login with so many shards, in ms. What cannot be read holds nobody up. */
export const waitBeforeLogin = (limit: Partial<SessionStartLimit> | undefined, shards: number): number => {
  const { total, remaining, reset_after: left } = limit ?? {}
  if (!isCount(total) || !isCount(remaining) || !isCount(left)) return 0
  // One round of logins stays in hand for whoever mends what was wrong.
  const usable = remaining - shards
  if (usable < shards) return left
  return remaining >= total * PLENTY ? 0 : Math.ceil((left * shards) / usable)
}
