// `/settings`: what is set for the shop in chat, and by whom it may be. Kept in the store with its history.
import {
  type APIApplicationCommandOption,
  type APIInteraction,
  ApplicationCommandOptionType,
  ChannelType,
  InteractionType,
} from 'discord.js'
import { DIGEST_CHANNEL, SHOP_SCOPE } from '../../desk/digest.ts'
import type { RegisterStore } from '../../store/lazy.ts'
import type { Language, Words } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import { describe } from './option.ts'
import { roleIn, type WriterRoles } from './register/rights.ts'
import { type ChatReply, privateLine } from './reply.ts'

const NAME = 'settings'

export const settingsOptions = ({ digest: { settings } }: Words): APIApplicationCommandOption[] => [
  {
    name: 'show',
    type: ApplicationCommandOptionType.Subcommand,
    description: describe(settings.offers.show),
  },
  {
    name: 'digest',
    type: ApplicationCommandOptionType.Subcommand,
    description: describe(settings.offers.digest),
    options: [
      {
        name: 'channel',
        type: ApplicationCommandOptionType.Channel,
        required: false,
        description: describe(settings.channel),
        channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement],
      },
    ],
  },
]

export interface SettingsParts {
  readonly store: Pick<RegisterStore, 'settings' | 'set'>
  readonly roles: WriterRoles
  readonly now: () => number
}

const stateOf = async ({ store }: SettingsParts, { digest: { settings } }: Words): Promise<string> => {
  const channel = (await store.settings(SHOP_SCOPE))[DIGEST_CHANNEL]
  return channel === undefined ? settings.none : render(settings.goes, () => channel)
}

/** The reply to `/settings`; undefined where it is another command. Told to the asker alone. */
export const handleSettings = async (
  interaction: APIInteraction,
  parts: SettingsParts,
  { words }: Language,
): Promise<ChatReply | undefined> => {
  if (interaction.type !== InteractionType.ApplicationCommand || interaction.data.name !== NAME) return undefined
  const [part] = 'options' in interaction.data ? (interaction.data.options ?? []) : []
  if (part?.type !== ApplicationCommandOptionType.Subcommand) return undefined
  if (part.name === 'digest') {
    if (roleIn(interaction, parts.roles) !== 'keeper') return privateLine(words.digest.settings.forbidden)
    const [option] = part.options ?? []
    const channel = option && 'value' in option && /^\d{1,20}$/.test(String(option.value)) ? String(option.value) : null
    await parts.store.set({
      scope: SHOP_SCOPE,
      name: DIGEST_CHANNEL,
      value: channel,
      at: new Date(parts.now()).toISOString(),
      by: { role: 'keeper', door: 'chat' },
    })
  }
  return privateLine(await stateOf(parts, words))
}
