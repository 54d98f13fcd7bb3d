// Shows that the fake tells of messages only to whom Discord would, and holds what a bot says by itself to Discord's limits.

import { GatewayDispatchEvents } from 'discord.js'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { WebSocket } from 'ws'
import { connect, disconnectAll, post } from './fake-client.ts'
import { type FakeDiscord, startFakeDiscord } from './fake-discord.ts'
import type { Json } from './limits.ts'

const GUILD = 1 << 9
const DIRECT = 1 << 12
const path = '/channels/500000000000000001/messages'
const mentions = { parse: [], replied_user: false }

let fake: FakeDiscord
beforeEach(async () => {
  fake = await startFakeDiscord()
})
afterEach(async () => {
  await disconnectAll()
  await fake.close()
})

const hearAll = async (intents: number): Promise<Json[]> => {
  const client = await connect(fake, undefined, { intents })
  const heard: Json[] = []
  client.ws.on(GatewayDispatchEvents.MessageCreate, (message: Json) => heard.push(message))
  return heard
}

describe('messages of people', () => {
  test('come only to those who asked for such', async () => {
    await hearAll(0)
    expect(fake.say({ content: 'a' }).reached).toBe(0)
    await hearAll(GUILD)
    expect(fake.say({ content: 'a' }).reached).toBe(1)
    expect(fake.say({ content: 'a', guild: null }).reached).toBe(0)
    await hearAll(DIRECT)
    expect(fake.say({ content: 'a', guild: null }).reached).toBe(1)
  })

  test('say something only to the bot that they mention or are sent to', async () => {
    const heard = await hearAll(GUILD | DIRECT)
    fake.say({ content: 'a secret' })
    fake.say({ content: `<@${fake.applicationId}> a` })
    fake.say({ content: 'b', guild: null })
    await fake.until('all are heard', () => heard.length === 3)
    expect(heard.map(({ content }) => content)).toEqual(['', `<@${fake.applicationId}> a`, 'b'])
  })

  test('are not to be had whole without leave', async () => {
    const socket = new WebSocket(`${fake.gatewayUrl}?v=10&encoding=json`)
    const closed = new Promise<number>((resolve) => socket.addEventListener('close', ({ code }) => resolve(code)))
    const d = { token: fake.token, intents: GUILD | (1 << 15), properties: {} }
    socket.addEventListener('open', () => socket.send(JSON.stringify({ op: 2, d })))
    expect(await closed).toBe(4014)
  })
})

describe('a message of the bot’s own', () => {
  const send = (body: Json) => post(fake, path, body, { token: fake.token })
  const good = { content: 'a', allowed_mentions: mentions }

  test.each<[string, Json, string]>([
    ['that is for one alone', { ...good, flags: 64 }, 'flags'],
    ['with a long name', { ...good, nonce: 'a'.repeat(26) }, 'nonce'],
    ['with no name to be enforced', { ...good, enforce_nonce: true }, 'nonce'],
    ['that replies to nothing', { ...good, message_reference: {} }, 'message_reference.message_id'],
    [
      'that pings whom it replies to',
      { content: 'a', allowed_mentions: { parse: [] }, message_reference: { message_id: '1' } },
      'allowed_mentions.replied_user',
    ],
    ['that pings', { ...good, allowed_mentions: { parse: ['users'] } }, 'allowed_mentions.parse'],
    ['that is empty', { allowed_mentions: mentions }, ''],
  ])('%s is refused', async (_, body, where) => {
    expect(await send(body)).toMatchObject({ status: 400 })
    expect(fake.violations).toContainEqual(expect.objectContaining({ where: 'channel-message', path: where }))
    expect(fake.channelMessages()).toEqual([])
  })

  test('replies to what is there', async () => {
    const { id } = fake.say({ content: 'a' })
    const reply = { ...good, message_reference: { message_id: id } }
    expect(await send(reply)).toMatchObject({ status: 200 })
    expect(fake.repliesTo(id)).toHaveLength(1)
    fake.unsay(id)
    expect(await send(reply)).toMatchObject({ status: 400, body: { code: 50035 } })
    expect(await send({ ...reply, message_reference: { message_id: id, fail_if_not_exists: false } })).toMatchObject({
      status: 200,
    })
    expect(fake.violations).toEqual([])
  })

  test('under one name is one', async () => {
    const named = { ...good, nonce: 'n', enforce_nonce: true }
    await send(named)
    await send(named)
    expect(fake.channelMessages()).toHaveLength(1)
    await send({ ...named, nonce: 'm' })
    expect(fake.channelMessages()).toHaveLength(2)
  })
})
