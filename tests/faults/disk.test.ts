// A disk that takes no more, for the built program: a limit on the size of its files stands in for it. Writing is an outage, reading
// and answering go on, what was acknowledged is there, and all is well again where there is room.
import { afterAll, expect, it } from 'vitest'
import { answerMs, openFaultShop } from './shop.ts'

const shop = openFaultShop()
afterAll(() => shop.end())

it('a full disk refuses writes in words, and loses nothing', async () => {
  // 512-byte blocks: 1 MiB. Without a trap the signal of that limit would end the process, where a disk ends nothing.
  const service = await shop.start('trap "" XFSZ; ulimit -f 2048')
  await shop.addWrench()
  const acknowledged: string[] = []
  let failure = ''
  for (let n = 0; n < 600 && failure === ''; n++) {
    try {
      acknowledged.push(await shop.note(`${n} ${'x'.repeat(350)}`))
    } catch (error) {
      failure = (error as Error).message
    }
  }
  expect(failure).toMatch(/gave 503/)
  expect(failure).not.toMatch(/SQLITE|EFBIG|\.db/)
  expect(acknowledged.length).toBeGreaterThan(5)
  expect(service.running()).toBe(true)
  expect(await shop.ids()).toEqual(expect.arrayContaining(acknowledged))
  expect(await answerMs(service)).toBeLessThan(2000)
  expect(await service.stop()).toBe(0)
  await shop.start()
  const kept = await shop.ids()
  expect(kept).toEqual(expect.arrayContaining(acknowledged))
  expect(kept).toHaveLength(acknowledged.length + 1)
  acknowledged.push(await shop.note('there is room again'))
  expect(await shop.ids()).toContain(acknowledged.at(-1))
}, 60_000)
