// What a test asks the fake to send: who, where, which command with which options. Everything has a default.

import type { Json } from './limits.ts'

export interface Ask {
  kind?: 'slash' | 'autocomplete' | 'component' | 'modal' | 'message-command'
  /** Name of the command; group and subcommand as the asker picked them. */
  command?: string
  group?: string
  subcommand?: string
  options?: Record<string, string | number | boolean>
  /** Autocomplete: the option being typed in. */
  focused?: string
  /** Component and modal. */
  customId?: string
  componentType?: number
  values?: readonly string[]
  fields?: Record<string, string>
  /** The message a button or a message command is on; a text stands for a message of somebody with that content. */
  message?: Json | string
  id?: string
  token?: string
  /** How old the interaction is when it is sent, in ms. */
  age?: number
  user?: Json
  /** Server id, or null for a direct message. */
  guild?: string | null
  channel?: string
  locale?: string
  guildLocale?: string
  /** Spread over the raw interaction last. */
  raw?: Json
  /** Send it even if the registered commands do not have it: somebody's client is behind. */
  stale?: boolean
}

export const people = {
  asker: { id: '300000000000000001', username: 'asker', global_name: 'Asker', discriminator: '0', avatar: null },
  other: { id: '300000000000000002', username: 'other', global_name: 'Other', discriminator: '0', avatar: null },
}
export const places = { shop: '400000000000000001', elsewhere: '400000000000000002', channel: '500000000000000001' }
