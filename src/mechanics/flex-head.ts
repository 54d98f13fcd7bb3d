// A wrench with a hinged head, handle tilted by φ out of the plane in which the fastener turns. Plain numbers in SI.
//
// Statement  The pull F acts square to the handle and along the turn, at the grip; its arm about the drive is
//            r = h + (L − h) cos φ, so T = F r.
//            Sensing ahead of the hinge: the wrench feels the fastener's own torque, T = S; the pull grows to T/r.
//            Tripping behind the hinge: it trips at the same pull as when straight, F = S/L, so T = S r/L.
// Symbols    S dialled, T at the fastener [N·m]; L lever, h hinge from the drive centre, r arm [m]; φ tilt [°].
// Source     Statics; the head stays square to the fastener, and the side load goes into the socket.
// Holds      0 ≤ φ < 90°, 0 ≤ h < L. Where it is unknown which kind: anything between the two.
// Example    S 100 N·m, L 400 mm, h 0, φ 15°, tripping behind: 96.6 N·m (−3.4 %).
import { cosine } from './lever.ts'

export const sensings = ['ahead', 'behind'] as const
export type Sensing = (typeof sensings)[number]

export interface FlexHead {
  readonly S: number
  readonly L: number
  readonly h: number
  readonly phi: number
}

/** r [m]: the arm that the tilt leaves. */
export const tiltedArm = ({ L, h, phi }: Omit<FlexHead, 'S'>): number => h + (L - h) * cosine(phi)

/** T [N·m] at the fastener when the wrench says S. */
export const tiltedTorque = (head: FlexHead, sensing: Sensing): number =>
  sensing === 'ahead' ? head.S : (head.S * tiltedArm(head)) / head.L

/** F [N] at the grip when the wrench says S. */
export const tiltedPull = (head: FlexHead, sensing: Sensing): number => tiltedTorque(head, sensing) / tiltedArm(head)

/** F [N] that the same S takes with the handle straight. */
export const straightPull = ({ S, L }: Pick<FlexHead, 'S' | 'L'>): number => S / L

/** T [N·m] between the two kinds, where nobody knows which one it is. */
export const tiltedTorqueUnknown = (head: FlexHead): { low: number; middle: number; high: number } => {
  const low = tiltedTorque(head, 'behind')
  const high = tiltedTorque(head, 'ahead')
  return { low, middle: (low + high) / 2, high }
}
