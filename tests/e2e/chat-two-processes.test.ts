// Two processes of the built program on one PostgreSQL, each with one of two shards: nothing is answered or kept twice, what is set
// and kept through one is known to the other, a database that is slow makes an answer late and not lost, and each ends by itself.
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Ask } from '../support/fake-discord/ask.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { type Cluster, hasPostgres, mustHavePostgres, startCluster } from '../support/postgres.ts'
import { type Service, startService } from '../support/service.ts'

const KEEPERS = '600000000000000001'
// A server's shard is what its id says: (id >> 22) modulo the number of shards.
const guilds = [0, 1].map((shard) => String((BigInt(2000 + shard) << 22n) + 1n)) as [string, string]

describe.skipIf(!hasPostgres && !mustHavePostgres)('two processes with a shard each', () => {
  let cluster: Cluster
  let discord: FakeDiscord
  let services: Service[] = []
  beforeAll(async () => {
    cluster = await startCluster()
    const database = await cluster.database()
    // Discord lets one shard identify in five seconds, whichever process it is in.
    discord = await startFakeDiscord({ shards: 2, identifySpacingMs: 5000 })
    const start = (shards: string) =>
      startService({
        DISCORD_TOKEN: discord.token,
        DISCORD_API_URL: discord.url,
        DISCORD_SHARDS: shards,
        DISCORD_KEEPER_ROLE: KEEPERS,
        DATABASE_URL: database,
      })
    services = await Promise.all([start('0/2'), start('1/2')])
    await discord.ready(2, 45_000)
    await discord.until('the commands are registered', () => discord.commands.length > 0)
  }, 90_000)
  afterAll(async () => {
    for (const service of services) service.kill()
    await discord?.close()
    await cluster?.remove()
  })

  let askers = 0
  const member = (id: string) => ({
    user: { id, username: 'hand', global_name: 'Hand', discriminator: '0', avatar: null },
    ...{ roles: [KEEPERS], permissions: '0', joined_at: '2024-01-01T00:00:00.000000+00:00' },
    ...{ deaf: false, mute: false, flags: 0 },
  })
  const from = (shard: 0 | 1, ask: Ask, who = String(340_000_000_000_000_000n + BigInt(++askers))): Ask => ({
    ...ask,
    guild: guilds[shard],
    raw: { member: member(who) },
  })
  const convert: Ask = { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }
  const wrench = (subcommand: string, options: Record<string, string>): Ask => ({
    command: 'wrench',
    subcommand,
    options,
  })
  const card = {
    tag: 'W-07',
    name: 'Half-inch click wrench',
    'wrench-type': 'click',
    least: '40 N·m',
    most: '200 N·m',
    lever: '400 mm',
  }
  const metrics = async (service: Service | undefined) => (await fetch(`${service?.url}/metrics`)).text()
  const textOf = (value: unknown): string => JSON.stringify(value)

  it('each holds its own shard, and says how it is', async () => {
    expect(
      discord.identifies
        .filter(({ accepted }) => accepted)
        .map(({ shard }) => shard[0])
        .sort(),
    ).toEqual([0, 1])
    expect(discord.identifies.length).toBeLessThanOrEqual(4)
    for (const [shard, service] of services.entries()) {
      await expect.poll(() => metrics(service)).toContain(`armlength_chat_shard_up{shard="${shard}"} 1`)
      expect(await metrics(service)).not.toContain(`armlength_chat_shard_up{shard="${1 - shard}"}`)
      await expect
        .poll(async () => (await fetch(`${service.url}/readyz`)).json())
        .toEqual({ status: 'ok', reasons: [] })
    }
  })

  it('each answers what comes over its shard, once', async () => {
    for (let n = 0; n < 20; n++) {
      const both = await Promise.all([discord.interaction(from(0, convert)), discord.interaction(from(1, convert))])
      expect(both.map(({ status }) => status)).toEqual([204, 204])
    }
    await pause(200)
    expect(discord.callbacks).toHaveLength(40)
    for (const [shard, service] of services.entries())
      await expect
        .poll(() => metrics(service))
        .toContain(`armlength_chat_shard_interactions_total{shard="${shard}"} 20`)
    expect(discord.violations).toEqual([])
  })

  it('what both see is answered once and kept once: Discord’s word is the last', async () => {
    const raw = discord.issue(from(0, wrench('add', card)))
    discord.deliverToAll(raw)
    await discord.until('both have tried', () => discord.callbacksOf(String(raw['id'])).length === 2)
    expect(
      discord
        .callbacksOf(String(raw['id']))
        .map(({ status }) => status)
        .sort(),
    ).toEqual([204, 400])
    expect(discord.violations.map(({ code }) => code)).toEqual(['40060'])
    discord.forgetViolations()
    const history = await (await fetch(`${services[0]?.url}/v1/wrenches/W-07`)).json()
    expect(textOf(history).match(/Half-inch click wrench/g)?.length).toBeGreaterThan(0)
    const exported = await (await fetch(`${services[1]?.url}/v1/export.json`)).text()
    expect(exported.match(/"kind":"wrench"/g)).toHaveLength(1)
  })

  it('what is kept through one is shown by the other', async () => {
    const { data } = await discord.interaction(from(1, wrench('show', { wrench: 'W-07' })))
    expect(textOf(data)).toContain('Half-inch click wrench')
  })

  it('what somebody sets through one, the other goes by', async () => {
    const who = '350000000000000001'
    await discord.interaction(from(0, { command: 'settings', subcommand: 'mine', options: { units: 'inch' } }, who))
    const bare: Ask = { command: 'adapter', options: { torque: '100', lever: '14 in', adapter: '2 in' } }
    const { data } = await discord.interaction(from(1, bare, who))
    expect(textOf(data)).toContain('87.5 lbf·ft')
  })

  it('while the database stands still an answer is promised privately, and put in when it is back', async () => {
    const asksFor = wrench('show', { wrench: 'W-07' })
    const thaw = cluster.freeze()
    const asked = discord.interaction(from(1, asksFor))
    const isEdit = ({ route, status, path }: FakeDiscord['requests'][number]) =>
      route === 'message-patch' && status === 200 && path.includes(String(asked.raw['token']))
    try {
      expect(await asked).toMatchObject({ type: 5, data: { flags: 64 } })
      // Nobody else waits for it.
      expect((await discord.interaction(from(1, convert))).ms).toBeLessThan(1000)
    } finally {
      thaw()
    }
    await discord.until('the answer is put in', () => discord.requests.some(isEdit), 10_000)
    const edit = discord.requests.find(isEdit)
    expect(textOf(edit?.body)).toContain('Half-inch click wrench')
    expect(edit?.authorized).toBe(false)
    await expect
      .poll(() => metrics(services[1]))
      .toContain('armlength_chat_interactions_total{event="answered-late"} 1')
    expect(discord.violations).toEqual([])
  })

  it('one that ends leaves the other alone', async () => {
    expect(await services[0]?.stop()).toBe(0)
    expect((await discord.interaction(from(1, convert))).status).toBe(204)
    expect(await (await fetch(`${services[1]?.url}/readyz`)).json()).toEqual({ status: 'ok', reasons: [] })
    expect(await services[1]?.stop()).toBe(0)
  })
})
