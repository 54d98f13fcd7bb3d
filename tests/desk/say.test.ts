// Facts to words: units of the results, what was assumed, what stands beside a number.
import { describe, expect, it } from 'vitest'
import type { QuestionName } from '../../src/questions/index.ts'
import { answered, resultOf, rowsOf } from '../support/desk.ts'

describe('the unit of a result', () => {
  it.each<[string, QuestionName, Record<string, string>, Record<string, string>]>([
    [
      'of torque follows the torque, of length the lever',
      'adapter-setting',
      { torque: '120 in-lb', lever: '12 in', adapter: '50 mm' },
      { setting: 'lbf·in', 'effective-lever': 'in', torque: 'lbf·in' },
    ],
    [
      'follows the first given, not the system of the next',
      'adapter-setting',
      { torque: '120 N·m', lever: '12 in', adapter: '2 in', most: '150 lbf·ft' },
      { setting: 'N·m', 'effective-lever': 'in' },
    ],
    [
      'of kgf·m stays',
      'adapter-reading',
      { reading: '4 kgf·m', lever: '1 ft', adapter: '50 mm' },
      { torque: 'kgf·m', 'effective-lever': 'ft' },
    ],
    ['of a pull in inches is lbf', 'pull', { torque: '90 lbf·ft', lever: '15 in' }, { pull: 'lbf' }],
    ['of a pull in metres is N', 'pull', { torque: '120 N·m', lever: '0.38 m' }, { pull: 'N' }],
    [
      'of torque follows the system of the first quantity where no torque was given',
      'scale-check',
      { distance: '12 in', force: '20 kgf' },
      { torque: 'lbf·ft', mean: 'lbf·ft' },
    ],
    ['of torque in a metric check is N·m', 'scale-check', { distance: '0.4 m', force: '20 lb' }, { torque: 'N·m' }],
    [
      'of torque follows the setting where one was given',
      'scale-check',
      { distance: '0.4 m', force: '20 kg', setting: '60 lbf·ft' },
      { torque: 'lbf·ft', spread: 'lbf·ft', deviation: '%' },
    ],
    [
      'of a pivot follows the lever',
      'pivot-offset',
      { lever: '38 cm', hand: '190 mm', 'torque-at-lever': '100 N·m', 'torque-at-hand': '104 N·m' },
      { pivot: 'cm' },
    ],
  ])('%s', (_, question, inputs, expected) => {
    const answer = answered(question, inputs)
    for (const [name, unit] of Object.entries(expected)) expect(resultOf(answer, name).unit, name).toBe(unit)
  })

  it('of a force in a plan follows the scale’s own limit, else the system', () => {
    const plan = { most: '200 N·m', distance: '400 mm' }
    expect(rowsOf(answered('scale-plan', plan), 'points')[0]?.['force']?.unit).toBe('N')
    expect(rowsOf(answered('scale-plan', { ...plan, 'gauge-limit': '50 kg' }), 'points')[0]?.['force']?.unit).toBe(
      'kgf',
    )
    expect(
      rowsOf(answered('scale-plan', { most: '150 lbf·ft', distance: '15 in' }), 'points')[0]?.['force']?.unit,
    ).toBe('lbf')
  })

  it('is told in the usual others beside it', () => {
    const also = resultOf(
      answered('adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter: '100 mm@0' }),
      'setting',
    ).also
    expect(also.map(({ text }) => text)).toEqual(['59 lbf·ft', '708 lbf·in', '8.16 kgf·m'])
  })
})

describe('what stands beside a quantity', () => {
  it.each([
    ['N·m', 'lbf·ft lbf·in kgf·m'],
    ['lbf·ft', 'N·m lbf·in'],
    ['lbf·in', 'N·m lbf·ft'],
    ['ozf·in', 'N·m lbf·in'],
    ['kgf·m', 'N·m lbf·ft'],
    ['kgf·cm', 'N·m lbf·in'],
    ['mm', 'in'],
    ['cm', 'in'],
    ['m', 'ft in'],
    ['in', 'mm'],
    ['ft', 'm in'],
    ['N', 'lbf kgf'],
    ['kN', 'lbf'],
    ['lbf', 'N kgf'],
    ['kgf', 'N lbf'],
    ['MPa', 'ksi'],
    ['psi', 'MPa'],
    ['ksi', 'MPa'],
    ['kg', 'lb'],
    ['g', 'oz'],
    ['lb', 'kg'],
    ['oz', 'g'],
  ])('in %s is the same in %s', (symbol, others) => {
    const [given] = answered('convert', { quantity: `12.5 ${symbol}` }).given
    expect(given?.also.map(({ unit }) => unit).join(' ')).toBe(others)
    for (const { value, unit } of given?.also ?? []) {
      const back = answered('convert', { quantity: `${value} ${unit}`, to: symbol })
      expect(resultOf(back, 'value').value).toBeCloseTo(12.5, 9)
    }
  })
})

describe('what was assumed', () => {
  const assumed = (question: QuestionName, inputs: Record<string, string>, system: 'metric' | 'inch' = 'metric') =>
    answered(question, inputs, system)
      .given.filter(({ from }) => from !== 'asked')
      .map(({ input, text, from }) => `${input} ${text} ${from}`)

  it('of an adapter: straight, the hand at the lever, ±4 %, 3 mm, 12 mm, 3° and 5°', () => {
    expect(assumed('adapter-setting', { torque: '120 N·m', lever: '380 mm', adapter: '45 mm' })).toEqual([
      'angle 0° assumed',
      'hand 380 mm assumed',
      'tolerance 4 % assumed',
      'length-doubt 3 mm assumed',
      'hand-doubt 12 mm assumed',
      'angle-doubt 3° assumed',
      'square-doubt 5° assumed',
    ])
  })

  it('of lengths in inches: an eighth', () => {
    expect(assumed('adapter-setting', { torque: '90 lbf·ft', lever: '15 in', adapter: '2 in@90' })).toContain(
      'length-doubt 0.125 in assumed',
    )
  })

  it.each<[string, Record<string, string>, string]>([
    ['a wrench above 10 N·m', { most: '200 N·m' }, 'tolerance 4 % assumed'],
    ['a wrench up to 10 N·m', { most: '10 N·m' }, 'tolerance 6 % assumed'],
    ['a deflecting beam', { 'wrench-type': 'beam' }, 'tolerance 6 % assumed'],
    ['a dial wrench', { 'wrench-type': 'dial' }, 'tolerance 4 % assumed'],
  ])('of the tolerance of %s', (_, more, expected) => {
    expect(assumed('adapter-setting', { torque: '8 N·m', lever: '200 mm', adapter: '20 mm@0', ...more })).toContain(
      expected,
    )
  })

  it('is nothing that was told: angle, hand, tolerance, pivot', () => {
    const told = assumed('adapter-setting', {
      torque: '120 N·m',
      lever: '380 mm',
      adapter: '45 mm',
      angle: '30',
      hand: '300 mm',
      pivot: '20 mm',
      tolerance: '3 %',
    })
    expect(told).toEqual([
      'length-doubt 3 mm assumed',
      'hand-doubt 12 mm assumed',
      'angle-doubt 3° assumed',
      'square-doubt 5° assumed',
    ])
  })

  it('of a pivot that matters: its span, as a span', () => {
    const answer = answered('adapter-setting', {
      torque: '120 N·m',
      lever: '400 mm',
      adapter: '45 mm@0',
      hand: '300 mm',
    })
    expect(answer.given.find(({ input }) => input === 'pivot')).toMatchObject({
      low: 0,
      high: expect.closeTo(40, 9),
      text: '0 to 40 mm',
      from: 'assumed',
    })
  })

  it('of friction is from a table, with its span', () => {
    const answer = answered('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled' })
    const table = answer.given.filter(({ from }) => from === 'table')
    expect(table.map(({ input, low, value, high }) => [input, low, value, high])).toEqual([
      ['k-from', 0.15, 0.2, 0.3],
      ['k-to', 0.1, 0.18, 0.26],
    ])
  })

  it('of the basis of a tolerance, and of a limit that nobody told', () => {
    expect(assumed('tolerance-band', { setting: '100 N·m', tolerance: '4 %' })).toEqual(['of reading assumed'])
    expect(assumed('scale-plan', { most: '8 N·m', distance: '200 mm' })).toEqual(['tolerance 6 % assumed'])
    expect(assumed('pull', { torque: '100 N·m', lever: '400 mm' })).toEqual(['hand 400 mm assumed'])
  })
})

describe('what went in', () => {
  it('is echoed as it was typed, in canonical spelling, with its other units', () => {
    const answer = answered('adapter-setting', {
      torque: '101,25 ft-lbs',
      lever: '14 1/2"',
      adapter: '2 in @ 45 + 40 mm',
    })
    const shown = answer.given.filter(({ from }) => from === 'asked')
    expect(shown.map(({ input, text, index, angle }) => [input, text, index, angle])).toEqual([
      ['torque', '101.25 lbf·ft', undefined, undefined],
      ['lever', '14.5 in', undefined, undefined],
      ['adapter', '2 in@45°', 0, 45],
      ['adapter', '40 mm', 1, undefined],
    ])
    expect(shown[1]?.also.map(({ text }) => text)).toEqual(['368 mm'])
  })

  it('of a size is its name, and its diameter the value', () => {
    const answer = answered('nut-factor', { size: 'm12 x 1.5', torque: '60 N·m', 'clamp-force': '24 kN' })
    expect(answer.given[0]).toMatchObject({ input: 'size', text: 'M12x1.5', value: 12, unit: 'mm' })
  })
})

describe('sources', () => {
  it('are listed once each, with where to look and how far they carry', () => {
    const { sources } = answered('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled' })
    const keys = sources.map(({ title, where }) => `${title} ${where}`)
    expect(new Set(keys).size).toBe(keys.length)
    for (const { where, standing } of sources) {
      expect(where).not.toBe('')
      expect(standing).toMatch(/^(published|common practice|from memory|measured here|worked out)$/)
    }
  })
})
