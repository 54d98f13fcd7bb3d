// Several sets of readings, each against the first: the chance of a false word is held for all of them together.
//
// Statement  k comparisons with one baseline, each as in two-samples.ts. Three claims may be made of each: seen, inside the margin,
//            beyond it. Each claim is a family of k tests held to α by Holm's steps: those that hold at α/r stand, r counts those
//            left, until none is added. Intervals are Bonferroni's: each at 1 − α/k, so that all hold together.
// Symbols    α = 1 − confidence; k sets besides the first; r tests not yet decided.
// Source     Holm 1979, A simple sequentially rejective multiple test procedure; the intervals: Bonferroni's inequality.
// Holds      Any dependence between the comparisons, so a shared baseline too. Holm sees a little more than Bonferroni:
//            a set may be seen while its interval still touches 0.
// Example    Of three sets, one 10 % up and one alike: that one matters, and with five tight readings the other does not.
import { type Comparison, compareSamples, findingsOf, type Margin, verdictOf } from './two-samples.ts'
import { type SampleSummary, summaryOf } from './welch.ts'

/** Which of k claims stand by Holm's steps; `holds` tells whether a claim holds at a level for itself. `unread` more are to come. */
export const holmSteps = (
  k: number,
  alpha: number,
  holds: (index: number, level: number) => boolean,
  unread = 0,
): boolean[] => {
  const standing = Array.from({ length: k }, () => false)
  for (;;) {
    const left = standing.flatMap((stands, index) => (stands ? [] : [index]))
    const found = left.filter((index) => holds(index, alpha / (left.length + unread)))
    if (found.length === 0) return standing
    for (const index of found) standing[index] = true
  }
}

export interface AgainstFirst {
  /** In the order of the sets after the first; intervals at the confidence of the family. */
  readonly each: readonly Comparison[]
  /** At which each interval was worked out, so that all hold together at the confidence asked. */
  readonly eachAt: number
}

/** Every further set against the first; `planned` of them, where some are not read yet. Refuse before: a set of fewer than two, or a first mean at or below 0. */
export const againstFirst = (
  first: readonly number[],
  others: ReadonlyArray<readonly number[]>,
  margin: Margin,
  resolution = 0,
  planned = others.length,
): AgainstFirst => {
  const alpha = 1 - margin.confidence
  const k = Math.max(others.length, planned)
  const baseline = summaryOf(first, resolution)
  const sets = others.map((readings) => summaryOf(readings, resolution))
  const family = (claim: 'inside' | 'beyond' | 'excludesZero'): boolean[] =>
    holmSteps(
      sets.length,
      alpha,
      (index, level) =>
        findingsOf(baseline, sets[index] as SampleSummary, { m: margin.m, confidence: 1 - level })[claim],
      k - sets.length,
    )
  const [inside, beyond, excludesZero] = [family('inside'), family('beyond'), family('excludesZero')]
  const eachAt = k > 1 ? 1 - alpha / k : margin.confidence
  const each = others.map((readings, index): Comparison => {
    const { readingsNeeded, ...alone } = compareSamples(first, readings, { ...margin, confidence: eachAt }, resolution)
    const [isInside, isBeyond, isSeen] = [inside, beyond, excludesZero].map((all) => all[index] === true)
    const verdict = verdictOf({ inside: !!isInside, beyond: !!isBeyond, excludesZero: !!isSeen })
    const isOpen = verdict === 'not-decided' || verdict === 'seen-not-decided'
    return { ...alone, verdict, ...(isOpen && readingsNeeded !== undefined ? { readingsNeeded } : {}) }
  })
  return { each, eachAt }
}
