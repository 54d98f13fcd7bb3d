// Turn of the nut: how far from snug for a clamp force, and back. Plain numbers in SI, the turn in degrees.
//
// Statement  A turn moves the nut by P/360 for each degree; bolt and joint share it: F = (P/360) turn/(1/k_b + 1/k_j).
//            With a rigid joint only the bolt stretches: turn = 360 F/(k_b P).
// Symbols    F [N]; P pitch [m]; k_b, k_j [N/m]; turn [°] from snug.
// Source     MIL-HDBK-60 (bolt alone; from memory); with the joint: Shigley's Mechanical Engineering Design, 9th ed., 8-5, 8-9.
// Holds      From snug, linear, up to yield. Past yield the formula does not hold; structural turns (RCSC) go past it on purpose.
// Example    1/2-13, 63750 psi over 3 in, E 29 Mpsi, rigid joint: 30.86°.

/** Turn [°] from snug that gives F; k_j = ∞ for a rigid joint. */
export const turnForClamp = (F: number, P: number, kb: number, kj: number): number => (360 / P) * F * (1 / kb + 1 / kj)

/** F [N] that a turn [°] from snug gives, as long as it stays below yield. */
export const clampForTurn = (turn: number, P: number, kb: number, kj: number): number =>
  ((P / 360) * turn) / (1 / kb + 1 / kj)

/** Whether F has reached the force at which the bolt yields: past it the answer stops. */
export const pastYield = (F: number, Rp: number, As: number): boolean => F > Rp * As
