// Days as ISO 8601 writes them: those that there are are read, all others are told apart by what is wrong with them.
import { describe, expect, it } from 'vitest'
import { parseDate } from '../../src/core/parse-date.ts'

const tellOf = (text: string): string | undefined => {
  const day = parseDate(text, 'last-check')
  return day.ok ? undefined : day.faults.map(({ tell }) => tell).join()
}

describe('a day', () => {
  it.each(['2026-03-01', ' 2026-03-01 ', '2024-02-29', '2000-02-29', '2026-12-31', '1900-01-01', '2199-12-31'])(
    '%j is read',
    (text) => {
      expect(parseDate(text, 'last-check')).toEqual({ ok: true, value: text.trim() })
    },
  )

  it.each([
    ['2026-02-30', 'no-such-day'],
    ['2026-02-29', 'no-such-day'],
    ['2100-02-29', 'no-such-day'],
    ['2026-04-31', 'no-such-day'],
    ['2026-01-00', 'no-such-day'],
    ['2026-13-01', 'not-a-date'],
    ['2026-00-01', 'not-a-date'],
    ['01.03.2026', 'not-a-date'],
    ['3/1/2026', 'not-a-date'],
    ['2026-3-1', 'not-a-date'],
    ['20260301', 'not-a-date'],
    ['2026-03-01T08:00', 'not-a-date'],
    ['yesterday', 'not-a-date'],
    ['1026-03-01', 'year-out-of-range'],
    ['9999-01-01', 'year-out-of-range'],
    ['', 'empty'],
    ['2026-03-01'.padEnd(100), 'too-long'],
  ])('%j is refused: %s', (text, tell) => {
    expect(tellOf(text)).toBe(tell)
  })

  it('that there is not is told with the last one of its month', () => {
    const day = parseDate('2026-02-30', 'last-check')
    expect(day.ok ? {} : day.faults[0]?.facts).toEqual({ last: '2026-02-28' })
  })
})
