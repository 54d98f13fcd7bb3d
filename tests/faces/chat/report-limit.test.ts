// What may be told of wrong answers, and how often: memory is bounded, and what did not arrive may be told again.
import { expect, it } from 'vitest'
import { createReportLimit } from '../../../src/faces/chat/answer/report-limit.ts'

const reporter = { user: '1', server: '2', message: '3' }

it('what did not arrive may be told again', () => {
  const limit = createReportLimit(() => 0)
  expect(limit.admit(reporter)).toBe('open')
  expect(limit.admit(reporter)).toBe('again')
  limit.giveBack(reporter)
  expect(limit.admit(reporter)).toBe('open')
})

it('what did not arrive counts in the minute', () => {
  const limit = createReportLimit(() => 0)
  for (let n = 0; n < 5; n++) {
    limit.admit(reporter)
    limit.giveBack(reporter)
  }
  expect(limit.admit(reporter)).toBe('many')
})

it('so many are held and no more: the oldest is forgotten', () => {
  const limit = createReportLimit(() => 0)
  for (let n = 0; n <= 10_000; n++)
    expect(limit.admit({ user: '1', server: String(n), message: String(n) })).toBe('open')
  expect(limit.admit({ user: '1', server: 'x', message: '10000' })).toBe('again')
  expect(limit.admit({ user: '1', server: 'y', message: '0' })).toBe('open')
})
