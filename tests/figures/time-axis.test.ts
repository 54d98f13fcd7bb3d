// The time axis: days to scale, marks of the calendar that keep apart.
import { describe, expect, it } from 'vitest'
import { timeAxis } from '../../src/figures/time-axis.ts'

describe('a time axis', () => {
  it.each([
    ['2020-01-10', '2025-06-01', ['2021', '2022', '2023', '2024', '2025']],
    ['2025-02-01', '2025-08-15', ['2025-02', '2025-03', '2025-04', '2025-05', '2025-06', '2025-07', '2025-08']],
    ['2000-05-01', '2060-05-01', ['2010', '2020', '2030', '2040', '2050', '2060']],
    ['2025-01-03', '2025-01-20', ['2025-01-03', '2025-01-20']],
    ['2025-01-03', '2025-01-03', ['2025-01-03']],
  ])('from %s to %s is marked at %j', (first, last, marks) => {
    const { ticks, at } = timeAxis(first, last, 100, 1100, 7)
    expect(ticks.map(({ text }) => text)).toEqual(marks)
    for (const { x } of ticks) expect(x >= 100 && x <= 1100).toBe(true)
    expect(at(first)).toBeLessThanOrEqual(at(last))
  })
})
