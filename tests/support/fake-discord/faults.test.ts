// Shows what the real client makes of each fault the fake can put before an answer.

import { DiscordAPIError, HTTPError, Routes } from 'discord.js'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { answer, callbackPath, connect, disconnectAll, failureOf, post, reply } from './fake-client.ts'
import { type FakeDiscord, startFakeDiscord } from './fake-discord.ts'
import { type Fault, faults } from './faults.ts'
import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'

const { adapterSetting } = interactions

let fake: FakeDiscord

beforeEach(async () => {
  fake = await startFakeDiscord()
})
afterEach(async () => {
  await disconnectAll()
  await fake.close()
})

describe('a fault', () => {
  interface FaultRow {
    why: string
    fault: Fault
    times?: number
    tries: readonly number[]
    failure?: Json
    atLeastMs?: number
  }
  const table: FaultRow[] = [
    { why: '10062 fails at once', fault: faults.unknownInteraction, tries: [404], failure: { code: 10062 } },
    { why: '40060 fails at once', fault: faults.alreadyAcknowledged, tries: [400], failure: { code: 40060 } },
    { why: 'one 503 is tried again', fault: faults.broken(503), tries: [503, 204] },
    {
      why: '500 for ever is tried 4 times',
      fault: faults.broken(),
      times: 9,
      tries: [500, 500, 500, 500],
      failure: { status: 500 },
    },
    {
      why: 'a 429 waits whole seconds and goes through',
      fault: faults.rateLimited(0.2),
      tries: [429, 204],
      atLeastMs: 1000,
    },
    { why: 'a slow answer is waited for', fault: faults.slow(100), tries: [204], atLeastMs: 95 },
    { why: 'one hang is tried again after the timeout', fault: faults.hang, tries: [0, 204], atLeastMs: 145 },
    {
      why: 'a hang for ever takes 4 timeouts',
      fault: faults.hang,
      times: 9,
      tries: [0, 0, 0, 0],
      failure: { name: 'AbortError' },
      atLeastMs: 580,
    },
    {
      why: 'an answer that Discord took and lost ends as 40060',
      fault: faults.took(faults.hang),
      tries: [0, 400],
      failure: { code: 40060 },
    },
  ]

  for (const { why, fault, times = 1, tries, failure, atLeastMs = 0 } of table)
    test(`of a callback: ${why}`, async () => {
      let outcome: unknown = 'pending'
      await connect(fake, async (raw, client) => {
        outcome = await failureOf(reply(client, raw, answer))
      })
      fake.fail('callback', fault, times)
      const start = performance.now()
      const { id } = await fake.interaction(adapterSetting)
      await fake.until('the client is done', () => outcome !== 'pending')
      expect(performance.now() - start).toBeGreaterThanOrEqual(atLeastMs)
      expect(fake.callbacksOf(id).map(({ status }) => status)).toEqual(tries)
      if (failure) expect(outcome).toMatchObject(failure)
      else expect(outcome).toBeUndefined()
      expect(fake.violations).toEqual([])
    })

  test('of another route leaves callbacks alone, and is an error of the API or of HTTP to the client', async () => {
    const client = await connect(fake)
    fake.fail('commands-get', faults.forbidden)
    fake.fail('me', faults.broken(), 4)
    await expect(fake.interaction(adapterSetting)).resolves.toMatchObject({ status: 204 })
    expect(await failureOf(client.rest.get(Routes.applicationCommands(fake.applicationId)))).toBeInstanceOf(
      DiscordAPIError,
    )
    expect(await failureOf(client.rest.get(Routes.user()))).toBeInstanceOf(HTTPError)
  })

  test('does not keep the payload from being checked', async () => {
    const raw = fake.issue(adapterSetting)
    fake.fail('callback', faults.broken())
    await post(fake, callbackPath(raw), { type: 4, data: { content: 'a' } })
    expect(fake.violations).toMatchObject([{ code: 'HOUSE_NO_PINGS' }])
  })
})
