// The HTTP door as a shop has it open, for those who try it: keys of every role, a PIN, a register, a clock that is told.
import type { FastifyInstance } from 'fastify'
import { createDesk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import type { Shop } from '../../src/desk/shop.ts'
import { readPinHash, writePinHash } from '../../src/faces/http/kiosk/pin.ts'
import { buildHttp } from '../../src/faces/http/server.ts'
import { hashOfKey, readWriters } from '../../src/faces/http/writers.ts'
import { noPictures, testShop } from '../support/doors.ts'

export const PIN = '274915'
export const keys = {
  mechanic: 'kiln-lane-mechanic-0001',
  keeper: 'kiln-lane-keeper-000001',
  import: 'kiln-lane-import-000001',
} as const
export type Role = keyof typeof keys

const writers = readWriters(
  Object.entries(keys)
    .map(([role, key]) => `${role} bay ${hashOfKey(key)}`)
    .join('\n'),
)

export interface Door {
  readonly app: FastifyInstance
  readonly shop: Shop
  /** What the log would hear of: outages and bugs. */
  readonly failed: unknown[]
  readonly wait: (ms: number) => void
  readonly entries: () => Promise<number>
}

export const openDoor = async (mostASecond = 100_000): Promise<Door> => {
  const hash = await writePinHash(PIN, Buffer.alloc(16, 7))
  const shop = testShop()
  const failed: unknown[] = []
  let now = Date.parse('2026-06-01T10:00:00Z')
  let count = 0
  const app = await buildHttp({
    desk: createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) }),
    pictures: noPictures,
    shop: 'Kiln Lane Garage',
    register: {
      shop,
      keys: writers,
      now: () => new Date(now),
      writing: { pin: readPinHash(hash), id: () => `id-${++count}` },
    },
    trustProxy: false,
    mostASecond,
    failed: (_reference, error) => void failed.push(error),
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain; charset=utf-8', text: '' }),
  })
  return {
    app,
    shop,
    failed,
    wait: (ms) => {
      now += ms
    },
    entries: async () => (await shop.since(0, 1000)).length,
  }
}

export type Headers = Readonly<Record<string, string>>

export const sendForm = ({ app }: Door, url: string, form: Readonly<Record<string, string>>, headers: Headers = {}) =>
  app.inject({
    method: 'POST',
    url,
    payload: new URLSearchParams(form).toString(),
    headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
  })

/** The cookie of somebody who signed in. */
export const signIn = async (door: Door, headers: Headers = {}): Promise<string> => {
  const reply = await sendForm(door, '/sign-in', { pin: PIN, onward: '/board' }, headers)
  if (reply.statusCode !== 303) throw new Error(`signing in gave ${reply.statusCode}`)
  return String(reply.headers['set-cookie']).split(';')[0] as string
}

export const tokenIn = (html: string): string => /name="token" value="([^"]+)"/.exec(html)?.[1] ?? ''

export const card = {
  tag: 'W-07',
  name: 'Half-inch click wrench',
  'wrench-type': 'click',
  most: '200 N·m',
  lever: '400 mm',
}
export const check = {
  date: '2026-05-01',
  way: 'tester',
  state: 'as-found',
  points: '100 N·m: 100; 101; 100; 100; 100 N·m',
  'gauge-uncertainty': '0.5 %',
}
