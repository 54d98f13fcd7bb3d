// The lever as a mechanic writes it, on its own: what to dial for a straight adapter.

/** S = T L/(L + E). */
export const settingFor = (T: number, L: number, E: number): number => (T * L) / (L + E)
