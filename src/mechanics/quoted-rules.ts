// Rules that people quote, worked out as they are quoted. None of them is the desk's: each is right under a condition that is seldom told.
// L lever, E adapter [m], T torque at the fastener; each gives what to dial.

const FOOT = 0.3048 // m, exact (NIST SP 811, App. B.8)

/** S = T (1 − E/L), a widely printed shortcut: below T L/(L + E) by exactly the share (E/L)². 100, 16 in, 2 in: 87.5 for 88.9. */
export const oneMinus = (T: number, E: number, L: number): number => T * (1 - E / L)

/** S = T/(1 + E in feet): right for a lever of one foot only. 100 with 9 in: 57.1. */
export const oneFoot = (T: number, E: number): number => T / (1 + E / FOOT)

/** S = T L/(L + E), applied to a bar under the drive, where it has no place. */
export const asAdapter = (T: number, E: number, L: number): number => (T * L) / (L + E)

/** A percentage taken off a dry figure. 100 less 25 %: 75. */
export const lessBy = (T: number, percent: number): number => T * (1 - percent / 100)
