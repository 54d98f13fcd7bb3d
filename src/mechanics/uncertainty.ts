// Doubt of a result by first order: u² = Σ (c u)², and the 95 % band of what is left.
//
// Statement  u_c² = Σ u_i² (each u_i already times its sensitivity); a rectangle of half-width a has u = a/√3.
//            ν_eff = u_c⁴ / Σ u_i⁴/ν_i (Welch–Satterthwaite), U = t(ν_eff) u_c.
//            The shown band keeps the largest rectangle as a rectangle and takes the rest as a normal: its half-width b
//            solves P(|R + N| ≤ b) = 95 %. On one dominant rectangle k = 2 would show more than the rectangle holds.
// Source     JCGM 100:2008 (GUM) 5.1, 4.3.7, G.4; example H.1. The sum of rectangle and normal: by integration.
// Holds      Small contributions, nearly linear model; contributions independent of each other.
// Example    Rectangles of 4 % and 0.78 %, 0.11 %, 0.42 % as in a 14 in wrench with 2 in straight: u 2.37 %, band ±4.0 %.
import erfc from '@stdlib/math-base-special-erfc'
import { rootBetween } from './root.ts'
import { tPoint } from './student.ts'

/** One cause of doubt, in the unit of the result. `halfWidth` is a rectangle; `u` a standard uncertainty with its degrees of freedom. */
export type Contribution =
  | { readonly name: string; readonly halfWidth: number }
  | { readonly name: string; readonly u: number; readonly nu?: number }

export const standardOf = (part: Contribution): number =>
  'halfWidth' in part ? Math.abs(part.halfWidth) / Math.sqrt(3) : Math.abs(part.u)

/** u_c: root of the sum of squares. */
export const combined = (parts: readonly Contribution[]): number =>
  Math.sqrt(parts.reduce((sum, part) => sum + standardOf(part) ** 2, 0))

/** ν_eff, infinite where nothing came from a finite sample. */
export const effectiveDegrees = (parts: readonly Contribution[]): number => {
  const below = parts.reduce((sum, part) => {
    const nu = 'nu' in part && part.nu !== undefined ? part.nu : Number.POSITIVE_INFINITY
    return sum + standardOf(part) ** 4 / nu
  }, 0)
  return below === 0 ? Number.POSITIVE_INFINITY : combined(parts) ** 4 / below
}

/** Coverage factor t for a two-sided level (0.95, 0.99) and ν degrees of freedom. */
export const coverage = (level: number, nu: number): number => tPoint((1 + level) / 2, nu)

/** P(|R + N| ≤ b) for R rectangular of half-width a and N normal of standard deviation s. */
export const chanceWithin = (b: number, a: number, s: number): number => {
  if (a === 0) return 1 - erfc(b / (s * Math.SQRT2))
  if (s === 0) return Math.min(b / a, 1)
  // ∫Φ = zΦ(z) + φ(z); the band is symmetric, so only the upper half is needed.
  const integral = (x: number): number => {
    const z = x / s
    return s * (z * 0.5 * erfc(-z / Math.SQRT2) + Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI))
  }
  return (integral(b + a) - integral(b - a)) / a - 1
}

/** Half-width of the 95 % band of a sum of contributions; 0 where there is no doubt at all. */
export const band95 = (parts: readonly Contribution[]): number => {
  let a = 0
  let restSquared = 0
  for (const part of parts) {
    if ('halfWidth' in part && Math.abs(part.halfWidth) > a) {
      restSquared += (a * a) / 3
      a = Math.abs(part.halfWidth)
    } else restSquared += spread(part) ** 2
  }
  const s = Math.sqrt(restSquared)
  return solveBand(a, s)
}

// A sample of few readings widens its own part by t(ν)/1.96, so that the normal that stands for it covers 95 % as well.
const NORMAL_95 = 1.959963984540054
const spread = (part: Contribution): number =>
  'nu' in part && part.nu !== undefined ? (standardOf(part) * coverage(0.95, part.nu)) / NORMAL_95 : standardOf(part)

const solveBand = (a: number, s: number): number => {
  if (s <= a * 1e-9) return 0.95 * a
  if (a <= s * 1e-9) return NORMAL_95 * s
  return rootBetween((b) => chanceWithin(b, a, s) - 0.95, 0, a + 6 * s)
}

/** The contributions by share of u², largest first: what to measure better. */
export const ranked = (parts: readonly Contribution[]): Array<{ name: string; share: number }> => {
  const total = combined(parts) ** 2
  const shares = new Map<string, number>()
  for (const part of parts) shares.set(part.name, (shares.get(part.name) ?? 0) + standardOf(part) ** 2)
  return [...shares]
    .map(([name, square]) => ({ name, share: total === 0 ? 0 : square / total }))
    .sort((one, other) => other.share - one.share)
}
