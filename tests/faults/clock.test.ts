// The machine's clock jumps a year ahead and back, by the clock that each part is handed: nobody waits for the year between, and
// chat answers meanwhile. What is kept is in clock-kept.test.ts.
import { afterAll, describe, expect, it, vi } from 'vitest'
import { neverBack } from '../../src/core/never-back.ts'
import { createLikings, ownScope } from '../../src/faces/chat/liking.ts'
import { createLimits } from '../../src/faces/chat/limits.ts'
import { createOnce } from '../../src/faces/chat/once.ts'
import { createCallbacks } from '../../src/faces/chat/wire/callback.ts'
import { ageOf } from '../../src/faces/chat/wire/first-response.ts'
import { createIdentifyPace } from '../../src/faces/chat/wire/identify-pace.ts'
import { rateCount } from '../../src/faces/http/rate-count.ts'
import { memoryStore } from '../../src/store/memory.ts'
import { snowflake } from '../support/fake-discord/snowflake.ts'

const YEAR = 365 * 86_400_000
const START = Date.parse('2026-06-01T10:00:00Z')

describe('what is waited for', () => {
  it('goes on evenly where the clock is set back, and is never longer', () => {
    let [now, tick] = [START, 0]
    const steady = neverBack(
      () => now,
      () => tick,
    )
    const pass = (ms: number, jump = 0): number => {
      now += ms + jump
      tick += ms
      return steady() - START
    }
    expect(pass(1000)).toBe(1000)
    expect(pass(300, -YEAR)).toBe(1300)
    expect(pass(500)).toBe(1800)
    expect(pass(200, YEAR)).toBe(2000 + YEAR)
    expect(pass(200, -YEAR)).toBe(2200 + YEAR)
  })

  it('a login of chat waits its seconds, whatever the clock does', () => {
    let now = START
    const pace = createIdentifyPace(() => now)
    pace.identified(0)
    now -= YEAR
    expect(pace.waitFor(0)).toBeLessThanOrEqual(5000)
    expect(pace.waitFor(0)).toBeGreaterThan(4000)
    now += 5000
    expect(pace.waitFor(0)).toBe(0)
  })

  it('an address that Discord asked to wait waits so long and no longer', async () => {
    let now = START
    const { RateLimitError } = await import('discord.js')
    const limited = new RateLimitError({
      ...{ timeToReset: 2000, limit: 1, method: 'POST', hash: '', url: '', route: '', majorParameter: '' },
      ...{ global: true, retryAfter: 2000, sublimitTimeout: 0, scope: 'global' },
    })
    const rest = { post: () => Promise.reject(limited) } as never
    const callbacks = createCallbacks({ rest, now: () => now, told: () => undefined })
    const known = { id: snowflake(now), token: 't', application_id: '9' }
    expect(await callbacks.respondTo(known)({ body: {}, files: [] })).toBe('rate-limited')
    expect(callbacks.isHushed()).toBe(true)
    now -= YEAR
    expect(callbacks.isHushed()).toBe(true)
    now += 2001
    expect(callbacks.isHushed()).toBe(false)
  })
})

describe('limits', () => {
  afterAll(() => void vi.useRealTimers())

  it('of HTTP: who was over the limit is let in again a window later', () => {
    let now = 50_000
    const count = new (rateCount(() => now))()
    const of = (address: string): number => {
      let current = 0
      count.incr(
        address,
        (_error, told) => {
          current = told?.current ?? 0
        },
        1000,
      )
      return current
    }
    for (let n = 1; n <= 1001; n++) expect(of('a')).toBe(n)
    expect(of('b')).toBe(1)
    now += 999
    expect(of('a')).toBe(1002)
    now += 1
    expect(of('a')).toBe(1)
  })

  it('of HTTP: the clock that it goes by is none that is set', async () => {
    const { buildHttp } = await import('../../src/faces/http/server.ts')
    const { noPictures, testDesk, testShop } = await import('../support/doors.ts')
    const app = await buildHttp({
      ...{ desk: testDesk(), pictures: noPictures, shop: 'desk', trustProxy: false, mostASecond: 3 },
      register: { shop: testShop(), keys: [], now: () => new Date() },
      failed: () => undefined,
      readiness: async () => [],
      metrics: async () => ({ type: 'text/plain', text: '' }),
    })
    const told = async () => (await app.inject('/v1/questions')).statusCode
    const until = performance.now() + 3000
    while ((await told()) !== 429) expect(performance.now()).toBeLessThan(until)
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() - YEAR })
    await new Promise((resolve) => setTimeout(resolve, 1100))
    expect(await told()).toBe(200)
    vi.useRealTimers()
    await app.close()
  })

  it('of chat: who was over the limit is let in again, and who was not still is', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: START })
    const limits = createLimits(Date.now)
    const ask = (user = '1') => limits.admit({ user, server: '2' })
    const first = await Promise.all(Array.from({ length: 40 }, () => ask()))
    expect(first.filter((isIn) => !isIn).length).toBeGreaterThan(10)
    vi.setSystemTime(START - YEAR)
    expect(await ask()).toBe(true)
    expect(await ask('3')).toBe(true)
    // The limit itself still holds.
    const then = await Promise.all(Array.from({ length: 60 }, () => ask()))
    expect(then.filter((isIn) => !isIn).length).toBeGreaterThan(10)
    await limits.close()
    vi.useRealTimers()
  })
})

describe('chat', () => {
  it('takes what is new where its clock is a year ahead, and knows again what it took', () => {
    let now = START
    const admit = createOnce(() => now)
    const [early, late, back] = [snowflake(START), snowflake(START + 10), snowflake(START + 20)]
    expect(admit(early)).toBe('new')
    now += YEAR
    expect(admit(late)).toBe('new')
    expect(admit(late)).toBe('twice')
    expect(ageOf({ id: late }, now)).toBe(0)
    now -= YEAR
    expect(admit(back)).toBe('new')
    expect(admit(back)).toBe('twice')
    expect(admit(snowflake(START - 5000))).toBe('too-old')
  })

  it('hears of own settings that another process changed, and notes their use by the right clock', async () => {
    let now = START + YEAR
    const store = memoryStore()
    const owner = ownScope('1')
    const set = (value: string) => store.setOwn({ owner, name: 'units', value, at: new Date(START).toISOString() })
    await set('inch')
    const used = vi.spyOn(store, 'usedOwn')
    const likings = createLikings(store, () => now)
    expect(await likings.own('1')).toEqual({ units: 'inch' })
    now -= YEAR
    await set('metric')
    await likings.own('1')
    now += 10_001
    expect(await likings.own('1')).toEqual({ units: 'metric' })
    expect(used.mock.calls.map(([, at]) => at.slice(0, 4))).toEqual(['2027', '2026'])
  })
})
