// What a straight line through readings says: a change from its first x to its last, and how a wrench follows its reference.
//
// Statement  The line of trend.ts. Change: D_k = line(x_last) − k line(x_first), u_k² = s²[(1 − k)²/n + (x_l − k x_f)²/S_xx], x
//            from their mean, ν = n − 2. Following: D_k = b − k, u = u(b), so that a slope of 1 is the baseline.
//            Verdicts and intervals as in two-samples.ts and welch.ts with this D_k.
// Symbols    b slope; s spread about the line; S_xx; n points.
// Source     Draper & Smith, Applied Regression Analysis, 3rd ed., 1.3, 1.4 (from memory).
// Holds      Three points or more at two x or more, a line that is straight, equal scatter all along; the line at x_first above 0.
//            x is taken as known: where the reference scatters as well the slope comes out too near 0.
// Example    100, 98.1, 96.0, 93.9 at 0, 1, 2, 3 months: a change of -6.1 % that is seen, and matters at a margin of 4 %.
import { mean } from './scale-pull.ts'
import { tPoint } from './student.ts'
import { type Dot, type Trend, trendOf } from './trend.ts'
import { type DoubtAt, findingsFrom, type Margin, type SampleVerdict, verdictOf } from './two-samples.ts'
import { type Band, ratioEnds } from './welch.ts'

/** u(b) and s back from the slope's half-width. */
const spreadsOf = (dots: readonly Dot[], { slopeDoubt, n }: Trend, confidence: number) => {
  const middle = mean(dots.map(({ x }) => x))
  const sxx = dots.reduce((sum, { x }) => sum + (x - middle) ** 2, 0)
  const u = slopeDoubt / tPoint((1 + confidence) / 2, n - 2)
  return { middle, sxx, u, s: u * Math.sqrt(sxx) }
}

export interface LineChange {
  readonly line: Trend
  readonly first: number
  readonly last: number
  /** From the first x to the last as a fraction of the line at the first; no ends where that is not clear of 0. */
  readonly relative: { readonly value: number } & Partial<Band>
  readonly verdict: SampleVerdict
}

/** How far the line moved over the series; undefined where there is no line, or its first level is not above 0. */
export const changeAlong = (dots: readonly Dot[], margin: Margin): LineChange | undefined => {
  const line = trendOf(dots, margin.confidence)
  if (!line) return undefined
  const [first, last] = [Math.min(...dots.map(({ x }) => x)), Math.max(...dots.map(({ x }) => x))]
  const start = line.at(first)
  if (!(start > 0)) return undefined
  const { middle, sxx, s } = spreadsOf(dots, line, margin.confidence)
  const at: DoubtAt = (k) => ({
    D: line.at(last) - k * start,
    u: s * Math.sqrt((1 - k) ** 2 / line.n + (last - middle - k * (first - middle)) ** 2 / sxx),
    nu: line.n - 2,
  })
  const p = (1 + margin.confidence) / 2
  const ratio = line.at(last) / start
  const ends = start > line.doubtAt(first) ? ratioEnds(at, start, ratio, p) : undefined
  return {
    line,
    first,
    last,
    relative: { value: ratio - 1, ...(ends ? { low: ends.low - 1, high: ends.high - 1 } : {}) },
    verdict: verdictOf(findingsFrom(at, start, margin)),
  }
}

export interface Following {
  readonly line: Trend
  /** Slope less 1, as a fraction, with its interval. */
  readonly gain: { readonly value: number } & Band
  /** The line where the reference is at 0, in the readings' unit, with its interval. */
  readonly offset: { readonly value: number } & Band
  /** Of the slope against 1. */
  readonly verdict: SampleVerdict
  /** The reading farthest from the line, and by how much. It is told, never left out. */
  readonly farthest: Dot & { readonly by: number }
}

/** How readings (y) follow a reference (x); undefined where there is no line. */
export const followingOf = (dots: readonly Dot[], margin: Margin): Following | undefined => {
  const line = trendOf(dots, margin.confidence)
  if (!line) return undefined
  const { u } = spreadsOf(dots, line, margin.confidence)
  const at: DoubtAt = (k) => ({ D: line.slope - k, u, nu: line.n - 2 })
  const off = line.at(0)
  const farthest = dots
    .map((dot) => ({ ...dot, by: dot.y - line.at(dot.x) }))
    .reduce((one, other) => (Math.abs(other.by) > Math.abs(one.by) ? other : one))
  return {
    line,
    gain: {
      value: line.slope - 1,
      low: line.slope - 1 - line.slopeDoubt,
      high: line.slope - 1 + line.slopeDoubt,
    },
    offset: { value: off, low: off - line.doubtAt(0), high: off + line.doubtAt(0) },
    verdict: verdictOf(findingsFrom(at, 1, margin)),
    farthest,
  }
}
