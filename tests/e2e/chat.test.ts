// The built program against a fake Discord on loopback: login, registration, answers, and everything that Discord can do to it.
import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { nonsense } from '../soak/chaos.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { faults } from '../support/fake-discord/faults.ts'
import { type Service, startService } from '../support/service.ts'

let discord: FakeDiscord
let service: Service

const open = async (env: Readonly<Record<string, string>> = {}): Promise<void> => {
  service = await startService({ DISCORD_TOKEN: discord.token, DISCORD_API_URL: discord.url, ...env })
  await discord.ready()
  await discord.until('the commands are registered', () => discord.commands.length > 0)
}

const adapter = { command: 'adapter', options: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in' } }
const readiness = async () =>
  (await (await fetch(`${service.url}/readyz`)).json()) as { status: string; reasons: string[] }
const counted = async (event: string): Promise<number> => {
  const text = await (await fetch(`${service.url}/metrics`)).text()
  return Number(new RegExp(`armlength_chat_interactions_total\\{event="${event}"\\} (\\d+)`).exec(text)?.[1] ?? 0)
}
const untilCounted = async (event: string, atLeast = 1): Promise<void> => {
  for (let n = 0; n < 200 && (await counted(event)) < atLeast; n++) await pause(25)
  expect(await counted(event)).toBeGreaterThanOrEqual(atLeast)
}
const headlineOf = (data: unknown): string =>
  (data as { embeds: Array<{ description: string }> }).embeds[0]?.description ?? ''

beforeEach(async () => {
  discord = await startFakeDiscord()
})
afterEach(async () => {
  service?.kill()
  await discord.close()
})

describe('chat with Discord in good health', () => {
  it('logs in with no privileged intent, registers once, and answers a command in its callback', async () => {
    await open()
    expect(service.line).toMatch(/chat on$/)
    expect(discord.identifies).toHaveLength(1)
    expect(discord.identifies[0]).toMatchObject({ intents: (1 << 9) | (1 << 12), accepted: true })
    const record = await discord.interaction(adapter)
    expect(record).toMatchObject({ status: expect.any(Number), type: 4 })
    expect(headlineOf(record.data)).toBe(
      '**With the adapter straight ahead, which was not told: Set 87.5 lbf·ft on the wrench: the fastener gets 100 lbf·ft.**',
    )
    expect(record.data.flags ?? 0).toBe(0)
    const [picture] = record.files
    expect(picture?.name).toBe('armlength.png')
    const { attachments, embeds } = record.data as unknown as {
      attachments: Array<{ description: string }>
      embeds: Array<{ image: { url: string } }>
    }
    expect(attachments[0]?.description).toContain('SET 87.5 lbf·ft')
    expect(embeds[0]?.image.url).toBe('attachment://armlength.png')
    await untilCounted('answered')
    expect(discord.requests.filter(({ route }) => route === 'commands-put')).toHaveLength(1)
    expect(discord.violations).toEqual([])
    expect(await readiness()).toEqual({ status: 'ok', reasons: [] })
    expect(await service.stop()).toBe(0)
  })

  it.each(nonsense)('nonsense ends nothing: %s %j', async (event, data) => {
    await open()
    discord.dispatch(event, data)
    expect((await discord.interaction(adapter)).type).toBe(4)
    expect(service.log()).not.toMatch(/"level":60/)
    expect(await service.stop()).toBe(0)
  })

  it('offers topics while one is typed, and takes free text as it stands', async () => {
    await open()
    const record = await discord.interaction({
      kind: 'autocomplete',
      command: 'does-it-matter',
      options: { topic: 'antiseize on lugs' },
      focused: 'topic',
    })
    expect(record).toMatchObject({
      type: 8,
      data: { choices: [{ name: 'Anti-seize on the threads', value: 'anti-seize' }] },
    })
    const answer = await discord.interaction({ command: 'does-it-matter', options: { topic: 'antiseize on lugs' } })
    expect(headlineOf(answer.data)).toMatch(/^\*\*Yes, unless the maker’s figure is for this paste/)
    await untilCounted('offered')
    expect(discord.violations).toEqual([])
  })

  it('a restart finds its commands registered and writes nothing', async () => {
    await open()
    expect(await service.stop()).toBe(0)
    await open()
    await discord.interaction(adapter)
    await discord.until(
      'the list was got twice',
      () => discord.requests.filter(({ route }) => route === 'commands-get').length === 2,
    )
    await pause(100)
    expect(discord.requests.filter(({ route }) => route === 'commands-put')).toHaveLength(1)
  })

  it('every command of every kind is answered within the limits; faults and gaps to the asker alone', async () => {
    await open()
    const asks = [
      { command: 'adapter', options: { find: 'reading', reading: '101 lb-ft', lever: '14 in', adapter: '2 in@90' } },
      { command: 'hand', subcommand: 'position', options: { setting: '75 lb-ft', lever: '14 in', hand: '7 in' } },
      { command: 'hand', subcommand: 'pull', options: { torque: '107 ft.-lbs.', hand: '2 ft' } },
      { command: 'hand', subcommand: 'pivot', options: {} },
      {
        command: 'head',
        subcommand: 'fitting',
        options: { torque: '75 Nm', lever: '360 mm', 'fitting-change': '-30 mm' },
      },
      { command: 'lubricant', options: { torque: '100 ft lb', from: 'dry', to: 'oiled' } },
      {
        command: 'bolt',
        subcommand: 'nut-factor',
        options: { size: 'M12', torque: '60 Nm; 61 Nm; 59 Nm', 'clamp-force': '24 kN; 25 kN; 23 kN' },
      },
      {
        command: 'check',
        subcommand: 'scale',
        options: { distance: '36 cm', setting: '50 Nm', force: Array(20).fill('14.2').join('; ').concat(' kg') },
      },
      { command: 'check', subcommand: 'plan', options: { most: '200 Nm', distance: '45 cm' } },
      { command: 'check', subcommand: 'tolerance', options: { setting: '42 Nm', tolerance: '4%' } },
      { command: 'convert', options: { quantity: '@everyone '.repeat(300) } },
      { command: 'adapter', options: { torque: '100', lever: '1,234 in' }, guild: null },
    ]
    for (const ask of asks) {
      const record = await discord.interaction(ask)
      const forAll = !/cannot be worked out|missing/.test(headlineOf(record.data))
      expect(record.data.flags ?? 0, JSON.stringify(ask)).toBe(forAll ? 0 : 64)
      expect(record.status).toBeLessThan(300)
    }
    expect(discord.violations).toEqual([])
  })

  it('a command that is not there any more is not guessed at', async () => {
    await open()
    await discord.interaction({ command: 'old-one', stale: true, options: {} }, { within: 500 }).catch(() => undefined)
    await untilCounted('unknown')
    expect(discord.callbacks).toEqual([])
  })
})

describe('what Discord can do', () => {
  it('an id that comes twice is answered once', async () => {
    await open()
    expect(await discord.sendTwice(adapter)).toHaveLength(1)
    await untilCounted('twice')
    expect(discord.violations).toEqual([])
  })

  it('an interaction older than three seconds is dropped', async () => {
    await open()
    await expect(discord.interaction({ ...adapter, age: 3500 }, { within: 400 })).rejects.toThrow()
    await untilCounted('too-old')
    expect(discord.callbacks).toEqual([])
  })

  it('10062 and 40060 are counted and not tried again; the next ask is answered', async () => {
    await open()
    discord.fail('callback', faults.unknownInteraction)
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('late')
    discord.fail('callback', faults.alreadyAcknowledged)
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('already-answered')
    const before = discord.requests.filter(({ route }) => route === 'callback').length
    expect(before).toBe(2)
    expect((await discord.interaction(adapter)).status).toBeLessThan(300)
  })

  it('a 429 that ends in time is waited out, a 5xx is tried again', async () => {
    await open()
    discord.fail('callback', faults.rateLimited(0.2))
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('answered', 1)
    discord.fail('callback', faults.broken(502))
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('answered', 2)
  })

  it('a 429 that does not end in time, and a Discord that stays broken, cost one answer and nothing else', async () => {
    await open()
    discord.fail('callback', faults.broken(503), 10)
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('failed')
    discord.clearFaults()
    expect((await discord.interaction(adapter)).status).toBeLessThan(300)
    discord.fail('callback', faults.rateLimited(30))
    await discord.interaction(adapter).catch(() => undefined)
    await untilCounted('rate-limited')
    expect(service.running()).toBe(true)
  })

  it('a callback that hangs is given up well within three seconds, never sent twice, and others are answered meanwhile', async () => {
    await open()
    discord.fail('callback', faults.hang)
    const start = performance.now()
    const hung = discord.interaction(adapter, { within: 2900 }).catch((error: unknown) => error)
    await pause(50)
    expect((await discord.interaction(adapter)).ms).toBeLessThan(700)
    await untilCounted('timed-out')
    expect(performance.now() - start).toBeLessThan(2500)
    await hung
    expect(discord.requests.filter(({ route }) => route === 'callback')).toHaveLength(2)
  })

  it('callbacks that go on hanging are given up well within three seconds', async () => {
    await open()
    discord.fail('callback', faults.hang, 5)
    const start = performance.now()
    await discord.interaction(adapter, { within: 1 }).catch(() => undefined)
    await untilCounted('timed-out')
    expect(performance.now() - start).toBeLessThan(2700)
    discord.clearFaults()
    expect((await discord.interaction(adapter)).status).toBeLessThan(300)
  })

  it('a dropped socket resumes, and what was missed is answered', async () => {
    await open()
    discord.dropSockets()
    await discord.until('it resumed', () => discord.resumes.some(({ accepted }) => accepted))
    expect((await discord.interaction(adapter)).status).toBeLessThan(300)
    expect(discord.identifies).toHaveLength(1)
    expect(await readiness()).toEqual({ status: 'ok', reasons: [] })
  })

  it('a fatal close ends chat alone: HTTP goes on, /readyz says why, nobody logs in again', async () => {
    await open()
    await discord.closeSockets(4004)
    await discord.until('it is told', () => service.log().includes('closed until restart'))
    expect(await readiness()).toEqual({ status: 'degraded', reasons: [expect.stringContaining('4004')] })
    const reply = await fetch(`${service.url}/v1/questions/pull?torque=1+N%C2%B7m&hand=1+m`)
    expect(reply.status).toBe(200)
    await pause(1500)
    expect(discord.identifies).toHaveLength(1)
    expect(
      service
        .log()
        .split('\n')
        .filter((line) => line.includes('closed until restart')),
    ).toHaveLength(1)
    expect(await service.stop()).toBe(0)
  })

  it('an interaction of a shape that nobody knows is left alone, and the next is answered', async () => {
    await open()
    for (const data of [null, 5, { type: 1 }, { name: 'adapter', options: 'x', type: 1 }]) {
      discord.deliver(discord.issue({ ...adapter, raw: { data } }))
    }
    discord.deliver(discord.issue({ ...adapter, raw: { type: 99 } }))
    expect((await discord.interaction(adapter)).status).toBeLessThan(300)
    expect(service.running()).toBe(true)
  })

  it('a token that Discord does not take is told once, and HTTP goes on', async () => {
    service = await startService({ DISCORD_TOKEN: 'wrong', DISCORD_API_URL: discord.url })
    await discord.until('it is told', () => service.log().includes('closed until restart'))
    expect((await readiness()).status).toBe('degraded')
    const tries = discord.requests.length
    await pause(1000)
    expect(discord.requests.length).toBe(tries)
    expect(service.log()).not.toContain('wrong')
    expect(await service.stop()).toBe(0)
  })

  it('a Discord that is away at the start leaves HTTP open and chat degraded', async () => {
    const url = discord.url
    await discord.refuseConnections(true, 'both')
    service = await startService({ DISCORD_TOKEN: discord.token, DISCORD_API_URL: url })
    await discord.until('it is told', () => service.log().includes('trying again later'))
    expect(await readiness()).toEqual({ status: 'degraded', reasons: ['Discord cannot be reached'] })
    expect(await service.stop()).toBe(0)
  })

  it('somebody who asks without end gets a private word, others are answered', async () => {
    await open()
    const first = await Promise.all(Array.from({ length: 10 }, () => discord.interaction(adapter)))
    expect(first.every(({ data }) => headlineOf(data).includes('87.5'))).toBe(true)
    const more = await Promise.all(Array.from({ length: 40 }, () => discord.interaction(adapter)))
    const busy = more.filter(({ data }) => String(data.content ?? '').includes('Too many questions'))
    expect(busy.length).toBeGreaterThan(10)
    expect(busy.every(({ data }) => data.flags === 64)).toBe(true)
    const other = await discord.interaction({ ...adapter, user: { id: '300000000000000009', username: 'bay-3' } })
    expect(headlineOf(other.data)).toContain('87.5')
    expect(discord.violations).toEqual([])
  })
})
