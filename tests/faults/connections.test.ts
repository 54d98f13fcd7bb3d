// Connections that are no use to anybody: thousands that say nothing, and some hundred that say a byte at a time. Others are
// answered meanwhile, and the program lets go of them all within its time limit. All are held at once, as each is mostly waiting:
// those that say nothing by one program, whose memory is looked at, the slow ones by another.
import { readFileSync } from 'node:fs'
import { connect, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { answerMs, handlesOf, memoryMiB, openFaultShop } from './shop.ts'

const WANTED = 10_000
/** Both ends are on this machine: what this process may open, less what it has open already. */
const IDLE = Math.min(WANTED, handlesOf(readFileSync('/proc/self/limits', 'utf8')) - 1100)
const SLOW = 300
const LIMIT_MS = 10_000

const [idle, slow] = [openFaultShop(), openFaultShop()]
beforeAll(async () => void (await Promise.all([idle.start(), slow.start()])), 30_000)
afterAll(() => Promise.all([idle.end(), slow.end()]))

interface Held {
  readonly socket: Socket
  readonly closed: () => boolean
  readonly told: () => string
}

const hold = (port: number): Promise<Held> =>
  new Promise((resolve, reject) => {
    let closed = false
    let told = ''
    const socket = connect(port, '127.0.0.1')
    const held: Held = { socket, closed: () => closed, told: () => told }
    socket.on('data', (bytes) => {
      told += bytes
    })
    socket.once('close', () => {
      closed = true
    })
    socket.once('connect', () => resolve(held))
    socket.on('error', reject)
  })

const untilClosed = async (held: readonly Held[], mostMs: number): Promise<number> => {
  const end = performance.now() + mostMs
  while (held.some((one) => !one.closed()) && performance.now() < end) await pause(100)
  return held.filter((one) => !one.closed()).length
}

it.concurrent(`${IDLE} connections that say nothing keep nobody from an answer, and are closed when their time is up`, async () => {
  const service = idle.service()
  const port = Number(new URL(service.url).port)
  const before = memoryMiB(service)
  const held: Held[] = []
  for (let n = 0; n < IDLE; n += 200)
    held.push(...(await Promise.all(Array.from({ length: Math.min(200, IDLE - n) }, () => hold(port)))))
  const times: number[] = []
  for (let n = 0; n < 50; n++) times.push(await answerMs(service))
  expect(times.sort((a, b) => a - b)[45]).toBeLessThan(1000)
  const grown = memoryMiB(service) - before
  // Some kilobytes each: sockets, parsers, timers.
  expect(grown).toBeLessThan(50 + IDLE * 0.03)
  expect(await untilClosed(held, LIMIT_MS + 20_000)).toBe(0)
  expect(await answerMs(service)).toBeLessThan(2000)
  process.stdout.write(
    `${IDLE} idle connections: ${grown.toFixed(0)} MiB more, answers in ${times[25]?.toFixed(1)} ms (p50)\n`,
  )
}, 60_000)

const slowly: ReadonlyArray<readonly [string, string, string]> = [
  ['a head', 'GET / HTTP/1.1\r\nhost: desk\r\n', 'x: y\r\n'],
  [
    'a body',
    'POST /v1/questions/pull HTTP/1.1\r\nhost: desk\r\ncontent-type: application/json\r\ncontent-length: 9000\r\n\r\n{',
    ' ',
  ],
]
it.concurrent.each(slowly)(
  `${SLOW} that send %s a little at a time are told so and closed; others are answered meanwhile`,
  async (_what, begin, more) => {
    const service = slow.service()
    const port = Number(new URL(service.url).port)
    const held = await Promise.all(Array.from({ length: SLOW }, () => hold(port)))
    for (const { socket } of held) socket.write(begin)
    const drip = setInterval(() => {
      for (const { socket, closed } of held) if (!closed() && socket.writable) socket.write(more)
    }, 500)
    // A write to what was just closed fails, as it should.
    for (const { socket } of held) socket.removeAllListeners('error').on('error', () => undefined)
    for (let n = 0; n < 20; n++) expect(await answerMs(service)).toBeLessThan(2000)
    expect(await untilClosed(held, LIMIT_MS + 20_000)).toBe(0)
    clearInterval(drip)
    expect(held.filter((one) => one.told().startsWith('HTTP/1.1 408 ')).length).toBeGreaterThan(SLOW * 0.9)
  },
  60_000,
)
