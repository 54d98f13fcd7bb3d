// The lists of what needs doing: the same as folding the whole record, after every write, on every day.
import { describe, expect, it } from 'vitest'
import { shows } from '../../src/desk/fleet-index.ts'
import { createShop, type Writer } from '../../src/desk/shop.ts'
import { foldBook } from '../../src/register/book.ts'
import { fleetOf } from '../../src/register/fleet.ts'
import { memoryStore } from '../../src/store/memory.ts'
import { SEED, seeded } from '../support/random.ts'

const keeper: Writer = { role: 'keeper', door: 'http' }
const setUp = (day = '2026-06-15') => {
  let today = day
  let count = 0
  const store = memoryStore()
  const parts = { store, now: () => new Date(`${today}T10:00:00Z`), id: () => `e-${++count}`, timeZone: 'UTC' }
  const shop = createShop(parts)
  return {
    shop,
    /** Another process on the same store. */
    other: createShop(parts),
    store,
    on: (next: string) => {
      today = next
    },
    wrench: (tag: string) =>
      shop.keep('wrench', { tag, name: `Wrench ${tag}`, 'wrench-type': 'click', most: '200 N·m' }, keeper),
    check: (tag: string, date: string, reading: number, more: object = {}) =>
      shop.keep(
        'check',
        { wrench: tag, date, way: 'tester', state: 'as-found', points: `100 N·m: ${reading} N·m`, ...more },
        keeper,
      ),
  }
}
type SetUp = ReturnType<typeof setUp>

const tagsOf = async ({ shop }: SetUp) =>
  Object.fromEntries(
    await Promise.all(
      shows.map(async (show) => {
        const { rows } = await shop.lists.list(show, 100)
        return [show, rows.map(({ folder }) => folder.tag)] as const
      }),
    ),
  )
const folded = async ({ shop, store }: SetUp) => {
  const { dueThisMonth, checkBeforeUse, outOfLimit, neverChecked } = fleetOf(
    foldBook((await store.since(0, 10_000)).map(({ entry }) => entry)),
    shop.today(),
  )
  const tags = (rows: typeof outOfLimit) => rows.map(({ folder }) => folder.tag)
  return { due: tags(dueThisMonth), before: tags(checkBeforeUse), out: tags(outOfLimit), never: tags(neverChecked) }
}

describe('the lists', () => {
  it('tell what is due this month, to be checked before use, out of limit and never checked, and count it', async () => {
    const set = setUp()
    for (const tag of ['W-1', 'W-2', 'W-3', 'W-10']) await set.wrench(tag)
    await set.check('W-1', '2025-06-20', 100)
    await set.check('W-2', '2026-06-01', 80)
    await set.check('W-3', '2026-06-01', 100)
    await set.shop.keep('event', { wrench: 'W-3', what: 'dropped', date: '2026-06-02' }, keeper)
    expect(await tagsOf(set)).toEqual({ due: ['W-1'], before: ['W-3'], out: ['W-2'], never: ['W-10'] })
    expect(await set.shop.lists.counts()).toEqual({ due: 1, before: 1, out: 1, never: 1 })
  })

  it('follow what anybody writes, and the day', async () => {
    const set = setUp()
    await set.wrench('W-1')
    expect(await set.other.lists.counts()).toEqual({ due: 0, before: 0, out: 0, never: 1 })
    const checked = await set.check('W-1', '2025-07-20', 80)
    expect(await set.other.lists.counts()).toEqual({ due: 0, before: 0, out: 1, never: 0 })
    if (checked.kind !== 'kept') throw new Error('not kept')
    const taken = await set.shop.keep('withdrawal', { supersedes: checked.entry.id, why: 'wrong wrench' }, keeper)
    expect(taken.kind).toBe('kept')
    expect(await set.other.lists.counts()).toEqual({ due: 0, before: 0, out: 0, never: 1 })
    await set.check('W-1', '2025-07-21', 100)
    expect(await set.other.lists.counts()).toEqual({ due: 0, before: 0, out: 0, never: 0 })
    set.on('2026-07-01')
    expect(await set.other.lists.counts()).toEqual({ due: 1, before: 0, out: 0, never: 0 })
  })

  it('page by page show each wrench once', async () => {
    const set = setUp()
    for (let n = 1; n <= 7; n++) await set.wrench(`W-${n}`)
    const seen: string[] = []
    for (let after: string | undefined, pages = 0; pages < 10; pages++) {
      const page = await set.shop.lists.list('never', 3, after)
      seen.push(...page.rows.map(({ folder }) => folder.tag))
      after = page.next
      if (after === undefined) break
    }
    expect(seen).toEqual(['W-1', 'W-2', 'W-3', 'W-4', 'W-5', 'W-6', 'W-7'])
  })

  it('are those of the whole record folded, whatever was written between', async () => {
    const random = seeded(SEED)
    const set = setUp()
    const any = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)] as T
    const tags = ['W-1', 'W-2', 'W-3', 'W-4', 'W-5']
    for (const tag of tags) await set.wrench(tag)
    const gauge = await set.shop.keep(
      'gauge',
      { tag: 'S-1', name: 'Tester', 'gauge-type': 'torque-tester', tolerance: '1 %' },
      keeper,
    )
    expect(gauge.kind).toBe('kept')
    for (let n = 0; n < 60; n++) {
      const tag = any(tags)
      const date = any(['2025-05-10', '2025-06-20', '2025-08-01', '2026-01-05', '2026-06-10'])
      if (random() < 0.6) await set.check(tag, date, any([85, 100, 101, 110]), random() < 0.5 ? { gauge: 'S-1' } : {})
      else
        await set.shop.keep('event', { wrench: tag, date, what: any(['dropped', 'lost', 'found', 'adjusted']) }, keeper)
      if (n === 30) set.on('2026-08-02')
      expect(await tagsOf(set)).toEqual(await folded(set))
    }
    expect((await set.store.since(0, 1000)).length).toBeGreaterThan(40)
  })
})
