// The report of a check in words: what was found and what was left beside each other, numbers by hand, what is told and what not.
import { describe, expect, it } from 'vitest'
import { reportOf } from '../../src/desk/check-report.ts'
import type { ReportDocument } from '../../src/questions/check-document.ts'
import { reportDocumentSchema } from '../../src/questions/check-document.ts'
import type { Entry } from '../../src/register/records.ts'
import { checkReport } from '../../src/register/report.ts'
import { languages } from '../../src/words/index.ts'
import { bookOf, card, gauge, m, pulled, tested } from '../register/shop.ts'

const of = (id: string, ...entries: readonly Entry[]): ReportDocument => {
  const found = checkReport(bookOf(card(), gauge(), ...entries), 'W-07', id, { today: '2026-06-01' })
  if (!found) throw new Error('no such check')
  const document = reportOf(found, languages.en)
  expect(reportDocumentSchema.parse(document)).toEqual(document)
  return document
}

describe('the report of a check', () => {
  it('tells with what, how and under which rule, and every number as by hand', () => {
    // At 12 in a pull in lbf is a torque in lbf·ft: 50 against 52 is (50 − 52)/52 = −3.846 %; the scale alone is ±2 %.
    const report = of('p', pulled('p', '2026-03-01', [[50, [52, 50]]]))
    expect(report).toMatchObject({
      date: '2026-03-01',
      state: { code: 'as-found', text: 'as found' },
      wrench: { tag: 'W-07', range: '30 lbf·ft … 150 lbf·ft', lever: '14 in', kind: 'click wrench' },
      gauge: { tag: 'S-1', tolerance: '±2 % of the reading', checked: '2026-01-01' },
      distance: '12 in',
      weight: { code: 'upright' },
      rule: { code: 'guarded' },
      verdict: { code: 'pass-in-doubt' },
      standing: "The shop's own check, not an accredited calibration.",
    })
    const [point] = report.points
    expect(point?.readings.map(({ read, torque, deviation }) => [read.text, torque.text, deviation.text])).toEqual([
      ['52 lbf', '52 lbf·ft', '-3.85 %'],
      ['50 lbf', '50 lbf·ft', '0 %'],
    ])
    expect(point).toMatchObject({
      mean: { text: '51 lbf·ft' },
      deviation: { text: '-1.961 %' },
      spread: { text: '2 lbf·ft' },
      allowed: { text: '4 %' },
      // 50/1.04 = 48.077 and 50/0.96 = 52.083, rounded inward.
      window: { low: { text: '48.1 lbf·ft' }, high: { text: '52 lbf·ft' } },
    })
  })

  it('puts what was found and what was left on the same day beside each other', () => {
    const found = tested('f', '2026-03-01', [[50, [60]]])
    const left = tested('l', '2026-03-01', [[50, [50]]], { state: 'as-left' })
    expect(of('f', found, left).companion).toMatchObject({
      id: 'l',
      state: { text: 'as left' },
      verdict: { code: 'pass' },
    })
    expect(of('l', found, left)).toMatchObject({ isLatest: true, companion: { id: 'f', verdict: { code: 'fail' } } })
    expect(of('f', found, left).isLatest).toBe(false)
  })

  it('says where the own weight was counted, and where nobody told', () => {
    const level = { lie: 'level', mass: m(1.5, 'kg'), 'balance-point': m(180, 'mm'), 'pull-direction': 'down' }
    const with_ = (own: object | undefined) =>
      of('p', pulled('p', '2026-03-01', [[50, [50]]], { body: { 'own-weight': own } })).weight
    expect(with_(level)?.text).toBe('counted: the handle level, 1.5 kg, balancing at 180 mm, pulled down')
    expect(with_(undefined)?.code).toBe('open')
    expect(of('t', tested('t', '2026-03-01', [[50, [50]]])).weight).toBeUndefined()
  })

  it('tells a setting as it was set, in its own unit', () => {
    const inNm = tested('n', '2026-03-01', [], {
      body: { points: [{ setting: m(60, 'N·m'), readings: [m(60, 'N·m')] }] },
    })
    expect(of('n', inNm).points[0]?.setting.text).toBe('60 N·m')
  })
})
