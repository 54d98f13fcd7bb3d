// A clock for how long something took, out of one that people and time servers may set.

/** Milliseconds since this process began, by the clock that nobody sets. It tells how long, never when. */
export const even = (): number => performance.now()

/**
 * The same clock, but where it is set back it goes on from where it stood: nothing that is waited for becomes longer. How long ago
 * it was last looked at is then told by `tell`, which nobody sets.
 */
export const neverBack = (now: () => number, tell: () => number = even): (() => number) => {
  let last = now()
  let looked = tell()
  let behind = 0
  return () => {
    const time = now()
    const tick = tell()
    if (time + behind < last) behind = last + (tick - looked) - time
    looked = tick
    last = time + behind
    return last
  }
}
