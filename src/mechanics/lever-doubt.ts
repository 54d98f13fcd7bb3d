// What makes the torque at the fastener uncertain when a wrench and adapters are pulled by hand, relative to that torque.
//
// Statement  ln T = ln S + ln(1 − p/L) + ln(H + X) − ln(H − p). Half-widths of rectangles, each times its derivative:
//            wrench tolerance l; lever and adapter lengths; where the hand goes; adapter angles; pull not square by δ:
//            T changes by tan δ · Y/(H + X).
// Source     GUM first order (JCGM 100:2008, 5.1). The default half-widths are common practice.
// Example    L 14 in, E 2 in straight, defaults of the inch system: u 2.37 %, band ±4.0 %.
import { cosine, type Lever, type Link, reachAside, sine } from './lever.ts'
import type { Contribution } from './uncertainty.ts'

export interface LeverDoubt {
  /** Wrench tolerance as a fraction (0.04). */
  readonly wrench: number
  /** Half-width of every measured length [m]. */
  readonly length: number
  /** Half-width of where the hand goes [m]. */
  readonly hand: number
  /** Half-width of every adapter's angle [°]. */
  readonly angle: number
  /** Half-width of the pull's direction from square to the handle [°]. */
  readonly square: number
  /** Half-width of the pivot offset [m]; 0 where it is known. */
  readonly pivot: number
}

/** Relative contributions (fractions of T). `handFollowsLever`: the hand is at the lever's own mark, so one error moves both. */
export const leverContributions = (
  lever: Lever,
  chain: readonly Link[],
  doubt: LeverDoubt,
  handFollowsLever: boolean,
): Contribution[] => {
  const { L, H, p, X } = lever
  const byHand = 1 / (H + X) - 1 / (H - p)
  const byLever = p / (L * (L - p)) + (handFollowsLever ? byHand : 0)
  const byPivot = 1 / (H - p) - 1 / (L - p)
  return [
    { name: 'wrench', halfWidth: doubt.wrench },
    { name: 'lever', halfWidth: byLever * doubt.length },
    ...chain.map(({ theta }) => ({ name: 'adapter', halfWidth: (cosine(theta) * doubt.length) / (H + X) })),
    { name: 'hand', halfWidth: byHand * doubt.hand },
    ...chain.map(({ E, theta }) => ({
      name: 'angle',
      halfWidth: (E * sine(theta) * doubt.angle * Math.PI) / 180 / (H + X),
    })),
    { name: 'square', halfWidth: (Math.tan((doubt.square * Math.PI) / 180) * reachAside(chain)) / (H + X) },
    { name: 'pivot', halfWidth: byPivot * doubt.pivot },
  ]
}
