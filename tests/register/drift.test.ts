// How a wrench drifts: the line over its checks, what it is drawn since, and when a day is told or why it is not.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Drift, type DriftGap, driftGaps, driftOf } from '../../src/register/drift.ts'
import type { Entry } from '../../src/register/records.ts'
import { SEED } from '../support/random.ts'
import { bookOf, card, event, folderOf, m, tested } from './shop.ts'

let made = 0
/** A check at 100 lbf·ft whose mean is off by so many percent. */
const off = (date: string, percent: number, more: object = {}): Entry =>
  tested(`c${++made}`, date, [[100, [100 / (1 + percent / 100)]]], more)
const drift = (...entries: readonly Entry[]): Drift => {
  const book = bookOf(card(), ...entries)
  return driftOf(book, folderOf(book))[0] as Drift
}

const halfYears = ['2024-01-01', '2024-07-01', '2025-01-01', '2025-07-01'] as const
const rising = halfYears.map((date, place) => off(date, [1, 1.5, 2.1, 2.5][place] as number))

describe('a drift', () => {
  it('of half a percent at each half-yearly check is told, with the days between which it reaches 4 %', () => {
    const { slope, outlook, dots, gaugeChanged } = drift(...rising)
    expect(dots.map(({ deviation }) => Number(deviation.toFixed(9)))).toEqual([1, 1.5, 2.1, 2.5])
    expect(slope?.perYear).toBeCloseTo(1.02, 2)
    expect(slope?.isTold).toBe(true)
    expect(gaugeChanged).toBe(false)
    if (!outlook.told) throw new Error(outlook.why)
    expect(outlook.limit).toBeCloseTo(4, 12)
    expect(outlook.middle.slice(0, 7)).toBe('2026-12')
    expect(outlook.first > '2025-07-01' && outlook.first < outlook.middle).toBe(true)
    expect(outlook.last === undefined || outlook.last > outlook.middle).toBe(true)
  })

  it('toward delivering high reaches the limit on that side', () => {
    const falling = halfYears.map((date, place) => off(date, -([1, 1.5, 2.1, 2.5][place] as number)))
    const { slope, outlook } = drift(...falling)
    expect(slope?.perYear).toBeLessThan(0)
    expect(outlook.told && outlook.middle.slice(0, 4)).toBe('2026')
  })

  it('is told for each setting that was checked, lowest first; units do not matter', () => {
    const book = bookOf(
      card(),
      tested('a', '2025-01-01', [
        [100, [100]],
        [60, [60]],
      ]),
      tested('b', '2025-02-01', [[60.3, [60]]]),
    )
    const all = driftOf(book, folderOf(book))
    expect(all.map(({ dots }) => dots.length)).toEqual([2, 1])
    expect(all[0]?.setting).toBeLessThan(all[1]?.setting as number)
  })

  it('says where the gauge changed', () => {
    const other = off('2025-12-01', 3, { body: { gauge: 'S-1' } })
    expect(drift(...rising, other).gaugeChanged).toBe(true)
  })
})

describe('the line is drawn since the last work on the wrench', () => {
  const counts = (...entries: readonly Entry[]) => drift(...entries).dots.map(({ counts: counted }) => counted)

  it.each(['adjusted', 'repaired'])('%s: checks before it do not count', (what) => {
    const later = ['2025-09-01', '2025-10-01', '2025-11-01'].map((date) => off(date, 0.1))
    const found = drift(...rising, event('e', what, '2025-08-01'), ...later)
    expect(found.dots.filter((dot) => dot.counts)).toHaveLength(3)
    expect(found.since).toBe('2025-08-01')
    expect(found.outlook).toEqual({ told: false, why: 'too-few' })
    expect(found.slope).toBeUndefined()
  })

  it('a drop is no work: the line goes on', () => {
    expect(counts(...rising, event('e', 'dropped', '2025-03-01'))).toEqual([true, true, true, true])
  })

  it('on the day of the work only what was left counts', () => {
    const day = '2025-08-01'
    expect(
      counts(off(day, 5), off(day, 0.2, { state: 'as-left' }), event('e', 'adjusted', day), off('2025-09-01', 0.3)),
    ).toEqual([false, true, true])
  })
})

describe('no day is told', () => {
  const rows: Readonly<Record<DriftGap, readonly Entry[]>> = {
    'too-few': rising.slice(0, 3),
    'one-day': [1, 1.5, 2, 2.5].map((percent) => off('2025-01-01', percent)),
    'slope-not-told': halfYears.map((date, place) => off(date, [1, 2, 1.1, 1.9][place] as number)),
    'out-already': halfYears.map((date, place) => off(date, [1, 2.1, 3, 4.2][place] as number)),
    'too-far': halfYears.map((date, place) => off(date, [0.1, 0.2, 0.31, 0.4][place] as number)),
  }
  it.each(driftGaps)('%s', (why) => {
    expect(drift(...rows[why]).outlook).toEqual({ told: false, why })
  })

  it('a slope that is too flat to bear a day is told all the same', () => {
    expect(drift(...rows['too-far']).slope?.isTold).toBe(true)
    expect(drift(...rows['slope-not-told']).slope?.isTold).toBe(false)
  })

  it('and the last day is left open where it lies too far ahead', () => {
    const loose = halfYears.map((date, place) => off(date, [0.9, 1.2, 2.3, 2.6][place] as number))
    const { outlook } = drift(...loose)
    expect(outlook.told).toBe(true)
    expect(outlook.told && outlook.last).toBeUndefined()
  })
})

describe('whatever was read', () => {
  it('a day that is told lies after the last check, in order, and no farther than twice as far as the checks reach back', () => {
    const series = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(series, (all) => {
        const checks = all.map((percent, place) => off(`20${10 + place}-06-01`, percent))
        const { outlook, dots } = drift(...checks)
        if (!outlook.told) return driftGaps.includes(outlook.why)
        const { first, middle, last = '9999' } = outlook
        const end = dots.at(-1)?.date ?? ''
        const farthest = `${2010 + (all.length - 1) * 3}-06-03`
        return (
          dots.length >= 4 && first >= end && middle > end && middle <= farthest && first <= middle && middle <= last
        )
      }),
      { seed: SEED, numRuns: 500 },
    )
  })

  it('the limit is the card’s own at that setting', () => {
    const book = bookOf(card('W-07', { tolerance: { share: m(3, '%'), of: 'full-scale' } }), ...rising)
    const [found] = driftOf(book, folderOf(book))
    expect(found?.outlook.told).toBe(true)
    expect(found?.outlook.told && found.outlook.limit).toBeCloseTo(4.5, 9)
  })
})
