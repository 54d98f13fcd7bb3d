// Out of file handles: the program may open few, and strangers take them all. It stays up, and everything works once they let go,
// also what it opens first then: the register, a picture, the font.
import { execFileSync } from 'node:child_process'
import { connect, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, expect, it } from 'vitest'
import type { Service } from '../support/service.ts'
import { answerMs, openFaultShop, untilWorks } from './shop.ts'

const HANDLES = 60
const CONNECTIONS = 300

const shop = openFaultShop()
afterAll(() => shop.end())

// Under way, as it comes in a shop: at the start the program has its files to read.
const startShort = async (): Promise<Service> => {
  const service = await shop.start()
  execFileSync('prlimit', [`--pid=${service.pid}`, `--nofile=${HANDLES}:`])
  return service
}

const picture = '/v1/questions/adapter-setting/figure.png?torque=100+N%C2%B7m&lever=400+mm&adapter=50+mm'

it(`${CONNECTIONS} connections against ${HANDLES} handles: the program lives, says what fails, and recovers by itself`, async () => {
  const service = await startShort()
  const sockets: Socket[] = Array.from({ length: CONNECTIONS }, () => {
    const socket = connect(Number(new URL(service.url).port), '127.0.0.1')
    // Those for which there is no handle are cut off.
    return socket.on('error', () => undefined)
  })
  await pause(500)
  // Some asked in the meantime may be answered and some not; none of it may end the program.
  await Promise.allSettled(
    ['/v1/wrenches', picture, '/board', '/readyz'].map((path) =>
      fetch(shop.url(path), { signal: AbortSignal.timeout(1500) }),
    ),
  )
  expect(service.running()).toBe(true)
  for (const socket of sockets) socket.destroy()
  await untilWorks(() => answerMs(service), 5000)
  await untilWorks(() => shop.addWrench(), 5000)
  const id = await shop.note('after the flood')
  expect(await shop.ids()).toContain(id)
  const drawn = await fetch(shop.url(picture))
  expect(drawn.status).toBe(200)
  expect(drawn.headers.get('content-type')).toBe('image/png')
  expect(await (await fetch(shop.url('/readyz'))).json()).toEqual({ status: 'ok', reasons: [] })
  expect(await service.stop()).toBe(0)
}, 40_000)

it('handles that run out while a connection asks for the register and a picture are an outage, not a lasting one', async () => {
  const service = await startShort()
  const port = Number(new URL(service.url).port)
  // One connection that is held open asks; the others take whatever is left.
  const asking = connect(port, '127.0.0.1')
  await new Promise((resolve) => asking.once('connect', resolve))
  const sockets = Array.from({ length: CONNECTIONS }, () => connect(port, '127.0.0.1').on('error', () => undefined))
  await pause(500)
  let told = ''
  asking.on('data', (bytes) => {
    told += bytes
  })
  for (const path of ['/v1/wrenches', picture]) asking.write(`GET ${path} HTTP/1.1\r\nhost: desk\r\n\r\n`)
  await pause(1500)
  const statuses = [...told.matchAll(/HTTP\/1\.1 (\d+)/g)].map(([, status]) => Number(status))
  expect(statuses).toHaveLength(2)
  for (const status of statuses) expect([500, 503]).toContain(status)
  for (const socket of [asking, ...sockets]) socket.destroy()
  expect(service.running()).toBe(true)
  await untilWorks(() => answerMs(service), 5000)
  // A moment later than the first answer: the others' handles come back one by one.
  await untilWorks(() => shop.ids(), 8000)
  expect((await fetch(shop.url(picture))).status).toBe(200)
  expect(await service.stop()).toBe(0)
}, 40_000)
