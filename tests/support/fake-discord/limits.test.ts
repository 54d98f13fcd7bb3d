// Shows that the validator refuses a bad payload of each kind, says where and why, and lets pass what is just allowed.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { badCommands } from './bad-commands.ts'
import { badComponents } from './bad-components.ts'
import { badFilesAndForms } from './bad-files-and-forms.ts'
import { badMessages } from './bad-messages.ts'
import { answer, callbackPath, post } from './fake-client.ts'
import { type FakeDiscord, startFakeDiscord } from './fake-discord.ts'
import { goodCallbacks, goodCommands } from './good-payloads.ts'
import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'
import type { CallbackRow } from './payload-parts.ts'

const { adapterSetting } = interactions

let fake: FakeDiscord

beforeEach(async () => {
  fake = await startFakeDiscord()
})
afterEach(async () => {
  await fake.close()
})

describe('a list of commands', () => {
  for (const { why, list, path, code } of badCommands)
    test(`is refused for ${why}`, async () => {
      const answered = await post(fake, `/applications/${fake.applicationId}/commands`, list, {
        method: 'PUT',
        token: fake.token,
      })
      expect(answered).toMatchObject({ status: 400, body: { code: 50035, message: 'Invalid Form Body' } })
      expect(fake.violations).toContainEqual(expect.objectContaining({ where: 'commands-put', path, code }))
      expect(fake.commands).toEqual([])
    })

  test('passes at the very edge of what is allowed', async () => {
    const path = `/applications/${fake.applicationId}/commands`
    expect(await post(fake, path, goodCommands, { method: 'PUT', token: fake.token })).toMatchObject({ status: 200 })
    expect(fake.violations).toEqual([])
    expect(fake.commands).toHaveLength(goodCommands.length)
  })
})

describe('a callback', () => {
  async function send({ ask = adapterSetting, body, files }: CallbackRow): Promise<{ status: number; body: Json }> {
    const raw = fake.issue(ask)
    if (!files) return await post(fake, callbackPath(raw), body)
    const form = new FormData()
    for (const [key, size] of Object.entries(files)) form.append(key, new Blob([Buffer.alloc(size)]), 'picture.png')
    form.append('payload_json', JSON.stringify(body))
    return await post(fake, callbackPath(raw), form)
  }
  const answered: Record<string, Json> = {
    EMPTY_MESSAGE: { status: 400, body: { code: 50006 } },
    REQUEST_ENTITY_TOO_LARGE: { status: 413, body: { code: 40005 } },
  }

  for (const row of [...badMessages, ...badComponents, ...badFilesAndForms])
    test(`is refused for ${row.why}`, async () => {
      expect(await send(row)).toMatchObject(answered[row.code] ?? { status: 400, body: { code: 50035 } })
      expect(fake.violations).toMatchObject([{ where: 'callback', path: row.path, code: row.code }])
    })

  for (const row of goodCallbacks)
    test(`passes with ${row.why}`, async () => {
      expect(await send(row)).toMatchObject({ status: 204 })
      expect(fake.violations).toEqual([])
    })

  test('that was refused leaves the interaction free to be answered', async () => {
    const raw = fake.issue(adapterSetting)
    const refused = await post(fake, callbackPath(raw), {
      type: 4,
      data: { ...answer.data, content: 'x'.repeat(2001) },
    })
    expect(refused.body).toMatchObject({
      errors: { data: { content: { _errors: [{ code: 'BASE_TYPE_BAD_LENGTH' }] } } },
    })
    expect(await post(fake, callbackPath(raw), answer)).toMatchObject({ status: 204 })
  })
})
