// What every answer carries, route by route from the server's own table. Numbers are those of OWASP ASVS 4.0.3, said in our words.
import { readFileSync } from 'node:fs'
import { connect } from 'node:net'
import { join } from 'node:path'
import type { InjectOptions, LightMyRequestResponse } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { card, check, type Door, keys, openDoor } from './door.ts'
import { routesOf } from './routes.ts'

let door: Door
let checkId = ''
beforeAll(async () => {
  door = await openDoor()
  const authorization = `Bearer ${keys.keeper}`
  const post = (url: string, payload: object) =>
    door.app.inject({ method: 'POST', url, payload, headers: { authorization } })
  expect((await post('/v1/wrenches', card)).statusCode).toBe(201)
  checkId = (await post('/v1/wrenches/W-07/checks', check)).json().id
})
afterAll(() => door.app.close())

const torque = 'torque=100+N%C2%B7m&lever=380+mm&adapter=45+mm'
/** An address of each route that has a place to fill, at which there is something. */
const filled: Readonly<Record<string, () => string>> = {
  '/v1/questions/:name/figure.svg': () => `/v1/questions/adapter-setting/figure.svg?${torque}`,
  '/ask/:question': () => `/ask/adapter-setting?${torque}`,
  '/ask/:question/live': () => `/ask/adapter-setting/live?${torque}`,
  '/wrench/:tag': () => '/wrench/W-07',
  '/wrench/:tag/check': () => '/wrench/W-07/check',
  '/wrench/:tag/check/:id': () => `/wrench/W-07/check/${checkId}`,
  '/v1/wrenches/:tag': () => '/v1/wrenches/W-07',
  '/v1/wrenches/:tag/check-plan': () => '/v1/wrenches/W-07/check-plan?gauge-uncertainty=0.5+%25',
  '/v1/wrenches/:tag/checks/:id': () => `/v1/wrenches/W-07/checks/${checkId}`,
  '/v1/wrenches/:tag/history.svg': () => '/v1/wrenches/W-07/history.svg',
  '/script/:name': () => '/script/kiosk.js',
  '/qr.svg': () => '/qr.svg?to=/board',
  '/v1/ask': () => '/v1/ask?text=convert+10+lb-ft+to+Nm',
}
const addressOf = (url: string): string => (filled[url] ?? (() => url.replace('/:name', '/pull')))()

const reads = (): readonly string[] =>
  routesOf(door.app)
    .filter(({ methods }) => methods.includes('GET'))
    .map(({ url }) => url)

const asked = new Map<string, LightMyRequestResponse>()
const get = async (url: string): Promise<LightMyRequestResponse> => {
  const known = asked.get(url)
  if (known) return known
  const reply = await door.app.inject({ url: addressOf(url), headers: { accept: 'text/html,*/*', host: 'desk.test' } })
  asked.set(url, reply)
  return reply
}
const all = async (): Promise<ReadonlyArray<readonly [string, LightMyRequestResponse]>> =>
  Promise.all(reads().map(async (url) => [url, await get(url)] as const))

describe('every route that is read', () => {
  it('is tried, and those with something at their address give it', async () => {
    expect(reads().length).toBeGreaterThan(50)
    for (const url of Object.keys(filled)) {
      expect(reads(), url).toContain(url)
      expect((await get(url)).statusCode, url).toBe(200)
    }
  })

  it('V14.4.1: says what its body is, texts with their character set', async () => {
    for (const [url, { headers, statusCode }] of await all()) {
      if (statusCode === 303) continue
      const type = String(headers['content-type'])
      expect(type, url).toMatch(
        /^(application\/(problem\+)?json|text\/(html|css|javascript|csv|calendar|plain)|image\/svg\+xml); ?charset=utf-8|^image\/png$/,
      )
    }
  })

  it('V14.4.3, V5.3.6: has a policy under which nothing runs or loads that is not of this desk, and nothing in the page', async () => {
    for (const [url, { headers }] of await all()) {
      const policy = String(headers['content-security-policy'])
      expect(policy, url).toContain("default-src 'none'")
      expect(policy, url).not.toMatch(/\*|data:|https?:|unsafe-eval/)
      // A drawing brings its own style, and may do nothing else at all.
      if (String(headers['content-type']).startsWith('image/svg+xml') && policy.includes('unsafe-inline')) {
        expect(policy, url).toBe("default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'")
        continue
      }
      expect(policy, url).not.toContain('unsafe')
      expect(policy, url).toContain("script-src 'self'")
      expect(policy, url).toContain("form-action 'self'")
      expect(policy, url).toContain("base-uri 'none'")
    }
  })

  it('V14.4.3: a page keeps its own policy: no script or style or handler stands in it', async () => {
    const pages = (await all()).filter(([, { headers }]) => String(headers['content-type']).startsWith('text/html'))
    expect(pages.length).toBeGreaterThan(10)
    for (const [url, { body }] of pages) {
      expect(body, url).not.toMatch(/<script(?![^>]*\bsrc="\/)/)
      expect(body, url).not.toMatch(/<style|\sstyle=|\son[a-z]+=|javascript:/i)
    }
  })

  it('V14.4.4: forbids to guess another kind of content', async () => {
    for (const [url, { headers }] of await all()) expect(headers['x-content-type-options'], url).toBe('nosniff')
  })

  it('V14.4.6: tells no other host where somebody came from', async () => {
    for (const [url, { headers }] of await all()) expect(headers['referrer-policy'], url).toBe('same-origin')
  })

  it('V14.4.7: stands in nobody else’s frame', async () => {
    for (const [url, { headers }] of await all()) {
      expect(headers['content-security-policy'], url).toContain("frame-ancestors 'none'")
      expect(headers['x-frame-options'], url).toBe('SAMEORIGIN')
    }
  })

  it('V14.3.3: names no program or version that serves it', async () => {
    for (const [url, { headers }] of await all()) {
      for (const name of ['server', 'x-powered-by', 'via']) expect(headers[name], url).toBeUndefined()
    }
  })

  it('V14.5.3: opens nothing to pages of other hosts, whatever origin asks', async () => {
    for (const origin of ['https://elsewhere.example', 'null', 'http://desk.test.elsewhere.example']) {
      for (const url of ['/board', '/v1/wrenches', '/v1/questions', '/metrics']) {
        const { headers } = await door.app.inject({ url, headers: { origin } })
        const opened = Object.keys(headers).filter((name) => name.startsWith('access-control-'))
        expect(opened, url).toEqual([])
      }
    }
  })

  it('V8.2.1: what follows from the register or from a session is kept by nobody on the way', async () => {
    const kept = (await all())
      .filter(([, { headers }]) => !String(headers['cache-control']).includes('no-store'))
      .map(([url]) => url)
    // Answers to inputs, drawings of them, forms that know nothing, and what is the same for everybody.
    for (const url of kept)
      expect(url).toMatch(
        /^\/($|ask|about|v1\/questions|script|icon\.svg|qr\.svg|openapi\.json|(kiosk|report|screen)\.css)/,
      )
    for (const url of [
      '/board',
      '/wrench/:tag',
      '/keep/:kind',
      '/sign-in',
      '/v1/wrenches',
      '/v1/export.csv',
      '/metrics',
    ])
      expect(kept).not.toContain(url)
  })

  it('V12.3.4: a file to be saved has a name of ours, whatever was asked', async () => {
    for (const url of ['/v1/export.csv?filename=a.exe', '/v1/export.json?x=%22;a.bat', '/v1/due.ics?a.cmd']) {
      const { headers } = await door.app.inject(url)
      expect(String(headers['content-disposition'] ?? 'none'), url).not.toMatch(/exe|bat|cmd/)
    }
  })
})

describe('an answer that is an error', () => {
  const errors: ReadonlyArray<readonly [string, InjectOptions]> = [
    ['nothing there', { url: '/nowhere' }],
    ['no such question', { url: '/v1/questions/none' }],
    ['refused', { url: '/v1/questions/pull?torque=1&hand=1' }],
    ['an address that is not readable', { url: '/%E0%A4%A' }],
    ['a part of an address without end', { url: `/wrench/${'x'.repeat(100)}` }],
    [
      'a body that is not JSON',
      { method: 'POST', url: '/v1/questions/pull', payload: '{', headers: { 'content-type': 'application/json' } },
    ],
    [
      'a body of another kind',
      { method: 'POST', url: '/v1/questions/pull', payload: '<a/>', headers: { 'content-type': 'text/xml' } },
    ],
    ['no key', { method: 'POST', url: '/v1/wrenches', payload: card }],
    ['another method', { method: 'DELETE', url: '/v1/questions/pull' }],
  ]
  it.each(errors)(
    'V14.3.1, V14.4.4, V8.2.1: %s: is guarded as well, kept by nobody, and shows nothing from inside',
    async (_what, request) => {
      for (const accept of ['application/json', 'text/html']) {
        const reply = await door.app.inject({ ...request, headers: { ...request.headers, accept } })
        expect(reply.statusCode).toBeGreaterThanOrEqual(400)
        expect(reply.statusCode).toBeLessThan(500)
        expect(reply.headers['x-content-type-options']).toBe('nosniff')
        expect(reply.headers['cache-control']).toBe('no-store')
        expect(reply.body).not.toMatch(/node_modules|\.[jt]sx?:\d|\bat [\w.]+ \(|FST_|fastify|Error:/i)
        if (String(reply.headers['content-type']).startsWith('text/html'))
          expect(reply.headers['content-security-policy']).toContain("default-src 'none'")
      }
    },
  )

  it('V14.4.4: so is one that leaves before there is a request', async () => {
    await door.app.listen({ host: '127.0.0.1', port: 0 })
    const { port } = door.app.server.address() as { port: number }
    const told = await new Promise<string>((resolve, reject) => {
      let got = ''
      const socket = connect(port, '127.0.0.1', () => socket.write('nonsense\r\n\r\n'))
      socket.on('data', (bytes) => {
        got += bytes
      })
      socket.on('close', () => resolve(got)).on('error', reject)
    })
    expect(told).toMatch(/^HTTP\/1\.1 400 /)
    expect(told).toContain('x-content-type-options: nosniff')
    expect(told).toContain('cache-control: no-store')
  })
})

describe('V14.4.5, V9.1.1: only TLS from outside', () => {
  const proxy = readFileSync(join(import.meta.dirname, '../../deploy/proxy.conf'), 'utf8')
  it('is the proxy’s to offer: it sends plain HTTP on, and tells browsers to come by TLS from then on', () => {
    expect(proxy).toContain('return 308 https://')
    expect(proxy).toMatch(/add_header strict-transport-security "max-age=\d{8}" always;/)
    expect(proxy).toContain('ssl_protocols TLSv1.2 TLSv1.3;')
  })

  it('is not asked for by the desk itself, which speaks plain HTTP on a shop’s own network', async () => {
    expect((await get('/board')).headers['strict-transport-security']).toBeUndefined()
  })
})
