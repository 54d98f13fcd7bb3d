// hand-position: what holding the wrench elsewhere does, with no adapter on.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf } from '../support/desk.ts'

const base = { setting: '100 N·m', lever: '400 mm' }

describe('the torque', () => {
  it.each([
    ['350 mm', 1.171_875],
    ['390 mm', 0.208_333],
    ['400 mm', 0],
    ['410 mm', -0.197_368],
    ['450 mm', -0.892_857],
  ])('with the hand at %s and the pivot at 30 mm changes by %d %%', (hand, change) => {
    const answer = answered('hand-position', { ...base, hand, pivot: '30 mm' })
    expect(numberOf(answer, 'change')).toBeCloseTo(change, 5)
    expect(numberOf(answer, 'torque')).toBeCloseTo(100 * (1 + change / 100), 5)
  })

  it.each(['electronic', 'dial'])(
    'of a wrench that senses at its drive (%s) does not change, and is said not to',
    (type) => {
      const answer = answered('hand-position', { ...base, hand: '200 mm', 'wrench-type': type })
      expect(numberOf(answer, 'change')).toBeCloseTo(0, 12)
      expect(answer.headline).toMatch(/senses at the drive/)
    },
  )

  it.each([
    ['350 mm', 'Set to 100 N·m and held closer in, the wrench gives 101.2 N·m: 1.172 % more.'],
    ['450 mm', 'Set to 100 N·m and held farther out, the wrench gives 99.1 N·m (-0.893 %).'],
    ['400 mm', 'The fastener gets 100 N·m: held where it was calibrated, the setting is the torque.'],
  ])('with the hand at %s is told in the headline', (hand, headline) => {
    expect(answered('hand-position', { ...base, hand, pivot: '30 mm' }).headline).toBe(headline)
  })

  it('has a band that is wider where only the kind of wrench is known', () => {
    const width = (more: Record<string, string>): number => {
      const { low = 0, high = 0 } = resultOf(answered('hand-position', { ...base, hand: '200 mm', ...more }), 'torque')
      return high - low
    }
    expect(width({ 'wrench-type': 'click' })).toBeGreaterThan(width({ pivot: '24 mm' }))
    expect(width({ pivot: '24 mm' })).toBeGreaterThan(width({ 'wrench-type': 'dial' }))
  })

  it('by the kind of wrench is told at the middle of what that kind has, and the band holds both ends', () => {
    const { value, low, high } = resultOf(
      answered('hand-position', { ...base, hand: '250 mm', 'wrench-type': 'click' }),
      'torque',
    )
    const at = (p: number): number => (100 * ((400 - p) / 400) * 250) / (250 - p)
    expect(value).toBeCloseTo(at(24), 9)
    expect(low).toBeLessThan(at(8))
    expect(high).toBeGreaterThan(at(40))
  })
})

describe('what is needed', () => {
  it('is the pivot or the kind of wrench, asked as one thing', () => {
    const answer = ask('hand-position', { ...base, hand: '300 mm' })
    expect(answer.status).toBe('incomplete')
    expect(answer.missing).toHaveLength(1)
    expect(answer.missing[0]?.ask).toMatch(/pivot.*or what kind/)
  })

  it.each<[Record<string, string>, string]>([
    [{ pivot: '20 mm' }, 'the pivot'],
    [{ 'wrench-type': 'click' }, 'the kind'],
    [{ pivot: '20 mm', 'wrench-type': 'click' }, 'both'],
  ])('%j is enough: %s', (more) => {
    expect(answered('hand-position', { ...base, hand: '300 mm', ...more }).status).toBe('answered')
  })

  it('of pivot and kind, the pivot wins', () => {
    const both = answered('hand-position', { ...base, hand: '300 mm', pivot: '0 mm', 'wrench-type': 'click' })
    expect(numberOf(both, 'change')).toBeCloseTo(0, 12)
  })
})

describe('what it refuses and warns of', () => {
  it.each<[string, Record<string, string>, string]>([
    ['a hand on the pivot', { hand: '30 mm', pivot: '30 mm' }, 'pivot'],
    ['a hand inside the pivot', { hand: '20 mm', pivot: '30 mm' }, 'pivot'],
    ['a pivot past the lever', { hand: '500 mm', pivot: '400 mm' }, 'pivot'],
    ['a hand inside a click wrench’s head', { hand: '40 mm', 'wrench-type': 'click' }, 'hand'],
    ['a hand inside a beam’s flex', { hand: '120 mm', 'wrench-type': 'beam' }, 'hand'],
  ])('%s is refused', (_, more, input) => {
    const answer = ask('hand-position', { ...base, ...more })
    expect(answer.faults.map((one) => [one.input, one.code])).toEqual([[input, 'out-of-range']])
  })

  it('a hand anywhere is no harm to a wrench that senses at its drive', () => {
    expect(codesOf(ask('hand-position', { ...base, hand: '20 mm', 'wrench-type': 'dial' }))).toEqual([])
  })

  it('a hand past the lever is a pipe, and is warned of', () => {
    expect(cautionsOf(answered('hand-position', { ...base, hand: '600 mm', pivot: '20 mm' }))).toEqual([
      'no-pipe',
      'critical-joint',
      'maker-first',
    ])
    expect(cautionsOf(answered('hand-position', { ...base, hand: '300 mm', pivot: '20 mm' }))).not.toContain('no-pipe')
  })
})
