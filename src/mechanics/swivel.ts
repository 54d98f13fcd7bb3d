// A universal joint between wrench and fastener, bent by β. Plain numbers in SI, angles in degrees.
//
// Statement  Without friction the power is the same on both sides, and the speeds swing twice in a turn:
//            T_out/T_in = (1 − sin²β cos²γ)/cos β, γ the turn of the driving fork from the plane of the bend.
//            So the ratio swings between cos β (γ = 0°) and 1/cos β (γ = 90°).
// Symbols    T_in at the wrench, T_out at the fastener [N·m]; β bend, γ turn [°].
// Source     Single Cardan joint, Shigley's Mechanical Engineering Design (kinematics; from memory); two engine manuals allow
//            up to 15° without a correction.
// Holds      0 ≤ β < 90°, no friction. Friction and the side load take more, about a tenth in all at a steep bend (common
//            practice), so the low end is no floor. No corrected setting can be offered: γ is not known.
// Example    β = 30°: the fastener gets 0.866 to 1.155 times what the wrench shows.
import { cosine, sine } from './lever.ts'

/** Up to this bend [°] two engine manuals use a swivel without a correction. */
export const BEND_UNCORRECTED = 15
/** Share of the torque that friction and side load may take besides, at a steep bend (common practice, no source). */
export const SWIVEL_LOSS = 0.1

export interface SwivelRatio {
  readonly low: number
  readonly high: number
}

/** T_out/T_in over a whole turn, without friction. */
export const swivelRatio = (beta: number): SwivelRatio => ({ low: cosine(beta), high: 1 / cosine(beta) })

/** T_out/T_in with the driving fork γ [°] past the plane of the bend, without friction. */
export const swivelRatioAt = (beta: number, gamma: number): number =>
  (1 - sine(beta) ** 2 * cosine(gamma) ** 2) / cosine(beta)

/** What the fastener may get [N·m] for T_in at the wrench. */
export const swivelOutput = (T_in: number, beta: number): SwivelRatio => {
  const { low, high } = swivelRatio(beta)
  return { low: T_in * low, high: T_in * high }
}

/** What the wrench may have shown [N·m] for T_out at the fastener: the other way round, to judge a reading, not to set one. */
export const swivelInput = (T_out: number, beta: number): SwivelRatio => {
  const { low, high } = swivelRatio(beta)
  return { low: T_out / high, high: T_out / low }
}
