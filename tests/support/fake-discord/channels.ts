// Channels: what people said there, what was deleted, and the messages of the bot's own, which are held to Discord's limits. The same
// nonce again, where that is asked for, is the same message.

import { type Books, violate } from './books.ts'
import type { Answer } from './faults.ts'
import { checkChannelMessage, type Json, refusalOf, type Upload } from './limits.ts'
import { newMessage } from './messages.ts'

const refuse = (status: number, code: number, message: string): Answer => ({ status, body: { message, code } })

const noSuchMessage = {
  status: 400,
  body: {
    message: 'Invalid Form Body',
    code: 50035,
    errors: { message_reference: { _errors: [{ code: 'REPLIES_UNKNOWN_MESSAGE', message: 'Unknown message' }] } },
  },
}

export function channels(books: Books, about: { applicationId: string; botUser: Json }) {
  const own: Json[] = []
  const said = new Map<string, string>()
  const shut = new Set<string>()
  const threads = new Map<string, string>()

  return {
    /** What people said may be replied to. */
    heard: (message: Json): unknown => said.set(String(message['id']), String(message['channel_id'])),
    deleted: (id: string): boolean => said.delete(id),
    /** The bot may not write there from now on. */
    shut: (channel: string): unknown => shut.add(channel),
    /** A channel is a thread of another from now on. */
    hang: (thread: string, parent: string): unknown => threads.set(thread, parent),
    messages: (): readonly Json[] => own,

    get(channel: string): Answer {
      if (shut.has(channel)) return refuse(403, 50001, 'Missing Access')
      const parent = threads.get(channel)
      const about = parent === undefined ? { type: 0, parent_id: null } : { type: 11, parent_id: parent }
      return { status: 200, body: { id: channel, name: 'bench', ...about } }
    },

    post(channel: string, sent: { body: unknown; files: readonly Upload[] }): Answer {
      const found = checkChannelMessage(sent.body, sent.files)
      for (const one of found) violate(books, 'channel-message', one)
      const refused = refusalOf(found)
      if (refused) return refused
      if (shut.has(channel)) return refuse(403, 50013, 'Missing Permissions')
      const body = sent.body as Json
      const nonce = body['nonce']
      const known = own.find(
        (one) => body['enforce_nonce'] === true && one['nonce'] === nonce && one['channel_id'] === channel,
      )
      if (known) return { status: 200, body: known }
      const reference = body['message_reference'] as Json | undefined
      if (reference) {
        const isThere = said.get(String(reference['message_id'])) === channel
        if (!isThere && reference['fail_if_not_exists'] !== false) return noSuchMessage
      }
      const made = newMessage(body, sent.files, { channel_id: channel }, about, false)
      const { webhook_id: _, interaction_metadata: __, ...message } = made
      const whole = {
        ...message,
        type: reference ? 19 : 0,
        ...(nonce === undefined ? {} : { nonce }),
        ...(reference ? { message_reference: { type: 0, channel_id: channel, ...reference } } : {}),
        // What the fake was sent, which Discord does not give back.
        allowed_mentions: body['allowed_mentions'],
      }
      own.push(whole)
      return { status: 200, body: whole }
    },
  }
}

export type Channels = ReturnType<typeof channels>
