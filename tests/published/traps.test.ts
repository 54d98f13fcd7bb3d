// Where published sources disagree about adapters: one test for each, that the desk does not step into it.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, numberOf, resultOf, rowsOf } from '../support/desk.ts'

const manual = { torque: '120 lbf·ft', lever: '12 in', adapter: '2 in' }

describe('a direction that is not told', () => {
  const answer = answered('adapter-setting', manual)

  it('is taken as straight ahead, shown as assumed, and warned of', () => {
    expect(resultOf(answer, 'setting').text).toBe('102.9 lbf·ft')
    expect(answer.given).toContainEqual(expect.objectContaining({ input: 'angle', value: 0, from: 'assumed' }))
    expect(cautionsOf(answer)).toContain('direction-assumed')
  })

  it('has both printed answers, 103 and 144, side by side in the directions', () => {
    const settings = rowsOf(answer, 'directions').map((row) => Math.round(row['setting']?.value ?? 0))
    expect(settings).toContain(103)
    expect(settings).toContain(144)
  })

  it('is offered as a question of its own: square and pointing back', () => {
    const adapters = answer.related.map(({ inputs }) => inputs['adapter'])
    expect(adapters).toEqual(expect.arrayContaining(['2 in@90°', '2 in@180°']))
  })

  it('is warned of no more once it is told, though nothing else changes', () => {
    const told = answered('adapter-setting', { ...manual, adapter: '2 in@0' })
    expect(cautionsOf(told)).not.toContain('direction-assumed')
    expect(numberOf(told, 'setting')).toBe(numberOf(answer, 'setting'))
  })
})

describe('rounding', () => {
  const asked = { lever: '22 in', adapter: '3 in@0' }

  it('is done once, at the end: 25.8 N·m gives 22.7, never 23.0 or 23.1', () => {
    const metric = answered('adapter-setting', { ...asked, torque: '25.8 N·m' })
    expect(numberOf(metric, 'setting')).toBeCloseTo(22.704, 9)
    expect(resultOf(metric, 'setting').text).toBe('22.7 N·m')
  })

  it('never passes into another unit: 19 lbf·ft gives 16.72, and beside it 22.7 N·m from that', () => {
    const inch = resultOf(answered('adapter-setting', { ...asked, torque: '19 lbf·ft' }), 'setting')
    expect(inch.value).toBeCloseTo(16.72, 9)
    expect(inch.also.find(({ unit }) => unit === 'N·m')?.value).toBeCloseTo(16.72 * 1.3558179483314, 9)
    expect(inch.also.find(({ unit }) => unit === 'N·m')?.text).toBe('22.7 N·m')
  })
})

describe('lengths that a print mixes up', () => {
  it('are shown as they went in, with what was made of them: 20 in, 2 in, together 22 in', () => {
    const answer = answered('adapter-setting', { torque: '100 lbf·ft', lever: '20 in', adapter: '2 in@0' })
    const shown = answer.given.filter(({ from }) => from === 'asked').map(({ input, text }) => `${input} ${text}`)
    expect(shown).toEqual(['torque 100 lbf·ft', 'lever 20 in', 'adapter 2 in@0°'])
    expect(resultOf(answer, 'effective-lever').text).toBe('22 in')
    expect(answer.steps.map(({ numbers }) => numbers)).toContain('22 in / 20 in')
  })

  it('give different answers, so that the sentence (1 in) and the arithmetic (1.25 in) cannot pass for one', () => {
    const of = (adapter: string): string =>
      resultOf(answered('adapter-setting', { torque: '100 lbf·ft', lever: '12 in', adapter }), 'setting').text
    expect(of('1 in@0')).toBe('92.3 lbf·ft')
    expect(of('1.25 in@0')).toBe('90.6 lbf·ft')
  })

  it('are asked for from centre to centre, the adapter’s own and not the total', () => {
    const answer = ask('adapter-setting', { torque: '100 lbf·ft' })
    const measure = Object.fromEntries(answer.missing.map((one) => [one.input, one.measure]))
    expect(measure['lever']).toMatch(/centre .* to the centre/i)
    expect(measure['adapter']).toMatch(/centre .* to the centre.*not end to end/i)
  })
})

describe('the cosine rule', () => {
  it.each([0, 30, 45, 60, 90, 120, 135, 150, 180])(
    'adds at %d°, and claims more torque than set only below 90°',
    (angle) => {
      const answer = answered('adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter: `100 mm@${angle}` })
      const expected = 400 + 100 * Math.cos((angle * Math.PI) / 180)
      expect(numberOf(answer, 'effective-lever')).toBeCloseTo(expected, 9)
      const factor = numberOf(answer, 'factor')
      if (angle < 90) expect(factor).toBeGreaterThan(1)
      else if (angle === 90) expect(factor).toBe(1)
      else expect(factor).toBeLessThan(1)
    },
  )
})

describe('a torque that is tied to a special tool and a lever length', () => {
  it.each([
    ['adapter-setting', { torque: '76 N·m', lever: '345 mm', adapter: '60 mm' }],
    ['adapter-reading', { reading: '76 N·m', lever: '345 mm', adapter: '60 mm' }],
    ['end-fitting', { torque: '76 N·m', lever: '345 mm', 'fitting-change': '60 mm' }],
  ] as const)('is warned of by %s every time: it is corrected already', (question, inputs) => {
    const answer = answered(question, inputs)
    expect(answer.cautions.find(({ code }) => code === 'already-corrected')?.text).toMatch(/do not correct it twice/)
  })
})
