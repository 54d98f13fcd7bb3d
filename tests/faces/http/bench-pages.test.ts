// The pages of bench runs: open to read, written by who is signed in, one reading after the other, in every language.
import type { FastifyInstance } from 'fastify'
import { afterEach, beforeAll, describe, expect, it } from 'vitest'
import type { Shop } from '../../../src/desk/shop.ts'
import { readPinHash, writePinHash } from '../../../src/faces/http/kiosk/pin.ts'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { homeNames } from '../../../src/words/index.ts'
import { noPictures, testDesk, testShop } from '../../support/doors.ts'
import { beginOil, wholeOil } from '../../support/oil-run.ts'

const PIN = '274915'
let hash: string
beforeAll(async () => {
  hash = await writePinHash(PIN, Buffer.alloc(16, 7))
})

let http: FastifyInstance
const start = async (shop: Shop): Promise<void> => {
  let count = 0
  http = await buildHttp({
    desk: testDesk(),
    pictures: noPictures,
    shop: 'Kiln Lane Garage',
    register: {
      shop,
      keys: [],
      now: () => new Date('2026-06-01T10:00:00Z'),
      writing: { pin: readPinHash(hash), id: () => `unguessable-${++count}` },
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
afterEach(() => http.close())

const form = (url: string, fields: Record<string, string>, cookie = '') =>
  http.inject({
    method: 'POST',
    url,
    payload: new URLSearchParams(fields).toString(),
    headers: { 'content-type': 'application/x-www-form-urlencoded', ...(cookie ? { cookie } : {}) },
  })
const signIn = async (): Promise<string> =>
  String((await form('/sign-in', { pin: PIN, onward: '/bench' })).headers['set-cookie']).split(';')[0] as string
const hiddenIn = (page: string, name: string): string =>
  new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? ''

describe('a bench run at the kiosk', () => {
  it('is listed, with the way to begin one', async () => {
    const shop = testShop()
    await start(shop)
    expect((await http.inject('/bench')).body).toContain('No bench run is kept yet.')
    await beginOil(shop)
    const { body } = await http.inject('/bench')
    expect(body).toContain('href="/bench/B-01"')
    expect(body).toContain('planned')
    expect(body).toContain('href="/keep/run"')
  })

  it('shows to anybody what it says, its picture with the same in words, and every reading', async () => {
    const shop = testShop()
    await wholeOil(shop)
    await start(shop)
    const { body, statusCode } = await http.inject('/bench/b-01')
    expect(statusCode).toBe(200)
    expect(body).toContain('a difference that matters. B is 12.57 % higher than A')
    expect(body).toMatch(/<img src="\/v1\/bench\/B-01\/figure\.svg\?show=sets" alt="B-01: Does oil[^"]*B is 12\.57 %/)
    expect(body).toContain('80; 80; 80; 80; 80 N·m · 33.1; 34.2; 32.7; 33.6; 33.4 kN')
    expect(body).toContain('It speaks for nothing else.')
    expect(body).toContain('href="/v1/bench/B-01/card.png"')
    // Who is not signed in is led to signing in.
    expect(body).toContain('/sign-in?onward=%2Fbench%2FB-01')
    expect(body).not.toContain('action="/keep/run-reading"')
  })

  it('takes one reading after the other: the next begins under the condition of the last', async () => {
    const shop = testShop()
    await beginOil(shop)
    await start(shop)
    const cookie = await signIn()
    let address = '/bench/B-01'
    for (const [condition, torque, clamp] of [
      ['B', '80 N·m', '37,1 kN'],
      ['B', '81 N·m', '38 kN'],
    ] as const) {
      const page = (await http.inject({ url: address, headers: { cookie } })).body
      const [token, key, date] = ['token', 'key', 'date'].map((name) => hiddenIn(page, name))
      const sent = {
        token: `${token}`,
        key: `${key}`,
        date: `${date}`,
        run: 'B-01',
        condition,
        torque,
        'clamp-force': clamp,
        angle: '',
      }
      const kept = await form('/keep/run-reading', sent, cookie)
      expect(kept.statusCode).toBe(303)
      // Sent twice it is kept once.
      expect((await form('/keep/run-reading', sent, cookie)).headers.location).toBe(kept.headers.location)
      address = String(kept.headers.location)
    }
    expect(address).toMatch(/^\/bench\/B-01\?kept=[^&]+&condition=B$/)
    const page = (await http.inject({ url: address, headers: { cookie } })).body
    expect(page).toMatch(/<option[^>]* value="B"[^>]* selected|<option[^>]*selected[^>]* value="B"/)
    // Angles were never read: the short form asks for what this run has.
    expect(page).not.toContain('id="in-angle"')
    expect((await shop.runs.one('B-01'))?.folder.readings.map(({ entry }) => entry.by.door)).toEqual(['kiosk', 'kiosk'])
  })

  it('says at its field what is wrong, and keeps what was typed', async () => {
    const shop = testShop()
    await beginOil(shop)
    await start(shop)
    const cookie = await signIn()
    const page = (await http.inject({ url: '/keep/run-reading?run=B-01', headers: { cookie } })).body
    expect(page).toMatch(/<select id="in-condition"/)
    const token = hiddenIn(page, 'token')
    const sent = {
      token,
      run: 'B-01',
      condition: 'A',
      date: '2026-05-02',
      torque: '80; 81',
      'clamp-force': '33; 34 kN',
    }
    const refused = await form('/keep/run-reading', sent, cookie)
    expect(refused.statusCode).toBe(422)
    expect(refused.body).toMatch(/value="80; 81"/)
    expect(refused.body).toContain('href="/bench/B-01"')
  })

  it('that is not there is told by a page', async () => {
    await start(testShop())
    const told = await http.inject({ url: '/bench/B-9', headers: { accept: 'text/html' } })
    expect(told.statusCode).toBe(404)
    expect(told.body).toContain('No bench run of this tag is in the register')
  })

  it.each(homeNames)('is told whole in %s', async (lang) => {
    const shop = testShop()
    await wholeOil(shop)
    await start(shop)
    for (const page of ['/bench', '/bench/B-01']) {
      const { body } = await http.inject(`${page}?lang=${lang}`)
      expect(body).toMatch(new RegExp(`<html lang="${lang}`))
      expect(body).not.toMatch(/undefined|NaN|\{[a-z]+\}/)
    }
  })
})
