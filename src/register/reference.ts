// What the reference of a check says: the torque of each reading, and how far that may be off.
//
// Statement  By force: T = F D ± m g x (the handle level, the pull square to it). By torque: as read.
//            U = 95 % band of the gauge's tolerance and of the distance, both rectangles; a stated uncertainty wins whole.
// Symbols    F [N], D [m], m mass of the wrench [kg], x its balance point [m]; U [fraction of T].
// Source     Statics; JCGM 100:2008. How well a distance is measured: common practice.
// Holds      The pull square to the handle; the distance that to which the wrench was set (its lever), else say so.
// Example    50 lbf at 12 in: 50 lbf·ft. A scale of ±2 % at 12 in ± 1/8 in: U = 2.1 %.
import { units } from '../core/unit.ts'
import { lengthHalfWidth } from '../mechanics/measured-by-hand.ts'
import { forceFor, torqueOfPull, weightTorque } from '../mechanics/scale-pull.ts'
import { band95, type Contribution } from '../mechanics/uncertainty.ts'
import { gaugeReads } from './gauge-ways.ts'
import type { Measured } from './parts.ts'
import type { Check, GaugeCard } from './records.ts'

/** What of a check says how its readings become torques. */
export type CheckSetup = Pick<Check, 'distance' | 'own-weight' | 'gauge-uncertainty'>

/** The wrench's own weight [N·m]: 0 where it hangs or lies so that it does not count, undefined where nobody said. */
export const ownWeightOf = (check: CheckSetup): number | undefined => {
  if (!check.distance) return 0
  const own = check['own-weight']
  if (own?.lie === 'upright') return 0
  if (!own?.mass || !own['balance-point'] || !own['pull-direction']) return undefined
  return weightTorque(own.mass.value, own['balance-point'].value, own['pull-direction'])
}

/** The torque [N·m] that a reading stands for. */
export const torqueOfReading = (check: CheckSetup, reading: Measured): number =>
  check.distance
    ? torqueOfPull({ F: reading.value, D: check.distance.value, psi: 0 }, ownWeightOf(check) ?? 0)
    : reading.value

/** What the reference shows [N or N·m] where the torque [N·m] is this: `torqueOfReading` the other way round. */
export const readingOfTorque = (check: CheckSetup, torque: number): number =>
  check.distance ? forceFor(torque - (ownWeightOf(check) ?? 0), check.distance.value) : torque

// A gauge of another kind than what was read says nothing of it: checks that were kept with one are known to have none.
const gaugeShare = (gauge: GaugeCard, reading: Measured): number | undefined => {
  const reads = units[reading.unit].dimension
  if (!gauge.tolerance || gaugeReads(gauge) !== reads) return undefined
  const share = gauge.tolerance.share.value / 100
  if (gauge.tolerance.of === 'reading') return share
  return gauge.most && units[gauge.most.unit].dimension === reads
    ? (share * gauge.most.value) / reading.value
    : undefined
}

/** U [fraction of the torque] of a reading; undefined where nothing is known of the gauge. */
export const doubtOfReading = (
  check: CheckSetup,
  gauge: GaugeCard | undefined,
  reading: Measured,
): number | undefined => {
  const stated = check['gauge-uncertainty']
  if (stated) return stated.value / 100
  const share = gauge ? gaugeShare(gauge, reading) : undefined
  if (share === undefined) return undefined
  const { distance } = check
  if (!distance) return band95([{ name: 'gauge', halfWidth: share }])
  const torque = torqueOfReading(check, reading)
  const pulled = (reading.value * distance.value) / torque
  const rule = units[distance.unit].system === 'inch' ? lengthHalfWidth.inch : lengthHalfWidth.metric
  const parts: Contribution[] = [
    { name: 'gauge', halfWidth: pulled * share },
    { name: 'distance', halfWidth: (pulled * rule) / distance.value },
  ]
  return band95(parts)
}
