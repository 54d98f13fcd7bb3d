// Free text through every door: the same document, the same status, the same words; asked text never comes alive.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { topics } from '../../commands/index.ts'
import { handleInteraction } from '../../src/faces/chat/handler.ts'
import { escapeChat } from '../../src/faces/chat/reply.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import { type Answer, answerSchema } from '../../src/questions/answer.ts'
import { noPictures, testDesk, testHttp } from '../support/doors.ts'

const desk = testDesk()
let http: FastifyInstance
beforeAll(async () => {
  http = await testHttp(desk)
})
afterAll(() => http.close())

const texts: ReadonlyArray<readonly [string, string, Answer['status']]> = [
  ['an answer', '75 lb-ft, 18 in wrench, 3 in crowfoot straight, what do I set?', 'answered'],
  ['a gap', 'what do I set for 110 Nm with a 38 mm crowfoot, straight?', 'incomplete'],
  ['a choice', 'does a 6 inch extension change my 80 ft lb setting?', 'incomplete'],
  ["a maker's figure", 'torque spec for the front axle nut of a 2014 van?', 'refused'],
  ['nothing of ours', 'my brakes squeak', 'refused'],
  ['a quoted rule', '100 ft lb, 16 in wrench, 2 in crowfoot straight, my formula is T x (1 - A/L)', 'answered'],
]

const codeOf = { answered: 0, refused: 2, incomplete: 3 } as const

const interaction = (data: object) =>
  ({ id: '1', application_id: '2', type: 2, token: 't', version: 1, locale: 'en-US', user: { id: '3' }, data }) as never

const inChat = async (data: object) => {
  const failed = (error: unknown): never => {
    throw error
  }
  const reply = await handleInteraction(interaction(data), { desk, topics, pictures: noPictures, failed })
  if (!reply) throw new Error('no reply')
  return reply
}

const slash = (text: string) => ({ id: '1', type: 1, name: 'ask', options: [{ type: 3, name: 'text', value: text }] })
const onMessage = (content: string) => ({
  id: '1',
  type: 3,
  name: 'Work this out',
  target_id: '77',
  resolved: { messages: { 77: { id: '77', content } } },
})

describe('free text through every door', () => {
  it.each(texts)('%s', async (_name, text, status) => {
    const truth = JSON.parse(JSON.stringify(desk.askText(text, { door: 'terminal' }))) as Answer
    expect(answerSchema.safeParse(truth).error).toBeUndefined()
    expect(truth.status).toBe(status)

    for (const reply of [
      await http.inject(`/v1/ask?${new URLSearchParams({ text })}`),
      await http.inject({ method: 'POST', url: '/v1/ask', payload: { text } }),
    ]) {
      const body = reply.json<Answer & { answer?: Answer; type?: string }>()
      expect(reply.statusCode).toBe(status === 'refused' ? 422 : 200)
      expect(body.answer ?? body).toEqual(truth)
      if (status === 'refused') expect(body.type).toBe('urn:armlength:problem:refused')
    }

    const lines: string[] = []
    const io = { out: (line: string) => lines.push(line), err: (line: string) => lines.push(line) }
    expect(await runTerminal([...text.split(' '), '--json'], desk, io)).toBe(codeOf[status])
    expect(JSON.parse(lines.join('\n'))).toEqual(truth)
    expect(await runTerminal([text], desk, io)).toBe(codeOf[status])
    expect(lines).toContain(truth.headline)

    // What somebody works out of another's message is theirs, until they show it to all.
    for (const [data, isTheirs] of [
      [slash(text), false],
      [onMessage(text), true],
    ] as const) {
      const { data: message } = await inChat(data)
      expect(message.embeds?.[0]?.description).toContain(escapeChat(truth.headline))
      expect(message.embeds?.[0]?.title).toBeTruthy()
      expect(message.flags).toBe(status === 'answered' && !isTheirs ? undefined : 64)
    }

    const page = await http.inject(`/ask?${new URLSearchParams({ text })}`)
    expect(page.statusCode).toBe(200)
    expect(page.body.replaceAll('&#39;', "'").replaceAll('&quot;', '"')).toContain(truth.headline)
  })

  it.each([
    ['nothing', {}, 'empty'],
    ['a number', { text: 7 }, 'not-allowed'],
    ['two texts', { text: ['a', 'b'] }, 'not-allowed'],
    ['another input besides', { text: 'hi', torque: '5 N·m' }, 'not-allowed'],
    ['a text nested deeper than the stack', `{"text":${'['.repeat(8000)}${']'.repeat(8000)}}`, 'not-allowed'],
    ['a body nested deeper than the stack', `${'['.repeat(8000)}${']'.repeat(8000)}`, 'not-allowed'],
    ['more than 10 kB', { text: 'a'.repeat(10_001) }, 'too-long'],
  ])('over HTTP %s is refused', async (_name, payload, code) => {
    const headers = { 'content-type': 'application/json' }
    const reply = await http.inject({ method: 'POST', url: '/v1/ask', payload, headers })
    expect([reply.statusCode, reply.json<Answer>().faults[0]?.code]).toEqual([422, code])
  })

  it('is asked by GET or POST only', async () => {
    const reply = await http.inject({ method: 'PUT', url: '/v1/ask', payload: {} })
    expect([reply.statusCode, reply.headers.allow]).toEqual([405, 'GET, HEAD, POST'])
  })

  it('a message without words is told so, not answered', async () => {
    const { data } = await inChat(onMessage(''))
    expect(data.embeds?.[0]?.description).toBeTruthy()
    expect(data.flags).toBe(64)
  })

  it('the start page has a line to ask, and every other reading is one touch away', async () => {
    expect((await http.inject('/')).body).toMatch(/<form[^>]*action="\/ask"/)
    const { body } = await http.inject(
      `/ask?${new URLSearchParams({ text: 'does a 6 inch extension change my 80 ft lb setting?' })}`,
    )
    const keys = [...body.matchAll(/class="key" href="([^"]+)"/g)].map((match) =>
      (match[1] as string).replaceAll('&amp;', '&'),
    )
    expect(keys.length).toBeGreaterThanOrEqual(2)
    for (const key of keys) expect((await http.inject(key.replace(/#.*/, ''))).statusCode).toBe(200)
  })

  it('the figure of the answer is on the page and is there', async () => {
    const { body } = await http.inject(`/ask?${new URLSearchParams({ text: texts[0]?.[1] ?? '' })}`)
    const [, src = ''] = /<img src="([^"]+)"/.exec(body) ?? []
    expect((await http.inject(src.replaceAll('&amp;', '&'))).statusCode).toBe(200)
  })

  it('markup in the text is text on the page', async () => {
    const text = '<script>alert(1)</script> 75 lb-ft, 18 in wrench, 3 in crowfoot "><img src=x> straight'
    const { body } = await http.inject(`/ask?${new URLSearchParams({ text })}`)
    expect(body).not.toContain('<script>alert')
    expect(body).not.toContain('<img src=x>')
  })
})
