// Everything that can be written over HTTP, from the server's own table of routes: who may, and what a stranger's page gets. A
// route that is added is in no list here, and fails. Numbers are those of OWASP ASVS 4.0.3, said in our words.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { card, check, type Door, keys, openDoor, type Role, sendForm, signIn, tokenIn } from './door.ts'
import { writingRoutesOf } from './routes.ts'

let door: Door
beforeEach(async () => {
  door = await openDoor()
})
afterEach(() => door.app.close())

/** A run on the bench, for what can be written of one. */
const opening = {
  tag: 'B-01',
  date: '2026-05-01',
  asked: 'Does oil on the thread change the clamp force?',
  conditions: 'A: dry | B: oil on thread',
  size: 'M12',
}
/** Written with a key: which roles may, and what a right one sends. */
const keyed: Readonly<
  Record<string, { readonly may: readonly Role[]; readonly sends: object | string; readonly done: number }>
> = {
  'POST /v1/wrenches': { may: ['keeper', 'import'], sends: { ...card, tag: 'W-08' }, done: 201 },
  'POST /v1/gauges': {
    may: ['keeper', 'import'],
    sends: { tag: 'G-1', name: 'Bench tester', 'gauge-type': 'torque-tester', tolerance: '0.5 %' },
    done: 201,
  },
  'POST /v1/wrenches/:tag/checks': { may: ['mechanic', 'keeper', 'import'], sends: check, done: 201 },
  'POST /v1/wrenches/:tag/events': {
    may: ['mechanic', 'keeper', 'import'],
    sends: { what: 'dropped', date: '2026-05-02' },
    done: 201,
  },
  'POST /v1/wrenches/:tag/uses': {
    may: ['mechanic', 'keeper', 'import'],
    sends: { date: '2026-05-03', count: '120', since: 'check' },
    done: 201,
  },
  'POST /v1/bench': {
    may: ['mechanic', 'keeper', 'import'],
    sends: { ...opening, tag: 'B-02' },
    done: 201,
  },
  'POST /v1/bench/:tag/readings': {
    may: ['mechanic', 'keeper', 'import'],
    sends: { condition: 'A', date: '2026-05-01', torque: '80 N·m', 'clamp-force': '33.1 kN' },
    done: 201,
  },
  'POST /v1/bench/:tag/finish': {
    may: ['mechanic', 'keeper', 'import'],
    sends: { date: '2026-05-02' },
    done: 201,
  },
  'POST /v1/withdrawals': { may: ['keeper', 'import'], sends: { supersedes: 'e-1', why: 'never was' }, done: 201 },
  'POST /v1/import': {
    may: ['keeper', 'import'],
    sends: 'tag,name,wrench-type,most\nW-9,Small,click,25 N·m\n',
    done: 200,
  },
}
/** Written with a session: forms of the kiosk. */
const forms = ['POST /sign-in', 'POST /sign-out', 'POST /keep/:kind']
/** Nothing is written there: questions, and the word that this is not the way to ask. */
const writesNothing = /^(POST \/v1\/(questions\/[a-z-]+|ask)|[A-Z]+ \/v1\/(questions\/:name|ask))$/

const urlOf = (route: string): string =>
  route.replace(/^\w+ /, '').replace(':tag', route.includes('/bench/') ? opening.tag : 'W-07')
const write = (route: string, sends: object | string, headers: Readonly<Record<string, string>>) =>
  door.app.inject({
    method: 'POST',
    url: urlOf(route),
    payload: sends,
    headers: { ...(typeof sends === 'string' ? { 'content-type': 'text/csv' } : {}), ...headers },
  })
const withKey = (key: string) => ({ authorization: `Bearer ${key}` })
const addCard = async (): Promise<number> => {
  await write('POST /v1/wrenches', card, withKey(keys.keeper))
  await write('POST /v1/bench', opening, withKey(keys.keeper))
  return door.entries()
}

describe('V4.2.2, V13.2.3: every route that writes is guarded', () => {
  it('is known here by its guard; what is offered besides writes nothing', () => {
    const unknown = writingRoutesOf(door.app).filter(
      (route) => !(route in keyed) && !forms.includes(route) && !writesNothing.test(route),
    )
    expect(unknown).toEqual([])
    for (const route of [...Object.keys(keyed), ...forms]) expect(writingRoutesOf(door.app)).toContain(route)
  })

  it('asking writes nothing, by whatever method', async () => {
    await addCard()
    const before = await door.entries()
    const asks = writingRoutesOf(door.app).filter((route) => writesNothing.test(route))
    expect(asks.length).toBeGreaterThan(20)
    for (const route of asks) {
      const [method = '', url = ''] = route.split(' ')
      // Node's own methods only; the server knows one more by name.
      if (['QUERY', 'TRACE'].includes(method)) continue
      await door.app.inject({
        method: method as 'POST',
        url: url.replace(':name', 'pull'),
        payload: { ...card, wrench: 'W-07' },
      })
    }
    expect(await door.entries()).toBe(before)
  })

  it('a cookie is no key: nothing behind a key can be written by a page in a signed-in browser', async () => {
    await addCard()
    const cookie = await signIn(door)
    const before = await door.entries()
    for (const [route, { sends }] of Object.entries(keyed))
      expect((await write(route, sends, { cookie })).statusCode, route).toBe(401)
    expect(await door.entries()).toBe(before)
  })

  it('a page of somebody else that leads to an address sets up no screen', async () => {
    const url = '/screen?mm=1.5&key=9&idle=0'
    for (const site of ['cross-site', 'same-site'])
      expect(
        (await door.app.inject({ url, headers: { 'sec-fetch-site': site } })).headers['set-cookie'],
      ).toBeUndefined()
    for (const site of ['same-origin', 'none'])
      expect((await door.app.inject({ url, headers: { 'sec-fetch-site': site } })).headers['set-cookie']).toBeDefined()
    const other = { url: '/?lang=fr', headers: { 'sec-fetch-site': 'cross-site' } }
    expect((await door.app.inject(other)).headers['set-cookie']).toBeUndefined()
  })

  it('a key is no session: a form is not kept for one', async () => {
    const reply = await sendForm(door, '/keep/wrench', card, withKey(keys.keeper))
    expect(reply.statusCode).toBe(403)
    expect(await door.entries()).toBe(0)
  })

  const strangers: ReadonlyArray<readonly [string, Readonly<Record<string, string>>]> = [
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['another host of the same site', { 'sec-fetch-site': 'same-site' }],
    ['another origin', { origin: 'https://elsewhere.example' }],
    ['an origin that hides', { origin: 'null' }],
    ['the same host on another port', { origin: 'http://localhost:81', host: 'localhost:80' }],
  ]
  it.each(strangers)(
    'a form that a page of %s sends is refused at every route that takes one',
    async (_who, headers) => {
      const cookie = await signIn(door)
      const page = await door.app.inject({ url: '/keep/wrench', headers: { cookie } })
      const token = tokenIn(page.body)
      expect(token).not.toBe('')
      for (const route of forms) {
        const url = urlOf(route).replace(':kind', 'wrench')
        const reply = await sendForm(door, url, { token, pin: '274915', ...card }, { cookie, ...headers })
        expect(reply.statusCode, route).toBe(403)
        expect(reply.headers['set-cookie'], route).toBeUndefined()
      }
      expect(await door.entries()).toBe(0)
      // And whoever was signed in still is.
      expect((await door.app.inject({ url: '/keep/wrench', headers: { cookie } })).statusCode).toBe(200)
    },
  )

  it('a name that somebody owns and points here is none of ours: no PIN is tried under it, no form is taken', async () => {
    const evil = { host: 'desk.example:8080', origin: 'http://desk.example:8080', 'sec-fetch-site': 'same-origin' }
    const cookie = await signIn(door)
    const token = tokenIn((await door.app.inject({ url: '/keep/wrench', headers: { cookie } })).body)
    const signedIn = await sendForm(door, '/sign-in', { pin: '274915' }, evil)
    expect([signedIn.statusCode, signedIn.headers['set-cookie']]).toEqual([421, undefined])
    expect(signedIn.body).toContain('PUBLIC_URL')
    expect((await sendForm(door, '/keep/wrench', { token, ...card }, { cookie, ...evil })).statusCode).toBe(403)
    expect(await door.entries()).toBe(0)
    const bay = { host: 'desk.local:8080', origin: 'http://desk.local:8080', 'sec-fetch-site': 'same-origin' }
    expect((await sendForm(door, '/keep/wrench', { token, ...card }, { cookie, ...bay })).statusCode).toBe(303)
  })

  it('a page that is none of the web is none of ours, whatever host it names', async () => {
    const cookie = await signIn(door)
    const token = tokenIn((await door.app.inject({ url: '/keep/wrench', headers: { cookie } })).body)
    const reply = await sendForm(
      door,
      '/keep/wrench',
      { token, ...card },
      { cookie, host: 'localhost:80', origin: 'moz-extension://localhost:80' },
    )
    expect(reply.statusCode).toBe(403)
  })

  it('the token of one session opens no form of another', async () => {
    const [mine, theirs] = [await signIn(door), await signIn(door)]
    const token = tokenIn((await door.app.inject({ url: '/keep/wrench', headers: { cookie: mine } })).body)
    expect((await sendForm(door, '/keep/wrench', { token, ...card }, { cookie: theirs })).statusCode).toBe(403)
    expect((await sendForm(door, '/keep/wrench', { token, ...card }, { cookie: mine })).statusCode).toBe(303)
  })

  it('nothing that is read changes the register, however often it is asked', async () => {
    await addCard()
    const cookie = await signIn(door)
    const before = await door.entries()
    for (const url of [
      '/keep/wrench?tag=W-99&name=x&most=10+N%C2%B7m',
      '/sign-in?pin=274915',
      '/wrench/W-07/check?points=1',
    ])
      await door.app.inject({ url, headers: { cookie, ...withKey(keys.keeper) } })
    expect(await door.entries()).toBe(before)
  })
})

describe('V4.1.1, V4.1.3: a key writes what its role may, and no more', () => {
  const rows = Object.entries(keyed).flatMap(([route, { may, sends, done }]) =>
    (Object.keys(keys) as Role[]).map((role) => ({ route, role, sends, status: may.includes(role) ? done : 403 })),
  )
  it.each(rows)('$route by $role: $status', async ({ route, role, sends, status }) => {
    const before = await addCard()
    const reply = await write(route, sends, withKey(keys[role]))
    expect(reply.statusCode, reply.body).toBe(status)
    expect(await door.entries()).toBe(status === 403 ? before : before + 1)
  })

  it('a mechanic corrects nothing, by whatever route that takes a correction', async () => {
    await addCard()
    for (const route of ['checks', 'events', 'uses'].map((word) => `POST /v1/wrenches/:tag/${word}`)) {
      const told = { ...(keyed[route]?.sends as object), supersedes: 'e-1', why: 'because' }
      expect((await write(route, told, withKey(keys.mechanic))).statusCode, route).toBe(403)
    }
  })

  const noKeys: ReadonlyArray<readonly [string, Readonly<Record<string, string>>]> = [
    ['no key', {}],
    ['a wrong one', withKey('kiln-lane-keeper-000002')],
    ['the hash of a right one', withKey('a'.repeat(64))],
    ['an empty one', { authorization: 'Bearer ' }],
    ['one of another kind', { authorization: `Basic ${Buffer.from(`keeper:${keys.keeper}`).toString('base64')}` }],
    ['two', { authorization: `Bearer ${keys.keeper} ${keys.keeper}` }],
    ['one that is longer', withKey(`${keys.keeper}x`)],
    ['one that is shorter', withKey(keys.keeper.slice(0, -1))],
  ]
  it.each(noKeys)(
    'V4.1.5: with %s nothing is written anywhere, and nothing is told of what is there',
    async (_what, headers) => {
      const before = await addCard()
      for (const [route, { sends }] of Object.entries(keyed)) {
        const reply = await write(route, sends, headers)
        expect(reply.statusCode, route).toBe(401)
        expect(reply.headers['www-authenticate']).toBe('Bearer')
        expect(reply.body).not.toContain('W-07')
      }
      expect(await door.entries()).toBe(before)
    },
  )

  it('V13.1.3: a key in the address is none', async () => {
    for (const name of ['key', 'authorization', 'access_token', 'token'])
      expect((await write(`POST /v1/wrenches?${name}=${keys.keeper}`, card, {})).statusCode).toBe(401)
    expect(await door.entries()).toBe(0)
  })

  it('V5.1.2: who wrote, when and under which id is never what the sender says', async () => {
    for (const name of ['by', 'id', 'at', 'role', 'door', 'kind', '__proto__', 'constructor'])
      expect(
        (await write('POST /v1/wrenches', { ...card, [name]: 'keeper' }, withKey(keys.keeper))).statusCode,
        name,
      ).toBe(422)
    const polluted = await door.app.inject({
      method: 'POST',
      url: '/v1/wrenches',
      payload: '{"tag":"W-1","__proto__":{"name":"x","wrench-type":"click","most":"10 N·m"}}',
      headers: { 'content-type': 'application/json', ...withKey(keys.keeper) },
    })
    expect(polluted.statusCode).toBe(422)
    expect(await door.entries()).toBe(0)
    expect(({} as Record<string, unknown>)['name']).toBeUndefined()
  })

  it('V13.2.5: a body of another kind than is read there is not read', async () => {
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data; boundary=x',
      'text/xml',
    ]) {
      const reply = await door.app.inject({
        method: 'POST',
        url: '/v1/wrenches',
        payload: JSON.stringify(card),
        headers: { 'content-type': type, ...withKey(keys.keeper) },
      })
      expect(reply.statusCode, type).toBe(415)
    }
    expect(await door.entries()).toBe(0)
  })
})

describe('V14.5.1: methods that are not offered', () => {
  it.each(['PUT', 'PATCH', 'DELETE', 'OPTIONS', 'POST'] as const)('%s does nothing where it is not', async (method) => {
    await addCard()
    const before = await door.entries()
    for (const url of ['/', '/board', '/wrench/W-07', '/v1/wrenches/W-07', '/v1/export.csv', '/healthz', '/metrics']) {
      const reply = await door.app.inject({ method, url, headers: withKey(keys.keeper) })
      expect([404, 405], `${method} ${url}`).toContain(reply.statusCode)
      expect(reply.headers['access-control-allow-methods']).toBeUndefined()
    }
    expect(await door.entries()).toBe(before)
  })

  it.each(['x-http-method-override', 'x-method-override', 'x-http-method'])('%s changes no method', async (name) => {
    const reply = await door.app.inject({
      url: '/v1/wrenches',
      headers: { [name]: 'POST', ...withKey(keys.keeper) },
    })
    expect(reply.statusCode).toBe(200)
    expect(await door.entries()).toBe(0)
  })
})
