// The same pieces before and after: the mean of their differences, and whether it matters. Plain numbers in any one unit.
//
// Statement  d_i = after_i − k before_i, D_k = mean d, u_k = s_d/√n, ν = n − 1; verdicts and the interval of the ratio as in
//            two-samples.ts and welch.ts with this D_k. s_d not below resolution · √((1 + k²)/12): two readings, each rounded.
// Symbols    n pairs; s_d spread of the differences; k factor on before.
// Source     Student 1908; the ratio: Fieller 1954. Floor of s_d: JCGM 100:2008, F.2.2.1.
// Holds      Two pairs or more of independent pieces; mean before above 0 for the verdict.
// Example    Student's sleep data: D = 1.58, s_d 1.23, t = 4.062, ν = 9, 95 % interval 0.700 … 2.460.
import { mean, sampleDeviation } from './scale-pull.ts'
import { tPoint } from './student.ts'
import { type DoubtAt, findingsFrom, type Margin, type SampleVerdict, verdictOf } from './two-samples.ts'
import { type Band, looksAlike, ratioEnds } from './welch.ts'

export interface Pair {
  readonly before: number
  readonly after: number
}

export interface PairedChange {
  readonly n: number
  /** Mean of after − before with its two-sided interval, and the spread of the differences. */
  readonly absolute: { readonly value: number } & Band
  readonly s: number
  /** As a fraction of the mean before; no ends where that is not clear of 0. */
  readonly relative: { readonly value: number } & Partial<Band>
  readonly verdict: SampleVerdict
}

/** After against before, piece by piece. Refuse before: fewer than two pairs, or a mean before at or below 0. */
export const pairedChange = (pairs: readonly Pair[], margin: Margin, resolution = 0): PairedChange => {
  const n = pairs.length
  const p = (1 + margin.confidence) / 2
  const before = mean(pairs.map((pair) => pair.before))
  const after = mean(pairs.map((pair) => pair.after))
  const spreadAt = (k: number): number => {
    const differences = pairs.map((pair) => pair.after - k * pair.before)
    const floor = resolution * Math.sqrt((1 + k ** 2) / 12)
    return Math.max(looksAlike(differences) ? 0 : sampleDeviation(differences), floor)
  }
  const at: DoubtAt = (k) => {
    const D = after - k * before
    // What rounding of doubles leaves of equal means is no difference.
    const isNothing = Math.abs(D) <= 1e-12 * (Math.abs(after) + Math.abs(k * before))
    return { D: isNothing ? 0 : D, u: spreadAt(k) / Math.sqrt(n), nu: n - 1 }
  }
  const { D, u } = at(1)
  const half = tPoint(p, n - 1) * u
  const befores = pairs.map((pair) => pair.before)
  const own = Math.max(looksAlike(befores) ? 0 : sampleDeviation(befores), resolution / Math.sqrt(12))
  const isClear = before > (tPoint(p, n - 1) * own) / Math.sqrt(n)
  const ends = isClear ? ratioEnds(at, before, after / before, p) : undefined
  return {
    n,
    absolute: { value: D, low: D - half, high: D + half },
    s: spreadAt(1),
    relative: { value: D / before, ...(ends ? { low: ends.low - 1, high: ends.high - 1 } : {}) },
    verdict: verdictOf(findingsFrom(at, before, margin)),
  }
}
