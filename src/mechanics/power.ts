// Before the first reading: what difference n readings of each could see, and how many it takes.
//
// Statement  Both sets n readings of spread σ, true difference δ. Given the two found spreads the difference of means is normal,
//            so P(seen) = E[Φ(δ/v − t(ν) û/v) + Φ(−δ/v − t(ν) û/v)], v = σ√(2/n), û and ν as in welch.ts, t two-sided.
//            P(inside | δ = 0) = E[Φ(w) − Φ(−w)], w = (m − t₁(ν) û)/v where above 0, t₁ one-sided. E over both spreads: w_i²(n − 1)
//            chi-squared with n − 1 degrees, by a sum over a grid of midpoints.
// Symbols    n of each set; σ, δ, m as fractions of the baseline mean; t(ν) at the confidence.
// Source     Welch 1947 for the test; the expectation is worked out here, and drawn at random in the tests.
// Holds      n ≥ 2, equal n and σ; m small against 1 (the uncertainty of D_{1±m} is taken as that of D_1).
// Example    n = 5, σ = 5 %, 95 %: a difference of about 10 % is seen four times in five.
import erfc from '@stdlib/math-base-special-erfc'
import { rootBetween } from './root.ts'
import { tPoint } from './student.ts'
import { doubtOf } from './welch.ts'

const CELLS = 40
const phi = (z: number): number => 0.5 * erfc(-z / Math.SQRT2)

/** Found spread over true spread, and how likely it is: midpoints over where nearly all of it lies. */
const spreads = (nu: number): ReadonlyArray<{ readonly w: number; readonly share: number }> => {
  const reach = 5.5 / Math.sqrt(2 * nu)
  const [low, high] = [Math.max(0, 1 - reach), 1 + reach]
  const raw = Array.from({ length: CELLS }, (_, cell) => {
    const w = low + ((cell + 0.5) * (high - low)) / CELLS
    return { w, share: Math.exp((nu - 1) * Math.log(w) - (nu * (w ** 2 - 1)) / 2) }
  })
  const whole = raw.reduce((sum, { share }) => sum + share, 0)
  return raw.map(({ w, share }) => ({ w, share: share / whole }))
}

/** t û/v for every pair of found spreads, with its share; p is the point of t. */
const widths = (n: number, p: number): ReadonlyArray<{ readonly width: number; readonly share: number }> => {
  const found = spreads(n - 1)
  // Symmetric: each unequal pair stands for two.
  return found.flatMap((one, i) =>
    found.slice(i).map((other, j) => {
      const { u, nu } = doubtOf({ n, mean: 1, s: one.w }, { n, mean: 1, s: other.w }, 1)
      return {
        width: (tPoint(p, nu) * u) / Math.sqrt(2 / n),
        share: one.share * other.share * (j === 0 ? 1 : 2),
      }
    }),
  )
}

const seenOf = (cells: ReturnType<typeof widths>, shift: number): number =>
  cells.reduce((sum, { width, share }) => sum + share * (phi(shift - width) + phi(-shift - width)), 0)

/** Chance that a true difference is seen. */
export const chanceSeen = (n: number, sigma: number, delta: number, confidence: number): number =>
  seenOf(widths(n, (1 + confidence) / 2), Math.abs(delta) / (sigma * Math.sqrt(2 / n)))

/** Chance that sets without a difference are told to have none that matters. */
export const chanceInside = (n: number, sigma: number, m: number, confidence: number): number => {
  const far = m / (sigma * Math.sqrt(2 / n))
  return widths(n, confidence).reduce((sum, { width, share }) => {
    const room = far - width
    return room > 0 ? sum + share * (phi(room) - phi(-room)) : sum
  }, 0)
}

/** The smallest true difference that is seen with the wanted chance, as a fraction of the baseline. */
export const smallestSeen = (n: number, sigma: number, confidence: number, wanted: number): number => {
  const cells = widths(n, (1 + confidence) / 2)
  let high = 4
  while (seenOf(cells, high) < wanted) high *= 2
  return rootBetween((shift) => seenOf(cells, shift) - wanted, 0, high) * sigma * Math.sqrt(2 / n)
}

export const MOST_READINGS = 500

/** Fewest readings of each for which a chance that grows with n is reached; undefined past the most. */
export const fewestFor = (chance: (n: number) => number, wanted: number): number | undefined => {
  if (chance(MOST_READINGS) < wanted) return undefined
  let [low, high] = [1, 2]
  while (high < MOST_READINGS && chance(high) < wanted) [low, high] = [high, Math.min(2 * high, MOST_READINGS)]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (chance(middle) >= wanted) high = middle
    else low = middle
  }
  return high
}
