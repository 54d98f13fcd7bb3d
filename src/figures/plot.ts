// A plain plot on a sheet: two axes with round numbers, and where a pair of numbers lies.
import { type NumberStyle, showNumber } from '../core/number-style.ts'
import { SMALL } from './frame.ts'
import { line, type Point, text } from './svg.ts'

export interface Range {
  readonly low: number
  readonly high: number
}

/** Round numbers from low to high, about so many. */
export const roundNumbers = ({ low, high }: Range, about: number): number[] => {
  const rough = (high - low) / about
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [1, 2, 5, 10].map((times) => times * power).find((one) => one >= rough) ?? rough
  const first = Math.ceil(low / step - 1e-9)
  const last = Math.floor(high / step + 1e-9)
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, n) => Number(((first + n) * step).toPrecision(12)))
}

/** A range with some room at its ends; one value has room as well. */
export const roomy = (values: readonly number[], room = 0.08): Range => {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const span = high > low ? high - low : Math.abs(high) || 1
  return { low: low - span * room, high: high + span * room }
}

export interface Plot {
  readonly at: (x: number, y: number) => Point
  readonly axes: string
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const LABEL = SMALL - 4

export const plot = (
  box: Box,
  x: Range,
  y: Range,
  names: { readonly x: string; readonly y: string },
  style: NumberStyle,
): Plot => {
  const at = (one: number, other: number): Point => ({
    x: box.left + ((one - x.low) / (x.high - x.low)) * (box.right - box.left),
    y: box.bottom - ((other - y.low) / (y.high - y.low)) * (box.bottom - box.top),
  })
  const label = (content: string, place: Point, anchor: 'middle' | 'end' | 'start'): string =>
    text(content, { ...place, class: 'ink', 'font-size': LABEL, 'text-anchor': anchor })
  const axes = [
    line({ x: box.left, y: box.bottom }, { x: box.right, y: box.bottom }, { class: 'rule' }),
    line({ x: box.left, y: box.top }, { x: box.left, y: box.bottom }, { class: 'rule' }),
    ...roundNumbers(x, 5).map((value) => {
      const place = at(value, y.low)
      return (
        line({ x: place.x, y: box.bottom }, { x: place.x, y: box.bottom + 8 }, { class: 'rule' }) +
        label(showNumber(value, style), { x: place.x, y: box.bottom + LABEL + 12 }, 'middle')
      )
    }),
    ...roundNumbers(y, 4).map((value) => {
      const place = at(x.low, value)
      return (
        line({ x: box.left - 8, y: place.y }, { x: box.left, y: place.y }, { class: 'rule' }) +
        label(showNumber(value, style), { x: box.left - 14, y: place.y + 9 }, 'end')
      )
    }),
    label(names.x, { x: box.right, y: box.bottom + 2 * LABEL + 20 }, 'end'),
    label(names.y, { x: box.left + 12, y: box.top - 10 }, 'start'),
  ].join('')
  return { at, axes }
}
