// The step to which readings were typed: what their scatter cannot be smaller than. Readings typed as 80; 80; 80 do not show a
// scatter of nothing; they show one that a step of 1 hides.
import { fromSi, tidy } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import type { Measured } from '../register/parts.ts'

const MOST_DECIMALS = 6

const decimalsOf = ({ value, unit }: Measured): number => {
  const typed = tidy(fromSi(value, units[unit])).value
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++) {
    if (Math.abs(typed - Number(typed.toFixed(decimals))) <= 1e-9 * Math.abs(typed)) return decimals
  }
  return MOST_DECIMALS
}

/** In SI: the finest step of any reading, as a last zero is not typed by everybody. 0 where there are none. */
export const resolutionOf = (readings: readonly Measured[]): number => {
  const [first] = readings
  if (!first) return 0
  const decimals = Math.max(...readings.map(decimalsOf))
  return units[first.unit].factor * 10 ** -decimals
}
