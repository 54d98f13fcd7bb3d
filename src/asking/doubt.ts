// What a rule says of a number in doubt, and how it looks at what stands around it.
import type { Unit } from '../core/unit.ts'
import type { Measure } from './measure.ts'
import type { Piece } from './pieces.ts'

export type Measured = Extract<Piece, { kind: 'measure' }>

/** From where to where, in pieces, belongs to the number; `unit` where it becomes one of these. */
export interface Doubt {
  readonly first: number
  readonly last: number
  readonly unit?: Unit
  /** Where more can be told than that it is not one number. */
  readonly as?: 'angle' | 'hand'
  /** The question tells what is wrong with it better than anybody else. */
  readonly isPlain?: true
}

export type Rule = (pieces: readonly Piece[], at: number, one: Measured) => Doubt | undefined

export const textAt = (pieces: readonly Piece[], at: number): string => {
  const piece = pieces[at]
  return piece === undefined || piece.kind === 'measure' ? '' : piece.text
}
export const measureAt = (pieces: readonly Piece[], at: number): Measure | undefined => {
  const piece = pieces[at]
  return piece?.kind === 'measure' ? piece.measure : undefined
}
export const words = (list: string): ReadonlySet<string> => new Set(list.split(' '))
