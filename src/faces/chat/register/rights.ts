// As whom somebody writes in chat: by Discord's permission, or by a role that the shop chose. In a direct message nobody does.
import { type APIInteractionGuildMember, PermissionFlagsBits } from 'discord.js'

export interface WriterRoles {
  readonly keeper: string | undefined
  readonly mechanic: string | undefined
}

/** Where no role is named, Discord's own permissions decide. */
export const noRoles: WriterRoles = { keeper: undefined, mechanic: undefined }

const MANAGING = PermissionFlagsBits.ManageGuild | PermissionFlagsBits.Administrator

/** Who it is in a server, as far as that decides. */
export interface MemberThere {
  readonly member?: Pick<APIInteractionGuildMember, 'roles' | 'permissions'> | undefined
  readonly guild_id?: string | undefined
}

export const roleIn = ({ member, guild_id }: MemberThere, roles: WriterRoles): 'keeper' | 'mechanic' | undefined => {
  if (!member || guild_id === undefined) return undefined
  const has = (role: string | undefined): boolean => role !== undefined && member.roles.includes(role)
  if (has(roles.keeper) || (BigInt(member.permissions) & MANAGING) !== 0n) return 'keeper'
  return has(roles.mechanic) ? 'mechanic' : undefined
}
