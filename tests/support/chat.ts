// A chat in process for the tests: asks as Discord sends them, every reply held against Discord's limits, keys pressed as people press them.
import { expect } from 'vitest'
import { topics } from '../../commands/index.ts'
import { createDesk, type Desk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import { tagOfIn } from '../../src/desk/named-wrench.ts'
import type { Shop } from '../../src/desk/shop.ts'
import { createSpecs } from '../../src/desk/specs.ts'
import { createPress } from '../../src/faces/chat/answer/press.ts'
import { saverOf } from '../../src/faces/chat/answer/save.ts'
import { buildCommands } from '../../src/faces/chat/commands.ts'
import { type HandlerParts, handleInteraction } from '../../src/faces/chat/handler.ts'
import { createLikings } from '../../src/faces/chat/liking.ts'
import { createRecent, type Recent } from '../../src/faces/chat/recent.ts'
import type { ChatReply } from '../../src/faces/chat/reply.ts'
import type { Pictures } from '../../src/faces/pictures.ts'
import { memoryStore } from '../../src/store/memory.ts'
import type { Store } from '../../src/store/store.ts'
import { languages } from '../../src/words/index.ts'
import { testShop } from './doors.ts'
import { type Ask, people, places } from './fake-discord/ask.ts'
import { checkCallback, type Json } from './fake-discord/limits.ts'
import { buildInteraction } from './fake-discord/raw-interaction.ts'
import { snowflake } from './fake-discord/snowflake.ts'

export const START = Date.parse('2026-06-01T10:00:00Z')
const RETENTION_DAYS = 400
const png = Buffer.from('not looked into')
const commands = buildCommands(topics, languages.en.words) as unknown as Json[]

export interface Component {
  readonly custom_id?: string
  readonly label?: string
  readonly options?: ReadonlyArray<{ readonly label: string; readonly value: string }>
  readonly components?: readonly Component[]
}

export const componentsOf = (reply: ChatReply): Component[] =>
  ((reply.data.components ?? []) as Component[]).flatMap(({ components = [] }) => components)

export const verbsOf = (reply: ChatReply): string[] =>
  componentsOf(reply).map(({ custom_id: id = '' }) => id.split('~')[0] as string)

export const keyOf = (reply: ChatReply, verb: string): Component => {
  const found = componentsOf(reply).find(({ custom_id: id }) => id === verb || id?.startsWith(`${verb}~`))
  if (!found) throw new Error(`no key ${verb} among ${verbsOf(reply)}`)
  return found
}

export const isPrivate = (reply: ChatReply): boolean => reply.data.flags === 64
export const said = (reply: ChatReply): string => reply.data.embeds?.[0]?.description ?? reply.data.content ?? ''

export interface Chat {
  readonly parts: HandlerParts
  readonly desk: Desk
  readonly shop: Shop
  readonly store: Store
  readonly recent: Recent
  /** What was written into channels of the server. */
  readonly told: ReadonlyArray<{ readonly channel: string; readonly body: unknown }>
  readonly pass: (ms: number) => void
  readonly send: (ask: Ask) => Promise<ChatReply>
  readonly press: (reply: ChatReply, verb: string, more?: Ask) => Promise<ChatReply>
  readonly messageOf: (reply: ChatReply, age?: number) => Json
}

export const openChatInProcess = (pictures: Pictures = { png: async () => png }): Chat => {
  let now = START
  const store = memoryStore()
  const shop = testShop()
  const specs = createSpecs(store, () => new Date(now))
  const desk = createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop), tagOf: tagOfIn(shop), specs })
  const told: Array<{ channel: string; body: unknown }> = []
  const likings = createLikings(store, () => now)
  const recent = createRecent(() => now)
  const roles = { keeper: undefined, mechanic: undefined }
  const work = { desk, pictures, likings, roles }
  const tell = async (channel: string, body: unknown) => told.push({ channel, body }) > 0
  const clock = () => now
  const parts: HandlerParts = {
    desk,
    topics,
    pictures: work.pictures,
    recent,
    answers: { ...work, press: createPress({ ...work, tell, save: saverOf(shop, roles), now: clock }) },
    settings: { store, likings, roles, now: clock, tagOf: async (text) => (await shop.wrench(text))?.row.folder.tag },
    privacy: { store, likings, recent, retentionDays: RETENTION_DAYS },
    spec: { specs, roles },
    failed: (error) => {
      throw error
    },
  }

  const send = async (ask: Ask): Promise<ChatReply> => {
    const raw = buildInteraction({ user: people.asker, ...ask }, { applicationId: '9', commands, now })
    const reply = await handleInteraction(raw as never, parts)
    if (!reply) throw new Error('no reply')
    const type = reply.modal ? 9 : reply.way === 'remove' ? 6 : reply.way === 'update' ? 7 : 4
    const files = reply.files.map(({ name, data }, n) => ({
      ...{ key: `files[${n}]`, name, contentType: 'image/png' },
      ...{ size: data.length, bytes: data },
    }))
    const body = type === 6 ? { type } : { type, data: reply.modal ?? reply.data }
    expect(checkCallback(JSON.parse(JSON.stringify(body)), files, raw)).toEqual([])
    return reply
  }

  const messageOf = (reply: ChatReply, age = 1000): Json => ({
    id: snowflake(now - age),
    channel_id: places.channel,
    type: 20,
    content: '',
    flags: Number(reply.data.flags ?? 0),
    components: JSON.parse(JSON.stringify(reply.data.components ?? [])),
    attachments: [],
    embeds: [],
  })

  const press = (reply: ChatReply, verb: string, more: Ask = {}): Promise<ChatReply> => {
    const { custom_id: customId = '', options } = keyOf(reply, verb)
    const component: Ask = { kind: 'component', customId, componentType: options ? 3 : 2, message: messageOf(reply) }
    return send({ ...component, ...more })
  }

  return { parts, desk, shop, store, recent, told, pass: (ms) => (now += ms), send, press, messageOf }
}
