// What stands on the board is what stands on the page of the wrench, whatever happened to it; and rows of an older fold are mended.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cardsOf } from '../../src/desk/card-rows.ts'
import { foldAnew } from '../../src/desk/fold-anew.ts'
import { createShop, type Shop, type Writer } from '../../src/desk/shop.ts'
import { foldBook } from '../../src/register/book.ts'
import type { Entry } from '../../src/register/records.ts'
import { memoryStore } from '../../src/store/memory.ts'
import type { Store } from '../../src/store/store.ts'
import { SEED } from '../support/random.ts'
import { onEveryStore } from '../support/stores.ts'

const keeper: Writer = { role: 'keeper', door: 'http' }
const day = { today: '2026-06-15' }
const shopOn = (store: Store): Shop => {
  let count = 0
  return createShop({
    store,
    now: () => new Date(`${day.today}T10:00:00Z`),
    id: () => `e-${++count}`,
    timeZone: 'UTC',
  })
}
const card = { tag: 'W-1', name: 'Small', 'wrench-type': 'click', least: '40 N·m', most: '200 N·m' }
const tester = { tag: 'T-1', name: 'Tester', 'gauge-type': 'torque-tester', tolerance: '1 %' }
const checkOf = (reading: number, date: string, state: string) => ({
  wrench: 'W-1',
  date,
  way: 'tester',
  state,
  gauge: 'T-1',
  points: `100 N·m: ${reading} N·m`,
})
const standing = async (shop: Shop) => {
  const page = (await shop.wrench('W-1'))?.row.status
  const board = (await shop.board(10)).rows[0]?.status
  const strip = (one: typeof page) => one && { status: one.status, reasons: one.reasons, due: one.due }
  return { page: strip(page), board: strip(board) }
}

const events = ['dropped', 'adjusted', 'repaired', 'lent', 'returned', 'lost', 'found', 'wound-up'] as const
const days = ['2026-01-01', '2026-02-10', '2026-02-11', '2026-05-01', '2026-06-15'] as const
type Step =
  | { readonly is: 'check'; readonly reading: number; readonly date: string; readonly state: string }
  | { readonly is: 'event'; readonly what: string; readonly date: string }
  | { readonly is: 'uses'; readonly count: number; readonly date: string }
  | { readonly is: 'take back' | 'change'; readonly which: number; readonly date: string }
const date = fc.constantFrom(...days)
const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({
    is: fc.constant('check' as const),
    reading: fc.constantFrom(80, 96.5, 100, 103.5),
    date,
    state: fc.constantFrom('as-found', 'as-left'),
  }),
  fc.record({ is: fc.constant('event' as const), what: fc.constantFrom(...events), date }),
  fc.record({ is: fc.constant('uses' as const), count: fc.nat(9000), date }),
  fc.record({ is: fc.constantFrom('take back' as const, 'change' as const), which: fc.nat(20), date }),
)

const play = async (shop: Shop, steps: readonly Step[]): Promise<void> => {
  for (const one of steps) {
    if (one.is === 'check') await shop.keep('check', checkOf(one.reading, one.date, one.state), keeper)
    if (one.is === 'event') await shop.keep('event', { wrench: 'W-1', what: one.what, date: one.date }, keeper)
    if (one.is === 'uses')
      await shop.keep('uses', { wrench: 'W-1', count: String(one.count), date: one.date, since: 'check' }, keeper)
    if (one.is !== 'take back' && one.is !== 'change') continue
    const folder = (await shop.wrench('W-1'))?.row.folder
    const all = [...(folder?.checks ?? []), ...(folder?.events ?? [])]
    const meant = all.length > 0 ? all[one.which % all.length]?.entry : undefined
    if (!meant) continue
    const told = { supersedes: meant.id, why: 'it was otherwise' }
    if (one.is === 'take back') await shop.keep('withdrawal', told, keeper)
    else if (meant.kind === 'event')
      await shop.keep('event', { wrench: 'W-1', what: meant.body.what, date: one.date, ...told }, keeper)
    else await shop.keep('check', { ...checkOf(100, one.date, 'as-found'), ...told }, keeper)
  }
}

describe('a row of the board', () => {
  it('of a wrench that was lent and came back is in service after its check, and due again', async () => {
    const shop = shopOn(memoryStore())
    await shop.keep('gauge', tester, keeper)
    await shop.keep('wrench', card, keeper)
    for (const [what, on] of [
      ['lent', '2026-01-01'],
      ['returned', '2026-01-05'],
    ])
      await shop.keep('event', { wrench: 'W-1', what, date: on }, keeper)
    await shop.keep('check', checkOf(100, '2026-02-01', 'as-found'), keeper)
    expect((await standing(shop)).board?.status).toBe('in-service')
    expect((await shop.due()).map(({ tag }) => tag)).toEqual(['W-1'])
  })

  it('says what the page of the wrench says, after any history', async () => {
    const seen = new Set<string>()
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
        const shop = shopOn(memoryStore())
        await shop.keep('gauge', tester, keeper)
        await shop.keep('wrench', card, keeper)
        await play(shop, steps)
        const { page, board } = await standing(shop)
        expect(board).toEqual(page)
        if (page) seen.add(page.status)
      }),
      { numRuns: 120, seed: SEED },
    )
    expect([...seen].sort()).toEqual(['check-before-use', 'check-due', 'in-service', 'out-of-limit', 'set-aside'])
  })
})

onEveryStore('rows of an older fold', (open) => {
  it('are folded anew once, when the register is opened', async () => {
    const store = await open()
    const shop = shopOn(store)
    await shop.keep('gauge', tester, keeper)
    await shop.keep('wrench', card, keeper)
    await shop.keep('event', { wrench: 'W-1', what: 'lent', date: '2026-01-01' }, keeper)
    await shop.keep('event', { wrench: 'W-1', what: 'returned', date: '2026-01-05' }, keeper)
    const history = await store.history('W-1')
    const [row] = cardsOf(foldBook(history.map(({ entry }) => entry)), 'W-1', day)
    if (!row) throw new Error('no row')
    // As the older program wrote it with the check: without what ended the lending.
    const old = {
      ...row,
      summary: (row.summary as readonly Entry[]).filter(
        ({ kind, body }) => kind !== 'event' || !('what' in body) || body.what !== 'returned',
      ),
    }
    const check: Entry = {
      id: 'late',
      at: '2026-06-15T10:00:00.000Z',
      by: { role: 'keeper', door: 'http' },
      kind: 'uses',
      body: { wrench: 'W-1', date: '2026-02-01', count: 1, since: 'check' },
    }
    await store.append({ entries: [check], expects: [{ tag: 'W-1', seq: history.at(-1)?.seq ?? 0 }], cards: [old] })
    expect((await standing(shop)).board?.status).toBe('set-aside')
    await foldAnew(store, day, '2026-06-15T10:00:00.000Z')
    const { page, board } = await standing(shop)
    expect(board).toEqual(page)
    expect(board?.status).toBe('check-before-use')
    let folds = 0
    await foldAnew({ ...store, rebuild: async () => ++folds }, day, '2026-06-15T10:00:00.000Z')
    expect(folds).toBe(0)
  })
})
