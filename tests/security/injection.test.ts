// Texts that would be something else where they end up: an address, a header, a file, a page, a drawing, a sheet, a calendar.
// Numbers are those of OWASP ASVS 4.0.3, said in our words.
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { card, check, type Door, keys, openDoor, PIN, sendForm } from './door.ts'

let door: Door
beforeAll(async () => {
  door = await openDoor()
})
afterAll(() => door.app.close())
// Whatever was tried: nothing here was a failure of ours.
afterEach(() => expect(door.failed).toEqual([]))

describe('where a page leads on to', () => {
  const away = [
    'https://elsewhere.example/',
    '//elsewhere.example',
    '/\\elsewhere.example',
    '\\/elsewhere.example',
    '/\t/elsewhere.example',
    ' //elsewhere.example',
    'javascript:alert(1)',
    'elsewhere.example',
    '/\r\nset-cookie: desk=stranger',
    '/\nlocation: https://elsewhere.example',
    '/\u0000',
    '/\u007f',
    '/Ā',
    '/😀',
    `/${'a'.repeat(5000)}`,
  ]
  it.each(away)('V5.1.5, V5.3.1: never to %j', async (onward) => {
    const reply = await sendForm(door, '/sign-in', { pin: PIN, onward })
    expect(reply.statusCode).toBe(303)
    expect(reply.headers.location).toBe('/')
    expect(String(reply.headers['set-cookie'])).not.toContain('stranger')
    const page = await door.app.inject(`/sign-in?onward=${encodeURIComponent(onward)}`)
    expect(page.statusCode).toBe(200)
    expect(page.body).not.toMatch(/(href|action|value)="[^"/]*(javascript:|\/\/)/)
  })

  it.each(['//elsewhere.example/x', '/\\elsewhere.example', '//elsewhere.example/%2e%2e'])(
    'V5.1.5: an error at %s leads nowhere else either',
    async (url) => {
      const { body } = await door.app.inject({ url, headers: { accept: 'text/html' } })
      const links = [...body.matchAll(/(?:href|src|action)="([^"]*)"/g)].map(([, link]) => link)
      expect(links.length).toBeGreaterThan(3)
      for (const link of links) expect(link).toMatch(/^[/#](?![/\\])/)
    },
  )
})

describe('what is asked for in an address', () => {
  const files = [
    '/script/..%2f..%2f..%2fmain.js',
    '/script/%2e%2e%2fkiosk.js',
    '/script/..%5c..%5cmain.js',
    '/script/kiosk.js%00.css',
    '/script/kiosk.js.map',
    '/script/',
    '/script',
    '/../package.json',
    '/package.json',
    '/.git/config',
    '/.env',
    '/data/armlength.db',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/v1/questions/..%2f..%2fexport.json',
  ]
  it.each(files)('V12.3.1, V12.5.1, V4.3.2: %s is no file', async (url) => {
    const { statusCode, body } = await door.app.inject(url)
    expect([400, 404]).toContain(statusCode)
    expect(body).not.toMatch(/import |"dependencies"|root:|\[core\]/)
  })

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype'])(
    'V5.1.3: %s is the name of nothing',
    async (name) => {
      for (const url of [
        `/v1/questions/${name}`,
        `/ask/${name}`,
        `/keep/${name}`,
        `/script/${name}`,
        `/v1/wrenches/${name}`,
      ])
        expect((await door.app.inject(url)).statusCode, url).toBe(404)
      const asked = await door.app.inject(`/v1/questions/pull?${name}=1&torque=10+N%C2%B7m&hand=1+m`)
      expect(asked.statusCode).toBe(422)
      expect((await door.app.inject(`/ask/pull?${name}=1`)).statusCode).toBe(200)
      expect((await door.app.inject(`/?lang=${name}`)).headers['set-cookie']).toBeUndefined()
    },
  )

  it('V5.1.1: an input that comes twice is told, not chosen from', async () => {
    const { statusCode, body } = await door.app.inject(
      '/v1/questions/pull?torque=10+N%C2%B7m&torque=100+N%C2%B7m&hand=1+m',
    )
    expect(statusCode).toBe(422)
    expect(body).toContain('repeated')
  })

  it('V5.3.3: nothing turns the numbers of a page round, whatever is asked', async () => {
    const { body } = await door.app.inject(`/ask/pull?torque=${encodeURIComponent('\u202e100 N·m \u2066')}&hand=1+m`)
    expect(body).toContain('100 N·m')
    expect(body).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/)
  })

  it('V12.6.1: the code for phones is of a page here, whatever is asked', async () => {
    for (const to of ['https://elsewhere.example', '//elsewhere.example', 'javascript:alert(1)', ''])
      expect((await door.app.inject(`/qr.svg?to=${encodeURIComponent(to)}`)).statusCode, to).toBe(404)
  })
})

describe('headers', () => {
  const hostile = ['a\tb', 'é', '"; drop', '<script>alert(1)</script>', ','.repeat(2000), 'de;q=nonsense', '*']
  it.each(hostile)('V5.3.1: %j in any that is read is harmless', async (text) => {
    for (const name of [
      'accept-language',
      'cookie',
      'accept',
      'if-none-match',
      'origin',
      'idempotency-key',
      'x-forwarded-for',
      'x-forwarded-host',
      'x-forwarded-proto',
    ]) {
      const { statusCode, headers, body } = await door.app.inject({
        url: '/ask/pull?torque=1',
        headers: { [name]: text },
      })
      expect(statusCode, name).toBe(200)
      expect(body, name).not.toContain('<script>alert')
      expect(JSON.stringify(headers), name).not.toContain('alert')
    }
  })

  it('V5.3.1: what is chosen by address never comes back as a header of its own', async () => {
    for (const url of [
      '/board?lang=de%0d%0aset-cookie:%20desk=stranger',
      '/screen?mm=3%0d%0aset-cookie:%20desk=stranger&key=%0d%0a&far=%0d%0a',
      '/keep/wrench?tag=%0d%0aset-cookie:%20desk=stranger',
      '/wrench/W%0d%0aset-cookie:desk=stranger',
    ]) {
      const { headers } = await door.app.inject(url)
      expect(JSON.stringify(headers), url).not.toMatch(/desk=stranger"|\\r|\\n/)
    }
  })
})

describe('what is kept comes out as text', () => {
  const evil = `"><script>alert(1)</script><img src=x onerror=alert(2)>&{{7*7}}\${7*7}`
  it('V5.3.3, V5.2.7: on pages and in drawings', async () => {
    const authorization = `Bearer ${keys.keeper}`
    const kept = await door.app.inject({
      method: 'POST',
      url: '/v1/wrenches',
      payload: { ...card, tag: 'X-07', name: evil, place: evil, serial: evil },
      headers: { authorization },
    })
    expect(kept.statusCode, kept.body).toBe(201)
    for (const url of [
      '/board',
      '/',
      '/wrench/X-07',
      '/wrench/X-07/check',
      '/v1/wrenches/X-07/history.svg',
      '/ask/adapter-setting',
      `/ask?text=${encodeURIComponent(evil)}`,
      `/ask/pull?torque=${encodeURIComponent(evil)}`,
    ]) {
      const { body } = await door.app.inject(url)
      expect(body, url).not.toMatch(/<script>alert|<img/)
    }
  })

  const add = (told: object) =>
    door.app.inject({
      method: 'POST',
      url: '/v1/wrenches',
      payload: { ...card, ...told },
      headers: { authorization: `Bearer ${keys.keeper}` },
    })

  it('V5.3.1: a sheet holds no formula', async () => {
    for (const [n, name] of ['=HYPERLINK("https://elsewhere.example")', '+1+1', '@SUM(A1)', '-2+3', '＝1+1'].entries())
      expect((await add({ tag: `F-${n}`, name })).statusCode, name).toBe(201)
    // In countries of the decimal comma a table program parts cells at semicolons, and knows no quotes in the midst of one.
    expect((await add({ tag: 'F-9', name: "x;=cmd|' /C calc'!A0" })).statusCode).toBe(201)
    const { body } = await door.app.inject('/v1/export.csv')
    expect(body).toContain('HYPERLINK')
    expect(body).not.toMatch(/(^|[,;\t])"?[=+@＝-]/m)
  })

  it('V5.1.3: a check that an address holds is not kept, and the page says what the register says until it is', async () => {
    expect((await add({ tag: 'K-9', name: 'x' })).statusCode).toBe(201)
    const check = (points: string) =>
      door.app.inject(`/wrench/K-9/check?way=laboratory&points=${encodeURIComponent(points)}`)
    const { body } = await check('20 N·m: 20 N·m')
    expect(body).toContain('Not kept yet')
    expect(body).toContain('class="status ')
    // What the address holds and cannot be read is told, though no field of the form is its own.
    expect((await check('20 N·m: 20')).body).toContain('Say the unit')
  })

  it('V5.1.3: that something was kept is said of what was kept, whatever an address claims', async () => {
    expect((await add({ tag: 'K-1', name: 'x' })).statusCode).toBe(201)
    const { id } = (await add({ tag: 'K-2', name: 'x' })).json<{ id: string }>()
    for (const query of ['kept', 'kept=1', `kept=${id}`])
      expect((await door.app.inject(`/wrench/K-1?${query}`)).body, query).not.toContain('class="kept"')
    expect((await door.app.inject(`/wrench/K-2?kept=${id}`)).body).toContain('class="kept"')
  })

  it('V5.3.1: a calendar has no line of somebody else’s', async () => {
    const place = 'Rack 1\r\nEND:VEVENT\r\nX-EVIL:1'
    expect([201, 422]).toContain((await add({ tag: 'C-1', place })).statusCode)
    expect((await add({ tag: 'C-2', name: 'a;b,c\\n:d' })).statusCode).toBe(201)
    const authorization = `Bearer ${keys.keeper}`
    for (const tag of ['C-1', 'C-2'])
      await door.app.inject({
        method: 'POST',
        url: `/v1/wrenches/${tag}/checks`,
        payload: check,
        headers: { authorization },
      })
    const { body } = await door.app.inject('/v1/due.ics')
    expect(body).toContain('BEGIN:VEVENT')
    expect(body).not.toMatch(/^X-EVIL/m)
  })

  it('V5.3.4: a text with quotes is a text to the register', async () => {
    const authorization = `Bearer ${keys.keeper}`
    const tag = "W-1'); drop table entries; --"
    const reply = await door.app.inject({
      method: 'POST',
      url: '/v1/wrenches',
      payload: { ...card, tag },
      headers: { authorization },
    })
    expect([201, 422]).toContain(reply.statusCode)
    expect((await door.app.inject(`/v1/wrenches/${encodeURIComponent(tag)}`)).statusCode).toBe(
      reply.statusCode === 201 ? 200 : 404,
    )
    expect((await door.app.inject('/v1/wrenches')).statusCode).toBe(200)
  })
})
