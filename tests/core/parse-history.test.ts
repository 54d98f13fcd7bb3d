// Intervals and events as people type them.
import { describe, expect, it } from 'vitest'
import { parseEvents, parseInterval, parseWhole } from '../../src/core/parse-history.ts'

const kinds = {
  dropped: { spellings: ['fell'], lasts: false },
  'wound-up': { spellings: ['leftwoundup'], lasts: true },
} as const
const tellsOf = (read: ReturnType<typeof parseInterval> | ReturnType<typeof parseEvents>): string[] =>
  read.ok ? [] : read.faults.map(({ tell }) => tell)

describe('an interval', () => {
  it.each<[readonly string[], object]>([
    [['12 months'], { months: 12 }],
    [['1 month'], { months: 1 }],
    [['2 years'], { months: 24 }],
    [['5000 uses'], { uses: 5000 }],
    [['5000 clicks'], { uses: 5000 }],
    [['12 months; 5000 uses'], { months: 12, uses: 5000 }],
    [['5000 uses + 6 Months'], { months: 6, uses: 5000 }],
    [['12 months', '5000 uses'], { months: 12, uses: 5000 }],
  ])('%j is read', (texts, interval) => {
    expect(parseInterval(texts, 'interval')).toEqual({ ok: true, value: interval })
  })

  it.each<[readonly string[], readonly string[]]>([
    [[''], ['empty']],
    [['12'], ['not-an-interval']],
    [['12 weeks'], ['not-an-interval']],
    [['12 constructor'], ['not-an-interval']],
    [['months'], ['not-an-interval']],
    [['12 months 5000 uses'], ['not-an-interval']],
    [['0 months'], ['below-limit']],
    [['121 months'], ['above-limit']],
    [['11 years'], ['above-limit']],
    [['1000001 uses'], ['above-limit']],
    [['-12 months'], ['negative']],
    [['1.5 months'], ['not-whole']],
    [['5,000 uses'], ['thousands-or-decimal']],
    [['5 000 uses'], ['thousands-mark']],
    [['6 months; 1 year'], ['interval-twice']],
    [['6 months', '7 months'], ['interval-twice']],
    [['x; 0 uses'], ['not-an-interval', 'below-limit']],
    [['1'.repeat(100)], ['too-long']],
  ])('%j is refused: %j', (texts, tells) => {
    expect(tellsOf(parseInterval(texts, 'interval'))).toEqual(tells)
  })
})

describe('events', () => {
  it.each<[readonly string[], readonly object[]]>([
    [['dropped@2026-03-01'], [{ kind: 'dropped', to: '2026-03-01' }]],
    [['Fell @ 2026-03-01'], [{ kind: 'dropped', to: '2026-03-01' }]],
    [['wound up@2026-01-01..2026-07-01'], [{ kind: 'wound-up', from: '2026-01-01', to: '2026-07-01' }]],
    [['left wound up@2026-01-01/2026-07-01'], [{ kind: 'wound-up', from: '2026-01-01', to: '2026-07-01' }]],
    [['wound-up@2026-03-01'], [{ kind: 'wound-up', to: '2026-03-01' }]],
    [['wound-up@2026-03-01 … 2026-03-01'], [{ kind: 'wound-up', from: '2026-03-01', to: '2026-03-01' }]],
    [
      ['dropped@2026-03-01; dropped@2026-04-01, fell@2026-05-01', 'fell@2026-06-01'],
      ['2026-03-01', '2026-04-01', '2026-05-01', '2026-06-01'].map((to) => ({ kind: 'dropped', to })),
    ],
  ])('%j are read', (texts, events) => {
    expect(parseEvents(texts, 'events', kinds, 5)).toEqual({ ok: true, value: events })
  })

  it.each<[readonly string[], readonly string[]]>([
    [[''], ['empty']],
    [['dropped@2026-03-01;'], ['empty']],
    [['melted@2026-03-01'], ['not-an-event']],
    [['2026-03-01'], ['not-an-event']],
    [['dropped'], ['event-without-day']],
    [['dropped@'], ['event-without-day']],
    [['dropped@2026-03-01@2026-03-02'], ['event-without-day']],
    [['dropped@2026-02-30'], ['no-such-day']],
    [['dropped@3/1/2026'], ['not-a-date']],
    [['dropped@2026-03-01..2026-03-05'], ['event-one-day']],
    [['wound-up@2026-07-01..2026-01-01'], ['days-reversed']],
    [['wound-up@2026-02-30..2026-02-31'], ['no-such-day', 'no-such-day']],
    [['wound-up@2026-01-01..'], ['empty']],
    [['x@1; dropped@2026-13-01'], ['not-an-event', 'not-a-date']],
    [[Array(6).fill('fell@2026-03-01').join('; ')], ['too-many']],
    [['fell@'.padEnd(100)], ['too-long']],
  ])('%j are refused: %j', (texts, tells) => {
    expect(tellsOf(parseEvents(texts, 'events', kinds, 5))).toEqual(tells)
  })
})

describe('a whole number', () => {
  it.each([
    ['0', 0, ''],
    ['1200', 1200, ''],
    ['12 months', 12, 'months'],
    ['1.0', 1, ''],
  ])('%j is %d with “%s” behind it', (text, value, rest) => {
    expect(parseWhole(text, 'uses')).toEqual({ ok: true, value: { value, rest } })
  })
})
