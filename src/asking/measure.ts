// What a number in free text may be: a quantity with its unit, a number without one, a thread, a class, a ratio, or something to leave aside.
import { quantity } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import type { Dimension, Unit } from '../core/unit.ts'
import { units } from '../core/unit.ts'

export type MeasureKind = 'quantity' | 'bare' | 'size' | 'class' | 'ratio' | 'spigot' | 'date' | 'noise'

export interface Measure {
  readonly kind: MeasureKind
  readonly value: number
  readonly low?: number
  readonly high?: number
  readonly unit?: Unit
  /** A unit of weight that may be a force, a mass, or (beside a wrench) a torque. */
  readonly weight?: 'lb' | 'kg'
  /** The number can be read two ways: it goes on as it was typed, and the question refuses it with both. */
  readonly doubtful?: boolean
  /** What stands around it changes it: it goes on with those words, and is refused whatever can be read of it; and as what. */
  readonly unclear?: 'number' | 'angle' | 'hand' | undefined
  /** How the question's own inputs take it, where that is not a number and a unit. */
  readonly name?: string
  /** Several numbers that were written as one list share its number. */
  readonly list?: number
  /** `2 in` with a slash: jaws, sockets and drives are written so. */
  readonly fraction?: boolean
  readonly raw: string
}

const written = (value: number, unit: Unit): string => writeQuantity(quantity(value, unit))

/** As an input takes it; `unit` where the reader had to choose one. */
export const textOf = (measure: Measure, unit: Unit | undefined = measure.unit): string => {
  if (measure.name !== undefined) return measure.name
  if (measure.doubtful) return measure.raw
  if (unit === undefined) return written(measure.value, units['1'])
  if (measure.low === undefined || measure.high === undefined) return written(measure.value, unit)
  return `${written(measure.low, units['1'])}–${written(measure.high, unit)}`
}

export const dimensionOf = (measure: Measure): Dimension | undefined => measure.unit?.dimension

/** The value in SI, where it has a unit. */
export const siOf = (measure: Measure): number => measure.value * (measure.unit?.factor ?? 1)

export const isDimension = (measure: Measure, dimension: Dimension): boolean =>
  measure.kind === 'quantity' && measure.weight === undefined && dimensionOf(measure) === dimension
