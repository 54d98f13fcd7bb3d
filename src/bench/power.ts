// Before the first reading, and between readings: what difference a run with so many readings of each condition could see, how many it
// takes, and the spread that the readings so far show. With several conditions each is weighed at its share of the family's error.
import { oneWay } from '../mechanics/one-way.ts'
import { chanceInside, chanceSeen, fewestFor, smallestSeen } from '../mechanics/power.ts'
import type { Margin } from '../mechanics/two-samples.ts'

/** Four times in five: the usual aim (common practice). */
export const USUAL_CHANCE = 0.8

export interface Foresight {
  /** Confidence of each comparison, so that all hold together. */
  readonly eachAt: number
  /** The smallest true difference, as a fraction of the baseline, that is seen with the wanted chance. */
  readonly smallestSeen: number
  /** Chance that conditions without any difference are told to have none that matters. */
  readonly chanceAlike: number
  /** Fewest readings of each to see a difference of the margin; none where no sensible number would do. */
  readonly toSeeMargin?: number
  /** Fewest of each to tell alike from alike. */
  readonly toTellAlike?: number
}

/** What n readings of each condition can do at a spread (a fraction of the baseline). n ≥ 2, spread above 0, two conditions or more. */
export const foresee = (
  n: number,
  spread: number,
  conditions: number,
  margin: Margin,
  wanted: number = USUAL_CHANCE,
): Foresight => {
  // Bonferroni's share is what Holm's first step asks: a run can do a little better than this, never worse.
  const eachAt = 1 - (1 - margin.confidence) / Math.max(1, conditions - 1)
  const toSeeMargin = fewestFor((each) => chanceSeen(each, spread, margin.m, eachAt), wanted)
  const toTellAlike = fewestFor((each) => chanceInside(each, spread, margin.m, eachAt), wanted)
  return {
    eachAt,
    smallestSeen: smallestSeen(n, spread, eachAt, wanted),
    chanceAlike: chanceInside(n, spread, margin.m, eachAt),
    ...(toSeeMargin === undefined ? {} : { toSeeMargin }),
    ...(toTellAlike === undefined ? {} : { toTellAlike }),
  }
}

/** The spread found so far, within conditions, as a fraction of the first one's mean; none while no condition was read twice. */
export const foundSpread = (sets: ReadonlyArray<readonly number[]>): number | undefined => {
  const read = sets.filter((set) => set.length > 0)
  const [first] = read
  if (!first || !read.some((set) => set.length > 1)) return undefined
  const middle = first.reduce((sum, value) => sum + value, 0) / first.length
  const { s } = oneWay(read)
  return middle > 0 && s > 0 ? s / middle : undefined
}
