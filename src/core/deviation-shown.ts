// A deviation as people are told it: which side, and how far in two figures. ISO 6789's sign stays in the numbers; in words nobody
// has to remember that positive gives less.

export interface DeviationShown {
  /** `low`: the wrench gives less than it says; `high`: more. */
  readonly side: 'low' | 'high' | 'right'
  /** In %, never below 0. */
  readonly size: number
}

const FEWEST = 2
const MOST = 6
/** Nobody reads a wrench nearer than this. */
const LEAST = 0.01 // %

/** `percent` as ISO 6789 has it. As many figures as show on which side of its limit it lies, two as a rule. */
export const deviationShown = (percent: number, limit?: number): DeviationShown => {
  const far = Math.abs(percent)
  const rounded = Math.round(far / LEAST) * LEAST
  if (rounded === 0) return { side: 'right', size: 0 }
  const side = percent > 0 ? 'low' : 'high'
  for (let figures = FEWEST; figures < MOST; figures++) {
    const size = Number((figures === FEWEST ? rounded : far).toPrecision(figures))
    if (limit === undefined || size > limit === far > limit) return { side, size }
  }
  return { side, size: far }
}
