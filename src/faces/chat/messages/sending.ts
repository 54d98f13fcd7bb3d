// A reply to a message, sent under a name that the channel takes once: a second try, or a second process that heard the same message,
// makes no second reply. What Discord says of it is sorted into what became of the message, and never thrown.
import {
  DiscordAPIError,
  MessageReferenceType,
  type REST,
  type RESTPostAPIChannelMessageJSONBody,
  Routes,
} from 'discord.js'
import type { ChatReply } from '../reply.ts'
import type { Heard } from './heard.ts'

/** Channels hold what is sent to them back, and a reply that is later than this puzzles more than it helps. */
const LONGEST_MS = 60_000

export type Arrived = 'sent' | 'forbidden' | 'gone' | 'timed-out' | 'failed'

export const bodyOf = (
  { data: { flags: _, ...data } }: ChatReply,
  { id }: Pick<Heard, 'id'>,
): RESTPostAPIChannelMessageJSONBody => ({
  ...(data as RESTPostAPIChannelMessageJSONBody),
  // A message that was deleted meanwhile is not answered.
  message_reference: {
    type: MessageReferenceType.Default,
    message_id: id,
    fail_if_not_exists: true,
  },
  allowed_mentions: { parse: [], replied_user: false },
  nonce: `m${id}`,
  enforce_nonce: true,
})

const sort = (error: unknown): Arrived => {
  if (error instanceof DiscordAPIError) {
    if (error.status === 403) return 'forbidden'
    if (error.status === 404) return 'gone'
    const wrong = 'errors' in error.rawError ? error.rawError.errors : undefined
    return typeof wrong === 'object' && wrong !== null && 'message_reference' in wrong ? 'gone' : 'failed'
  }
  return error instanceof Error && (error.name === 'AbortError' || error.name === 'TimeoutError')
    ? 'timed-out'
    : 'failed'
}

export const sendReply = async (
  rest: REST,
  heard: Pick<Heard, 'id' | 'channel'>,
  reply: ChatReply,
  told: (arrived: Arrived, error: unknown) => void,
): Promise<Arrived> => {
  try {
    await rest.post(Routes.channelMessages(heard.channel), {
      body: bodyOf(reply, heard),
      files: reply.files.map(({ name, data }) => ({ name, data })),
      signal: AbortSignal.timeout(LONGEST_MS),
    })
    return 'sent'
  } catch (error) {
    const arrived = sort(error)
    told(arrived, error)
    return arrived
  }
}
