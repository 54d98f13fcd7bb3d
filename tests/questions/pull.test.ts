// pull: how hard the hand pulls for a torque, at the lever or where it really is.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, numberOf, resultOf } from '../support/desk.ts'

describe('the pull', () => {
  it.each<[string, Record<string, string>, number, string]>([
    ['at the lever', { torque: '120 N·m', lever: '400 mm' }, 300, 'N'],
    ['at the hand', { torque: '120 N·m', hand: '300 mm' }, 400, 'N'],
    ['at the hand, where both are told', { torque: '120 N·m', lever: '400 mm', hand: '300 mm' }, 400, 'N'],
    ['in pounds', { torque: '50 lbf·ft', lever: '12 in' }, 50, 'lbf'],
  ])('%s is torque over length', (_, inputs, value, unit) => {
    const answer = answered('pull', inputs)
    expect(numberOf(answer, 'pull')).toBeCloseTo(value, 9)
    expect(resultOf(answer, 'pull').unit).toBe(unit)
  })

  it('is told with where it acts', () => {
    expect(answered('pull', { torque: '120 N·m', lever: '400 mm' }).headline).toBe(
      'Pull 300 N, square to the handle, 400 mm from the drive for 120 N·m.',
    )
  })
})

describe('what is needed', () => {
  it('is lever or hand: one is asked for', () => {
    expect(ask('pull', { torque: '120 N·m' }).missing.map(({ input }) => input)).toEqual(['lever'])
  })

  it('is not asked for again where the hand was tried and failed', () => {
    const answer = ask('pull', { torque: '120 N·m', hand: '300' })
    expect(answer.faults.map(({ input }) => input)).toEqual(['hand'])
    expect(answer.missing).toEqual([])
  })
})

describe('what it warns of', () => {
  it('is a steady pull, and a pipe where the hand is past the lever', () => {
    const at = (hand: string) => cautionsOf(answered('pull', { torque: '120 N·m', lever: '400 mm', hand }))
    expect(at('400 mm')).toEqual(['steady-pull', 'maker-first'])
    expect(at('600 mm')).toEqual(['no-pipe', 'steady-pull', 'maker-first'])
  })
})
