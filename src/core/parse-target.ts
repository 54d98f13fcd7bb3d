// A torque that is asked for: one value, a span (19.5–24 lb-ft) or a tolerance (48 ± 3 N·m, 48 N·m ± 5 %).
import { fault, type Read, read, refuse } from './fault.ts'
import { readNumber } from './number-text.ts'
import { LONGEST_QUANTITY, parseQuantity, type Wanted, withUnit } from './parse-quantity.ts'
import type { Quantity, Target } from './quantity.ts'
import { units } from './unit.ts'

// A torque, so at least a letter of its unit, and anywhere behind it a turn: two stages of one procedure; no lever changes the
// turn. No torque has a degree mark of its own, and nobody adds a bare 90 to one but for degrees.
const angleStage =
  /\p{L}.*(?:°|º|˚|deg|grad|turn|drehung|\bflats?\b)|\d\s?\p{L}.*\+\s{0,3}(?:30|45|60|90|120|180|270)\s*$/iu

const spanMarks = /\s{0,3}(±|\+\s?\/\s?[-−–]|\+[-−–]|–|—|−|‐|‑|‒|-|…|\.\.\.?|\bto\b|\bbis\b)\s{0,3}/gi

/** True where a text holds a turn-angle stage behind a torque: `20 Nm + 90°`. */
export const hasAngleStage = (text: string): boolean => text.length <= LONGEST_QUANTITY && angleStage.test(text)

interface Ends {
  readonly low: Quantity
  readonly high: Quantity
}

const ends = (left: Quantity, right: Quantity, tolerance: boolean): Ends => {
  if (!tolerance) return { low: left, high: right }
  const half = right.unit === units['%'] ? (left.value * right.value) / 100 : right.value
  return { low: { ...left, value: left.value - half }, high: { ...left, value: left.value + half } }
}

const readEnds = (leftText: string, mark: string, rightText: string, wanted: Wanted): Ends | undefined => {
  const left = readNumber(leftText.trim())
  const right = readNumber(rightText.trim())
  if (!left.ok || !right.ok || left.value < 0 || right.value < 0) return undefined
  const tolerance = mark === '±' || mark.startsWith('+')
  const dimensions = tolerance ? [...wanted.dimensions, 'percent' as const] : wanted.dimensions
  const rightUnit = withUnit(right.value, right.rest, { ...wanted, dimensions }, rightText)
  if (!rightUnit.ok) return undefined
  const leftIsBare = left.rest.trim() === ''
  if (leftIsBare && rightUnit.value.unit === units['%']) return undefined
  // A bare left side takes the unit as it is spelled on the right: `1.0–1.2 kNm` begins at 1000 N·m.
  const leftUnit = withUnit(left.value, leftIsBare ? right.rest : left.rest, wanted, leftText)
  if (!leftUnit.ok) return undefined
  const sameKind = rightUnit.value.unit === units['%'] || rightUnit.value.unit === leftUnit.value.unit
  return sameKind ? ends(leftUnit.value, rightUnit.value, tolerance) : undefined
}

const candidates = (text: string, wanted: Wanted): Ends[] => {
  const found: Ends[] = []
  for (const match of text.matchAll(spanMarks)) {
    if (match.index === 0) continue
    const pair = readEnds(
      text.slice(0, match.index),
      match[1] as string,
      text.slice(match.index + match[0].length),
      wanted,
    )
    if (pair) found.push(pair)
  }
  return found
}

/** One torque, or its middle with both ends. Faults: those of one quantity, span-reversed, angle-stage, negative. */
export const parseTarget = (text: string, wanted: Wanted): Read<Target> => {
  if (hasAngleStage(text)) return refuse(fault('angle-stage', wanted.input, text))
  const single = parseQuantity(text, wanted)
  if (single.ok || text.length > LONGEST_QUANTITY) return single
  const [pair, another] = candidates(text.trim(), wanted)
  if (!pair || another) return single
  if (pair.low.value > pair.high.value) return refuse(fault('span-reversed', wanted.input, text))
  if (pair.low.value < 0) return refuse(fault('negative', wanted.input, text, { kind: 'torque' }))
  return read({
    value: (pair.low.value + pair.high.value) / 2,
    unit: pair.low.unit,
    low: pair.low.value,
    high: pair.high.value,
  })
}

/** True where a text is a span or a tolerance: for inputs that take one value only. */
export const isSpan = (text: string, wanted: Wanted): boolean =>
  text.length <= LONGEST_QUANTITY && !parseQuantity(text, wanted).ok && candidates(text.trim(), wanted).length === 1
