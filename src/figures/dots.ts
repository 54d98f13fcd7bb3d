// Readings as dots along a line: those that would cover each other move to lanes beside it, so that each is seen.
import { circle, lozenge, type Point } from './svg.ts'

/** 0, 1, −1, 2, −2 … */
const laneAt = (n: number): number => (n % 2 === 1 ? (n + 1) / 2 : 0 - n / 2)

/** The lane of each x: the nearest to the line in which it keeps its distance; the lanes are an odd number. */
export const lanesOf = (xs: readonly number[], apart: number, lanes: number): number[] => {
  const last = new Array<number>(lanes).fill(Number.NEGATIVE_INFINITY)
  const placed = new Array<number>(xs.length).fill(0)
  const order = xs.map((x, index) => ({ x, index })).sort((one, other) => one.x - other.x)
  for (const { x, index } of order) {
    const free = last.findIndex((before) => x - before >= apart)
    // More alike than there are lanes: they share the one that was left longest ago.
    const lane = free === -1 ? last.indexOf(Math.min(...last)) : free
    last[lane] = x
    placed[index] = laneAt(lane)
  }
  return placed
}

/** A reading that is as it should be. */
export const dot = (at: Point, r: number): string => circle(at, r, { class: 'nut', 'fill-opacity': 0.8 })

/** One that is not: another shape too, for those who do not see the colour. */
export const diamond = (at: Point, r: number): string => lozenge(at, r, { class: 'warn' })
