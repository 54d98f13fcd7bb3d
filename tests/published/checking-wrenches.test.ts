// The rules of ISO 6789:2017 for checking hand torque tools, as the register applies them. All from memory, none read again
// at the time of writing; where the two parts differ the part is named.
import { describe, expect, it } from 'vitest'
import { addMonths } from '../../src/mechanics/check-due.ts'
import type { IsoClass, IsoType } from '../../src/mechanics/check-verdict.ts'
import { checkShares } from '../../src/mechanics/deviation.ts'
import { limitOfCard } from '../../src/register/limit.ts'
import type { Check, Entry, GaugeCard, WrenchCard } from '../../src/register/records.ts'
import { statusOf } from '../../src/register/status.ts'
import { judge } from '../../src/register/verdict.ts'
import { bookOf, card, event, folderOf, gauge, m, nm, tested, uses } from '../register/shop.ts'

const bodyOf = <T>(one: Entry): T => one.body as T
const tool = (type: IsoType, isoClass: IsoClass, most: number): WrenchCard =>
  bodyOf(card('W-1', { least: nm(most / 5), most: nm(most), 'iso-type': type, 'iso-class': isoClass }))

describe('ISO 6789-1:2017, largest deviation by kind and class (from memory)', () => {
  it.each<[IsoType, IsoClass, number, number]>([
    ['indicating', 'A', 6, 6],
    ['indicating', 'B', 6, 4],
    ['indicating', 'C', 6, 4],
    ['indicating', 'D', 6, 6],
    ['indicating', 'E', 6, 4],
    ['setting', 'A', 6, 4],
    ['setting', 'B', 6, 4],
    ['setting', 'C', 6, 4],
    ['setting', 'D', 6, 6],
    ['setting', 'E', 6, 6],
    ['setting', 'F', 6, 6],
    ['setting', 'G', 6, 6],
  ])('%s class %s: %d %% up to 10 N·m, %d %% above', (type, isoClass, small, large) => {
    expect(limitOfCard(tool(type, isoClass, 10)).share).toBeCloseTo(small / 100, 12)
    expect(limitOfCard(tool(type, isoClass, 200)).share).toBeCloseTo(large / 100, 12)
  })
})

describe('ISO 6789-1:2017, how a tool is checked (from memory)', () => {
  const wrench = tool('setting', 'A', 200)
  const held: GaugeCard = bodyOf(
    gauge('T-1', { 'gauge-type': 'torque-tester', tolerance: { share: m(1, '%'), of: 'reading' } }),
  )
  const readings = (torque: number, times: number) => Array.from({ length: times }, () => nm(torque))
  const check = (times: number, shares: readonly number[] = checkShares, more: object = {}): Check =>
    bodyOf(
      tested('c', '2026-03-01', [[1, [1]]], {
        body: {
          points: shares.map((share) => ({ setting: nm(share * 200), readings: readings(share * 200, times) })),
          ...more,
        },
      }),
    )
  const notes = (one: Check, against: GaugeCard = held) => judge(one, wrench, against).notes

  it('at 20, 60 and 100 % of its largest torque, five readings each', () => {
    expect(notes(check(5))).toEqual([])
    expect(notes(check(4))).toEqual(['few-readings'])
    expect(notes(check(5, [0.6, 1]))).toEqual(['few-points'])
    expect(notes(check(5, [0.1, 0.6, 1]))).toEqual(['below-a-fifth'])
  })

  it.each([
    [17.9, ['temperature-outside']],
    [18, []],
    [28, []],
    [28.1, ['temperature-outside']],
  ])('between 18 and 28 °C: %d', (celsius, told) => {
    expect(notes(check(5, checkShares, { conditions: { 'temperature-c': celsius } }))).toEqual(told)
  })

  it('part 2: against a reference no worse than a quarter of the limit', () => {
    const stated = (percent: number) => notes(check(5, checkShares, { 'gauge-uncertainty': m(percent, '%') }))
    expect(stated(1)).toEqual([])
    expect(stated(1.01)).toEqual(['gauge-too-coarse'])
    expect(stated(2)).toEqual(['gauge-too-coarse'])
  })

  it('every single reading within the limit, not the mean of them', () => {
    const points = [{ setting: nm(120), readings: [nm(120), nm(120), nm(120), nm(120), nm(127)] }]
    expect(judge(check(5, [0.6], { points }), wrench, held).verdict).toBe('fail')
  })
})

describe('ISO 6789-1:2017, when it is checked again (from memory)', () => {
  const good = [[60, [60]]] as const
  const on = (today: string, ...more: readonly Entry[]): string => {
    const book = bookOf(card(), tested('c', '2026-01-31', good), ...more)
    return statusOf(book, folderOf(book), { today, warnDays: 0 }).status
  }

  it('after twelve months', () => {
    expect(on(addMonths('2026-01-31', 12))).toBe('check-due')
    expect(on('2027-01-30')).toBe('in-service')
  })

  it('after five thousand uses, whichever comes first', () => {
    expect(on('2026-06-01', uses('u', '2026-06-01', 5000))).toBe('check-due')
    expect(on('2026-06-01', uses('u', '2026-06-01', 4900))).toBe('in-service')
  })

  it.each(['overloaded', 'repaired', 'dropped'])('at once after it was %s', (what) => {
    expect(on('2026-03-01', event('e', what, '2026-03-01'))).toBe('check-before-use')
  })
})
