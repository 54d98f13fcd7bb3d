// A restart storm: the program is started and killed twenty times in a row, in the middle of writing. What it acknowledged is there.
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, expect, it } from 'vitest'
import { SEED, seeded } from '../support/random.ts'
import { openFaultShop } from './shop.ts'

const STARTS = 20
const MOST_MS = 120

const shop = openFaultShop()
afterAll(() => shop.end())

it(`${STARTS} starts and kills while it writes lose nothing that was acknowledged, and keep at most what was in hand`, async () => {
  const random = seeded(SEED)
  const acknowledged: string[] = []
  await shop.start()
  await shop.addWrench()
  for (let n = 0; n < STARTS; n++) {
    if (n > 0) await shop.start()
    const service = shop.service()
    let writing = true
    let wrote: (() => void) | undefined
    const first = new Promise<void>((resolve) => {
      wrote = resolve
    })
    const writes = (async () => {
      for (let m = 0; writing; m++) {
        try {
          acknowledged.push(await shop.note(`start ${n}, note ${m}`))
          wrote?.()
        } catch {
          // Killed meanwhile: what was not acknowledged is nobody's.
          return
        }
      }
    })()
    await first
    await pause(random() * MOST_MS)
    service.kill()
    writing = false
    await writes
    while (service.running()) await pause(5)
  }
  await shop.start()
  const kept = await shop.ids()
  expect(acknowledged.length).toBeGreaterThanOrEqual(STARTS)
  expect(kept).toEqual(expect.arrayContaining(acknowledged))
  // One write may have been in hand at each kill; the first entry is the wrench.
  expect(kept.length - 1 - acknowledged.length).toBeLessThanOrEqual(STARTS)
  expect(new Set(kept).size).toBe(kept.length)
  expect(await shop.service().stop()).toBe(0)
}, 180_000)
