// A gauge that stands behind a verdict is not taken back, by whatever way: typed, in a sheet, or while its check is being sent.
import { describe, expect, it } from 'vitest'
import { createShop, type Keeping, type Shop, type Writer } from '../../src/desk/shop.ts'
import { memoryStore } from '../../src/store/memory.ts'
import type { Store } from '../../src/store/store.ts'

const keeper: Writer = { role: 'keeper', door: 'http' }
const shopOn = (store: Store, ids = 'e'): Shop => {
  let count = 0
  const now = () => new Date('2026-06-15T10:00:00Z')
  return createShop({ store, now, id: () => `${ids}-${++count}`, timeZone: 'UTC' })
}
const idOf = (one: Keeping): string => {
  if (one.kind !== 'kept') throw new Error(JSON.stringify(one))
  return one.entry.id
}
const tells = (one: { readonly kind: string }): string[] =>
  'faults' in one ? (one.faults as ReadonlyArray<{ readonly tell: string }>).map(({ tell }) => tell) : [one.kind]

const tester = { tag: 'T-1', name: 'Tester', 'gauge-type': 'torque-tester', tolerance: '1 %' }
const card = { name: 'Small', 'wrench-type': 'click', most: '200 N·m' }
const checkWith = (gauge: string, more: object = {}) => ({
  wrench: 'W-1',
  date: '2026-06-01',
  way: 'tester',
  state: 'as-found',
  points: '100 N·m: 96.5 N·m',
  gauge,
  ...more,
})
const setUp = async (store: Store = memoryStore()) => {
  const shop = shopOn(store)
  idOf(await shop.keep('wrench', { ...card, tag: 'W-0' }, keeper))
  idOf(await shop.keep('wrench', { ...card, tag: 'W-1' }, keeper))
  const gauge = idOf(await shop.keep('gauge', tester, keeper))
  const takeBack = { supersedes: gauge, why: 'typed twice' }
  return { shop, gauge, takeBack }
}

describe('a gauge', () => {
  it('that a check was made with is not taken back, and its verdict stays', async () => {
    const { shop, takeBack } = await setUp()
    idOf(await shop.keep('check', checkWith('t-1'), keeper))
    const verdict = async () => (await shop.wrench('W-1'))?.row.status.lastCheck?.judged.verdict
    expect(await verdict()).toBe('pass-in-doubt')
    expect(tells(await shop.keep('withdrawal', takeBack, keeper))).toEqual(['card-in-use'])
    expect(tells(await shop.judge('withdrawal', takeBack, keeper))).toEqual(['card-in-use'])
    expect(await verdict()).toBe('pass-in-doubt')
  })

  it('is taken back where no check was made with it, or none that still stands', async () => {
    const one = await setUp()
    expect(tells(await one.shop.keep('withdrawal', one.takeBack, keeper))).toEqual(['kept'])
    const { shop, takeBack } = await setUp()
    const other = idOf(await shop.keep('gauge', { ...tester, tag: 'T-2' }, keeper))
    const check = idOf(await shop.keep('check', checkWith('T-1'), keeper))
    const fixed = { ...checkWith('T-2'), supersedes: check, why: 'the other tester' }
    idOf(await shop.keep('check', fixed, keeper))
    expect(tells(await shop.keep('withdrawal', { supersedes: other, why: 'x' }, keeper))).toEqual(['card-in-use'])
    expect(tells(await shop.keep('withdrawal', takeBack, keeper))).toEqual(['kept'])
  })

  it('is not taken back by a sheet either, be its check there already or in the sheet', async () => {
    const { shop, gauge } = await setUp()
    const back = `withdrawal,,,,,,,${gauge},typed twice`
    const head = 'kind,wrench,date,way,state,points,gauge,supersedes,why'
    const check = 'check,W-1,2026-06-01,tester,as-found,100 N·m: 96.5 N·m,T-1,,'
    expect(tells(await shop.takeIn([head, back].join('\n'), keeper, true))).toEqual(['read'])
    const both = await shop.takeIn([head, check, back].join('\n'), keeper, false)
    expect(both).toMatchObject({ kind: 'refused', faults: [{ line: 3, fault: { tell: 'card-in-use' } }] })
    idOf(await shop.keep('check', checkWith('T-1'), keeper))
    const alone = await shop.takeIn([head, back].join('\n'), keeper, false)
    expect(alone).toMatchObject({ kind: 'refused', faults: [{ line: 2, fault: { tell: 'card-in-use' } }] })
  })

  it.each(['check', 'gauge'] as const)(
    'and its check at the same moment: one of the two, the %s first',
    async (first) => {
      // Whoever comes second has decided before, and appends after.
      const store = memoryStore()
      const { takeBack } = await setUp(store)
      let between: (() => Promise<unknown>) | undefined
      const append: Store['append'] = async (wanted) => {
        const meanwhile = between
        between = undefined
        await meanwhile?.()
        return store.append(wanted)
      }
      const slow = shopOn({ ...store, append }, 'slow')
      const quick = shopOn(store, 'quick')
      const send = (shop: Shop, what: 'check' | 'gauge') =>
        what === 'check' ? shop.keep('check', checkWith('T-1'), keeper) : shop.keep('withdrawal', takeBack, keeper)
      let won: Keeping | undefined
      between = async () => {
        won = await send(quick, first)
      }
      const lost = await send(slow, first === 'check' ? 'gauge' : 'check')
      expect(won?.kind).toBe('kept')
      expect(tells(lost)).toEqual([first === 'check' ? 'card-in-use' : 'no-such-gauge'])
    },
  )
})
