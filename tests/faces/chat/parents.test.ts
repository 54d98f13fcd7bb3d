// Under which channel a channel is: asked once in ten minutes, known for sure or not at all, and never for longer than two seconds.
import type { REST } from 'discord.js'
import { expect, it } from 'vitest'
import { createParents } from '../../../src/faces/chat/messages/parents.ts'
import { START } from '../../support/chat.ts'

const asked: string[] = []
const restThat = (get: (path: string) => Promise<unknown>): Pick<REST, 'get'> => ({
  get: (path) => {
    asked.push(path)
    return get(path)
  },
})

it.each([
  ['a thread', { id: '7', type: 11, parent_id: '9' }, '9'],
  ['a channel in a group', { id: '7', type: 0, parent_id: '8' }, '8'],
  ['a channel by itself', { id: '7', type: 0, parent_id: null }, null],
  ['a channel that says nothing of it', { id: '7', type: 1 }, null],
  ['nonsense', 'gone', undefined],
  ['nothing', null, undefined],
])('%s', async (_, body, parent) => {
  expect(
    await createParents(
      restThat(async () => body),
      () => START,
    )('7'),
  ).toBe(parent)
  expect(asked.at(-1)).toBe('/channels/7')
})

it('what cannot be asked is not known, and is not asked for again and again', async () => {
  asked.length = 0
  let now = START
  const parentOf = createParents(
    restThat(() => Promise.reject(new Error('away'))),
    () => now,
  )
  expect([await parentOf('7'), await parentOf('7')]).toEqual([undefined, undefined])
  expect(asked).toHaveLength(1)
  now += 11 * 60_000
  await parentOf('7')
  now = START
  await parentOf('7')
  expect(asked).toHaveLength(3)
})

it('an answer that never comes is waited for two seconds', async () => {
  const began = performance.now()
  expect(
    await createParents(
      restThat(() => new Promise(() => {})),
      () => START,
    )('7'),
  ).toBeUndefined()
  expect(performance.now() - began).toBeLessThan(4000)
})
