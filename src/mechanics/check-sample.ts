// What a check of a wrench consists of: at which shares of its largest torque, how often it is pulled there, and how often before.
//
// Statement  Points at 20, 60 and 100 % of most, rising; a tool fixed to one torque has that one point. Before the first one,
//            unrecorded pulls to most: one for indicating tools, five for setting ones. Readings a point: 5; setting tools
//            without a scale 10.
// Source     ISO 6789:2003, 6.5 and ISO 6789-1:2017 (both from memory): setting classes B and E are fixed to one torque,
//            C and F have no scale.
// Holds      A whole check; a look between two checks may be less, and then says so.
// Example    A click wrench with a scale: 20, 60, 100 %, five pulls before, five readings each.
import type { IsoClass, IsoType } from './check-verdict.ts'
import { checkShares } from './deviation.ts'

export interface CheckSample {
  /** Shares of the largest torque, rising. */
  readonly shares: readonly number[]
  readonly prePulls: number
  readonly readings: number
}

const FIXED: readonly IsoClass[] = ['B', 'E']
const WITHOUT_SCALE: readonly IsoClass[] = ['C', 'F']

/** Without a class: a tool with a scale. */
export const checkSample = (type: IsoType, isoClass?: IsoClass): CheckSample => {
  const setting = type === 'setting'
  return {
    shares: setting && isoClass && FIXED.includes(isoClass) ? checkShares.slice(-1) : checkShares,
    prePulls: setting ? 5 : 1,
    readings: setting && isoClass && WITHOUT_SCALE.includes(isoClass) ? 10 : 5,
  }
}
