// nut-factor: a shop's own K from torque and clamp force, and where the next bolt will lie.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, numberOf, resultOf } from '../support/desk.ts'

describe('the nut factor', () => {
  it('of the textbook’s bolt is 0.3: 72.7 lbf·in, #10, 1275 lbf', () => {
    const inputs = { size: '#10-32', torque: '72.6750 lbf·in', 'clamp-force': '1275 lbf' }
    expect(numberOf(answered('nut-factor', inputs), 'k')).toBeCloseTo(0.3, 9)
  })

  it('takes a diameter for a size', () => {
    const inputs = { torque: '60 N·m', 'clamp-force': '25 kN' }
    const bySize = numberOf(answered('nut-factor', { ...inputs, size: 'M12' }), 'k')
    expect(numberOf(answered('nut-factor', { ...inputs, diameter: '12 mm' }), 'k')).toBe(bySize)
    expect(bySize).toBeCloseTo(60 / (0.012 * 25_000), 12)
  })

  it('from one run has no interval, and says so', () => {
    const answer = answered('nut-factor', { size: 'M12', torque: '60 N·m', 'clamp-force': '25 kN' })
    expect(resultOf(answer, 'k').low).toBeUndefined()
    expect(answer.headline).toBe('The nut factor is 0.2, from one run: how much it scatters is not known.')
  })

  it('from three runs carries the interval of the next bolt: mean ± t s √(1 + 1/n)', () => {
    const inputs = { size: 'M10', torque: '18; 20; 22 N·m', 'clamp-force': '10; 10; 10 kN' }
    const { value, low, high } = resultOf(answered('nut-factor', inputs), 'k')
    expect(value).toBeCloseTo(0.2, 12)
    expect((high ?? 0) - value).toBeCloseTo(4.302_652_73 * 0.02 * Math.sqrt(4 / 3), 6)
    expect(value - (low ?? 0)).toBeCloseTo((high ?? 0) - value, 12)
  })

  it('shows every run as a step, and cites the interval only where there is one', () => {
    const two = answered('nut-factor', { size: 'M10', torque: '18; 20 N·m', 'clamp-force': '10; 10 kN' })
    expect(two.steps.map(({ say }) => say).slice(0, 2)).toEqual(['Run 1', 'Run 2'])
    expect(two.sources.map(({ title }) => title).join()).toMatch(/Prediction interval/)
    const one = answered('nut-factor', { size: 'M10', torque: '18 N·m', 'clamp-force': '10 kN' })
    expect(one.sources.map(({ title }) => title).join()).not.toMatch(/Prediction interval/)
  })

  it('belongs to one joint, and is an estimate', () => {
    const answer = answered('nut-factor', { size: 'M12', torque: '60 N·m', 'clamp-force': '25 kN' })
    expect(cautionsOf(answer)).toEqual(['one-joint', 'estimate-only', 'critical-joint', 'maker-first'])
  })
})

describe('what it refuses', () => {
  const base = { size: 'M12', torque: '60 N·m', 'clamp-force': '25 kN' }

  it.each<[string, Record<string, string>, readonly (readonly string[])[]]>([
    ['lists of different length', { torque: '60; 61 N·m' }, [['clamp-force', 'conflict']]],
    ['a diameter that is not the size’s', { diameter: '10 mm' }, [['diameter', 'conflict']]],
    [
      'both at once',
      { torque: '60; 61 N·m', diameter: '10 mm' },
      [
        ['clamp-force', 'conflict'],
        ['diameter', 'conflict'],
      ],
    ],
    ['a size that is none', { size: '19 mm' }, [['size', 'not-allowed']]],
    ['more runs than fifty', { torque: '60 '.repeat(51).concat('N·m') }, [['torque', 'too-many']]],
    ['a mass where a force is wanted', { 'clamp-force': '25 t' }, [['clamp-force', 'unit-unknown']]],
  ])('is %s', (_, more, expected) => {
    expect(ask('nut-factor', { ...base, ...more }).faults.map((one) => [one.input, one.code])).toEqual(expected)
  })

  it('is not a diameter that is the size’s', () => {
    expect(ask('nut-factor', { ...base, diameter: '12 mm' }).status).toBe('answered')
  })
})
