// The seat under a head or nut as people write it: `flat 18 mm x 13 mm` (outer x hole), `cone 60° 18 mm x 13 mm`, `ball 14 mm 18 mm x 13 mm`.
import { type Fault, fault, type Read, read, refuse } from './fault.ts'
import { readNumber } from './number-text.ts'
import { parseQuantity, withUnit } from './parse-quantity.ts'
import type { Quantity } from './quantity.ts'

export interface SeatText {
  readonly kind: 'flat' | 'cone' | 'ball'
  /** Outer diameter of the bearing face, and the hole. */
  readonly outer: Quantity
  readonly hole: Quantity
  /** Included angle of a cone; radius of a ball. */
  readonly angle?: Quantity
  readonly radius?: Quantity
}

const LONGEST_SEAT = 80
export const seatExamples = ['flat 18 mm x 13 mm', 'cone 60° 18 mm x 13 mm', 'ball 14 mm 18 mm x 13 mm'] as const

const shape = (input: string, got: string): Read<never> =>
  refuse(fault('not-a-seat', input, got, { options: seatExamples }))

/** The quantity at the start of a text, up to the next number, and what follows it. */
const leading = (
  text: string,
  input: string,
  dimension: 'angle' | 'length',
): { value: Read<Quantity>; rest: string } => {
  const number = readNumber(text)
  if (!number.ok) return { value: parseQuantity(text, { input, dimensions: [dimension] }), rest: '' }
  const next = number.rest.search(/\d/)
  const unit = next === -1 ? number.rest : number.rest.slice(0, next)
  return {
    value: withUnit(number.value, unit, { input, dimensions: [dimension] }, text),
    rest: next === -1 ? '' : number.rest.slice(next),
  }
}

/** Outer x hole; a unit once at the end serves both. */
const diameters = (text: string, input: string, got: string): Read<{ outer: Quantity; hole: Quantity }> => {
  const parts = text.split(/\s*[x×*]\s*/i)
  const [first, second] = parts
  if (parts.length !== 2 || !first || !second) return shape(input, got)
  const wanted = { input, dimensions: ['length'] as const }
  const hole = parseQuantity(second, wanted)
  const bare = readNumber(first)
  const outer =
    bare.ok && bare.rest.trim() === '' && hole.ok
      ? read({ value: bare.value, unit: hole.value.unit })
      : parseQuantity(first, wanted)
  const faults: Fault[] = [outer, hole].flatMap((one) => (one.ok ? [] : one.faults))
  return outer.ok && hole.ok ? read({ outer: outer.value, hole: hole.value }) : refuse(...faults)
}

/** A seat. Faults: empty, not-a-seat, and those of its lengths and its angle. */
export const parseSeat = (text: string, input: string): Read<SeatText> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text, { options: seatExamples }))
  const [, word = '', rest = ''] =
    /^(flat|cone|conical|ball|spherical)\b[\s:,]*(.*)$/i.exec(trimmed.slice(0, LONGEST_SEAT)) ?? []
  const kind = /^c/i.test(word) ? 'cone' : /^[bs]/i.test(word) ? 'ball' : 'flat'
  if (word === '' || trimmed.length > LONGEST_SEAT) return shape(input, text)
  if (kind === 'flat') {
    const both = diameters(rest, input, text)
    return both.ok ? read({ kind, ...both.value }) : both
  }
  const first = leading(rest, input, kind === 'cone' ? 'angle' : 'length')
  const both = diameters(first.rest, input, text)
  if (!first.value.ok) return both.ok || first.rest === '' ? first.value : refuse(...first.value.faults, ...both.faults)
  if (!both.ok) return both
  return read(
    kind === 'cone'
      ? { kind, ...both.value, angle: first.value.value }
      : { kind, ...both.value, radius: first.value.value },
  )
}
