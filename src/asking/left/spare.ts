// What of a text was taken and what was left aside.
import type { Facts } from '../facts.ts'
import { siOf } from '../measure.ts'
import type { Alternative, Entry, Proposal } from '../proposal.ts'
import type { Placed } from '../scene.ts'
import type { Torque } from '../torques.ts'

/** An input that is to be asked for. */
export interface Left {
  readonly input: string
  /** How else the text may be read with it. */
  readonly others?: readonly Alternative[]
}

export const isTaken = ({ start, end }: Placed, entries: readonly Entry[]): boolean =>
  entries.some(({ from }) => from !== undefined && from.start < end && start < from.end)

export const spare = <T extends Placed>(all: readonly T[], { entries }: Proposal): readonly T[] =>
  all.filter((one) => !isTaken(one, entries))

const ALIKE = 0.01
export const isSame = (one: Placed, other: Placed): boolean =>
  one.measure.unit?.dimension === other.measure.unit?.dimension &&
  Math.abs(siOf(one.measure) - siOf(other.measure)) <= ALIKE * siOf(other.measure)

/** The same again in another unit. */
export const isTold = (one: Torque, { torques }: Facts, proposal: Proposal): boolean =>
  torques.some((other) => isTaken(other, proposal.entries) && isSame(one, other))
