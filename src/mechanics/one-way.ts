// One-way analysis of variance: how much of the spread lies between the sets, and how much within them.
//
// Statement  Between: Σ n_j (mean_j − mean)², J − 1 degrees of freedom; within: Σ Σ (x − mean_j)², N − J; F = MS_b/MS_w.
// Symbols    J sets, N readings in all; s = √MS_w the pooled spread within a set.
// Source     NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3 (from memory).
// Holds      Sets of equal spread for the pooled s; two sets or more, N > J.
// Example    (1, 2, 3) and (2, 3, 4): between 1.5, within 4, F = 1.5, s = 1.
import { mean } from './scale-pull.ts'

export interface OneWay {
  readonly between: { readonly ss: number; readonly df: number }
  readonly within: { readonly ss: number; readonly df: number }
  readonly F: number
  /** Share of the whole spread that lies between the sets. */
  readonly rSquared: number
  readonly s: number
}

export const oneWay = (sets: ReadonlyArray<readonly number[]>): OneWay => {
  const all = sets.flat()
  const middle = mean(all)
  const means = sets.map((set) => mean(set))
  const within = sets.reduce(
    (sum, set, j) => sum + set.reduce((part, x) => part + (x - (means[j] as number)) ** 2, 0),
    0,
  )
  const between = sets.reduce((sum, set, j) => sum + set.length * ((means[j] as number) - middle) ** 2, 0)
  const [dfB, dfW] = [sets.length - 1, all.length - sets.length]
  return {
    between: { ss: between, df: dfB },
    within: { ss: within, df: dfW },
    F: between / dfB / (within / dfW),
    rSquared: between / (between + within),
    s: Math.sqrt(within / dfW),
  }
}
