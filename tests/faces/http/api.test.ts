// The HTTP door by injection: statuses, problem documents, caching, limits. Nothing is coerced, nothing is dropped.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { BusyDrawing } from '../../../src/faces/pictures.ts'
import type { Answer } from '../../../src/questions/answer.ts'
import { questionNames } from '../../../src/questions/index.ts'
import { noPictures, testDesk, testHttp, testShop } from '../../support/doors.ts'

let http: FastifyInstance
beforeAll(async () => {
  http = await testHttp(testDesk())
})
afterAll(() => http.close())

const GOOD = '/v1/questions/pull?torque=100+N·m&hand=50+cm'.replace('·', '%C2%B7')
const post = (payload: string, type = 'application/json') =>
  http.inject({ method: 'POST', url: '/v1/questions/pull', payload, headers: { 'content-type': type } })

interface Refusal {
  type: string
  title: string
  status: number
  detail: string
  faults: Array<{ code: string; input: string; got: string; allowed: string; hint: string }>
  missing: unknown[]
  answer: Answer
}

describe('problem documents', () => {
  it('a refused question is a problem with every fault and the whole document', async () => {
    const reply = await http.inject('/v1/questions/pull?torque=100&hand=-5+cm&foo=1')
    const body = reply.json<Refusal>()
    expect(reply.statusCode).toBe(422)
    expect(reply.headers['content-type']).toMatch(/^application\/problem\+json/)
    expect(reply.headers['cache-control']).toBe('no-store')
    expect(body).toMatchObject({ type: 'urn:armlength:problem:refused', status: 422, missing: [] })
    expect(body.faults.map(({ code, input }) => [code, input])).toEqual([
      ['unit-missing', 'torque'],
      ['negative', 'hand'],
      ['unknown-input', 'foo'],
    ])
    expect(body.answer.status).toBe('refused')
    expect(body.answer.faults).toEqual(body.faults)
    for (const fault of body.faults)
      expect(
        Object.values(fault).every((text) => typeof text === 'string' && text !== ''),
        JSON.stringify(fault),
      ).toBe(true)
  })

  it('missing inputs are listed beside faults', async () => {
    const body = (await http.inject('/v1/questions/adapter-setting?torque=100')).json<Refusal>()
    expect(body.missing).toHaveLength(2)
  })

  it.each([
    ['an unknown question', 'GET', '/v1/questions/nope', 404, 'unknown-question'],
    ['a known question by another method', 'DELETE', '/v1/questions/pull', 405, 'wrong-method'],
    ['an unknown address', 'GET', '/nothing/here', 404, 'not-found'],
    ['a broken percent sign', 'GET', '/v1/%zz', 400, 'not-readable'],
    ['a name of a question that is not one', 'GET', '/v1/questions/__proto__', 404, 'unknown-question'],
    ['an endless name', 'GET', `/v1/questions/${'a'.repeat(300)}`, 404, 'not-found'],
  ] as const)('%s', async (_name, method, url, status, type) => {
    const reply = await http.inject({ method, url })
    expect(reply.statusCode).toBe(status)
    expect(reply.headers['content-type']).toMatch(/^application\/problem\+json/)
    expect(reply.json<Refusal>().type).toBe(`urn:armlength:problem:${type}`)
    expect(reply.json<Refusal>().status).toBe(status)
  })
})

describe('bodies', () => {
  it.each([
    ['null for a text', '{"torque":null}', 'torque', 'not-allowed'],
    ['a number for a text', '{"torque":100}', 'torque', 'not-allowed'],
    ['a truth for a text', '{"torque":true}', 'torque', 'not-allowed'],
    ['an object for a text', '{"torque":{"value":100}}', 'torque', 'not-allowed'],
    ['a list with a number in it', '{"torque":["100 N·m",5]}', 'torque', 'not-allowed'],
    ['an empty list', '{"torque":[]}', 'torque', 'empty'],
    ['two values for a single input', '{"torque":["100 N·m","90 N·m"]}', 'torque', 'repeated'],
    ['a name that stands in it twice', '{"torque":"100 N·m","torque":"90 N·m"}', 'torque', 'repeated'],
    ['a misspelt name', '{"torqe":"100 N·m"}', 'torqe', 'unknown-input'],
    ['a name of every object', '{"constructor":"1"}', 'constructor', 'unknown-input'],
    ['the prototype', '{"__proto__":"1"}', '__proto__', 'unknown-input'],
    ['a list in place of an object', '[]', '', 'not-allowed'],
    ['a text in place of an object', '"torque"', '', 'not-allowed'],
    ['null in place of an object', 'null', '', 'not-allowed'],
  ])('%s is told as a fault', async (_name, payload, input, code) => {
    const reply = await post(payload)
    expect(reply.statusCode).toBe(422)
    expect(reply.json<Refusal>().faults[0]).toMatchObject({ input, code })
  })

  it('a member that is told twice shows both values, not the last', async () => {
    const { faults } = (await post('{"torque":"100 N·m","hand":"1 m","torque":"90 N·m"}')).json<Refusal>()
    expect(faults[0]?.got).toBe('100 N·m | 90 N·m')
  })

  it('list inputs may be repeated, listed or joined, with one result', async () => {
    const ask = (adapter: string) =>
      http.inject({
        method: 'POST',
        url: '/v1/questions/adapter-setting',
        payload: `{"torque":"33 Nm","lever":"30 cm",${adapter}}`,
        headers: { 'content-type': 'application/json' },
      })
    const [listed, joined, twice] = await Promise.all([
      ask('"adapter":["10 cm@0","5 cm@60"]'),
      ask('"adapter":"10 cm@0; 5 cm@60"'),
      ask('"adapter":"10 cm@0","adapter":"5 cm@60"'),
    ])
    expect(listed.json<Answer>().results).toEqual(joined.json<Answer>().results)
    expect(twice.json<Answer>().results).toEqual(joined.json<Answer>().results)
  })

  it.each([
    ['no JSON', '{torque', 'application/json', 400, 'not-readable'],
    ['nothing', '', 'application/json', 400, 'not-readable'],
    ['another type', 'torque=1', 'application/x-www-form-urlencoded', 415, 'not-json'],
    ['plain text', 'x', 'text/plain', 415, 'not-json'],
    ['too much', `{"torque":"${'x'.repeat(17_000)}"}`, 'application/json', 413, 'too-large'],
  ])('%s cannot be read', async (_name, payload, type, status, problem) => {
    const reply = await post(payload, type)
    expect(reply.statusCode).toBe(status)
    expect(reply.json<Refusal>().type).toBe(`urn:armlength:problem:${problem}`)
  })

  it('10 kB for a torque is read and refused as too long', async () => {
    const reply = await post(JSON.stringify({ torque: '9'.repeat(10_000) }))
    expect(reply.json<Refusal>().faults[0]).toMatchObject({ code: 'too-long', input: 'torque' })
    expect(reply.body.length).toBeLessThan(4000)
  })
})

describe('caching', () => {
  it('the same inputs have the same tag, and a cache that has it gets 304 and nothing else', async () => {
    const first = await http.inject(GOOD)
    const tag = first.headers.etag as string
    expect(first.statusCode).toBe(200)
    expect(first.headers['cache-control']).toBe('public, max-age=60')
    expect(first.headers.vary).toContain('accept-language')
    const again = await http.inject({ url: GOOD, headers: { 'if-none-match': tag } })
    expect(again.statusCode).toBe(304)
    expect(again.body).toBe('')
    expect((await http.inject({ url: GOOD, headers: { 'if-none-match': '"other"' } })).statusCode).toBe(200)
    expect((await http.inject(GOOD.replace('100', '101'))).headers.etag).not.toBe(tag)
  })

  it('a refusal has no tag and is kept nowhere', async () => {
    const reply = await http.inject('/v1/questions/pull?torque=100')
    expect(reply.headers.etag).toBeUndefined()
  })

  it('an answer by POST is kept nowhere', async () => {
    expect((await post('{"torque":"100 Nm","hand":"1 m"}')).headers['cache-control']).toBe('no-store')
  })
})

describe('headers and limits', () => {
  it('answers carry headers that keep a browser from guessing or framing, and none that break plain http', async () => {
    const { headers } = await http.inject('/')
    expect(headers['x-content-type-options']).toBe('nosniff')
    expect(headers['content-security-policy']).toContain("frame-ancestors 'none'")
    expect(headers['content-security-policy']).not.toContain('upgrade-insecure-requests')
    expect(headers['strict-transport-security']).toBeUndefined()
  })

  it('past the limit of one address 429 says how long to wait; health is never refused', async () => {
    const small = await testHttp(testDesk(), 5)
    const replies = []
    for (let ask = 0; ask < 8; ask++) replies.push(await small.inject(GOOD))
    expect(replies.filter(({ statusCode }) => statusCode === 200)).toHaveLength(5)
    const refused = replies.at(-1)
    expect(refused?.statusCode).toBe(429)
    expect(refused?.headers['content-type']).toMatch(/^application\/problem\+json/)
    expect(refused?.headers['retry-after']).toBe('1')
    expect(refused?.json<Refusal>().type).toBe('urn:armlength:problem:too-many')
    expect((await small.inject('/healthz')).statusCode).toBe(200)
    await small.close()
  })

  it('a picture for which there is no room to wait is a calm 503; the same as SVG is there', async () => {
    const crowded = await testHttp(testDesk(), 1000, { png: () => Promise.reject(new BusyDrawing()) })
    const figure = (kind: string) => crowded.inject(GOOD.replace('/pull?', `/pull/figure.${kind}?`))
    const reply = await figure('png')
    expect([reply.statusCode, reply.headers['retry-after']]).toEqual([503, '2'])
    expect(reply.json<Refusal>().type).toBe('urn:armlength:problem:busy-drawing')
    expect((await figure('svg')).headers['content-type']).toMatch(/^image\/svg/)
    await crowded.close()
  })

  it('a bug is one calm problem with a reference, and the cause is told inside only', async () => {
    const told: unknown[] = []
    const broken = await buildHttp({
      desk: {
        ...testDesk(),
        ask: () => {
          throw new Error('secret cause')
        },
      },
      pictures: noPictures,
      shop: 'x',
      trustProxy: false,
      mostASecond: 1000,
      failed: (reference, error) => told.push([reference, (error as Error).message]),
      register: { shop: testShop(), keys: [], now: () => new Date('2026-06-01T10:00:00Z') },
      readiness: async () => ['chat is away'],
      metrics: async () => ({ type: 'text/plain', text: 'armlength_answers_total 1' }),
    })
    const reply = await broken.inject(GOOD)
    expect(reply.statusCode).toBe(500)
    expect(reply.body).not.toContain('secret')
    expect(told).toEqual([[expect.stringMatching(/^[0-9a-f-]{36}$/), 'secret cause']])
    expect(reply.json<{ detail: string }>().detail).toContain((told[0] as string[])[0])
    expect((await broken.inject('/readyz')).json()).toEqual({ status: 'degraded', reasons: ['chat is away'] })
    expect((await broken.inject('/readyz')).statusCode).toBe(200)
    expect((await broken.inject('/metrics')).body).toContain('armlength_answers_total 1')
    await broken.close()
  })
})

describe('the catalogue', () => {
  it('lists every question with its inputs, needs, choices and an example that can be typed', async () => {
    const { questions } = (await http.inject('/v1/questions')).json<{
      questions: Array<{ name: string; inputs: Array<{ name: string; needed: boolean; example: string }> }>
    }>()
    expect(questions.map(({ name }) => name).sort()).toEqual([...questionNames].sort())
    for (const { name, inputs } of questions) {
      for (const input of inputs.filter(({ name: one }) => one !== 'wrench' && one !== 'bench')) {
        const reply = testDesk().ask(name as never, { [input.name]: input.example }, { door: 'http' })
        expect(
          reply.faults.filter((fault) => fault.input === input.name),
          `${name} ${input.name}=${input.example}`,
        ).toEqual([])
      }
    }
  })
})
