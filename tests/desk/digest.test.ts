// When the digest goes out: once a week, on Monday at seven by the shop's clock, made up for when nothing ran, never doubled by
// two processes on one store, and not where nobody can be reached.
import { describe, expect, it } from 'vitest'
import { createDigest, DIGEST_CHANNEL, type Sent, SHOP_SCOPE, weekOf } from '../../src/desk/digest.ts'
import { createShop } from '../../src/desk/shop.ts'
import { memoryStore } from '../../src/store/memory.ts'
import { openStore } from '../../src/store/open.ts'
import type { Store } from '../../src/store/store.ts'
import { hasPostgres, startCluster } from '../support/postgres.ts'

interface World {
  now: Date
  readonly sent: string[]
  /** What the sending comes to, in order; then always the last. */
  answers: Sent[]
}

const setChannel = (store: Store, value: string | null = '77'): Promise<void> =>
  store.set({
    scope: SHOP_SCOPE,
    name: DIGEST_CHANNEL,
    value,
    at: '2026-06-01T00:00:00.000Z',
    by: { role: 'keeper', door: 'chat' },
  })

const loopOn = (store: Store, world: World, owner = 'one', timeZone = 'Europe/Berlin') => {
  let id = 0
  const now = (): Date => world.now
  return createDigest({
    shop: createShop({ store, now, id: () => `${owner}-${++id}`, timeZone }),
    store,
    now,
    timeZone,
    owner,
    send: async (channel, _digest, name) => {
      world.sent.push(`${channel} ${name}`)
      return (world.answers.length > 1 ? world.answers.shift() : world.answers[0]) ?? 'sent'
    },
  })
}
const world = (now: string): World => ({ now: new Date(now), sent: [], answers: ['sent'] })

describe('the week of the digest', () => {
  // 2026-06-01 is a Monday; Berlin is two hours ahead of UTC in June.
  it.each([
    ['2026-06-01T04:59:00Z', '2026-05-25'],
    ['2026-06-01T05:00:00Z', '2026-06-01'],
    ['2026-06-04T22:30:00Z', '2026-06-01'],
    ['2026-06-07T23:00:00Z', '2026-06-01'],
    ['2026-06-08T05:00:00Z', '2026-06-08'],
    ['2026-12-31T12:00:00Z', '2026-12-28'],
  ])('at %s is that of %s', (at, monday) => expect(weekOf(new Date(at), 'Europe/Berlin')).toBe(monday))
})

describe('the digest goes out', () => {
  it('once on Monday at seven, and again a week later', async () => {
    const [store, all] = [memoryStore(), world('2026-05-30T12:00:00Z')]
    await setChannel(store)
    const loop = loopOn(store, all)
    // The week before had none: a shop that has had its channel for long is made up for.
    expect(await loop.tick()).toBe('sent')
    all.now = new Date('2026-06-01T04:59:00Z')
    expect(await loop.tick()).toBe('done')
    all.now = new Date('2026-06-01T05:00:00Z')
    expect(await loop.tick()).toBe('sent')
    expect(await loop.tick()).toBe('done')
    all.now = new Date('2026-06-08T05:01:00Z')
    expect(await loop.tick()).toBe('sent')
    expect(all.sent).toEqual(['77 digest-2026-05-25', '77 digest-2026-06-01', '77 digest-2026-06-08'])
  })

  it('not again after a restart, nor when the clock jumps back', async () => {
    const [store, all] = [memoryStore(), world('2026-06-02T12:00:00Z')]
    await setChannel(store)
    expect(await loopOn(store, all, 'one').tick()).toBe('sent')
    expect(await loopOn(store, all, 'two').tick()).toBe('done')
    all.now = new Date('2026-06-01T06:00:00Z')
    expect(await loopOn(store, all, 'three').tick()).toBe('done')
    expect(all.sent).toHaveLength(1)
  })

  it('nowhere without a channel, and to one chosen in the week from the next Monday on', async () => {
    const [store, all] = [memoryStore(), world('2026-06-03T12:00:00Z')]
    const loop = loopOn(store, all)
    expect(await loop.tick()).toBe('no-channel')
    await setChannel(store)
    expect(await loop.tick()).toBe('done')
    all.now = new Date('2026-06-08T06:00:00Z')
    expect(await loop.tick()).toBe('sent')
    await setChannel(store, null)
    all.now = new Date('2026-06-15T06:00:00Z')
    expect(await loop.tick()).toBe('no-channel')
  })

  it('later where Discord is away, with growing waits, under the same name; not again where nobody can be reached', async () => {
    const [store, all] = [memoryStore(), world('2026-06-01T06:00:00Z')]
    await setChannel(store)
    const loop = loopOn(store, all)
    all.answers = ['later', 'later', 'sent']
    expect(await loop.tick()).toBe('later')
    expect(await loop.tick()).toBe('waiting')
    all.now = new Date('2026-06-01T06:01:01Z')
    expect(await loop.tick()).toBe('later')
    all.now = new Date('2026-06-01T06:02:00Z')
    expect(await loop.tick()).toBe('waiting')
    all.now = new Date('2026-06-01T06:03:30Z')
    expect(await loop.tick()).toBe('sent')
    expect(new Set(all.sent).size).toBe(1)
    all.now = new Date('2026-06-08T06:00:00Z')
    all.answers = ['gone']
    expect(await loop.tick()).toBe('gone')
    expect(await loop.tick()).toBe('done')
  })

  const manyAtOnce = async (stores: readonly Store[]): Promise<void> => {
    const all = world('2026-06-01T06:00:00Z')
    await setChannel(stores[0] as Store)
    const loops = stores.flatMap((store, n) => [loopOn(store, all, `a${n}`), loopOn(store, all, `b${n}`)])
    const ticks = await Promise.all(loops.map((loop) => loop.tick()))
    expect(ticks.filter((tick) => tick === 'sent')).toHaveLength(1)
    for (const loop of loops) expect(['done', 'elsewhere']).toContain(await loop.tick())
    expect(all.sent).toHaveLength(1)
  }

  it('once from many loops on one store', () => manyAtOnce([memoryStore()]))

  it.runIf(hasPostgres)(
    'once from two processes on one PostgreSQL',
    async () => {
      const cluster = await startCluster()
      const address = await cluster.database()
      const stores = await Promise.all([openStore(address), openStore(address)])
      await manyAtOnce(stores)
      await Promise.all(stores.map((store) => store.close()))
      await cluster.remove()
    },
    60_000,
  )
})
