// scale-check: a wrench against a scale or a weight. Signs, the wrench's own weight, and what is asked back because of it.
import { describe, expect, it } from 'vitest'
import { band95 } from '../../src/mechanics/uncertainty.ts'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf, rowsOf } from '../support/desk.ts'

const base = { distance: '400 mm', force: '250 N' }
const level = { 'wrench-mass': '1.2 kg', 'balance-point': '180 mm', lie: 'level' }
const OWN = 1.2 * 9.80665 * 0.18

describe('the torque', () => {
  it.each<[string, Record<string, string>, number]>([
    ['of a pull is force times distance', {}, 100],
    ['of a pull askew is less by its cosine', { 'pull-angle': '60' }, 50],
    ['of a pull askew the other way as well', { 'pull-angle': '-60' }, 50],
    ['of several pulls is that of their mean', { force: '240; 250; 260 N' }, 100],
    ['of a weight hung on a level wrench has its own weight added', { ...level, 'pull-direction': 'down' }, 100 + OWN],
    ['of a pull upward has it taken away', { ...level, 'pull-direction': 'up' }, 100 - OWN],
    ['of an upright wrench has nothing added', { 'wrench-mass': '1.2 kg', lie: 'upright' }, 100],
  ])('%s', (_, more, expected) => {
    const answer = answered('scale-check', { ...base, ...more })
    expect(numberOf(answer, 'torque')).toBeCloseTo(expected, 9)
    expect(numberOf(answer, 'mean')).toBeCloseTo(expected, 9)
  })

  it('reads kilograms and pounds on a scale as forces', () => {
    expect(numberOf(answered('scale-check', { distance: '1 m', force: '10 kg' }), 'torque')).toBeCloseTo(98.0665, 9)
    expect(numberOf(answered('scale-check', { distance: '1 ft', force: '50 lb' }), 'torque')).toBeCloseTo(50, 9)
  })

  it('of each pull is listed, and the spread is highest less lowest', () => {
    const answer = answered('scale-check', { ...base, force: '240; 250; 260 N', setting: '100 N·m' })
    const rows = rowsOf(answer, 'readings')
    expect(rows.map((row) => row['torque']?.value)).toEqual([96, 100, 104].map((value) => expect.closeTo(value, 9)))
    expect(rows[2]?.['deviation']?.value).toBeCloseTo(-3.846, 3)
    expect(numberOf(answer, 'spread')).toBeCloseTo(8, 9)
  })

  it('of one pull has no spread, and of a pull without setting no deviation', () => {
    const answer = answered('scale-check', base)
    expect(numberOf(answer, 'spread')).toBe(0)
    expect(answer.results['deviation']).toBeUndefined()
  })
})

describe('the deviation', () => {
  it.each([
    ['240 N', 4.166_667, /only 96 N·m and delivers LOW, deviation 4\.17 %/],
    ['260 N', -3.846_154, /gave 104 N·m and delivers HIGH, deviation -3\.85 %/],
    ['250 N', 0, /within the doubt of this check/],
    ['250.1 N', -0.039_984, /within the doubt of this check/],
  ])('of %s at a setting of 100 N·m is %d %%, and named', (force, expected, words) => {
    const answer = answered('scale-check', { ...base, force, setting: '100 N·m' })
    expect(numberOf(answer, 'deviation')).toBeCloseTo(expected, 5)
    expect(answer.headline).toMatch(words)
  })

  it('carries its band the right way round', () => {
    const { value, low, high } = resultOf(answered('scale-check', { ...base, setting: '104 N·m' }), 'deviation')
    expect(low).toBeLessThan(value)
    expect(high).toBeGreaterThan(value)
  })
})

describe('the doubt', () => {
  const width = (more: Record<string, string>): number => {
    const { low = 0, high = 0, value } = resultOf(answered('scale-check', { ...base, ...more }), 'torque')
    return (high - low) / 2 / value
  }

  it('of one pull square to the handle is that of the distance alone: 0.95 of 3 mm on 400', () => {
    expect(width({})).toBeCloseTo((0.95 * 3) / 400, 6)
  })

  it('grows with the scale’s own tolerance, with readings that scatter, and with a pull askew', () => {
    expect(width({ 'gauge-tolerance': '1 %' })).toBeGreaterThan(width({}))
    expect(width({ force: '240; 250; 260 N' })).toBeGreaterThan(width({ force: '249; 250; 251 N' }))
    expect(width({ 'pull-angle': '20' })).toBeGreaterThan(width({}))
  })

  it.each([
    ['240; 260 N', 2, Math.sqrt(200)],
    ['245; 255; 245; 255; 245; 255; 245; 255 N', 8, Math.sqrt(200 / 7)],
  ])('of %s is that of the mean of %d, with its degrees of freedom', (force, n, s) => {
    const parts = [
      { name: 'distance', halfWidth: 3 / 400 },
      { name: 'readings', u: s / Math.sqrt(n) / 250, nu: n - 1 },
    ]
    expect(width({ force })).toBeCloseTo(band95(parts), 9)
  })

  it('of few readings is wider than that of many with the same scatter', () => {
    expect(width({ force: '245; 255 N' })).toBeGreaterThan(width({ force: '245; 255; 245; 255; 245; 255; 245; 255 N' }))
  })
})

describe('the wrench’s own weight is asked for', () => {
  it.each<[Record<string, string>, readonly string[]]>([
    [{}, []],
    [{ 'wrench-mass': '1.2 kg' }, ['lie', 'pull-direction']],
    [{ 'wrench-mass': '1.2 kg', 'pull-direction': 'down' }, ['lie']],
    [{ 'wrench-mass': '1.2 kg', lie: 'upright' }, []],
    [{ 'wrench-mass': '1.2 kg', lie: 'level' }, ['balance-point', 'pull-direction']],
    [{ 'wrench-mass': '1.2 kg', lie: 'level', 'balance-point': '180 mm' }, ['pull-direction']],
    [{ 'wrench-mass': '1.2 kg', lie: 'level', 'pull-direction': 'up' }, ['balance-point']],
    [{ lie: 'level' }, []],
  ])('with %j: %j', (more, missing) => {
    const answer = ask('scale-check', { ...base, ...more })
    expect(answer.missing.map(({ input }) => input)).toEqual(missing)
    expect(answer.status).toBe(missing.length === 0 ? 'answered' : 'incomplete')
  })

  it('and is warned of where nothing of it was told', () => {
    expect(cautionsOf(answered('scale-check', base))).toContain('own-weight')
    const told = answered('scale-check', { ...base, 'wrench-mass': '1.2 kg', lie: 'upright' })
    expect(cautionsOf(told)).not.toContain('own-weight')
  })

  it('and a pull upward that it beats is refused', () => {
    const heavy = { ...base, force: '250; 2 N', ...level, 'pull-direction': 'up' }
    expect(ask('scale-check', heavy).faults.map(({ input, code, got }) => [input, code, got])).toEqual([
      ['force', 'out-of-range', '2 N'],
    ])
  })
})

describe('what it warns of and refuses', () => {
  it.each([
    ['1 %', []],
    ['1.1 %', ['gauge-too-coarse']],
    ['2 %', ['gauge-too-coarse']],
  ])('a scale of %s against ±4 %%: %j', (gauge, expected) => {
    const codes = cautionsOf(answered('scale-check', { ...base, 'gauge-tolerance': gauge }))
    expect(codes.filter((code) => code.startsWith('gauge'))).toEqual(expected)
  })

  it('a scale of unknown tolerance is warned of', () => {
    expect(cautionsOf(answered('scale-check', base))).toEqual([
      'gauge-unknown',
      'own-weight',
      'click-once',
      'not-accredited',
      'maker-first',
    ])
  })

  it.each<[string, Record<string, string>, string]>([
    ['a pull more than 60° askew', { 'pull-angle': '61' }, 'out-of-range'],
    ['more pulls than twenty', { force: `${'250 '.repeat(21)}N` }, 'too-many'],
    ['a pull without unit', { force: '250' }, 'unit-missing'],
    ['a torque for a pull', { force: '250 N·m' }, 'unit-wrong-kind'],
    ['a lie that is none', { lie: 'sideways' }, 'not-allowed'],
  ])('%s is refused', (_, more, code) => {
    expect(codesOf(ask('scale-check', { ...base, ...more }))).toEqual([code])
  })
})
