// How much clamp force a bolt bears while it is being turned: pull and twist together. Plain numbers in SI.
//
// Statement  σ = F/A_s, τ = T_th/W_p, σ_red = √(σ² + 3 τ²) ≤ ν R_p; so F = ν R_p A_s/√(1 + 3 (λ A_s/W_p)²), λ = T_th/F.
//            W_p = π d0³/12 (fully plastic; VDI 2230 since 2001) or π d0³/16 (elastic; the tables of 1986).
//            Shares without twist: F/(S_p A_s) of proof, F/(R_p A_s) of yield.
// Symbols    F [N]; T_th torque in the thread, without the seat [N·m]; A_s [m²]; d0, λ [m]; W_p [m³]; R_p yield (R_eL, R_p0.2),
//            S_p proof stress, σ, τ [Pa]; ν share [1].
// Source     VDI 2230 Part 1 (from memory), ISO 898-1 (proof). The 1986 tables also took 900 and 1080 MPa for 10.9 and 12.9
//            where later ones take 940 and 1100: never mix them.
// Holds      Up to yield, first tightening; the twist mostly goes when the wrench is off. Stainless has no proof stress: R_p0.2.
// Example    M12 10.9, μ_t 0.12, ν 0.9: 63.2 kN, 11 % below 0.9 R_p A_s.
import type { Thread } from './thread-friction.ts'

export type TwistModulus = 'plastic' | 'elastic'

/** W_p [m³] of the thread's stress diameter. */
export const twistModulus = (d0: number, kind: TwistModulus): number =>
  (Math.PI * d0 ** 3) / (kind === 'plastic' ? 12 : 16)

type Section = Pick<Thread, 'd0' | 'As'>

const twistRatio = ({ d0, As }: Section, lever: number, kind: TwistModulus): number =>
  Math.sqrt(1 + 3 * ((lever * As) / twistModulus(d0, kind)) ** 2)

/** F [N] at which pull and twist together reach the share ν of R_p. `lever` is λ of the thread alone. */
export const clampAtYieldShare = (
  nu: number,
  Rp: number,
  section: Section,
  lever: number,
  kind: TwistModulus,
): number => (nu * Rp * section.As) / twistRatio(section, lever, kind)

export interface Stress {
  readonly sigma: number
  readonly tau: number
  readonly reduced: number
}

/** σ, τ and σ_red [Pa] at F and T_th. */
export const stressOf = (F: number, T_th: number, section: Section, kind: TwistModulus): Stress => {
  const sigma = F / section.As
  const tau = T_th / twistModulus(section.d0, kind)
  return { sigma, tau, reduced: Math.sqrt(sigma ** 2 + 3 * tau ** 2) }
}

/** σ_red/R_p: how much of yield is used while turning. */
export const yieldShare = (F: number, Rp: number, section: Section, lever: number, kind: TwistModulus): number =>
  stressOf(F, F * lever, section, kind).reduced / Rp

/** F/(S A_s): share of a stress S (proof, or yield or tensile strength) without twist. */
export const plainShare = (F: number, S: number, As: number): number => F / (S * As)

/** F [N] at a share of a stress S, without twist: 75 % of proof, 70 % of tensile strength. */
export const clampAtPlainShare = (share: number, S: number, As: number): number => share * S * As
