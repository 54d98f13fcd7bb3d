// A check as it grows: the verdict so far is that of the readings so far, what is asked next is what is missing, and a slip by
// ten or by unit is told from a wrench that is off.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromSi, quantity, tidy } from '../../src/core/quantity.ts'
import { units, unitsOf } from '../../src/core/unit.ts'
import { judgeCheck } from '../../src/mechanics/check-verdict.ts'
import { growCheck, type ReadPoint, withReading } from '../../src/register/check-growing.ts'
import { type CheckHead, planCheck } from '../../src/register/check-plan.ts'
import { slipOf } from '../../src/register/reading-slip.ts'
import type { Check, GaugeCard, WrenchCard } from '../../src/register/records.ts'
import { judge } from '../../src/register/verdict.ts'
import { SEED } from '../support/random.ts'
import { card, gauge, m, nm } from './shop.ts'

const wrench = card('W-07', { least: nm(40), most: nm(200), mark: nm(1), lever: m(400, 'mm'), unit: 'N·m' })
  .body as WrenchCard
const scale = gauge('S-1', { most: m(600, 'N'), tolerance: { share: m(0.5, '%'), of: 'reading' } }).body as GaugeCard
const tester: CheckHead = { wrench: 'W-07', date: '2026-03-01', way: 'tester', state: 'as-found' }
const pull: CheckHead = {
  ...tester,
  way: 'pull',
  gauge: 'S-1',
  distance: m(400, 'mm'),
  'own-weight': { lie: 'upright' },
}
const grow = (head: CheckHead, against: GaugeCard | undefined, read: readonly ReadPoint[]) =>
  growCheck({ head, card: wrench, gauge: against, plan: planCheck(head, wrench, against) }, read)

describe('what is asked', () => {
  it('is reading after reading, point after point, until the plan is full', () => {
    let read: readonly ReadPoint[] = []
    const asked: string[] = []
    for (let tries = 0; tries < 40; tries++) {
      const { next } = grow(tester, undefined, read)
      if (!next) break
      asked.push(`${next.setting.text} ${next.nth}/${next.of}`)
      read = withReading(read, next, next.setting)
    }
    const five = (setting: string): string[] => [1, 2, 3, 4, 5].map((nth) => `${setting} ${nth}/5`)
    expect(asked).toEqual([...five('40 N·m'), ...five('120 N·m'), ...five('200 N·m')])
    expect(grow(tester, undefined, read)).toMatchObject({ taken: 15, missing: 0, verdict: 'pass' })
  })

  it('counts what is in and what is missing, and has no verdict before the first reading', () => {
    const none = grow(tester, undefined, [])
    expect(none).toMatchObject({ taken: 0, missing: 15 })
    expect(none.verdict).toBeUndefined()
    const some = grow(tester, undefined, [{ setting: nm(120), readings: [nm(121), nm(119)] }])
    expect(some.points.map(({ missing }) => missing)).toEqual([5, 3, 5])
    expect(some.next).toMatchObject({ setting: { value: 40 }, nth: 1 })
  })

  it('takes a setting a little aside for the planned one, and judges one that is not planned besides', () => {
    const { points } = grow(tester, undefined, [
      { setting: nm(122), readings: [nm(122)] },
      { setting: nm(80), readings: [nm(80)] },
    ])
    expect(points.map(({ setting, planned }) => [setting.value, planned])).toEqual([
      [40, true],
      [122, true],
      [200, true],
      [80, false],
    ])
    expect(points[3]).toMatchObject({ missing: 0, judged: { verdict: 'pass' } })
  })
})

describe('the verdict so far', () => {
  const shares = fc.array(fc.double({ min: 0.9, max: 1.1, noNaN: true }), { minLength: 15, maxLength: 15 })
  const settings = [40, 120, 200]
  const pointsOf = (all: readonly number[]): ReadPoint[] =>
    settings.map((setting, place) => ({
      setting: nm(setting),
      readings: all.slice(place * 5, place * 5 + 5).map((share) => nm(setting * share)),
    }))

  it('is once all is read that of the mechanics, reading by reading the worst so far', () => {
    fc.assert(
      fc.property(shares, (all) => {
        const points = pointsOf(all)
        const whole = grow(tester, undefined, points)
        const references = points.map(({ setting, readings }) => ({
          setting: setting.value,
          references: readings.map(({ value }) => value),
        }))
        expect(whole.next).toBeUndefined()
        expect(whole.verdict).toBe(judgeCheck(references, { limit: 0.04, rule: 'simple' }).verdict)
        expect(whole.judged).toEqual(judge({ ...tester, points } as Check, wrench, undefined))
      }),
      { seed: SEED },
    )
  })

  it('never gets better by a reading more', () => {
    const order = ['pass', 'pass-in-doubt', 'fail-in-doubt', 'fail']
    fc.assert(
      fc.property(shares, (all) => {
        let read: readonly ReadPoint[] = []
        let worst = 0
        for (const share of all) {
          const { next } = grow(pull, scale, read)
          if (!next) throw new Error('asked too little')
          read = withReading(read, next, m(next.shows.middle * share, 'N'))
          const now = order.indexOf(grow(pull, scale, read).verdict as string)
          expect(now).toBeGreaterThanOrEqual(worst)
          worst = now
        }
        expect(grow(pull, scale, read).missing).toBe(0)
      }),
      { seed: SEED, numRuns: 30 },
    )
  })

  it('is guarded by the doubt of the gauge', () => {
    // 104.1667 N is the limit at 40 N·m; with ±0.5 % of the scale and 3 mm in 400 the doubt is about 1 %.
    const verdict = (force: number) => grow(pull, scale, [{ setting: nm(40), readings: [m(force, 'N')] }]).verdict
    expect([100, 104, 104.5, 106].map(verdict)).toEqual(['pass', 'pass-in-doubt', 'fail-in-doubt', 'fail'])
  })
})

describe('a slip', () => {
  const off = fc.double({ min: 0.92, max: 1.08, noNaN: true })
  const middle = fc.double({ min: 2, max: 1000, noNaN: true })
  const unitsRead = fc.constantFrom(...unitsOf('force'), ...unitsOf('torque'))

  it('by ten is caught, and names what was meant', () => {
    fc.assert(
      fc.property(middle, off, unitsRead, fc.constantFrom(10, 0.1), (at, share, unit, times) => {
        const meant = fromSi(at * share, unit)
        const slip = slipOf(quantity(meant.value * times, unit), at)
        expect(slip?.likely.some((q) => q.unit === unit && Math.abs(q.value / meant.value - 1) < 1e-9)).toBe(true)
      }),
      { seed: SEED },
    )
  })

  it('by another unit of the gauge is caught, and names that unit; but for lbf·in and kgf·cm, too near each other', () => {
    fc.assert(
      fc.property(middle, off, unitsRead, fc.nat(), (at, share, unit, pick) => {
        const apart = (one: typeof unit): number => Math.abs(Math.log(one.factor / unit.factor))
        const others = unitsOf(unit.dimension).filter((one) => apart(one) > Math.log(1.3))
        expect(others.length).toBeGreaterThanOrEqual(unitsOf(unit.dimension).length - 2)
        const typed = others[pick % others.length] as (typeof others)[number]
        const meant = fromSi(at * share, unit)
        const slip = slipOf(quantity(meant.value, typed), at)
        expect(slip?.likely.some((q) => q.unit === unit && q.value === meant.value)).toBe(true)
      }),
      { seed: SEED },
    )
  })

  it('is no reading of a wrench that is off by less than 14 %', () => {
    fc.assert(
      fc.property(middle, fc.double({ min: 0.87, max: 1.14, noNaN: true }), unitsRead, (at, share, unit) => {
        expect(slipOf(tidy(fromSi(at * share, unit)), at)).toBeUndefined()
      }),
      { seed: SEED },
    )
  })

  it('by hand: 73.8 at 100 N·m was read in lbf·ft, 1005 N for 100.5, and 60 or 86 are of a wrench that is off', () => {
    expect(slipOf(quantity(73.8, units['N·m']), 100)).toMatchObject({ kind: 'other-unit', likely: [{ value: 73.8 }] })
    expect(slipOf(quantity(1005, units.N), 100)).toMatchObject({ kind: 'by-ten' })
    expect(slipOf(quantity(60, units['N·m']), 100)).toBeUndefined()
    expect(slipOf(quantity(86, units['N·m']), 100)).toBeUndefined()
  })

  it('is found in a check, at its own point', () => {
    const { slips } = grow(pull, scale, [{ setting: nm(120), readings: [m(300, 'N'), m(30.6, 'N')] }])
    expect(slips).toHaveLength(1)
    expect(slips[0]).toMatchObject({ setting: { value: 120 }, reading: { text: '30.6 N' }, kind: 'other-unit' })
    expect(slips[0]?.likely.map(({ unit }) => unit.symbol)).toContain('kgf')
  })
})
