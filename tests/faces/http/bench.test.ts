// Bench runs over HTTP: begun, read, finished by those with a key; shown, drawn and given out to anybody; what is not there told.
import type { FastifyInstance } from 'fastify'
import { afterEach, describe, expect, it } from 'vitest'
import type { Shop } from '../../../src/desk/shop.ts'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { hashOfKey, readWriters } from '../../../src/faces/http/writers.ts'
import { createPictures, type Pictures } from '../../../src/faces/pictures.ts'
import { runDocumentSchema } from '../../../src/questions/run-document.ts'
import { noPictures, testDesk, testShop } from '../../support/doors.ts'
import { addReadings, beginOil, dry, oiled, oilOpening, wholeOil } from '../../support/oil-run.ts'

const MECHANIC = 'kiln-lane-mechanic-0001'
const KEEPER = 'kiln-lane-keeper-0001'
const keys = readWriters(`mechanic bay-2 ${hashOfKey(MECHANIC)}\nkeeper office ${hashOfKey(KEEPER)}\n`)

let http: FastifyInstance
const start = async (shop: Shop = testShop(), pictures: Pictures = noPictures): Promise<Shop> => {
  http = await buildHttp({
    desk: testDesk(),
    pictures,
    shop: 'Kiln Lane Garage',
    register: { shop, keys, now: () => new Date('2026-06-01T10:00:00Z') },
    trustProxy: false,
    mostASecond: 100_000,
    failed: (_reference, error) => {
      throw error
    },
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })
  return shop
}
afterEach(() => http.close())

const post = (url: string, payload: object, key?: string, more: Record<string, string> = {}) =>
  http.inject({
    method: 'POST',
    url,
    payload,
    headers: { ...(key === undefined ? {} : { authorization: `Bearer ${key}` }), ...more },
  })
const { wrench: _, ...opening } = oilOpening

describe('a run', () => {
  it('is begun, read by two hands, finished, and says its verdict', async () => {
    await start()
    expect((await post('/v1/bench', opening)).statusCode).toBe(401)
    expect((await post('/v1/bench', opening, MECHANIC)).statusCode).toBe(201)
    const planned = (await http.inject('/v1/bench/B-01?readings=8')).json()
    expect(planned.headline).toMatch(/8 of each see a difference/)
    for (const [condition, more] of [
      ['A', dry],
      ['B', oiled],
    ] as const) {
      const sent = { condition, date: '2026-05-02', ...more }
      const once = await post('/v1/bench/b-01/readings', sent, MECHANIC, { 'idempotency-key': condition })
      const again = await post('/v1/bench/b-01/readings', sent, MECHANIC, { 'idempotency-key': condition })
      expect([once.statusCode, again.statusCode]).toEqual([201, 200])
    }
    expect((await post('/v1/bench/B-01/finish', { date: '2026-05-02' }, KEEPER)).statusCode).toBe(201)
    const shown = await http.inject('/v1/bench/B-01')
    const document = runDocumentSchema.parse(shown.json())
    expect(document.headline).toContain('a difference that matters')
    expect(document.state.code).toBe('finished')
    expect(shown.headers['cache-control']).toBe('no-store')
    const list = (await http.inject('/v1/bench')).json()
    expect(list.runs).toEqual([
      {
        tag: 'B-01',
        asked: oilOpening['asked'],
        date: '2026-05-01',
        state: { code: 'finished', text: 'finished' },
        readings: 10,
        due: '2026-06-01',
        href: '/v1/bench/B-01',
      },
    ])
  })

  it('is told what is wrong with it, each at its input, and nothing is kept', async () => {
    await start()
    await post('/v1/bench', opening, MECHANIC)
    const sent = { condition: 'C', date: '2026-05-02', torque: '80; 81 N·m', 'clamp-force': '33 kN' }
    const refused = await post('/v1/bench/B-01/readings', sent, MECHANIC)
    expect(refused.statusCode).toBe(422)
    expect(refused.json().faults.map(({ input }: { input: string }) => input)).toEqual(['clamp-force'])
    const unknown = await post('/v1/bench/B-01/readings', { ...sent, 'clamp-force': '33; 34 kN' }, MECHANIC)
    expect(unknown.json().faults.map(({ input, allowed }: Record<string, string>) => [input, allowed])).toEqual([
      ['condition', 'A or B'],
    ])
    expect((await http.inject('/v1/bench/B-01')).json().readings).toEqual([])
  })

  it('goes out as a sheet that another desk reads in', async () => {
    const shop = testShop()
    await wholeOil(shop)
    await start(shop)
    const sheet = (await http.inject('/v1/bench/B-01/entries.csv')).body
    await http.close()
    const other = await start()
    await other.keep(
      'wrench',
      { tag: 'W-07', name: 'x', 'wrench-type': 'click', most: '200 N·m' },
      { role: 'keeper', door: 'http' },
    )
    const read = (query: string) =>
      http.inject({
        method: 'POST',
        url: `/v1/import${query}`,
        payload: sheet,
        headers: { 'content-type': 'text/csv', authorization: `Bearer ${KEEPER}` },
      })
    expect((await read('?dry-run')).json()).toMatchObject({ rows: { new: 4 } })
    expect(await other.runs.one('B-01')).toBeUndefined()
    await read('')
    expect((await other.runs.one('B-01'))?.entries).toEqual((await shop.runs.one('B-01'))?.entries)
  })

  it('is drawn as a card of 1200 by 675, in each theme, once there are readings', async () => {
    const shop = testShop()
    await beginOil(shop)
    await start(shop, createPictures())
    expect((await http.inject('/v1/bench/B-01/card.png')).statusCode).toBe(404)
    expect((await http.inject('/v1/bench/B-9/card.png')).statusCode).toBe(404)
    await addReadings(shop, 'A', dry)
    const cards = await Promise.all(
      ['', '?theme=light', '?theme=dark'].map((query) => http.inject(`/v1/bench/B-01/card.png${query}`)),
    )
    for (const { headers, rawPayload } of cards) {
      expect(headers['content-type']).toBe('image/png')
      // Width and height of a PNG stand at byte 16 and 20.
      expect([rawPayload.readUInt32BE(16), rawPayload.readUInt32BE(20)]).toEqual([1200, 675])
    }
    expect(cards[0]?.rawPayload.equals(cards[2]?.rawPayload as Buffer)).toBe(true)
    expect(cards[0]?.rawPayload.equals(cards[1]?.rawPayload as Buffer)).toBe(false)
    for (const query of ['?theme=red', '?show=sets', '?size=2'])
      expect((await http.inject(`/v1/bench/B-01/card.png${query}`)).statusCode).toBe(400)
  })

  it('is drawn as SVG, with the pictures that its readings bear', async () => {
    const shop = testShop()
    await wholeOil(shop)
    await start(shop)
    for (const show of ['', '?show=sets', '?show=factor&theme=dark']) {
      const { statusCode, headers, body } = await http.inject(`/v1/bench/B-01/figure.svg${show}`)
      expect([statusCode, headers['content-type']]).toEqual([200, 'image/svg+xml; charset=utf-8'])
      expect(body).toMatch(/^<svg .*<title>B-01: /)
    }
    expect((await http.inject('/v1/bench/B-01/figure.svg?show=series')).statusCode).toBe(404)
    expect((await http.inject('/v1/bench/B-01/figure.svg?show=all')).statusCode).toBe(400)
  })

  it.each<[string, number, string]>([
    ['/v1/bench/B-9', 404, 'no-such-run'],
    ['/v1/bench/B-9/entries.csv', 404, 'no-such-run'],
    ['/v1/bench/B-9/figure.png', 404, 'no-such-run'],
    ['/v1/bench?limit=3', 400, 'not-readable'],
    ['/v1/bench/B-9?readings=1', 400, 'not-readable'],
    ['/v1/bench/B-9?readings=2&readings=3', 400, 'not-readable'],
  ])('%s is %d', async (url, status, name) => {
    await start()
    const told = await http.inject(url)
    expect([told.statusCode, told.json().type]).toEqual([status, `urn:armlength:problem:${name}`])
  })
})
