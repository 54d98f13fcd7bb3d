// As whom somebody writes in chat: by Discord's permission, or by a role that the shop chose. In a direct message nobody does.
import { type APIInteractionGuildMember, PermissionFlagsBits } from 'discord.js'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'

export interface WriterRoles {
  readonly keeper: string | undefined
  readonly mechanic: string | undefined
  /** The shop's own servers; where none is named, every server that has the bot. */
  readonly servers?: readonly string[] | undefined
  /** Whether strangers may take the bot into servers of their own: then nobody writes before the shop's own are named. */
  readonly isOpenToAll?: () => boolean
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
  { servers, isOpenToAll }: WriterRoles,
): boolean =>
  guild !== undefined &&
  (owners === undefined || owners[BY_SERVER] === guild) &&
  (servers === undefined ? isOpenToAll?.() !== true : servers.includes(guild))

export const roleIn = (there: MemberThere, roles: WriterRoles): 'keeper' | 'mechanic' | undefined => {
  const { member } = there
  if (!member || !isOurs(there, roles)) return undefined
  const has = (role: string | undefined): boolean => role !== undefined && member.roles.includes(role)
  if (has(roles.keeper) || (BigInt(member.permissions) & MANAGING) !== 0n) return 'keeper'
  return has(roles.mechanic) ? 'mechanic' : undefined
}

/** What is said to who may not write: what the shop has to do first where nobody may, else the words of the door. */
export const refusalFor = ({ guild_id }: MemberThere, roles: WriterRoles, words: Words, otherwise: string): string =>
  guild_id !== undefined && roles.servers === undefined && roles.isOpenToAll?.() === true
    ? render(words.chatRegister.openToAll, () => guild_id)
    : otherwise
