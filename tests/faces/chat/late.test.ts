// Answers that are late: promised to the asker alone in time, put in afterwards by the interaction's token, and given up silently
// once the token has ended. Over the real REST client, against replies that are told by nock.
import nock from 'nock'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type ChatReply, privateLine } from '../../../src/faces/chat/reply.ts'
import { answerInTime } from '../../../src/faces/chat/wire/answering.ts'
import { createCallbacks } from '../../../src/faces/chat/wire/callback.ts'
import { createEdits } from '../../../src/faces/chat/wire/edit.ts'
import { callbackRest, editRest } from '../../../src/faces/chat/wire/rest.ts'
import { snowflake } from '../../support/fake-discord/snowflake.ts'

const HOST = 'http://127.0.0.1:65001'
const settings = { apiUrl: `${HOST}/api` }
// The transport that nock can see.
const seen = { makeRequest: ((url: string, init: RequestInit) => fetch(url, init)) as never }
const APPLICATION = '100000000000000001'

let now: number
let lost: string[]
let interaction: { id: string; token: string; application_id: string }

beforeEach(() => {
  now = Date.now()
  lost = []
  interaction = { id: snowflake(now), token: 'token-1', application_id: APPLICATION }
})
afterEach(() => nock.cleanAll())

const callbackPath = () => `/api/v10/interactions/${interaction.id}/${interaction.token}/callback`
const messagePath = () => `/api/v10/webhooks/${APPLICATION}/${interaction.token}/messages/%40original`
const parts = () => {
  const told = (what: string): void => void lost.push(what)
  const callbacks = createCallbacks({ rest: callbackRest(settings, seen), now: () => now, told })
  const edits = createEdits({ rest: editRest(settings, seen), now: () => now, told })
  return {
    respond: callbacks.respondTo(interaction),
    edits,
    now: () => now,
    instead: () => privateLine('too old'),
    callbacks,
  }
}
const answer = (work: Promise<ChatReply | undefined>) => answerInTime(interaction as never, work, parts())
const after = <T>(ms: number, value: T): Promise<T> => new Promise((resolve) => setTimeout(resolve, ms, value))

const shown: ChatReply = { data: { content: 'Set 84.9 N·m', allowed_mentions: { parse: [] } }, files: [] }
const secret = privateLine('missing')
const drawn: ChatReply = {
  data: { embeds: [{ title: 'x' }], attachments: [{ id: 0, filename: 'a.png' }] },
  files: [{ name: 'a.png', data: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff]) }],
}
/** An interaction that is already so old that the answer is promised soon. */
const hurry = (): void => {
  interaction = { ...interaction, id: snowflake(now - 1450) }
}

describe('the callback', () => {
  it('carries the answer as JSON, without the bot’s token', async () => {
    let headers: Readonly<Record<string, unknown>> = {}
    const posted = nock(HOST)
      .post(callbackPath(), { type: 4, data: { content: 'Set 84.9 N·m', allowed_mentions: { parse: [] } } })
      .reply(function () {
        headers = this.req.headers
        return [204]
      })
    expect(await answer(Promise.resolve(shown))).toBe('answered')
    expect(posted.isDone()).toBe(true)
    expect(headers).not.toHaveProperty('authorization')
    expect(headers['content-type']).toContain('application/json')
  })

  it('carries files as parts, whose bytes arrive as they are', async () => {
    let sent = ''
    nock(HOST)
      .post(callbackPath(), (body) => {
        sent = String(body)
        return true
      })
      .matchHeader('content-type', /multipart\/form-data; boundary=/)
      .reply(204)
    expect(await answer(Promise.resolve(drawn))).toBe('answered')
    // nock hands on what is no text as hex.
    expect(Buffer.from(sent, 'hex').includes(drawn.files[0]?.data as Buffer)).toBe(true)
    expect(Buffer.from(sent, 'hex').includes('name="payload_json"')).toBe(true)
  })

  it.each([
    [404, 10062, 'late'],
    [400, 40060, 'already-answered'],
    [400, 50035, 'failed'],
    [403, 50001, 'failed'],
  ] as const)('%i with %i is told as %s and not sent again', async (status, code, delivery) => {
    nock(HOST).post(callbackPath()).reply(status, { code, message: 'no' })
    expect(await answer(Promise.resolve(shown))).toBe(delivery)
    expect(lost).toEqual([delivery])
  })

  it('a 5xx is tried once more', async () => {
    nock(HOST).post(callbackPath()).reply(502).post(callbackPath()).reply(204)
    expect(await answer(Promise.resolve(shown))).toBe('answered')
  })

  it.each([
    ['a short 429 is waited out once', { 'retry-after': '0.1' }, true],
    ['a long one is not', { 'retry-after': '30' }, false],
    ['one that lasts for hours is not', { 'retry-after': '7200' }, false],
    ['one that does not say for how long is not', {}, false],
    ['one that says nonsense is not', { 'retry-after': 'soon' }, false],
  ])('%s', async (_name, headers, isAnswered) => {
    nock(HOST)
      .post(callbackPath())
      .reply(429, { retry_after: 1 }, headers as never)
    const second = nock(HOST).post(callbackPath()).reply(204)
    expect(await answer(Promise.resolve(shown))).toBe(isAnswered ? 'answered' : 'rate-limited')
    expect(second.isDone()).toBe(isAnswered)
  })

  it('a second 429 in a row is the last try', async () => {
    const twice = nock(HOST).post(callbackPath()).times(2).reply(429, {}, { 'retry-after': '0.05' })
    expect(await answer(Promise.resolve(shown))).toBe('rate-limited')
    expect(twice.isDone()).toBe(true)
  })

  it('while the whole address is told to wait, nothing is sent at all, and then it is again', async () => {
    const { respond, callbacks } = parts()
    const body = { body: { type: 4 }, files: [] }
    nock(HOST).post(callbackPath()).reply(429, {}, { 'retry-after': '60', 'x-ratelimit-global': 'true' })
    expect(await respond(body)).toBe('rate-limited')
    expect(callbacks.isHushed()).toBe(true)
    const unsent = nock(HOST).post(callbackPath()).reply(204)
    expect(await respond(body)).toBe('rate-limited')
    expect(unsent.isDone()).toBe(false)
    now += 61_000
    expect(callbacks.isHushed()).toBe(false)
    expect(await respond(body)).toBe('answered')
  })
})

describe('an answer that is late', () => {
  it('is promised to the asker alone at a second and a half, and put in when it is there', async () => {
    const order: string[] = []
    nock(HOST)
      .post(callbackPath(), { type: 5, data: { flags: 64 } })
      .reply(() => {
        order.push('promised')
        return [204]
      })
    nock(HOST)
      .patch(messagePath(), { content: 'Set 84.9 N·m', allowed_mentions: { parse: [] } })
      .reply(() => {
        order.push('put in')
        return [200, {}]
      })
    const start = performance.now()
    expect(await answer(after(1700, shown))).toBe('answered-late')
    expect(order).toEqual(['promised', 'put in'])
    expect(performance.now() - start).toBeGreaterThan(1650)
  })

  it('says of privacy only what the promise said, and keeps its files', async () => {
    hurry()
    nock(HOST).post(callbackPath()).reply(204)
    const edited = nock(HOST)
      .patch(messagePath(), (body) => !('flags' in body) && body.content === 'missing')
      .reply(200, {})
    expect(await answer(after(200, secret))).toBe('answered-late')
    expect(edited.isDone()).toBe(true)
    interaction = { ...interaction, token: 'token-2' }
    nock(HOST).post(callbackPath()).reply(204)
    nock(HOST)
      .patch(messagePath(), (body) => Buffer.from(String(body), 'hex').includes(drawn.files[0]?.data as Buffer))
      .reply(200, {})
    expect(await answer(after(200, drawn))).toBe('answered-late')
  })

  it('a form that is late is a word in its place; nothing to say takes the promise back', async () => {
    hurry()
    nock(HOST)
      .post(callbackPath())
      .reply(204)
      .patch(messagePath(), (body) => body.content === 'too old')
      .reply(200, {})
    const modal = { custom_id: 'x', title: 'x', components: [] }
    expect(await answer(after(200, { data: {}, files: [], modal }))).toBe('answered-late')
    nock(HOST).post(callbackPath()).reply(204).delete(messagePath()).reply(204)
    expect(await answer(after(200, undefined))).toBe('unknown')
    expect(nock.isDone()).toBe(true)
  })

  it('is not put in where the promise was not taken', async () => {
    hurry()
    nock(HOST).post(callbackPath()).reply(400, { code: 40060, message: 'Interaction has already been acknowledged.' })
    const edited = nock(HOST).patch(messagePath()).reply(200, {})
    expect(await answer(after(200, shown))).toBe('already-answered')
    expect(edited.isDone()).toBe(false)
  })

  it.each([
    ['Discord is broken for a moment', 503, {}, {}],
    ['the promise is not there yet', 404, { code: 10015, message: 'Unknown Webhook' }, {}],
    ['its own limit is reached', 429, {}, { 'retry-after': '0.2' }],
  ])('is tried again where %s', async (_name, status, body, headers) => {
    hurry()
    nock(HOST).post(callbackPath()).reply(204)
    nock(HOST)
      .patch(messagePath())
      .times(status === 503 ? 2 : 1)
      .reply(status, body, headers as never)
    nock(HOST).patch(messagePath()).reply(200, {})
    expect(await answer(after(200, shown))).toBe('answered-late')
  })

  it('nothing is said once the token has ended, whether by our clock or by Discord’s word', async () => {
    hurry()
    nock(HOST).post(callbackPath()).reply(204)
    const edited = nock(HOST).patch(messagePath()).reply(200, {})
    const work = after(200, shown).then((reply) => {
      now += 15 * 60_000
      return reply
    })
    expect(await answer(work)).toBe('expired')
    expect(edited.isDone()).toBe(false)
    nock.cleanAll()
    now = Date.now()
    nock(HOST).post(callbackPath()).reply(204)
    nock(HOST).patch(messagePath()).reply(401, { code: 50027, message: 'Invalid Webhook Token' })
    expect(await answer(after(200, shown))).toBe('expired')
  })

  it('a wait that would outlast the token is not waited for', async () => {
    hurry()
    nock(HOST).post(callbackPath()).reply(204)
    nock(HOST).patch(messagePath()).reply(429, {}, { 'retry-after': '3600' })
    expect(await answer(after(200, shown))).toBe('expired')
    expect(lost).toEqual(['expired'])
  })
})
