// One rounding policy for everything that people read: three figures, four where the first digit is 1, no thousands mark.
import { describe, expect, it } from 'vitest'
import {
  commaStyle,
  echoNumber,
  figuresOf,
  pointStyle,
  showNumber,
  styleOf,
  writeNumber,
} from '../../src/core/number-style.ts'
import { chatLocales } from '../support/locales.ts'

const rows: ReadonlyArray<[number, string, string]> = [
  [78.26, '78.3', 'three figures'],
  [144.66, '144.7', 'four where the first digit is 1'],
  [87.5, '87.5', 'no more digits than there are'],
  [30, '30', 'no zero behind the mark'],
  [30.04, '30', 'a zero behind the mark is dropped'],
  [100, '100', 'zeros before the mark stay'],
  [102.857, '102.9', 'four figures'],
  [9.996, '10', 'rounded up to the next power of ten'],
  [99.96, '100', 'rounded up to the next power of ten'],
  [999.6, '1000', 'rounded up to the next power of ten'],
  [1.9996, '2', 'four figures, then no zeros'],
  [0.2, '0.2', 'a tenth needs its zero before the mark'],
  [0.01234, '0.01234', 'four figures behind zeros'],
  [0.0023456, '0.00235', 'three figures behind zeros'],
  [1.1428571, '1.143', 'a factor'],
  [2349.9, '2350', 'no thousands mark'],
  [1_234_567, '1235000', 'no thousands mark'],
  [23_450, '23500', 'a tie goes away from zero'],
  [-23_450, '-23500', 'a tie goes away from zero on both sides'],
  [1e24, '1000000000000000000000000', 'no exponent'],
  [1.5e-9, '0.0000000015', 'no exponent'],
  [-0.196_88, '-0.1969', 'the sign does not count as a figure'],
  [0, '0', 'zero'],
  [-0, '0', 'no minus zero'],
]

describe('a number rounded for people', () => {
  it.each(rows)('%d is shown as %s: %s', (value, text) => {
    expect(showNumber(value)).toBe(text)
    expect(showNumber(value, commaStyle)).toBe(text.replace('.', ','))
  })

  it.each([
    [1, 4],
    [1.999, 4],
    [2, 3],
    [9.99, 3],
    [10, 4],
    [0.0199, 4],
    [0.02, 3],
    [-150, 4],
    [-350, 3],
  ])('%d has %d significant figures', (value, figures) => {
    expect(figuresOf(value)).toBe(figures)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is a bug', (value) => {
    expect(() => showNumber(value)).toThrow('bug')
    expect(() => echoNumber(value)).toThrow('bug')
    expect(() => writeNumber(value)).toThrow('bug')
  })
})

describe('a number echoed', () => {
  it.each([
    [101.25, '101.25', 'as it was typed'],
    [1 / 3, '0.333333333333', 'twelve figures at most'],
    [0.1 + 0.2, '0.3', 'without the noise of binary'],
    [14.5, '14.5', 'a half'],
    [12_345_678.9, '12345678.9', 'no thousands mark'],
    [1e24, '1000000000000000000000000', 'no exponent'],
  ])('%d is %s: %s', (value, text) => {
    expect(echoNumber(value)).toBe(text)
  })
})

describe('a number written to be typed back', () => {
  it.each([
    [101.25, '101.25', 'as it is'],
    [1.234, '1.2340', 'a zero where it would look like a thousands mark'],
    [-12.345, '-12.3450', 'a zero where it would look like a thousands mark'],
    [0.234, '0.234', 'no thousands mark behind a zero'],
    [1234.567, '1234.567', 'four digits cannot stand before a thousands mark'],
    [0.1 + 0.2, '0.30000000000000004', 'exact, noise and all'],
    [1e21, '1000000000000000000000', 'no exponent'],
    [1.25e-7, '0.000000125', 'no exponent'],
    [1.5e22, '15000000000000000000000', 'no exponent'],
    [-3e-7, '-0.0000003', 'no exponent'],
  ])('%d is %s: %s', (value, text) => {
    expect(writeNumber(value)).toBe(text)
    expect(Number(writeNumber(value))).toBe(value)
    expect(writeNumber(value, commaStyle)).toBe(text.replace('.', ','))
  })
})

describe('the number style of a language', () => {
  const points = new Set(['en-GB', 'en-US', 'es-419', 'hi', 'th', 'zh-CN', 'ja', 'zh-TW', 'ko'])

  it.each(chatLocales)('%s has the mark that its readers use', (locale) => {
    expect(styleOf(locale)).toBe(points.has(locale) ? pointStyle : commaStyle)
  })

  it('is known for all thirty-two languages of a chat client', () => {
    expect(new Set(chatLocales).size).toBe(32)
  })
})
