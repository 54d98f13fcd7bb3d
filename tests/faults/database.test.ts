// A database that goes and comes back under the running program: questions are answered all the while, the register says that it is
// away and comes back by itself, and what was acknowledged is there.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Cluster, hasPostgres, startCluster } from '../support/postgres.ts'
import { answerMs, type FaultShop, openFaultShop, untilWorks } from './shop.ts'

describe.runIf(hasPostgres)('a database', () => {
  let cluster: Cluster
  let shop: FaultShop
  beforeAll(async () => {
    cluster = await startCluster({ safely: true })
    shop = openFaultShop(await cluster.database())
    await shop.start()
    await untilWorks(() => shop.addWrench(), 10_000)
  }, 90_000)
  afterAll(async () => {
    await shop.end()
    await cluster.remove()
  })

  const acknowledged: string[] = []
  const away = async (): Promise<void> => {
    await expect(shop.note('to nobody')).rejects.toThrow(/gave 503/)
    expect((await fetch(shop.url('/board'))).status).toBe(503)
    expect(await (await fetch(shop.url('/readyz'))).json()).toMatchObject({ status: 'degraded' })
    expect(await answerMs(shop.service())).toBeLessThan(2000)
    expect((await fetch(shop.url('/ask/adapter-setting'))).status).toBe(200)
  }
  const back = async (): Promise<void> => {
    acknowledged.push(await untilWorks(() => shop.note('it is back'), 15_000))
    expect(await shop.ids()).toEqual(expect.arrayContaining(acknowledged))
    expect(await (await fetch(shop.url('/readyz'))).json()).toEqual({ status: 'ok', reasons: [] })
  }

  it.each(['orderly', 'crash'] as const)(
    'that stops (%s) and starts again is found without a restart',
    async (how) => {
      acknowledged.push(await shop.note(`before it stops (${how})`))
      await cluster.stop(how)
      await away()
      await cluster.start()
      await back()
    },
    60_000,
  )

  it('that is there and does not answer is given up after some seconds, and used again when it does', async () => {
    acknowledged.push(await shop.note('before it goes silent'))
    const thaw = cluster.freeze()
    try {
      await away()
    } finally {
      thaw()
    }
    await back()
  }, 60_000)
})
