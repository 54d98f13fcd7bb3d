// Check points as people type them: what the wrench says, a colon, what the reference showed; several parted by | or a new line.
import { describe, expect, it } from 'vitest'
import { LONGEST_POINTS, MOST_POINTS, MOST_READINGS, parsePoints } from '../../src/core/parse-points.ts'
import { units } from '../../src/core/unit.ts'

const nm = (value: number) => ({ value, unit: units['N·m'] })
const ftlb = (value: number) => ({ value, unit: units['lbf·ft'] })
const codesOf = (texts: readonly string[]): string[] => {
  const points = parsePoints(texts, 'points')
  return points.ok ? [] : points.faults.map(({ tell }) => tell)
}

describe('points are read', () => {
  it.each<[string, readonly string[], readonly object[]]>([
    [
      'one, as the contract writes it',
      ['100 N·m: 99.5; 101; 100.2 N·m'],
      [{ setting: nm(100), readings: [99.5, 101, 100.2].map(nm) }],
    ],
    [
      'with commas for the decimal mark',
      ['100 Nm: 99,5; 101 Nm'],
      [{ setting: nm(100), readings: [nm(99.5), nm(101)] }],
    ],
    [
      'readings parted by spaces',
      ['75 ft-lb: 74 75.5 ft-lb'],
      [{ setting: ftlb(75), readings: [ftlb(74), ftlb(75.5)] }],
    ],
    [
      'wrench and reference in different units',
      ['75 lb-ft: 99; 101 N·m'],
      [{ setting: ftlb(75), readings: [nm(99), nm(101)] }],
    ],
    ['no space anywhere', ['20Nm:19.9Nm'], [{ setting: nm(20), readings: [nm(19.9)] }]],
    [
      'several behind |',
      ['20 N·m: 19.9 N·m | 40 N·m: 40.3 N·m'],
      [
        { setting: nm(20), readings: [nm(19.9)] },
        { setting: nm(40), readings: [nm(40.3)] },
      ],
    ],
    [
      'several on lines, with an empty one and one at the end',
      ['20 N·m: 19.9 N·m\r\n\n40 N·m: 40.3 N·m\n'],
      [
        { setting: nm(20), readings: [nm(19.9)] },
        { setting: nm(40), readings: [nm(40.3)] },
      ],
    ],
    [
      'the input repeated',
      ['20 N·m: 19.9 N·m', '40 N·m: 40.3 N·m'],
      [
        { setting: nm(20), readings: [nm(19.9)] },
        { setting: nm(40), readings: [nm(40.3)] },
      ],
    ],
    [
      'the same setting twice, rising and falling',
      ['20 N·m: 19.9 N·m | 20 N·m: 20.3 N·m'],
      [
        { setting: nm(20), readings: [nm(19.9)] },
        { setting: nm(20), readings: [nm(20.3)] },
      ],
    ],
  ])('%s', (_, texts, points) => {
    expect(parsePoints(texts, 'points')).toEqual({ ok: true, value: points })
  })

  it('up to twelve points of thirty readings', () => {
    const one = `100 N·m: ${Array.from({ length: MOST_READINGS }, () => '99.5').join('; ')} N·m`
    const all = parsePoints([Array.from({ length: MOST_POINTS }, () => one).join(' | ')], 'points')
    expect(all.ok && all.value.map(({ readings }) => readings.length)).toEqual(Array(MOST_POINTS).fill(MOST_READINGS))
  })
})

describe('points are refused, each by what is wrong with it', () => {
  it.each<[string, readonly string[], readonly string[]]>([
    ['nothing', [''], ['empty']],
    ['spaces', ['  \n '], ['empty']],
    ['no colon', ['100 N·m 99.5 N·m'], ['point-without-colon']],
    ['two colons: points parted by a semicolon', ['20 N·m: 19.9; 20 N·m; 40 N·m: 40.3 N·m'], ['point-two-colons']],
    ['nothing before the colon', [': 99.5 N·m'], ['point-without-setting']],
    ['nothing behind the colon', ['100 N·m:'], ['point-without-readings']],
    ['nothing on either side', [':'], ['point-without-setting', 'point-without-readings']],
    ['nothing between two marks', ['20 N·m: 19.9 N·m || 40 N·m: 40 N·m'], ['point-empty']],
    ['a mark at the end', ['20 N·m: 19.9 N·m |'], ['point-empty']],
    ['a setting without unit', ['100: 99.5; 101 N·m'], ['unit-missing']],
    ['readings without unit', ['100 N·m: 99.5; 101'], ['unit-missing', 'unit-missing']],
    ['a unit on the first reading only', ['100 N·m: 99.5 N·m; 101'], ['unit-missing']],
    ['a length for a reading', ['100 N·m: 99.5 mm'], ['unit-wrong-kind']],
    ['a bare pound', ['100 lb: 99.5 lb'], ['pound-alone', 'pound-alone']],
    ['a span for the setting', ['90–110 N·m: 99.5 N·m'], ['one-value-only']],
    ['a number that can be read two ways', ['1,234 N·m: 1.235 N·m'], ['thousands-or-decimal', 'thousands-or-decimal']],
    ['an empty reading', ['100 N·m: 99;; 101 N·m'], ['empty']],
    ['a word', ['x: y'], ['not-a-number', 'not-a-number']],
    ['one reading too many', [`9 N·m: ${'9 '.repeat(MOST_READINGS + 1)}N·m`], ['too-many-in-point']],
    [
      'one point too many',
      [
        Array(MOST_POINTS + 1)
          .fill('9 N·m: 9 N·m')
          .join('|'),
      ],
      ['too-many'],
    ],
    ['too many as the input repeated', Array(MOST_POINTS + 1).fill('9 N·m: 9 N·m'), ['too-many']],
    ['a text far too long', ['9'.repeat(LONGEST_POINTS + 1)], ['too-long']],
  ])('%s', (_, texts, tells) => {
    expect(codesOf(texts)).toEqual(tells)
  })

  it('all points at once, each fault with the point or the reading that it is about', () => {
    const points = parsePoints(['20 N·m 19.9 N·m | 40: 40.3 N·m', '60 N·m: x; 61 N·m'], 'points')
    expect(points.ok ? [] : points.faults.map(({ tell, got, input }) => [tell, got, input])).toEqual([
      ['point-without-colon', '20 N·m 19.9 N·m', 'points'],
      ['unit-missing', '40', 'points'],
      ['not-a-number', 'x', 'points'],
    ])
  })
})
