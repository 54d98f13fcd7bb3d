// Interaction JSON in, reply out. No socket, no REST: the gateway and a test are the same thing with another callback.
import {
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  type APIMessageApplicationCommandInteraction,
  ApplicationCommandType,
  InteractionType,
  MessageFlags,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import { Outage } from '../../core/outage.ts'
import type { Desk } from '../../desk/desk.ts'
import { languageFor, type Words } from '../../words/index.ts'
import type { Pictures } from '../pictures.ts'
import type { Press } from './answer/press.ts'
import { carriedFor, hereOf, replyOf, type WorkParts, workOut } from './answer/worked.ts'
import type { BenchDoor } from './bench/door.ts'
import { noLikings } from './liking.ts'
import { handlePrivacy, type PrivacyParts } from './privacy.ts'
import { type ChatAsk, type ChatText, readCommand, readMessage } from './reading.ts'
import type { Recent } from './recent.ts'
import type { RegisterDoor } from './register/door.ts'
import { noRoles } from './register/rights.ts'
import { type ChatReply, privateLine } from './reply.ts'
import { handleSettings, type SettingsParts } from './settings.ts'
import { handleSpec, type SpecParts } from './spec.ts'

export interface HandlerParts {
  readonly desk: Desk
  readonly topics: readonly Topic[]
  readonly pictures: Pictures
  /** Absent where no register is kept. */
  readonly register?: RegisterDoor | undefined
  readonly bench?: BenchDoor | undefined
  readonly settings?: SettingsParts | undefined
  readonly privacy?: PrivacyParts | undefined
  readonly spec?: SpecParts | undefined
  /** How answers are worked out for who asks, and what their keys do; absent where nothing is set and nothing can be pressed. */
  readonly answers?: (WorkParts & { readonly press: Press }) | undefined
  readonly recent?: Recent | undefined
  /** Told of bugs; gives the reference that the asker sees. */
  readonly failed: (error: unknown) => string
}

const isSlashCommand = (interaction: APIInteraction): interaction is APIChatInputApplicationCommandInteraction =>
  interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.ChatInput

const isMessageCommand = (interaction: APIInteraction): interaction is APIMessageApplicationCommandInteraction =>
  interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.Message

const askOf = (interaction: APIInteraction, topics: readonly Topic[]): ChatAsk | ChatText | undefined => {
  if (isMessageCommand(interaction)) return readMessage(interaction.data)
  return isSlashCommand(interaction) ? readCommand(interaction.data, topics) : undefined
}

/** The language of whoever reads the answer: the asker's own. */
export const languageOf = (interaction: APIInteraction, desk: Desk) =>
  languageFor('locale' in interaction ? interaction.locale : undefined, desk.locale)

/** One sentence for what failed here and not at the asker, with the reference under which it is logged. */
export const calmLine = (error: unknown, words: Words, failed: HandlerParts['failed']): string => {
  const away = error instanceof Outage && error.isWriting ? words.writing.away : words.faces['register-away']
  return (error instanceof Outage ? away : words.faces.outage).replace('{reference}', failed(error))
}

// In a quiet channel all is for the asker alone, whatever it is; but what somebody shows to all is refused where it is pressed.
const asQuiet = async (reply: ChatReply, interaction: APIInteraction, parts: WorkParts): Promise<ChatReply> => {
  if (reply.modal || reply.way) return reply
  const { isQuiet } = await hereOf(interaction, parts)
  if (!isQuiet) return reply
  return { ...reply, data: { ...reply.data, flags: (reply.data.flags ?? 0) | MessageFlags.Ephemeral } }
}

/** The reply to an interaction; undefined where it is none of ours. A bug becomes one calm line. */
export const handleInteraction = async (
  interaction: APIInteraction,
  { desk, topics, pictures, register, bench, settings, privacy, spec, answers, recent, failed }: HandlerParts,
): Promise<ChatReply | undefined> => {
  const language = languageOf(interaction, desk)
  const { words } = language
  const parts: WorkParts = answers ?? { desk, pictures, likings: noLikings, roles: noRoles }
  try {
    const ours =
      (await register?.handle(interaction, topics, language)) ??
      (await bench?.handle(interaction, topics, language)) ??
      (settings && (await handleSettings(interaction, settings, language))) ??
      (privacy && (await handlePrivacy(interaction, privacy, language))) ??
      (spec && (await handleSpec(interaction, spec, language))) ??
      (await answers?.press(interaction, language))
    if (ours) return asQuiet(ours, interaction, parts)
    const ask = askOf(interaction, topics)
    if (!ask) return undefined
    const here = await hereOf(interaction, parts)
    if ('raw' in ask) recent?.note(here.user, ask.raw)
    const worked = await workOut(carriedFor(ask, here.user, await parts.likings.own(here.user)), parts, here, language)
    return replyOf(worked, parts, here, language, ask.seen)
  } catch (error) {
    return privateLine(calmLine(error, words, failed))
  }
}

export const busyReply = (interaction: APIInteraction, desk: Desk): ChatReply =>
  privateLine(languageOf(interaction, desk).words.faces['too-fast'])
