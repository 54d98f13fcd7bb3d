// Topics to Discord's application commands: one list of inputs, told in Discord's words. Pure; payloads only.
import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIApplicationCommandsJSONBody,
} from 'discord.js'
import { offersOf, type Topic, type TopicName } from '../../../commands/topic.ts'
import { completable } from '../../desk/completing.ts'
import { type QuestionName, questions } from '../../questions/index.ts'
import type { Input } from '../../questions/input.ts'
import type { Words } from '../../words/index.ts'
import { runParts } from './bench/commands.ts'
import { localised } from './localised.ts'
import { basicOption, describe } from './option.ts'
import { privacyOptions } from './privacy.ts'
import { SEEN_BY } from './reading.ts'
import { registerParts } from './register/commands.ts'
import { settingsOptions } from './settings.ts'
import { specOptions } from './spec.ts'

const option = (name: string, input: Input<unknown>, words: Words): APIApplicationCommandBasicOption =>
  basicOption(name, input, words.inputs[name as keyof Words['inputs']].ask, completable(input))

const seenByOption = ({ chat }: Words): APIApplicationCommandBasicOption => ({
  name: SEEN_BY,
  type: ApplicationCommandOptionType.String,
  required: false,
  description: describe(chat.seenBy),
  choices: [
    { name: chat.seen.all, value: 'all' },
    { name: chat.seen.me, value: 'me' },
  ],
})

const optionsOf = (names: readonly QuestionName[], words: Words): APIApplicationCommandBasicOption[] => {
  const merged = new Map<string, Input<unknown>>()
  for (const name of names) {
    for (const [input, spec] of Object.entries(questions[name].inputs)) if (!merged.has(input)) merged.set(input, spec)
  }
  return [...merged].map(([name, spec]) => option(name, spec, words))
}

const findOption = (
  topic: Extract<Topic, { shape: 'find' | 'parts' }>,
  words: Words,
): APIApplicationCommandBasicOption => ({
  name: 'find',
  type: ApplicationCommandOptionType.String,
  required: false,
  description: describe(words.inputs.find.ask),
  choices: topic.offers.map(({ word }) => ({ name: `${word}: ${words.offers[word]}`, value: word })),
})

const textOption = (words: Words): APIApplicationCommandBasicOption => ({
  name: 'text',
  type: ApplicationCommandOptionType.String,
  required: false,
  description: describe(words.inputs.text.ask),
})

// What is asked where nothing is worked out.
const ownOptions: Readonly<Partial<Record<TopicName, (words: Words) => APIApplicationCommandOption[]>>> = {
  settings: settingsOptions,
  privacy: privacyOptions,
  spec: specOptions,
}

const topicOptions = (topic: Topic, words: Words): APIApplicationCommandOption[] => {
  const seenBy = seenByOption(words)
  if (topic.shape === 'text') return [textOption(words), seenBy]
  if (topic.shape === 'settings') return ownOptions[topic.name]?.(words) ?? []
  if (topic.shape === 'alone') return [...optionsOf([topic.question], words), seenBy]
  if (topic.shape === 'find') return [...optionsOf(offersOf(topic), words), findOption(topic, words), seenBy]
  const asked = topic.offers.map(({ word, question }) => ({
    name: word,
    type: ApplicationCommandOptionType.Subcommand as const,
    description: describe(words.offers[word]),
    options: [...optionsOf([question], words), seenBy],
  }))
  return [...registerParts(topic.register ?? [], words), ...runParts(topic.runs ?? [], words), ...asked]
}

const everywhere = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
}

const commandsIn = (topics: readonly Topic[], words: Words): RESTPostAPIApplicationCommandsJSONBody[] => [
  ...topics.map((topic) => ({
    name: topic.name,
    type: ApplicationCommandType.ChatInput as const,
    description: describe(words.topics[topic.name]),
    options: topicOptions(topic, words),
    ...everywhere,
  })),
  // On anybody's message: its text is asked as it stands.
  ...(topics.some(({ shape }) => shape === 'text')
    ? [{ name: words.faces['work-it-out'], type: ApplicationCommandType.Message as const, ...everywhere }]
    : []),
]

/** The commands of the desk, ready to be put to Discord: told in `words`, and to each reader in their own language. */
export const buildCommands = (topics: readonly Topic[], words: Words): RESTPostAPIApplicationCommandsJSONBody[] =>
  localised((spoken) => commandsIn(topics, spoken), words)
