// A measurement that cannot lose its unit: the number as given and the unit it was given in. No text in, no text out.
import { type Dimension, everyday, type System, type Unit } from './unit.ts'

/** `value` is in `unit`, exactly as given or worked out; SI is derived on reading, never stored. */
export interface Quantity {
  readonly value: number
  readonly unit: Unit
}

/** A target that may be one torque or a span (both ends and the middle); `low` and `high` are in the unit of the middle. */
export interface Target extends Quantity {
  readonly low?: number
  readonly high?: number
}

export const quantity = (value: number, unit: Unit): Quantity => ({ value, unit })

/** The value in SI: N·m, m, N, °, Pa, kg, %, 1. */
export const si = (q: Quantity): number => q.value * q.unit.factor

/** The quantity of an SI value, in a unit of the same dimension. */
export const fromSi = (value: number, unit: Unit): Quantity => ({ value: value / unit.factor, unit })

/** The same quantity in another unit of its dimension; the number is untouched where the unit is the same. */
export const inUnit = (q: Quantity, unit: Unit): Quantity => {
  if (q.unit.dimension !== unit.dimension) throw new Error(`bug: ${q.unit.symbol} cannot be told in ${unit.symbol}`)
  return q.unit === unit ? q : fromSi(si(q), unit)
}

/** Twelve figures of a worked-out quantity: enough to be asked again, without the noise of the last digits. */
export const tidy = (q: Quantity): Quantity => ({ value: Number(q.value.toPrecision(12)), unit: q.unit })

/** The system that a quantity speaks; angles and percentages speak neither. */
export const systemOf = (q: Quantity): System => q.unit.system

/** The everyday unit of a dimension in a system. */
export const everydayUnit = (dimension: Dimension, system: 'metric' | 'inch'): Unit => everyday[dimension][system]
