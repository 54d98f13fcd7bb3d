// Wrench and adapters as a lever. Plain numbers in SI (m, N·m), angles in degrees; the symbols are the book's.
//
// Statement  The pull F acts at the hand H, square to the handle and in its plane; the fastener alone reacts it:
//            T = F (H + X), with X = Σ E_i cos θ_i the reach of the adapters along the wrench and
//            Y = Σ E_i sin θ_i their reach to the side; every θ_i is measured from straight ahead of the wrench.
//            The wrench feels S = F (H − p) L/(L − p): it trips on a pivot p behind the drive and was set with the
//            hand at L. So T/S = (L − p)/L · (H + X)/(H − p).
// Symbols    S setting or reading, T torque at the fastener [N·m]; L lever, H hand, p pivot offset, E adapter [m]; θ [°].
// Source     One adapter, H = L, p = 0: T = S (L + E cos θ)/L, US Army TM 9-254 (torque wrench, adapters) and
//            FAA AC 43.13-1B fig. 7-2 (from memory). The rest follows from statics.
// Holds      H + X > 0, 0 ≤ p < L, p < H. Outside: the pull turns the fastener backwards, or nothing is felt.
// Example    S for T = 40 lbf·ft, L = 12 in, E = 4 in at 0°: 40 · 12/16 = 30 lbf·ft.

export interface Link {
  readonly E: number
  readonly theta: number
}

export interface Lever {
  readonly L: number
  readonly H: number
  readonly p: number
  readonly X: number
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

// cos 90° and sin 180° are 0, not 6e-17: an adapter square to the wrench changes nothing at all.
export const cosine = (degrees: number): number => (Math.abs(degrees) === 90 ? 0 : Math.cos(radians(degrees)))
export const sine = (degrees: number): number => (Math.abs(degrees) === 180 ? 0 : Math.sin(radians(degrees)))

/** X [m]: how far the chain reaches ahead of the drive (negative: back toward the hand). */
export const reachAhead = (chain: readonly Link[]): number =>
  chain.reduce((sum, { E, theta }) => sum + E * cosine(theta), 0)

/** Y [m]: how far the chain reaches to the side that the handle turns to. */
export const reachAside = (chain: readonly Link[]): number =>
  chain.reduce((sum, { E, theta }) => sum + E * sine(theta), 0)

/** T/S, always this way round (some manuals print the inverse). */
export const factor = ({ L, H, p, X }: Lever): number => ((L - p) / L) * ((H + X) / (H - p))

/** S that gives T. */
export const settingFor = (T: number, lever: Lever): number => T / factor(lever)

/** T that a setting or reading S gives. */
export const torqueAt = (S: number, lever: Lever): number => S * factor(lever)

/** H + X [m], the lever on which the hand really pulls the fastener. */
export const effectiveLever = ({ H, X }: Pick<Lever, 'H' | 'X'>): number => H + X

/** F [N]: how hard the hand pulls, square to the handle, at H [m] for T [N·m]. */
export const pullFor = (T: number, H: number): number => T / H

/** p [m] from two pulls at one setting, T_L with the hand at L and T_H with the hand at H: p = L H (1 − r)/(H − r L), r = T_H/T_L. */
export const pivotFrom = (L: number, H: number, r: number): number => (L * H * (1 - r)) / (H - r * L)

/** S = T L/(L + Δ): a head whose centre lies Δ [m] farther out than the one the wrench was set with. */
export const settingForHead = (T: number, L: number, change: number): number => (T * L) / (L + change)
