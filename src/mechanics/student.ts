// Student's t as two small functions: the point below which a share lies, and the share below a point.
//
// Statement  tPoint(p, ν) = t with P(T ≤ t) = p; tBelow(t, ν) = P(T ≤ t), its inverse, found by halving.
// Symbols    p share [1], ν degrees of freedom [1] (not whole numbers only), t [1].
// Source     Student's distribution; the point by the library, checked against printed tables in the tests.
// Holds      ν > 0. Without any scatter the callers do not come here.
// Example    tPoint(0.975, 10) = 2.228.
import tQuantile from '@stdlib/stats-base-dists-t-quantile'

export const tPoint = (p: number, nu: number): number => tQuantile(p, Math.min(nu, 1e9))

/** P(T ≤ t): halving on p until the doubles meet, which is exact enough for any comparison with α. */
export const tBelow = (t: number, nu: number): number => {
  if (t > 0) return 1 - tBelow(-t, nu)
  let low = 0
  let high = 0.5
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (tPoint(middle, nu) < t) low = middle
    else high = middle
  }
  return high
}
