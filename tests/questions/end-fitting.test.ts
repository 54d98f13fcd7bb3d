// end-fitting: what to dial when the head is longer or shorter than the one that the wrench was calibrated with.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, numberOf, resultOf } from '../support/desk.ts'

const base = { torque: '100 N·m', lever: '400 mm' }

describe('the setting', () => {
  it.each([
    ['50 mm', (100 * 400) / 450, 'a longer head lowers it'],
    ['-50 mm', (100 * 400) / 350, 'a shorter head raises it'],
    ['−50 mm', (100 * 400) / 350, 'a minus sign of its own'],
    ['0 mm', 100, 'the same head leaves it'],
    ['2 in', (100 * 400) / 450.8, 'inches beside millimetres'],
  ])('with %s is %d: %s', (change, expected) => {
    const answer = answered('end-fitting', { ...base, 'fitting-change': change })
    expect(numberOf(answer, 'setting')).toBeCloseTo(expected, 9)
    expect(numberOf(answer, 'factor')).toBeCloseTo(100 / expected, 9)
  })

  it('is had for 108 from 1.12 in on 14: 100', () => {
    const inputs = { torque: '108 lbf·ft', lever: '14 in', 'fitting-change': '1.12 in' }
    expect(answered('end-fitting', inputs).headline).toBe(
      'Set 100 lbf·ft on the wrench: the fastener gets 108 lbf·ft through this head.',
    )
  })
})

it('takes a span: the middle with both ends', () => {
  const answer = answered('end-fitting', { ...base, torque: '90–110 N·m', 'fitting-change': '50 mm' })
  expect(resultOf(answer, 'setting')).toMatchObject({
    value: expect.closeTo((100 * 400) / 450, 9),
    low: expect.closeTo((90 * 400) / 450, 9),
    high: expect.closeTo((110 * 400) / 450, 9),
  })
  expect(answer.headline).toContain('(80 N·m to 97.8 N·m for the ends)')
})

describe('what it warns of and refuses', () => {
  it('asks first to which head the lever was measured', () => {
    expect(cautionsOf(answered('end-fitting', { ...base, 'fitting-change': '50 mm' }))).toEqual([
      'which-fitting',
      'already-corrected',
      'critical-joint',
      'maker-first',
    ])
  })

  it.each(['-400 mm', '-500 mm', '-399.9999 mm'])(
    'a head that is shorter by %s than the lever is refused',
    (change) => {
      const { faults } = ask('end-fitting', { ...base, 'fitting-change': change })
      expect(faults.map(({ input, code }) => [input, code])).toEqual([['fitting-change', 'out-of-range']])
    },
  )

  it.each(['20 Nm + 90°', '20 Nm then 1/2 turn'])('a torque with a turn behind it (%s) is two stages', (torque) => {
    const { faults } = ask('end-fitting', { ...base, torque, 'fitting-change': '50 mm' })
    expect(faults.map(({ input, code }) => [input, code])).toEqual([['torque', 'angle-stage']])
    expect(faults[0]?.hint).toMatch(/no lever changes the turn/)
  })
})
