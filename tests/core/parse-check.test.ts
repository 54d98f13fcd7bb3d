// Points, days, intervals and events: what is accepted and what is refused, with the reason.
import { describe, expect, it } from 'vitest'
import { parseDay, parseEvents, parseInterval } from '../../src/core/parse-date.ts'
import { parseDrive } from '../../src/core/parse-drive.ts'
import { parsePoints } from '../../src/core/parse-points.ts'
import { parseSeat } from '../../src/core/parse-seat.ts'
import { parseShare } from '../../src/core/parse-share.ts'

const codes = (read: { ok: boolean; faults?: ReadonlyArray<{ tell: string }> }): string[] =>
  read.ok ? [] : (read.faults ?? []).map(({ tell }) => tell)

describe('points', () => {
  it('stand alone, several, or in one text with | between', () => {
    const one = parsePoints(['100 N·m: 99,5; 101; 100.2 N·m'], 'points')
    expect(
      one.ok && one.value.map(({ setting, references }) => [setting.value, references.map(({ value }) => value)]),
    ).toEqual([[100, [99.5, 101, 100.2]]])
    const joined = parsePoints(['40 N·m: 40 41 N·m | 100 N·m: 99 N·m'], 'points')
    const apart = parsePoints(['40 N·m: 40 41 N·m', '100 N·m: 99 N·m'], 'points')
    expect(joined).toEqual(apart)
  })

  it.each([
    ['100 N·m 99 N·m', ['not-a-point'], 'no colon'],
    ['100: 99 N·m', ['unit-missing'], 'no unit on the setting'],
    ['100 N·m: 99; 101', ['unit-missing', 'unit-missing'], 'no unit on the readings'],
    ['100 N·m:', ['empty'], 'no readings'],
    ['100 N·m: 20,21,22 N·m', ['thousands-mark'], 'commas without spaces are decimal marks'],
    ['100 mm: 99 N·m', ['unit-wrong-kind'], 'no torque'],
  ])('%s is refused: %s (%s)', (text, tells) => {
    expect(codes(parsePoints([text], 'points'))).toEqual(tells)
  })
})

describe('days, intervals, events', () => {
  it.each(['2026-02-28', '2024-02-29', '1999-12-31'])('%s is a day', (text) =>
    expect(parseDay(text, 'x')).toEqual({ ok: true, value: text }),
  )
  it.each([
    '2026-02-30',
    '2025-02-29',
    '2026-13-01',
    '2026-00-10',
    '26-01-01',
    '01.02.2026',
    'today',
    '2026-3-1',
    '0000-01-01',
  ])('%s is none', (text) => expect(codes(parseDay(text, 'x'))).toEqual(['not-a-date']))

  it.each([
    [['12 months'], { months: 12 }],
    [['1 year'], { months: 12 }],
    [['5000 uses'], { uses: 5000 }],
    [['12 months; 5000 uses'], { months: 12, uses: 5000 }],
    [['6 months', '1000 cycles'], { months: 6, uses: 1000 }],
    [['12 months or 5000 uses'], { months: 12, uses: 5000 }],
  ])('%j is an interval', (texts, value) => expect(parseInterval(texts, 'x')).toEqual({ ok: true, value }))
  it.each(['12', 'months', '0 months', '-3 months', '1.5 years', '12 months; 6 months', '3 weeks'])(
    '%s is none',
    (text) => expect(codes(parseInterval([text], 'x'))).toEqual(['not-an-interval']),
  )

  it('an event is at a day or over days', () => {
    expect(parseEvents(['dropped@2026-03-01; wound-up@2026-01-01..2026-07-01'], 'x', ['dropped', 'wound-up'])).toEqual({
      ok: true,
      value: [
        { kind: 'dropped', at: '2026-03-01' },
        { kind: 'wound-up', at: '2026-07-01', from: '2026-01-01' },
      ],
    })
  })
  it.each([
    ['eaten@2026-03-01', ['not-an-event']],
    ['dropped', ['empty']],
    ['dropped@soon', ['not-a-date']],
    ['dropped@2026-03-02..2026-03-01', ['span-reversed']],
  ])('%s is refused: %j', (text, tells) => expect(codes(parseEvents([text], 'x', ['dropped']))).toEqual(tells))
})

describe('seats, shares, drives', () => {
  it.each([
    ['flat 18 mm x 13 mm', 'flat', 18, 13],
    ['flat 18 x 13 mm', 'flat', 18, 13],
    ['Cone 60° 18 mm x 13 mm', 'cone', 18, 13],
    ['ball 14 mm 18 mm × 13 mm', 'ball', 18, 13],
  ])('%s is a seat', (text, kind, outer, hole) => {
    const seat = parseSeat(text, 'seat')
    expect(seat.ok && [seat.value.kind, seat.value.outer.value, seat.value.hole.value]).toEqual([kind, outer, hole])
  })
  it.each(['', 'flat', 'round 18 mm x 13 mm', 'flat 18 mm', 'cone 18 mm x 13 mm', 'flat 18 x 13'])(
    '%j is none',
    (text) => expect(parseSeat(text, 'seat').ok).toBe(false),
  )

  it.each([
    ['75 % of proof', 75, 'proof'],
    ['90% of yield', 90, 'yield'],
    ['90 % yield strength', 90, 'yield'],
  ])('%s is a share', (text, value, of) => {
    const share = parseShare(text, 'share')
    expect(share.ok && [share.value.percent.value, share.value.of]).toEqual([value, of])
  })
  it.each(['75 %', '75 of proof', 'proof', 'most of it', ''])('%j is none', (text) =>
    expect(parseShare(text, 'share').ok).toBe(false),
  )

  it.each(['1/2', '1/2 in', '1/2"', '0.5', ' 1/2 inch '])('%s is a half-inch drive', (text) =>
    expect(parseDrive(text, 'drive', ['1/4', '1/2', '1'])).toEqual({ ok: true, value: '1/2' }),
  )
  it.each(['1/3', '12.7 mm', '13', '', 'half'])('%j is no drive', (text) =>
    expect(parseDrive(text, 'drive', ['1/4', '1/2', '1']).ok).toBe(false),
  )
})
