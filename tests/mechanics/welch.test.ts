import { mean, variance } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { doubtOf, summaryOf, welchDifference } from '../../src/mechanics/welch.ts'
import { tBelowByHand } from '../support/student-by-hand.ts'

// Student 1908, additional hours of sleep with two drugs, taken as independent; results as statistics packages print them.
const sleepA = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2]
const sleepB = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]
const a = [98.2, 101.4, 100.3, 99.1, 100.9]
const b = [103.9, 108.2, 104.4, 107.1, 109.5, 105.8, 101.2]

// NIST StRD, univariate: made numbers with certified mean and standard deviation.
const alternating = (first: number, low: number, high: number): number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? low : high)),
]

describe('mean and spread', () => {
  it('of NIST StRD NumAcc1 are 10000002 and 1, exactly (from memory)', () => {
    expect(summaryOf([10_000_001, 10_000_003, 10_000_002])).toEqual({ n: 3, mean: 10_000_002, s: 1 })
  })

  it('of NIST StRD NumAcc2 are 1.2 and 0.1 to 1e-9 (from memory)', () => {
    const { n, mean: middle, s } = summaryOf(alternating(1.2, 1.1, 1.3))
    expect(n).toBe(1001)
    expect(Math.abs(middle - 1.2)).toBeLessThan(1e-9)
    expect(Math.abs(s - 0.1)).toBeLessThan(1e-9)
  })

  it('of NIST StRD NumAcc3 and NumAcc4 are right to the digits that doubles of that size hold (from memory)', () => {
    const three = summaryOf(alternating(1_000_000.2, 1_000_000.1, 1_000_000.3))
    expect(Math.abs(three.mean - 1_000_000.2)).toBeLessThan(1e-9 * 1e6)
    expect(Math.abs(three.s - 0.1)).toBeLessThan(1e-9)
    const four = summaryOf(alternating(10_000_000.2, 10_000_000.1, 10_000_000.3))
    expect(Math.abs(four.s - 0.1)).toBeLessThan(1e-8)
  })

  it('have a floor of the resolution over √12, and none without a resolution', () => {
    expect(summaryOf([100, 100, 100], 0.5).s).toBeCloseTo(0.5 / Math.sqrt(12), 12)
    expect(summaryOf([100, 100, 100]).s).toBe(0)
    expect(summaryOf([0.1, 0.1, 0.1]).s).toBe(0)
    expect(summaryOf([99, 101], 0.5).s).toBeCloseTo(Math.SQRT2, 12)
  })
})

describe("Welch's interval", () => {
  it("of Student's sleep data is −0.2054832 … 3.3654832 at 17.776 degrees of freedom (from memory)", () => {
    const one = summaryOf(sleepA)
    const other = summaryOf(sleepB)
    const { D, u, nu } = doubtOf(one, other, 1)
    expect(D).toBeCloseTo(1.58, 12)
    expect(D / u).toBeCloseTo(1.8608, 4)
    expect(nu).toBeCloseTo(17.776, 3)
    const { absolute } = welchDifference(one, other, 0.95)
    expect(absolute.low).toBeCloseTo(-0.2054832, 7)
    expect(absolute.high).toBeCloseTo(3.3654832, 7)
  })

  it('agrees with an independent computation to 1e-9', () => {
    const [va, vb] = [Number(variance(a)) / a.length, Number(variance(b)) / b.length]
    const u = Math.sqrt(va + vb)
    const nu = (va + vb) ** 2 / (va ** 2 / (a.length - 1) + vb ** 2 / (b.length - 1))
    const difference = Number(mean(b)) - Number(mean(a))
    const doubt = doubtOf(summaryOf(a), summaryOf(b), 1)
    expect(Math.abs(doubt.D - difference)).toBeLessThan(1e-9)
    expect(Math.abs(doubt.u - u)).toBeLessThan(1e-9)
    expect(Math.abs(doubt.nu - nu)).toBeLessThan(1e-9)
    const { absolute } = welchDifference(summaryOf(a), summaryOf(b), 0.95)
    expect(Math.abs(tBelowByHand((absolute.high - difference) / u, nu) - 0.975)).toBeLessThan(1e-9)
  })

  it('of a factor k is that of b against readings of a times k', () => {
    const scaled = doubtOf(summaryOf(a.map((value) => value * 1.04)), summaryOf(b), 1)
    const factor = doubtOf(summaryOf(a), summaryOf(b), 1.04)
    expect(factor.D).toBeCloseTo(scaled.D, 10)
    expect(factor.u).toBeCloseTo(scaled.u, 12)
    expect(factor.nu).toBeCloseTo(scaled.nu, 10)
  })
})

describe('the interval of the ratio', () => {
  it('ends where the difference from that many times a is just not excluded', () => {
    const [one, other] = [summaryOf(a), summaryOf(b)]
    const { relative } = welchDifference(one, other, 0.95)
    for (const end of [relative.low, relative.high]) {
      const { D, u, nu } = doubtOf(one, other, 1 + (end as number))
      expect(Math.abs(tBelowByHand(Math.abs(D) / u, nu) - 0.975)).toBeLessThan(1e-8)
    }
    expect(relative.low as number).toBeLessThan(relative.value)
    expect(relative.high as number).toBeGreaterThan(relative.value)
  })

  it('is given by the samples turned round as its inverse', () => {
    const forth = welchDifference(summaryOf(a), summaryOf(b), 0.95).relative
    const back = welchDifference(summaryOf(b), summaryOf(a), 0.95).relative
    expect((1 + (forth.low as number)) * (1 + (back.high as number))).toBeCloseTo(1, 9)
    expect((1 + (forth.high as number)) * (1 + (back.low as number))).toBeCloseTo(1, 9)
  })

  it('has no ends where a is not clear of 0, and no width where nothing scatters', () => {
    expect(welchDifference(summaryOf([1, 9]), summaryOf([10, 11]), 0.95).relative).not.toHaveProperty('low')
    const { relative } = welchDifference(summaryOf([100, 100]), summaryOf([104, 104]), 0.95)
    expect(relative.low).toBeCloseTo(0.04, 10)
    expect(relative.high).toBeCloseTo(0.04, 10)
  })
})
