// What is kept while the machine's clock jumps a year ahead and back: nothing is erased for it, each digest goes out once, and what
// lies ahead does not count before its day.
import { beforeAll, describe, expect, it } from 'vitest'
import { createDigest, DIGEST_CHANNEL, SHOP_SCOPE } from '../../src/desk/digest.ts'
import { createShop, type Shop } from '../../src/desk/shop.ts'
import { eraseIdle } from '../../src/faces/chat/retention.ts'
import { memoryStore } from '../../src/store/memory.ts'
import type { Store } from '../../src/store/store.ts'

const HOUR = 3_600_000
const DAY = 24 * HOUR
const YEAR = 365 * DAY
const START = Date.parse('2026-06-01T10:00:00Z')
const keeper = { role: 'keeper', door: 'terminal' } as const
const log = { info: () => undefined, warn: () => undefined }

describe('retention', () => {
  const settingOf = async (store: Store, at: number): Promise<void> =>
    store.setOwn({ owner: 'user:1', name: 'units', value: 'inch', at: new Date(at).toISOString() })
  const look = (store: Store, now: number) => eraseIdle({ store, retentionDays: 400, now: () => now, log })

  it('erases nothing for a clock that jumps ahead for some hours, at a start or between', async () => {
    const store = memoryStore()
    await settingOf(store, START)
    for (let day = 0; day < 5; day++) await look(store, START + day * DAY)
    for (let n = 0; n < 4; n++) expect(await look(store, START + 2 * YEAR + n * 6 * HOUR)).toBeUndefined()
    expect(await look(store, START + 5 * DAY)).toBe(0)
    expect(await store.own('user:1')).toEqual({ units: 'inch' })
  })

  it('erases what is idle on the third day of a desk that stands, also after it was off for long', async () => {
    const store = memoryStore()
    await settingOf(store, START - 401 * DAY)
    expect(await look(store, START - 90 * DAY)).toBeUndefined()
    expect(await look(store, START)).toBeUndefined()
    expect(await look(store, START + DAY)).toBeUndefined()
    expect(await look(store, START + 2 * DAY)).toBe(1)
    expect(await store.own('user:1')).toEqual({})
  })

  it('erases nothing more where the clock is set back', async () => {
    const store = memoryStore()
    await settingOf(store, START - 300 * DAY)
    for (let day = 0; day < 5; day++) await look(store, START + day * DAY)
    await look(store, START - YEAR)
    expect(await look(store, START + 6 * DAY)).toBe(0)
  })
})

describe('the digest', () => {
  const channelOn = async (store: Store): Promise<void> =>
    store.set({ scope: SHOP_SCOPE, name: DIGEST_CHANNEL, value: '77', at: new Date(START).toISOString(), by: keeper })
  const loopOn = (store: Store, now: () => number, owner: string, send: () => 'sent' | 'later') =>
    createDigest({
      shop: createShop({ store, now: () => new Date(now()), id: () => owner, timeZone: 'UTC' }),
      ...{ store, owner, timeZone: 'UTC', now: () => new Date(now()), send: async () => send() },
    })

  it('is sent once for each week that the clock shows, and goes on where the clock is right again', async () => {
    let now = START
    const sent: string[] = []
    const store = memoryStore()
    await channelOn(store)
    const loop = loopOn(
      store,
      () => now,
      'one',
      () => {
        sent.push('once')
        return 'sent'
      },
    )
    expect(await loop.tick()).toBe('sent')
    now += YEAR
    expect(await loop.tick()).toBe('sent')
    now -= YEAR
    expect(await loop.tick()).toBe('done')
    now += 7 * DAY
    expect(await loop.tick()).toBe('sent')
    expect(sent).toHaveLength(3)
  })

  it('is tried again after its wait, and by the process that comes after one that died a year ahead', async () => {
    let now = START + YEAR
    let answer: 'sent' | 'later' = 'later'
    const store = memoryStore()
    await channelOn(store)
    const died = loopOn(
      store,
      () => now,
      'died',
      () => answer,
    )
    expect(await died.tick()).toBe('later')
    now -= YEAR
    expect(await died.tick()).toBe('waiting')
    now += 60_000
    expect(await died.tick()).toBe('later')
    answer = 'sent'
    // The lease that was taken a year ahead.
    const other = memoryStore()
    await channelOn(other)
    const iso = (ms: number) => new Date(ms).toISOString()
    await other.lease({ name: 'digest', owner: 'died', now: iso(now + YEAR), until: iso(now + YEAR + 120_000) })
    expect(
      await loopOn(
        other,
        () => now,
        'next',
        () => answer,
      ).tick(),
    ).toBe('sent')
  })
})

describe('the register', () => {
  let [now, count] = [START, 0]
  let shop: Shop
  const day = (ms: number): string => new Date(ms).toISOString().slice(0, 10)
  const check = async (ms: number): Promise<void> => {
    const points = '100 N·m: 100; 101; 100; 100; 100 N·m'
    const raw = {
      wrench: 'W-07',
      date: day(ms),
      way: 'tester',
      state: 'as-found',
      'gauge-uncertainty': '0.5 %',
      points,
    }
    expect(await shop.keep('check', raw, keeper)).toMatchObject({ kind: 'kept' })
  }
  beforeAll(async () => {
    shop = createShop({ store: memoryStore(), now: () => new Date(now), id: () => `e-${++count}`, timeZone: 'UTC' })
    const card = { tag: 'W-07', name: 'Click wrench', 'wrench-type': 'click', most: '200 N·m', tolerance: '4 %' }
    expect(await shop.keep('wrench', card, keeper)).toMatchObject({ kind: 'kept' })
    await check(START - 30 * DAY)
  })

  it('all is due a year ahead, and as before when the clock is back', async () => {
    const here = (await shop.board(10)).rows[0]?.status
    expect(here?.status).toBe('in-service')
    now = START + 2 * YEAR
    expect((await shop.board(10)).rows[0]?.status.status).toBe('check-due')
    expect((await shop.lists.counts()).due).toBe(1)
    now = START
    expect((await shop.board(10)).rows[0]?.status).toEqual(here)
    expect((await shop.lists.counts()).due).toBe(0)
  })

  it('a check that was kept a year ahead does not count before its day, on the board as on its page', async () => {
    const before = { board: (await shop.board(10)).rows[0]?.status, due: await shop.due() }
    now = START + YEAR
    await check(START + YEAR)
    expect((await shop.board(10)).rows[0]?.status.lastCheck?.kept.entry.body.date).toBe(day(START + YEAR))
    now = START
    expect((await shop.wrench('W-07'))?.row.status).toEqual((await shop.board(10)).rows[0]?.status)
    expect((await shop.board(10)).rows[0]?.status).toEqual(before.board)
    expect(await shop.due()).toEqual(before.due)
    expect(await shop.lists.counts()).toEqual({ due: 0, before: 0, out: 0, never: 0 })
    // What is kept by the right clock counts, and the one ahead comes on its day.
    await check(START)
    expect((await shop.board(10)).rows[0]?.status.lastCheck?.kept.entry.body.date).toBe(day(START))
    now = START + YEAR
    expect((await shop.board(10)).rows[0]?.status.lastCheck?.kept.entry.body.date).toBe(day(START + YEAR))
    now = START
  })
})
