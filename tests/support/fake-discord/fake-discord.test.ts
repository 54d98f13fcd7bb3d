// Shows that the fake is a gateway and an API that the real client believes, in good times and bad.

import { setTimeout as pause } from 'node:timers/promises'
import { Client, Events, Routes } from 'discord.js'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { WebSocket } from 'ws'
import { connect, disconnectAll, failureOf, post } from './fake-client.ts'
import { type FakeDiscord, startFakeDiscord } from './fake-discord.ts'
import { goodCommands } from './good-payloads.ts'
import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'

const { adapterSetting } = interactions

let fake: FakeDiscord

beforeEach(async () => {
  fake = await startFakeDiscord()
})
afterEach(async () => {
  await disconnectAll()
  await fake.close()
})

describe('the gateway', () => {
  test('lets a client log in and tells its user, with no intents', async () => {
    const client = await connect(fake)
    expect(client.user?.id).toBe(fake.applicationId)
    expect(fake.identifies).toMatchObject([{ shard: [0, 1], intents: 0, accepted: true }])
    expect(fake.requests).toMatchObject([{ route: 'gateway-bot', status: 200, authorized: true }])
    expect(fake.violations).toEqual([])
  })

  test('turns a wrong token away, at the API with 401 and at the gateway with 4004', async () => {
    const client = new Client({ intents: 0, rest: { api: fake.url } })
    expect(await failureOf(client.login('wrong'))).toMatchObject({ code: 'TokenInvalid' })
    expect(fake.invalidRequests).toBe(1)
    const socket = new WebSocket(`${fake.gatewayUrl}/?v=10&encoding=json`)
    const closed = new Promise<number>((resolve) => socket.addEventListener('close', ({ code }) => resolve(code)))
    socket.addEventListener('open', () => socket.send(JSON.stringify({ op: 2, d: { token: 'wrong', intents: 0 } })))
    expect(await closed).toBe(4004)
    expect(fake.identifies).toMatchObject([{ accepted: false }])
  })

  test('replays after a drop what was sent meanwhile, and the answer comes', async () => {
    await connect(fake)
    await fake.interaction(adapterSetting)
    fake.dropSockets()
    await pause(20)
    const missed = await fake.interaction(adapterSetting)
    expect(missed).toMatchObject({ status: 204, type: 4 })
    expect(missed.ms).toBeGreaterThan(100)
    expect(fake.resumes).toMatchObject([{ accepted: true, replayed: 1 }])
    expect(fake.identifies).toHaveLength(1)
    expect(fake.violations).toEqual([])
  })

  test('resumes after close code 4000 and after being asked to reconnect', async () => {
    await connect(fake)
    fake.closeSockets(4000)
    await fake.until('resumed once', () => fake.resumes.length === 1)
    await fake.interaction(adapterSetting)
    fake.askToReconnect()
    await fake.until('resumed twice', () => fake.resumes.length === 2)
    await fake.interaction(adapterSetting)
    expect(fake.identifies).toHaveLength(1)
  })

  test('loses what was missed when new connections were refused, because the client identifies anew', async () => {
    await connect(fake)
    await fake.refuseConnections(true)
    fake.dropSockets()
    await pause(20)
    const lost = fake.interaction(adapterSetting, { within: 2500 })
    await pause(700)
    await fake.refuseConnections(false)
    await fake.until('identified anew', () => fake.identifies.length === 2)
    expect(fake.resumes).toEqual([])
    await expect(fake.interaction(adapterSetting)).resolves.toMatchObject({ status: 204 })
    await expect(lost).rejects.toThrow('no callback')
  })

  test('makes the client identify anew where a session cannot be resumed', async () => {
    await connect(fake)
    fake.endSessions()
    fake.dropSockets()
    await fake.until('identified anew', () => fake.identifies.length === 2)
    expect(fake.resumes).toMatchObject([{ accepted: false }])
    // Let READY arrive: a client that is destroyed between its IDENTIFY and READY hangs.
    await fake.interaction(adapterSetting)
  })

  test('ends a session for good with 4004, which only shardDisconnect tells', async () => {
    const client = await connect(fake)
    const gone = new Promise((resolve) => client.on(Events.ShardDisconnect, ({ code }) => resolve(code)))
    fake.closeSockets(4004)
    expect(await gone).toBe(4004)
    await pause(700)
    expect(fake.identifies).toHaveLength(1)
    expect(() => fake.interaction(adapterSetting)).toThrow('no gateway session')
  })

  test('has unanswered heartbeats found out by the client, which then resumes', async () => {
    await fake.close()
    fake = await startFakeDiscord({ heartbeatMs: 60 })
    await connect(fake)
    await fake.until('some heartbeats', () => fake.heartbeats > 2)
    fake.ignoreHeartbeats(true)
    await fake.until('resumed', () => fake.resumes.length > 0)
  })

  test('takes one session a shard and sends each the servers that are its own', async () => {
    await fake.close()
    fake = await startFakeDiscord({ shards: 2 })
    const heard: unknown[] = []
    const client = await connect(fake, () => {}, { shards: 'auto' })
    client.on(Events.Raw, (packet: { t: string }, shard) => packet.t === 'INTERACTION_CREATE' && heard.push(shard))
    await fake.ready(2)
    for (const guild of [String(4n << 22n), String(5n << 22n), null]) fake.interaction({ ...adapterSetting, guild })
    await fake.until('three are heard', () => heard.length === 3)
    expect(fake.identifies.map((one) => one.shard)).toEqual([
      [0, 2],
      [1, 2],
    ])
    expect(heard.toSorted()).toEqual([0, 0, 1])
  })
})

describe('commands', () => {
  test('come back with ids, versions and defaults, and keep both when nothing changes', async () => {
    const client = await connect(fake)
    const path = Routes.applicationCommands(fake.applicationId)
    const first = (await client.rest.put(path, { body: goodCommands })) as Json[]
    const second = (await client.rest.put(path, { body: goodCommands })) as Json[]
    const got = (await client.rest.get(path)) as Json[]
    expect(first).toHaveLength(goodCommands.length)
    expect(second).toEqual(first)
    expect(first[0]).toMatchObject({
      application_id: fake.applicationId,
      type: 1,
      default_member_permissions: null,
      dm_permission: true,
      contexts: null,
      integration_types: [0],
      nsfw: false,
      name_localizations: { de: expect.any(String) },
    })
    expect(got[0]).not.toHaveProperty('name_localizations')
    expect(await client.rest.get(path, { query: new URLSearchParams({ with_localizations: 'true' }) })).toEqual(first)
    const changed = (await client.rest.put(path, { body: [{ ...goodCommands[0], description: 'new' }] })) as Json[]
    expect(changed[0]).toMatchObject({ id: first[0]?.['id'] })
    expect(changed[0]?.['version']).not.toBe(first[0]?.['version'])
    expect(fake.violations).toEqual([])
  })

  test('want the token, and the application it belongs to', async () => {
    expect(await post(fake, `/applications/${fake.applicationId}/commands`, [], { method: 'PUT' })).toMatchObject({
      status: 401,
    })
    expect(await post(fake, '/applications/1/commands', [], { method: 'PUT', token: fake.token })).toMatchObject({
      body: { code: 20012 },
    })
  })

  test('that are registered keep a test from sending what Discord could not', async () => {
    await connect(fake)
    fake.register([
      { name: 'adapter', description: 'a', options: [{ type: 3, name: 'torque', description: 'b', required: true }] },
      { name: 'hand', description: 'a', options: [{ type: 1, name: 'pull', description: 'b' }] },
    ])
    expect(() => fake.interaction(adapterSetting)).toThrow('it has no option lever')
    expect(() => fake.interaction({ command: 'adapter' })).toThrow('it requires torque')
    expect(() => fake.interaction({ command: 'hand' })).toThrow('it needs a sub-command')
    expect(() => fake.interaction({ command: 'bolt' })).toThrow('no such command is registered')
    await fake.interaction({ command: 'hand', subcommand: 'pull' })
    await fake.interaction({ ...adapterSetting, stale: true })
  })
})
