// Bodies and headers that nobody means well with: always an answer, never a broken one, nothing dropped.
import { describe, expect, it } from 'vitest'
import { readBody } from '../../../src/faces/http/body.ts'
import { ask } from '../../support/desk.ts'

const deep = (depth: number): unknown => JSON.parse('['.repeat(depth) + ']'.repeat(depth))

describe('what is nested deeper than the stack', () => {
  it.each([8000, 200_000])('%d deep is refused like any other wrong body', (depth) => {
    expect(ask('pull', deep(depth) as never).faults[0]?.code).toBe('not-allowed')
    expect(ask('pull', { torque: deep(depth) } as never).faults[0]?.code).toBe('not-allowed')
    expect(ask('pull', { other: deep(depth) } as never).faults[0]?.code).toBe('unknown-input')
  })
})

it('a member said twice is kept twice, an empty list too', () => {
  expect(readBody('{"torque":"1 Nm","torque":[]}')).toMatchObject({ torque: ['1 Nm', ''] })
  expect(readBody('{"torque":[],"torque":"1 Nm"}')).toMatchObject({ torque: ['', '1 Nm'] })
  expect(readBody('{"torque":"1 Nm","torque":[["2 Nm"]]}')).toMatchObject({ torque: ['1 Nm', ['2 Nm']] })
})

describe('thousands of wrong values', () => {
  const size = (raw: Record<string, unknown>): number => JSON.stringify(ask('scale-check', raw as never)).length

  it('are told of without an answer that grows with them', () => {
    expect(size({ distance: '1 m', force: Array(7).fill('x;'.repeat(990)) })).toBeLessThan(100_000)
    expect(JSON.stringify(ask('adapter-setting', { adapter: ';'.repeat(1900) })).length).toBeLessThan(20_000)
  })
})
