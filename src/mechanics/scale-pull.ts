// A wrench checked with a scale or a weight: the torque of a pull at a distance, and of the wrench's own weight.
//
// Statement  T = F D cos ψ ± m g x cos γ. The weight counts where the drive axis lies level (γ the handle above level,
//            taken 0 here); it adds when the pull turns the handle down, and takes away when the pull turns it up.
// Symbols    F pull [N], D along the handle from the drive centre to where it acts [m], ψ how far the pull is from square
//            to the handle [°], m mass of the wrench [kg], x its balance point from the drive [m], g = 9.80665 m/s².
// Source     Statics; g by definition (CGPM 1901, NIST SP 811).
// Holds      ψ well below 90°; D = L, or the hand's place is corrected first.
// Example    50 lbf at 12 in: 50 lbf·ft.
import { cosine } from './lever.ts'

export const STANDARD_GRAVITY = 9.80665

export interface Pull {
  readonly F: number
  readonly D: number
  readonly psi: number
}

/** Torque of the wrench's own weight [N·m], with its sign: + down, − up. */
export const weightTorque = (m: number, x: number, direction: 'down' | 'up'): number =>
  (direction === 'down' ? 1 : -1) * m * STANDARD_GRAVITY * x

/** T [N·m] of one pull and the weight's share of it. */
export const torqueOfPull = ({ F, D, psi }: Pull, weight: number): number => F * D * cosine(psi) + weight

/** F [N] that gives T [N·m] at D [m], square to the handle. */
export const forceFor = (T: number, D: number): number => T / D

export const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** Standard deviation of a sample; 0 for a single value. */
export const sampleDeviation = (values: readonly number[]): number => {
  if (values.length < 2) return 0
  const middle = mean(values)
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1))
}
