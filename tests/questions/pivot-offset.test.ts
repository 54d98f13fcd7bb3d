// pivot-offset: how far behind the drive a wrench trips, from two pulls; and how little two pulls tell near the lever's mark.
import { describe, expect, it } from 'vitest'
import { pivotFrom } from '../../src/mechanics/lever.ts'
import { answered, ask, codesOf, resultOf } from '../support/desk.ts'
import { SEED, seeded } from '../support/random.ts'

const pulls = (atHand: string, hand = '190 mm') => ({
  lever: '380 mm',
  hand,
  'torque-at-lever': '100 N·m',
  'torque-at-hand': atHand,
})

describe('the pivot', () => {
  it('is p = L H (1 − r)/(H − r L)', () => {
    const { value, unit, text } = resultOf(answered('pivot-offset', pulls('104 N·m')), 'pivot')
    expect(value).toBeCloseTo((380 * 190 * 0.04) / (1.04 * 380 - 190), 9)
    expect([unit, text]).toEqual(['mm', '14.07 mm'])
  })

  it('is had back from the torques that it makes', () => {
    const atHand = (100 * (380 - 25) * 190) / (380 * (190 - 25))
    expect(resultOf(answered('pivot-offset', pulls(`${atHand} N·m`)), 'pivot').value).toBeCloseTo(25, 9)
  })

  it('does not mind which unit each torque is in', () => {
    const mixed = { ...pulls('104 N·m'), 'torque-at-lever': `${100 / 1.3558179483314} lbf·ft` }
    expect(resultOf(answered('pivot-offset', mixed), 'pivot').value).toBeCloseTo(14.074, 3)
  })

  it(`carries the band that draws of all four inputs give (seed ${SEED})`, () => {
    const { value, low, high } = resultOf(answered('pivot-offset', pulls('104 N·m')), 'pivot')
    const random = seeded(SEED)
    const off = (halfWidth: number): number => (2 * random() - 1) * halfWidth
    const draws = Float64Array.from({ length: 200_000 }, () =>
      pivotFrom(380 + off(3), 190 + off(3), (104 * (1 + off(0.01))) / (100 * (1 + off(0.01)))),
    ).sort()
    const half = ((draws[195_000] ?? 0) - (draws[5_000] ?? 0)) / 2
    expect(((high ?? 0) - value) / half).toBeGreaterThan(0.95)
    expect(((high ?? 0) - value) / half).toBeLessThan(1.1)
    expect((low ?? 0) + (high ?? 0)).toBeCloseTo(2 * value, 9)
  })

  it('is less certain the nearer the hand is to the lever', () => {
    const width = (hand: number): number => {
      const atHand = (100 * (380 - 20) * hand) / (380 * (hand - 20))
      const { low = 0, high = 0 } = resultOf(answered('pivot-offset', pulls(`${atHand} N·m`, `${hand} mm`)), 'pivot')
      return high - low
    }
    expect(width(250)).toBeGreaterThan(width(190))
    expect(width(340)).toBeGreaterThan(3 * width(250))
  })
})

describe('the headline', () => {
  it.each([
    ['104 N·m', /^The wrench trips 14\.07 mm behind its drive/],
    ['100 N·m', /^The pivot cannot be told from 0: .*Repeat both pulls and take means/],
    ['101 N·m', /^The pivot cannot be told from 0: /],
    ['90 N·m', /^These two pulls do not fit one wrench: -\d.* is not possible .*Repeat both pulls\.$/],
  ])('at %s says what can be said', (atHand, words) => {
    expect(answered('pivot-offset', pulls(atHand)).headline).toMatch(words)
  })
})

describe('what it refuses', () => {
  it.each<[string, Record<string, string>, string, RegExp]>([
    ['the hand at the lever', pulls('104 N·m', '380 mm'), 'hand', /190 mm/],
    ['the hand within 2 % of the lever', pulls('104 N·m', '385 mm'), 'hand', /190 mm/],
    ['torques in the ratio of the levers', pulls('50 N·m'), 'torque-at-hand', /do not fit one wrench/],
  ])('is %s', (_, inputs, input, hint) => {
    const answer = ask('pivot-offset', inputs)
    expect(answer.faults.map((one) => [one.input, one.code])).toEqual([[input, 'conflict']])
    expect(answer.faults[0]?.hint).toMatch(hint)
  })

  it('is no torque of zero', () => {
    expect(codesOf(ask('pivot-offset', pulls('0 N·m')))).toEqual(['out-of-range'])
  })
})
