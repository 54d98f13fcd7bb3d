// The seat under head or nut: the radius on which its friction works. Plain numbers in SI, angles in degrees.
//
// Statement  T_s = F μ r_s. Flat ring from r_i to r_o: r_s = (r_o + r_i)/2, or under an even pressure
//            r_s = (2/3)(r_o³ − r_i³)/(r_o² − r_i²). Cone of half angle α: r_s = flat/sin α. Ball of radius R touching
//            on a narrow ring of radius r: r_s = r/√(1 − (r/R)²), r the flat ring's own radius.
// Symbols    d_w outer, d_h hole diameter, r, R [m]; α half the included angle [°]; r_s [m]; F [N]; μ [1].
// Source     Mean radius: ISO 16047, VDI 2230. Even pressure and cone: clutch equations, Shigley's Mechanical Engineering
//            Design, 9th ed., 16-5 and 16-7 (from memory). Ball: the cone that touches it, worked out.
// Holds      d_w > d_h ≥ 0, 0 < α ≤ 90°, r < R. A 60° cone (α 30°) doubles the friction of the flat seat.
// Example    18 mm over 13 mm, α 30°: r_s 15.5 mm, flat 7.75 mm.

export type SeatModel = 'mean' | 'even-pressure'

export type Seat =
  | { readonly kind: 'flat'; readonly dw: number; readonly dh: number }
  | { readonly kind: 'cone'; readonly dw: number; readonly dh: number; readonly alpha: number }
  | { readonly kind: 'ball'; readonly dw: number; readonly dh: number; readonly R: number }

/** r [m] of a flat ring. */
export const flatRadius = (dw: number, dh: number, model: SeatModel = 'mean'): number =>
  model === 'mean' ? (dw + dh) / 4 : (dw ** 3 - dh ** 3) / (3 * (dw ** 2 - dh ** 2))

/** r [m] on a cone that touches over the same ring. */
export const coneRadius = (flat: number, alpha: number): number => flat / Math.sin((alpha * Math.PI) / 180)

/** r [m] on a ball of radius R that touches on a ring of radius r. */
export const ballRadius = (r: number, R: number): number => r / Math.sqrt(1 - (r / R) ** 2)

/** r_s [m] of any seat. */
export const seatRadius = (seat: Seat, model: SeatModel = 'mean'): number => {
  const flat = flatRadius(seat.dw, seat.dh, model)
  if (seat.kind === 'cone') return coneRadius(flat, seat.alpha)
  if (seat.kind === 'ball') return ballRadius(flat, seat.R)
  return flat
}

/** Whether the seat can be at all: a ring of some width, a cone that opens, a ball larger than its ring. */
export const seatHolds = (seat: Seat): boolean => {
  if (!(seat.dw > seat.dh && seat.dh >= 0)) return false
  if (seat.kind === 'cone') return seat.alpha > 0 && seat.alpha <= 90
  return seat.kind === 'flat' || seat.R > flatRadius(seat.dw, seat.dh)
}

/** T_s [N·m] in the seat at a clamp force F [N]. */
export const seatTorque = (F: number, mu: number, rs: number): number => F * mu * rs
