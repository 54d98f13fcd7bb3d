// Turn of the nut from snug for structural bolts, degrees. They are tightened past yield on purpose: no rule for machines or wheels.
// RCSC Specification, table 8.2 (2014) as a supplier reprints it; sloped faces from memory.
import type { Citation } from './citation.ts'

const rcsc: Citation = {
  title: 'RCSC Specification (2014), turn of nut (supplier reprint)',
  where: 'table 8.2',
  standing: 'published',
}
const rcscMemory: Citation = {
  title: 'RCSC Specification (2014), turn of nut',
  where: 'table 8.2',
  standing: 'from memory',
}

export interface StructuralTurn {
  /** Bolt length over diameter: above, up to. */
  readonly over: number
  readonly upTo: number
  /** Faces square to the bolt; one sloped up to 1:20; both sloped. */
  readonly square: number
  readonly oneSloped: number
  readonly bothSloped: number
  readonly from: Citation
  readonly slopedFrom: Citation
}

export const structuralTurns: readonly StructuralTurn[] = [
  { over: 0, upTo: 4, square: 120, oneSloped: 180, bothSloped: 240, from: rcsc, slopedFrom: rcscMemory },
  { over: 4, upTo: 8, square: 180, oneSloped: 240, bothSloped: 300, from: rcscMemory, slopedFrom: rcscMemory },
  { over: 8, upTo: 12, square: 240, oneSloped: 300, bothSloped: 360, from: rcsc, slopedFrom: rcscMemory },
]

/** The row of a bolt length over its diameter; undefined above 12: find it by test. */
export const findStructuralTurn = (lengthOverDiameter: number): StructuralTurn | undefined =>
  structuralTurns.find(({ over, upTo }) => lengthOverDiameter > over && lengthOverDiameter <= upTo)
