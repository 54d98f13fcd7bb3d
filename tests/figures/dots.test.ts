// Dots along a line: none covers another while there are lanes left, and every one keeps its place along the line.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lanesOf } from '../../src/figures/dots.ts'
import { SEED } from '../support/random.ts'

describe('lanes of dots', () => {
  it.each<[string, readonly number[], readonly number[]]>([
    ['far apart stay on the line', [0, 20, 40], [0, 0, 0]],
    ['alike go to both sides of it by turns', [5, 5, 5, 5, 5], [0, 1, -1, 2, -2]],
    ['near each other part, in whatever order they come', [20, 5, 0], [0, 1, 0]],
    ['none', [], []],
  ])('%s', (_, xs, lanes) => {
    expect(lanesOf(xs, 10, 5)).toEqual(lanes)
  })

  it('no two in one lane are nearer than asked, while there are lanes enough', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 500 }), { maxLength: 30 }), (xs) => {
        const lanes = lanesOf(xs, 10, 31)
        for (const [one, x] of xs.entries())
          for (const [other, y] of xs.entries())
            if (one < other && lanes[one] === lanes[other]) expect(Math.abs(x - y)).toBeGreaterThanOrEqual(10)
      }),
      { seed: SEED, numRuns: 200 },
    )
  })

  it('hundreds that are alike share the lanes that there are', () => {
    const lanes = lanesOf(new Array(500).fill(7), 10, 9)
    expect(new Set(lanes)).toEqual(new Set([0, 1, -1, 2, -2, 3, -3, 4, -4]))
  })
})
