// Doubt by first order: the end-gauge example of the GUM, and the 95 % band of a rectangle with a normal beside it.
import { erf } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  band95,
  type Contribution,
  chanceWithin,
  combined,
  coverage,
  effectiveDegrees,
  ranked,
  standardOf,
} from '../../src/mechanics/uncertainty.ts'
import { SEED, seeded } from '../support/random.ts'

const rectangle = (halfWidth: number, name = 'r'): Contribution => ({ name, halfWidth })
const normal = (u: number, nu?: number): Contribution => ({ name: 'n', u, ...(nu === undefined ? {} : { nu }) })

describe('a standard uncertainty', () => {
  it('of a rectangle is its half-width over the root of three, without sign', () => {
    expect(standardOf(rectangle(3))).toBeCloseTo(Math.sqrt(3), 12)
    expect(standardOf(rectangle(-3))).toBeCloseTo(Math.sqrt(3), 12)
    expect(standardOf(normal(-2))).toBe(2)
  })

  it('combines by the sum of squares', () => {
    expect(combined([normal(3), normal(4)])).toBe(5)
    expect(combined([])).toBe(0)
  })
})

describe('the worked example', () => {
  it('is a 14 in wrench with 2 in straight: u 2.37 %, band ±4.0 %', () => {
    const parts = [rectangle(4), rectangle(0.78), rectangle(0.11), rectangle(0.42)]
    expect(combined(parts)).toBeCloseTo(2.37, 2)
    expect(band95(parts)).toBeCloseTo(4.0, 1)
  })

  it('shows why twice u would be too wide: ±4.7 % where the truth is ±4.0 %', () => {
    const parts = [rectangle(4), rectangle(0.78), rectangle(0.11), rectangle(0.42)]
    expect(2 * combined(parts)).toBeCloseTo(4.7, 1)
  })
})

describe('effective degrees of freedom', () => {
  it('are those of the only sample, infinite where there is none, and between two samples', () => {
    expect(effectiveDegrees([normal(2, 7)])).toBeCloseTo(7, 12)
    expect(effectiveDegrees([rectangle(1), normal(1)])).toBe(Number.POSITIVE_INFINITY)
    expect(effectiveDegrees([])).toBe(Number.POSITIVE_INFINITY)
    expect(effectiveDegrees([normal(1, 5), normal(1, 5)])).toBeCloseTo(10, 12)
  })
})

describe('a coverage factor', () => {
  it.each([
    [0.95, 1, 12.706],
    [0.95, 4, 2.776],
    [0.95, 9, 2.262],
    [0.95, 30, 2.042],
    [0.99, 16, 2.921],
    [0.95, Number.POSITIVE_INFINITY, 1.96],
    [0.99, Number.POSITIVE_INFINITY, 2.576],
  ])('for %d and %d degrees of freedom is Student’s %d', (level, nu, t) => {
    expect(coverage(level, nu)).toBeCloseTo(t, 3)
  })
})

describe('the 95 % band', () => {
  it('of one rectangle is 0.95 of its half-width', () => {
    expect(band95([rectangle(4)])).toBeCloseTo(3.8, 9)
  })

  it('of one normal is 1.96 of its standard deviation', () => {
    expect(band95([normal(2)])).toBeCloseTo(3.92, 2)
  })

  it('of a sample of five is 2.776 of its standard deviation', () => {
    expect(band95([normal(1, 4)])).toBeCloseTo(2.776, 3)
  })

  it('of nothing is 0', () => {
    expect(band95([])).toBe(0)
    expect(band95([rectangle(0), normal(0)])).toBe(0)
  })

  it('does not depend on the order of the contributions, nor on their sign', () => {
    const parts = [rectangle(1), rectangle(4), normal(0.7), rectangle(2)]
    expect(band95([...parts].reverse())).toBeCloseTo(band95(parts), 12)
    expect(band95([rectangle(-1), rectangle(-4), normal(0.7), rectangle(-2)])).toBeCloseTo(band95(parts), 12)
  })

  it('grows with every contribution, and scales with its unit', () => {
    const parts = [rectangle(4), normal(1)]
    expect(band95([...parts, rectangle(1)])).toBeGreaterThan(band95(parts))
    expect(band95([rectangle(400), normal(100)])).toBeCloseTo(100 * band95(parts), 6)
  })

  it.each([
    [4, 0],
    [4, 0.001],
    [4, 0.5],
    [4, 2],
    [1, 4],
    [0.001, 4],
    [0, 4],
  ])('holds 95 %% of a rectangle of %d with a normal of %d, counted', (a, s) => {
    const random = seeded(SEED)
    const half = band95([rectangle(a), normal(s)])
    const draws = 200_000
    let inside = 0
    for (let draw = 0; draw < draws; draw++) {
      const gauss = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
      if (Math.abs((2 * random() - 1) * a + s * gauss) <= half) inside++
    }
    // Four standard deviations of a count of 200 000 at 95 %: 0.2 %.
    expect(inside / draws).toBeGreaterThan(0.948)
    expect(inside / draws).toBeLessThan(0.952)
  })

  it('is the width at which the chance is 95 %', () => {
    const half = band95([rectangle(4), normal(1)])
    expect(chanceWithin(half, 4, 1)).toBeCloseTo(0.95, 9)
    expect(chanceWithin(1.96, 0, 1)).toBeCloseTo(0.95, 4)
    expect(chanceWithin(2, 4, 0)).toBe(0.5)
    expect(chanceWithin(9, 4, 0)).toBe(1)
  })
})

describe('the chance to lie within', () => {
  /** P(|R + N| ≤ b) by the midpoint rule over the rectangle, with another library's error function. */
  const counted = (b: number, a: number, s: number): number => {
    const below = (x: number): number => (1 + erf(x / (s * Math.SQRT2))) / 2
    const steps = 20_000
    let sum = 0
    for (let step = 0; step < steps; step++) {
      const r = a * ((2 * step + 1) / steps - 1)
      sum += below(b - r) - below(-b - r)
    }
    return sum / steps
  }

  it.each([
    [3, 4, 1],
    [4, 4, 0.5],
    [0.5, 1, 2],
    [5, 2, 1.5],
  ])('%d of a rectangle of %d with a normal of %d is the integral that its name says', (b, a, s) => {
    expect(chanceWithin(b, a, s)).toBeCloseTo(counted(b, a, s), 7)
  })
})

describe('the ranking', () => {
  it('sums causes of one name, adds up to one, and puts the largest first', () => {
    const shares = ranked([rectangle(1, 'adapter'), rectangle(2, 'wrench'), rectangle(2, 'adapter')])
    expect(shares.map(({ name }) => name)).toEqual(['adapter', 'wrench'])
    expect(shares.map(({ share }) => share)).toEqual([expect.closeTo(5 / 9, 12), expect.closeTo(4 / 9, 12)])
  })

  it('of no doubt at all has no shares', () => {
    expect(ranked([rectangle(0, 'wrench')])).toEqual([{ name: 'wrench', share: 0 }])
  })
})
