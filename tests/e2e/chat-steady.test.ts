// The built program while Discord sends twice, late and by shards, and while it is ended itself: each is answered once, what was taken
// is finished. Discord away for longer is in chat-away.test.ts.
import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, describe, expect, it } from 'vitest'
import { type FakeDiscord, type FakeOptions, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { faults } from '../support/fake-discord/faults.ts'
import { type Service, startService } from '../support/service.ts'

let discord: FakeDiscord
let service: Service

const start = async (env: Readonly<Record<string, string>> = {}): Promise<void> => {
  service = await startService({ DISCORD_TOKEN: discord.token, DISCORD_API_URL: discord.url, ...env })
}
const open = async (options: FakeOptions = {}, env: Readonly<Record<string, string>> = {}): Promise<void> => {
  discord = await startFakeDiscord(options)
  await start(env)
  await discord.ready(options.shards ?? 1)
  await discord.until('the commands are registered', () => discord.commands.length > 0)
}
afterEach(async () => {
  service?.kill()
  await discord.close()
})

const convert = { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }
const adapter = { command: 'adapter', options: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in' } }
const readiness = async () =>
  (await (await fetch(`${service.url}/readyz`)).json()) as { status: string; reasons: string[] }
const metrics = async (): Promise<string> => (await fetch(`${service.url}/metrics`)).text()

describe('what comes twice, late or in another order', () => {
  it('is answered once each, whatever the order', async () => {
    await open()
    const raws = Array.from({ length: 10 }, () => discord.issue(convert))
    for (const raw of [...raws].reverse()) discord.deliver(raw)
    for (const raw of raws) discord.deliver(raw)
    await discord.until('all are answered', () => discord.callbacks.length >= 10)
    await pause(300)
    expect(discord.callbacks).toHaveLength(10)
    expect(await metrics()).toContain('armlength_chat_interactions_total{event="twice"} 10')
    expect(discord.violations).toEqual([])
  })

  it('what was missed while the socket was torn comes with the resume, and is answered', async () => {
    await open()
    discord.dropSockets()
    const missed = discord.interaction(convert, { within: 3000 })
    expect((await missed).status).toBe(204)
    expect(discord.resumes.some(({ replayed }) => replayed > 0)).toBe(true)
  })
})

describe('shards', () => {
  it('each is counted and told by itself', async () => {
    await open({ shards: 2, maxConcurrency: 2 })
    expect(discord.identifies.map(({ shard }) => shard)).toEqual([
      [0, 2],
      [1, 2],
    ])
    // A server's shard is what its id says: (id >> 22) modulo the number of shards.
    const guildOf = (shard: number): string => String((BigInt(1000 + shard) << 22n) + 1n)
    for (const shard of [0, 1, 1])
      expect((await discord.interaction({ ...convert, guild: guildOf(shard) })).status).toBe(204)
    await expect.poll(metrics).toContain('armlength_chat_shard_interactions_total{shard="1"} 2')
    expect(await metrics()).toContain('armlength_chat_shard_interactions_total{shard="0"} 1')
    expect(await metrics()).toContain('armlength_chat_shards_up 2')
    await discord.refuseConnections(true)
    discord.dropSockets(1)
    await expect.poll(readiness).toEqual({ status: 'degraded', reasons: ['chat shard 1 is not connected'] })
    expect(await metrics()).toContain('armlength_chat_shard_up{shard="1"} 0')
    expect(await metrics()).toContain('armlength_chat_shard_up{shard="0"} 1')
    expect((await discord.interaction({ ...convert, guild: guildOf(0) })).status).toBe(204)
    await discord.refuseConnections(false)
    await expect.poll(readiness, { timeout: 15_000 }).toEqual({ status: 'ok', reasons: [] })
    expect(discord.violations).toEqual([])
  })
})

describe('the end', () => {
  it('finishes what was taken, takes no more, and is 0', async () => {
    await open()
    await discord.interaction(adapter)
    discord.fail('callback', faults.broken(502), 1)
    discord.fail('callback', faults.slow(900), 8)
    const asked = Array.from({ length: 8 }, (_, n) =>
      discord.interaction({ ...adapter, user: { id: String(320_000_000_000_000_000n + BigInt(n)) } }, { taken: true }),
    )
    await pause(100)
    const ended = service.stop()
    await pause(200)
    await discord.interaction(convert, { within: 600 }).catch(() => undefined)
    expect((await Promise.all(asked)).map(({ status }) => status)).toEqual(Array(8).fill(204))
    expect(await ended).toBe(0)
    expect(discord.callbacks.filter(({ status }) => status < 300)).toHaveLength(9)
    expect(discord.violations).toEqual([])
  })

  it('does not wait for a Discord that hangs', async () => {
    await open()
    discord.fail('callback', faults.hang, 5)
    void discord.interaction(convert).catch(() => undefined)
    await pause(100)
    const before = performance.now()
    expect(await service.stop()).toBe(0)
    expect(performance.now() - before).toBeLessThan(7500)
  })
})
