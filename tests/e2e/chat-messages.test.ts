// Messages that ask the bot, on the built program against a fake Discord: a mention in a server and a direct message are answered by
// one reply, whatever is delivered how often to how many processes; all else is let be.
import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { people, places } from '../support/fake-discord/ask.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { faults } from '../support/fake-discord/faults.ts'
import type { Json } from '../support/fake-discord/limits.ts'
import { type Service, startService } from '../support/service.ts'

const QUESTION = '95 Nm, 45 mm crowfoot straight ahead, 380 mm wrench, what do I set?'
const HEADLINE = '**Set 84.9 N·m on the wrench: the fastener gets 95 N·m.**'

let discord: FakeDiscord
let services: Service[]
let mention: string

const open = async (): Promise<Service> => {
  const service = await startService({ DISCORD_TOKEN: discord.token, DISCORD_API_URL: discord.url })
  services.push(service)
  await discord.ready(services.length)
  await discord.until('the commands are registered', () => discord.commands.length > 0)
  return service
}
beforeEach(async () => {
  discord = await startFakeDiscord()
  services = []
  mention = `<@${discord.applicationId}>`
  await open()
})
afterEach(async () => {
  for (const service of services) service.kill()
  await discord.close()
})

const replyTo = async (id: string): Promise<Json> => {
  await discord.until('the reply is there', () => discord.repliesTo(id).length > 0)
  return discord.repliesTo(id)[0] as Json
}
const headlineOf = (message: Json): string =>
  (message as { embeds?: Array<{ description: string }> }).embeds?.[0]?.description ?? String(message['content'])
const counted = async (event: string): Promise<number> => {
  const texts = await Promise.all(services.map(async ({ url }) => (await fetch(`${url}/metrics`)).text()))
  const pattern = new RegExp(`armlength_chat_messages_total\\{event="${event}"\\} (\\d+)`)
  return texts.reduce((sum, text) => sum + Number(pattern.exec(text)?.[1] ?? 0), 0)
}
const posts = () => discord.requests.filter(({ route }) => route === 'channel-message')

describe('messages that ask', () => {
  it('a mention in a server is answered by a reply with figure and keys, as /ask is', async () => {
    const asked = discord.say({ content: `${mention} ${QUESTION}` })
    expect(asked.reached).toBe(1)
    const reply = await replyTo(asked.id)
    expect(headlineOf(reply)).toBe(HEADLINE)
    expect(reply).toMatchObject({
      ...{ type: 19, flags: 0, channel_id: asked.raw['channel_id'] },
      allowed_mentions: { parse: [], replied_user: false },
      attachments: [{ filename: 'armlength.png' }],
    })
    const command = await discord.interaction({ command: 'ask', options: { text: QUESTION } })
    const { embeds } = command.data as unknown as { embeds: Json[] }
    expect(reply['embeds']).toEqual(embeds)
    expect((reply['components'] as Json[]).length).toBe((command.data['components'] as Json[]).length)
    await expect.poll(() => counted('answered')).toBe(1)
    expect(discord.violations).toEqual([])
  })

  it('a direct message is answered without a mention, and a bare one with a hint', async () => {
    const asked = discord.say({ content: QUESTION, guild: null })
    expect(headlineOf(await replyTo(asked.id))).toBe(HEADLINE)
    const bare = discord.say({ content: '', guild: null })
    expect(headlineOf(await replyTo(bare.id))).toContain('what do I set for 95 Nm')
    await expect.poll(() => counted('hinted')).toBe(1)
    expect(discord.violations).toEqual([])
  })

  it('a reply to an answer goes on from there where it asks something', async () => {
    const first = discord.say({ content: `${mention} ${QUESTION}` })
    const answer = await replyTo(first.id)
    const thanks = discord.say({ content: 'thanks, that helps', replyTo: answer })
    const more = discord.say({ content: QUESTION.replace('straight ahead', 'at 90°'), replyTo: answer })
    expect(headlineOf(await replyTo(more.id))).toContain('95 N·m')
    await expect.poll(() => counted('silent')).toBe(1)
    expect(discord.repliesTo(thanks.id)).toEqual([])
  })

  it('what is not meant for it is let be, and nothing of it is known', async () => {
    discord.say({ content: QUESTION })
    discord.say({ content: `@everyone ${QUESTION}` })
    discord.say({ content: `<@&${discord.applicationId}> ${QUESTION}` })
    discord.say({ content: `<@${people.other.id}> ${QUESTION}` })
    discord.say({ content: `${mention} ${QUESTION}`, user: { bot: true } })
    discord.say({ content: `${mention} ${QUESTION}`, raw: { webhook_id: '900000000000000001' } })
    discord.say({ content: QUESTION, guild: null, user: discord.botUser })
    const asked = discord.say({ content: `${mention} ${QUESTION}` })
    // Edits and deletions of it are none of ours.
    discord.dispatch('MESSAGE_UPDATE', { ...asked.raw, content: `${mention} 20 Nm` })
    discord.dispatch('MESSAGE_DELETE', { id: asked.id, channel_id: asked.raw['channel_id'] })
    discord.dispatch('MESSAGE_DELETE_BULK', { ids: [asked.id], channel_id: asked.raw['channel_id'] })
    await replyTo(asked.id)
    await pause(150)
    expect(posts()).toHaveLength(1)
    expect(services[0]?.running()).toBe(true)
  })

  it('shapes that Discord does not send harm nothing', async () => {
    for (const odd of [
      null,
      'x',
      {},
      { id: 1 },
      { id: '1', channel_id: '2', content: mention, author: {}, mentions: [] },
    ])
      discord.dispatch('MESSAGE_CREATE', odd)
    const asked = discord.say({ content: `${mention} ${QUESTION}` })
    await replyTo(asked.id)
    expect(services[0]?.log()).not.toContain('failed')
  })

  it('a message is not answered once it is deleted', async () => {
    const asked = discord.say({ content: `${mention} ${QUESTION}` })
    discord.unsay(asked.id)
    await expect.poll(() => counted('gone')).toBe(1)
    expect(discord.repliesTo(asked.id)).toEqual([])
  })
})

describe('one reply and no more', () => {
  it('where it is delivered twice', async () => {
    const { id, raw } = discord.say({ content: `${mention} ${QUESTION}` })
    discord.say({ told: raw })
    await replyTo(id)
    discord.say({ told: raw })
    await expect.poll(() => counted('twice')).toBe(2)
    expect(posts()).toHaveLength(1)
  })

  it('where the connection is torn and resumed', async () => {
    discord.dropSockets()
    const { id } = discord.say({ content: `${mention} ${QUESTION}` })
    await replyTo(id)
    await pause(200)
    expect(discord.repliesTo(id)).toHaveLength(1)
    expect(discord.resumes).toHaveLength(1)
  })

  it('where Discord takes it and does not say so', async () => {
    discord.fail('channel-message', faults.took(faults.broken(502)))
    const { id } = discord.say({ content: `${mention} ${QUESTION}` })
    await expect.poll(() => counted('answered')).toBe(1)
    expect(posts().length).toBeGreaterThan(1)
    expect(discord.repliesTo(id)).toHaveLength(1)
  })

  it('where two processes hear it', async () => {
    await open()
    const { id, reached } = discord.say({ content: `${mention} ${QUESTION}` })
    expect(reached).toBe(2)
    await expect.poll(() => counted('answered')).toBe(2)
    expect(posts()).toHaveLength(2)
    expect(discord.repliesTo(id)).toHaveLength(1)
    expect(discord.violations).toEqual([])
  })
})

describe('where nothing may be said', () => {
  it('a quiet channel stays quiet, its commands still answer, and another channel does', async () => {
    const quiet = '500000000000000009'
    const by = { raw: { member: { user: people.other, roles: [], permissions: '32' } } }
    await discord.interaction({ command: 'settings', subcommand: 'server', options: { quiet }, ...by })
    const hushed = discord.say({ content: `${mention} ${QUESTION}`, channel: quiet })
    await expect.poll(() => counted('quiet')).toBe(1)
    const command = await discord.interaction({ command: 'ask', options: { text: QUESTION }, channel: quiet })
    expect(command.data['flags']).toBe(64)
    const [thread, other] = ['500000000000000011', '500000000000000012']
    discord.hangThread(thread, quiet)
    discord.hangThread(other, places.channel)
    discord.say({ content: `${mention} ${QUESTION}`, channel: thread })
    await expect.poll(() => counted('quiet')).toBe(2)
    await replyTo(discord.say({ content: `${mention} ${QUESTION}`, channel: other }).id)
    const aloud = discord.say({ content: `${mention} ${QUESTION}` })
    await replyTo(aloud.id)
    expect(discord.repliesTo(hushed.id)).toEqual([])
    expect(posts()).toHaveLength(2)
  })

  it('a channel in which the bot may not write costs one try, is counted, and harms nothing', async () => {
    const shut = '500000000000000008'
    discord.shutChannel(shut)
    discord.say({ content: `${mention} ${QUESTION}`, channel: shut })
    await expect.poll(() => counted('forbidden')).toBe(1)
    discord.say({ content: `${mention} ${QUESTION}`, channel: shut })
    await expect.poll(() => counted('forbidden')).toBe(2)
    expect(posts()).toHaveLength(1)
    expect(discord.invalidRequests).toBe(1)
    await replyTo(discord.say({ content: `${mention} ${QUESTION}` }).id)
    expect(services[0]?.log()).toContain('a reply did not arrive')
  })
})

describe('hostile messages', () => {
  it('ping nobody and bring no markup to life', async () => {
    const bad = '@everyone @here <@x> **x** [x](y) `a` ||b|| # c'
    const asked = discord.say({ content: `${mention} ${QUESTION} ${'so '.repeat(440)}${bad}` })
    const reply = await replyTo(asked.id)
    const shown = JSON.stringify(reply['embeds'])
    expect(shown).toContain('everyone')
    expect(shown).not.toMatch(/(?<!\\\\)@(?:everyone|here)|(?<!\\\\)<|(?<!\\\\)\]\(|(?<!\\\\)`|(?<!\\\\)\|/)
    expect(reply['content']).toBe('')
    expect(discord.violations).toEqual([])
  })

  it('of one who asks without end are answered within the limits, and others are still answered', async () => {
    for (let n = 0; n < 60; n++)
      discord.say({ content: `${mention} ${QUESTION}`, channel: String(510_000_000_000_000_000n + BigInt(n)) })
    await expect.poll(() => counted('refused-busy'), { timeout: 10_000 }).toBeGreaterThanOrEqual(35)
    await replyTo(discord.say({ content: `${mention} ${QUESTION}`, user: people.other }).id)
    expect(posts().length).toBeLessThanOrEqual(26)
    expect(discord.violations).toEqual([])
  })
})
