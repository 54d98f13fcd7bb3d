// A torque that is asked for: one value, a span, a tolerance; and what only looks like one.
import { describe, expect, it } from 'vitest'
import type { Wanted } from '../../src/core/parse-quantity.ts'
import { hasAngleStage, isSpan, parseTarget } from '../../src/core/parse-target.ts'
import { type UnitSymbol, units } from '../../src/core/unit.ts'

const wanted: Wanted = { input: 'torque', dimensions: ['torque'] }

describe('a target is read', () => {
  it.each<[string, number, number, number, UnitSymbol]>([
    ['19.5–24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['19,5–24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['19.5-24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['19.5 - 24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['19.5 to 24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['19.5 lb-ft to 24 lb-ft', 19.5, 21.75, 24, 'lbf·ft'],
    ['90…110 N·m', 90, 100, 110, 'N·m'],
    ['90..110 N·m', 90, 100, 110, 'N·m'],
    ['90 — 110 N·m', 90, 100, 110, 'N·m'],
    ['90 ‐ 110 N·m', 90, 100, 110, 'N·m'],
    ['90‒110 N·m', 90, 100, 110, 'N·m'],
    ['48 ± 3 N·m', 45, 48, 51, 'N·m'],
    ['48±3 N·m', 45, 48, 51, 'N·m'],
    ['48 +/- 3 N·m', 45, 48, 51, 'N·m'],
    ['48 +- 3 N·m', 45, 48, 51, 'N·m'],
    ['48 N·m ± 3 N·m', 45, 48, 51, 'N·m'],
    ['50 N·m ± 10 %', 45, 50, 55, 'N·m'],
    ['10-1/2 - 12 in-lb', 10.5, 11.25, 12, 'lbf·in'],
    ['20–20 N·m', 20, 20, 20, 'N·m'],
  ])('%j from %d over %d to %d %s', (text, low, value, high, symbol) => {
    expect(parseTarget(text, wanted)).toEqual({ ok: true, value: { value, unit: units[symbol], low, high } })
    expect(isSpan(text, wanted)).toBe(true)
  })

  it.each([
    ['48 N·m', 48, 'one value'],
    ['10-1/2 N·m', 10.5, 'a mixed number, not a span'],
    ['24 lb-ft', 24, 'a hyphen inside the unit'],
    ['-5 N·m', -5, 'a sign, not a span; the input refuses it'],
  ])('%j as the one value %d: %s', (text, value) => {
    const target = parseTarget(text, wanted)
    expect(target).toMatchObject({ ok: true, value: { value } })
    expect(target.ok && target.value.low).toBeUndefined()
    expect(isSpan(text, wanted)).toBe(false)
  })
})

describe('a target is refused', () => {
  it.each([
    ['24–19.5 lb-ft', 'span-reversed', 'the higher end first'],
    ['3 ± 48 N·m', 'negative', 'a tolerance wider than its middle'],
    ['20 Nm + 90°', 'angle-stage', 'a turn behind the torque'],
    ...[
      '20 Nm; 90°',
      '20 Nm (90°)',
      '20 Nm → 90°',
      '20 Nm + another 90°',
      '20 Nm followed by 90 deg',
      '20 Nm + two flats',
    ].map((text) => [text, 'angle-stage', 'a turn behind the torque, in whatever words']),
    ...[
      '20 Nm + 90 grad',
      '20 Nm x 90°',
      '20 Nm - 90°',
      '20 Nm / 90°',
      '20 Nm +90',
      '20 Nm, then one quarter turn',
    ].map((text) => [text, 'angle-stage', 'a turn behind the torque, in whatever words']),
    ['20 Nm 90°', 'angle-stage', 'a turn behind the torque, nothing between'],
    ['20 Nm, 90°', 'angle-stage', 'a turn behind a comma'],
    ['20 Nm + 2 x 90°', 'angle-stage', 'a turn twice'],
    ['20 Nm plus 1/2 a turn', 'angle-stage', 'a turn in words, with a'],
    ['20 Nm and a quarter of a turn', 'angle-stage', 'a turn in words, with of'],
    ['20 Nm + 90° + 90°', 'angle-stage', 'two turns behind the torque'],
    ['20 Nm then 90 deg', 'angle-stage', 'a turn behind the torque, in words'],
    ['20 Nm plus 60-90 degrees', 'angle-stage', 'a span of turns'],
    ['20 Nm and 90º', 'angle-stage', 'the ordinal mark for degrees'],
    ['20 Nm + 1/4 turn', 'angle-stage', 'a turn as a fraction'],
    ['20 Nm + ½ turn', 'angle-stage', 'a turn as a fraction'],
    ['20 Nm then a quarter-turn', 'angle-stage', 'a turn in words'],
    ['14 lbf·ft – 20 N·m', 'trailing', 'two units'],
    ['48 ± 5 %', 'unit-unknown', 'no torque unit at all'],
    ['19.5–24', 'unit-unknown', 'no unit'],
    ['1–2–3 N·m', 'unit-unknown', 'two spans'],
    ['10 - 20', 'unit-unknown', 'no unit'],
    ['1,200–1,400 N·m', 'thousands-or-decimal', 'commas that may be thousands marks'],
    ['', 'empty', 'nothing was typed'],
    [`48 ± 3 N·m${' '.repeat(80)}`, 'too-long', 'longer than any quantity'],
  ])('%j as %s: %s', (text, tell) => {
    expect(parseTarget(text, wanted)).toMatchObject({ ok: false, faults: [{ tell, input: 'torque' }] })
  })
})

describe('a turn stage', () => {
  it.each(['20 Nm', '20 N·m ± 5 %', '19.5 to 24 lb-ft', '20 + 90', '90°'])('is not seen in %j', (text) => {
    expect(hasAngleStage(text)).toBe(false)
  })
})
