// A straight line through points by least squares, how sure its slope is, and where it reaches a level.
//
// Statement  b = Σ(x − x̄)(y − ȳ)/S_xx, a = ȳ − b x̄; s² = Σ r²/(n − 2), u(b) = s/√S_xx, U(b) = t(0.975, n − 2) u(b).
//            The line itself lies within ± t s √(1/n + (x − x̄)²/S_xx). It reaches y₀ where this band holds y₀:
//            with u = x − x̄, d = y₀ − ȳ: (b² − g) u² − 2 b d u + d² − t² s²/n = 0, g = U(b)² (inverse regression, Fieller).
// Symbols    x, y as the caller has them; n points, ν = n − 2.
// Source     Draper & Smith, Applied Regression Analysis, 3rd ed., 1.3, 3.2 (from memory).
// Holds      n ≥ 3 and two different x at least; the crossing only where the slope's interval leaves out 0 (b² > g).
// Example    (0, 0) (1, 1.1) (2, 1.9) (3, 3.2): b = 1.04, s = 0.145, t = 4.303: U(b) = 0.279; y = 4 at x = 3.29 to 4.79.
import { mean } from './scale-pull.ts'
import { tPoint } from './student.ts'

export interface Dot {
  readonly x: number
  readonly y: number
}

export interface Trend {
  readonly n: number
  readonly slope: number
  /** U(b), half-width of the slope's interval. */
  readonly slopeDoubt: number
  /** The line at x. */
  readonly at: (x: number) => number
  /** Half-width of the line's own interval at x. */
  readonly doubtAt: (x: number) => number
  /** Whether the slope's interval leaves out 0. */
  readonly isTold: boolean
  /** Where the line reaches a level: first and last x at which its interval holds it; only where the slope is told. */
  readonly reaches: (
    level: number,
  ) => { readonly first: number; readonly middle: number; readonly last: number } | undefined
}

/** The line through the points at a confidence; undefined where they are too few or all at one x. */
export const trendOf = (dots: readonly Dot[], confidence = 0.95): Trend | undefined => {
  const n = dots.length
  const x0 = mean(dots.map(({ x }) => x))
  const y0 = mean(dots.map(({ y }) => y))
  const sxx = dots.reduce((sum, { x }) => sum + (x - x0) ** 2, 0)
  if (n < 3 || !(sxx > 0)) return undefined
  const b = dots.reduce((sum, { x, y }) => sum + (x - x0) * (y - y0), 0) / sxx
  const residual = dots.reduce((sum, { x, y }) => sum + (y - y0 - b * (x - x0)) ** 2, 0)
  const s = Math.sqrt(residual / (n - 2))
  const t = tPoint((1 + confidence) / 2, n - 2)
  const slopeDoubt = (t * s) / Math.sqrt(sxx)
  const isTold = Math.abs(b) > slopeDoubt
  return {
    n,
    slope: b,
    slopeDoubt,
    at: (x) => y0 + b * (x - x0),
    doubtAt: (x) => t * s * Math.sqrt(1 / n + (x - x0) ** 2 / sxx),
    isTold,
    reaches: (level) => {
      if (!isTold) return undefined
      const d = level - y0
      const square = b ** 2 - slopeDoubt ** 2
      // Cannot be negative while the slope is told: = g d² + (b² − g) t² s²/n.
      const root = Math.sqrt(slopeDoubt ** 2 * d ** 2 + (square * (t * s) ** 2) / n)
      const [one, other] = [(b * d - root) / square, (b * d + root) / square]
      return { first: x0 + Math.min(one, other), middle: x0 + d / b, last: x0 + Math.max(one, other) }
    },
  }
}
