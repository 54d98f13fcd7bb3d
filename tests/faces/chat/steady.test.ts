// What keeps chat steady: each id once, none too old, fair limits with their floors, registration that writes only what differs.
import { REST } from 'discord.js'
import nock from 'nock'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { createLimits, createWhole } from '../../../src/faces/chat/limits.ts'
import { createOnce, madeAt } from '../../../src/faces/chat/once.ts'
import { planRegistration, register } from '../../../src/faces/chat/registration.ts'
import { createIdentifyPace } from '../../../src/faces/chat/wire/identify-pace.ts'
import { waitBeforeLogin } from '../../../src/faces/chat/wire/login-budget.ts'
import { createShards } from '../../../src/faces/chat/wire/shards.ts'
import { languages } from '../../../src/words/index.ts'

const idAt = (ms: number, n = 0): string => String(((BigInt(ms) - 1_420_070_400_000n) << 22n) + BigInt(n))

describe('each interaction once', () => {
  it('reads the time out of an id', () => {
    expect(madeAt(idAt(1_800_000_000_000))).toBe(1_800_000_000_000)
    expect(madeAt('x')).toBeUndefined()
    expect(madeAt('1'.repeat(21))).toBeUndefined()
  })

  it('takes an id once, and none that is older than three seconds', () => {
    let now = 1_800_000_000_000
    const admit = createOnce(() => now)
    expect(admit(idAt(now))).toBe('new')
    expect(admit(idAt(now))).toBe('twice')
    expect(admit(idAt(now - 3001))).toBe('too-old')
    expect(admit(idAt(now - 2900))).toBe('new')
    expect(admit('not an id')).toBe('unknown')
    now += 60_000
    expect(admit(idAt(now - 60_000))).toBe('twice')
  })

  it('forgets ids that could not come again, so that memory stays bounded', () => {
    let now = 1_800_000_000_000
    const admit = createOnce(() => now)
    const first = idAt(now)
    expect(admit(first)).toBe('new')
    now += 21 * 60_000
    for (let n = 0; n < 10; n++) expect(admit(idAt(now, n))).toBe('new')
    expect(admit(first)).toBe('too-old')
  })
})

describe('limits', () => {
  const settle = () => new Promise((resolve) => setTimeout(resolve, 30))

  it('ten asks in ten seconds of one user are never refused; far past that it is busy at once', async () => {
    const limits = createLimits(Date.now)
    const ran = await Promise.all(Array.from({ length: 40 }, () => limits.admit({ user: '1', server: undefined })))
    expect(ran.slice(0, 20)).toEqual(Array(20).fill(true))
    expect(ran.slice(20)).toEqual(Array(20).fill(false))
    expect(await limits.admit({ user: '2', server: undefined })).toBe(true)
    await limits.close()
  })

  it('a lone ask is let through without waiting for the count', async () => {
    const limits = createLimits(Date.now)
    expect(limits.admit({ user: '1', server: '2' })).toBe(true)
    await settle()
    expect(limits.admit({ user: '1', server: '2' })).toBe(true)
    await limits.close()
  })

  it('asks one after another are counted as well: the limit is passed by a few at most', async () => {
    const limits = createLimits(Date.now)
    const ran: boolean[] = []
    for (let n = 0; n < 40; n++) {
      ran.push(await limits.admit({ user: '1', server: undefined }))
      if (n % 4 === 3) await settle()
    }
    const allowed = ran.filter(Boolean).length
    expect(allowed).toBeGreaterThanOrEqual(20)
    expect(allowed).toBeLessThanOrEqual(24)
    await limits.close()
  })

  it('a hundred asks in ten seconds of one server are never refused; another server is not held back', async () => {
    const limits = createLimits(Date.now)
    const ask = (n: number, server: string) => limits.admit({ user: `${server}-${n}`, server })
    const ran = await Promise.all(Array.from({ length: 260 }, (_, n) => ask(n, 'a')))
    expect(ran.slice(0, 200)).toEqual(Array(200).fill(true))
    expect(ran.slice(200)).toEqual(Array(60).fill(false))
    expect(await ask(1, 'b')).toBe(true)
    await limits.close()
  })

  it('one who asks without end does not use up the share of the others in the server', async () => {
    const limits = createLimits(Date.now)
    await Promise.all(Array.from({ length: 1000 }, () => limits.admit({ user: 'loud', server: 'a' })))
    const rest = await Promise.all(Array.from({ length: 100 }, (_, n) => limits.admit({ user: `u${n}`, server: 'a' })))
    expect(rest).toEqual(Array(100).fill(true))
    await limits.close()
  })

  it('the whole process has a limit as well, and nobody waits for it to be counted', async () => {
    const whole = createWhole(100)
    for (let n = 0; n < 90; n++) expect(whole.isOpen()).toBe(true)
    await settle()
    expect(whole.isOpen()).toBe(true)
    await settle()
    for (let n = 0; n < 90; n++) whole.isOpen()
    await settle()
    expect(whole.isOpen()).toBe(false)
    await whole.close()
  })

  it('thousands who ask now and then cost next to nothing', () => {
    let now = 0
    const limits = createLimits(() => now)
    for (let n = 0; n < 60_000; n++) {
      now += 10
      expect(limits.admit({ user: `u${n}`, server: `s${n % 1000}` })).toBe(true)
    }
    return limits.close()
  })

  it('the window opens again', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'Date'] })
    try {
      const limits = createLimits(Date.now)
      await Promise.all(Array.from({ length: 25 }, () => limits.admit({ user: '1', server: undefined })))
      expect(await limits.admit({ user: '1', server: undefined })).toBe(false)
      await vi.advanceTimersByTimeAsync(16_000)
      expect(await limits.admit({ user: '1', server: undefined })).toBe(true)
      await settle()
      expect(limits.admit({ user: '1', server: undefined })).toBe(true)
      await limits.close()
    } finally {
      vi.useRealTimers()
    }
  })
})

describe('logins', () => {
  const day = { total: 1000, reset_after: 14_400_000 }
  it.each([
    ['plenty are left', { ...day, remaining: 1000 }, 1, 0],
    ['a tenth is left', { ...day, remaining: 100 }, 1, 0],
    ['less than a tenth: what is left lasts for what is left of the day', { ...day, remaining: 97 }, 1, 150_000],
    ['many shards log in at once', { ...day, remaining: 96 }, 16, 2_880_000],
    ['two are left for one shard: one is used, one stays in hand', { ...day, remaining: 2 }, 1, 14_400_000],
    ['one is left', { ...day, remaining: 1 }, 1, 14_400_000],
    ['none is left', { ...day, remaining: 0 }, 1, 14_400_000],
    ['fewer are left than there are shards', { ...day, remaining: 20 }, 16, 14_400_000],
    ['Discord says nothing of it', undefined, 1, 0],
    ['Discord says nonsense', { total: 'many', remaining: -1, reset_after: Number.NaN } as never, 1, 0],
  ])('where %s', (_name, limit, shards, wait) => {
    expect(waitBeforeLogin(limit, shards)).toBe(wait)
  })

  it('a process that starts over without end does not use up a day', () => {
    // Each start takes 10 s and one login; the allowance is never made whole.
    let [used, time] = [0, 0]
    while (time < day.reset_after) {
      const wait = waitBeforeLogin({ total: 1000, remaining: 1000 - used, reset_after: day.reset_after - time }, 1)
      time += wait + 10_000
      if (time < day.reset_after) used++
    }
    expect(used).toBeLessThan(1000)
    expect(used).toBeGreaterThan(800)
  })

  it('a shard whose sessions end again and again identifies ever more rarely; another one is not held back', () => {
    let now = 0
    const pace = createIdentifyPace(() => now)
    const waits: number[] = []
    for (let n = 0; n < 9; n++) {
      waits.push(pace.waitFor(0))
      now += pace.waitFor(0)
      pace.identified(0)
    }
    expect(waits).toEqual([0, 5000, 10_000, 20_000, 30_000, 30_000, 30_000, 30_000, 30_000])
    expect(pace.waitFor(1)).toBe(0)
    // Cut off while it waits: what is left of the wait is left.
    now += 10_000
    expect(pace.waitFor(0)).toBe(20_000)
    now += 60_000
    expect(pace.waitFor(0)).toBe(0)
  })
})

describe('shards', () => {
  it('each is told by itself: one that is back does not speak for another', () => {
    const told: unknown[] = []
    const ups: number[] = []
    const warned: unknown[] = []
    const shards = createShards({
      count: (...one) => told.push(one),
      up: (n) => ups.push(n),
      log: { warn: (facts) => warned.push(facts) },
    })
    expect(shards.troubles()).toEqual([])
    shards.expect([0, 1])
    expect(shards.troubles()).toEqual(['chat shard 0 is not connected', 'chat shard 1 is not connected'])
    shards.changed(0, 'ready')
    shards.changed(1, 'ready')
    expect(shards.troubles()).toEqual([])
    for (let n = 0; n < 50; n++) shards.changed(1, 'reconnecting')
    shards.changed(0, 'resumed')
    expect(shards.troubles()).toEqual(['chat shard 1 is not connected'])
    expect(ups.at(-1)).toBe(1)
    expect(warned).toEqual([{ shard: 1 }])
    shards.changed(1, 'resumed')
    expect(shards.troubles()).toEqual([])
    expect(told.at(-1)).toEqual([1, 'resumed', true])
    shards.end()
    expect(ups.at(-1)).toBe(0)
  })
})

describe('registration', () => {
  const commands = buildCommands(topics, languages.en.words)
  // Discord hands back what it was given with fields of its own and its defaults.
  const theirs = commands.map((command, n) => ({
    ...JSON.parse(JSON.stringify(command)),
    id: String(n),
    application_id: '9',
    version: '1',
    default_member_permissions: null,
    nsfw: false,
    dm_permission: true,
  }))
  afterEach(() => nock.cleanAll())

  const rest = (): REST =>
    new REST({
      version: '10',
      api: 'http://127.0.0.1:65001/api',
      makeRequest: ((url: string, init: RequestInit) => fetch(url, init)) as never,
    }).setToken('token')

  it('what Discord hands back unchanged is no change', () => {
    expect(planRegistration(commands, theirs)).toEqual({ add: [], change: [], remove: [] })
  })

  it.each([
    [
      'a description',
      (list: typeof theirs) => {
        list[0].description = 'old'
      },
      { add: [], change: ['adapter'], remove: [] },
    ],
    [
      'an option that is gone',
      (list: typeof theirs) => {
        list[0].options.push({ type: 3, name: 'old', description: 'old' })
      },
      { add: [], change: ['adapter'], remove: [] },
    ],
    [
      'an option that is new',
      (list: typeof theirs) => {
        list[0].options.pop()
      },
      { add: [], change: ['adapter'], remove: [] },
    ],
    [
      'a command that is gone',
      (list: typeof theirs) => {
        list.push({ ...list[0], name: 'old' })
      },
      { add: [], change: [], remove: ['old'] },
    ],
    [
      'a command that is new',
      (list: typeof theirs) => {
        list.shift()
      },
      { add: ['adapter'], change: [], remove: [] },
    ],
  ])('%s is seen', (_name, spoil, plan) => {
    const list = structuredClone(theirs)
    spoil(list)
    expect(planRegistration(commands, list)).toEqual(plan)
  })

  it('nothing is written where nothing differs', async () => {
    const got = nock('http://127.0.0.1:65001')
      .get('/api/v10/applications/9/commands?with_localizations=true')
      .reply(200, theirs)
    await register(rest(), '9', commands)
    expect(got.isDone()).toBe(true)
    expect(nock.pendingMocks()).toEqual([])
  })

  it('the whole list is put once where something differs', async () => {
    let put: unknown
    nock('http://127.0.0.1:65001').get('/api/v10/applications/9/commands?with_localizations=true').reply(200, [])
    nock('http://127.0.0.1:65001')
      .put('/api/v10/applications/9/commands', (body) => {
        put = body
        return true
      })
      .matchHeader('authorization', 'Bot token')
      .reply(200, theirs)
    expect((await register(rest(), '9', commands)).add).toHaveLength(commands.length)
    expect(put).toEqual(JSON.parse(JSON.stringify(commands)))
  })

  it('a refusal of Discord is thrown to whoever asked for the registration', async () => {
    nock('http://127.0.0.1:65001')
      .get('/api/v10/applications/9/commands?with_localizations=true')
      .reply(401, { message: '401: Unauthorized', code: 0 })
    await expect(register(rest(), '9', commands)).rejects.toThrow(/Unauthorized/)
  })
})
