import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compareSamples,
  findingsOf,
  type Margin,
  type SampleVerdict,
  sampleVerdicts,
  verdictOf,
} from '../../src/mechanics/two-samples.ts'
import { summaryOf } from '../../src/mechanics/welch.ts'
import { normalFrom, seeded } from '../support/random.ts'

const usual: Margin = { m: 0.04, confidence: 0.95 }
const seed = 20261125

describe('two sets of readings', () => {
  const cases: ReadonlyArray<[SampleVerdict, number[], number[]]> = [
    ['a-difference-that-matters', [100, 101, 99, 100], [110, 111, 109, 110]],
    ['a-difference-that-matters', [100, 101, 99, 100], [90, 91, 89, 90]],
    ['no-difference-that-matters', [100, 101, 99, 100, 100.5], [100.4, 101, 99.6, 100.2, 99.9]],
    ['seen-too-small-to-matter', [100, 100.2, 99.8, 100.1, 99.9], [101.5, 101.7, 101.3, 101.6, 101.4]],
    ['seen-not-decided', [100, 101, 99, 100], [104, 105, 103, 104]],
    ['not-decided', [100, 112, 91, 105], [98, 110, 104, 88]],
  ]
  it.each(cases)('read as %s', (verdict, a, b) => {
    expect(compareSamples(a, b, usual).verdict).toBe(verdict)
  })

  it('reach every verdict in the cases above', () => {
    expect(new Set(cases.map(([verdict]) => verdict))).toEqual(new Set(sampleVerdicts))
  })

  it('differ by b against a: 10 % up, with the interval around it', () => {
    const { difference, absolute } = compareSamples([100, 101, 99, 100], [110, 111, 109, 110], usual)
    expect(difference.value).toBeCloseTo(0.1, 12)
    expect(absolute.value).toBeCloseTo(10, 12)
    expect(absolute.low).toBeLessThan(10)
    expect(difference.low as number).toBeGreaterThan(0.08)
    expect(difference.high as number).toBeLessThan(0.12)
  })

  it('show the spread of each and the ratio of their variances', () => {
    const { a, b, varianceRatio } = compareSamples([99, 100, 101], [98, 100, 102], usual)
    expect(a.s).toBeCloseTo(1, 12)
    expect(b.s).toBeCloseTo(2, 12)
    expect(varianceRatio).toBeCloseTo(4, 12)
  })

  it('all alike hide their scatter, and say which set does', () => {
    expect(compareSamples([100, 100, 100], [101, 102, 101], usual).hidden).toEqual(['a'])
    const { hidden, verdict, varianceRatio } = compareSamples([100, 100], [100, 100], usual)
    expect(hidden).toEqual(['a', 'b'])
    expect(verdict).toBe('no-difference-that-matters')
    expect(varianceRatio).toBeUndefined()
  })

  it('without scatter are not called apart by the rounding of doubles', () => {
    expect(compareSamples([0.3, 0.3], [0.1 * 3, 0.1 * 3], { m: 0, confidence: 0.95 }).verdict).toBe('not-decided')
    expect(compareSamples([100, 100], [104, 104], usual).verdict).toBe('seen-not-decided')
  })

  it('keep the floor of a coarse gauge: what was plain is no longer', () => {
    const [a, b] = [
      [100, 100, 100],
      [106, 106, 106],
    ]
    expect(compareSamples(a, b, usual).verdict).toBe('a-difference-that-matters')
    expect(compareSamples(a, b, usual, 5).verdict).toBe('seen-not-decided')
  })
})

describe('further readings', () => {
  it('are named where the difference lies inside the margin and the doubt does not', () => {
    const [a, b] = [
      [100, 106, 94, 102],
      [102, 96, 107, 99],
    ]
    const { verdict, readingsNeeded } = compareSamples(a, b, usual)
    expect(verdict).toBe('not-decided')
    expect(readingsNeeded).toBeGreaterThan(0)
    const more = readingsNeeded as number
    const grown = (values: number[], by: number) => ({ ...summaryOf(values), n: values.length + by })
    expect(findingsOf(grown(a, more), grown(b, more), usual).inside).toBe(true)
    expect(findingsOf(grown(a, more - 1), grown(b, more - 1), usual).inside).toBe(false)
  })

  it('are not named where it is decided, where the difference reaches the margin, or where they would be endless', () => {
    expect(compareSamples([100, 101, 99, 100], [110, 111, 109, 110], usual)).not.toHaveProperty('readingsNeeded')
    expect(compareSamples([100, 110, 90], [106, 117, 95], usual)).not.toHaveProperty('readingsNeeded')
    expect(compareSamples([100, 140, 60], [103.99, 144, 63.97], usual)).not.toHaveProperty('readingsNeeded')
  })
})

describe('the verdicts', () => {
  it('are disjoint and exhaustive: any findings have exactly one', () => {
    for (const inside of [true, false]) {
      for (const beyond of [true, false]) {
        for (const excludesZero of [true, false]) {
          const verdict = verdictOf({ inside, beyond, excludesZero })
          expect(sampleVerdicts.filter((candidate) => candidate === verdict)).toHaveLength(1)
          if (inside) expect(verdict).not.toBe('a-difference-that-matters')
        }
      }
    }
  })

  const sample = fc.array(fc.double({ min: 80, max: 120, noNaN: true }), { minLength: 2, maxLength: 12 })
  const margin = fc.record({
    m: fc.double({ min: 0, max: 0.3, noNaN: true }),
    confidence: fc.constantFrom(0.9, 0.95, 0.99),
  })

  it('never find a difference inside and beyond the margin at once, and beyond is always seen', () => {
    fc.assert(
      fc.property(sample, sample, margin, (a, b, asked) => {
        const { inside, beyond, excludesZero } = findingsOf(summaryOf(a), summaryOf(b), asked)
        return !(inside && beyond) && (!beyond || excludesZero)
      }),
      { seed, numRuns: 2000 },
    )
  })

  it('do not depend on the unit or the order of the readings', () => {
    fc.assert(
      fc.property(sample, sample, margin, fc.constantFrom(0.001, 0.5, 2, 1000), (a, b, asked, unit) => {
        const plain = compareSamples(a, b, asked)
        const turned = compareSamples(
          [...a].reverse().map((x) => x * unit),
          b.map((x) => x * unit),
          asked,
        )
        return plain.verdict === turned.verdict
      }),
      { seed, numRuns: 200 },
    )
  })

  it('at a wider margin never turn from no difference that matters to one that does', () => {
    fc.assert(
      fc.property(sample, sample, margin, (a, b, asked) => {
        const wider = { ...asked, m: asked.m + 0.02 }
        const [one, other] = [
          findingsOf(summaryOf(a), summaryOf(b), asked),
          findingsOf(summaryOf(a), summaryOf(b), wider),
        ]
        return (!one.inside || other.inside) && (!other.beyond || one.beyond)
      }),
      { seed, numRuns: 500 },
    )
  })
})

describe('the errors over many drawn samples', () => {
  const TRIALS = 10_000
  // Three standard deviations of the count itself.
  const atMost = 0.05 + 3 * Math.sqrt((0.05 * 0.95) / TRIALS)

  const draws: ReadonlyArray<{ name: string; na: number; nb: number; sa: number; sb: number; m: number }> = [
    { name: 'five of each', na: 5, nb: 5, sa: 2, sb: 2, m: 0.04 },
    { name: 'five and twenty, the few scattering more', na: 5, nb: 20, sa: 4, sb: 2, m: 0.04 },
    { name: 'ten of each, unequal scatter', na: 10, nb: 10, sa: 1, sb: 3, m: 0.04 },
    { name: 'a margin narrow against the doubt', na: 6, nb: 6, sa: 10, sb: 10, m: 0.01 },
    { name: 'no margin at all', na: 8, nb: 8, sa: 5, sb: 5, m: 0 },
  ]

  for (const { name, na, nb, sa, sb, m } of draws) {
    const rates = (difference: number) => {
      const random = seeded(seed)
      const draw = (n: number, middle: number, s: number) =>
        summaryOf(Array.from({ length: n }, () => middle + s * normalFrom(random)))
      const counts = { inside: 0, beyond: 0, seen: 0 }
      for (let trial = 0; trial < TRIALS; trial++) {
        const found = findingsOf(draw(na, 100, sa), draw(nb, 100 * (1 + difference), sb), { m, confidence: 0.95 })
        if (found.inside) counts.inside++
        if (found.beyond) counts.beyond++
        if (found.excludesZero) counts.seen++
      }
      return { inside: counts.inside / TRIALS, beyond: counts.beyond / TRIALS, seen: counts.seen / TRIALS }
    }

    it(`stay at 5 % or below: ${name}`, () => {
      const none = rates(0)
      expect(none.seen, 'a difference is seen where there is none').toBeLessThan(atMost)
      expect(none.beyond, 'it matters where there is none').toBeLessThan(atMost)
      for (const edge of [m, -m]) {
        const { inside, beyond } = rates(edge)
        expect(inside, 'inside while it lies on the margin').toBeLessThan(atMost)
        expect(beyond, 'beyond while it lies on the margin').toBeLessThan(atMost)
      }
    })
  }
})
