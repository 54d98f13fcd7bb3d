// How far clamp forces or torques spread around what was meant. Plain numbers.
//
// Statement  α = F_max/F_min. As ± of the middle: s = (α − 1)/(α + 1), α = (1 + s)/(1 − s). With an upper limit F_max that
//            nothing may pass, F_min = F_max/α, and the set value is F_max/(1 + s).
// Symbols    α tightening factor [1]; s half range as a fraction of the middle [1]; F in any one unit.
// Source     VDI 2230 Part 1 (tightening factor α_A; from memory); list of 1986 as reprinted by a supplier.
// Holds      A span, not a standard deviation; it belongs to a method (wrench, estimated friction, angle).
// Example    α 1.8: ±28.6 %; 41.9 kN at most means 23.3 kN at least.

/** s of a tightening factor. */
export const halfRange = (alpha: number): number => (alpha - 1) / (alpha + 1)

/** α of a half range. */
export const tighteningFactor = (s: number): number => (1 + s) / (1 - s)

/** The least [same unit] when the most is F_max. */
export const leastOf = (most: number, alpha: number): number => most / alpha

/** The value to set [same unit] so that +s does not pass the most. */
export const settingBelow = (most: number, s: number): number => most / (1 + s)

/** What ±s makes of a middle value [same unit]. */
export const scatterBand = (middle: number, s: number): { low: number; high: number } => ({
  low: middle * (1 - s),
  high: middle * (1 + s),
})
