// Units of torque that a text names, with a number or without one: `wrench in lb ft`, `= ? Nm`.
import { allSpellings, type Unit } from '../core/unit.ts'
import type { Piece } from './pieces.ts'
import { unitAt } from './unit-at.ts'

export interface UnitNamed {
  readonly unit: Unit
  readonly start: number
  readonly end: number
}

// Every beginning of a spelling of torque: no other word can begin one.
const beginnings: ReadonlySet<string> = new Set(
  [...allSpellings]
    .filter(([, spelled]) => spelled.some(({ unit }) => unit.dimension === 'torque'))
    .flatMap(([word]) => Array.from({ length: word.length }, (_, place) => word.slice(0, place + 1))),
)

export const unitsNamedIn = (pieces: readonly Piece[], folded: string): readonly UnitNamed[] => {
  const found: UnitNamed[] = []
  for (const piece of pieces) {
    if (piece.kind !== 'word' || !beginnings.has(piece.text) || piece.start < (found.at(-1)?.end ?? 0)) continue
    const named = unitAt(folded, piece.start)
    const unit = named?.spelled.find(({ unit: one }) => one.dimension === 'torque')?.unit
    if (named && unit) found.push({ unit, start: piece.start, end: named.end })
  }
  return found
}
