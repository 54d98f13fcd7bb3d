// Everything larger than it should be, and poison: the same requests made to hurt, over and over. Each is refused in words, memory
// stays where it was, and whoever asks meanwhile is answered.
import { request } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hostileTexts } from '../support/hostile-texts.ts'
import { answerMs, memoryMiB, openFaultShop } from './shop.ts'

const shop = openFaultShop()
beforeAll(async () => void (await shop.start()), 30_000)
afterAll(() => shop.end())

interface Sent {
  readonly method?: string
  readonly path: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string
}

/** The status; 0 where the connection was cut while we were still sending. */
const send = ({ method = 'GET', path, headers = {}, body }: Sent): Promise<number> =>
  new Promise((resolve) => {
    const { hostname, port } = new URL(shop.service().url)
    const asking = request({ hostname, port, method, path, headers, maxHeaderSize: 10_000_000 }, (reply) => {
      reply.resume().on('end', () => resolve(reply.statusCode ?? 0))
    })
    asking.on('error', () => resolve(0))
    asking.setTimeout(15_000, () => asking.destroy())
    asking.end(body)
  })

const json = { 'content-type': 'application/json' }
const oversized: ReadonlyArray<readonly [string, Sent, readonly number[]]> = [
  ['an address of 200 kB', { path: `/${'a'.repeat(200_000)}` }, [0, 431]],
  ['an address of 12 kB', { path: `/ask?text=${'a'.repeat(12_000)}` }, [200, 414, 422]],
  ['a header of 200 kB', { path: '/', headers: { x: 'x'.repeat(200_000) } }, [0, 431]],
  [
    'thousands of headers',
    { path: '/', headers: Object.fromEntries(Array.from({ length: 3000 }, (_, n) => [`x-${n}`, '1'])) },
    [0, 431],
  ],
  ['a cookie of 12 kB', { path: '/board', headers: { cookie: `desk=${'a'.repeat(12_000)}` } }, [200]],
  [
    'a body of 1 MB',
    { method: 'POST', path: '/v1/questions/pull', headers: json, body: `{"torque":"${'1'.repeat(1_000_000)}"}` },
    [0, 413],
  ],
  [
    'a text of 16 kB',
    { method: 'POST', path: '/v1/ask', headers: json, body: `{"text":"${'5 Nm '.repeat(3200)}"}` },
    [413, 422],
  ],
  [
    'a body that says it is small',
    { method: 'POST', path: '/v1/ask', headers: { ...json, 'content-length': '1e9' }, body: '{}' },
    [0, 400],
  ],
  [
    'a form of 1 MB',
    {
      method: 'POST',
      path: '/sign-in',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      body: `pin=${'1'.repeat(1_000_000)}`,
    },
    [0, 413],
  ],
  [
    'a sheet of 10 MB from nobody',
    { method: 'POST', path: '/v1/import', headers: { 'content-type': 'text/csv' }, body: 'x'.repeat(10_000_000) },
    [0, 401],
  ],
  ['thousands of inputs', { path: `/v1/questions/pull?${'a=1&'.repeat(3000)}` }, [422]],
  ['a tag of 5 kB', { path: `/wrench/${'w'.repeat(5000)}` }, [404]],
  [
    'a body in a coding that nobody reads',
    {
      method: 'POST',
      path: '/v1/ask',
      headers: { ...json, 'content-encoding': 'gzip' },
      body: '\u001f\u008b'.repeat(2000),
    },
    [400, 415],
  ],
]

describe('what is too large', () => {
  it.each(oversized)('%s', async (_what, sent, allowed) => {
    expect(allowed).toContain(await send(sent))
    expect(await answerMs(shop.service())).toBeLessThan(5000)
  })

  it('costs no memory that stays, however often it comes', async () => {
    const large = oversized.filter(([what]) => !what.includes('10 MB'))
    for (const [, sent] of large) await send(sent)
    const before = memoryMiB(shop.service())
    for (let n = 0; n < 15; n++) await Promise.all(large.map(([, sent]) => send(sent)))
    // A heap that was not collected yet is no leak.
    expect(memoryMiB(shop.service()) - before).toBeLessThan(120)
  }, 60_000)
})

const TIMES = 20
describe('poison', () => {
  const texts = Object.entries(hostileTexts(9000)).map(([name, text]): readonly [string, Sent] => [
    `free text, ${name}`,
    { method: 'POST', path: '/v1/ask', headers: json, body: JSON.stringify({ text }) },
  ])
  const others: ReadonlyArray<readonly [string, Sent]> = [
    [
      'a list in a list without end',
      {
        method: 'POST',
        path: '/v1/questions/pull',
        headers: json,
        body: `{"torque":${'['.repeat(7000)}${']'.repeat(7000)}}`,
      },
    ],
    [
      'members without end',
      {
        method: 'POST',
        path: '/v1/questions/pull',
        headers: json,
        body: `{${Array.from({ length: 1500 }, () => '"a":1').join(',')}}`,
      },
    ],
    [
      'a drawing that cannot be',
      { path: '/v1/questions/adapter-setting/figure.png?torque=1e999+N%C2%B7m&lever=1+mm&adapter=1+mm' },
    ],
    [
      'readings without end',
      {
        method: 'POST',
        path: '/v1/questions/compare',
        headers: json,
        body: JSON.stringify({ a: '1 '.repeat(3500), b: '2 '.repeat(3500) }),
      },
    ],
    ['a body that is cut', { method: 'POST', path: '/v1/questions/pull', headers: json, body: '{"torque":' }],
  ]
  it.each([...texts, ...others])(
    `${TIMES} times %s: an answer each time, and to others too`,
    async (_what, sent) => {
      const waiting = Array.from({ length: TIMES }, () => send(sent))
      const beside = await answerMs(shop.service())
      const statuses = await Promise.all(waiting)
      for (const status of statuses) expect([200, 400, 413, 422]).toContain(status)
      expect(beside).toBeLessThan(5000)
    },
    30_000,
  )

  it('has left the program as it was: running, and nothing of it in the log', () => {
    expect(shop.service().running()).toBe(true)
    expect(shop.service().log()).toBe('')
  })
})
