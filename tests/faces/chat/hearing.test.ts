// Messages that ask, in process: what is said to them, in which language, with whose settings; and what is counted of those to which
// nothing is said. Every reply is held against Discord's limits.
import { beforeEach, describe, expect, it } from 'vitest'
import type { MessageEvent } from '../../../src/counters.ts'
import { type Asker, askTextKnowing, type Desk } from '../../../src/desk/desk.ts'
import { ownScope, serverScope } from '../../../src/faces/chat/liking.ts'
import { createHearing, type Hearing, type HearingParts } from '../../../src/faces/chat/messages/hearing.ts'
import { createPlaces } from '../../../src/faces/chat/messages/places.ts'
import { type Arrived, bodyOf } from '../../../src/faces/chat/messages/sending.ts'
import type { ChatReply } from '../../../src/faces/chat/reply.ts'
import { renderReply } from '../../../src/faces/chat/reply.ts'
import { languages } from '../../../src/words/index.ts'
import { type Chat, openChatInProcess, START, said, verbsOf } from '../../support/chat.ts'
import { places } from '../../support/fake-discord/ask.ts'
import { checkChannelMessage } from '../../support/fake-discord/limits.ts'
import { buildMessage, type Say } from '../../support/fake-discord/said.ts'

const SELF = '100000000000000001'
const botUser = { id: SELF, username: 'armlength', bot: true }
const QUESTION = '95 Nm, 45 mm crowfoot straight ahead, 380 mm wrench, what do I set?'
const asking = `<@${SELF}> ${QUESTION}`

let chat: Chat
let now: number
let counted: MessageEvent[]
let sent: Array<{ id: string; reply: ChatReply }>
let arrives: Arrived
let logged: unknown[]
let hearing: Hearing
const servers = createPlaces()

const build = (more: Partial<HearingParts> = {}): Hearing =>
  createHearing({
    work: chat.parts.answers as NonNullable<Chat['parts']['answers']>,
    places: servers,
    parentOf: async () => null,
    isWithin: () => true,
    send: async (heard, reply) => {
      const files = reply.files.map(({ name, data }, n) => ({
        ...{ key: `files[${n}]`, name, contentType: 'image/png' },
        ...{ size: data.length, bytes: data },
      }))
      expect(checkChannelMessage(JSON.parse(JSON.stringify(bodyOf(reply, heard))), files)).toEqual([])
      sent.push({ id: heard.id, reply })
      return arrives
    },
    now: () => now,
    reference: () => 'r-1',
    countMessage: (event) => counted.push(event),
    log: { error: (facts) => logged.push(facts) },
    ...more,
  })

const raw = (say: Say) => buildMessage(say, { botUser, now })
const hear = (say: Say) => hearing.hear(raw(say), SELF)
const text = (n = 0): string => said(sent[n]?.reply as ChatReply)

beforeEach(() => {
  chat = openChatInProcess()
  now = START
  counted = []
  sent = []
  logged = []
  arrives = 'sent'
  hearing = build()
})

describe('what is said to a message', () => {
  it.each<[string, Say]>([
    ['that mentions the bot', { content: asking }],
    ['that is sent to it', { content: QUESTION, guild: null }],
    ['that replies to it with a question', { content: QUESTION, replyTo: { id: '7', author: botUser } }],
  ])('%s is the answer of /ask, laid out as that', async (_, say) => {
    expect(await hear(say)).toBe('answered')
    const answer = await askTextKnowing(chat.desk, QUESTION, { door: 'chat', locale: 'en' })
    expect(answer.status).toBe('answered')
    const laidOut = renderReply(answer, languages.en.words, { data: Buffer.from(''), alt: '' })
    expect(sent[0]?.reply.data.embeds).toEqual(laidOut.data.embeds)
    expect(sent[0]?.reply.files.map(({ name }) => name)).toEqual(['armlength.png'])
    expect(verbsOf(sent[0]?.reply as ChatReply)).toEqual(['next', 'work', 'pic', 'units', 'edit', 'gone'])
    expect(counted).toEqual(['answered'])
  })

  it('is a reply that pings nobody, under a name that is taken once, and nobody’s alone', async () => {
    await hear({ content: asking })
    const { id, reply } = sent[0] as (typeof sent)[0]
    const body = bodyOf(reply, { id })
    expect(body).toMatchObject({
      message_reference: { message_id: id, fail_if_not_exists: true },
      allowed_mentions: { parse: [], replied_user: false },
      nonce: `m${id}`,
      enforce_nonce: true,
    })
    expect(body.flags).toBeUndefined()
    expect((body.nonce as string).length).toBeLessThanOrEqual(25)
  })

  it('what is missing is asked back before all who are there, with a form for it', async () => {
    expect(await hear({ content: `<@${SELF}> 95 Nm with a 45 mm crowfoot, what do I set?` })).toBe('answered')
    expect(verbsOf(sent[0]?.reply as ChatReply)).toContain('fill')
    expect(bodyOf(sent[0]?.reply as ChatReply, { id: '1' }).flags).toBeUndefined()
  })

  it('a key under it does what it does under an answer to a command', async () => {
    await hear({ content: asking })
    const turned = await chat.press(sent[0]?.reply as ChatReply, 'units')
    expect(said(turned)).toContain('lbf·ft')
    expect(turned.data.flags).toBe(64)
    const removed = await chat.press(sent[0]?.reply as ChatReply, 'gone')
    expect(removed.way).toBe('remove')
  })

  it('a wrench of the shop that is named lends its lever, under its keys too', async () => {
    const card = { tag: 'W-03', name: 'half inch', 'wrench-type': 'click', most: '200 N·m', lever: '380 mm' }
    await chat.shop.keep('wrench', card, { role: 'keeper', door: 'http', key: 'k' })
    await hear({ content: `<@${SELF}> w-03, 45 mm crowfoot straight ahead, 95 Nm, what do I set?` })
    expect(text()).toContain('84.9 N·m')
    expect(said(await chat.press(sent[0]?.reply as ChatReply, 'units'))).toContain('62.6 lbf·ft')
  })

  it('where nothing is asked, a hint how to', async () => {
    expect(await hear({ content: `<@${SELF}>` })).toBe('hinted')
    expect(await hear({ content: '', guild: null })).toBe('hinted')
    expect(text()).toBe(languages.en.words.chat.mentionHint)
    expect(text(1)).toBe(text())
  })

  it('out of scope is said to whoever asked the bot, and not to whoever replied to it', async () => {
    expect(await hear({ content: `<@${SELF}> thanks a lot` })).toBe('answered')
    expect(await hear({ content: 'thanks a lot', replyTo: { id: '7', author: botUser } })).toBe('silent')
    expect(sent).toHaveLength(1)
  })

  it('nothing that was typed comes alive', async () => {
    const bad = '@everyone @here <@x> **x** [x](y) `a` ||b|| # c'
    await hear({ content: `<@${SELF}> ${QUESTION} ${'so '.repeat(440)}${bad}` })
    const { embeds, content } = (sent[0] as (typeof sent)[0]).reply.data
    expect(content).toBeUndefined()
    const shown = JSON.parse(JSON.stringify(embeds)) as Array<{ fields: Array<{ value: string }> }>
    const line = shown[0]?.fields.map(({ value }) => value).find((value) => value.includes('everyone'))
    expect(line).toContain('\\@everyone \\@here \\<\\@x\\> \\*\\*x\\*\\* \\[x\\](y) \\`a\\` \\|\\|b\\|\\| ')
  })
})

describe('the language', () => {
  const german = 'Was stelle ich ein: 95 Nm, Schlüssel 380 mm, Krähenfuß 45 mm gerade nach vorn?'
  const bare = '95 Nm, 45 mm crowfoot, 380 mm'

  it('is that of the text, where it is plain', async () => {
    await hear({ content: german, guild: null })
    expect(sent[0]?.reply.data.embeds?.[0]?.title).toBe(languages.de.words.questions['adapter-setting'])
  })

  it('else that of the server, as its interactions told; else the desk’s', async () => {
    await hear({ content: `<@${SELF}> ${bare}` })
    expect(sent[0]?.reply.data.embeds?.[0]?.title).toBe(languages.en.words.questions['adapter-setting'])
    servers.note({ guild_id: places.elsewhere, guild_locale: 'fr' as never })
    await hear({ content: `<@${SELF}> ${bare}`, guild: places.elsewhere })
    expect(sent[1]?.reply.data.embeds?.[0]?.title).toBe(languages.fr.words.questions['adapter-setting'])
    await hear({ content: `<@${SELF}>`, guild: places.elsewhere })
    expect(text(2)).toBe(languages.fr.words.chat.mentionHint)
    await hear({ content: `<@${SELF}> what do I set for 95 Nm with a 45 mm crowfoot?`, guild: places.elsewhere })
    expect(sent[3]?.reply.data.embeds?.[0]?.title).toBe(languages.en.words.questions['adapter-setting'])
  })
})

describe('what is set', () => {
  const at = new Date(START).toISOString()

  it('the asker’s own units go with the question', async () => {
    await chat.store.setOwn({ owner: ownScope('300000000000000001'), name: 'units', value: 'inch', at })
    const work = chat.parts.answers as NonNullable<Chat['parts']['answers']>
    const askers: Asker[] = []
    const desk: Desk = {
      ...work.desk,
      askText: (asked, asker, loan) => {
        askers.push(asker)
        return work.desk.askText(asked, asker, loan)
      },
    }
    hearing = build({ work: { ...work, desk } })
    await hear({ content: asking })
    await hear({ content: asking, user: { id: '300000000000000002' } })
    expect(askers).toMatchObject([{ door: 'chat', own: 'inch' }, { door: 'chat' }])
    expect(askers[1]?.own).toBeUndefined()
  })

  it('in a quiet channel nothing is said, wherever else it is', async () => {
    const by = { role: 'keeper', door: 'chat' } as const
    await chat.store.set({ scope: serverScope(places.shop), name: 'quiet', value: '500000000000000009', at, by })
    expect(await hear({ content: asking, channel: '500000000000000009' })).toBe('quiet')
    expect(await hear({ content: `<@${SELF}>`, channel: '500000000000000009' })).toBe('quiet')
    expect(sent).toEqual([])
    expect(await hear({ content: asking })).toBe('answered')
  })

  it.each([
    ['its thread', '500000000000000009', 'quiet'],
    ['a thread of another', '500000000000000007', 'answered'],
    ['a channel under none', null, 'answered'],
    ['a channel of which nobody can say', undefined, 'quiet'],
  ] as const)('where a channel is quiet, %s', async (_, parent, event) => {
    const by = { role: 'keeper', door: 'chat' } as const
    await chat.store.set({ scope: serverScope(places.shop), name: 'quiet', value: '500000000000000009', at, by })
    hearing = build({ parentOf: async () => parent })
    expect(await hear({ content: asking, channel: '500000000000000001' })).toBe(event)
  })

  it('where no channel is quiet, nobody asks what is a thread of what', async () => {
    hearing = build({ parentOf: () => Promise.reject(new Error('asked')) })
    expect(await hear({ content: asking })).toBe('answered')
  })
})

describe('each message once, within the limits', () => {
  it('told twice, at once or later, it is answered once', async () => {
    const one = raw({ content: asking })
    expect(await Promise.all([hearing.hear(one, SELF), hearing.hear(one, SELF)])).toEqual(['answered', 'twice'])
    now += 30_000
    expect(await hearing.hear(one, SELF)).toBe('twice')
    expect(sent).toHaveLength(1)
  })

  it('one of minutes ago is not answered', async () => {
    expect(await hear({ content: asking, age: 119_000 })).toBe('answered')
    expect(await hear({ content: asking, age: 121_000 })).toBe('too-old')
  })

  it('who asks too often gets nothing, and is known by user and server', async () => {
    const asked: object[] = []
    hearing = build({
      isWithin: async (who) => {
        asked.push(who)
        return false
      },
    })
    expect(await hear({ content: asking })).toBe('refused-busy')
    expect(asked).toEqual([{ user: '300000000000000001', server: places.shop }])
    expect(sent).toEqual([])
  })

  it('a channel whose replies wait gets no more of them, and others do', async () => {
    const release: Array<(arrived: Arrived) => void> = []
    hearing = build({ send: () => new Promise((resolve) => release.push(resolve)) })
    const first = Array.from({ length: 5 }, () => hear({ content: asking }))
    expect(await hear({ content: asking })).toBe('refused-busy')
    const other = hear({ content: asking, channel: '500000000000000009' })
    await expect.poll(() => release.length).toBe(6)
    for (const settle of release) settle('sent')
    expect(await Promise.all([...first, other])).toEqual(Array(6).fill('answered'))
    const later = hear({ content: asking })
    await expect.poll(() => release.length).toBe(7)
    release[6]?.('sent')
    expect(await later).toBe('answered')
  })

  it.each(['forbidden', 'gone', 'timed-out', 'failed'] as const)(
    'what became of it is counted: %s',
    async (arrived) => {
      arrives = arrived
      expect(await hear({ content: asking })).toBe(arrived)
      expect(counted).toEqual([arrived])
    },
  )

  it('where the bot may not write it does not try again for a minute', async () => {
    arrives = 'forbidden'
    expect(await hear({ content: asking })).toBe('forbidden')
    now += 59_000
    expect(await hear({ content: asking })).toBe('forbidden')
    expect(sent).toHaveLength(1)
    arrives = 'sent'
    expect(await hear({ content: asking, channel: '500000000000000009' })).toBe('answered')
    now += 2000
    expect(await hear({ content: asking })).toBe('answered')
  })

  it('a bug is one calm line with its reference, logged', async () => {
    const work = chat.parts.answers as NonNullable<Chat['parts']['answers']>
    hearing = build({ work: { ...work, likings: { ...work.likings, own: () => Promise.reject(new Error('bug')) } } })
    expect(await hear({ content: asking })).toBe('failed')
    expect(text()).toContain('reference r-1')
    expect(logged).toHaveLength(1)
  })

  it('a way of sending that throws harms nothing', async () => {
    hearing = build({ send: () => Promise.reject(new Error('no socket')) })
    expect(await hear({ content: asking })).toBe('failed')
    expect(logged).toHaveLength(1)
  })

  it('what does not ask is neither answered nor counted', async () => {
    expect(await hear({ content: QUESTION })).toBeUndefined()
    expect(await hearing.hear({ id: 'x' }, SELF)).toBeUndefined()
    expect(await hearing.hear(raw({ content: asking }), undefined)).toBeUndefined()
    expect([counted, sent]).toEqual([[], []])
  })

  it('the end hears no more, and waits for what is under way', async () => {
    let arrive: (arrived: Arrived) => void = () => {}
    hearing = build({ send: () => new Promise((resolve) => (arrive = resolve)) })
    const under = hear({ content: asking })
    await new Promise((resolve) => setTimeout(resolve, 50))
    let ended = false
    const end = hearing.finish(5000).then(() => (ended = true))
    expect(await hear({ content: asking })).toBe('dropped')
    expect(ended).toBe(false)
    arrive('sent')
    await end
    expect(await under).toBe('answered')
  })
})
