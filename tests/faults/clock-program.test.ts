// The built program while its clock jumps a year ahead, a year behind, and right again: it answers, stays ready, keeps what it is
// given in order, lets in whoever was over the limit, and its board tells of each day what holds on it.
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, expect, it } from 'vitest'
import { answerMs, openFaultShop, untilWorks } from './shop.ts'

const YEAR_MS = 365 * 86_400_000
const shop = openFaultShop()
afterAll(() => shop.end())

const get = async (path: string): Promise<{ status: number; text: string }> => {
  const reply = await fetch(shop.url(path))
  return { status: reply.status, text: await reply.text() }
}

/** Sends requests until one is told to wait. */
const untilLimited = async (): Promise<boolean> => {
  const end = performance.now() + 10_000
  while (performance.now() < end) {
    const all = await Promise.all(Array.from({ length: 200 }, () => get('/icon.svg')))
    if (all.some(({ status }) => status === 429)) return true
  }
  return false
}

it('goes on while its clock jumps a year ahead, behind, and right again', async () => {
  const service = await shop.start('', { NODE_OPTIONS: `--import=${join(import.meta.dirname, 'jumping-clock.mjs')}` })
  let jumps = 0
  const jump = async (): Promise<number> => {
    process.kill(service.pid as number, 'SIGWINCH')
    jumps++
    await untilWorks(async () => expect(service.log().match(/the clock shows/g)).toHaveLength(jumps), 5000)
    return Date.parse(/the clock shows (\S+)\n$/.exec(service.log())?.[1] ?? '')
  }
  const isWell = async (): Promise<void> => {
    await answerMs(service)
    for (const path of ['/', '/board', '/wrench/W-1', '/v1/due.ics', '/readyz'])
      expect(await get(path), path).toMatchObject({ status: 200 })
    expect(JSON.parse((await get('/readyz')).text)).toMatchObject({ status: 'ok' })
  }
  const statusNow = async (): Promise<string> =>
    (JSON.parse((await get('/v1/wrenches/W-1')).text) as { status: { code: string } }).status.code

  await shop.addWrench()
  const before = await shop.note('before')
  await isWell()
  expect(await statusNow()).toBe('check-before-use')

  expect((await jump()) - Date.now()).toBeGreaterThan(YEAR_MS - 60_000)
  await isWell()
  const ahead = await shop.note('ahead')

  // Of an address that is over the limit just before its clock is set back two years.
  expect(await untilLimited()).toBe(true)
  expect((await jump()) - Date.now()).toBeLessThan(60_000 - YEAR_MS)
  await pause(1100)
  await isWell()
  // A year ago nothing had happened yet: it was only never checked.
  expect(await statusNow()).toBe('check-due')

  expect(Math.abs((await jump()) - Date.now())).toBeLessThan(60_000)
  await isWell()
  expect(await statusNow()).toBe('check-before-use')
  const after = await shop.note('after')
  expect((await shop.ids()).slice(1)).toEqual([before, ahead, after])
  expect(service.log()).not.toMatch(/unhandled|uncaught|"level":[56]0/i)
  expect(await service.stop()).toBe(0)
}, 60_000)
