// Student's t: the share below a point, and the point below which a share lies.
//
// Statement  P(T > t) = ½ I_x(ν/2, ½), x = ν/(ν + t²), for t ≥ 0; f(t) = r (1 + t²/ν)^(−(ν + 1)/2)/√(πν), r = Γ((ν + 1)/2)/Γ(ν/2).
//            tBelow(t, ν) = P(T ≤ t); tPoint(p, ν) = t with P(T ≤ t) = p.
// Symbols    p share [1], ν degrees of freedom [1] (not whole numbers only), t [1], I the regularised incomplete beta function.
// Source     Abramowitz and Stegun, Handbook of Mathematical Functions, 26.5.8 (the fraction), 26.7.1; 6.1.47 (the ratio of gammas).
// Holds      ν > 0. Past ν = 10⁹ the point of 10⁹ is taken, which differs from the normal one in the eighth figure.
// Example    tPoint(0.975, 10) = 2.228.

const MOST_NU = 1e9
const SMALL = 1e-300
const MOST_TERMS = 200_000

// ln Γ(a + ½)/Γ(a): by its series far out, and carried back step by step. No gamma is formed: large ones would cancel.
const lnGammaRatio = (a: number): number => {
  let carried = 0
  let far = a
  while (far < 20) {
    carried -= Math.log1p(0.5 / far)
    far += 1
  }
  const by = 1 / far ** 2
  const series = (1 / 8 - by * (1 / 192 - by * (1 / 640 - by * (17 / 14_336 - (by * 31) / 18_432)))) / far
  return carried + 0.5 * Math.log(far) - series
}

// The fraction of the incomplete beta function, from its front to its back (Lentz).
const betaFraction = (x: number, a: number, b: number): number => {
  let above = 1
  let below = 1 / notZero(1 - ((a + b) * x) / (a + 1))
  let product = below
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    below = 1 / notZero(1 + even * below)
    above = notZero(1 + even / above)
    product *= below * above
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    below = 1 / notZero(1 + odd * below)
    above = notZero(1 + odd / above)
    product *= below * above
    if (Math.abs(below * above - 1) < Number.EPSILON) return product
  }
  return product
}

const notZero = (x: number): number => (Math.abs(x) < SMALL ? SMALL : x)

/** P(T > t) and f(t), for t above 0. */
const tailAt = (t: number, nu: number, lnRatio: number): { tail: number; density: number } => {
  const a = nu / 2
  const lnFar = -a * Math.log1p(t ** 2 / nu)
  const density = Math.exp(lnRatio + lnFar - 0.5 * Math.log1p(t ** 2 / nu)) / Math.sqrt(Math.PI * nu)
  const x = nu / (nu + t ** 2)
  const left = t ** 2 / (nu + t ** 2)
  // x^a (1 − x)^½ / B(a, ½)
  const front = (Math.exp(lnFar + lnRatio) * Math.sqrt(left)) / Math.sqrt(Math.PI)
  // On either side of the middle one of the two fractions meets soon.
  const tail =
    x < (a + 1) / (a + 2.5) ? (front * betaFraction(x, a, 0.5)) / (2 * a) : 0.5 - front * betaFraction(left, 0.5, a)
  return { tail, density }
}

export const tBelow = (t: number, nu: number): number => {
  if (t === 0) return 0.5
  const known = Math.min(nu, MOST_NU)
  const { tail } = tailAt(Math.abs(t), known, lnGammaRatio(known / 2))
  return t < 0 ? tail : 1 - tail
}

const MOST_STEPS = 60
// Newton doubles its figures: after a step as small as this the next one would change nothing.
const CLOSE = 1e-10
// Below this share of the tail its logarithm over that of t is the straighter line; above it the tail itself is.
const NEAR_MIDDLE = 0.25

// The normal tail is below ½ exp(−z²/2); Wallace 1959 carries z over to t (from memory). It only has to be near.
const startOf = (tail: number, nu: number): number => {
  const z = (Math.sqrt(-2 * Math.log(2 * tail)) * (8 * nu + 3)) / (8 * nu + 1)
  return Math.sqrt(nu * Math.expm1(z ** 2 / nu))
}

export const tPoint = (p: number, nu: number): number => {
  if (p < 0.5) return -tPoint(1 - p, nu)
  const wanted = 1 - p
  if (wanted === 0.5) return 0
  const known = Math.min(nu, MOST_NU)
  const lnRatio = lnGammaRatio(known / 2)
  let t = wanted > NEAR_MIDDLE ? SMALL : startOf(wanted, known)
  for (let step = 0; step < MOST_STEPS; step++) {
    const { tail, density } = tailAt(t, known, lnRatio)
    // Newton: from the left in t, where the tail is hollow; in ln t further out, where its logarithm is arched.
    const next =
      wanted > NEAR_MIDDLE
        ? t + (tail - wanted) / density
        : t * Math.exp((Math.log(tail / wanted) * tail) / (t * density))
    const isThere = Math.abs(next - t) <= CLOSE * next
    t = next
    if (isThere) break
  }
  return t
}
