// The digest as Discord gets it: within its limits for any shop, sent once under its name, and what its answers mean.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { digestEmbed, sendDigest } from '../../../src/faces/chat/digest-message.ts'
import { botRest } from '../../../src/faces/chat/wire/rest.ts'
import { type Digest, digestParts } from '../../../src/register/digest.ts'
import { languages } from '../../../src/words/index.ts'
import { type FakeDiscord, startFakeDiscord } from '../../support/fake-discord/fake-discord.ts'

const { words } = languages.en
const digestOf = (count: number): Digest =>
  Object.fromEntries(
    digestParts.map((part) => [
      part,
      Array.from({ length: count }, (_, n) => ({
        tag: `W-${n}`,
        name: 'n'.repeat(80),
        place: '*'.repeat(80),
        date: '2026-06-01',
      })),
    ]),
  ) as unknown as Digest

describe('the digest as a message', () => {
  it('is one line where nothing needs doing', () => {
    expect(digestEmbed(digestOf(0), '2026-06-01', words).description).toBe(words.digest.quiet)
  })

  it('stays within Discord’s limits for 300 wrenches with long names, and counts what is cut', () => {
    const embed = digestEmbed(digestOf(60), '2026-06-01', words)
    for (const { name, value } of embed.fields ?? []) {
      expect(name.length).toBeLessThanOrEqual(256)
      expect(value.length).toBeLessThanOrEqual(1024)
      expect(value).toMatch(/and \d+ more/)
    }
    const all = (embed.title ?? '') + (embed.fields ?? []).map(({ name, value }) => name + value).join('')
    expect(all.length).toBeLessThanOrEqual(6000)
  })
})

describe('the digest sent', () => {
  let discord: FakeDiscord
  beforeAll(async () => {
    discord = await startFakeDiscord()
  })
  afterAll(() => discord.close())
  const embed = digestEmbed(digestOf(2), '2026-06-01', words)

  it('twice under one name is one message', async () => {
    const rest = botRest({ token: discord.token, apiUrl: discord.url })
    const failed: unknown[] = []
    const send = () => sendDigest(rest, '500000000000000001', embed, 'digest-2026-06-01', (error) => failed.push(error))
    expect(await send()).toBe('sent')
    expect(await send()).toBe('sent')
    expect(failed).toEqual([])
    expect(discord.channelMessages()).toHaveLength(1)
    expect(discord.violations).toEqual([])
  })

  it('where the bot may not speak is not tried again', async () => {
    const rest = botRest({ token: 'none', apiUrl: discord.url })
    expect(await sendDigest(rest, '500000000000000001', embed, 'digest-2026-06-08', () => {})).toBe('gone')
  })

  it('where Discord is away is tried later', async () => {
    const rest = botRest({ token: 'none', apiUrl: 'http://127.0.0.1:9/api' })
    expect(await sendDigest(rest, '1', embed, 'digest-2026-06-08', () => {})).toBe('later')
  })
})
