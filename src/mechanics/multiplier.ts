// A torque multiplier: what to put in for what must come out. Plain numbers in SI.
//
// Statement  Torque ratio R as marked holds the losses already: T_in = T/R. A turns ratio i (turns in for one turn out)
//            does not: T = i η T_in. The lowest input, at the best efficiency, leads: it cannot over-tighten by this cause.
// Symbols    T out, T_in in [N·m]; R torque ratio, i turns ratio [1]; η efficiency [1].
// Source     Conservation of energy. The band of η is common practice, no source: ask the maker for the torque ratio.
// Holds      R ≥ 1, i ≥ 1, 0 < η ≤ 1.
// Example    1000 N·m with turns 5 : 1: 210.5 N·m at η 0.95, up to 266.7 N·m at 0.75.

export interface Efficiency {
  readonly low: number
  readonly high: number
}

/** What a planetary multiplier passes on (common practice, no source). */
export const usualEfficiency: Efficiency = { low: 0.75, high: 0.95 }

/** T_in [N·m] by the marked torque ratio. */
export const inputByTorqueRatio = (T: number, R: number): number => T / R

/** T_in [N·m] by the turns ratio: from the lowest, which leads, to the highest. */
export const inputByTurnsRatio = (
  T: number,
  i: number,
  efficiency: Efficiency = usualEfficiency,
): { low: number; high: number } => ({ low: T / (i * efficiency.high), high: T / (i * efficiency.low) })

/** T [N·m] that T_in gives by the turns ratio, over the band of η. */
export const outputByTurnsRatio = (
  T_in: number,
  i: number,
  efficiency: Efficiency = usualEfficiency,
): { low: number; high: number } => ({ low: T_in * i * efficiency.low, high: T_in * i * efficiency.high })
