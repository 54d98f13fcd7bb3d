// How far a straight bar between wrench and fastener winds up. Plain numbers in SI, the twist in degrees.
//
// Statement  θ = T l/(G J), J = π d⁴/32 for a round bar. A bar in line and supported loses no torque under a slow pull:
//            the twist only spoils an angle that is read at the handle. Under impact it is loss.
// Symbols    T [N·m], l length, d diameter [m], J [m⁴], G shear modulus [Pa].
// Source     Torsion of round bars, any textbook (Saint-Venant). G of steel from memory.
// Holds      Elastic, round, steel. A square bar of side a is stiffer than the round bar of diameter a (0.1406 a⁴ against
//            0.0982 a⁴), so a bar taken as round over its drive square shows the larger twist.
// Example    100 N·m through 250 mm of 12.7 mm: 7.07°.

/** Shear modulus of steel [Pa] (from memory; textbooks give 79 to 81 GPa). */
export const STEEL_G = 79.3e9

/** J [m⁴] of a round bar. */
export const polarMoment = (d: number): number => (Math.PI * d ** 4) / 32

/** θ [°] of a round steel bar. */
export const twistOf = (T: number, l: number, d: number, G: number = STEEL_G): number =>
  ((T * l) / (G * polarMoment(d))) * (180 / Math.PI)

/** τ [Pa] at the surface of the bar: what to hold against its material. */
export const twistStress = (T: number, d: number): number => (16 * T) / (Math.PI * d ** 3)
