// What people say in channels: the raw message of the gateway for what a test has somebody say. Everything has a default.

import { people, places } from './ask.ts'
import type { Json } from './limits.ts'
import { snowflake } from './snowflake.ts'

export interface Say {
  content: string
  id?: string
  /** How old the message is when it is told of, in ms. */
  age?: number
  user?: Json
  /** Server id, or null for a direct message. */
  guild?: string | null
  channel?: string
  roles?: readonly string[]
  /** The message that it replies to; Discord then mentions who wrote that, wherever the replier left it so. */
  replyTo?: Json
  /** Spread over the raw message last. */
  raw?: Json
}

const mentionedIn = (content: string): string[] => [
  ...new Set([...content.matchAll(/<@!?(\d{1,20})>/g)].map((found) => found[1] as string)),
]

export function buildMessage(say: Say, about: { botUser: Json; now: number }): Json {
  const { content, replyTo } = say
  const guild = say.guild === undefined ? places.shop : say.guild
  const userOf = (id: string): Json => (id === about.botUser['id'] ? about.botUser : { id, username: `user-${id}` })
  const replied = replyTo?.['author'] as Json | undefined
  const mentioned = [...mentionedIn(content).map(userOf), ...(replied ? [replied] : [])]
  const mentions = [...new Map(mentioned.map((user) => [user['id'], user])).values()]
  const channel = say.channel ?? places.channel
  return {
    id: say.id ?? snowflake(about.now - (say.age ?? 0)),
    type: replyTo ? 19 : 0,
    channel_id: channel,
    channel_type: guild === null ? 1 : 0,
    author: { ...people.asker, ...say.user },
    content,
    mentions,
    mention_roles: [...content.matchAll(/<@&(\d{1,20})>/g)].map((found) => found[1]),
    mention_everyone: /@everyone|@here/.test(content),
    attachments: [],
    embeds: [],
    components: [],
    pinned: false,
    tts: false,
    flags: 0,
    timestamp: new Date(about.now).toISOString(),
    edited_timestamp: null,
    ...(guild === null
      ? {}
      : { guild_id: guild, member: { roles: [...(say.roles ?? [])], joined_at: '2024-01-01T00:00:00.000000+00:00' } }),
    ...(replyTo && {
      message_reference: { type: 0, message_id: replyTo['id'], channel_id: channel },
      referenced_message: replyTo,
    }),
    ...say.raw,
  }
}

const GUILD_MESSAGES = 1 << 9
const DIRECT_MESSAGES = 1 << 12
const MESSAGE_CONTENT = 1 << 15
/** Members, presences and the content of messages: given only to applications that were let have them. */
export const privileged = (1 << 1) | (1 << 8) | MESSAGE_CONTENT

export const isHeardWith = (intents: number, message: Json): boolean =>
  (intents & (message['guild_id'] === undefined ? DIRECT_MESSAGES : GUILD_MESSAGES)) !== 0

/** Without the intent for it, what a message says is told only to whom it mentions, sends it to, or comes from. */
export function asTold(message: Json, intents: number, bot: unknown): Json {
  const mentions = message['mentions'] as readonly Json[]
  const isOwn = (message['author'] as Json)['id'] === bot
  const isTold = message['guild_id'] === undefined || isOwn || mentions.some(({ id }) => id === bot)
  if (isTold || (intents & MESSAGE_CONTENT) !== 0) return message
  return { ...message, content: '', embeds: [], attachments: [], components: [] }
}
