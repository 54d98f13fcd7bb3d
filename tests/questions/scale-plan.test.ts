// scale-plan: which forces a scale must show for a wrench to be within its limit, at a fifth, three fifths and the whole of its range.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, rowsOf } from '../support/desk.ts'

const base = { most: '200 N·m', distance: '400 mm' }
const column = (inputs: Record<string, string>, name: string) =>
  rowsOf(answered('scale-plan', { ...base, ...inputs }), 'points').map((row) => row[name])

describe('the points', () => {
  it('are 20, 60 and 100 % of the highest mark, rising', () => {
    expect(column({}, 'share').map((cell) => cell?.value)).toEqual(
      [20, 60, 100].map((share) => expect.closeTo(share, 9)),
    )
    expect(column({}, 'setting').map((cell) => cell?.value)).toEqual([40, 120, 200].map((S) => expect.closeTo(S, 9)))
  })

  it('have the force of the setting, and the window S/(1 + l) to S/(1 − l) over the distance', () => {
    const [, , whole] = column({}, 'force')
    expect(whole?.value).toBeCloseTo(500, 9)
    expect(whole?.low).toBeCloseTo(200 / 1.04 / 0.4, 9)
    expect(whole?.high).toBeCloseTo(200 / 0.96 / 0.4, 9)
  })

  it('take the wrench’s own tolerance, else the standard’s', () => {
    expect(column({ tolerance: '3 %' }, 'force')[2]?.low).toBeCloseTo(200 / 1.03 / 0.4, 9)
    expect(column({ most: '10 N·m' }, 'force')[2]?.low).toBeCloseTo(10 / 1.06 / 0.4, 9)
  })

  it.each<[string, readonly number[]]>([
    ['30 N·m', [40, 120, 200]],
    ['50 N·m', [50, 120, 200]],
    ['130 N·m', [130, 200]],
  ])('begin with the lowest mark where that is %s: %j', (least, settings) => {
    expect(column({ least }, 'setting').map((cell) => cell?.value)).toEqual(settings.map((S) => expect.closeTo(S, 9)))
  })

  it('lead with the window at the highest mark', () => {
    expect(answered('scale-plan', base).headline).toBe(
      'At 200 N·m, 400 mm from the drive, every reading of the scale must lie between 481 N and 520 N.',
    )
  })
})

describe('the scale’s own limit', () => {
  it('that is too low is warned of first, with the distance that is far enough', () => {
    const answer = answered('scale-plan', { ...base, 'gauge-limit': '50 kg' })
    expect(cautionsOf(answer)[0]).toBe('gauge-runs-out')
    const enough = (200 / 0.96 / (50 * 9.80665)) * 1000
    expect(answer.cautions[0]?.text).toContain(`${enough.toFixed(0)} mm`)
    const farther = answered('scale-plan', { ...base, distance: '426 mm', 'gauge-limit': '50 kg' })
    expect(cautionsOf(farther)).not.toContain('gauge-runs-out')
  })

  it('is warned of a quarter of the limit: 1 % for 4 %', () => {
    const quarter = answered('scale-plan', base).cautions.find(({ code }) => code === 'gauge-quarter')
    expect(quarter?.text).toMatch(/no worse than 1 %/)
  })
})

describe('what it refuses', () => {
  it.each<[string, Record<string, string>, string]>([
    ['a range that ends before it begins', { least: '300 N·m' }, 'conflict'],
    ['two limits of the scale', { 'gauge-limit': '50; 60 kg' }, 'too-many'],
    ['no distance', { distance: '0 mm' }, 'out-of-range'],
  ])('is %s', (_, more, code) => {
    expect(codesOf(ask('scale-plan', { ...base, ...more }))).toEqual([code])
  })
})
