// compare: the five verdicts, the interval that goes with them, what stands beside them, and sets that cannot be compared.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf } from '../support/desk.ts'
import { SEED } from '../support/random.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>
const compare = (a: string | readonly string[], b: string | readonly string[], more: Raw = {}) =>
  answered('compare', { a, b, ...more })
const verdictOf = (answer: ReturnType<typeof compare>): string => (answer.results.verdict as { code: string }).code

describe('the five verdicts', () => {
  it.each<[string, string, string, Raw, string]>([
    ['b is the same', '100 101 99 100', '100 100 101 99', {}, 'no-difference-that-matters'],
    ['b is a little more, seen clearly', '100 100.1 99.9 100', '101 101.1 100.9 101', {}, 'seen-too-small-to-matter'],
    ['b is ten percent more', '100 101 99 100', '110 111 109 110', {}, 'a-difference-that-matters'],
    ['b is ten percent less', '100 101 99 100', '90 91 89 90', {}, 'a-difference-that-matters'],
    [
      'b is about the margin more',
      '99.5 101 100.2 99.8',
      '103 104.5 103.8 102.9',
      {},
      'seen-not-decided-whether-it-matters',
    ],
    ['both scatter widely', '90 110 100', '95 115 99', {}, 'not-decided'],
  ])('%s', (_, a, b, more, verdict) => {
    const answer = compare(a, b, more)
    expect(verdictOf(answer)).toBe(verdict)
    expect(answer.headline.toLowerCase()).toContain((answer.results.verdict as { text: string }).text)
  })

  it('change with the margin and the confidence that are asked', () => {
    const [a, b] = ['99.5 101 100.2 99.8', '103 104.5 103.8 102.9']
    expect(verdictOf(compare(a, b, { margin: '6 %' }))).toBe('seen-too-small-to-matter')
    expect(verdictOf(compare(a, b, { margin: '1 %' }))).toBe('a-difference-that-matters')
    expect(verdictOf(compare(a, b, { margin: '5 %' }))).toBe('seen-too-small-to-matter')
    expect(verdictOf(compare(a, b, { margin: '5 %', confidence: '99 %' }))).toBe('seen-not-decided-whether-it-matters')
  })
})

describe('the difference', () => {
  it('is b less a in percent of a, with both ends, in the direction of its sign', () => {
    const more = compare('99.5; 101; 100.2; 99.8 N·m', '103; 104.5; 103.8; 102.9 N·m')
    expect(resultOf(more, 'difference')).toMatchObject({ unit: '%', text: '3.42 %', span: '2.19 to 4.66 %' })
    expect(more.headline).toContain('B is 3.42 % higher than A')
    const less = compare('103; 104.5; 103.8; 102.9 N·m', '99.5; 101; 100.2; 99.8 N·m')
    expect(numberOf(less, 'difference')).toBeLessThan(0)
    expect(less.headline).toContain('B is 3.31 % lower than A')
    expect(compare('10 11', '10 11').headline).toContain('the means of B and A are the same')
  })

  it('is the same whatever unit each set speaks', () => {
    const newton = compare('99.5; 101; 100.2; 99.8 N·m', '103; 104.5; 103.8; 102.9 N·m')
    const mixed = compare(
      '99.5; 101; 100.2; 99.8 N·m',
      '103; 104.5; 103.8; 102.9'.split('; ').map((text) => `${(Number(text) / 1.3558179483314003).toFixed(9)} lbf·ft`),
    )
    expect(numberOf(mixed, 'difference')).toBeCloseTo(numberOf(newton, 'difference'), 6)
    expect(mixed.steps[1]?.unit).toBe('N·m')
  })

  it('excludes 0 exactly where a difference is seen', () => {
    const seen = ['seen-too-small-to-matter', 'seen-not-decided-whether-it-matters']
    const unseen = ['no-difference-that-matters', 'not-decided']
    const set = (middle: number) =>
      fc.array(
        fc.integer({ min: -400, max: 400 }).map((hundredths) => (middle + hundredths / 100).toFixed(2)),
        { minLength: 2, maxLength: 12 },
      )
    fc.assert(
      fc.property(set(100), fc.integer({ min: 96, max: 104 }).chain(set), (a, b) => {
        const answer = compare(a, b)
        const { low = Number.NaN, high = Number.NaN } = resultOf(answer, 'difference')
        if (seen.includes(verdictOf(answer))) expect(low > 0 || high < 0).toBe(true)
        if (unseen.includes(verdictOf(answer))) expect(low <= 1e-9 && high >= -1e-9).toBe(true)
      }),
      { seed: SEED, numRuns: 300 },
    )
  })

  it('has no ends where the mean of a is not clear of 0, and says so', () => {
    const answer = compare('0.7 -1.6 -0.2 -1.2 -0.1 3.4 3.7 0.8 0 2', '1.9 0.8 1.1 0.1 -0.1 4.4 5.5 1.6 4.6 3.4')
    expect(resultOf(answer, 'difference').low).toBeUndefined()
    expect(answer.headline).toContain('no ends can be given')
    expect(cautionsOf(answer)).toContain('mean-near-zero')
  })
})

describe('what stands beside it', () => {
  it('mean and spread of each, and the ratio of the variances, are steps', () => {
    const { steps } = compare('1 2 3 N·m', '2 4 6 N·m')
    expect(steps.slice(0, 5).map(({ value, unit }) => [value, unit])).toEqual([
      [2, 'N·m'],
      [4, 'N·m'],
      [1, 'N·m'],
      [2, 'N·m'],
      [4, '1'],
    ])
  })

  it('about so many more of each, only where the difference is within the margin and not decided', () => {
    const open = compare('99.5 101 100.2 99.8', '103 104.5 103.8 102.9')
    expect(Number.isInteger(numberOf(open, 'readings-needed'))).toBe(true)
    expect(numberOf(open, 'readings-needed')).toBeGreaterThan(0)
    for (const answer of [
      compare('100 101 99 100', '100 100 101 99'),
      compare('100 101 99 100', '110 111 109 110'),
      compare('90 110 100', '100 125 105'),
    ])
      expect(answer.results).not.toHaveProperty('readings-needed')
  })

  it('that many more of the same spread decide it, one fewer does not', () => {
    // Sets of n readings with exactly this mean and spread: half of them above it, half below, an odd one on it.
    const sized = (mean: number, s: number, n: number): string[] => {
      const off = n % 2 === 0 ? s * Math.sqrt((n - 1) / n) : s
      const pairs = Array.from({ length: 2 * Math.floor(n / 2) }, (_, index) => mean + (index % 2 === 0 ? off : -off))
      return [...pairs, ...(n % 2 === 0 ? [] : [mean])].map((value) => value.toFixed(12))
    }
    const after = (more: number) => compare(sized(100, 3, 6 + more), sized(101, 3, 6 + more))
    const needed = numberOf(after(0), 'readings-needed')
    expect(verdictOf(after(needed))).toBe('no-difference-that-matters')
    expect(verdictOf(after(needed - 1))).toBe('not-decided')
    expect(numberOf(after(needed - 1), 'readings-needed')).toBe(1)
  })

  it('shows margin and confidence as assumed where they were not told', () => {
    const assumed = compare('1 2', '1 2').given.filter(({ from }) => from === 'assumed')
    expect(assumed.map(({ input, text }) => [input, text])).toEqual([
      ['margin', '4 %'],
      ['confidence', '95 %'],
    ])
  })

  it('readings that are all alike: the resolution hides their scatter, and with it the answer is less sure', () => {
    const bare = compare('100 100 100', '101 101 101')
    expect(bare.cautions[0]?.text).toContain('All readings of A are alike')
    expect(bare.cautions[1]?.text).toContain('All readings of B are alike')
    expect(resultOf(bare, 'difference')).toMatchObject({ text: '1 %' })
    const told = compare('100 100 100', '101 101 101', { resolution: '1' })
    expect(cautionsOf(told).slice(0, 2)).toEqual(['alike-resolution', 'alike-resolution'])
    expect(numberOf(told, 'difference')).toBe(1)
    expect(resultOf(told, 'difference').high).toBeGreaterThan(1.4)
    expect(told.steps[2]?.value).toBeCloseTo(1 / Math.sqrt(12), 12)
  })
})

describe('five hundred readings of each', () => {
  const many = (middle: number) => Array.from({ length: 500 }, (_, n) => (middle + (n % 7) / 10).toFixed(2))

  it('are taken in one text, told short and kept whole', () => {
    const answer = compare(
      `${many(100).join('; ')} N·m`,
      many(100.5)
        .map((text) => `${text} lbf·ft`)
        .join('; '),
    )
    expect(answer.given[0]?.values).toHaveLength(500)
    expect(answer.given[0]?.text).toMatch(/^100; 100\.1; .*…; .* N·m \(n = 500\)$/)
    expect(answer.given[0]?.value).toBe(answer.given[0]?.values?.join('; ').concat(' N·m'))
    expect(verdictOf(answer)).toBe('a-difference-that-matters')
  })

  it('one more is refused, and so is a text that is far too long', () => {
    expect(codesOf(ask('compare', { a: [...many(1), '1'], b: '1 2' }))).toEqual(['too-many'])
    expect(codesOf(ask('compare', { a: '1 '.repeat(20_000), b: '1 2' }))).toEqual(['too-long'])
  })
})

describe('what cannot be compared', () => {
  it.each<[string, Raw, readonly string[]]>([
    ['one reading', { a: '1', b: '1 2' }, ['too-few']],
    ['no reading', { a: '', b: '1 2' }, ['empty']],
    ['two kinds', { a: '1 2 N·m', b: '1 2 mm' }, ['conflict']],
    ['two kinds in one set', { a: '1 N·m; 2 mm', b: '1 2 N·m' }, ['conflict']],
    ['a unit on some', { a: '1 N·m; 2; 3', b: '1 2 N·m' }, ['conflict']],
    ['a resolution of another kind', { a: '1 2 N·m', b: '1 2 N·m', resolution: '0.1' }, ['conflict']],
    ['a unit that nobody knows', { a: '1 2 foo', b: '1 2' }, ['unit-unknown', 'unit-unknown']],
    ['a mean of a below 0', { a: '-1 -2', b: '1 2' }, ['out-of-range']],
    ['a mean of a of 0', { a: '-1 1', b: '1 2' }, ['out-of-range']],
    ['a negative resolution', { a: '1 2', b: '1 2', resolution: '-1' }, ['negative']],
    ['a number past all measure', { a: `${'9'.repeat(400)} 1`, b: '1 2' }, ['out-of-range']],
    ['a number below all measure', { a: '0.0000000000001 1', b: '1 2' }, ['out-of-range']],
    ['a margin without its mark', { a: '1 2', b: '1 2', margin: '4' }, ['unit-missing']],
    ['a confidence of certainty', { a: '1 2', b: '1 2', confidence: '100 %' }, ['out-of-range']],
  ])('%s', (_, raw, codes) => {
    expect(codesOf(ask('compare', raw))).toEqual(codes)
  })

  it('a set that is missing is asked back', () => {
    expect(ask('compare', { a: '1 2' }).missing.map(({ input }) => input)).toEqual(['b'])
  })
})
