// Shows that interactions reach the real client as Discord's do, and that each may be answered once and in time.

import { Events } from 'discord.js'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { answer, callbackPath, connect, disconnectAll, post, reply } from './fake-client.ts'
import { type FakeDiscord, startFakeDiscord } from './fake-discord.ts'
import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'
import { snowflakeTime } from './snowflake.ts'

const { adapterSetting, press } = interactions
const picture = Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), Buffer.alloc(64, 7)])

let fake: FakeDiscord

beforeEach(async () => {
  fake = await startFakeDiscord()
})
afterEach(async () => {
  await disconnectAll()
  await fake.close()
})

describe('an interaction', () => {
  test('is answered with JSON in its callback', async () => {
    await connect(fake)
    const callback = await fake.interaction(adapterSetting)
    expect(callback).toMatchObject({ status: 204, type: 4, data: answer.data, files: [] })
    expect(callback.ms).toBeLessThan(500)
    expect(fake.requests.at(-1)).toMatchObject({ route: 'callback', authorized: false })
    expect(fake.violations).toEqual([])
  })

  test('is answered with a file that arrives byte by byte', async () => {
    const attachments = [{ id: 0, description: 'the wrench to scale' }]
    const body = { ...answer, data: { ...answer.data, attachments } }
    await connect(fake, (raw, client) => reply(client, raw, body, { files: [{ name: 'figure.png', data: picture }] }))
    const { files, message } = await fake.interaction(adapterSetting)
    expect(files).toMatchObject([
      { key: 'files[0]', name: 'figure.png', contentType: 'image/png', size: picture.length },
    ])
    expect(files[0]?.bytes.equals(picture)).toBe(true)
    expect(message).toMatchObject({ attachments: [{ filename: 'figure.png', description: 'the wrench to scale' }] })
    expect(fake.violations).toEqual([])
  })

  test('is understood by the client as each kind of interaction', async () => {
    const kinds: string[] = []
    const client = await connect(fake, () => {})
    client.on(Events.InteractionCreate, (one) => {
      if (one.isChatInputCommand())
        kinds.push(`slash ${one.options.getSubcommand(false)} ${one.options.getString('hand')}`)
      if (one.isAutocomplete()) kinds.push(`autocomplete ${one.options.getFocused(true).name}`)
      if (one.isButton()) kinds.push(`button ${one.customId}`)
      if (one.isModalSubmit()) kinds.push(`modal ${one.fields.getTextInputValue('torque')}`)
      if (one.isMessageContextMenuCommand()) kinds.push(`message ${one.targetMessage.content}`)
    })
    fake.interaction(interactions.handPosition)
    fake.interaction({ ...interactions.autocomplete, command: 'adapter', options: { torque: '9' }, focused: 'torque' })
    fake.interaction({ ...press, customId: 'angle:90', message: 'a' })
    fake.interaction({ ...interactions.submit, customId: 'ask', fields: { torque: '95 N·m' } })
    fake.interaction({ ...interactions.workThisOut, message: '95 Nm' })
    await fake.until('all are heard', () => kinds.length === 5)
    expect(kinds).toEqual([
      'slash position 340 mm',
      'autocomplete torque',
      'button angle:90',
      'modal 95 N·m',
      'message 95 Nm',
    ])
  })

  test('of a button is on a message that has the button', async () => {
    const buttons = [{ type: 1, components: [{ type: 2, style: 2, label: '90°', custom_id: 'angle:90' }] }]
    const withButtons = { ...answer, data: { ...answer.data, components: buttons } }
    await connect(fake, (raw, client) => reply(client, raw, raw['type'] === 3 ? { ...answer, type: 7 } : withButtons))
    const { message } = await fake.interaction(adapterSetting)
    if (!message) throw new Error('There must be a message')
    expect(() => fake.interaction({ ...press, customId: 'angle:45', message })).toThrow('no live component angle:45')
    expect(await fake.interaction({ ...press, customId: 'angle:90', message })).toMatchObject({ status: 204, type: 7 })
    expect(fake.violations).toEqual([])
  })

  test('without a callback is told after the stated time', async () => {
    await connect(fake, () => {})
    await expect(fake.interaction(adapterSetting, { within: 80 })).rejects.toThrow('none within 80 ms')
  })

  test('delivered twice comes twice, and a second answer is 40060 and a violation', async () => {
    const ids: unknown[] = []
    await connect(fake, (raw, client) => {
      ids.push(raw['id'])
      return reply(client, raw, answer)
    })
    const callbacks = await fake.sendTwice(adapterSetting, { settle: 100 })
    expect(ids).toEqual([ids[0], ids[0]])
    expect(callbacks.map(({ status, code }) => [status, code])).toEqual([
      [204, undefined],
      [400, 40060],
    ])
    expect(fake.violations).toMatchObject([{ code: '40060' }])
  })

  test('older than 3 s is unknown, as is one with another token', async () => {
    const heard: Json[] = []
    await connect(fake, (raw, client) => {
      heard.push(raw)
      return reply(client, raw, answer)
    })
    expect(await fake.interaction(interactions.tooOld)).toMatchObject({ status: 404, code: 10062 })
    expect(Date.now() - snowflakeTime(String(heard[0]?.['id']))).toBeGreaterThan(3900)
    const raw = fake.issue(adapterSetting)
    expect(await post(fake, callbackPath({ ...raw, token: 'another' }), answer)).toMatchObject({
      status: 404,
      body: { code: 10062 },
    })
    expect(fake.violations.map(({ code }) => code)).toEqual(['10062', '10062'])
  })

  test('may be followed up, edited and deleted for 15 minutes once it was answered', async () => {
    const raw = fake.issue(adapterSetting)
    const hook = `/webhooks/${fake.applicationId}/${raw['token']}`
    expect(await post(fake, hook, answer.data)).toMatchObject({ status: 404, body: { code: 10015 } })
    fake.forgetViolations()
    expect(await post(fake, callbackPath(raw), { type: 5 })).toMatchObject({ status: 204 })
    const promised = await post(fake, hook, answer.data)
    expect(promised.body).toMatchObject({ content: answer.data.content, flags: 0 })
    const edited = await post(fake, `${hook}/messages/@original`, { ...answer.data, content: 'b' }, { method: 'PATCH' })
    expect(edited.body).toMatchObject({ id: promised.body['id'], content: 'b' })
    const further = await post(fake, hook, answer.data)
    expect(further.body['id']).not.toBe(promised.body['id'])
    expect(await post(fake, `${hook}/messages/@original`, undefined, { method: 'DELETE' })).toMatchObject({
      status: 204,
    })
    expect(fake.violations).toEqual([])
    fake.makeOlder(String(raw['id']), 15 * 60_000)
    expect(await post(fake, hook, answer.data)).toMatchObject({ status: 401, body: { code: 50027 } })
    expect(fake.violations).toMatchObject([{ where: 'follow-up', code: '50027' }])
  })
})
