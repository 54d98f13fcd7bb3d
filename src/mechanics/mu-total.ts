// One friction number for thread and seat together, from a measured torque and clamp force. Plain numbers in SI.
//
// Statement  μ_tot = (T/F − P/2π)/(d2/(2 cos 30°) + r_s), as if thread and seat were equally slippery.
//            Where the torque in the thread alone is known, each by its own: μ_t = (T_th/F − P/2π) · 2 cos 30°/d2,
//            μ_s = (T − T_th)/(F r_s).
// Symbols    T, T_th [N·m]; F [N]; P, d2, r_s [m]; μ [1].
// Source     ISO 16047:2005, clause 8 (from memory). Numbers made with 0.16 P and 0.58 d2 come back a little different:
//            0.120 returns as 0.1204.
// Holds      T/F > P/2π; below it the numbers contradict each other, and μ comes out negative.
// Example    M10, 48.46 N·m at 29.6 kN, D_b 12.815 mm: 0.1204.
import type { Thread } from './thread-friction.ts'

const COS_30 = Math.sqrt(3) / 2

/** μ_tot of a torque and the clamp force that it gave. */
export const muTotal = (T: number, F: number, { P, d2 }: Pick<Thread, 'P' | 'd2'>, rs: number): number =>
  (T / F - P / (2 * Math.PI)) / (d2 / (2 * COS_30) + rs)

/** μ_t of the torque in the thread alone. */
export const muThread = (T_th: number, F: number, { P, d2 }: Pick<Thread, 'P' | 'd2'>): number =>
  ((T_th / F - P / (2 * Math.PI)) * 2 * COS_30) / d2

/** μ_s of what is left for the seat. */
export const muSeat = (T: number, T_th: number, F: number, rs: number): number => (T - T_th) / (F * rs)
