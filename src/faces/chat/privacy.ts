// `/privacy`: what is kept of who asks, told in full, and erased at once when they say so.
import {
  type APIApplicationCommandOption,
  type APIInteraction,
  ApplicationCommandOptionType,
  InteractionType,
} from 'discord.js'
import type { RegisterStore } from '../../store/lazy.ts'
import type { Language, Words } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import { askerOf } from './asker.ts'
import { type Likings, ownScope } from './liking.ts'
import { describe } from './option.ts'
import type { Recent } from './recent.ts'
import { type ChatReply, escapeChat, privateLine } from './reply.ts'

const NAME = 'privacy'

export const privacyOptions = ({ chat: { privacy } }: Words): APIApplicationCommandOption[] =>
  (['show', 'erase'] as const).map((name) => ({
    name,
    type: ApplicationCommandOptionType.Subcommand,
    description: describe(privacy.offers[name]),
  }))

export interface PrivacyParts {
  readonly store: Pick<RegisterStore, 'own' | 'forgetOwn'>
  readonly likings: Likings
  readonly recent: Recent
  /** After so many days without use, own settings are erased. */
  readonly retentionDays: number
}

/** The reply to `/privacy`; undefined where it is another command. Told to the asker alone. */
export const handlePrivacy = async (
  interaction: APIInteraction,
  { store, likings, recent, retentionDays }: PrivacyParts,
  { words: { chat } }: Language,
): Promise<ChatReply | undefined> => {
  if (interaction.type !== InteractionType.ApplicationCommand || interaction.data.name !== NAME) return undefined
  const [part] = 'options' in interaction.data ? (interaction.data.options ?? []) : []
  const { user } = askerOf(interaction)
  const owner = ownScope(user)
  if (part?.name === 'erase') {
    await store.forgetOwn(owner)
    recent.forget(user)
    likings.changed(owner)
    return privateLine(chat.privacy.erased)
  }
  const kept = Object.entries(await store.own(owner)).map(([name, value]) => `${name} ${escapeChat(value)}`)
  const told = kept.length > 0 ? render(chat.privacy.kept, () => kept.join(', ')) : chat.privacy.nothing
  return privateLine(`${told}\n\n${render(chat.privacy.about, () => String(retentionDays))}`)
}
