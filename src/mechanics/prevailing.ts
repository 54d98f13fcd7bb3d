// Run-on torque of a locking nut, and what the wrench must show. Plain numbers in one unit of torque.
//
// Statement  final = target + run-on. One army manual adds it only from a third of the target on, and forgets it below.
// Symbols    target, run-on, final: any one unit of torque. Run-on is read while turning, a turn before the nut seats.
// Source     Always: FAA AC 43.13-1B, 7-40, and a light-sport maintenance manual 2.20.13. From a third (0.33 of the target):
//            US Army TM 5-2330-325-13&P, WP 0095. The two differ; say both.
// Holds      Run-on below the maker's limit; a run-on read through an adapter is converted like the rest.
// Example    Target 35 lbf·in (30 to 40), run-on 8.9: 43.9 lbf·in.

/** The army manual's threshold, as printed. */
export const RUN_ON_THRESHOLD = 0.33

/** Aviation: always add it. */
export const finalTorque = (target: number, runOn: number): number => target + runOn

/** Army: add it from the threshold on, else leave it out. */
export const finalTorqueFromThird = (target: number, runOn: number, threshold: number = RUN_ON_THRESHOLD): number =>
  runOn >= threshold * target ? target + runOn : target
