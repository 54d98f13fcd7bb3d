// Student's distribution by its density and Simpson's rule: an independent way to the library's points.
import { gamma } from 'mathjs'

const PANELS = 20_000

/** P(T ≤ t) for t ≥ 0. */
export const tBelowByHand = (t: number, nu: number): number => {
  const scale = gamma((nu + 1) / 2) / (Math.sqrt(nu * Math.PI) * gamma(nu / 2))
  const density = (x: number): number => scale * (1 + (x * x) / nu) ** (-(nu + 1) / 2)
  const h = t / PANELS
  let sum = density(0) + density(t)
  for (let panel = 1; panel < PANELS; panel++) sum += density(panel * h) * (panel % 2 === 1 ? 4 : 2)
  return 0.5 + (sum * h) / 3
}
