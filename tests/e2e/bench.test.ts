// A bench run from its plan to an answer that cites it, on the built program: twelve readings by two hands through two doors (the
// kiosk's form and chat), the verdict, the picture, the answer, and the whole record out and into another desk the same.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { writePinHash } from '../../src/faces/http/kiosk/pin.ts'
import { hashOfKey } from '../../src/faces/http/writers.ts'
import type { Answer, ShownQuantity } from '../../src/questions/answer.ts'
import type { RunDocument } from '../../src/questions/run-document.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { type Service, startService } from '../support/service.ts'

const PIN = '274915'
const KEEPER = 'kiln-lane-keeper-0001'
const MECHANICS = '600000000000000002'
const folder = mkdtempSync(join(tmpdir(), 'bench-'))
const keys = join(folder, 'keys')

let discord: FakeDiscord
let service: Service
beforeAll(async () => {
  writeFileSync(keys, `keeper office ${hashOfKey(KEEPER)}\n`)
  discord = await startFakeDiscord()
  service = await startService({
    SHOP_NAME: 'Kiln Lane Garage',
    KIOSK_PIN_HASH: await writePinHash(PIN, Buffer.alloc(16, 7)),
    API_KEYS_FILE: keys,
    DISCORD_TOKEN: discord.token,
    DISCORD_API_URL: discord.url,
    DISCORD_MECHANIC_ROLE: MECHANICS,
    DATABASE_URL: `file:${join(folder, 'one.db')}`,
  })
  await discord.ready()
  await discord.until('the commands are registered', () => discord.commands.length > 0)
}, 60_000)
afterAll(async () => {
  service?.kill()
  await discord?.close()
  rmSync(folder, { recursive: true, force: true })
})

const get = (path: string, at = service.url): Promise<Response> => fetch(at + path)
const json = async <T>(path: string, at = service.url): Promise<T> => (await get(path, at)).json() as Promise<T>
const send = (path: string, body: string, type: string, at = service.url): Promise<Response> =>
  fetch(at + path, { method: 'POST', body, headers: { 'content-type': type, authorization: `Bearer ${KEEPER}` } })

/** What a hand at the kiosk does: signs in once, then the form of the run's page, a reading at a time. */
const atKiosk = async () => {
  const form = (path: string, fields: Record<string, string>, cookie = ''): Promise<Response> =>
    fetch(service.url + path, {
      method: 'POST',
      redirect: 'manual',
      body: new URLSearchParams(fields),
      headers: { origin: service.url, ...(cookie ? { cookie } : {}) },
    })
  const signed = await form('/sign-in', { pin: PIN, onward: '/bench/B-01' })
  const cookie = (signed.headers.get('set-cookie') ?? '').split(';')[0] as string
  return async (condition: string, clamp: string): Promise<void> => {
    const page = await (await fetch(`${service.url}/bench/B-01`, { headers: { cookie } })).text()
    const hidden = (name: string): string => new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? ''
    const fields = { token: hidden('token'), key: hidden('key'), run: 'B-01', date: hidden('date') }
    const kept = await form(
      '/keep/run-reading',
      { ...fields, condition, torque: '60 N·m', 'clamp-force': clamp, angle: '' },
      cookie,
    )
    expect(kept.status, await kept.text()).toBe(303)
    expect(kept.headers.get('location')).toMatch(/^\/bench\/B-01\?kept=/)
  }
}

let people = 0
const inChat = async (subcommand: string, options: Record<string, string>): Promise<string> => {
  const user = {
    id: `30000000000000${2000 + ++people}`,
    username: 'asker',
    global_name: 'Asker',
    discriminator: '0',
    avatar: null,
  }
  const member = {
    user,
    roles: [MECHANICS],
    permissions: '0',
    joined_at: '2024-01-01T00:00:00.000000+00:00',
    deaf: false,
    mute: false,
    flags: 0,
  }
  const record = await discord.interaction({ kind: 'slash', command: 'bench', subcommand, options, raw: { member } })
  return JSON.stringify(record.data)
}

it('is planned over HTTP: before the first reading it says what six of each can see', async () => {
  const opening = {
    tag: 'B-01',
    date: '2026-06-01',
    asked: 'Does a washer used before clamp less than a new one?',
    conditions: 'new: a new washer each time | used: the washer of the pull before',
    same: 'bolts from one box | M10 8.8, dry',
    size: 'M10',
    seat: 'flat 16 mm x 11 mm',
  }
  const begun = await send('/v1/bench', JSON.stringify(opening), 'application/json')
  expect(begun.status, await begun.clone().text()).toBe(201)
  const planned = await json<RunDocument>('/v1/bench/B-01?readings=6')
  expect(planned.state.code).toBe('planned')
  expect(planned.headline).toMatch(/6 of each see a difference of \d/)
})

it('is read twelve times by two hands: one at the kiosk, one in chat, at once', async () => {
  const hand = await atKiosk()
  await Promise.all([
    (async () => {
      for (const clamp of ['29,8 kN', '30.4 kN', '30.1 kN']) await hand('new', clamp)
      for (const clamp of ['26.9 kN', '27.3 kN', '26.6 kN']) await hand('used', clamp)
    })(),
    (async () => {
      expect(
        await inChat('add', {
          run: 'b-01',
          condition: 'new',
          torque: '60; 60; 60 N·m',
          'clamp-force': '30,2; 29,9; 30,6 kN',
        }),
      ).toContain('B-01: kept.')
      expect(
        await inChat('add', {
          run: 'B-01',
          condition: 'used',
          torque: '60; 60; 60 N·m',
          'clamp-force': '27.1; 26.8; 27.4 kN',
        }),
      ).toContain('B-01: kept.')
    })(),
  ])
  const read = await json<RunDocument>('/v1/bench/B-01')
  expect(read.conditions.map(({ readings }) => readings)).toEqual([6, 6])
  expect([...new Set(read.readings.map(({ door }) => door))].sort()).toEqual(['chat', 'kiosk'])
})

it('says its verdict, with both ends and how far it speaks, and stays open to be cited until it is finished', async () => {
  const cited = '/v1/questions/clamp-force?torque=60%20N%C2%B7m&bench=B-01%20new'
  expect((await get(cited)).status).toBe(422)
  expect(
    (
      await send(
        '/v1/bench/B-01/finish',
        JSON.stringify({ date: '2026-06-02', note: 'new ones from now on' }),
        'application/json',
      )
    ).status,
  ).toBe(201)
  const run = await json<RunDocument>('/v1/bench/B-01')
  const [verdict] = run.subjects[0]?.verdicts ?? []
  expect(run.subjects[0]?.subject.code).toBe('clamp')
  // Means 30.167 and 27.017 kN: −10.4 %.
  expect(verdict?.difference.value).toBeCloseTo(-10.44, 1)
  expect(verdict?.verdict.code).toBe('a-difference-that-matters')
  expect(verdict?.difference.high?.value).toBeLessThan(-4)
  expect(run.limits).toContain('n = 12: one size (M10)')
})

it('is drawn, at every door', async () => {
  const svg = await (await get('/v1/bench/B-01/figure.svg')).text()
  expect(svg.match(/<circle [^>]*r="6" class="nut"/g)).toHaveLength(12)
  const png = Buffer.from(await (await get('/v1/bench/B-01/figure.png?show=factor')).arrayBuffer())
  expect(png.subarray(1, 4).toString()).toBe('PNG')
  expect(await inChat('show', { run: 'B-01' })).toContain('a difference that matters')
  expect(await (await get('/bench/B-01')).text()).toContain('/v1/bench/B-01/figure.svg?show=sets')
})

it('is cited by an answer, as measured here', async () => {
  const answer = await json<Answer>('/v1/questions/clamp-force?torque=60%20N%C2%B7m&bench=B-01%20new')
  expect(answer.status).toBe('answered')
  const k = answer.given.find(({ input }) => input === 'k')
  expect(k).toMatchObject({ from: 'bench' })
  expect((answer.results['clamp-force'] as ShownQuantity).value).toBeCloseTo(30.16, 1)
  expect(answer.sources[0]).toMatchObject({ standing: 'measured here' })
  expect(answer.cautions[0]?.text).toContain('n = 6')
})

it('goes out and comes in at another desk the same, and says the same there', async () => {
  const sheet = await (await get('/v1/export.csv')).text()
  const other = await startService({ API_KEYS_FILE: keys, DATABASE_URL: `file:${join(folder, 'other.db')}` })
  try {
    const tried = await send('/v1/import?dry-run', sheet, 'text/csv', other.url)
    expect(tried.status, await tried.clone().text()).toBe(200)
    expect((await json<{ runs: unknown[] }>('/v1/bench', other.url)).runs).toEqual([])
    expect((await send('/v1/import', sheet, 'text/csv', other.url)).status).toBe(200)
    expect(await json('/v1/export.json', other.url)).toEqual(await json('/v1/export.json'))
    expect(await json('/v1/bench/B-01', other.url)).toEqual(await json('/v1/bench/B-01'))
    expect(await (await get('/v1/export.csv', other.url)).text()).toBe(sheet)
  } finally {
    other.kill()
  }
})
