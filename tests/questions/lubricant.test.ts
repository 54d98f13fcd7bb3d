// lubricant: the guarded question. Never a torque above the asked one for a slipperier state, no number where the sources disagree.
import { describe, expect, it } from 'vitest'
import { type Condition, conditions, conditionTable } from '../../src/tables/conditions.ts'
import { answered, ask, cautionsOf, resultOf } from '../support/desk.ts'

const pairs = conditions.flatMap((from) => conditions.map((to) => [from, to] as const))
const typical = (from: Condition, to: Condition): number => conditionTable[to].typical / conditionTable[from].typical
const changed = (from: string, to: string, more: Record<string, string> = {}) =>
  answered('lubricant', { torque: '100 N·m', from, to, ...more })
/** A headline with a torque in it is one that somebody will dial. */
const carriesTorque = (headline: string): boolean => /\d\s*N·m/.test(headline)

describe('a slipperier state', () => {
  const slipperier = pairs.filter(([from, to]) => typical(from, to) < 1)

  it('is met by many pairs of the table', () => {
    expect(slipperier.length).toBeGreaterThan(40)
  })

  it.each(slipperier)('from %s to %s never gets a torque above the asked one, at any end', (from, to) => {
    const { value, low, high } = resultOf(changed(from, to), 'reduced-torque')
    expect(low).toBeGreaterThan(0)
    expect(low).toBeLessThanOrEqual(value)
    expect(value).toBeLessThanOrEqual(high ?? 0)
    expect(high).toBeLessThanOrEqual(100)
    expect(value).toBeCloseTo(100 * typical(from, to), 9)
  })

  it.each(slipperier)('from %s to %s has a number in its headline only where the span is within 2:1', (from, to) => {
    const answer = changed(from, to)
    const { low = 0, high = 0 } = resultOf(answer, 'reduced-torque')
    expect(carriesTorque(answer.headline)).toBe(high <= 2 * low * (1 + 1e-9))
    expect(answer.headline).toMatch(
      /^Use less only if the maker's figure is for .+\. If it is for .+ already, use it as printed\. /,
    )
  })

  it('within 2:1 leads with the low end, which cannot over-tighten, and shows the typical', () => {
    const answer = changed('dry', 'moly', { 'k-from': '0.2' })
    expect(answer.headline).toMatch(/Else no more than 50 N·m in place of 100 N·m: .*; typical is 65 N·m\.$/)
    expect(resultOf(answer, 'reduced-torque')).toMatchObject({
      low: expect.closeTo(50, 9),
      value: expect.closeTo(65, 9),
      high: expect.closeTo(90, 9),
    })
  })

  it('of exactly 2:1 still leads with the low end', () => {
    const answer = changed('dry', 'greased', { 'k-from': '0.2' })
    expect(answer.headline).toMatch(/Else no more than 50 N·m in place of 100 N·m/)
  })

  it('beyond 2:1 says that no number can be given, and keeps the results', () => {
    const wide = changed('dry', 'anti-seize')
    expect(wide.headline).toMatch(/No number can be given: sources differ by more than two to one for anti-seize/)
    expect(resultOf(wide, 'reduced-torque').value).toBeCloseTo(65, 9)
  })

  it('with both nut factors known gets the one torque, as theirs', () => {
    const answer = changed('dry', 'anti-seize', { 'k-from': '0.2', 'k-to': '0.13' })
    expect(answer.headline).toMatch(
      /Else 65 N·m in place of 100 N·m keeps the clamp force, by the nut factors given\.$/,
    )
    expect(resultOf(answer, 'reduced-torque')).toMatchObject({
      low: expect.closeTo(65, 9),
      high: expect.closeTo(65, 9),
    })
    expect(answer.given.filter(({ from }) => from === 'table')).toEqual([])
  })
})

describe('a state that is not slipperier', () => {
  const others = pairs.filter(([from, to]) => from !== to && typical(from, to) >= 1)

  it.each(others)('from %s to %s has no number in its headline', (from, to) => {
    const answer = changed(from, to)
    expect(carriesTorque(answer.headline)).toBe(false)
    expect(answer.headline).toMatch(/^No number can be given .*Ask the maker for a figure, or measure\.$/)
  })

  it('by the nut factors given has no number either', () => {
    expect(carriesTorque(changed('oiled', 'dry', { 'k-from': '0.13', 'k-to': '0.2' }).headline)).toBe(false)
  })
})

describe('the same state', () => {
  it.each(conditions)('%s changes nothing: use the figure as printed', (state) => {
    const answer = changed(state, state)
    expect(answer.headline).toMatch(/use it as printed\.$/)
    expect(resultOf(answer, 'reduced-torque')).toMatchObject({ value: 100, low: 100, high: 100 })
    expect(resultOf(answer, 'clamp-change')).toMatchObject({ value: 0, low: 0, high: 0 })
  })
})

describe('the clamp force at the same torque', () => {
  it.each(pairs.filter(([from, to]) => from !== to))('from %s to %s changes by K over K, with its ends', (from, to) => {
    const [one, other] = [conditionTable[from], conditionTable[to]]
    expect(resultOf(changed(from, to), 'clamp-change')).toMatchObject({
      value: expect.closeTo((one.typical / other.typical - 1) * 100, 9),
      low: expect.closeTo((one.low / other.high - 1) * 100, 9),
      high: expect.closeTo((one.high / other.low - 1) * 100, 9),
      unit: '%',
    })
  })
})

describe('what it warns of, reads and refuses', () => {
  it('asks first for which state the figure is', () => {
    expect(cautionsOf(changed('dry', 'oiled'))).toEqual([
      'which-condition',
      'estimate-only',
      'yield-fastener',
      'critical-joint',
      'maker-first',
    ])
  })

  it('warns of galling on both sides of stainless', () => {
    expect(cautionsOf(changed('stainless-dry', 'oiled'))).toContain('galling')
    expect(cautionsOf(changed('dry', 'stainless-dry'))).toContain('galling')
    expect(cautionsOf(changed('dry', 'oiled'))).not.toContain('galling')
  })

  it.each([
    ['Anti Seize', 'anti-seize'],
    ['antisieze', 'anti-seize'],
    ['copper', 'anti-seize'],
    ['lubed', 'oiled'],
    ['engine oil', 'oiled'],
    ['clean and dry', 'dry'],
    ['MoS2', 'moly'],
    ['Zinc-Plated', 'zinc'],
  ])('reads %j as %s', (typed, state) => {
    expect(changed('dry', typed).given.find(({ input }) => input === 'to')?.value).toBe(state)
  })

  it.each<[string, Record<string, string>, string, string]>([
    ['a state that is not known', { to: 'butter' }, 'to', 'not-allowed'],
    ['a text that is no state', { to: 'x'.repeat(65) }, 'to', 'too-long'],
    ['a torque with a turn behind it', { torque: '20 Nm + 90°' }, 'torque', 'angle-stage'],
    ['a span', { torque: '20–24 N·m' }, 'torque', 'not-allowed'],
    ['a nut factor above 1', { 'k-to': '1.5' }, 'k-to', 'out-of-range'],
    ['a nut factor of nothing', { 'k-to': '0' }, 'k-to', 'out-of-range'],
    ['a nut factor with a unit', { 'k-to': '0.13 N' }, 'k-to', 'trailing'],
  ])('refuses %s', (_, more, input, code) => {
    const { faults } = ask('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled', ...more })
    expect(faults.map((one) => [one.input, one.code])).toEqual([[input, code]])
  })

  it('shows no one torque to dial where its headline says that none can be given: not as a result, not in its working', () => {
    let without = 0
    for (const [from, to] of pairs) {
      const answer = changed(from, to)
      const reduced = answer.results['reduced-torque'] as {
        text: string
        value: number
        low: number
        high: number
        also: unknown[]
      }
      const last = answer.steps.at(-1)?.shown
      if (from === to || carriesTorque(answer.headline) || reduced.low === reduced.high) continue
      without += 1
      // The document keeps the typical value; what people read is the range.
      expect(reduced.text, `${from} ${to}`).toMatch(/^[\d.]+ to [\d.]+ N·m$/)
      expect(reduced.also).toEqual([])
      expect(last).toBe(reduced.text)
      expect(reduced.value >= reduced.low && reduced.value <= reduced.high).toBe(true)
    }
    expect(without).toBeGreaterThan(50)
  })
})
