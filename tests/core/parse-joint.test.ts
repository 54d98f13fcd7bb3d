// Seats, shares and drives: what is accepted and what is refused.
import { describe, expect, it } from 'vitest'
import { parseDrive } from '../../src/core/parse-drive.ts'
import { parseSeat } from '../../src/core/parse-seat.ts'
import { parseShare } from '../../src/core/parse-share.ts'

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
