// Interaction JSON to a question: which topic, which offer, and the options as they were typed. Nothing of Discord's beyond JSON.
import {
  type APIApplicationCommandInteractionDataOption,
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  type APIMessageApplicationCommandInteraction,
  ApplicationCommandOptionType,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import type { RawInputs } from '../../desk/read.ts'
import type { QuestionName } from '../../questions/index.ts'

export interface ChatAsk {
  readonly question: QuestionName
  readonly raw: RawInputs
  readonly seen: Seen
}
/** Free text, of an option or of the message that a command was used on. */
export interface ChatText {
  readonly text: unknown
  readonly seen: Seen
}

/** Who sees the answer: everybody who is there, or the asker alone. */
export type Seen = 'all' | 'me'
export const SEEN_BY = 'seen-by'

type Options = readonly APIApplicationCommandInteractionDataOption[]

// Options come as texts; should a number or a truth come in their place it is handed on as it is, and told as a fault.
const rawOf = (options: Options): Record<string, unknown> => {
  const raw: Record<string, unknown> = Object.create(null)
  for (const option of options) if ('value' in option) raw[option.name] = option.value
  return raw
}

/** Options as texts, for what is kept or set: every value as it is told. */
export const textsOf = (options: Options = []): Record<string, string> =>
  Object.fromEntries(options.flatMap((one) => ('value' in one ? [[one.name, String(one.value)] as const] : [])))

/** The part of a command of parts, where `wordIn` knows its word for the topic; undefined where it is another's. */
export const readPart = <Word extends string>(
  interaction: APIInteraction,
  topics: readonly Topic[],
  wordIn: (topic: Extract<Topic, { shape: 'parts' }>, name: string) => Word | undefined,
): { readonly word: Word; readonly raw: Readonly<Record<string, string>> } | undefined => {
  if (interaction.type !== InteractionType.ApplicationCommand || !('options' in interaction.data)) return undefined
  const topic = topics.find(({ name }) => name === interaction.data.name)
  const [part] = interaction.data.options ?? []
  if (topic?.shape !== 'parts' || part?.type !== ApplicationCommandOptionType.Subcommand) return undefined
  const word = wordIn(topic, part.name)
  return word && { word, raw: textsOf(part.options) }
}

// Told by the asker; else an answer to a command is for all who talk there.
const withSeen = (options: Options): { readonly raw: Record<string, unknown>; readonly seen: Seen } => {
  const { [SEEN_BY]: told, ...raw } = rawOf(options)
  return { raw, seen: told === 'me' ? 'me' : 'all' }
}

/** The question of a slash command; undefined where the command or its part is not (or no longer) ours. */
export const readCommand = (
  data: Pick<APIChatInputApplicationCommandInteraction['data'], 'name'> & { readonly options?: Options },
  topics: readonly Topic[],
): ChatAsk | ChatText | undefined => {
  const topic = topics.find(({ name }) => name === data.name)
  if (!topic) return undefined
  const options = data.options ?? []
  if (topic.shape === 'settings') return undefined
  const { raw, seen } = withSeen(options)
  if (topic.shape === 'text') return { text: raw['text'], seen }
  if (topic.shape === 'alone') return { question: topic.question, raw, seen }
  if (topic.shape === 'find') {
    const { find, ...rest } = raw
    const offer = find === undefined ? topic.offers[0] : topic.offers.find(({ word }) => word === find)
    return offer && { question: offer.question, raw: rest, seen }
  }
  const part = options.find(({ type }) => type === ApplicationCommandOptionType.Subcommand)
  const offer = topic.offers.find(({ word }) => word === part?.name)
  return offer && { question: offer.question, ...withSeen((part && 'options' in part ? part.options : []) ?? []) }
}

/** The text of the message that a message command was used on: for whoever used it, who may show it to all. */
export const readMessage = ({ target_id, resolved }: APIMessageApplicationCommandInteraction['data']): ChatText => ({
  text: resolved.messages[target_id]?.content,
  seen: 'me',
})
