// Writing at the kiosk: who may, what is kept once, what strangers, old pages and guesses get. The clock is handed in.
import type { FastifyInstance } from 'fastify'
import { afterEach, beforeAll, describe, expect, it } from 'vitest'
import { createDesk } from '../../../src/desk/desk.ts'
import type { Shop } from '../../../src/desk/shop.ts'
import { createLockOut } from '../../../src/faces/http/kiosk/lock-out.ts'
import { fitsPin, readPinHash, weakness, writePinHash } from '../../../src/faces/http/kiosk/pin.ts'
import { createSessions, IDLE_MS, sessionCookie } from '../../../src/faces/http/kiosk/sessions.ts'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { kindNames } from '../../../src/register/records.ts'
import { noPictures, testShop } from '../../support/doors.ts'

const PIN = '274915'
let hash: string
beforeAll(async () => {
  hash = await writePinHash(PIN, Buffer.alloc(16, 7))
})

describe('a PIN', () => {
  it('fits its own hash and no other; the hash does not hold it', async () => {
    const read = readPinHash(hash)
    if (!read) throw new Error('not read')
    expect(hash).not.toContain(PIN)
    expect(await fitsPin(read, PIN)).toBe(true)
    expect(await fitsPin(read, '274916')).toBe(false)
    expect(await fitsPin(read, '')).toBe(false)
  })

  it.each([
    '',
    'scrypt',
    'scrypt:16384:a:b',
    `${'scrypt:1:'}${'A'.repeat(22)}:${'A'.repeat(43)}`,
    `scrypt:16385:${'A'.repeat(22)}:${'A'.repeat(43)}`,
  ])('is not read from %j', (text) => expect(readPinHash(text)).toBeUndefined())

  it.each([
    ['274915', undefined],
    ['123', 'not-digits'],
    ['12a4', 'not-digits'],
    ['1234567890123', 'not-digits'],
    ['0000', 'alike'],
    ['3456', 'a-run'],
    ['9876', 'a-run'],
    ['1212', undefined],
  ])('%s: %s', (pin, why) => expect(weakness(pin)).toBe(why))
})

describe('guessing', () => {
  it('is free five times, then waits longer each time, up to ten minutes, and is forgotten after an hour', () => {
    let now = 0
    const lockOut = createLockOut(() => now)
    for (let n = 0; n < 4; n++) lockOut.failed('a')
    expect(lockOut.waitOf('a')).toBe(0)
    const waits = Array.from({ length: 7 }, () => {
      lockOut.failed('a')
      const wait = lockOut.waitOf('a')
      now += wait
      return wait
    })
    expect(waits).toEqual([30_000, 60_000, 120_000, 240_000, 480_000, 600_000, 600_000])
    expect(lockOut.waitOf('a')).toBe(0)
    lockOut.failed('a')
    now += 3_600_001
    lockOut.failed('a')
    expect(lockOut.waitOf('a')).toBe(0)
  })

  it('from one address locks no other, and a right PIN unlocks its own', () => {
    const lockOut = createLockOut(() => 0)
    for (let n = 0; n < 9; n++) lockOut.failed('a')
    expect(lockOut.waitOf('b')).toBe(0)
    lockOut.succeeded('a')
    expect(lockOut.waitOf('a')).toBe(0)
  })

  it('costs no more than two hashes at once, and a crowd of addresses no memory', async () => {
    const lockOut = createLockOut(() => 0)
    let free: (() => void) | undefined
    const held = new Promise<void>((resolve) => {
      free = resolve
    })
    const two = [lockOut.few(() => held), lockOut.few(() => held)]
    expect(await lockOut.few(async () => 'done')).toBeUndefined()
    free?.()
    await Promise.all(two)
    expect(await lockOut.few(async () => 'done')).toBe('done')
    for (let n = 0; n < 20_000; n++) lockOut.failed(`address ${n}`)
    for (let n = 0; n < 9; n++) lockOut.failed('a')
    expect(lockOut.waitOf('a')).toBeGreaterThan(0)
  })
})

describe('a session', () => {
  it('ends after five idle minutes, and every sign of life begins them anew', () => {
    let now = 0
    let count = 0
    const sessions = createSessions(
      () => now,
      () => `id-${++count}`,
    )
    const session = sessions.open()
    const cookie = sessionCookie(session, true)
    expect(cookie).toContain('HttpOnly')
    expect(cookie).toContain('SameSite=Strict')
    expect(cookie).toContain('Secure')
    now += IDLE_MS - 1
    expect(sessions.of(cookie)).toEqual(session)
    now += IDLE_MS - 1
    expect(sessions.of(`other=1; ${cookie}`)).toEqual(session)
    now += IDLE_MS
    expect(sessions.of(cookie)).toBeUndefined()
  })

  it('is one of fifty at most; the longest idle gives way', () => {
    let count = 0
    const sessions = createSessions(
      () => 0,
      () => `id-${++count}`,
    )
    const all = Array.from({ length: 51 }, () => sessions.open())
    const alive = all.map((one) => sessions.of(sessionCookie(one, false)) !== undefined)
    expect(alive.filter(Boolean)).toHaveLength(50)
    expect(alive[0]).toBe(false)
  })

  it.each([undefined, '', 'desk=', 'desk=../x', 'desk=unknown', `desk=${'a'.repeat(100)}`, 'sdesk=id-1'])(
    'is none for %j',
    (cookie) => {
      const sessions = createSessions(
        () => 0,
        () => 'id-1',
      )
      sessions.open()
      expect(sessions.of(cookie)).toBeUndefined()
    },
  )
})

let http: FastifyInstance
let shop: Shop
let minutes = 0
const start = async (pinHash: string | undefined = hash): Promise<void> => {
  let count = 0
  shop = testShop()
  http = await buildHttp({
    desk: createDesk({ system: 'metric', locale: 'en' }),
    pictures: noPictures,
    shop: 'Kiln Lane Garage',
    register: {
      shop,
      keys: [],
      now: () => new Date(Date.parse('2026-06-01T10:00:00Z') + minutes * 60_000),
      writing: { pin: readPinHash(pinHash ?? ''), id: () => `id-${++count}` },
    },
    trustProxy: false,
    mostASecond: 100_000,
    failed: (_reference, error) => {
      throw error
    },
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })
}
afterEach(async () => {
  minutes = 0
  await http?.close()
})

type Headers = Record<string, string>
const send = (url: string, form: Record<string, string>, headers: Headers = {}) =>
  http.inject({
    method: 'POST',
    url,
    payload: new URLSearchParams(form).toString(),
    headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
  })
const signIn = async (headers: Headers = {}): Promise<string> => {
  const reply = await send('/sign-in', { pin: PIN, onward: '/board' }, headers)
  expect(reply.statusCode).toBe(303)
  expect(reply.headers.location).toBe('/board')
  return String(reply.headers['set-cookie']).split(';')[0] as string
}
const tokenOf = (html: string): string => /name="token" value="([^"]+)"/.exec(html)?.[1] ?? ''
const keyOf = (html: string): string => /name="key" value="([^"]+)"/.exec(html)?.[1] ?? ''
const form = async (path: string, cookie: string) => {
  const { body } = await http.inject({ url: path, headers: { cookie } })
  return { token: tokenOf(body), key: keyOf(body), body }
}
const card = { tag: 'W-07', name: 'Half-inch click wrench', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
const entries = async (): Promise<number> => (await shop.since(0, 100)).length

describe('signing in', () => {
  it('with the PIN opens a session and goes on to a page of our own', async () => {
    await start()
    expect(await signIn()).toMatch(/^desk=id-/)
    for (const then of ['https://elsewhere.example/', '//elsewhere.example', '/\\elsewhere.example'])
      expect((await send('/sign-in', { pin: PIN, onward: then })).headers.location).toBe('/')
  })

  it('with a wrong one says so, and after five from an address waits; another address goes on', async () => {
    await start()
    for (let n = 0; n < 5; n++) expect((await send('/sign-in', { pin: '111222' })).statusCode).toBe(403)
    const locked = await send('/sign-in', { pin: PIN })
    expect(locked.statusCode).toBe(429)
    expect(locked.headers['retry-after']).toBe('30')
    const other = await http.inject({
      method: 'POST',
      url: '/sign-in',
      remoteAddress: '10.0.0.9',
      payload: `pin=${PIN}`,
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
    })
    expect(other.statusCode).toBe(303)
    minutes = 1
    expect((await send('/sign-in', { pin: PIN })).statusCode).toBe(303)
  })

  it('is nothing where no PIN is set, and the page says how to set one', async () => {
    await start('')
    expect((await send('/sign-in', { pin: PIN })).statusCode).toBe(403)
    expect((await http.inject('/sign-in')).body).toContain('npm run kiosk:pin')
  })

  it('from a page of somebody else is refused', async () => {
    await start()
    expect((await send('/sign-in', { pin: PIN }, { 'sec-fetch-site': 'cross-site' })).statusCode).toBe(403)
    expect((await send('/sign-in', { pin: PIN }, { origin: 'https://elsewhere.example' })).statusCode).toBe(403)
  })
})

const dropped = { wrench: 'W-07', what: 'dropped', date: '2026-05-01', note: 'off <b>the</b> "bench"' }
const reading = { wrench: 'W-07', date: '2026-05-01', way: 'tester', state: 'as-found', points: '100 N·m: 1010 N·m' }
const hiddenIn = (html: string): Record<string, string> =>
  Object.fromEntries(
    [...html.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [
      name,
      value.replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&'),
    ]),
  )

describe('a form that was sent', () => {
  it('before and was changed since is told so in words for people, and can then be sent', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    await send('/keep/wrench', { token, key, ...card }, { cookie })
    const own = await form('/keep/event?wrench=W-07', cookie)
    const first = { token: own.token, key: own.key, ...dropped }
    expect((await send('/keep/event', first, { cookie })).statusCode).toBe(303)
    const changed = { ...first, date: '2026-05-02' }
    const back = await send('/keep/event', changed, { cookie })
    expect(back.statusCode).toBe(422)
    expect(back.body).toContain('This form was sent before with other content')
    expect(back.body).not.toContain('Idempotency')
    expect(back.body).toContain('2026-05-02')
    expect(keyOf(back.body)).not.toBe(own.key)
    const anew = { ...changed, key: keyOf(back.body) }
    expect((await send('/keep/event', anew, { cookie })).statusCode).toBe(303)
    expect((await send('/keep/event', anew, { cookie })).statusCode).toBe(303)
    expect(await entries()).toBe(3)
  })

  it('after the session ended goes along through the sign-in, and comes back to be looked at', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    await send('/keep/wrench', { token, key, ...card }, { cookie })
    const own = await form('/keep/event', cookie)
    minutes = 6
    const late = await send('/keep/event', { token: own.token, key: own.key, ...dropped, odd: 'x' }, { cookie })
    expect(late.statusCode).toBe(403)
    expect(late.body).toContain('What you typed is still here')
    expect(late.body).not.toContain('<b>the</b>')
    const carried = hiddenIn(late.body)
    expect(Object.keys(carried)).not.toContain('carried-odd')
    expect(Object.values(carried)).not.toContain(own.token)
    const wrong = await send('/sign-in', { ...carried, pin: '111222' })
    expect(hiddenIn(wrong.body)).toEqual(carried)
    const signed = await send('/sign-in', { ...carried, pin: PIN })
    expect(signed.statusCode).toBe(200)
    expect(await entries()).toBe(1)
    expect(signed.body).toContain('off &lt;b>the&lt;/b> &quot;bench&quot;')
    expect(keyOf(signed.body)).toBe(own.key)
    const anew = String(signed.headers['set-cookie']).split(';')[0] as string
    const sent = { ...dropped, token: tokenOf(signed.body), key: keyOf(signed.body) }
    expect((await send('/keep/event', sent, { cookie: anew })).statusCode).toBe(303)
    expect(await entries()).toBe(2)
  })

  it('by a page of somebody else is carried nowhere, and what is no form of ours neither', async () => {
    await start()
    const strange = await send('/keep/event', dropped, { 'sec-fetch-site': 'cross-site' })
    expect(strange.body).not.toContain('carried')
    const odd = await send('/sign-in', { carried: 'nothing', 'carried-note': 'x', pin: PIN, onward: '/board' })
    expect([odd.statusCode, odd.headers.location]).toEqual([303, '/board'])
    expect(
      (await send('/sign-in', { carried: 'event', 'carried-note': 'x'.repeat(30_000), pin: PIN })).statusCode,
    ).toBe(413)
    for (const onward of ['/kiln\u2603', '/a\u0007b', '/a\u0000'])
      expect((await send('/sign-in', { pin: PIN, onward })).headers.location).toBe('/')
  })

  it('asks back a reading that looks like a slip, and keeps it when somebody says that it stands', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    await send('/keep/wrench', { token, key, ...card }, { cookie })
    const own = await form('/keep/check?wrench=W-07', cookie)
    const sent = { token: own.token, key: own.key, ...reading }
    const slip = await send('/keep/check', sent, { cookie })
    expect(slip.statusCode).toBe(422)
    expect(slip.body).toContain('It does show 1010 N·m')
    expect(await entries()).toBe(1)
    const sure = /name="sure" value="([^"]+)"/.exec(slip.body)?.[1] ?? ''
    expect((await send('/keep/check', { ...sent, sure: '99 N·m' }, { cookie })).statusCode).toBe(422)
    expect((await send('/keep/check', { ...sent, sure }, { cookie })).statusCode).toBe(303)
    expect(await entries()).toBe(2)
    const ahead = await send('/keep/check', { ...sent, key: 'k', date: '2199-01-01' }, { cookie })
    expect(ahead.statusCode).toBe(422)
    expect(ahead.body).not.toContain('name="sure"')
  })
})

describe('writing', () => {
  it('keeps what a form says, once however often it is sent, and shows it', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    const sent = { token, key, ...card, least: '', place: ' ' }
    const first = await send('/keep/wrench', sent, { cookie })
    expect(first.statusCode).toBe(303)
    expect(first.headers.location).toMatch(/^\/wrench\/W-07\?kept=/)
    expect((await send('/keep/wrench', sent, { cookie })).headers.location).toBe(first.headers.location)
    expect(await entries()).toBe(1)
    const [filed] = await shop.since(0, 1)
    expect(filed?.entry.by).toEqual({ role: 'keeper', door: 'kiosk' })
    expect((await http.inject(String(first.headers.location))).body).toContain('Kept.')
  })

  it.each(kindNames)('a %s without a session leads to signing in, and writes nothing', async (kind) => {
    await start()
    const asked = await http.inject(`/keep/${kind}?wrench=W-07`)
    expect(asked.statusCode).toBe(303)
    expect(asked.headers.location).toContain('/sign-in?onward=')
    expect((await send(`/keep/${kind}`, { token: 'id-1', ...card })).statusCode).toBe(403)
    expect(await entries()).toBe(0)
  })

  it.each<[string, Record<string, string>, Headers]>([
    ['another token', { token: 'id-99' }, {}],
    ['no token', {}, {}],
    ['a page of somebody else', {}, { 'sec-fetch-site': 'cross-site' }],
    ['another origin', {}, { origin: 'https://elsewhere.example' }],
    ['an origin that says nothing', {}, { origin: 'null' }],
  ])('with %s is refused, and writes nothing', async (_what, changed, headers) => {
    await start()
    const cookie = await signIn()
    const { token } = await form('/keep/wrench', cookie)
    const right = Object.keys(headers).length > 0 ? { token } : {}
    expect((await send('/keep/wrench', { ...right, ...changed, ...card }, { cookie, ...headers })).statusCode).toBe(403)
    expect(await entries()).toBe(0)
  })

  it('after five idle minutes, or after signing out, is nobody’s', async () => {
    await start()
    const cookie = await signIn()
    const { token } = await form('/keep/wrench', cookie)
    minutes = 6
    expect((await send('/keep/wrench', { token, ...card }, { cookie })).statusCode).toBe(403)
    minutes = 0
    const again = await signIn()
    const fresh = await form('/keep/wrench', again)
    await send('/sign-out', {}, { cookie: again })
    expect((await send('/keep/wrench', { token: fresh.token, ...card }, { cookie: again })).statusCode).toBe(403)
    expect(await entries()).toBe(0)
  })

  it('tells every fault at its field and loses nothing that was typed', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    const reply = await send(
      '/keep/wrench',
      { token, key, tag: 'W-07', name: '', most: '200', lever: '400 mm' },
      { cookie },
    )
    expect(reply.statusCode).toBe(422)
    const at = (name: string): string =>
      reply.body.slice(reply.body.indexOf(`for="in-${name}"`)).split('</div></div>')[0] ?? ''
    expect(at('most')).toContain('class="fault"')
    expect(at('most')).toContain('value="200"')
    expect(at('name')).toContain('class="ask"')
    expect(at('lever')).toContain('value="400 mm"')
    expect(tokenOf(reply.body)).toBe(token)
    expect(keyOf(reply.body)).toBe(key)
    expect(await entries()).toBe(0)
  })

  it('a correction comes filled in, and wants to know why; taking back as well', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    await send('/keep/wrench', { token, key, ...card }, { cookie })
    const id = (await shop.since(0, 1))[0]?.entry.id ?? ''
    const page = await form(`/keep/wrench?supersedes=${id}`, cookie)
    expect(page.body).toContain('value="400 mm"')
    const without = await send(
      '/keep/wrench',
      { token: page.token, key: page.key, ...card, lever: '410 mm', supersedes: id },
      { cookie },
    )
    expect(without.statusCode).toBe(422)
    const right = { token: page.token, key: page.key, ...card, lever: '410 mm', supersedes: id, why: 'measured again' }
    expect((await send('/keep/wrench', right, { cookie })).statusCode).toBe(303)
    expect((await http.inject('/wrench/W-07')).body).toContain(
      'corrected on 2026-06-01 by a keeper (kiosk): measured again',
    )
    const back = await form(`/keep/withdrawal?supersedes=${(await shop.since(1, 1))[0]?.entry.id}`, cookie)
    expect(back.body).toContain('in-why')
  })

  it.each(['W-07"><script>alert(1)</script>', '\u0000', 'x'.repeat(15_000)])(
    'text of strangers stays text: %j',
    async (evil) => {
      await start()
      const cookie = await signIn()
      const { token, key } = await form('/keep/wrench', cookie)
      const reply = await send('/keep/wrench', { token, key, ...card, tag: evil, name: evil }, { cookie })
      expect([413, 422]).toContain(reply.statusCode)
      expect(reply.body).not.toContain('<script>alert')
      expect(await entries()).toBe(0)
    },
  )

  it('a field that comes twice, or a body that is no form, is not read, and writes nothing', async () => {
    await start()
    const cookie = await signIn()
    const { token, key } = await form('/keep/wrench', cookie)
    const twice = `${new URLSearchParams({ token, key, ...card })}&most=20+N%C2%B7m`
    const reply = await http.inject({
      method: 'POST',
      url: '/keep/wrench',
      payload: twice,
      headers: { 'content-type': 'application/x-www-form-urlencoded', cookie },
    })
    expect(reply.statusCode).toBe(400)
    for (const url of ['/keep/wrench', '/sign-in', '/sign-out']) {
      expect([303, 403]).toContain((await http.inject({ method: 'POST', url })).statusCode)
      const list = await http.inject({ method: 'POST', url, payload: [1, null], headers: { cookie } })
      expect([303, 400, 403]).toContain(list.statusCode)
    }
    expect(await entries()).toBe(0)
  })

  it('a wrench that the address names stays chosen, listed or not', async () => {
    await start()
    const cookie = await signIn()
    const { body } = await form('/keep/event?wrench=W-99', cookie)
    expect(body).toMatch(/(?:<option value="W-99" selected|name="wrench"[^>]*value="W-99")/)
  })

  it('shows who is signed in, and the way out', async () => {
    await start()
    const cookie = await signIn()
    const { body } = await form('/keep/wrench', cookie)
    expect(body).toContain('action="/sign-out"')
    const out = await send('/sign-out', {}, { cookie })
    expect(String(out.headers['set-cookie'])).toContain('Max-Age=0')
    expect((await http.inject({ url: '/keep/wrench', headers: { cookie } })).statusCode).toBe(303)
  })

  it('takes no form larger than it could be, and no other kind of body', async () => {
    await start()
    const cookie = await signIn()
    expect((await send('/keep/wrench', { name: 'x'.repeat(20_000) }, { cookie })).statusCode).toBe(413)
    const json = await http.inject({ method: 'POST', url: '/keep/wrench', payload: card, headers: { cookie } })
    expect(json.statusCode).toBe(403)
    expect(await entries()).toBe(0)
  })
})
