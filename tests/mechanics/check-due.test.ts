import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addMonths, isDue, nextCheck, voidingEvents } from '../../src/mechanics/check-due.ts'

const lastCheck = '2026-01-31'
const seed = 20261125

describe('the next check', () => {
  it('is due a year after the last, as the file says', () => {
    expect(nextCheck({ lastCheck })).toEqual({ on: '2027-01-31', reason: { why: 'months' } })
  })

  it('keeps to the end of a shorter month', () => {
    expect(addMonths(lastCheck, 1)).toBe('2026-02-28')
    expect(addMonths('2027-12-31', 2)).toBe('2028-02-29')
    expect(addMonths('2024-02-29', 12)).toBe('2025-02-28')
    expect(addMonths('2026-11-15', 14)).toBe('2028-01-15')
  })

  it('follows the shop interval where it has one', () => {
    expect(nextCheck({ lastCheck, interval: { months: 6 } }).on).toBe('2026-07-31')
  })

  it('is due on the day when the uses were reached', () => {
    expect(nextCheck({ lastCheck, uses: 5000, countedOn: '2026-04-01' })).toEqual({
      on: '2026-04-01',
      reason: { why: 'uses' },
    })
    expect(nextCheck({ lastCheck, uses: 4000, countedOn: '2026-01-31', interval: { uses: 4000 } }).reason.why).toBe(
      'uses',
    )
  })

  it('is foreseen from the pace of use where that comes before the year', () => {
    expect(nextCheck({ lastCheck: '2026-01-01', uses: 2500, countedOn: '2026-04-11' })).toEqual({
      on: '2026-07-20',
      reason: { why: 'uses-foreseen' },
    })
    expect(nextCheck({ lastCheck: '2026-01-01', uses: 10, countedOn: '2026-04-11' }).reason.why).toBe('months')
  })

  it('is not foreseen from uses without a pace', () => {
    expect(nextCheck({ lastCheck, uses: 0, countedOn: '2026-04-11' }).reason.why).toBe('months')
    expect(nextCheck({ lastCheck, uses: 100 }).reason.why).toBe('months')
  })

  for (const kind of voidingEvents) {
    it(`is due at once after the event ${kind}`, () => {
      expect(nextCheck({ lastCheck, events: [{ kind, at: '2026-03-01' }] })).toEqual({
        on: '2026-03-01',
        reason: { why: 'event', event: kind },
      })
    })
  }

  it('does not mind what came before the last check, nor events that void nothing', () => {
    const events = [
      { kind: 'dropped', at: '2026-01-30' },
      { kind: 'lent', at: '2026-03-01' },
    ]
    expect(nextCheck({ lastCheck, events }).reason.why).toBe('months')
  })

  it('counts an event on the day of the check as after it, unless both times are known', () => {
    expect(nextCheck({ lastCheck, events: [{ kind: 'dropped', at: '2026-01-31' }] }).reason.why).toBe('event')
    const timed = { lastCheck: '2026-01-31T14:00:00Z', events: [{ kind: 'dropped', at: '2026-01-31T09:00:00Z' }] }
    expect(nextCheck(timed).reason.why).toBe('months')
    expect(nextCheck({ ...timed, events: [{ kind: 'dropped', at: '2026-01-31T15:00:00Z' }] }).reason.why).toBe('event')
  })

  it('takes the earliest of several reasons', () => {
    const due = nextCheck({
      lastCheck,
      uses: 6000,
      countedOn: '2026-05-01',
      events: [
        { kind: 'overloaded', at: '2026-06-01' },
        { kind: 'dropped', at: '2026-03-01' },
      ],
    })
    expect(due).toEqual({ on: '2026-03-01', reason: { why: 'event', event: 'dropped' } })
  })

  it('is due from its day on', () => {
    const due = nextCheck({ lastCheck })
    expect(isDue(due, '2027-01-30')).toBe(false)
    expect(isDue(due, '2027-01-31')).toBe(true)
    expect(isDue(due, '2027-02-01T08:00:00Z')).toBe(true)
  })

  it('never falls later for more uses or one more event', () => {
    const day = fc.integer({ min: 1, max: 700 }).map((days) => new Date(Date.UTC(2026, 0, 31) + days * 86_400_000))
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 0, max: 4000 }), (at, uses, more) => {
        const iso = at.toISOString().slice(0, 10)
        const plain = nextCheck({ lastCheck, uses, countedOn: iso }).on
        return (
          nextCheck({ lastCheck, uses: uses + more, countedOn: iso }).on <= String([plain, iso].sort()[1]) &&
          nextCheck({ lastCheck, uses, countedOn: iso, events: [{ kind: 'dropped', at: iso }] }).on <= plain
        )
      }),
      { seed },
    )
  })
})
