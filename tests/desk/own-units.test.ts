// The units of an asker's own: behind a bare number, told as assumed, and nowhere else; and an answer in the system that is wanted.
import { describe, expect, it } from 'vitest'
import { testDesk } from '../support/doors.ts'

const desk = testDesk()
const raw = { torque: '120', lever: '380', adapter: '45@30' }

describe('a bare number', () => {
  it('is refused while nobody told units of their own', () => {
    const { status, faults } = desk.ask('adapter-setting', raw, { door: 'chat' })
    expect(status).toBe('refused')
    expect(faults.map(({ input, code }) => `${input} ${code}`)).toEqual([
      'torque unit-missing',
      'lever unit-missing',
      'adapter unit-missing',
    ])
  })

  it.each([
    ['metric', { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30' }],
    ['inch', { torque: '120 lbf·ft', lever: '380 in', adapter: '45 in@30' }],
  ] as const)('takes the %s unit of its dimension, and is shown as assumed', (own, whole) => {
    const answer = desk.ask('adapter-setting', raw, { door: 'chat', own })
    const plain = desk.ask('adapter-setting', whole, { door: 'chat' })
    expect(answer.results).toEqual(plain.results)
    const from = new Map(answer.given.map((one) => [one.input, one.from]))
    expect([from.get('torque'), from.get('lever'), from.get('adapter')]).toEqual(['assumed', 'assumed', 'assumed'])
  })

  it.each([
    ['14 1/2', '14.5 in'],
    ['2½', '2.5 in'],
    ['14-1/2', '14.5 in'],
    ['14,5', '14.5 in'],
  ])('%j is read as it would be with its unit', (lever, same) => {
    const ask = (text: string, own?: 'inch') =>
      desk.ask('pull', { torque: '70 lbf·ft', lever: text }, { door: 'chat', own }).results
    expect(ask(lever, 'inch')).toEqual(ask(same))
  })

  it.each([
    ['a number that can be read two ways stays refused', { torque: '1,234', lever: '380 mm' }, 'two-readings'],
    ['a text that is no number stays refused', { torque: 'much', lever: '380 mm' }, 'not-a-number'],
    [
      'a percentage lends nothing',
      { torque: '120 N·m', lever: '380 mm', adapter: '45 mm', tolerance: '4' },
      'unit-missing',
    ],
  ])('%s', (_name, inputs, code) => {
    const { faults } = desk.ask('adapter-setting', { adapter: '45 mm', ...inputs }, { door: 'chat', own: 'metric' })
    expect(faults.map((one) => one.code)).toContain(code)
  })

  it('does not change a number that has its unit', () => {
    const inputs = { torque: '70 lbf·ft', lever: '14 in', adapter: '2 in@30' }
    expect(desk.ask('adapter-setting', inputs, { door: 'chat', own: 'metric' })).toEqual(
      desk.ask('adapter-setting', inputs, { door: 'chat' }),
    )
  })
})

describe('an answer in the other system', () => {
  const inputs = { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30' }
  const value = (shown?: 'metric' | 'inch') => {
    const { setting } = desk.ask('adapter-setting', inputs, { door: 'chat', shown }).results as Record<
      string,
      { value: number; unit: string }
    >
    return setting as { value: number; unit: string }
  }

  it('is the same torque: 1 lbf·ft is 1.3558179483314 N·m (NIST SP 811, B.8)', () => {
    expect(value().unit).toBe('N·m')
    expect(value('inch').unit).toBe('lbf·ft')
    expect(value('inch').value * 1.3558179483314).toBeCloseTo(value().value, 9)
    expect(value('metric')).toEqual(value())
  })
})
