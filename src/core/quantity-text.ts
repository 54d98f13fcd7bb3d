// A quantity as people see it: number, a space, canonical symbol. Rounding is number-style.ts's and nobody else's.
import {
  echoNumber,
  type NumberStyle,
  pointStyle,
  showNumber,
  type Toward,
  workNumber,
  writeNumber,
} from './number-style.ts'
import type { Quantity } from './quantity.ts'
import { type Unit, units } from './unit.ts'

const join = (number: string, unit: Unit): string => {
  if (unit === units['1']) return number
  return unit === units['°'] ? `${number}°` : `${number} ${unit.symbol}`
}

/** Rounded for people: `78.3 N·m`, `45°`, `4 %`, `1.143`. */
export const showQuantity = (q: Quantity, style: NumberStyle = pointStyle, toward?: Toward): string =>
  join(showNumber(q.value, style, toward), q.unit)

/** Inside a formula, to more figures than a result: `0.73756`. */
export const workQuantity = (q: Quantity, style: NumberStyle = pointStyle): string =>
  join(workNumber(q.value, style), q.unit)

/** As it was typed, in canonical spelling: `101.25 N·m`. */
export const echoQuantity = (q: Quantity, style: NumberStyle = pointStyle): string =>
  join(echoNumber(q.value, style), q.unit)

/** Exact, to be typed or linked again: parsing it gives this quantity back. */
export const writeQuantity = (q: Quantity, style: NumberStyle = pointStyle): string =>
  join(writeNumber(q.value, style), q.unit)
