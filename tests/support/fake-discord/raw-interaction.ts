// Builds the raw interaction that Discord would send for what a test asks.

import { type Ask, people, places } from './ask.ts'
import { isRecord, type Json } from './limits.ts'
import { buildData, messageOf } from './raw-data.ts'
import { snowflake } from './snowflake.ts'

const interactionTypes = { slash: 2, 'message-command': 2, component: 3, autocomplete: 4, modal: 5 } as const

export function buildInteraction(
  ask: Ask,
  about: { applicationId: string; commands: readonly Json[]; now: number },
): Json {
  const kind = ask.kind ?? 'slash'
  const id = ask.id ?? snowflake(about.now - (ask.age ?? 0))
  const guild = ask.guild === undefined ? places.shop : ask.guild
  const user = { ...people.asker, ...ask.user }
  const channel = ask.channel ?? places.channel
  const guildLocale = ask.guildLocale ?? 'en-US'
  const data = buildData(ask, about.commands)
  const member = {
    user,
    nick: null,
    avatar: null,
    roles: [],
    joined_at: '2024-01-01T00:00:00.000000+00:00',
    premium_since: null,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
    permissions: '2248473465835073',
    communication_disabled_until: null,
  }
  const where =
    guild === null
      ? { channel: { id: channel, type: 1, flags: 0, recipients: [user] }, user, context: 1 }
      : {
          channel: { id: channel, type: 0, name: 'torque', guild_id: guild, flags: 0, nsfw: false, parent_id: null },
          guild_id: guild,
          guild: { id: guild, locale: guildLocale, features: [] },
          guild_locale: guildLocale,
          member,
          context: 0,
        }
  return {
    id,
    application_id: about.applicationId,
    type: interactionTypes[kind],
    data,
    token: ask.token ?? Buffer.from(`interaction:${id}:${'fake'.repeat(24)}`).toString('base64url'),
    version: 1,
    channel_id: channel,
    ...where,
    locale: ask.locale ?? 'en-US',
    app_permissions: '562949953601536',
    entitlements: [],
    authorizing_integration_owners: guild === null ? { '0': '0' } : { '0': guild },
    attachment_size_limit: 10_485_760,
    ...(kind === 'component' && { message: messageOf(ask) }),
    ...(kind === 'modal' && isRecord(ask.message) && { message: ask.message }),
    ...ask.raw,
  }
}
