// What a test does with channels: has somebody say something, deletes it, shuts the bot out, reads what it said.

import type { Channels } from './channels.ts'
import type { Json } from './limits.ts'
import { buildMessage, type Say } from './said.ts'

export const speaking = (about: {
  botUser: Json
  channels: Channels
  tell: (message: Json, guild: string | null) => number
}) => ({
  /** The bot as a user, to be mentioned or replied to. */
  botUser: about.botUser,
  /** What the bot said in channels by itself. */
  channelMessages: about.channels.messages,
  /** A message of somebody, told to every session that asked for such. Told again where it is handed over as it came. */
  say(what: Say | { told: Json }): { id: string; raw: Json; reached: number } {
    const raw = 'told' in what ? what.told : buildMessage(what, { botUser: about.botUser, now: Date.now() })
    about.channels.heard(raw)
    const guild = typeof raw['guild_id'] === 'string' ? raw['guild_id'] : null
    return { id: String(raw['id']), raw, reached: about.tell(raw, guild) }
  },
  /** The bot's replies to a message. */
  repliesTo: (id: string): readonly Json[] =>
    about.channels.messages().filter((one) => (one['message_reference'] as Json | undefined)?.['message_id'] === id),
  /** Deletes a message of somebody's. */
  unsay: about.channels.deleted,
  /** The bot may not write in this channel from now on. */
  shutChannel: about.channels.shut,
  /** A channel is a thread of another from now on. */
  hangThread: about.channels.hang,
})
