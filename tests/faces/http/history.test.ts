// A wrench's checks over time through HTTP and on its page, and the lists of what needs doing.
import type { FastifyInstance } from 'fastify'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createDesk } from '../../../src/desk/desk.ts'
import type { Shop } from '../../../src/desk/shop.ts'
import { buildHttp } from '../../../src/faces/http/server.ts'
import { testShop } from '../../support/doors.ts'

let http: FastifyInstance
let shop: Shop
const drawn: string[] = []
beforeEach(async () => {
  shop = testShop()
  http = await buildHttp({
    desk: createDesk({ system: 'metric', locale: 'en' }),
    pictures: {
      png: async (svg) => {
        drawn.push(svg)
        return Buffer.from('picture')
      },
    },
    shop: 'Kiln Lane Garage',
    register: { shop, keys: [], now: () => new Date('2026-06-01T10:00:00Z') },
    trustProxy: false,
    mostASecond: 100_000,
    failed: (_reference, error) => {
      throw error
    },
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })
})
afterEach(() => http.close())

const keeper = { role: 'keeper', door: 'http' } as const
const wrench = (tag: string) =>
  shop.keep('wrench', { tag, name: 'Click wrench', 'wrench-type': 'click', most: '200 N·m' }, keeper)
const check = (tag: string, date: string, reading: number) =>
  shop.keep('check', { wrench: tag, date, way: 'tester', state: 'as-found', points: `100 N·m: ${reading} N·m` }, keeper)
const days = ['2024-01-01', '2024-07-01', '2025-01-01', '2025-07-01']
const drifting = async (count: number): Promise<void> => {
  await wrench('W-07')
  for (const [n, date] of days.slice(0, count).entries()) await check('W-07', date, [99, 98.5, 97.9, 97.5][n] as number)
}

describe('the picture of a wrench', () => {
  it('is an SVG in the theme and shape that are asked for, and nobody keeps it', async () => {
    await drifting(4)
    const reply = await http.inject('/v1/wrenches/w-07/history.svg?theme=dark&shape=narrow')
    expect(reply.headers['content-type']).toBe('image/svg+xml; charset=utf-8')
    expect(reply.headers['cache-control']).toBe('no-store')
    expect(reply.body).toContain('viewBox="0 0 800 ')
    expect(reply.body).toContain('#15181a')
    expect(reply.body).not.toContain('prefers-color-scheme')
    const usual = await http.inject('/v1/wrenches/w-07/history.svg')
    expect(usual.body).toContain('viewBox="0 0 1200 ')
    expect(usual.body).toContain('prefers-color-scheme')
  })

  it('is a PNG of a light sheet where none is named', async () => {
    await drifting(1)
    const reply = await http.inject('/v1/wrenches/W-07/history.png')
    expect(reply.headers['content-type']).toBe('image/png')
    expect(drawn.at(-1)).toContain('#fbfaf7')
  })

  it.each([
    ['/v1/wrenches/W-99/history.svg', 404, 'no-such-wrench'],
    ['/v1/wrenches/W-08/history.svg', 404, 'no-figure'],
    ['/v1/wrenches/W-08/history.png', 404, 'no-figure'],
    ['/v1/wrenches/W-08/history.svg?theme=pink', 400, 'not-readable'],
    ['/v1/wrenches/W-08/history.svg?shape=round', 400, 'not-readable'],
    ['/v1/wrenches/W-08/history.svg?colour=red', 400, 'not-readable'],
  ])('%s is %i, %s', async (url, status, name) => {
    await wrench('W-08')
    const reply = await http.inject(url)
    expect(reply.statusCode).toBe(status)
    expect(reply.json()).toMatchObject({ type: `urn:armlength:problem:${name}` })
  })
})

describe('the drift of a wrench', () => {
  interface Drift {
    readonly text: string
    readonly reaches?: { readonly middle: string }
    readonly why?: string
  }
  const driftOf = async (): Promise<Drift[]> =>
    (await http.inject('/v1/wrenches/W-07')).json<{ drift: Drift[] }>().drift

  it('is told in JSON and on the page with the same sentence and month', async () => {
    await drifting(4)
    const [drift] = await driftOf()
    const month = drift?.reaches?.middle.slice(0, 7)
    expect(month).toMatch(/^2026-/)
    expect(drift?.text).toContain(`It reaches its limit about ${month}`)
    const page = (await http.inject('/wrench/W-07')).body
    expect(page).toContain(`<p>${drift?.text}</p>`)
    expect(page).toContain('src="/v1/wrenches/W-07/history.svg"')
    expect(page).toContain('srcset="/v1/wrenches/W-07/history.svg?shape=narrow"')
    expect(page).toMatch(/<img src="[^"]+history.svg" alt="W-07, Click wrench\. 100 N·m: 2024-01-01/)
  })

  it.each([1, 2, 3])('of %i checks no day is told, in JSON, page or picture', async (count) => {
    await drifting(count)
    const [drift] = await driftOf()
    expect(drift).toMatchObject({ why: 'too-few' })
    expect(drift).not.toHaveProperty('reaches')
    for (const url of ['/wrench/W-07', '/v1/wrenches/W-07/history.svg']) {
      const { body } = await http.inject(url)
      expect(body).not.toMatch(/limit about/)
      expect(body).toMatch(/Fewer than four checks count/)
    }
  })

  it('of a wrench without a check is nothing, and its page has no picture', async () => {
    await wrench('W-07')
    expect(await driftOf()).toEqual([])
    expect((await http.inject('/wrench/W-07')).body).not.toContain('history.svg')
  })
})

describe('what needs doing', () => {
  const lists = { due: ['W-1'], before: ['W-5'], out: ['W-2'], never: ['W-3'] } as const
  beforeEach(async () => {
    for (const tag of ['W-1', 'W-2', 'W-3', 'W-4', 'W-5']) await wrench(tag)
    await check('W-1', '2025-06-20', 100)
    await check('W-2', '2026-05-01', 80)
    await check('W-4', '2026-05-01', 100)
    await check('W-5', '2026-05-01', 100)
    await shop.keep('event', { wrench: 'W-5', what: 'dropped', date: '2026-05-20' }, keeper)
  })

  it('is counted', async () => {
    const reply = await http.inject('/v1/wrenches/summary')
    expect(reply.json()).toEqual({ due: 1, before: 1, out: 1, never: 1 })
    expect(reply.headers['cache-control']).toBe('no-store')
  })

  it.each(['due', 'before', 'out', 'never'] as const)(
    '%s is a list in JSON and on the board, with its count',
    async (show) => {
      const json = (await http.inject(`/v1/wrenches?show=${show}`)).json<{ wrenches: Array<{ tag: string }> }>()
      expect(json.wrenches.map(({ tag }) => tag)).toEqual(lists[show])
      const page = (await http.inject(`/board?show=${show}`)).body
      expect([...page.matchAll(/href="\/wrench\/([^"]+)"/g)].map(([, tag]) => tag)).toEqual(lists[show])
      expect(page).toMatch(new RegExp(`href="/board\\?show=${show}" aria-current="page">[^<]+: 1<`))
    },
  )

  it('without a list is the whole board; an unknown list is not taken', async () => {
    expect((await http.inject('/board')).body).toMatch(/href="\/board" aria-current="page"/)
    expect((await http.inject('/v1/wrenches')).json<{ wrenches: unknown[] }>().wrenches).toHaveLength(5)
    expect((await http.inject('/v1/wrenches?show=all')).statusCode).toBe(400)
    expect((await http.inject('/v1/wrenches?show=due&show=out')).statusCode).toBe(400)
  })

  it('says so where a list is empty', async () => {
    await check('W-3', '2026-05-02', 100)
    expect((await http.inject('/board?show=never')).body).toContain('No wrench is in this list today.')
  })
})

describe('the wrenches at hand', () => {
  const link = (html: string, tag: string): string =>
    new RegExp(`<a class="key wrench" href="([^"]+)"><strong>${tag}</strong>.*?</a>`).exec(html)?.[0] ?? ''
  const happened = (tag: string, what: string) => shop.keep('event', { wrench: tag, what, date: '2026-05-20' }, keeper)
  beforeEach(async () => {
    for (const tag of ['W-1', 'W-2', 'W-3', 'W-4']) {
      await wrench(tag)
      await check(tag, '2026-05-01', tag === 'W-2' ? 80 : 100)
    }
    await happened('W-3', 'dropped')
    await happened('W-4', 'lent')
  })

  it('all hang on the start page, those that may not be pulled with marked, and leading to why instead of to a number', async () => {
    const { body } = await http.inject('/')
    expect(link(body, 'W-1')).toContain('/ask/adapter-setting?wrench=W-1')
    expect(link(body, 'W-1')).not.toContain('<small>')
    expect(link(body, 'W-2')).toMatch(/href="\/wrench\/W-2".*✕.*out of limit/)
    expect(link(body, 'W-3')).toMatch(/href="\/wrench\/W-3".*▲.*check before use/)
    expect(link(body, 'W-4')).toBe('')
  })

  it('those that are gone crowd nobody out: a dozen are shown though more hang before them', async () => {
    for (let n = 10; n < 80; n += 1) {
      await wrench(`R-${n}`)
      await happened(`R-${n}`, 'retired')
    }
    const { body } = await http.inject('/')
    expect(link(body, 'W-1')).not.toBe('')
    expect(body).not.toContain('>R-10<')
    expect((await http.inject('/ask/adapter-setting')).body).toContain('>W-1: Click wrench<')
  })

  it('are picked with their status where they may not be pulled with, and warned of before the number', async () => {
    expect((await http.inject('/ask/adapter-setting')).body).toContain('>W-3 ▲ check before use: Click wrench<')
  })

  it.each([
    ['W-1', true, true],
    ['W-2', false, true],
    ['W-3', false, true],
    ['W-4', false, false],
  ])('%s: its page offers a number: %s, a check: %s', async (tag, number, checked) => {
    const { body } = await http.inject(`/wrench/${tag}`)
    expect(body.includes(`/ask/adapter-setting?wrench=${tag}`)).toBe(number)
    expect(body.includes(`href="/wrench/${tag}/check"`)).toBe(checked)
    expect(body.includes(`/keep/event?wrench=${tag}`)).toBe(true)
  })
})
