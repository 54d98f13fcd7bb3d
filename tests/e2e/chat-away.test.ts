// The built program while Discord is unwell for longer: few logins are used, the kiosk goes on, chat comes back. The tests are mostly
// waiting, and run side by side, each with a Discord and a program of its own.
import { setTimeout as pause } from 'node:timers/promises'
import { describe, it } from 'vitest'
import { type FakeDiscord, type FakeOptions, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { faults } from '../support/fake-discord/faults.ts'
import { type Service, startService } from '../support/service.ts'

const TOLD_MS = 5000
const convert = { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }

interface World {
  readonly discord: FakeDiscord
  readonly start: () => Promise<Service>
  readonly readiness: () => Promise<{ readonly status: string; readonly reasons: readonly string[] }>
  readonly page: () => Promise<number>
}

/** A Discord, and a program that is started against it when the test says so; both end with the test. */
const begin = async (ends: (end: () => Promise<void>) => void, options: FakeOptions = {}): Promise<World> => {
  const discord = await startFakeDiscord(options)
  let service: Service | undefined
  ends(async () => {
    service?.kill()
    await discord.close()
  })
  const get = (path: string): Promise<Response> => fetch(`${service?.url}${path}`)
  return {
    discord,
    start: async () => {
      service = await startService({ DISCORD_TOKEN: discord.token, DISCORD_API_URL: discord.url })
      return service
    },
    readiness: async () => (await get('/readyz')).json() as Promise<{ status: string; reasons: string[] }>,
    page: async () => (await get('/ask/pull?torque=100+N%C2%B7m&hand=1+m')).status,
  }
}

/** Started, connected, with its commands registered. */
const open = async ({ discord, start }: World): Promise<Service> => {
  const service = await start()
  await discord.ready(1, 15_000)
  await discord.until('the commands are registered', () => discord.commands.length > 0, 15_000)
  return service
}

describe.concurrent('the logins of a day', () => {
  it('where none is left, chat stays out and says why; HTTP and kiosk are open', async ({ expect, onTestFinished }) => {
    const world = await begin(onTestFinished, { identifiesADay: 1 })
    const { discord, readiness, page } = world
    const service = await world.start()
    await expect
      .poll(readiness)
      .toEqual({ status: 'degraded', reasons: ['few logins are left today (1): chat waits 240 min'] })
    await pause(500)
    expect(discord.identifies).toEqual([])
    expect(await page()).toBe(200)
    expect(await service.stop()).toBe(0)
  })

  it('where the last is used up, a session that ends is not begun anew; HTTP and kiosk are open', async ({
    expect,
    onTestFinished,
  }) => {
    const world = await begin(onTestFinished, { identifiesADay: 2 })
    const { discord, readiness, page } = world
    const service = await open(world)
    discord.endSessions(true)
    await discord.until('it is told', () => service.log().includes('a chat shard waits before it logs in again'))
    await pause(6500)
    expect(discord.identifies).toHaveLength(1)
    expect((await readiness()).reasons).toEqual(['chat shard 0 is not connected'])
    expect(await page()).toBe(200)
    expect(await service.stop()).toBe(0)
  })

  it('sessions that end again and again cost few of them, and chat comes back', async ({ expect, onTestFinished }) => {
    const world = await begin(onTestFinished)
    const { discord, readiness, page } = world
    await open(world)
    for (let n = 0; n < 12; n++) {
      discord.endSessions(true)
      await pause(250)
    }
    expect(discord.identifies.length).toBeLessThanOrEqual(3)
    expect((await readiness()).reasons).toEqual(['chat shard 0 is not connected'])
    expect(await page()).toBe(200)
    await discord.ready(1, 15_000)
    await expect.poll(readiness, { timeout: TOLD_MS }).toEqual({ status: 'ok', reasons: [] })
    expect((await discord.interaction(convert)).status).toBe(204)
    expect(discord.identifies.length).toBeLessThanOrEqual(4)
  })
})

describe.concurrent('Discord away', () => {
  it('for long: the kiosk serves, chat says so, and is back without a restart and with one login more', async ({
    expect,
    onTestFinished,
  }) => {
    const world = await begin(onTestFinished)
    const { discord, readiness, page } = world
    const service = await open(world)
    await discord.refuseConnections(true, 'both')
    discord.dropSockets()
    await expect
      .poll(readiness, { timeout: TOLD_MS })
      .toEqual({ status: 'degraded', reasons: ['chat shard 0 is not connected'] })
    for (let n = 0; n < 16; n++) {
      expect(await page()).toBe(200)
      await pause(500)
    }
    expect(
      service
        .log()
        .split('\n')
        .filter((line) => line.includes('a chat shard is away')),
    ).toHaveLength(1)
    await discord.refuseConnections(false, 'both')
    await discord.ready(1, 15_000)
    expect((await discord.interaction(convert)).status).toBe(204)
    await expect.poll(readiness, { timeout: TOLD_MS }).toEqual({ status: 'ok', reasons: [] })
    expect(discord.identifies.length).toBeLessThanOrEqual(2)
    expect(discord.violations).toEqual([])
  })

  it('at the start, whole or only its gateway: chat opens when it is there', async ({ expect, onTestFinished }) => {
    const world = await begin(onTestFinished)
    const { discord, readiness } = world
    await discord.refuseConnections(true, 'both')
    const service = await world.start()
    await discord.until('it is told', () => service.log().includes('trying again later'))
    await discord.refuseConnections(false, 'rest')
    await pause(1000)
    await discord.refuseConnections(false, 'gateway')
    await discord.ready(1, 15_000)
    await discord.until('the commands are registered', () => discord.commands.length > 0, 15_000)
    expect((await discord.interaction(convert)).status).toBe(204)
    await expect.poll(readiness, { timeout: TOLD_MS }).toEqual({ status: 'ok', reasons: [] })
  })

  it('a registration that Discord is too ill for is done later', async ({ onTestFinished }) => {
    const world = await begin(onTestFinished)
    const { discord } = world
    discord.fail('commands-get', faults.broken(503), 4)
    await world.start()
    await discord.until('the commands are registered', () => discord.commands.length > 0, 15_000)
  })
})
