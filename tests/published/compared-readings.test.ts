// Two sets of readings against data that others published, and the ends of the intervals against thirty-digit arithmetic.
import { describe, expect, it } from 'vitest'
import { summaryOf, welchDifference } from '../../src/mechanics/welch.ts'
import { answered, numberOf, resultOf } from '../support/desk.ts'

// Michelson's speed of light of 1879, km/s less 299 000, five runs of twenty; NIST StRD, univariate, Michelso.
const runs = [
  [850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960],
  [960, 940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800],
  [880, 880, 880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840],
  [890, 810, 810, 820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780],
  [890, 840, 780, 810, 760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870],
]
// Student 1908, hours of sleep gained; as reprinted with every statistics package.
const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2]
const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]
const typed = (values: readonly number[]): string => values.map(String).join('; ')

describe('mean and spread (NIST StRD, published)', () => {
  it('Michelso: 299.852400000000 and 0.0790105478190518 of a hundred readings', () => {
    const all = runs.flat().map((value) => (299_000 + value) / 1000)
    const { steps } = answered('compare', { a: all.map(String), b: all.map(String) })
    expect(steps[0]?.value).toBeCloseTo(299.8524, 9)
    expect(steps[2]?.value).toBeCloseTo(0.0790105478190518, 9)
  })

  it.each([
    ['NumAcc3', 1_000_000.2],
    ['NumAcc4', 10_000_000.2],
  ])('%s: 0.1 around a mean a million times as large, of as many readings as are taken', (_name, middle) => {
    // The print has 1001 readings; any odd number of them has the same mean and spread.
    const all = [middle, ...Array.from({ length: 498 }, (_, n) => middle + (n % 2 === 0 ? -0.1 : 0.1))]
    const texts = all.map((value) => value.toFixed(1))
    const { steps } = answered('compare', { a: texts, b: texts })
    // Fourteen of the fifteen digits that a double holds.
    expect(Math.abs((steps[0]?.value ?? 0) / middle - 1)).toBeLessThan(1e-14)
    expect(Math.abs((steps[2]?.value ?? 0) - 0.1)).toBeLessThan(1e-8)
  })
})

describe('the difference of two means', () => {
  it('Student’s sleep data by Welch: 1.58, -0.2054832 to 3.3654832, ν 17.776 (published)', () => {
    const { absolute } = welchDifference(summaryOf(first), summaryOf(second), 0.95)
    expect(absolute.value).toBeCloseTo(1.58, 9)
    expect(absolute.low).toBeCloseTo(-0.205483230711711, 9)
    expect(absolute.high).toBeCloseTo(3.365483230711711, 9)
    const { steps } = answered('compare', { a: typed(second), b: typed(first) })
    expect(steps[5]?.numbers).toContain('-3.3655 … 0.20548')
    expect(steps[5]?.numbers).toContain('ν = 17.776')
  })

  it('Michelson’s second run against his first: -53, -108.419 to 2.419 (published)', () => {
    const { absolute } = welchDifference(summaryOf(runs[0] ?? []), summaryOf(runs[1] ?? []), 0.95)
    expect(absolute.low).toBeCloseTo(-108.4191106875942, 9)
    expect(absolute.high).toBeCloseTo(2.419110687594216, 9)
  })

  // Fieller's ends with ν by Welch–Satterthwaite at each ratio, worked out to thirty digits apart from this program.
  it.each([
    ['sleep', typed(second), typed(first), '95 %', -0.6781115879828326, -1.235809919530518, 0.1633757062172174],
    [
      'Michelson',
      typed(runs[0] ?? []),
      typed(runs[1] ?? []),
      '95 %',
      -53 / 909,
      -0.1140081905860285,
      0.002792619041336646,
    ],
    [
      'a bench',
      '99.5 101 100.2 99.8',
      '103 104.5 103.8 102.9',
      '95 %',
      3.425 / 100.125,
      0.02191615484085249,
      0.04661405659056704,
    ],
    [
      'a bench',
      '99.5 101 100.2 99.8',
      '103 104.5 103.8 102.9',
      '99 %',
      3.425 / 100.125,
      0.01557705224315178,
      0.05307934643926011,
    ],
  ])('in percent of the first, %s (worked out)', (_name, a, b, confidence, value, low, high) => {
    const answer = answered('compare', { a, b, confidence })
    expect(numberOf(answer, 'difference') / 100).toBeCloseTo(value, 11)
    expect((resultOf(answer, 'difference').low ?? Number.NaN) / 100).toBeCloseTo(low, 9)
    expect((resultOf(answer, 'difference').high ?? Number.NaN) / 100).toBeCloseTo(high, 9)
  })
})
