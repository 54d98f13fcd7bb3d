// How long a bolt for a grip is, and how much of it is threaded, where nobody measured it. Plain numbers in metres.
//
// Statement  Length: grip and nut, rounded up to the next length that is made. Threaded: metric 2d + 6 mm up to 125 mm long,
//            2d + 12 mm up to 200 mm, 2d + 25 mm above; inch 2d + 1/4 in up to 6 in, 2d + 1/2 in above. In the grip:
//            what the shank leaves.
// Symbols    d nominal diameter, L bolt length, l grip [m].
// Source     Shigley's Mechanical Engineering Design, 9th ed., eqs. 8-13, 8-14 and table 8-7; ISO 888, ASME B18.2.1.
// Holds      Hexagon head bolts with a shank; screws are threaded to the head.
// Example    1/2-13 through 3 in, nut 7/16 in, steps of 1/4 in: L 3 1/2 in, thread 1 1/4 in, shank 2 1/4 in, 3/4 in threaded.

const INCH = 0.0254
const MM = 0.001

/** Length made [m]: grip and nut, up to the next step. */
export const boltLength = (grip: number, nut: number, step: number): number =>
  Math.ceil((grip + nut) / step - 1e-9) * step

/** Threaded end [m] of a bolt of length L. */
export const threadedLength = (d: number, L: number, system: 'metric' | 'inch'): number => {
  if (system === 'inch') return 2 * d + (L <= 6 * INCH + 1e-9 ? 0.25 : 0.5) * INCH
  if (L <= 125 * MM + 1e-9) return 2 * d + 6 * MM
  return 2 * d + (L <= 200 * MM + 1e-9 ? 12 : 25) * MM
}

/** The grip [m] as plain shank and as thread. */
export const gripParts = (grip: number, L: number, threaded: number): { shank: number; threaded: number } => {
  const shank = Math.min(Math.max(L - threaded, 0), grip)
  return { shank, threaded: grip - shank }
}
