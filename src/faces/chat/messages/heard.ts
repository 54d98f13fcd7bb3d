// A message as Discord tells of it, read for whether it asks the bot: it mentions it in a server, or is sent to it. Everything else is
// let go here: what bots, webhooks and Discord itself say, what is for everybody or for a role, and a bare reply.
import { type GatewayMessageCreateDispatchData, MessageType } from 'discord.js'
import { madeAt } from '../once.ts'

export interface Heard {
  readonly id: string
  readonly channel: string
  readonly user: string
  readonly server: string | undefined
  readonly roles: readonly string[]
  /** What was written, without mentions and whatever else Discord puts between angle brackets. */
  readonly text: string
  /** Meant for the bot beyond doubt. A reply to one of its messages mentions it too, whatever is said in it. */
  readonly isMeant: boolean
}

const spoken: ReadonlySet<MessageType> = new Set([MessageType.Default, MessageType.Reply])

// People, roles, channels, emojis, times, commands: their ids are no numbers of a question.
const MARKUP = /<(?:(?:@[!&]?|#|a?:\w{1,32}:|t:-?|\/[^<>:]{1,100}:)\d{1,20}(?::\w)?|id:\w{1,20})>/g
const LEADING = /^[\s,:]+/

const textOf = (content: string): string => content.replace(MARKUP, ' ').replace(LEADING, '').trim()

const isMessage = (raw: unknown): raw is GatewayMessageCreateDispatchData => {
  if (typeof raw !== 'object' || raw === null) return false
  const { id, channel_id: channel, content, author, mentions } = raw as Partial<GatewayMessageCreateDispatchData>
  return (
    [id, channel, author?.id].every((one) => typeof one === 'string' && madeAt(one) !== undefined) &&
    typeof content === 'string' &&
    Array.isArray(mentions)
  )
}

/** Undefined where nobody asked the bot, whose own id is `self`. */
export const readHeard = (raw: unknown, self: string): Heard | undefined => {
  if (!isMessage(raw)) return undefined
  const { id, channel_id: channel, guild_id: server, author, member, content, mentions, type } = raw
  if (author.id === self || author.bot || author.system || raw.webhook_id !== undefined) return undefined
  if (!spoken.has(type)) return undefined
  const isDirect = server === undefined
  if (!isDirect && !mentions.some((one) => one?.id === self)) return undefined
  const isMeant = isDirect || content.includes(`<@${self}>`) || content.includes(`<@!${self}>`)
  const text = textOf(content)
  if (!isMeant && text === '') return undefined
  return { id, channel, user: author.id, server, roles: member?.roles ?? [], text, isMeant }
}
