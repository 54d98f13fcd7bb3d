// Thread sizes as people write them: M12, M12x1.5, 3/8-16, 3/8-16 UNC, #10-32. Gives diameter and pitch; tables come later.
import { fault, type Read, read, refuse } from './fault.ts'
import { readNumber } from './number-text.ts'
import { type Quantity, quantity } from './quantity.ts'
import { units } from './unit.ts'

export interface Size {
  /** As it is written: M12 × 1.5, 3/8-16, #10-32. */
  readonly name: string
  readonly diameter: Quantity
  readonly pitch?: Quantity
}

const LONGEST_SIZE = 24
const metric = /^m\s?(\d{1,3}(?:[.,]\d{1,2})?)(?:\s?[x×*-]\s?(\d(?:[.,]\d{1,3})?))?$/i
const numbered = /^(?:#|no\.?\s?)(\d{1,2})\s?-\s?(\d{2,3})(?:\s?un[cfj]+)?$/i
// The threads of the numbered sizes (ASME B1.1, UNC UNF UNEF, from memory): 10-32 is one of these, never ten inches.
const numberedThreads: Readonly<Record<number, readonly number[]>> = {
  0: [80],
  1: [64, 72],
  2: [56, 64],
  3: [48, 56],
  4: [40, 48],
  5: [40, 44],
  6: [32, 40],
  8: [32, 36],
  10: [24, 32],
  12: [24, 28, 32],
}
const LARGEST_NUMBERED = 12
// The unified series ends at 6 in (ASME B1.1, from memory); finer than 20 to the inch nothing of a whole inch is made.
const LARGEST_INCH = 6
const FINEST_OF_WHOLE_INCH = 20
const bareNumbered = /^(\d{1,2})\s?-\s?(\d{2})(?:\s?un[cfj]+)?$/i
const inch = /^(\d{1,2}(?:[- ]\d{1,2}\/\d{1,2})?|\d{1,2}\/\d{1,2})\s?(?:"|in\.?|″)?\s?-\s?(\d{1,2})(?:\s?un[cfj]*)?$/i

const number = (text: string): number => Number(text.replace(',', '.'))

const readSize = (text: string): Size | undefined => {
  const m = metric.exec(text)
  if (m?.[1] !== undefined) {
    const diameter = number(m[1])
    const pitch = m[2] === undefined ? undefined : number(m[2])
    if (diameter <= 0 || (pitch !== undefined && (pitch <= 0 || pitch >= diameter))) return undefined
    return {
      name: pitch === undefined ? `M${diameter}` : `M${diameter}x${pitch}`,
      diameter: quantity(diameter, units.mm),
      ...(pitch === undefined ? {} : { pitch: quantity(pitch, units.mm) }),
    }
  }
  const n = numbered.exec(text)
  // Numbered sizes: d = 0.060 in + 0.013 in a step (ASME B1.1, from memory).
  if (n?.[1] !== undefined && Number(n[1]) <= LARGEST_NUMBERED) return numberedSize(Number(n[1]), Number(n[2]))
  const bare = bareNumbered.exec(text)
  if (bare) {
    const [step, threads] = [Number(bare[1]), Number(bare[2])]
    if (numberedThreads[step]?.includes(threads)) return numberedSize(step, threads)
    if (threads > FINEST_OF_WHOLE_INCH) return undefined
  }
  const i = inch.exec(text)
  const d = i?.[1] === undefined ? undefined : readNumber(i[1].replace(' ', '-'))
  return d?.ok && d.rest === '' ? inchSize(`${i?.[1]}-${i?.[2]}`, d.value, Number(i?.[2])) : undefined
}

const numberedSize = (step: number, threads: number): Size | undefined =>
  inchSize(`#${step}-${threads}`, 0.06 + 0.013 * step, threads)

const inchSize = (name: string, diameter: number, threads: number): Size | undefined =>
  diameter > 0 && diameter <= LARGEST_INCH && threads > 0 && 1 / threads < diameter
    ? { name, diameter: quantity(diameter, units.in), pitch: quantity(1 / threads, units.in) }
    : undefined

/** A thread size. Faults: empty, not-a-size. */
export const parseSize = (text: string, input: string): Read<Size> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text, { options: ['M12', '3/8-16'] }))
  const size = trimmed.length > LONGEST_SIZE ? undefined : readSize(trimmed)
  return size
    ? read(size)
    : refuse(fault('not-a-size', input, text, { options: ['M12', 'M12x1.5', '3/8-16', '#10-32'] }))
}
