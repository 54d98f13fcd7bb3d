// Torque and clamp force through one number: the nut factor K. Plain numbers in SI.
//
// Statement  T = K d F. So at the same torque F_to/F_from = K_from/K_to, and for the same clamp force
//            T_to/T_from = K_to/K_from.
// Symbols    T torque [N·m], d nominal diameter [m], F clamp force [N], K nut factor [1].
// Source     Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 8-27.
// Holds      Below yield, steady tightening; K is a property of one thread, seat, finish and lubricant, and scatters.
// Example    K 0.3, d 0.19 in, F 1275 lbf: T = 72.7 lbf·in.
import { coverage } from './uncertainty.ts'

/** A number with the ends that sources give for it. */
export interface Span {
  readonly low: number
  readonly typical: number
  readonly high: number
}

export const torqueForClamp = (K: number, d: number, F: number): number => K * d * F
export const clampForTorque = (K: number, d: number, T: number): number => T / (K * d)
export const nutFactorOf = (T: number, d: number, F: number): number => T / (d * F)

/** The ratio of two spans with its ends: the lowest over the highest, the highest over the lowest. */
export const ratioOf = (over: Span, under: Span): Span => ({
  low: over.low / under.high,
  typical: over.typical / under.typical,
  high: over.high / under.low,
})

/** Mean of a shop's own K and the 95 % interval for the next bolt: mean ± t s √(1 + 1/n). One value has no interval. */
export const nextBolt = (values: readonly number[]): { mean: number; halfWidth?: number } => {
  const n = values.length
  const mean = values.reduce((sum, value) => sum + value, 0) / n
  if (n < 2) return { mean }
  const s = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1))
  return { mean, halfWidth: coverage(0.95, n - 1) * s * Math.sqrt(1 + 1 / n) }
}
