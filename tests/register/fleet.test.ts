// The shop at a glance: the order in which wrenches hang, what is due, out, away or never checked.
import { describe, expect, it } from 'vitest'
import { endOfMonth, type FleetRow, fleetOf } from '../../src/register/fleet.ts'
import { statuses } from '../../src/register/status-rules.ts'
import { bookOf, card, event, tested } from './shop.ts'

const good = [[60, [60]]] as const
const tags = (rows: readonly FleetRow[]): string[] => rows.map(({ folder }) => folder.tag)

describe('the fleet', () => {
  const book = bookOf(
    card('W-10', { place: 'Bay 1' }),
    card('W-2', { place: 'Bay 1' }),
    card('W-3', { place: 'Bay 10' }),
    card('W-4', { place: 'Bay 2' }),
    card('A-1'),
    card('W-6', { place: 'Bay 2' }),
    card('W-7', { place: 'Bay 2' }),
    tested('c10', '2025-06-10', good, { tag: 'W-10' }),
    tested('c2', '2025-06-30', good, { tag: 'W-2' }),
    tested('c3', '2025-07-01', good, { tag: 'W-3' }),
    tested('c4', '2026-03-01', [[60, [50]]], { tag: 'W-4' }),
    tested('c6', '2025-06-01', good, { tag: 'W-6' }),
    event('e6', 'lost', '2026-01-01', { tag: 'W-6' }),
    tested('c7', '2025-05-01', good, { tag: 'W-7' }),
    event('e7', 'dropped', '2026-01-01', { tag: 'W-7' }),
  )
  const fleet = fleetOf(book, { today: '2026-06-15' })

  it('hangs by place, then by tag as people count, those without a place last', () => {
    expect(tags(fleet.rows)).toEqual(['W-2', 'W-10', 'W-4', 'W-6', 'W-7', 'W-3', 'A-1'])
  })

  it('tells what is due by the end of the month, the earliest first, and leaves out what is away', () => {
    expect(tags(fleet.dueThisMonth)).toEqual(['W-7', 'W-10', 'W-2'])
    expect(tags(fleetOf(book, { today: '2026-07-01' }).dueThisMonth)).toEqual(['W-7', 'W-10', 'W-2', 'W-3'])
  })

  it('tells what is out, away, never checked, to be checked before use, and counts each once', () => {
    expect(tags(fleet.outOfLimit)).toEqual(['W-4'])
    expect(tags(fleet.setAside)).toEqual(['W-6'])
    expect(tags(fleet.neverChecked)).toEqual(['A-1'])
    expect(tags(fleet.checkBeforeUse)).toEqual(['W-7'])
    expect(Object.keys(fleet.counts)).toEqual([...statuses])
    expect(Object.values(fleet.counts).reduce((sum, count) => sum + count, 0)).toBe(7)
  })

  it.each([
    ['2026-02-10', '2026-02-28'],
    ['2028-02-01', '2028-02-29'],
    ['2026-12-31', '2026-12-31'],
    ['2026-04-30', '2026-04-30'],
  ])('the month of %s ends on %s', (day, end) => {
    expect(endOfMonth(day)).toBe(end)
  })
})
