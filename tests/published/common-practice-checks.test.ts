// Facts of the trade about checks: common practice, no source.
import { describe, expect, it } from 'vitest'
import { answered, cautionsOf } from '../support/desk.ts'

describe('a wrench left wound up for six months near full scale (common practice, no source)', () => {
  // Dialled to 75 lbf·ft three times; what the tester showed.
  const dialled = 75
  const delivered = [61.5, 61.9, 62.2]
  const answer = answered('wrench-check', { points: `${dialled} lbf·ft: ${delivered.join('; ')} lbf·ft` })

  it('delivers 17 to 18 % low: by ISO 6789 its deviation is +20.6 to +22.0 %', () => {
    const low = delivered.map((reading) => (1 - reading / dialled) * 100)
    expect(Math.min(...low)).toBeGreaterThan(17)
    expect(Math.max(...low)).toBeCloseTo(18, 9)
    const off = delivered.map((reading) => {
      const one = answered('wrench-check', { points: `${dialled} lbf·ft: ${reading} lbf·ft` })
      return one.steps.at(-1)?.value ?? Number.NaN
    })
    expect(Math.min(...off)).toBeCloseTo(20.6, 1)
    expect(Math.max(...off)).toBeCloseTo(22.0, 1)
    expect(answer.steps.at(-1)?.value).toBe(Math.max(...off))
  })

  it('fails, and the answer says which way and that it is not to be used', () => {
    expect(answer.results.verdict).toMatchObject({ code: 'fail' })
    expect(answer.headline).toContain('it delivers LOW')
    expect(cautionsOf(answer)[0]).toBe('out-of-limit')
  })

  it('is due for a check from the day it was found, whatever its interval', () => {
    const due = answered('next-check', { 'last-check': '2025-12-01', events: 'wound-up@2026-01-01..2026-07-01' })
    expect(due.results).toMatchObject({ due: { date: '2026-07-01' }, reason: { code: 'wound-up' } })
  })
})
