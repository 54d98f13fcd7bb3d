// The thread as a wedge: its diameters, and the torque that it takes for a clamp force. Plain numbers in SI.
//
// Statement  d2 = d − 0.649519 P; d3 = d − 1.226869 P (ISO) or d − 1.299038 P (inch, ASME B1.1); d0 = (d2 + d3)/2,
//            inch D − 0.9743/n; A_s = π d0²/4. Torque in the thread T_th = F λ, with λ
//            wedge    (d2/2) tan(φ + ρ′), tan φ = P/(π d2), tan ρ′ = μ/cos 30°: exact
//            linear   P/2π + μ d2/(2 cos 30°): its first order, ISO 16047
//            rounded  0.16 P + 0.58 d2 μ: the same with rounded numbers, as in VDI 2230 and many tables
// Symbols    d nominal, P pitch, d2 pitch, d3 minor, d0 stress diameter, λ [m]; A_s [m²]; μ [1]; F [N]; φ, ρ′ angles.
// Source     ISO 724, ISO 898-1 9.1.6 (A_s), ASME B1.1 (inch), ISO 16047:2005, VDI 2230 Part 1 (from memory); power screws:
//            Shigley's Mechanical Engineering Design, 9th ed., eqs. 8-1, 8-2, 8-5.
// Holds      Single start, flank angle 60° for linear and rounded. Tables of VDI 2230 (2001 on) come out by `wedge` from
//            diameters rounded to the micrometre, as ISO 724 prints them; `linear` is about 1 % below it.
// Example    M10, μ 0.12, 1 kN: wedge 0.8704, linear 0.8641, rounded 0.8682 N·m.

export interface Thread {
  readonly d: number
  readonly P: number
  readonly d2: number
  readonly d3: number
  readonly d0: number
  readonly As: number
}

/** Diameters as the formulas give them, or as the standard prints them: to the micrometre. */
export type Diameters = 'exact' | 'micrometre'

const H = Math.sqrt(3) / 2 // height of the thread's triangle over P, 60° (ISO 68-1)
const printed = (metres: number): number => Math.round(metres * 1e6) / 1e6

const areaOf = (d0: number): number => (Math.PI / 4) * d0 ** 2

/** ISO metric thread: d3 = d − 17/12 H. */
export const metricThread = (d: number, P: number, diameters: Diameters = 'exact'): Thread => {
  const asGiven = diameters === 'micrometre' ? printed : (metres: number): number => metres
  const d2 = asGiven(d - 0.75 * H * P)
  const d3 = asGiven(d - (17 / 12) * H * P)
  const d0 = (d2 + d3) / 2
  return { d, P, d2, d3, d0, As: areaOf(d0) }
}

/** Unified inch thread: d3 = d − 1.5 H; the stress area by ASME's own rounded constant, A_s = π/4 (D − 0.9743/n)². */
export const inchThread = (d: number, P: number): Thread => {
  const d0 = d - 0.9743 * P
  return { d, P, d2: d - 0.75 * H * P, d3: d - 1.5 * H * P, d0, As: areaOf(d0) }
}

export const threadForms = ['wedge', 'linear', 'rounded'] as const
export type ThreadForm = (typeof threadForms)[number]

/** Any screw as a wedge: flank angle to the side [°], 30 for metric and inch, 14.5 Acme, 0 square. */
export interface Wedge {
  readonly lead: number
  readonly dm: number
  readonly mu: number
  readonly flank?: number
}

const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180)

/** λ [m] of a screw that is tightened, or loosened where the load helps. */
export const wedgeLever = (
  { lead, dm, mu, flank = 30 }: Wedge,
  direction: 'tighten' | 'loosen' = 'tighten',
): number => {
  const phi = Math.atan(lead / (Math.PI * dm))
  const rho = Math.atan(mu / cos(flank))
  return (dm / 2) * Math.tan(direction === 'tighten' ? rho + phi : rho - phi)
}

/** λ [m]: torque in the thread for each newton of clamp force. */
export const threadLever = ({ P, d2 }: Pick<Thread, 'P' | 'd2'>, mu: number, form: ThreadForm): number => {
  if (form === 'linear') return P / (2 * Math.PI) + (mu * d2) / (2 * cos(30))
  if (form === 'rounded') return 0.16 * P + 0.58 * d2 * mu
  return wedgeLever({ lead: P, dm: d2, mu })
}

/** T_th [N·m] in the thread at a clamp force F [N]. */
export const threadTorque = (F: number, thread: Pick<Thread, 'P' | 'd2'>, mu: number, form: ThreadForm): number =>
  F * threadLever(thread, mu, form)

/** Share of the torque in that lifts the load: F P/2π over what was put in. */
export const screwEfficiency = (F: number, lead: number, T: number): number => (F * lead) / (2 * Math.PI * T)
