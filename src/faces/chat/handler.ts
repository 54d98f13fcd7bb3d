// Interaction JSON in, reply out. No socket, no REST: the gateway and a test are the same thing with another callback.
import {
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  ApplicationCommandType,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import type { Desk } from '../../desk/desk.ts'
import { languageFor } from '../../words/index.ts'
import { readCommand } from './reading.ts'
import { type ChatReply, privateLine, renderReply } from './reply.ts'

export interface HandlerParts {
  readonly desk: Desk
  readonly topics: readonly Topic[]
  /** Told of bugs; gives the reference that the asker sees. */
  readonly failed: (error: unknown) => string
}

const isSlashCommand = (interaction: APIInteraction): interaction is APIChatInputApplicationCommandInteraction =>
  interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.ChatInput

/** Who asked, for fair limits: an id of a user and of the server it was asked in. */
export const askerOf = (interaction: APIInteraction): { user: string; server: string | undefined } => ({
  user: interaction.member?.user.id ?? interaction.user?.id ?? 'unknown',
  server: interaction.guild_id,
})

/** The language of whoever reads the answer: the asker's own. */
export const languageOf = (interaction: APIInteraction, desk: Desk) =>
  languageFor('locale' in interaction ? interaction.locale : undefined, desk.locale)

/** The reply to an interaction; undefined where it is not a command of ours. A bug becomes one calm line. */
export const handleInteraction = (
  interaction: APIInteraction,
  { desk, topics, failed }: HandlerParts,
): ChatReply | undefined => {
  if (!isSlashCommand(interaction)) return undefined
  const ask = readCommand(interaction.data, topics)
  if (!ask) return undefined
  const { words, locale } = languageOf(interaction, desk)
  try {
    return renderReply(desk.ask(ask.question, ask.raw, { door: 'chat', locale }), words)
  } catch (error) {
    return privateLine(words.faces.outage.replace('{reference}', failed(error)))
  }
}

export const busyReply = (interaction: APIInteraction, desk: Desk): ChatReply =>
  privateLine(languageOf(interaction, desk).words.faces['too-fast'])
