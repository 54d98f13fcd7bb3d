// A check under way through every door that has it: the same document from HTTP and the terminal, and the same digits in its lines.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { checkingOf } from '../../src/desk/checking.ts'
import { createDesk } from '../../src/desk/desk.ts'
import { buildHttp } from '../../src/faces/http/server.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import { type CheckDocument, checkDocumentSchema } from '../../src/questions/check-document.ts'
import { languages } from '../../src/words/index.ts'
import { noPictures, testShop } from '../support/doors.ts'

const shop = testShop()
const desk = createDesk({ system: 'metric', locale: 'en' })
let http: FastifyInstance
beforeAll(async () => {
  const who = { role: 'keeper', door: 'terminal' } as const
  const wrench = {
    tag: 'W-07',
    name: 'Half-inch click wrench',
    'wrench-type': 'click',
    least: '30 lbf·ft',
    most: '150 lbf·ft',
    mark: '1 lbf·ft',
    lever: '15 in',
  }
  await shop.keep('wrench', wrench, who)
  await shop.keep('gauge', { tag: 'S-1', name: 'Scale', 'gauge-type': 'luggage-scale', 'most-force': '110 lb' }, who)
  await shop.keep('gauge', { tag: 'T-1', name: 'Tester', 'gauge-type': 'torque-tester', tolerance: '1 %' }, who)
  http = await buildHttp({
    desk,
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
})
afterAll(() => http.close())

const terminal = async (raw: Readonly<Record<string, string>>, ...flags: readonly string[]): Promise<string> => {
  const out: string[] = []
  const io = { out: (line: string) => out.push(line), err: (line: string) => out.push(line) }
  await runTerminal(
    ['check', ...Object.entries(raw).map(([name, text]) => `${name}=${text}`), ...flags],
    desk,
    io,
    shop,
  )
  return out.join('\n')
}

const cases: ReadonlyArray<readonly [string, Readonly<Record<string, string>>]> = [
  ['a plan by force in pounds', { wrench: 'W-07', gauge: 'S-1', distance: '15 in' }],
  [
    'a plan at another distance, the wrench level',
    {
      wrench: 'W-07',
      gauge: 'S-1',
      distance: '1.5 ft',
      lie: 'level',
      'wrench-mass': '3 lb',
      'balance-point': '7 in',
      'pull-direction': 'down',
    },
  ],
  ['on a tester, half read', { wrench: 'W-07', gauge: 'T-1', points: '30 lbf·ft: 29.1; 30.2; 31.4 lbf·ft' }],
  ['one reading more', { wrench: 'W-07', gauge: 'T-1', points: '30 lbf·ft: 29.1 lbf·ft', reading: '30' }],
  ['a slip', { wrench: 'W-07', gauge: 'T-1', reading: '41 lbf·ft' }],
  ['something missing', { wrench: 'W-07', gauge: 'S-1' }],
  ['faults', { wrench: 'W-07', gauge: 'S-9', distance: '15' }],
]

describe('a check under way', () => {
  it.each(cases)('%s is the same document at every door', async (_name, raw) => {
    const own = await checkingOf(shop).grow(raw, languages.en)
    expect(checkDocumentSchema.parse(own)).toEqual(own)
    const { wrench, ...rest } = raw
    const reply = await http.inject({ method: 'POST', url: `/v1/wrenches/${wrench}/checks?dry-run`, payload: rest })
    const body = reply.json<CheckDocument & { check?: CheckDocument }>()
    expect(reply.statusCode).toBe(own.status === 'refused' ? 422 : 200)
    expect(body.check ?? body).toEqual(JSON.parse(JSON.stringify(own)))
    expect(JSON.parse(await terminal(raw, '--json'))).toEqual(JSON.parse(JSON.stringify(own)))
  })

  it.each(cases.slice(0, 4))('%s shows the same digits in lines', async (_name, raw) => {
    const { points, verdict } = await checkingOf(shop).grow(raw, languages.en)
    const lines = await terminal(raw)
    expect(points.length).toBe(3)
    for (const { setting, shows, mean, deviation, spread } of points) {
      for (const shown of [setting, shows.low, shows.high, mean, deviation, spread]) {
        if (shown) expect(lines).toContain(shown.text)
      }
    }
    if (verdict) expect(lines).toContain(verdict.text)
  })
})
