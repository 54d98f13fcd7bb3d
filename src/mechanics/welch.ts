// Mean and spread of a set of readings, and the difference of two sets with its interval. Plain numbers in any one unit.
//
// Statement  s² = Σ (x − mean)²/(n − 1), s not below resolution/√12. D_k = mean b − k mean a,
//            u_k² = s_b²/n_b + k² s_a²/n_a, ν_k = u_k⁴/[(s_b²/n_b)²/(n_b − 1) + (k² s_a²/n_a)²/(n_a − 1)].
//            Interval of b − a: D_1 ± t(ν_1) u_1. Interval of b/a: all k for which |D_k| ≤ t(ν_k) u_k.
// Symbols    n, mean, s; u standard uncertainty of D; ν degrees of freedom; t two-sided point.
// Source     Welch 1947; Satterthwaite 1946; the ratio: Fieller 1954. Floor of s: JCGM 100:2008, F.2.2.1 (rectangle of one step).
// Holds      Two readings or more of each. The ratio's ends exist while mean a is clear of 0.
// Example    Student's sleep data: b − a = 1.58, ν 17.78, 95 % interval −0.205 … 3.365.
import { rootBetween } from './root.ts'
import { mean, sampleDeviation } from './scale-pull.ts'
import { tPoint } from './student.ts'

export interface SampleSummary {
  readonly n: number
  readonly mean: number
  /** Spread, not below what the resolution hides. */
  readonly s: number
}

export interface Band {
  readonly low: number
  readonly high: number
}

export const summaryOf = (readings: readonly number[], resolution = 0): SampleSummary => ({
  n: readings.length,
  mean: mean(readings),
  s: Math.max(looksAlike(readings) ? 0 : sampleDeviation(readings), resolution / Math.sqrt(12)),
})

/** All readings the same: their scatter is below what the gauge shows. */
export const looksAlike = (readings: readonly number[]): boolean => readings.every((value) => value === readings[0])

export interface Doubt {
  readonly D: number
  readonly u: number
  readonly nu: number
}

/** D_k with its uncertainty and degrees of freedom. */
export const doubtOf = (a: SampleSummary, b: SampleSummary, k: number): Doubt => {
  const fromA = (k ** 2 * a.s ** 2) / a.n
  const fromB = b.s ** 2 / b.n
  const square = fromA + fromB
  const below = fromA ** 2 / (a.n - 1) + fromB ** 2 / (b.n - 1)
  const D = b.mean - k * a.mean
  return {
    // What rounding of doubles leaves of equal means is no difference: it would count where there is no scatter.
    D: Math.abs(D) <= 1e-12 * (Math.abs(b.mean) + Math.abs(k * a.mean)) ? 0 : D,
    u: Math.sqrt(square),
    // Without scatter on either side there is nothing to weigh; any ν gives the same bound.
    nu: below > 0 ? square ** 2 / below : a.n + b.n - 2,
  }
}

/** b against a: absolute and as a fraction of a, each with its two-sided interval. */
export const welchDifference = (
  a: SampleSummary,
  b: SampleSummary,
  confidence: number,
): { absolute: { value: number } & Band; relative: { value: number } & Partial<Band> } => {
  const p = (1 + confidence) / 2
  const { D, u, nu } = doubtOf(a, b, 1)
  const half = tPoint(p, nu) * u
  const isClear = a.mean > tPoint(p, a.n - 1) * (a.s / Math.sqrt(a.n))
  const ends = isClear ? ratioEnds((k) => doubtOf(a, b, k), a.mean, b.mean / a.mean, p) : undefined
  return {
    absolute: { value: D, low: D - half, high: D + half },
    // D over a, not the ratio less 1: of two means that are nearly alike the ratio keeps few digits.
    relative: { value: D / a.mean, ...(ends ? { low: ends.low - 1, high: ends.high - 1 } : {}) },
  }
}

/** The ratios b/a that the readings allow, all k for which |D_k| ≤ t u_k; only where mean a is clear of 0, else they have no end. */
export const ratioEnds = (at: (k: number) => Doubt, meanA: number, ratio: number, p: number): Band => {
  const middle = at(ratio)
  // Without scatter the ratio is what it is; halving would only find the rounding that doubtOf forgives.
  if (middle.u === 0) return { low: ratio, high: ratio }
  const past = (k: number): number => {
    const { D, u, nu } = at(k)
    return Math.abs(D) - tPoint(p, nu) * u
  }
  const end = (direction: 1 | -1): number => {
    // Where t stayed as it is at the ratio itself the end would be about here; a little farther brackets it.
    let step = (1.25 * tPoint(p, middle.nu) * middle.u) / meanA
    while (past(ratio + direction * step) <= 0) step *= 2
    return rootBetween(past, ratio, ratio + direction * step)
  }
  return { low: end(-1), high: end(1) }
}
