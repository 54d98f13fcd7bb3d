// How well a length is measured with a rule in a workshop, where nobody says: half-width of a rectangle.
// Common practice, no published source; measure it better where it matters.

/** ±3 mm by a metric rule, ±1/8 in by an inch one [m]. */
export const lengthHalfWidth = { metric: 0.003, inch: 0.003175 } as const
