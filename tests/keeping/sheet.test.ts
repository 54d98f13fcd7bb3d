// The register as a sheet: what is written is read again; sheets of people’s own; and everything that is wrong with one, by line.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { columns, readSheet, sheetHead, sheetRow } from '../../src/keeping/sheet.ts'
import { eventEntry, wrenchEntry } from '../support/entries.ts'

const told = (text: string): string[] => {
  const read = readSheet(text)
  return read.ok ? [] : read.faults.map(({ line, fault }) => `${line} ${fault.input}: ${fault.tell}`)
}
const rowsOf = (text: string) => {
  const read = readSheet(text)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.rows
}

describe('a sheet of somebody’s own', () => {
  it.each([
    ['commas', 'tag,name,wrench-type,most\nW-1,Small,click,25 N·m\n'],
    ['semicolons and a byte order mark', '\uFEFFtag;name;wrench-type;most\r\nW-1;Small;click;25 N·m\r\n'],
    ['tabs', 'tag\tname\twrench-type\tmost\nW-1\tSmall\tclick\t25 N·m'],
    ['blank lines and other letters', 'Tag, Name ,WRENCH-TYPE,most\n\nW-1, Small,click,25 N·m\n\n,,,\n'],
  ])('with %s', (_what, text) => {
    expect(rowsOf(text)).toMatchObject([{ kind: 'wrench', texts: { tag: 'W-1', name: 'Small', most: '25 N·m' } }])
  })

  it('keeps a decimal comma where cells are parted by semicolons', () => {
    expect(rowsOf('tag;most\nW-1;13,5 N·m\n')[0]?.texts['most']).toBe('13,5 N·m')
  })

  it.each([
    ['', '1 : sheet-empty'],
    ['tag,name\n', '1 : sheet-empty'],
    ['tag,colour\nW-1,red\n', '1 colour: sheet-column'],
    ['tag,tag\nW-1,W-1\n', '1 tag: sheet-column-twice'],
    ['tag,name\nW-1,a,b\n', '2 : sheet-cells'],
    ['kind,tag\nspanner,W-1\n', '2 kind: not-a-choice'],
    ['tag,name\n"W-1,a\n', '2 : sheet-unreadable'],
    [`tag\n${'W-1\n'.repeat(10_001)}`, '1 : sheet-too-long'],
  ])('%j is told: %s', (text, fault) => expect(told(text)[0]).toBe(fault))

  it('of millions of lines is told as too long, before all of them are taken apart', () => {
    const before = performance.now()
    expect(told(`tag\n${'a\n'.repeat(2_000_000)}`)).toEqual(['1 : sheet-too-long'])
    // All of them took eight seconds and a gigabyte.
    expect(performance.now() - before).toBeLessThan(3000)
  })
})

describe('a sheet that was written', () => {
  it('has every column once, and a row an entry', () => {
    expect(new Set(columns).size).toBe(columns.length)
    expect(sheetHead().trim().split(',')).toEqual(columns)
  })

  it('gives back every text as it was, formulas of table programs made harmless', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ minLength: 1, maxLength: 60 }),
          fc.constantFrom(
            '=1+1',
            '＝1+1',
            'a;＠x',
            "'=x",
            '@a',
            '-5',
            '"q", and\nmore',
            '+x',
            "''-",
            'a;=1',
            "a; '=1",
            'b\n@c',
            "d\t''+e",
            ';=1;=2',
          ),
        ),
        (note) => {
          const kept = note.trim()
          fc.pre(kept !== '' && !kept.includes('\u0000'))
          const text = sheetHead() + sheetRow(wrenchEntry('e-1', 'W-1')) + sheetRow(eventEntry('e-2', 'W-1', kept))
          const [, event] = rowsOf(text)
          expect(event?.texts['note']).toBe(kept)
          expect(event?.head).toEqual({ id: 'e-2', at: '2026-03-01T08:00:00.000Z', role: 'keeper', door: 'http' })
        },
      ),
    )
  })

  it('holds no cell that begins as a formula', () => {
    for (const note of ['=cmd()', '+1', '-1', '@x', '\tx'.trim() || 'x'])
      expect(sheetRow(eventEntry('e-2', 'W-1', note))).not.toMatch(/(^|,)"?[=+\-@]/)
  })
})
