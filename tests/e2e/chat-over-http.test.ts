// The built program with interactions over HTTP, against the fake Discord that signs and posts them: the same answers as over the
// gateway, nobody but Discord is heard, and there is no login.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { type Service, startService } from '../support/service.ts'

let discord: FakeDiscord
let service: Service

const adapter = { command: 'adapter', options: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in' } }
const convert = { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }
const metrics = async (): Promise<string> => (await fetch(`${service.url}/metrics`)).text()
const settings = () => ({
  DISCORD_TOKEN: discord.token,
  DISCORD_API_URL: discord.url,
  DISCORD_TRANSPORT: 'http',
  DISCORD_PUBLIC_KEY: discord.publicKey,
})

beforeEach(async () => {
  discord = await startFakeDiscord()
  service = await startService(settings())
  await discord.until('the commands are registered', () => discord.commands.length > 0)
})
afterEach(async () => {
  service.kill()
  await discord.close()
})

describe('interactions over HTTP', () => {
  it('a PING is answered, commands are registered, nobody logs in at the gateway, and chat is well', async () => {
    expect(await discord.post(service.url, { raw: { id: '1', type: 1 } })).toMatchObject({
      status: 200,
      body: { type: 1 },
    })
    expect(discord.identifies).toEqual([])
    await expect.poll(async () => (await fetch(`${service.url}/readyz`)).json()).toEqual({ status: 'ok', reasons: [] })
    expect(await service.stop()).toBe(0)
  })

  it('the first response is the reply itself: a form of parts with the picture, plain JSON without', async () => {
    const { status, body, files } = await discord.post(service.url, adapter)
    expect(status).toBe(200)
    expect(body).toMatchObject({ type: 4, data: { embeds: [{ image: { url: 'attachment://armlength.png' } }] } })
    expect(JSON.stringify(body)).toContain('Set 87.5 lbf·ft on the wrench')
    expect(files).toMatchObject([{ key: 'files[0]', name: 'armlength.png', contentType: 'image/png' }])
    expect(files[0]?.bytes.subarray(1, 4).toString('latin1')).toBe('PNG')
    const plain = await discord.post(service.url, convert)
    expect(plain).toMatchObject({ status: 200, files: [], body: { type: 4 } })
    expect(discord.requests.filter(({ route }) => route === 'callback')).toEqual([])
    expect(discord.callbacks.map(({ status: taken }) => taken)).toEqual([204, 204])
    expect(discord.violations).toEqual([])
    await expect.poll(metrics).toContain('armlength_chat_interactions_total{event="answered"} 2')
  })

  it('keys, forms and offers go the same way', async () => {
    const offered = await discord.post(service.url, {
      kind: 'autocomplete',
      command: 'does-it-matter',
      options: { topic: 'antiseize on lugs' },
      focused: 'topic',
    })
    expect(offered.body).toMatchObject({ type: 8, data: { choices: [{ value: 'anti-seize' }] } })
    const { id } = await discord.post(service.url, adapter)
    const message = discord.callbacksOf(id)[0]?.message ?? {}
    const rows = message['components'] as Array<{ components: Array<{ custom_id: string; label?: string }> }>
    const key = rows.flatMap(({ components }) => components).find(({ label }) => label === 'Change the numbers')
    const form = await discord.post(service.url, { kind: 'component', customId: key?.custom_id ?? '', message })
    expect(form.body).toMatchObject({ type: 9 })
    expect(discord.violations).toEqual([])
  })

  it.each([
    ['a signature of somebody else', { signature: 'ab'.repeat(64) }],
    ['no signature', { signature: null }],
    ['a signature that is none', { signature: 'xyz' }],
    ['no timestamp', { timestamp: null }],
    ['a timestamp that is none', { timestamp: 'now' }],
    ['a stale timestamp, rightly signed', { timestamp: String(Math.floor(Date.now() / 1000) - 3600) }],
    ['another body than was signed', { body: '{"type":1}' }],
    ['a body that is no JSON', { body: '{' }],
    ['an empty body', { body: '' }],
  ])('%s is sent away with 401 and does nothing', async (_name, posting) => {
    expect((await discord.post(service.url, adapter, posting)).status).toBe(401)
    expect(discord.callbacks).toEqual([])
    expect(await metrics()).not.toContain('armlength_chat_interactions_total{')
    expect((await discord.post(service.url, convert)).status).toBe(200)
  })

  it('what is sent again is not answered again', async () => {
    const raw = discord.issue(convert)
    expect((await discord.post(service.url, { raw })).status).toBe(200)
    expect((await discord.post(service.url, { raw })).status).toBe(404)
    expect(discord.callbacksOf(String(raw['id']))).toHaveLength(1)
    expect(discord.violations).toEqual([])
  })

  it('many at once are all answered', async () => {
    const asks = Array.from({ length: 100 }, (_, n) =>
      discord.post(service.url, {
        ...convert,
        guild: null,
        user: { id: String(310_000_000_000_000_000n + BigInt(n)) },
      }),
    )
    expect((await Promise.all(asks)).map(({ status }) => status)).toEqual(Array(100).fill(200))
    expect(discord.violations).toEqual([])
  })
})
