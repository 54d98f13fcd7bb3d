// wrench-check: every reading counts, the right limit is taken and told, the sign says which way, and what is in doubt is told so.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, rowsOf } from '../support/desk.ts'
import { SEED } from '../support/random.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>
const check = (points: string | readonly string[], more: Raw = {}) => answered('wrench-check', { points, ...more })
const verdictOf = (points: string, more: Raw = {}): string =>
  (check(points, more).results.verdict as { code: string }).code
const limitOf = (points: string, more: Raw = {}): { value: number | string; from: string } | undefined => {
  const found = check(points, more).given.find(({ input }) => input === 'tolerance')
  return found && { value: found.value, from: found.from }
}

describe('a check against a reference', () => {
  it('gives a row a point with mean, deviation of the mean, spread and verdict', () => {
    const answer = check('100 N·m: 99.5; 101; 100.2 N·m', { tolerance: '4 %' })
    const [row, ...more] = rowsOf(answer, 'points') as unknown as Array<Record<string, Record<string, unknown>>>
    const mean = (99.5 + 101 + 100.2) / 3
    expect(more).toEqual([])
    expect(Object.keys(row ?? {})).toEqual(['setting', 'mean', 'deviation', 'spread', 'verdict'])
    expect(row?.setting).toMatchObject({ value: 100, unit: 'N·m', text: '100 N·m' })
    expect(row?.mean?.value).toBeCloseTo(mean, 10)
    expect(row?.deviation?.value).toBeCloseTo(((100 - mean) / mean) * 100, 10)
    expect(row?.spread?.value).toBeCloseTo(1.5, 10)
    expect(row?.verdict).toEqual({ code: 'pass', text: 'pass' })
    expect(answer.results.verdict).toEqual({ code: 'pass', text: 'pass' })
  })

  it('fails on one reading outside, however good the mean', () => {
    expect(verdictOf('100 N·m: 100; 104.3; 95.9 N·m', { tolerance: '4 %' })).toBe('fail')
    expect(verdictOf('100 N·m: 100; 104.1; 96.2 N·m', { tolerance: '4 %' })).toBe('pass')
  })

  it('is as good as its worst point', () => {
    const answer = check('20 N·m: 20 N·m | 60 N·m: 66 N·m | 100 N·m: 100 N·m', { tolerance: '4 %' })
    const words = rowsOf(answer, 'points').map((row) => (row.verdict as unknown as { code: string }).code)
    expect(words).toEqual(['pass', 'fail', 'pass'])
    expect(answer.results.verdict).toMatchObject({ code: 'fail' })
    expect(cautionsOf(answer)[0]).toBe('out-of-limit')
  })

  it.each([
    ['96.15', '96.16', 'LOW'],
    ['104.17', '104.16', 'HIGH'],
  ])('a reading of %s N·m at 100 N·m is outside 4 %%, %s is inside', (outside, inside, way) => {
    const bad = check(`100 N·m: ${outside} N·m`, { tolerance: '4 %' })
    expect(bad.results.verdict).toMatchObject({ code: 'fail' })
    expect(bad.headline).toContain(`it delivers ${way}`)
    expect(verdictOf(`100 N·m: ${inside} N·m`, { tolerance: '4 %' })).toBe('pass')
  })

  it('says the worst reading and which way it is off in the headline', () => {
    expect(check('75 lbf·ft: 74 lbf·ft | 150 lbf·ft: 149; 140 lbf·ft').headline).toBe(
      'Fail: outside ±4 %; the worst reading is off by 7.14 %, at 150 lbf·ft, where it delivers LOW.',
    )
    expect(check('100 N·m: 102 N·m').headline).toContain('off by -1.961 %, at 100 N·m, where it delivers HIGH')
    expect(check('100 N·m: 100 N·m').headline).toContain('off by 0 %, at 100 N·m, where it delivers what it says')
  })

  it('tells everything in the unit of the first point, whatever the reference speaks', () => {
    const answer = check('100 N·m: 73; 74 lbf·ft | 50 lbf·ft: 50 lbf·ft')
    for (const row of rowsOf(answer, 'points')) {
      for (const cell of ['setting', 'mean', 'spread']) expect(row[cell]?.unit).toBe('N·m')
    }
    expect(answer.given[0]).toMatchObject({ text: '100 N·m: 73; 74 lbf·ft', value: 100, unit: 'N·m', index: 0 })
    expect(answer.given[0]?.values?.[0]).toBeCloseTo(73 * 1.3558179483314003, 9)
  })
})

describe('the limit', () => {
  it.each<[string, string, Raw, number, string]>([
    ['the maker’s own', '100 N·m: 100 N·m', { tolerance: '3 %' }, 3, 'asked'],
    [
      'the maker’s own, whatever the class',
      '100 N·m: 100 N·m',
      { tolerance: '3 %', 'iso-type': 'setting', 'iso-class': 'D' },
      3,
      'asked',
    ],
    ['by class, 4 %', '100 N·m: 100 N·m', { 'iso-type': 'setting', 'iso-class': 'A' }, 4, 'assumed'],
    ['by class, 6 %', '100 N·m: 100 N·m', { 'iso-type': 'setting', 'iso-class': 'D' }, 6, 'assumed'],
    ['by class, 6 %', '100 N·m: 100 N·m', { 'iso-type': 'indicating', 'iso-class': 'A' }, 6, 'assumed'],
    ['by class and most', '8 N·m: 8 N·m', { 'iso-type': 'setting', 'iso-class': 'A', most: '10 N·m' }, 6, 'assumed'],
    ['by class and most', '8 N·m: 8 N·m', { 'iso-type': 'setting', 'iso-class': 'A', most: '25 N·m' }, 4, 'assumed'],
    ['by most', '8 N·m: 8 N·m', { most: '25 N·m' }, 4, 'assumed'],
    ['by most, up to 10 N·m', '8 N·m: 8 N·m', { most: '10 N·m' }, 6, 'assumed'],
    ['by the highest point', '8 N·m: 8 N·m | 11 N·m: 11 N·m', {}, 4, 'assumed'],
    ['by the highest point, up to 10 N·m', '8 N·m: 8 N·m | 10 N·m: 10 N·m', {}, 6, 'assumed'],
    ['by the highest point where the type has no class', '8 N·m: 8 N·m', { 'iso-type': 'setting' }, 6, 'assumed'],
  ])('%s', (_, points, more, value, from) => {
    expect(limitOf(points, more)).toEqual({ value, from })
  })

  it('says by what it was taken in the first step, and cautions where nobody told it', () => {
    expect(check('8 N·m: 8 N·m').steps[0]?.say).toContain('highest point')
    expect(cautionsOf(check('8 N·m: 8 N·m'))).toContain('limit-assumed')
    expect(cautionsOf(check('8 N·m: 8 N·m', { tolerance: '4 %' }))).not.toContain('limit-assumed')
    const byClass = check('80 N·m: 80 N·m', { 'iso-type': 'setting', 'iso-class': 'b' })
    expect(byClass.steps[0]?.say).toContain('class B of setting tools')
    expect(cautionsOf(byClass)).not.toContain('limit-assumed')
  })

  it('by class asks for the type, and for most where the points leave it open', () => {
    const missing = (raw: Raw) => ask('wrench-check', raw).missing.map(({ input }) => input)
    expect(missing({ points: '100 N·m: 100 N·m', 'iso-class': 'A' })).toEqual(['iso-type'])
    expect(missing({ points: '8 N·m: 8 N·m', 'iso-class': 'A', 'iso-type': 'setting' })).toEqual(['most'])
    expect(missing({ points: '8 N·m: 8 N·m', 'iso-class': 'D', 'iso-type': 'setting' })).toEqual([])
    expect(missing({ points: '11 N·m: 11 N·m', 'iso-class': 'A', 'iso-type': 'setting' })).toEqual([])
    expect(missing({ points: '8 N·m: 8 N·m', 'iso-class': 'A', tolerance: '4 %' })).toEqual([])
  })

  it('a class that the type does not have is refused', () => {
    const answer = ask('wrench-check', { points: '100 N·m: 100 N·m', 'iso-type': 'indicating', 'iso-class': 'F' })
    expect(codesOf(answer)).toEqual(['conflict'])
    expect(answer.faults[0]?.allowed).toBe('A, B, C, D or E for indicating tools')
  })
})

describe('the rule', () => {
  const guarded: Raw = { tolerance: '4 %', 'gauge-uncertainty': '1 %', rule: 'guarded' }

  it('is simple where none was told, and shown as assumed', () => {
    const rule = check('100 N·m: 97 N·m').given.find(({ input }) => input === 'rule')
    expect(rule).toMatchObject({ value: 'simple', from: 'assumed' })
  })

  it.each([
    ['97.2', 'pass'],
    ['103', 'pass'],
    ['96.5', 'pass-in-doubt'],
    ['104', 'pass-in-doubt'],
    ['95.7', 'fail-in-doubt'],
    ['105', 'fail-in-doubt'],
    ['95.1', 'fail'],
    ['106', 'fail'],
  ])('guarded by 1 %% on 4 %%: a reading of %s N·m at 100 N·m is a %s', (reading, verdict) => {
    expect(verdictOf(`100 N·m: ${reading} N·m`, guarded)).toBe(verdict)
  })

  it('simple knows pass and fail alone, whatever the reference', () => {
    expect(verdictOf('100 N·m: 96.5 N·m', { ...guarded, rule: 'simple' })).toBe('pass')
    expect(verdictOf('100 N·m: 95.7 N·m', { ...guarded, rule: 'simple' })).toBe('fail')
  })

  it('guarded without an uncertainty asks for it, with the answer over likely ones', () => {
    const answer = ask('wrench-check', { points: '100 N·m: 97 N·m', rule: 'guarded', tolerance: '4 %' })
    expect(answer.missing.map(({ input }) => input)).toEqual(['gauge-uncertainty'])
    const words = answer.ladder?.rows.map(({ at, results }) => [at.text, (results.verdict as { code: string }).code])
    expect(words).toEqual([
      ['0.25 %', 'pass'],
      ['0.5 %', 'pass'],
      ['1 %', 'pass-in-doubt'],
      ['1.5 %', 'pass-in-doubt'],
      ['2 %', 'pass-in-doubt'],
    ])
  })
})

describe('the cautions', () => {
  const five = '100; 100; 100; 100; 100 N·m'

  it.each<[string, string, Raw, boolean]>([
    ['few-readings', '100 N·m: 100 N·m', {}, true],
    ['few-readings', `100 N·m: ${five}`, {}, false],
    ['few-readings', `100 N·m: ${five} | 50 N·m: 50 N·m`, {}, true],
    ['reference-unknown', '100 N·m: 100 N·m', {}, true],
    ['reference-unknown', '100 N·m: 100 N·m', { 'gauge-uncertainty': '1 %' }, false],
    ['reference-too-coarse', '100 N·m: 100 N·m', { 'gauge-uncertainty': '1 %' }, false],
    ['reference-too-coarse', '100 N·m: 100 N·m', { 'gauge-uncertainty': '1.01 %' }, true],
    ['reference-too-coarse', '100 N·m: 100 N·m', { 'gauge-uncertainty': '1.2 %', tolerance: '6 %' }, false],
    ['below-a-fifth', '20 N·m: 20 N·m', { most: '100 N·m' }, false],
    ['below-a-fifth', '19 N·m: 19 N·m', { most: '100 N·m' }, true],
    ['below-a-fifth', '20 N·m: 20 N·m | 110 N·m: 110 N·m', {}, true],
    ['beyond-range', '110 N·m: 110 N·m', { most: '100 N·m' }, true],
    ['beyond-range', '100 N·m: 100 N·m', { most: '100 N·m' }, false],
    ['unit-on-wrench', '100 N·m: 100 lbf·ft', {}, true],
    ['unit-on-wrench', '100 N·m: 85 N·m', {}, false],
    ['out-of-limit', '100 N·m: 100 N·m', {}, false],
    ['not-accredited', '100 N·m: 100 N·m', {}, true],
    ['click-once', '100 N·m: 100 N·m', {}, true],
  ])('%s at %j with %j: %s', (code, points, more, shown) => {
    expect(cautionsOf(check(points, more)).includes(code)).toBe(shown)
  })
})

describe('against an independent count', () => {
  it('the verdict is that of the window of the references, reading by reading', () => {
    const reading = fc.integer({ min: 9000, max: 11_000 }).map((hundredths) => hundredths / 100)
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 30 }), fc.integer({ min: 1, max: 9 }), (all, limit) => {
        const [low, high] = [100 / (1 + limit / 100), 100 / (1 - limit / 100)]
        fc.pre(all.every((one) => Math.abs(one - low) > 1e-6 && Math.abs(one - high) > 1e-6))
        const text = `100 N·m: ${all.map(String).join('; ')} N·m`
        const within = all.every((one) => one > low && one < high)
        expect(verdictOf(text, { tolerance: `${limit} %` })).toBe(within ? 'pass' : 'fail')
      }),
      { seed: SEED, numRuns: 300 },
    )
  })
})
