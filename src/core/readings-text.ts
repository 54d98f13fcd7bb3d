// Several readings as people see them: `99.5; 101; 100.2 N·m`, the unit once behind them all where all have the same.
import { echoNumber, type NumberStyle, pointStyle, writeNumber } from './number-style.ts'
import type { Quantity } from './quantity.ts'
import { echoQuantity, writeQuantity } from './quantity-text.ts'
import { units } from './unit.ts'

const MARK = '; '
/** More than these are not told one by one. */
const MOST_TOLD = 12
const FIRST = 6
const LAST = 3

const pieces = (
  list: readonly Quantity[],
  number: (value: number) => string,
  whole: (q: Quantity) => string,
): string[] => {
  const unit = list[0]?.unit
  // An angle has its mark at each number; so has every reading where units differ.
  const once = unit !== units['°'] && list.every((q) => q.unit === unit)
  return list.map((q, place) => (once && place < list.length - 1 ? number(q.value) : whole(q)))
}

/** As they were typed; of many the first, the last and how many. */
export const echoReadings = (list: readonly Quantity[], style: NumberStyle = pointStyle): string => {
  const told = pieces(
    list,
    (value) => echoNumber(value, style),
    (q) => echoQuantity(q, style),
  )
  if (told.length <= MOST_TOLD) return told.join(MARK)
  return `${[...told.slice(0, FIRST), '…', ...told.slice(-LAST)].join(MARK)} (n = ${told.length})`
}

/** All of them, exact, to be typed or linked again. */
export const writeReadings = (list: readonly Quantity[]): string =>
  pieces(list, (value) => writeNumber(value), writeQuantity).join(MARK)
