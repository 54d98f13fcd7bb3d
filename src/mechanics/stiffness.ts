// Bolt and joint as two springs. Plain numbers in SI.
//
// Statement  Bolt: 1/k_b = Σ l_i/(E A_i) over shank (A = π d²/4) and thread in the grip (A_s); with its ends counted also
//            head 0.5 d, thread in the nut 0.5 d at A_s and nut 0.4 d.
//            Joint: two cones that open by α from the washer face D to mid grip,
//            k_j = ½ π E d tan α / ln[(l tan α + D − d)(D + d)/((l tan α + D + d)(D − d))].
//            Share of an outer load that the bolt takes: C = k_b/(k_b + k_j).
// Symbols    k [N/m]; l grip, d nominal diameter, D washer face (1.5 d) [m]; A [m²]; E [Pa]; α [°].
// Source     Shigley's Mechanical Engineering Design, 9th ed., eqs. 8-17, 8-20 to 8-22, table 8-12 (α 30°, D 1.5 d, ends not
//            counted). Ends: VDI 2230 Part 1 (from memory).
// Holds      One material, cone inside the parts, flat faces. A gasket or soft part makes k_j far smaller.
// Example    1/2-13, grip 3 in, E 30 Mpsi: k_b 1.79, k_j 11.33 Mlbf/in, C 0.136.

/** Young's modulus of steel [Pa] (from memory; textbooks give 200 to 210 GPa). */
export const STEEL_E = 205e9

export interface BoltBody {
  readonly d: number
  readonly As: number
  /** Plain shank and thread within the grip [m]. */
  readonly shank: number
  readonly threaded: number
}

/** Whether head and engaged thread count as spring. */
export type Ends = 'not-counted' | 'counted'

/** k_b [N/m]. */
export const boltStiffness = ({ d, As, shank, threaded }: BoltBody, ends: Ends, E: number = STEEL_E): number => {
  const A = (Math.PI / 4) * d ** 2
  const body = shank / A + threaded / As
  const more = ends === 'counted' ? (0.5 * d + 0.4 * d) / A + (0.5 * d) / As : 0
  return E / (body + more)
}

/** k_j [N/m] of a joint of one material. */
export const jointStiffness = (
  d: number,
  grip: number,
  E: number = STEEL_E,
  { alpha = 30, D = 1.5 * d }: { readonly alpha?: number; readonly D?: number } = {},
): number => {
  const tan = Math.tan((alpha * Math.PI) / 180)
  const reach = grip * tan
  const ratio = ((reach + D - d) * (D + d)) / ((reach + D + d) * (D - d))
  return (Math.PI * E * d * tan) / (2 * Math.log(ratio))
}

/** C: the bolt's share of an outer load. */
export const boltShare = (kb: number, kj: number): number => kb / (kb + kj)

/** F [N] in the bolt under an outer pull W, until the joint opens. */
export const boltForce = (preload: number, W: number, C: number): number => preload + C * W
