// Who asked, and where: ids and nothing else of anybody.
import type { APIInteraction } from 'discord.js'

export interface ChatAsker {
  /** The id of a user; in a server and in a direct message it stands in different places. */
  readonly user: string
  readonly server: string | undefined
}

/** Nobody's id, where an interaction names none. */
const NOBODY = '0'

export const askerOf = ({ member, user, guild_id: server }: APIInteraction): ChatAsker => ({
  user: member?.user.id ?? user?.id ?? NOBODY,
  server,
})
