// The data of a check report: the check, how it was judged, what it was held to, and whether it is still the last word.
import { describe, expect, it } from 'vitest'
import { checkReport } from '../../src/register/report.ts'
import { bookOf, card, event, gauge, lbft, m, pulled, tested } from './shop.ts'

const now = { today: '2026-06-01' }
const LBFT = 1.3558179483314

describe('a report', () => {
  const book = bookOf(
    card(),
    gauge(),
    pulled('found', '2026-03-01', [[75, [61.5, 61.9, 62.2]]]),
    event('e', 'adjusted', '2026-03-01'),
    pulled('left', '2026-03-01', [[50, [49.4, 51]]], { state: 'as-left' }),
    tested('later', '2026-05-01', [[100, [100]]]),
  )

  it('of what was found holds what was left beside it, and the other way round', () => {
    const found = checkReport(book, 'w-07', 'found', now)
    expect(found?.judged.verdict).toBe('fail')
    expect(found?.companion?.check.entry.id).toBe('left')
    expect(found?.companion?.judged.verdict).not.toBe('fail')
    expect(checkReport(book, 'W-07', 'left', now)?.companion?.check.entry.id).toBe('found')
    expect(checkReport(book, 'W-07', 'later', now)?.companion).toBeUndefined()
  })

  it('tells the gauge, the windows of its points, and today’s status', () => {
    const report = checkReport(book, 'W-07', 'left', now)
    expect(report?.gauge?.tag).toBe('S-1')
    const [window] = report?.windows ?? []
    expect((window?.low ?? 0) / LBFT).toBeCloseTo(50 / 1.04, 9)
    expect((window?.high ?? 0) / LBFT).toBeCloseTo(50 / 0.96, 9)
    expect(report?.status.status).toBe('in-service')
    expect(checkReport(book, 'W-07', 'later', now)).not.toHaveProperty('gauge')
  })

  it('says whether it is still the last check', () => {
    expect(checkReport(book, 'W-07', 'later', now)?.isLatest).toBe(true)
    expect(checkReport(book, 'W-07', 'left', now)?.isLatest).toBe(false)
  })

  it('of a full-scale tool allows the same torque either way, and nothing below 0', () => {
    const tool = card('W-07', { most: lbft(250), tolerance: { share: m(4, '%'), of: 'full-scale' } })
    const check = tested('c', '2026-03-01', [
      [60, [60]],
      [5, [5]],
    ])
    const [high, low] = checkReport(bookOf(tool, check), 'W-07', 'c', now)?.windows ?? []
    expect([(high?.low ?? 0) / LBFT, (high?.high ?? 0) / LBFT].map(Math.round)).toEqual([50, 70])
    expect(low?.low).toBe(0)
  })

  it('is none of a check or a wrench that is not there', () => {
    expect(checkReport(book, 'W-07', 'nobody', now)).toBeUndefined()
    expect(checkReport(book, 'W-99', 'found', now)).toBeUndefined()
  })

  it('shows a correction with what it replaced', () => {
    const corrected = bookOf(
      card(),
      tested('c1', '2026-03-01', [[100, [110]]]),
      tested('c2', '2026-03-01', [[100, [101]]], { supersedes: 'c1', why: 'misread' }),
    )
    expect(checkReport(corrected, 'W-07', 'c1', now)).toBeUndefined()
    const report = checkReport(corrected, 'W-07', 'c2', now)
    expect(report?.check.earlier.map(({ id }) => id)).toEqual(['c1'])
    expect(report?.check.entry.why).toBe('misread')
  })
})
