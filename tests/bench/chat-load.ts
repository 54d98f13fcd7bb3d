// Chat under a steady load, beside a busy kiosk: interactions are sent by the clock, whether or not those before were answered. The
// built program against the bare echo of the same payload with the same ready picture, at the same rate.
import { execFile } from 'node:child_process'
import { createHash } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import type { Ask } from '../support/fake-discord/ask.ts'
import type { CallbackRecord } from '../support/fake-discord/books.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { startService } from '../support/service.ts'
import { startBare } from './bare.ts'

const run = promisify(execFile)

const SECONDS = 15
const WARM = 200
const PAGES_A_SECOND = 20

export interface LoadBench {
  readonly name: string
  readonly p50: number
  readonly p99: number
  /** Those that had no answer at all. */
  readonly lost: number
}

const quantile = (times: readonly number[], q: number): number =>
  [...times].sort((one, other) => one - other)[Math.floor(times.length * q)] as number

let asked = 0
const from = (ask: Ask): Ask => {
  asked++
  const user = { id: String(360_000_000_000_000_000n + BigInt(asked)), username: `hand-${asked}` }
  return { ...ask, user, guild: null }
}

interface Load {
  readonly name: string
  readonly aSecond: number
  readonly pictures: 'none' | 'ready' | 'fresh'
  readonly ask: (n: number) => Ask
}

const loads: readonly Load[] = [
  {
    name: '200 a second without a picture',
    aSecond: 200,
    pictures: 'none',
    ask: () => ({ command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }),
  },
  {
    name: '200 a second with the same ready picture',
    aSecond: 200,
    pictures: 'ready',
    ask: () => ({ command: 'adapter', options: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in@30' } }),
  },
  {
    name: '40 a second with fresh pictures',
    aSecond: 40,
    pictures: 'fresh',
    // One decimal: as many as the picture shows, so that each is another.
    ask: (n) => ({
      command: 'adapter',
      options: { torque: `${(60 + n / 10).toFixed(1)} N·m`, lever: '380 mm', adapter: '45 mm@30' },
    }),
  },
]

/** What was measured is what the row says: every answer with its picture, and each fresh one another. */
const checking = (pictures: Load['pictures']): ((record: CallbackRecord) => void) => {
  const seen = new Set<string>()
  return ({ files: [picture] }) => {
    if ((picture === undefined) !== (pictures === 'none'))
      throw new Error('an answer of the bench has not what its row says')
    if (pictures !== 'fresh' || !picture) return
    const hash = createHash('sha1').update(picture.bytes).digest('hex')
    if (seen.has(hash)) throw new Error('a picture of the bench is not fresh')
    seen.add(hash)
  }
}

const sendByTheClock = async (
  fake: FakeDiscord,
  { aSecond, ask }: Load,
  check: (record: CallbackRecord) => void = () => {},
): Promise<LoadBench> => {
  for (let n = 0; n < WARM; n++) await fake.interaction(from(ask(-1 - n))).catch(() => undefined)
  // Of a record its time alone is kept, and the fake lets go what it was sent: else its own collections of garbage were measured.
  const sent: Array<Promise<number | undefined>> = []
  const forgetting = setInterval(() => fake.forget(1000), 250)
  const timeOf = (record: CallbackRecord): number | undefined => {
    if (record.status >= 300) return undefined
    check(record)
    return record.ms
  }
  const began = performance.now()
  while (sent.length < SECONDS * aSecond) {
    const due = Math.floor(((performance.now() - began) / 1000) * aSecond)
    while (sent.length < due) sent.push(fake.interaction(from(ask(sent.length))).then(timeOf, () => undefined))
    await pause(1)
  }
  const all = await Promise.all(sent)
  clearInterval(forgetting)
  const times = all.filter((ms) => ms !== undefined)
  return { name: '', p50: quantile(times, 0.5), p99: quantile(times, 0.99), lost: all.length - times.length }
}

/** The first answer of a program that has just started, which a busy machine may lose. */
const answerTo = async (fake: FakeDiscord, ask: Ask): Promise<CallbackRecord> => {
  for (;;) {
    const record = await fake.interaction(from(ask)).catch(() => undefined)
    if (record?.type === 4 && record.status < 300) return record
  }
}

/** Pages of the kiosk with numbers that nobody asked for before. */
const keepKioskBusy = (url: string): (() => void) => {
  let n = 0
  const timer = setInterval(() => {
    // Five decimals: three may be a thousands mark, and are asked back.
    const torque = `${(60 + ++n / 1000).toFixed(5)} N·m`
    void fetch(
      `${url}/ask/adapter-setting/live?${new URLSearchParams({ torque, lever: '380 mm', adapter: '45 mm@30' })}`,
    )
      .then((reply) => reply.arrayBuffer())
      .catch(() => undefined)
  }, 1000 / PAGES_A_SECOND)
  return () => clearInterval(timer)
}

const oneLoad = async (load: Load): Promise<LoadBench[]> => {
  const { name, ask, pictures } = load
  const fake = await startFakeDiscord()
  const service = await startService({ DISCORD_TOKEN: fake.token, DISCORD_API_URL: fake.url, LOG_LEVEL: 'error' })
  await fake.ready()
  await fake.until('the commands are registered', () => fake.commands.length > 0)
  const first = await answerTo(fake, ask(0))
  const rest = keepKioskBusy(service.url)
  const ours = await sendByTheClock(fake, load, checking(pictures))
  rest()
  const { commands } = fake
  service.kill()
  await fake.close()

  const peer = await startFakeDiscord()
  peer.register(commands)
  const bare = startBare(peer, first)
  await peer.ready()
  const theirs = await sendByTheClock(peer, load)
  bare.kill()
  await peer.close()
  return [
    { ...ours, name: `ours, ${name}` },
    { ...theirs, name: `bare, ${name}` },
  ]
}

/** Each in a process of its own: what the fake has left to be swept up after one load is none of the next. */
export const benchLoad = async (): Promise<LoadBench[]> => {
  const rows: LoadBench[] = []
  for (const { name } of loads) {
    const { stdout } = await run(process.execPath, ['--import', 'tsx', fileURLToPath(import.meta.url), name])
    rows.push(...(JSON.parse(stdout) as LoadBench[]))
  }
  return rows
}

// As that process.
const mine = loads.find(({ name }) => name === process.argv[2])
if (mine && process.argv[1] === fileURLToPath(import.meta.url))
  process.stdout.write(JSON.stringify(await oneLoad(mine)))
