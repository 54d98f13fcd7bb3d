// A wrench that is not to be pulled with as it is: said before the number at every door and on the figure, and said once.
import type { FastifyInstance } from 'fastify'
import { afterEach, describe, expect, it } from 'vitest'
import { askKnowing, createDesk, type Desk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import type { Shop } from '../../src/desk/shop.ts'
import { renderReply } from '../../src/faces/chat/reply.ts'
import { buildHttp } from '../../src/faces/http/server.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import { figureOf } from '../../src/figures/index.ts'
import { languages } from '../../src/words/index.ts'
import { noPictures, testShop } from '../support/doors.ts'

const { words } = languages.en
const keeper = { role: 'keeper', door: 'terminal' } as const
const asked = { torque: '120 N·m', adapter: '45 mm@0', wrench: 'W-07' }
const query = new URLSearchParams(asked).toString()
const event = (what: string) => ({ kind: 'event' as const, raw: { wrench: 'W-07', what, date: '2026-05-20' } })
const check = (read: string, more: Readonly<Record<string, string>> = {}) => ({
  kind: 'check' as const,
  raw: { wrench: 'W-07', date: '2026-05-01', way: 'tester', state: 'as-found', points: `100 N·m: ${read}`, ...more },
})

const shopWith = async (entries: ReadonlyArray<ReturnType<typeof event> | ReturnType<typeof check>>): Promise<Shop> => {
  const shop = testShop()
  const card = { tag: 'W-07', name: 'Click', 'wrench-type': 'click', least: '40 N·m', most: '200 N·m', lever: '400 mm' }
  const kept = [await shop.keep('wrench', card, keeper)]
  for (const { kind, raw } of entries) kept.push(await shop.keep(kind, raw, keeper))
  expect(kept.map((one) => one.kind)).toEqual(kept.map(() => 'kept'))
  return shop
}
const deskOf = (shop: Shop): Desk => createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) })

const closing: Array<() => Promise<unknown>> = []
afterEach(async () => {
  for (const close of closing.splice(0)) await close()
})

const httpOf = async (shop: Shop): Promise<FastifyInstance> => {
  const http = await buildHttp({
    desk: deskOf(shop),
    pictures: noPictures,
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
  closing.push(() => http.close())
  return http
}

/** What each door showed, as text. */
const shownBy = async (shop: Shop): Promise<Readonly<Record<'terminal' | 'chat' | 'kiosk', string>>> => {
  const desk = deskOf(shop)
  const lines: string[] = []
  const out = (line: string): void => void lines.push(line)
  await runTerminal(['adapter-setting', ...Object.entries(asked).map(([name, text]) => `${name}=${text}`)], desk, {
    out,
    err: out,
  })
  const reply = renderReply(await askKnowing(desk, 'adapter-setting', asked, { door: 'chat' }), words)
  const [embed] = reply.data.embeds ?? []
  const http = await httpOf(shop)
  return {
    terminal: lines.join('\n'),
    chat: [embed?.description, ...(embed?.fields ?? []).map(({ value }) => value)].join('\n'),
    kiosk: (await http.inject(`/ask/adapter-setting?${query}`)).body.split('id="answer"')[1] ?? '',
  }
}

const cases = [
  [
    'dropped since its check',
    [check('100; 100; 100; 100; 100 N·m'), event('dropped')],
    [/Check W-07 before it is used where the torque matters: on [^:]+ it was dropped\./],
  ],
  [
    'outside its limit',
    [check('82; 82; 82; 82; 82 N·m')],
    [/Do not use this wrench where the torque matters/, /The last check of W-07/],
  ],
  ['retired', [event('retired')], [/W-07 is set aside or retired/]],
  ['lent', [event('lent')], [/W-07 is set aside or retired/]],
] as const

describe('a wrench that is not to be pulled with as it is', () => {
  it.each(cases)('%s: is told before the number at every door, once', async (_name, entries, told) => {
    const shown = await shownBy(await shopWith(entries))
    for (const [door, text] of Object.entries(shown)) {
      const number = text.search(/107\.9 N·m/)
      expect(number, door).toBeGreaterThan(0)
      for (const one of told) {
        expect(text.search(one), door).toBeGreaterThanOrEqual(0)
        expect(text.search(one), door).toBeLessThan(number)
        expect(text.match(new RegExp(one.source, 'g')), door).toHaveLength(1)
      }
    }
  })

  it.each(cases)('%s: is told on the figure', async (_name, entries) => {
    const answer = await askKnowing(deskOf(await shopWith(entries)), 'adapter-setting', asked, { door: 'http' })
    const warned = /▲ ([^<]+)<\/text>/.exec(figureOf(answer, words, 'light')?.svg ?? '')?.[1]
    expect(Object.values(words.figures.warnings).slice(0, 3)).toContain(warned)
  })

  it('a sound one, and one whose check is only due, have nothing before the number', async () => {
    for (const entries of [[], [check('100; 100; 100; 100; 100 N·m')]])
      for (const [door, text] of Object.entries(await shownBy(await shopWith(entries))))
        expect(text, door).not.toContain('▲')
  })
})

describe('a wrench that passed by less than the doubt of its check', () => {
  it('has a mark where it is picked, and one that passed plainly has none', async () => {
    const start = async (entry: ReturnType<typeof check>): Promise<string> =>
      (await (await httpOf(await shopWith([entry]))).inject('/')).body
    const doubtful = await start(check('103.5; 103.5; 103.5; 103.5; 103.5 N·m', { 'gauge-uncertainty': '1 %' }))
    expect(doubtful).toContain('pass in doubt')
    expect(await start(check('100; 100; 100; 100; 100 N·m'))).not.toContain('pass in doubt')
  })
})
