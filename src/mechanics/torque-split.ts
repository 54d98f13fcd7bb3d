// Where the torque goes: into the stretch of the bolt, the friction of the thread, the friction of the seat. Plain SI.
//
// Statement  T = F Λ, Λ = λ + μ_s r_s; in the linear form λ = P/2π + μ_t d2/(2 cos 30°), whose terms are the pitch's and the
//            thread's part. K = Λ/d.
// Symbols    T [N·m], F [N]; Λ, λ, r_s, d, d2, P [m]; μ_t in the thread, μ_s in the seat [1]; K nut factor [1].
// Source     ISO 16047:2005 (equations from memory), VDI 2230 Part 1.
// Holds      Below yield. The rule of thumb 10/40/50 % is only that: the pitch's part grows as friction falls.
// Example    M10, seat 14.63 over 11 mm, μ 0.12: 14.6 % pitch, 38.3 % thread, 47.1 % seat; K 0.163.
import { type Thread, type ThreadForm, threadLever } from './thread-friction.ts'

export interface Friction {
  /** μ in the thread and in the seat. */
  readonly thread: number
  readonly seat: number
}

/** Λ [m]: torque for each newton of clamp force. */
export const tighteningLever = (thread: Pick<Thread, 'P' | 'd2'>, mu: Friction, rs: number, form: ThreadForm): number =>
  threadLever(thread, mu.thread, form) + mu.seat * rs

/** K of a thread and seat by their friction. */
export const nutFactorByFriction = (thread: Thread, mu: Friction, rs: number, form: ThreadForm): number =>
  tighteningLever(thread, mu, rs, form) / thread.d

export interface Shares {
  readonly pitch: number
  readonly thread: number
  readonly seat: number
}

/** The three parts of the torque, as fractions that add up to 1 (linear form: the wedge does not come apart). */
export const torqueShares = (thread: Pick<Thread, 'P' | 'd2'>, mu: Friction, rs: number): Shares => {
  const whole = tighteningLever(thread, mu, rs, 'linear')
  const pitch = threadLever(thread, 0, 'linear')
  return {
    pitch: pitch / whole,
    thread: (threadLever(thread, mu.thread, 'linear') - pitch) / whole,
    seat: (mu.seat * rs) / whole,
  }
}

/** F_to/F_from at the same torque, when the friction of thread, seat or both changes. */
export const clampRatio = (
  thread: Pick<Thread, 'P' | 'd2'>,
  rs: number,
  from: Friction,
  to: Friction,
  form: ThreadForm,
): number => tighteningLever(thread, from, rs, form) / tighteningLever(thread, to, rs, form)
