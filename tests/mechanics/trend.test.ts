// A straight line through points: its slope and doubt against a published example, and the day it reaches a level by trials.
import { describe, expect, it } from 'vitest'
import { type Dot, trendOf } from '../../src/mechanics/trend.ts'
import { normalFrom, SEED, seeded } from '../support/random.ts'

const dots = (...pairs: ReadonlyArray<readonly [number, number]>): Dot[] => pairs.map(([x, y]) => ({ x, y }))

describe('a line', () => {
  it('of the worked example', () => {
    const trend = trendOf(dots([0, 0], [1, 1.1], [2, 1.9], [3, 3.2]))
    expect(trend?.slope).toBeCloseTo(1.04, 12)
    expect(trend?.slopeDoubt).toBeCloseTo(0.279, 3)
    expect(trend?.isTold).toBe(true)
    const reached = trend?.reaches(4)
    expect(reached?.first).toBeCloseTo(3.29, 2)
    expect(reached?.last).toBeCloseTo(4.79, 2)
  })

  it('reaches a level where its own interval holds it, at both ends', () => {
    const trend = trendOf(dots([0, 0], [1, 1.1], [2, 1.9], [3, 3.2]))
    for (const level of [-4, 1, 4, 9]) {
      const { first, middle, last } = trend?.reaches(level) ?? { first: 0, middle: 0, last: 0 }
      for (const x of [first, last]) {
        expect(Math.abs((trend?.at(x) ?? 0) - level)).toBeCloseTo(trend?.doubtAt(x) ?? 0, 9)
      }
      expect(trend?.at(middle)).toBeCloseTo(level, 12)
      expect(first < middle && middle < last).toBe(true)
    }
  })

  it('that is exact has no doubt, and falls as well as it rises', () => {
    const trend = trendOf(dots([0, 3], [2, 2], [4, 1]))
    expect(trend?.slope).toBeCloseTo(-0.5, 12)
    expect(trend?.slopeDoubt).toBeCloseTo(0, 12)
    expect(trend?.reaches(-1)?.middle).toBeCloseTo(8, 12)
  })

  it.each([
    ['two points', dots([0, 0], [1, 1])],
    ['all at one x', dots([1, 0], [1, 1], [1, 2])],
    ['none', []],
  ])('cannot be drawn through %s', (_name, all) => {
    expect(trendOf(all)).toBeUndefined()
  })

  it('that is not told from level reaches nothing', () => {
    const trend = trendOf(dots([0, 0], [1, 1], [2, 0], [3, 1]))
    expect(trend?.isTold).toBe(false)
    expect(trend?.reaches(5)).toBeUndefined()
  })
})

describe('published: JCGM 100:2008, H.3, calibration of a thermometer (numbers from memory)', () => {
  // Reading t [°C] and correction b [°C]; reference 20 °C.
  const table = dots(
    [21.521, -0.171],
    [22.012, -0.169],
    [22.512, -0.166],
    [23.003, -0.159],
    [23.507, -0.164],
    [23.999, -0.165],
    [24.513, -0.156],
    [25.002, -0.157],
    [25.503, -0.159],
    [26.01, -0.161],
    [26.511, -0.16],
  )
  const trend = trendOf(table)

  it('slope 0.00218 with u 0.00067, and t = 2.26 for nine degrees', () => {
    expect(trend?.slope).toBeCloseTo(0.00218, 5)
    expect((trend?.slopeDoubt ?? 0) / 2.262).toBeCloseTo(0.00067, 5)
  })

  it('−0.1712 at 20 °C with u 0.0029; −0.1494 at 30 °C with u 0.0041', () => {
    expect(trend?.at(20)).toBeCloseTo(-0.1712, 4)
    expect((trend?.doubtAt(20) ?? 0) / 2.262).toBeCloseTo(0.0029, 4)
    expect(trend?.at(30)).toBeCloseTo(-0.1494, 4)
    expect((trend?.doubtAt(30) ?? 0) / 2.262).toBeCloseTo(0.0041, 4)
  })
})

describe('by trials', () => {
  const random = seeded(SEED)
  const noise = (): number => normalFrom(random)
  const runs = 4000

  it('scatter alone is taken for a drift once in twenty', () => {
    let told = 0
    for (let run = 0; run < runs; run++) {
      if (trendOf([0, 1, 2, 3, 4].map((x) => ({ x, y: noise() })))?.isTold) told++
    }
    expect(told / runs).toBeGreaterThan(0.04)
    expect(told / runs).toBeLessThan(0.06)
  })

  it('the span holds the true crossing nineteen times of twenty', () => {
    let held = 0
    for (let run = 0; run < runs; run++) {
      const trend = trendOf([0, 1, 2, 3, 4, 5].map((x) => ({ x, y: x + 0.3 * noise() })))
      const reached = trend?.reaches(8)
      if (reached && reached.first <= 8 && reached.last >= 8) held++
    }
    expect(held / runs).toBeGreaterThan(0.94)
    expect(held / runs).toBeLessThan(0.96)
  })
})
