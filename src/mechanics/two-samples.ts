// Two sets of readings: does b differ from a, and by enough to matter? Plain numbers in any one unit; sign is b against a.
//
// Statement  For a factor k: D_k = mean b − k mean a, u_k² = s_b²/n_b + k² s_a²/n_a, ν_k by Welch–Satterthwaite. With a
//            margin m as a fraction of a, confidence 1 − α:
//            inside     upper one-sided bound of D_{1+m} below 0 and lower one of D_{1−m} above 0
//            beyond     D_{1+m} above 0 (or D_{1−m} below 0) by more than chance gives, with both ends of the margin counted:
//                       P(T > t) + P(T < −t − 2 m mean a/u) ≤ α, t = D/u
//            excludes 0 the two-sided interval of D_1 does not hold 0
// Symbols    n, mean, s of each set; s not below resolution/√12; u standard uncertainty of D; ν degrees of freedom.
// Source     Welch 1947, Satterthwaite 1946; two one-sided tests, Schuirmann 1987. Floor: JCGM 100:2008, F.2.2.1.
// Holds      Independent readings, two or more of each, mean of a above 0. While the margin is wide against the doubt, `beyond` is
//            the one-sided bound alone; where it is narrow, two one-sided bounds would together err up to 2 α, so both count.
// Example    a 100, 101, 99, 100 and b 110, 111, 109, 110, margin 4 %: +10 %, a difference that matters.

import { tBelow, tPoint } from './student.ts'
import { type Band, type Doubt, doubtOf, looksAlike, type SampleSummary, summaryOf, welchDifference } from './welch.ts'

export const sampleVerdicts = [
  'seen-too-small-to-matter',
  'no-difference-that-matters',
  'a-difference-that-matters',
  'seen-not-decided',
  'not-decided',
] as const
export type SampleVerdict = (typeof sampleVerdicts)[number]

export interface Margin {
  /** m, a fraction of the mean of a (0.04). */
  readonly m: number
  /** 1 − α (0.95). */
  readonly confidence: number
}

export interface Findings {
  readonly inside: boolean
  readonly beyond: boolean
  readonly excludesZero: boolean
}

/** D_k with its uncertainty, for a factor k on the mean of a. */
export type DoubtAt = (k: number) => Doubt

const insideOf = (at: DoubtAt, { m, confidence }: Margin): boolean => {
  const above = at(1 + m)
  if (!(above.D + tPoint(confidence, above.nu) * above.u < 0)) return false
  const below = at(1 - m)
  return below.D - tPoint(confidence, below.nu) * below.u > 0
}

/** Inside, beyond, excludes 0: of whatever tells D_k with its doubt, against a mean of a. */
export const findingsFrom = (at: DoubtAt, meanA: number, margin: Margin): Findings => {
  const { m, confidence } = margin
  const alpha = 1 - confidence
  const above = at(1 + m)
  const below = at(1 - m)
  const zero = at(1)
  // How far D lies past its end of the margin, against chance at that end and, far off, at the other.
  const past = (D: number, u: number, nu: number): boolean => {
    if (D <= 0) return false
    if (u === 0) return true
    const t = D / u
    if (t <= tPoint(confidence, nu)) return false
    return 1 - tBelow(t, nu) + tBelow(-t - (2 * m * meanA) / u, nu) <= alpha
  }
  return {
    inside: insideOf(at, margin),
    beyond: past(above.D, above.u, above.nu) || past(-below.D, below.u, below.nu),
    excludesZero: Math.abs(zero.D) > tPoint(1 - alpha / 2, zero.nu) * zero.u,
  }
}

/** The same from the summaries of two sets. */
export const findingsOf = (a: SampleSummary, b: SampleSummary, margin: Margin): Findings =>
  findingsFrom((k) => doubtOf(a, b, k), a.mean, margin)

const isInside = (a: SampleSummary, b: SampleSummary, margin: Margin): boolean =>
  insideOf((k) => doubtOf(a, b, k), margin)

/** The verdict of the findings: the first that fits, so that exactly one does. */
export const verdictOf = ({ inside, beyond, excludesZero }: Findings): SampleVerdict => {
  if (inside) return excludesZero ? 'seen-too-small-to-matter' : 'no-difference-that-matters'
  if (beyond) return 'a-difference-that-matters'
  return excludesZero ? 'seen-not-decided' : 'not-decided'
}

export interface Comparison {
  readonly a: SampleSummary
  readonly b: SampleSummary
  /** (mean b − mean a)/mean a, with the two-sided interval; no ends where a itself is not clear of 0. */
  readonly difference: { readonly value: number } & Partial<Band>
  /** mean b − mean a in the readings' unit, with Welch's interval. */
  readonly absolute: { readonly value: number } & Band
  readonly verdict: SampleVerdict
  /** s_b²/s_a²; absent where a shows no scatter. */
  readonly varianceRatio?: number
  /** About so many more readings of each until the margin is decided, if means and spreads stay; absent where none are needed or would help. */
  readonly readingsNeeded?: number
  /** Sets whose readings are all alike: the resolution hides their scatter. */
  readonly hidden: ReadonlyArray<'a' | 'b'>
}

const MOST_MORE = 10_000

const insideAfter = (a: SampleSummary, b: SampleSummary, margin: Margin, more: number): boolean =>
  isInside({ ...a, n: a.n + more }, { ...b, n: b.n + more }, margin)

/** Smallest number of further readings of each that would decide it; undefined past ten thousand. */
const moreNeeded = (a: SampleSummary, b: SampleSummary, margin: Margin): number | undefined => {
  let high = 1
  while (!insideAfter(a, b, margin, high)) {
    if (high >= MOST_MORE) return undefined
    high *= 2
  }
  let low = Math.floor(high / 2)
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (insideAfter(a, b, margin, middle)) high = middle
    else low = middle
  }
  return high
}

/** b against a. Refuse before: fewer than two readings of either, or a mean of a at or below 0. */
export const compareSamples = (
  readingsA: readonly number[],
  readingsB: readonly number[],
  margin: Margin,
  resolution = 0,
): Comparison => {
  const a = summaryOf(readingsA, resolution)
  const b = summaryOf(readingsB, resolution)
  const verdict = verdictOf(findingsOf(a, b, margin))
  const { absolute, relative } = welchDifference(a, b, margin.confidence)
  const open = verdict === 'not-decided' || verdict === 'seen-not-decided'
  const needed = open && Math.abs(relative.value) < margin.m ? moreNeeded(a, b, margin) : undefined
  return {
    a,
    b,
    difference: relative,
    absolute,
    verdict,
    ...(a.s > 0 ? { varianceRatio: b.s ** 2 / a.s ** 2 } : {}),
    ...(needed === undefined ? {} : { readingsNeeded: needed }),
    hidden: [...(looksAlike(readingsA) ? (['a'] as const) : []), ...(looksAlike(readingsB) ? (['b'] as const) : [])],
  }
}
