// Lists as people type them: chains of adapters, and readings with a unit on each or once at the end.
import { describe, expect, it } from 'vitest'
import { LONGEST_LIST, parseAdapters, parseReadings } from '../../src/core/parse-list.ts'
import type { Wanted } from '../../src/core/parse-quantity.ts'
import { units } from '../../src/core/unit.ts'

const inch = (value: number) => ({ value, unit: units.in })
const degrees = (value: number) => ({ value, unit: units['°'] })
const torque: Wanted = { input: 'reading', dimensions: ['torque'] }
const force: Wanted = { input: 'force', dimensions: ['force'] }

describe('a chain of adapters is read', () => {
  it.each<[string, readonly string[], readonly object[]]>([
    ['one', ['2 in'], [{ length: inch(2) }]],
    ['one with its angle', ['2 in@90'], [{ length: inch(2), angle: degrees(90) }]],
    ['one with spaces and a degree mark', [' 2 in @ -90° '], [{ length: inch(2), angle: degrees(-90) }]],
    ['two behind a plus', ['2 in + 3 in@45'], [{ length: inch(2) }, { length: inch(3), angle: degrees(45) }]],
    [
      'two behind a semicolon',
      ['2 in@0; 40 mm@-30'],
      [
        { length: inch(2), angle: degrees(0) },
        { length: { value: 40, unit: units.mm }, angle: degrees(-30) },
      ],
    ],
    ['the input repeated', ['2 in', '3 in'], [{ length: inch(2) }, { length: inch(3) }]],
    ['repeated and chained', ['2 in + 1 in', '3 in'], [{ length: inch(2) }, { length: inch(1) }, { length: inch(3) }]],
    ['a mixed number', ['1-1/2 in@180'], [{ length: inch(1.5), angle: degrees(180) }]],
    ['a decimal comma', ['2,5 in'], [{ length: inch(2.5) }]],
  ])('%s', (_, texts, chain) => {
    expect(parseAdapters(texts, 'adapter')).toEqual({ ok: true, value: chain })
  })
})

describe('a chain of adapters is refused', () => {
  it.each<[string, readonly string[], string]>([
    ['a length without unit', ['2'], 'unit-missing'],
    ['an angle in another unit', ['2 in@45 mm'], 'unit-wrong-kind'],
    ['two angles on one adapter', ['2 in@45@90'], 'trailing'],
    ['nothing behind the at-sign', ['2 in@'], 'empty'],
    ['nothing behind a semicolon', ['2 in;'], 'empty'],
    ['a plus without spaces', ['2 in+3 in'], 'trailing'],
    ['a comma for a semicolon', ['2 in, 3 in'], 'trailing'],
    ['a text far too long', ['2 in; '.repeat(LONGEST_LIST)], 'too-long'],
  ])('%s', (_, texts, code) => {
    expect(parseAdapters(texts, 'adapter')).toMatchObject({ ok: false, faults: [{ code, input: 'adapter' }] })
  })

  it('with the faults of every link at once', () => {
    const chain = parseAdapters(['2 + 3 in@x; 4 N·m'], 'adapter')
    expect(chain.ok ? [] : chain.faults.map(({ code }) => code)).toEqual([
      'unit-missing',
      'not-a-number',
      'unit-wrong-kind',
    ])
  })
})

describe('readings are read', () => {
  it.each<[string, readonly string[], readonly number[]]>([
    ['a unit once at the end', ['99,5; 101; 100.2 N·m'], [99.5, 101, 100.2]],
    ['a unit on each', ['99.5 N·m; 101 N·m'], [99.5, 101]],
    ['comma and space between them', ['99.5, 101, 100.2 N·m'], [99.5, 101, 100.2]],
    ['decimal commas with comma and space', ['99,5, 101,25 N·m'], [99.5, 101.25]],
    ['spaces between them', ['99.5 101 100.2 N·m'], [99.5, 101, 100.2]],
    ['spaces before three digits', ['99 101 N·m'], [99, 101]],
    ['one reading', ['99.5 N·m'], [99.5]],
    ['the input repeated', ['99.5 N·m', '101 N·m'], [99.5, 101]],
    ['mixed numbers behind semicolons', ['14-1/2; 15 N·m'], [14.5, 15]],
    ['fractions of a glyph', ['14½; 15 N·m'], [14.5, 15]],
  ])('%s', (_, texts, values) => {
    const all = parseReadings(texts, torque)
    expect(all).toEqual({ ok: true, value: values.map((value) => ({ value, unit: units['N·m'] })) })
  })

  it('with pounds and kilograms as what a scale shows', () => {
    expect(parseReadings(['33; 33.5 lb'], force)).toMatchObject({ value: [{ unit: units.lbf }, { unit: units.lbf }] })
    expect(parseReadings(['14.2; 14.3 kg'], force)).toMatchObject({ value: [{ unit: units.kgf }, {}] })
  })

  it('with different units where each has its own', () => {
    expect(parseReadings(['20 N·m; 15 lbf·ft'], torque)).toMatchObject({
      value: [{ unit: units['N·m'] }, { unit: units['lbf·ft'] }],
    })
  })
})

describe('readings are refused', () => {
  it.each<[string, string, string]>([
    ['20,21,22 N·m', 'not-a-number', 'decimal commas or a list: never guessed'],
    ['1,234.5 N·m', 'not-a-number', 'two readings with a forgotten space, or a thousands mark'],
    ['1,234; 2 N·m', 'two-readings', 'a comma that may be a thousands mark'],
    ['14 1/2; 15 N·m', 'two-readings', 'two readings or a mixed number'],
    ['99.5; 101', 'unit-missing', 'no unit at all'],
    ['99 N·m; 101', 'unit-missing', 'a unit on the first only'],
    ['99;; 101 N·m', 'empty', 'nothing between two semicolons'],
    ['99; x; 101 N·m', 'not-a-number', 'a word among the readings'],
    ['99; 101 mm', 'unit-wrong-kind', 'lengths'],
    ['99; 1e2 N·m', 'not-a-number', 'an exponent'],
    ['', 'empty', 'nothing was typed'],
    ['9 '.repeat(LONGEST_LIST), 'too-long', 'longer than any list'],
  ])('%j as %s: %s', (text, code) => {
    expect(parseReadings([text], torque)).toMatchObject({ ok: false })
    const all = parseReadings([text], torque)
    expect(all.ok ? [] : all.faults.map((one) => one.code)).toContain(code)
  })

  it('with the faults of every reading at once, each with its own text', () => {
    const all = parseReadings(['x; 5; 1,234 N·m'], torque)
    expect(all.ok ? [] : all.faults.map(({ code, got }) => [code, got])).toEqual([
      ['not-a-number', 'x'],
      ['two-readings', '1,234 N·m'],
      ['unit-missing', '5'],
    ])
  })
})
