// What every transport does with an interaction: each is counted once by what became of it, nothing rejects, and the end waits for
// what was taken and takes no more.
import { beforeEach, describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import type { ChatEvent } from '../../../src/counters.ts'
import type { Edits } from '../../../src/faces/chat/wire/edit.ts'
import type { FirstResponse, Respond } from '../../../src/faces/chat/wire/first-response.ts'
import { createTaking, type Taking } from '../../../src/faces/chat/wire/taking.ts'
import { languages } from '../../../src/words/index.ts'
import { noPictures, testDesk } from '../../support/doors.ts'
import type { Ask } from '../../support/fake-discord/ask.ts'
import { buildInteraction } from '../../support/fake-discord/raw-interaction.ts'

const convert: Ask = { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }

let counted: Array<[ChatEvent, number | undefined]>
let logged: unknown[]
let sent: FirstResponse[]
let taking: Taking

const raw = (ask: Ask = convert) =>
  buildInteraction(ask, { applicationId: '9', commands: [], now: Date.now() }) as never
const answered: Respond = async (response) => {
  sent.push(response)
  return 'answered'
}
const edits: Edits = { fillIn: async () => 'answered-late', takeAway: async () => 'answered-late' }
const desk = testDesk()
const build = (more: object = {}, offers: object = {}): Taking =>
  createTaking({
    desk,
    handling: { desk, topics, pictures: noPictures, ...more },
    offers: {
      find: async () => [],
      words: () => languages.en.words,
      system: async () => 'metric',
      recent: () => [],
      ...offers,
    },
    edits,
    now: Date.now,
    reference: () => 'r-1',
    count: (event, shard) => counted.push([event, shard]),
    log: { error: (facts) => logged.push(facts) },
  })

beforeEach(() => {
  counted = []
  logged = []
  sent = []
  taking = build()
})

describe('taking interactions', () => {
  it('answers one, and counts it once with the shard it came over', async () => {
    expect(await taking.take(raw(), answered, 3)).toBe('answered')
    expect(counted).toEqual([['answered', 3]])
    expect(sent[0]?.body).toMatchObject({ type: 4 })
  })

  it('the same again, in whatever order, is answered once', async () => {
    const [first, second] = [raw(), raw({ ...convert, options: { quantity: '5 Nm' } })]
    await Promise.all([second, first, second, first].map((one) => taking.take(one, answered)))
    expect(sent).toHaveLength(2)
    expect(counted.map(([event]) => event).sort()).toEqual(['answered', 'answered', 'twice', 'twice'])
  })

  it.each([
    ['late', 'late'],
    ['already-answered', 'already-answered'],
    ['timed-out', 'timed-out'],
    ['rate-limited', 'rate-limited'],
    ['failed', 'failed'],
  ] as const)('what Discord says of the answer is what is counted: %s', async (delivery, event) => {
    await taking.take(raw(), async () => delivery)
    expect(counted).toEqual([[event, undefined]])
  })

  it.each([
    ['a bug in what answers', { register: { handle: () => Promise.reject(new Error('bug')) } }],
    [
      'an answerer that throws at once',
      {
        register: {
          handle: () => {
            throw new Error('bug')
          },
        },
      },
    ],
  ])('%s is one calm line with its reference, logged and counted once', async (_name, more) => {
    taking = build(more)
    expect(await taking.take(raw(), answered)).toBe('failed')
    expect(counted).toEqual([['failed', undefined]])
    expect(JSON.stringify(sent[0]?.body)).toContain('reference r-1')
    expect(logged).toHaveLength(1)
  })

  it('a way of answering that throws harms nothing', async () => {
    expect(await taking.take(raw(), () => Promise.reject(new Error('no socket')))).toBe('failed')
    expect(await taking.take({ id: raw()['id'], type: 2 } as never, answered)).toMatch(/failed|unknown/)
    expect(await taking.take({} as never, answered)).toBe('unknown')
    expect(await taking.take(raw(), answered)).toBe('answered')
  })

  it('offers that are late are none', async () => {
    taking = build({}, { find: () => new Promise(() => {}) })
    const typing = raw({
      kind: 'autocomplete',
      command: 'wrench',
      subcommand: 'show',
      options: { wrench: 'k' },
      focused: 'wrench',
      age: 1400,
    })
    expect(await taking.take(typing, answered)).toBe('offered')
    expect(sent[0]?.body).toEqual({ type: 8, data: { choices: [] } })
  })

  it('the end takes no more, and waits for those under way', async () => {
    let arrive: (delivery: 'answered') => void = () => {}
    const under = taking.take(raw(), () => new Promise((resolve) => (arrive = resolve)))
    await new Promise((resolve) => setTimeout(resolve, 50))
    let ended = false
    const end = taking.finish(5000).then(() => (ended = true))
    expect(await taking.take(raw(), answered)).toBe('dropped')
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(ended).toBe(false)
    arrive('answered')
    await end
    expect(await under).toBe('answered')
    expect(sent).toEqual([])
  })

  it('the end does not wait for ever', async () => {
    void taking.take(raw(), () => new Promise(() => {}))
    const start = performance.now()
    await taking.finish(200)
    expect(performance.now() - start).toBeLessThan(1500)
  })
})
