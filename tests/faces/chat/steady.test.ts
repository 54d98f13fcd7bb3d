// What keeps chat steady: each id once, none too old, fair limits with their floors, registration that writes only what differs.
import { REST } from 'discord.js'
import nock from 'nock'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { createLimits } from '../../../src/faces/chat/limits.ts'
import { createOnce, madeAt } from '../../../src/faces/chat/once.ts'
import { planRegistration, register } from '../../../src/faces/chat/registration.ts'
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
    const limits = createLimits()
    const ran = await Promise.all(Array.from({ length: 40 }, () => limits.admit({ user: '1', server: undefined })))
    expect(ran.slice(0, 20)).toEqual(Array(20).fill(true))
    expect(ran.slice(20)).toEqual(Array(20).fill(false))
    expect(await limits.admit({ user: '2', server: undefined })).toBe(true)
    await limits.close()
  })

  it('a lone ask is let through without waiting for the count', async () => {
    const limits = createLimits()
    expect(limits.admit({ user: '1', server: '2' })).toBe(true)
    await settle()
    expect(limits.admit({ user: '1', server: '2' })).toBe(true)
    await limits.close()
  })

  it('asks one after another are counted as well: the limit is passed by a few at most', async () => {
    const limits = createLimits()
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
    const limits = createLimits()
    const ask = (n: number, server: string) => limits.admit({ user: `${server}-${n}`, server })
    const ran = await Promise.all(Array.from({ length: 260 }, (_, n) => ask(n, 'a')))
    expect(ran.slice(0, 200)).toEqual(Array(200).fill(true))
    expect(ran.slice(200)).toEqual(Array(60).fill(false))
    expect(await ask(1, 'b')).toBe(true)
    await limits.close()
  })

  it('one who asks without end does not use up the share of the others in the server', async () => {
    const limits = createLimits()
    await Promise.all(Array.from({ length: 1000 }, () => limits.admit({ user: 'loud', server: 'a' })))
    const rest = await Promise.all(Array.from({ length: 100 }, (_, n) => limits.admit({ user: `u${n}`, server: 'a' })))
    expect(rest).toEqual(Array(100).fill(true))
    await limits.close()
  })

  it('the window opens again', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'Date'] })
    try {
      const limits = createLimits()
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
