// The register over HTTP: who may write, what is kept once, what is shown; and the answers that know the wrench.
import type { FastifyInstance } from 'fastify'
import { afterEach, describe, expect, it } from 'vitest'
import { fault } from '../../../src/core/fault.ts'
import { Outage } from '../../../src/core/outage.ts'
import { createDesk } from '../../../src/desk/desk.ts'
import { lenderOf } from '../../../src/desk/lend.ts'
import type { Shop } from '../../../src/desk/shop.ts'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { hashOfKey, readWriters, roleOf } from '../../../src/faces/http/writers.ts'
import { noPictures, testShop } from '../../support/doors.ts'

const KEEPER = 'kiln-lane-keeper-0001'
const MECHANIC = 'kiln-lane-mechanic-0001'
const keys = readWriters(`# bay\nkeeper office ${hashOfKey(KEEPER)}\n\nmechanic bay-2 ${hashOfKey(MECHANIC)}\n`)

let http: FastifyInstance
const told: unknown[] = []
const start = async (shop: Shop = testShop(), writers = keys): Promise<void> => {
  http = await buildHttp({
    desk: createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) }),
    pictures: noPictures,
    shop: 'Kiln Lane Garage',
    register: { shop, keys: writers, now: () => new Date('2026-06-01T10:00:00Z') },
    trustProxy: false,
    mostASecond: 100_000,
    failed: (_reference, error) => told.push(error),
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })
}
afterEach(() => http.close())

const card = { tag: 'W-07', name: 'Half-inch click wrench', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
const post = (url: string, payload: object, key?: string, more: Record<string, string> = {}) =>
  http.inject({
    method: 'POST',
    url,
    payload,
    headers: { ...(key === undefined ? {} : { authorization: `Bearer ${key}` }), ...more },
  })
const check = {
  date: '2026-05-01',
  way: 'tester',
  state: 'as-found',
  points: '100 N·m: 100; 101; 100; 100; 100 N·m',
  'gauge-uncertainty': '0.5 %',
}

describe('sheets', () => {
  const sheet = 'tag,name,wrench-type,most\nW-1,Small,click,25 N·m\n'
  const send = (text: string, key?: string, query = '') =>
    http.inject({
      method: 'POST',
      url: `/v1/import${query}`,
      payload: text,
      headers: { 'content-type': 'text/csv', ...(key === undefined ? {} : { authorization: `Bearer ${key}` }) },
    })

  it('are read in by those with a key, tried first, and go out again', async () => {
    await start()
    expect((await send(sheet)).statusCode).toBe(401)
    expect((await send(sheet, MECHANIC)).statusCode).toBe(403)
    expect((await send(sheet, KEEPER, '?dry-run')).json()).toEqual({ rows: { new: 1, again: 0 }, kept: false })
    expect((await http.inject('/v1/wrenches')).json()).toEqual({ wrenches: [] })
    expect((await send(sheet, KEEPER)).json()).toEqual({ rows: { new: 1, again: 0 }, kept: true })
    expect((await send(sheet, KEEPER)).json()).toEqual({ rows: { new: 0, again: 1 }, kept: true })
    const out = await http.inject('/v1/export.csv')
    expect(out.headers['content-type']).toBe('text/csv; charset=utf-8')
    await http.close()
    await start()
    expect((await send(out.body, KEEPER)).json()).toEqual({ rows: { new: 1, again: 0 }, kept: true })
    expect((await http.inject('/v1/export.csv')).body).toBe(out.body)
  })

  it('with a dry-run that says something are not read: nobody guesses which way it was meant', async () => {
    await start()
    for (const query of ['?dry-run=false', '?dry-run=0', '?dry-run=true']) {
      expect((await send(sheet, KEEPER, query)).statusCode).toBe(400)
      expect((await post(`/v1/wrenches/W-07/checks${query}`, check, KEEPER)).statusCode).toBe(400)
    }
    expect((await http.inject('/v1/wrenches')).json()).toEqual({ wrenches: [] })
  })

  it('that are wrong are told line by line', async () => {
    await start()
    const reply = await send('tag,name,wrench-type,most\nW-1,,click,25\n', KEEPER)
    expect(reply.statusCode).toBe(422)
    expect(reply.json()).toMatchObject({
      count: 2,
      rows: [
        { line: 2, column: 'most', code: 'unit-missing', got: '25' },
        { line: 2, column: 'name', code: 'empty' },
      ],
    })
  })

  it.each(['', '\u0000', '"', `tag\n${'x,'.repeat(100_000)}`, 'a'.repeat(200_000)])(
    'hostile ones are told, not fallen over',
    async (text) => {
      await start()
      expect([400, 415, 422]).toContain((await send(text, KEEPER)).statusCode)
    },
  )

  it('of another kind of content, or too large, are not read', async () => {
    await start()
    expect((await post('/v1/import', { tag: 'W-1' }, KEEPER)).statusCode).toBe(415)
    expect((await send('x'.repeat(11 * 1024 * 1024), KEEPER)).statusCode).toBe(413)
  })
})

describe('what is written', () => {
  const away = (code: 'disk-full' | 'unreachable') => {
    const shop = testShop()
    const fail = async (): Promise<never> => {
      throw Object.assign(new Outage(code, 'no room'), { isWriting: true })
    }
    return { ...shop, keep: fail, takeIn: fail }
  }

  it.each([
    ['disk-full', 'Nothing was kept: send it again'],
    ['unreachable', 'under the same Idempotency-Key it is kept once'],
  ] as const)('where the register fails (%s) is told what to do about it, not what to ask', async (code, said) => {
    await start(away(code))
    for (const reply of [
      await post('/v1/wrenches', card, KEEPER),
      await http.inject({
        method: 'POST',
        url: '/v1/import',
        payload: 'tag,name,wrench-type,most\n',
        headers: { 'content-type': 'text/csv', authorization: `Bearer ${KEEPER}` },
      }),
    ]) {
      expect([reply.statusCode, reply.headers['retry-after']]).toEqual([503, '5'])
      expect(reply.json()).toMatchObject({ type: 'urn:armlength:problem:not-written' })
      expect(reply.body).toContain(said)
      expect(reply.body).not.toContain('lever')
    }
  })

  it('where others are quicker each time is to be sent again', async () => {
    const refused = { kind: 'refused', faults: [fault('others-write', '', '')], missing: [] } as const
    await start({ ...testShop(), keep: async () => refused })
    const reply = await post('/v1/wrenches', card, KEEPER)
    expect([reply.statusCode, reply.headers['retry-after']]).toEqual([409, '1'])
  })

  it('that is not UTF-8 is refused: JSON, sheets', async () => {
    await start()
    const latin = (text: string, type: string, url: string) =>
      http.inject({
        method: 'POST',
        url,
        payload: Buffer.from(text, 'latin1'),
        headers: { 'content-type': type, authorization: `Bearer ${KEEPER}` },
      })
    const json = JSON.stringify({ ...card, most: '200 Nm', name: 'Schlüssel' })
    for (const reply of [
      await latin(json, 'application/json', '/v1/wrenches'),
      await latin('tag,name,wrench-type,most\nW-1,Schlüssel,click,25 Nm\n', 'text/csv', '/v1/import'),
    ]) {
      expect(reply.statusCode).toBe(400)
      expect(reply.json()).toMatchObject({ detail: expect.stringContaining('UTF-8') })
    }
    const whole = await post('/v1/wrenches', { ...card, name: 'Schlüssel 🔧' }, KEEPER)
    expect(whole.json()).toMatchObject({ body: { name: 'Schlüssel 🔧' } })
  })

  it('and is too large, or of another kind, is told the limit and the kind of its own address', async () => {
    await start()
    const sheets = (payload: string, type: string) =>
      http.inject({
        method: 'POST',
        url: '/v1/import',
        payload,
        headers: { 'content-type': type, authorization: `Bearer ${KEEPER}` },
      })
    expect((await sheets('x'.repeat(11 * 1024 * 1024), 'text/csv')).json()).toMatchObject({
      detail: `At most ${10 * 1024 * 1024} bytes are read here.`,
    })
    expect((await sheets('<x/>', 'application/xml')).json()).toMatchObject({ detail: 'Send the sheet as text/csv.' })
    const large = await post('/v1/wrenches', { ...card, name: 'x'.repeat(20_000) }, KEEPER)
    expect(large.json()).toMatchObject({ detail: `At most ${16 * 1024} bytes are read here.` })
  })
})

describe('a dry-run', () => {
  const used = { date: '2026-05-02', count: '12', since: 'check' }
  const dropped = { what: 'dropped', date: '2026-05-02' }
  const scale = { tag: 'S-1', name: 'Scale', 'gauge-type': 'luggage-scale' }
  const written = async () => (await http.inject('/v1/export.csv')).body

  it('of anything that may be written is judged and not kept', async () => {
    await start()
    const { id } = (await post('/v1/wrenches', card, KEEPER)).json<{ id: string }>()
    const before = await written()
    for (const [url, body] of [
      ['/v1/wrenches', { ...card, tag: 'W-08' }],
      ['/v1/wrenches/W-07/events', dropped],
      ['/v1/wrenches/W-07/uses', used],
      ['/v1/gauges', scale],
      ['/v1/withdrawals', { supersedes: id, why: 'never was' }],
    ] as const) {
      const reply = await post(`${url}?dry-run`, body, KEEPER)
      expect([url, reply.statusCode, reply.json()]).toEqual([url, 200, { kept: false, again: false }])
      expect((await post(`${url}?dry-run=no`, body, KEEPER)).statusCode).toBe(400)
      expect((await post(`${url}?dry-run`, body)).statusCode).toBe(401)
      const wrong = await post(`${url}?dry-run`, { ...body, odd: '1' }, KEEPER)
      expect(wrong.json()).toMatchObject({ faults: [{ input: 'odd', code: 'unknown-input' }] })
      expect(wrong.statusCode).toBe(422)
    }
    expect(await written()).toBe(before)
    expect((await post('/v1/wrenches?dry-run', { ...card, tag: 'W-08' }, MECHANIC)).statusCode).toBe(403)
  })

  it('tells what the record refuses, and what it has already', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER, { 'idempotency-key': 'k-1' })
    const twice = await post('/v1/wrenches?dry-run', card, KEEPER)
    expect(twice.json()).toMatchObject({ faults: [{ input: 'tag', code: 'conflict' }] })
    const known = await post('/v1/wrenches?dry-run', card, KEEPER, { 'idempotency-key': 'k-1' })
    expect(known.json()).toEqual({ kept: false, again: true })
  })
})

describe('what is sent to the address of a wrench', () => {
  it.each(['events', 'uses', 'checks', 'checks?dry-run'])('as %s is not kept of another', async (word) => {
    await start()
    for (const tag of ['W-07', 'W-08']) await post('/v1/wrenches', { ...card, tag }, KEEPER)
    const body = {
      events: { what: 'dropped', date: '2026-05-02' },
      uses: { date: '2026-05-02', count: '1', since: 'check' },
    }
    const sent = body[word as keyof typeof body] ?? check
    for (const wrench of ['W-08', ['W-08'], ['W-07', 'W-08']]) {
      const reply = await post(`/v1/wrenches/W-07/${word}`, { ...sent, wrench }, KEEPER)
      expect(reply.statusCode).toBe(400)
      expect(reply.json()).toMatchObject({ detail: expect.stringContaining('another wrench') })
    }
    expect((await post(`/v1/wrenches/W-07/${word}`, { ...sent, wrench: 'w-07' }, KEEPER)).statusCode).toBeLessThan(300)
    const [, other] = (await http.inject('/v1/wrenches')).json<{ wrenches: Array<{ status: { code: string } }> }>()
      .wrenches
    expect(other?.status.code).toBe('check-due')
  })

  it('as a plan neither', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER)
    expect((await http.inject('/v1/wrenches/W-07/check-plan?way=tester&wrench=W-08')).statusCode).toBe(400)
    expect((await http.inject('/v1/wrenches/W-07/check-plan?way=tester&wrench=w-07')).statusCode).toBe(200)
  })
})

describe('which wrench', () => {
  it('is answered from the register as it is now, and kept by nobody', async () => {
    await start()
    const which = () => http.inject('/v1/questions/which-wrench?torque=120+N%C2%B7m')
    expect((await which()).json()).toMatchObject({ status: 'answered', results: { wrenches: [] } })
    await post('/v1/wrenches', card, KEEPER)
    const reply = await which()
    expect(reply.json()).toMatchObject({ results: { wrenches: [{ wrench: { code: 'W-07' }, fit: { code: 'care' } }] } })
    expect(reply.headers['cache-control']).toBe('no-store')
  })
})

describe('writing', () => {
  it('is for those with a key, by their role', async () => {
    await start()
    expect((await post('/v1/wrenches', card)).statusCode).toBe(401)
    expect((await post('/v1/wrenches', card, 'somebody-elses-key-01')).statusCode).toBe(401)
    expect((await post('/v1/wrenches', card, MECHANIC)).statusCode).toBe(403)
    const made = await post('/v1/wrenches', card, KEEPER)
    expect(made.statusCode).toBe(201)
    expect(made.json()).toMatchObject({ kind: 'wrench', by: { role: 'keeper', door: 'http' }, body: { tag: 'W-07' } })
    expect((await post('/v1/wrenches/W-07/checks', check, MECHANIC)).statusCode).toBe(201)
  })

  it('is for nobody where no keys are named', async () => {
    await start(testShop(), [])
    expect((await post('/v1/wrenches', card, KEEPER)).statusCode).toBe(403)
  })

  it('tells every fault and what is missing, as a problem', async () => {
    await start()
    const reply = await post('/v1/wrenches', { tag: 'W-07', most: '200', colour: 'red' }, KEEPER)
    expect(reply.statusCode).toBe(422)
    const body = reply.json<{
      type: string
      faults: Array<{ input: string }>
      missing: Array<{ input: string; ask: string }>
    }>()
    expect(body.type).toBe('urn:armlength:problem:not-kept')
    expect(body.faults.map(({ input }) => input)).toEqual(['most', 'colour'])
    expect(body.missing.map(({ input }) => input)).toEqual(['name', 'wrench-type'])
    for (const { ask } of body.missing) expect(ask).not.toBe('')
  })

  it('keeps one entry for one Idempotency-Key', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER)
    const key = { 'idempotency-key': 'bay-2-0001' }
    const first = await post('/v1/wrenches/W-07/checks', check, MECHANIC, key)
    const again = await post('/v1/wrenches/W-07/checks', check, MECHANIC, key)
    expect([first.statusCode, again.statusCode]).toEqual([201, 200])
    expect(again.json()).toEqual(first.json())
    const other = await post('/v1/wrenches/W-07/checks', { ...check, date: '2026-05-02' }, MECHANIC, key)
    expect(other.statusCode).toBe(422)
    expect((await post('/v1/wrenches/W-07/checks', check, MECHANIC, { 'idempotency-key': 'ö' })).statusCode).toBe(400)
  })
})

describe('reading', () => {
  it('shows the board and a wrench with its checks, and keeps nothing', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER)
    await post('/v1/wrenches/W-07/checks', check, MECHANIC)
    const board = await http.inject('/v1/wrenches')
    expect(board.headers['cache-control']).toBe('no-store')
    expect(board.json()).toMatchObject({
      wrenches: [{ tag: 'W-07', status: { code: 'in-service', due: '2027-05-01' }, href: '/v1/wrenches/W-07' }],
    })
    const one = await http.inject('/v1/wrenches/w-07')
    expect(one.json()).toMatchObject({
      tag: 'W-07',
      checks: [{ verdict: 'pass', limit: 4, points: [{ setting: 100, deviation: expect.closeTo(-0.2, 2) }] }],
    })
    expect((await http.inject('/v1/wrenches/W-99')).json()).toMatchObject({ status: 404 })
    expect((await http.inject('/v1/wrenches?limit=0')).statusCode).toBe(400)
    expect((await http.inject('/v1/wrenches?colour=red')).statusCode).toBe(400)
  })

  it('walks a long board page by page, each wrench once', async () => {
    await start()
    for (let n = 1; n <= 7; n++) await post('/v1/wrenches', { ...card, tag: `W-${n}` }, KEEPER)
    const seen: string[] = []
    let after = ''
    for (let pages = 0; pages < 10; pages++) {
      const page = (await http.inject(`/v1/wrenches?limit=3${after}`)).json<{
        wrenches: Array<{ tag: string }>
        next?: string
      }>()
      seen.push(...page.wrenches.map(({ tag }) => tag))
      if (page.next === undefined) break
      after = `&after=${encodeURIComponent(page.next)}`
    }
    expect(seen.sort()).toEqual(['W-1', 'W-2', 'W-3', 'W-4', 'W-5', 'W-6', 'W-7'])
  })

  it('answers a question that names a wrench, and lets nobody keep that answer', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER)
    const url = '/v1/questions/adapter-setting?torque=120+Nm&adapter=45+mm@0&wrench=W-07'
    const reply = await http.inject(url)
    expect(reply.headers['cache-control']).toBe('no-store')
    expect(reply.headers['etag']).toBeUndefined()
    expect(reply.json()).toMatchObject({ status: 'answered', cautions: [{ code: 'check-due' }, {}, {}, {}, {}, {}] })
    await post('/v1/wrenches/W-07/checks', check, MECHANIC)
    expect((await http.inject(url)).json<{ cautions: Array<{ code: string }> }>().cautions[0]?.code).toBe('last-check')
    expect((await http.inject(url.replace('W-07', 'W-99'))).statusCode).toBe(422)
  })
})

describe('the pages', () => {
  it('show the board as it hangs and a wrench with its checks, and escape what was typed', async () => {
    await start()
    expect((await http.inject('/board')).body).toContain('No wrench is in the register yet.')
    await post('/v1/wrenches', { ...card, name: '<b>Click</b>', place: 'Bay 2' }, KEEPER)
    expect((await http.inject('/board')).body).toContain('2026-06-01: No check of it is recorded.')
    await post('/v1/wrenches/W-07/checks', check, MECHANIC)
    await post('/v1/wrenches/W-07/events', { what: 'dropped', date: '2026-05-20', note: 'off the bench' }, MECHANIC)
    const board = await http.inject('/board')
    expect(board.headers['cache-control']).toBe('no-store')
    expect(board.body).toContain('W-07: &lt;b>Click&lt;/b>, Bay 2')
    expect(board.body).toContain('<strong>check before use</strong>')
    const page = (await http.inject('/wrench/w-07')).body
    for (const told of [
      '100 N·m',
      '100.2 N·m',
      '0.2 % high (gives more)',
      'pass',
      '2026-05-20: dropped: off the bench',
    ])
      expect(page).toContain(told)
    // Dropped, it is checked before anybody dials it.
    expect(page).not.toContain('href="/ask/adapter-setting?wrench=W-07"')
    expect(page).toContain('href="/wrench/W-07/check"')
    expect((await http.inject('/wrench/W-99')).statusCode).toBe(404)
  })

  it('walk a long board', async () => {
    const shop = testShop()
    await start(shop)
    for (let n = 0; n < 70; n++) {
      await shop.keep('wrench', { ...card, tag: `W-${n}` }, { role: 'keeper', door: 'terminal' })
    }
    const first = (await http.inject('/board')).body
    const [, next = ''] = /href="(\/board\?after=[^"]+)"/.exec(first) ?? []
    const second = (await http.inject(next)).body
    const tags = [...`${first}${second}`.matchAll(/href="\/wrench\/([^"]+)"/g)].map((match) => match[1])
    expect(new Set(tags).size).toBe(70)
    expect(second).not.toContain('/board?after=')
  })
})

describe('the register as files', () => {
  it('is whole, in the order in which it was kept, empty too', async () => {
    await start()
    expect((await http.inject('/v1/export.json')).json()).toEqual({ entries: [] })
    await post('/v1/wrenches', card, KEEPER)
    await post('/v1/wrenches/W-07/checks', check, MECHANIC)
    const { entries } = (await http.inject('/v1/export.json')).json<{ entries: Array<{ kind: string }> }>()
    expect(entries.map(({ kind }) => kind)).toEqual(['wrench', 'check'])
  })

  it('holds more than a page', async () => {
    const shop = testShop()
    await start(shop)
    for (let n = 0; n < 1203; n++) {
      await shop.keep('wrench', { ...card, tag: `W-${n}` }, { role: 'keeper', door: 'terminal' })
    }
    const { entries } = (await http.inject('/v1/export.json')).json<{ entries: Array<{ body: { tag: string } }> }>()
    expect(new Set(entries.map(({ body }) => body.tag)).size).toBe(1203)
  })

  it('tells what is due as a calendar whose lines are short and whose marks are escaped', async () => {
    await start()
    await post('/v1/wrenches', { ...card, name: `Long; named, ${'é'.repeat(60)}` }, KEEPER)
    expect((await http.inject('/v1/due.ics')).body).not.toContain('VEVENT')
    await post('/v1/wrenches/W-07/checks', check, MECHANIC)
    const reply = await http.inject('/v1/due.ics')
    expect(reply.headers['content-type']).toBe('text/calendar; charset=utf-8')
    for (const line of reply.body.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
    const unfolded = reply.body.replaceAll('\r\n ', '')
    expect(unfolded).toContain('DTSTART;VALUE=DATE:20270501\r\n')
    expect(unfolded).toContain(`SUMMARY:Check due: W-07\\, Long\\; named\\, ${'é'.repeat(60)}\r\n`)
    expect(unfolded).toContain('UID:W-07-2027-05-01@armlength\r\n')
  })
})

describe('a register that is away', () => {
  it('is a calm 503, and questions without a wrench are answered', async () => {
    const away = async (): Promise<never> => {
      throw new Outage('unreachable', 'postgres://secret@db')
    }
    await start({ ...testShop(), wrench: away, board: away })
    for (const url of ['/v1/wrenches', '/v1/questions/pull?torque=1+Nm&wrench=W-07']) {
      const reply = await http.inject(url)
      expect(reply.statusCode).toBe(503)
      expect(reply.body).not.toContain('secret')
      expect(reply.json<{ type: string }>().type).toBe('urn:armlength:problem:register-away')
    }
    expect((await http.inject('/v1/questions/pull?torque=1+Nm&hand=1+m')).statusCode).toBe(200)
    expect(told.length).toBeGreaterThan(0)
  })
})

describe('keys', () => {
  it('are read from lines of role, name and hash, and a wrong line is named without what stands in it', () => {
    expect(keys.map(({ role, name }) => [role, name])).toEqual([
      ['keeper', 'office'],
      ['mechanic', 'bay-2'],
    ])
    for (const wrong of ['owner a 00', `keeper ${hashOfKey('x')}`, `keeper a ${hashOfKey('x')}0`]) {
      expect(() => readWriters(`\n${wrong}`)).toThrow(/^API_KEYS_FILE, line 2: (?!.*00)/)
    }
  })

  it('open with the whole key alone', () => {
    expect(roleOf(keys, `Bearer ${KEEPER}`)).toBe('keeper')
    for (const wrong of [undefined, '', KEEPER, `Bearer ${KEEPER}x`, `Basic ${KEEPER}`, `Bearer ${hashOfKey(KEEPER)}`])
      expect(roleOf(keys, wrong), wrong).toBeUndefined()
  })
})

describe('checking', () => {
  const scale = {
    tag: 'S-1',
    name: 'Luggage scale',
    'gauge-type': 'luggage-scale',
    'most-force': '600 N',
    tolerance: '0.5 %',
    checked: '2026-01-05',
  }
  const setUp = async (): Promise<void> => {
    await start()
    await post('/v1/wrenches', { ...card, least: '40 N·m', mark: '1 N·m' }, KEEPER)
    await post('/v1/gauges', scale, KEEPER)
  }

  it('gives the plan by wrench, gauge and distance', async () => {
    await setUp()
    const plan = await http.inject('/v1/wrenches/w-07/check-plan?gauge=S-1&distance=400%20mm&lie=upright')
    expect(plan.statusCode).toBe(200)
    expect(plan.headers['cache-control']).toBe('no-store')
    expect(plan.json()).toMatchObject({
      status: 'planned',
      prePulls: 5,
      points: [
        { setting: { text: '40 N·m' }, shows: { low: { text: '96.2 N' }, high: { text: '104.1 N' } } },
        { setting: { text: '120 N·m' } },
        { setting: { text: '200 N·m' } },
      ],
    })
    expect((await http.inject('/v1/wrenches/W-07/check-plan?gauge=S-1')).json()).toMatchObject({
      status: 'incomplete',
      missing: [{ input: 'distance' }],
    })
    const wrong = await http.inject('/v1/wrenches/W-07/check-plan?gauge=S-1&distance=400')
    expect(wrong.statusCode).toBe(422)
    expect(wrong.json()).toMatchObject({
      type: 'urn:armlength:problem:check-refused',
      faults: [{ code: 'unit-missing', input: 'distance' }],
    })
    expect((await http.inject('/v1/wrenches/W-99/check-plan?way=tester')).statusCode).toBe(404)
  })

  it('judges what is sent with dry-run, asks back a slip, needs no key and keeps nothing', async () => {
    await setUp()
    const body = { gauge: 'S-1', distance: '400 mm', lie: 'upright' }
    const dry = (more: object) => post('/v1/wrenches/W-07/checks?dry-run', { ...body, ...more })
    const one = await dry({ reading: '101 N' })
    expect(one.statusCode).toBe(200)
    expect(one.json()).toMatchObject({ status: 'asking', taken: 1, open: 14, verdict: { code: 'pass' } })
    const two = await dry({ points: one.json<{ inputs: { points: string } }>().inputs.points, reading: '104.3' })
    expect(two.json()).toMatchObject({ taken: 2, verdict: { code: 'fail-in-doubt' } })
    const slip = await dry({ reading: '1010 N' })
    expect(slip.statusCode).toBe(422)
    expect(slip.json()).toMatchObject({ faults: [{ input: 'reading', code: 'out-of-range' }], check: { taken: 0 } })
    expect((await http.inject('/v1/wrenches/W-07')).json()).toMatchObject({ checks: [] })
  })

  it('gives the report of a check that was kept, where the wrench says it is', async () => {
    await setUp()
    await post('/v1/wrenches/W-07/checks', { ...check, temperature: '21 °C', notes: 'five pulls' }, MECHANIC)
    const { checks } = (await http.inject('/v1/wrenches/W-07')).json<{ checks: Array<{ href: string }> }>()
    const report = await http.inject(checks[0]?.href as string)
    expect(report.statusCode).toBe(200)
    expect(report.json()).toMatchObject({
      date: '2026-05-01',
      state: { code: 'as-found' },
      temperature: '21 °C',
      remarks: 'five pulls',
      verdict: { code: 'pass' },
      rule: { code: 'guarded' },
      isLatest: true,
      points: [
        {
          setting: { text: '100 N·m' },
          window: { low: { text: '96.2 N·m' }, high: { text: '104.1 N·m' } },
          readings: [{ read: { text: '100 N·m' } }, { read: { text: '101 N·m' } }, {}, {}, {}],
        },
      ],
    })
    expect((await http.inject('/v1/wrenches/W-07/checks/e-99')).statusCode).toBe(404)
    expect((await http.inject('/v1/wrenches/W-99/checks/e-99')).statusCode).toBe(404)
  })

  it('stands in OpenAPI', async () => {
    await start()
    const { paths } = (await http.inject('/openapi.json')).json<{ paths: Record<string, Record<string, unknown>> }>()
    expect(paths).toHaveProperty(['/v1/wrenches/{tag}/check-plan', 'get'])
    expect(paths).toHaveProperty(['/v1/wrenches/{tag}/checks/{id}', 'get'])
    expect(JSON.stringify(paths['/v1/wrenches/{tag}/checks'])).toContain('dry-run')
  })
})

describe('the page of a report', () => {
  it('stands behind a link of the wrench, and shows what the API tells', async () => {
    await start()
    await post('/v1/wrenches', card, KEEPER)
    const made = await post('/v1/wrenches/W-07/checks', { ...check, notes: '<b>five</b> pulls' }, MECHANIC)
    const { id } = made.json<{ id: string }>()
    expect((await http.inject('/wrench/W-07')).body).toContain(`href="/wrench/W-07/check/${id}"`)
    const page = await http.inject(`/wrench/W-07/check/${id}`)
    expect(page.statusCode).toBe(200)
    expect(page.headers['cache-control']).toBe('no-store')
    const report = (await http.inject(`/v1/wrenches/W-07/checks/${id}`)).json<{
      points: Array<Record<'mean' | 'deviation' | 'spread', { text: string }>>
    }>()
    for (const { mean, deviation, spread } of report.points) {
      for (const { text } of [mean, spread]) expect(page.body).toContain(`<td>${text}</td>`)
      // Which way it is off stands beside the number in words.
      expect(page.body).toMatch(new RegExp(`<td>${deviation.text} \\(gives (more|less)\\)</td>`))
    }
    expect(page.body).toContain('not an accredited calibration')
    expect(page.body).toContain('&lt;b>five&lt;/b> pulls')
    expect((await http.inject('/wrench/W-07/check/e-99')).statusCode).toBe(404)
    expect((await http.inject('/report.css')).headers['content-type']).toContain('text/css')
  })
})
