// next-check: the earliest of months, uses and what happened; days that are told without a clock.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf } from '../support/desk.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>
const next = (raw: Raw = {}) => answered('next-check', { 'last-check': '2026-01-31', ...raw })
const dueOf = (raw: Raw): [string, string] => {
  const { due, reason } = next(raw).results as unknown as { due: { date: string }; reason: { code: string } }
  return [due.date, reason.code]
}

describe('the day', () => {
  it.each<[string, Raw, string, string]>([
    ['a year on, where nothing else is told', {}, '2027-01-31', 'months'],
    ['the last of a shorter month', { interval: '1 month' }, '2026-02-28', 'months'],
    ['a shop’s own months', { interval: '6 months' }, '2026-07-31', 'months'],
    ['with uses to spare', { uses: '4999' }, '2027-01-31', 'months'],
    ['uses that are up', { uses: '5000' }, '2026-01-31', 'uses'],
    ['a shop’s own uses that are up', { uses: '1000', interval: '1000 uses' }, '2026-01-31', 'uses'],
    ['both given', { uses: '900', interval: ['24 months', '1000 uses'] }, '2028-01-31', 'months'],
    ['a drop', { events: 'dropped@2026-03-01' }, '2026-03-01', 'dropped'],
    ['a drop on the day of the check counts after it', { events: 'fell@2026-01-31' }, '2026-01-31', 'dropped'],
    ['a drop before the check', { events: 'dropped@2026-01-30' }, '2027-01-31', 'months'],
    ['the first of several', { events: 'repaired@2026-05-01; overload@2026-04-01' }, '2026-04-01', 'overloaded'],
    ['a drop after the months ran out', { events: 'dropped@2027-03-01' }, '2027-01-31', 'months'],
    ['half a year wound up, from its end', { events: 'wound-up@2026-02-01..2026-08-01' }, '2026-08-01', 'wound-up'],
    ['weeks wound up', { events: 'wound-up@2026-02-01..2026-02-28' }, '2027-01-31', 'months'],
    ['a month wound up', { events: 'wound-up@2026-02-01..2026-03-01' }, '2026-03-01', 'wound-up'],
    ['wound up for nobody knows how long', { events: 'wound-up@2026-03-01' }, '2026-03-01', 'wound-up'],
    [
      'months wound up, most of them before the check',
      { events: 'wound-up@2025-06-01..2026-02-10' },
      '2027-01-31',
      'months',
    ],
    [
      'months wound up, a month of them after it',
      { events: 'wound-up@2025-06-01..2026-03-10' },
      '2026-03-10',
      'wound-up',
    ],
  ])('%s', (_, raw, date, reason) => {
    expect(dueOf(raw)).toEqual([date, reason])
  })
})

describe('how it is told', () => {
  it('as a date and a text, and the reason as a code and a text', () => {
    expect(next().results).toEqual({
      due: { date: '2027-01-31', text: 'January 31, 2027' },
      reason: { code: 'months', text: 'the months since the last check run out' },
    })
    expect(next().headline).toContain('Due on January 31, 2027')
  })

  it('uses that are up are due now: on which day they ran out nobody knows', () => {
    const answer = next({ uses: '5200' })
    expect(answer.results.due).toEqual({ date: '2026-01-31', text: 'now' })
    expect(answer.headline).toBe('Due now: 5200 uses since the last check, and 5000 are allowed.')
    expect(answer.steps.at(-1)?.value).toBe(-200)
  })

  it('what was taken without being told is shown as assumed, each part for itself', () => {
    const assumed = (raw: Raw) => next(raw).given.flatMap(({ text, from }) => (from === 'assumed' ? [text] : []))
    expect(assumed({})).toEqual(['12 months', '5000 uses'])
    expect(assumed({ interval: '1 year' })).toEqual(['5000 uses'])
    expect(assumed({ interval: '1 year; 900 uses' })).toEqual([])
  })

  it.each<[string, Raw, boolean]>([
    ['check-due', { events: 'dropped@2026-03-01' }, true],
    ['check-due', {}, false],
    ['event-before-check', { events: 'dropped@2026-01-30' }, true],
    ['event-before-check', { events: 'dropped@2026-02-30'.replace('30', '20') }, false],
    ['wound-up-briefly', { events: 'wound-up@2026-02-01..2026-02-20' }, true],
    ['wound-up-briefly', { events: 'wound-up@2026-02-01..2026-08-20' }, false],
    ['store-low', { events: 'wound-up@2026-02-01..2026-08-20' }, true],
    ['store-low', {}, false],
    ['uses-not-counted', {}, true],
    ['uses-not-counted', { uses: '0' }, false],
  ])('%s with %j: %s', (code, raw, shown) => {
    expect(cautionsOf(next(raw)).includes(code)).toBe(shown)
  })
})

describe('what is refused or asked back', () => {
  it('without the last check it asks for it', () => {
    expect(ask('next-check', { uses: '3' }).missing.map(({ input }) => input)).toEqual(['last-check'])
  })

  it.each<[string, Raw, readonly string[]]>([
    ['a day that there is not', { 'last-check': '2026-02-30' }, ['not-a-date']],
    ['uses with a unit', { uses: '5 uses' }, ['trailing']],
    ['half a use', { uses: '5.5' }, ['not-allowed']],
    ['fewer than no uses', { uses: '-5' }, ['negative']],
    ['more uses than there are days', { uses: '99999999999' }, ['out-of-range']],
    ['an interval of weeks', { interval: '6 weeks' }, ['not-allowed']],
    ['all at once', { uses: 'x', interval: 'y', events: 'z' }, ['not-a-number', 'not-allowed', 'not-allowed']],
  ])('%s', (_, raw, codes) => {
    expect(codesOf(ask('next-check', { 'last-check': '2026-01-31', ...raw }))).toEqual(codes)
  })
})
