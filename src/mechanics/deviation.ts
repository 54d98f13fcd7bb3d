// How far a wrench is off, and the window in which the reference must lie. Plain numbers in SI or in percent as named.
//
// Statement  a = (X_a − X_r)/X_r · 100 %, X_a what the wrench says, X_r the reference. a > 0: delivers low; a < 0: delivers high.
//            With a limit l (a fraction), X_a is within it while X_r lies in S/(1 + l) … S/(1 − l).
//            What a setting S alone may deliver by the maker's tolerance: S (1 ± l).
// Source     ISO 6789-1:2017 and ISO 6789:2003, 5.1 (from memory). Limits by the tool's most: 6 % up to 10 N·m, 4 % above
//            (ISO 6789:2003 as quoted by a tool manual; Acta IMEKO 4(2) 2015, art. 5).
// Holds      From a fifth of the scale up; below it the standard promises nothing.
// Example    S = 100 N·m, X_r = 104 N·m: a = −3.846 %. Window for 4 %: 96.15 … 104.17 N·m.

/** Deviation [%] of an indicated value from its reference. */
export const deviation = (indicated: number, reference: number): number => {
  const off = ((indicated - reference) / reference) * 100
  // What conversion between units leaves is no deviation.
  return Math.abs(off) < 1e-9 ? 0 : off
}

/** The references [same unit as S] between which the deviation is within ±l. */
export const referenceWindow = (S: number, l: number): { low: number; high: number } => ({
  low: S / (1 + l),
  high: S / (1 - l),
})

/** The limit [fraction] that the standard sets by the largest torque of the tool [N·m]. */
export const standardLimit = (most: number): number => (most <= 10 ? 0.06 : 0.04)

/** The shares of `most` at which a wrench is checked, rising. */
export const checkShares = [0.2, 0.6, 1] as const
/** Below this share of `most` nothing is promised. */
export const LEAST_SHARE = 0.2

/** Largest uncertainty that a reference may have: a quarter of the limit (ISO 6789-2:2017, 4.3; ASME B107.300-2021, 6.3). */
export const referenceAtMost = (limit: number): number => limit / 4
