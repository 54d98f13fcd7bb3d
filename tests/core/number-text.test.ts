// Numbers as people write them: what is read, what stands behind the number, and what is refused because it can be read two ways.
import { describe, expect, it } from 'vitest'
import { readNumber } from '../../src/core/number-text.ts'

describe('a number is read', () => {
  it.each<[string, number, string]>([
    ['95', 95, ''],
    ['13,5', 13.5, ''],
    ['13.5', 13.5, ''],
    ['.5', 0.5, ''],
    [',5', 0.5, ''],
    ['007', 7, ''],
    ['0,125', 0.125, ''],
    ['0.500', 0.5, ''],
    ['1234', 1234, ''],
    ['1234.567', 1234.567, ''],
    ['1.2345', 1.2345, ''],
    ['1,23', 1.23, ''],
    ['12.3456', 12.3456, ''],
    ['1,234.5', 1234.5, ''],
    ['1.234,5', 1234.5, ''],
    ['12,345,678.9', 12_345_678.9, ''],
    ['+5', 5, ''],
    ['-5', -5, ''],
    ['−5', -5, ''],
    ['–5', -5, ''],
    ['- 5', -5, ''],
    ['½', 0.5, ''],
    ['⅞', 0.875, ''],
    ['2½', 2.5, ''],
    ['2 ½', 2.5, ''],
    ['1/2', 0.5, ''],
    ['1⁄2', 0.5, ''],
    ['7/16', 0.4375, ''],
    ['14 1/2', 14.5, ''],
    ['14-1/2', 14.5, ''],
    ['14  1/2', 14.5, ''],
    ['-1/2', -0.5, ''],
    ['-1-1/2', -1.5, ''],
    ['5.', 5, '.'],
    ['12 in-lb', 12, ' in-lb'],
    ['2½"', 2.5, '"'],
    ['14 1/2 in', 14.5, ' in'],
  ])('%j as %d, and %j stands behind it', (text, value, rest) => {
    expect(readNumber(text)).toEqual({ ok: true, value, rest })
  })

  it.each(['¼', '½', '¾', '⅓', '⅔', '⅕', '⅖', '⅗', '⅘', '⅙', '⅚', '⅛', '⅜', '⅝', '⅞'])(
    '%s is the fraction that its Unicode name says',
    (glyph) => {
      const [top, bottom] = glyph.normalize('NFKD').split('⁄').map(Number)
      expect(readNumber(glyph)).toEqual({ ok: true, value: (top as number) / (bottom as number), rest: '' })
    },
  )
})

describe('a number is refused', () => {
  it.each<[string, string, string]>([
    ['', 'not-a-number', 'nothing is there'],
    ['abc', 'not-a-number', 'a word'],
    ['∞', 'not-a-number', 'no measurement is infinite'],
    ['Infinity', 'not-a-number', 'a word'],
    ['NaN', 'not-a-number', 'a word'],
    ['0x10', 'not-a-number', 'hex is how machines write'],
    ['1e3', 'exponent', 'an exponent is how machines write'],
    ['1E-3', 'exponent', 'an exponent is how machines write'],
    ['1.5e+3 N·m', 'exponent', 'an exponent is how machines write'],
    ['1.2.3', 'thousands-mark', 'two marks and no groups of three'],
    ['20,21,22', 'thousands-mark', 'a list or a number with thousands marks'],
    ['1,234,567', 'thousands-mark', 'thousands marks alone'],
    ['1,23,4.5', 'thousands-mark', 'a group of two'],
    ['1 234', 'thousands-mark', 'a space as thousands mark, or two numbers'],
    ["1'234", 'thousands-mark', 'an apostrophe as thousands mark, or feet'],
    ['1\u00a0234', 'thousands-mark', 'a no-break space as thousands mark'],
    ['1\u202f234', 'thousands-mark', 'a narrow no-break space as thousands mark'],
    ['12 345 N·m', 'thousands-mark', 'a space as thousands mark'],
    ['3/0', 'not-a-number', 'a part of nothing'],
    ['0/0', 'not-a-number', 'a part of nothing'],
    ['14 9/8', 'not-a-number', 'a mixed number whose fraction is more than one'],
  ])('%j as %s: %s', (text, why) => {
    const reading = readNumber(text)
    expect(reading).toMatchObject({ ok: false, trouble: { why } })
  })

  it.each<[string, [string, string]]>([
    ['1,234', ['1234', '1.234']],
    ['1.234', ['1234', '1.234']],
    ['12,500', ['12500', '12.500']],
    ['999.000', ['999000', '999.000']],
  ])('%j because it can be read as %j', (text, readings) => {
    expect(readNumber(text)).toMatchObject({ ok: false, trouble: { why: 'two-readings', readings } })
  })
})
