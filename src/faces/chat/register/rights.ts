// As whom somebody writes in chat: by Discord's permission, or by a role that the shop chose. In a direct message nobody does.
import { type APIInteractionGuildMember, PermissionFlagsBits } from 'discord.js'

export interface WriterRoles {
  readonly keeper: string | undefined
  readonly mechanic: string | undefined
  /** The shop's own servers; where none is named, every server that has the bot. */
  readonly servers?: readonly string[] | undefined
}

/** Where no role is named, Discord's own permissions decide. */
export const noRoles: WriterRoles = { keeper: undefined, mechanic: undefined }

const MANAGING = PermissionFlagsBits.ManageGuild | PermissionFlagsBits.Administrator

/** Who it is in a server, as far as that decides. */
export interface MemberThere {
  readonly member?: Pick<APIInteractionGuildMember, 'roles' | 'permissions'> | undefined
  readonly guild_id?: string | undefined
  /** Of an interaction: by whose installation it came. Whoever has the bot for themselves alone takes it into any server. */
  readonly authorizing_integration_owners?: Readonly<Partial<Record<string, string>>> | undefined
}

// As Discord numbers the kinds of installation: 0 is a server's, 1 a user's.
const BY_SERVER = '0'

/** Whether it is one of the shop's own servers, to which the bot itself belongs. */
const isOurs = (
  { guild_id: guild, authorizing_integration_owners: owners }: MemberThere,
  { servers }: WriterRoles,
): boolean =>
  guild !== undefined &&
  (owners === undefined || owners[BY_SERVER] === guild) &&
  (servers === undefined || servers.includes(guild))

export const roleIn = (there: MemberThere, roles: WriterRoles): 'keeper' | 'mechanic' | undefined => {
  const { member } = there
  if (!member || !isOurs(there, roles)) return undefined
  const has = (role: string | undefined): boolean => role !== undefined && member.roles.includes(role)
  if (has(roles.keeper) || (BigInt(member.permissions) & MANAGING) !== 0n) return 'keeper'
  return has(roles.mechanic) ? 'mechanic' : undefined
}
