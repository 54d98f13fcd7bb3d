// Facts of the trade from the bench: common practice, no source. Torques in lbf·ft; dialled or read, then delivered.
// They stand here alone, never in the program or its documents. Where only the direction is right, the size is a known gap.
import { describe, expect, it } from 'vitest'
import type { QuestionName } from '../../src/questions/index.ts'
import { testDesk } from '../support/doors.ts'

const desk = testDesk()
type Raw = Readonly<Record<string, string | readonly string[]>>

const ask = (question: QuestionName, raw: Raw, name: string): { value: number; low: number; high: number } => {
  const answer = desk.ask(question, raw, { door: 'terminal' })
  if (answer.status !== 'answered') throw new Error(answer.headline)
  const { value, low, high } = answer.results[name] as { value: number; low?: number; high?: number }
  return { value, low: low ?? value, high: high ?? value }
}
const lbft = (value: number): string => `${value} lbf·ft`
const got = (reading: number, adapter: string): { value: number; low: number; high: number } =>
  ask('adapter-reading', { reading: lbft(reading), lever: '14 in', adapter }, 'torque')

describe('common practice, no source: adapters on a lever of 14 in', () => {
  it('2 in straight: for 100 dial 87.5', () => {
    expect(
      ask('adapter-setting', { torque: lbft(100), lever: '14 in', adapter: '2 in@0' }, 'setting').value,
    ).toBeCloseTo(87.5, 9)
  })

  it.each([
    [101, 117, 102.4],
    [100.8, 115, 100.6],
  ])('2 in straight: a reading of %d delivered %d, and the formula leads back to %d', (reading, delivered, back) => {
    const band = got(reading, '2 in@0')
    expect(delivered).toBeGreaterThan(band.low)
    expect(delivered).toBeLessThan(band.high)
    expect(
      ask('adapter-setting', { torque: lbft(delivered), lever: '14 in', adapter: '2 in@0' }, 'setting').value,
    ).toBeCloseTo(back, 1)
  })

  it('square: 100.9 delivered 101', () => {
    expect(got(100.9, '2 in@90').value).toBeCloseTo(100.9, 9)
    expect(Math.abs(101 - got(100.9, '2 in@90').value)).toBeLessThan(0.5)
  })

  it('turned back it delivers less than it reads: 102 delivered 96', () => {
    expect(got(102, '2 in@180').value).toBeLessThan(102)
  })

  it('6 in of spanner in line: 101.2 delivered 144, which a lever of 14.2 in explains', () => {
    expect(
      ask('adapter-reading', { reading: lbft(101.2), lever: '14.2 in', adapter: '6 in@0' }, 'torque').value,
    ).toBeCloseTo(144, 0)
    const band = got(101.2, '6 in@0')
    expect(144).toBeGreaterThan(band.low)
    expect(144).toBeLessThan(band.high)
  })
})

describe('common practice, no source: hands, pipes, heads', () => {
  const held = (hand: string) =>
    ask('hand-position', { setting: lbft(75), lever: '14 in', hand, 'wrench-type': 'click' }, 'torque')

  it.each([79.6, 80])('hand near the middle: 75 delivered %d', (delivered) => {
    const band = held('7 in')
    expect(delivered).toBeGreaterThan(band.low)
    expect(delivered).toBeLessThan(band.high)
    expect(Math.abs(delivered / band.value - 1)).toBeLessThan(0.01)
  })

  it('a pipe on the handle lowers what is delivered: 75 delivered 64 to 65', () => {
    expect(held('30 in').value).toBeLessThan(75)
  })

  it.each([108, 113])('a longer head: 100 delivered %d, which 1.1 to 1.8 in on 14 explain', (delivered) => {
    const change = 14 * (delivered / 100 - 1)
    expect(change).toBeGreaterThanOrEqual(1.1)
    expect(change).toBeLessThanOrEqual(1.85)
    const back = ask(
      'end-fitting',
      { torque: lbft(delivered), lever: '14 in', 'fitting-change': `${change.toFixed(4)} in` },
      'setting',
    )
    expect(back.value).toBeCloseTo(100, 1)
  })

  it.each([49.4, 51])('50 on the wrench: a scale at 12 in shows %d lbf, within the wrench’s 4 %%', (force) => {
    const { value } = ask('scale-check', { setting: lbft(50), distance: '12 in', force: `${force} lbf` }, 'deviation')
    expect(Math.abs(value)).toBeLessThan(4)
    const plan = ask('pull', { torque: lbft(50), hand: '12 in' }, 'pull')
    expect(plan.value).toBeCloseTo(50, 9)
  })
})

describe('common practice, no source: heads, swivels, bars', () => {
  it.each([147.4, 150.1])(
    'a tilted head: 149.7 delivered %d, in the band widened by the wrench’s 4 %%',
    (delivered) => {
      const band = ask('flex-head', { torque: lbft(149.7), lever: '18 in', tilt: '15°' }, 'torque')
      expect(delivered).toBeGreaterThan(band.low * 0.96)
      expect(delivered).toBeLessThan(band.high * 1.04)
    },
  )

  it.each([
    [79, 72],
    [82, 72],
  ])(
    'a swivel at an angle: %d delivered %d, lower than the lossless band at a steep bend may say',
    (read, delivered) => {
      const band = ask('swivel', { torque: lbft(read), angle: '25°' }, 'torque')
      expect(delivered).toBeGreaterThan(band.low * 0.9)
      expect(delivered).toBeLessThan(band.high)
    },
  )

  it('ten bars on end: 76.9 delivered 74, no loss beyond the wrench’s 4 %', () => {
    const { value } = ask('extension-bar', { torque: lbft(76.9), length: '60 in', drive: '1/2' }, 'torque')
    expect(value).toBe(76.9)
    expect(Math.abs(74 / value - 1)).toBeLessThan(0.04)
  })

  it.each([79, 80])('size adapters and a straight swivel: 78.7 delivered %d, no loss', (delivered) => {
    const { value } = ask('swivel', { torque: lbft(78.7), angle: '0°' }, 'torque')
    expect(Math.abs(delivered / value - 1)).toBeLessThan(0.04)
  })
})

describe('common practice, no source: anti-seize on an M14 stud', () => {
  it.each([196, 208])(
    'dry 100 to 102, coated %d: about double, within the range, and no percentage is held to',
    (coated) => {
      const answer = desk.ask('lubricant', { torque: lbft(101), from: 'dry', to: 'anti-seize' }, { door: 'terminal' })
      const { low = 0, high = 0 } = answer.results['clamp-change'] as { low?: number; high?: number }
      const change = (coated / 101 - 1) * 100
      expect(change).toBeGreaterThan(low)
      expect(change).toBeLessThan(high)
      expect(answer.headline).toContain('No number can be given')
    },
  )
})

describe('known gaps of common practice: the direction is right, the size is not explained', () => {
  it.each([
    ['turned back: 102 delivered 96, a true 180° gives 87.4', () => got(102, '2 in@180').value, 96, 87.4],
    [
      'a pipe: 75 delivered 64 to 65, the kind of wrench gives 72.5',
      () =>
        ask('hand-position', { setting: lbft(75), lever: '14 in', hand: '30 in', 'wrench-type': 'click' }, 'torque')
          .value,
      64.5,
      72.5,
    ],
  ])('%s', (_name, worked, delivered, ours) => {
    expect(worked()).toBeCloseTo(ours, 1)
    expect(Math.abs(worked() / delivered - 1), 'it agrees now: take it off').toBeGreaterThan(0.03)
  })
})
