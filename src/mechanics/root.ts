// Where a function crosses zero, between two places where its sign differs: for what no formula gives.
//
// Statement  Inverse quadratic interpolation where the three last points allow it, halving where they do not.
// Source     T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145–149; written out from memory.
// Holds      f continuous, f(low) and f(high) of different sign or one of them 0.
// Outside    Signs alike: the end that is nearer to zero comes back.
// Example    x² − 2 between 0 and 2: 1.41421356237.

const MOST_STEPS = 100
// Two doubles that are as near as this cannot be told apart in anything that is shown or compared; about a root at 0, where
// doubles go on for ever, nearness is judged by the way that was to be searched.
const CLOSE = 4 * Number.EPSILON
const CLOSE_TO_ZERO = 1e-3 * CLOSE

/** x with f(x) = 0 to the last digits of a double. */
export const rootBetween = (f: (x: number) => number, low: number, high: number): number => {
  let [newest, fNewest] = [low, f(low)]
  let [opposite, fOpposite] = [high, f(high)]
  let [oldest, fOldest] = [newest, fNewest]
  const leastWay = CLOSE_TO_ZERO * Math.abs(high - low)
  let share = 0.5
  for (let step = 0; step < MOST_STEPS; step++) {
    const x = newest + share * (opposite - newest)
    const fx = f(x)
    if (Math.sign(fx) === Math.sign(fNewest)) [oldest, fOldest] = [newest, fNewest]
    else [oldest, fOldest, opposite, fOpposite] = [opposite, fOpposite, newest, fNewest]
    ;[newest, fNewest] = [x, fx]
    const [best, fBest] = Math.abs(fNewest) < Math.abs(fOpposite) ? [newest, fNewest] : [opposite, fOpposite]
    const least = (CLOSE * Math.abs(best) + leastWay) / Math.abs(opposite - newest)
    if (fBest === 0 || least > 0.5) return best
    share = Math.min(1 - least, Math.max(least, nextShare(newest, fNewest, opposite, fOpposite, oldest, fOldest)))
  }
  return Math.abs(fNewest) < Math.abs(fOpposite) ? newest : opposite
}

// Where on the way from the newest point to the opposite one the parabola through all three crosses; half where it bends too much.
const nextShare = (a: number, fa: number, b: number, fb: number, c: number, fc: number): number => {
  const along = (a - b) / (c - b)
  const up = (fa - fb) / (fc - fb)
  if (!(up ** 2 < along && (1 - up) ** 2 < 1 - along)) return 0.5
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
}
