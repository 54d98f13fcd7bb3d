// adapter-reading: what the fastener got. The same lever as adapter-setting, read the other way round.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf } from '../support/desk.ts'
import { SEED } from '../support/random.ts'

const straight = { reading: '87.5 lbf·ft', lever: '14 in', adapter: '2 in@0' }

describe('the torque at the fastener', () => {
  it('is the reading times the factor', () => {
    const answer = answered('adapter-reading', straight)
    expect(numberOf(answer, 'torque')).toBeCloseTo(100, 9)
    expect(numberOf(answer, 'factor')).toBeCloseTo(16 / 14, 12)
    expect(numberOf(answer, 'effective-lever')).toBeCloseTo(16, 9)
  })

  it('comes with its 95 % band, in the headline too', () => {
    const answer = answered('adapter-reading', straight)
    const { low, high } = resultOf(answer, 'torque')
    expect((low ?? 0) / 100).toBeCloseTo(0.96, 2)
    expect((high ?? 0) / 100).toBeCloseTo(1.04, 2)
    expect(answer.headline).toBe(
      'With 87.5 lbf·ft on the wrench the fastener got 100 lbf·ft (95 %: 96 lbf·ft to 104 lbf·ft).',
    )
  })

  it('has a wider band the worse the wrench is', () => {
    const width = (tolerance: string): number => {
      const { low = 0, high = 0 } = resultOf(answered('adapter-reading', { ...straight, tolerance }), 'torque')
      return high - low
    }
    expect(width('2 %')).toBeLessThan(width('4 %'))
    expect(width('4 %')).toBeLessThan(width('6 %'))
  })

  it(`undoes adapter-setting, whatever the geometry (seed ${SEED})`, () => {
    const number = (min: number, max: number) =>
      fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10)
    fc.assert(
      fc.property(
        number(5, 300),
        number(200, 900),
        number(10, 90),
        number(-180, 180),
        number(150, 950),
        number(0, 60),
        (T, L, E, angle, H, p) => {
          const wrench = { lever: `${L} mm`, adapter: `${E} mm@${angle}`, hand: `${H} mm`, pivot: `${p} mm` }
          const S = numberOf(answered('adapter-setting', { ...wrench, torque: `${T} N·m` }), 'setting')
          const back = numberOf(answered('adapter-reading', { ...wrench, reading: `${S.toFixed(9)} N·m` }), 'torque')
          expect(back / T).toBeCloseTo(1, 8)
        },
      ),
      { seed: SEED, numRuns: 200 },
    )
  })
})

it('takes the middle of what its kind of wrench has for a pivot, as hand-position does', () => {
  const wrench = { lever: '400 mm', hand: '200 mm', 'wrench-type': 'click' }
  const bare = numberOf(answered('hand-position', { ...wrench, setting: '100 N·m' }), 'torque')
  const through = answered('adapter-reading', { ...wrench, reading: '100 N·m', adapter: '50 mm@90' })
  expect(numberOf(through, 'torque')).toBeCloseTo(bare, 9)
})

describe('an unknown pivot with the hand closer in', () => {
  const off = { reading: '40 lbf·ft', lever: '14 in', hand: '10 in', adapter: '2 in@0' }

  it('is told at the middle of what the pivot may be, with a band that holds both ends', () => {
    const { value, low, high } = resultOf(answered('adapter-reading', off), 'torque')
    expect(value).toBeCloseTo((40 * 13.3 * 12) / (14 * 9.3), 9)
    expect(low).toBeLessThan(48)
    expect(high).toBeGreaterThan((40 * 12.6 * 12) / (14 * 8.6))
  })

  it('shows the torque at both ends in a step', () => {
    expect(answered('adapter-reading', off).steps.map(({ numbers }) => numbers)).toContain('48 lbf·ft … 50.233 lbf·ft')
  })

  it('shows no such step where the pivot is known or has no say', () => {
    for (const more of [{ pivot: '1 in' }, { 'wrench-type': 'dial' }, { hand: '14 in' }]) {
      const { steps } = answered('adapter-reading', { ...off, ...more })
      expect(steps.map(({ formula }) => formula)).not.toContain('T at both ends of p')
    }
  })
})

describe('what it refuses and warns of', () => {
  it('is what adapter-setting does', () => {
    expect(codesOf(ask('adapter-reading', { ...straight, adapter: '14 in@180' }))).toEqual(['behind-the-hand'])
    expect(codesOf(ask('adapter-reading', { ...straight, reading: '20–24 lb-ft' }))).toEqual(['not-allowed'])
    expect(codesOf(ask('adapter-reading', { ...straight, reading: '20 Nm + 90°' }))).toEqual(['angle-stage'])
    expect(cautionsOf(answered('adapter-reading', { ...straight, adapter: '2 in@180' }))[0]).toBe('one-hand')
  })

  it('offers what to dial for the torque that was read, with the same hand and wrench', () => {
    const [link] = answered('adapter-reading', { ...straight, hand: '12 in', pivot: '1 in', tolerance: '3 %' }).related
    expect(link?.question).toBe('adapter-setting')
    expect(link?.inputs).toMatchObject({ torque: '87.5 lbf·ft', hand: '12 in', pivot: '1 in', tolerance: '3 %' })
  })
})
