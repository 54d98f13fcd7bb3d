// Facts of the trade about wrenches over time: common practice, no source. Torques in lbf·ft; dialled, then delivered.
import { describe, expect, it } from 'vitest'
import type { Check, Entry, GaugeCard, WrenchCard } from '../../src/register/records.ts'
import { checkReport } from '../../src/register/report.ts'
import { statusOf } from '../../src/register/status.ts'
import { judge } from '../../src/register/verdict.ts'
import { bookOf, card, event, folderOf, gauge, pulled, tested } from '../register/shop.ts'

const bodyOf = <T>(one: Entry): T => one.body as T
const wrench: WrenchCard = bodyOf(card())
const scale: GaugeCard = bodyOf(gauge())
const now = { today: '2026-08-01' }

describe('common practice, no source: a click wrench of 4 % over its first months', () => {
  it.each([1.5, 2])('new it delivers %d %% low: in', (low) => {
    const delivered = 75 * (1 - low / 100)
    const judged = judge(bodyOf<Check>(tested('c', '2026-01-01', [[75, [delivered]]])), wrench, undefined)
    expect(judged.verdict).toBe('pass')
    expect(judged.worst.deviation).toBeGreaterThan(0)
  })

  const woundUp = tested('after', '2026-07-15', [[75, [61.5, 61.9, 62.2]]])

  it('left wound up for six months, 75 delivers 61.5, 61.9 and 62.2: 17 to 18 % low, +20.6 to +22.0 %: out', () => {
    const judged = judge(bodyOf<Check>(woundUp), wrench, undefined)
    const offs = (judged.points[0]?.readings ?? []).map(({ deviation }) => deviation * 100)
    expect(Math.min(...offs)).toBeCloseTo(20.6, 1)
    expect(Math.max(...offs)).toBeCloseTo(22, 1)
    for (const reading of [61.5, 61.9, 62.2]) {
      expect(1 - reading / 75).toBeGreaterThan(0.17)
      expect(1 - reading / 75).toBeLessThanOrEqual(0.18 + 1e-9)
    }
    expect(judged.verdict).toBe('fail')
  })

  it('adjusted, a luggage scale reads 49.4 and 51 at 50: in, within the doubt of the scale', () => {
    const judged = judge(
      bodyOf<Check>(pulled('c', '2026-07-16', [[50, [49.4, 51]]], { state: 'as-left' })),
      wrench,
      scale,
    )
    expect(['pass', 'pass-in-doubt']).toContain(judged.verdict)
    expect(judged.withinDoubt).toBe(true)
    expect(judged.notes).toContain('gauge-too-coarse')
  })

  it('the register follows it all the way: in service, check before use, out of limit, in service', () => {
    const story = [
      card(),
      gauge(),
      tested('new', '2026-01-05', [[75, [73.7]]]),
      event('left', 'wound-up', '2026-07-10', { body: { from: '2026-01-06' } }),
      woundUp,
      event('fix', 'adjusted', '2026-07-16'),
      pulled('fixed', '2026-07-16', [[50, [49.4, 51]]], { state: 'as-left' }),
    ]
    const after = (entries: number, today: string) => {
      const book = bookOf(...story.slice(0, entries))
      return statusOf(book, folderOf(book), { today }).status
    }
    expect(after(3, '2026-01-06')).toBe('in-service')
    expect(after(4, '2026-07-10')).toBe('check-before-use')
    expect(after(5, '2026-07-15')).toBe('out-of-limit')
    expect(after(6, '2026-07-16')).toBe('out-of-limit')
    expect(after(7, '2026-07-16')).toBe('in-service')
    expect(checkReport(bookOf(...story), 'W-07', 'fixed', now)?.status.due?.on).toBe('2027-07-16')
  })
})
