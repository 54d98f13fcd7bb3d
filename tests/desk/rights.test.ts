// Who may write what: the whole table of roles, kinds and doors through the one gate, `shop.keep`. What is forbidden writes nothing.
import { describe, expect, it } from 'vitest'
import type { Shop } from '../../src/desk/shop.ts'
import { doors, type Kind, kindNames, roles } from '../../src/register/records.ts'
import { testShop } from '../support/doors.ts'

const raws: Readonly<Record<Kind, Readonly<Record<string, string>>>> = {
  wrench: { tag: 'W-08', name: 'Quarter-inch click wrench', 'wrench-type': 'click', most: '25 N·m' },
  gauge: { tag: 'S-2', name: 'Luggage scale', 'gauge-type': 'luggage-scale' },
  check: { wrench: 'W-07', date: '2026-05-01', way: 'tester', state: 'as-found', points: '100 N·m: 100; 101 N·m' },
  event: { wrench: 'W-07', what: 'dropped', date: '2026-05-02' },
  uses: { wrench: 'W-07', date: '2026-05-02', count: '10', since: 'check' },
  run: { tag: 'B-02', date: '2026-05-02', asked: 'Does oil matter?', conditions: 'A: dry | B: oiled' },
  'run-reading': { run: 'B-01', date: '2026-05-02', condition: 'A', torque: '99; 101 N·m' },
  'run-finish': { run: 'B-01', date: '2026-05-02' },
  withdrawal: { supersedes: 'e-2', why: 'never was' },
}

/** Written out once more, by hand: a change of the table is a change of who may write. */
const allowed: Readonly<Record<(typeof roles)[number], readonly Kind[]>> = {
  mechanic: ['check', 'event', 'uses', 'run', 'run-reading', 'run-finish'],
  keeper: ['wrench', 'gauge', 'check', 'event', 'uses', 'run', 'run-reading', 'run-finish', 'withdrawal'],
  import: ['wrench', 'gauge', 'check', 'event', 'uses', 'run', 'run-reading', 'run-finish', 'withdrawal'],
}

const filled = async (): Promise<Shop> => {
  const shop = testShop()
  const keeper = { role: 'keeper', door: 'terminal' } as const
  await shop.keep('wrench', { ...raws.wrench, tag: 'W-07', most: '200 N·m' }, keeper)
  await shop.keep('gauge', { ...raws.gauge, tag: 'S-1' }, keeper)
  await shop.keep('run', { ...raws.run, tag: 'B-01' }, keeper)
  return shop
}

const table = roles.flatMap((role) => kindNames.flatMap((kind) => doors.map((door) => ({ role, kind, door }))))

describe('who may write', () => {
  it.each(table)('$role, $kind, by $door', async ({ role, kind, door }) => {
    const shop = await filled()
    const before = (await shop.since(0, 100)).length
    const kept = await shop.keep(kind, raws[kind], { role, door })
    const may = allowed[role].includes(kind)
    expect(kept.kind).toBe(may ? 'kept' : 'forbidden')
    expect((await shop.since(0, 100)).length).toBe(before + (may ? 1 : 0))
  })

  it('is told before what is wrong with it', async () => {
    const shop = await filled()
    expect((await shop.keep('wrench', { tag: '?' }, { role: 'mechanic', door: 'chat' })).kind).toBe('forbidden')
  })

  it.each(kindNames.filter((kind) => kind !== 'withdrawal' && kind !== 'wrench' && kind !== 'gauge'))(
    'a mechanic corrects no %s, a keeper does',
    async (kind) => {
      const shop = await filled()
      const first = await shop.keep(kind, raws[kind], { role: 'mechanic', door: 'chat' })
      if (first.kind !== 'kept') throw new Error(first.kind)
      const correction = { ...raws[kind], supersedes: first.entry.id, why: 'misread' }
      expect((await shop.keep(kind, correction, { role: 'mechanic', door: 'chat' })).kind).toBe('forbidden')
      expect((await shop.keep(kind, correction, { role: 'keeper', door: 'chat' })).kind).toBe('kept')
    },
  )
})
