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
import { offersOf, type Topic } from '../../../commands/topic.ts'
import { type QuestionName, questions } from '../../questions/index.ts'
import type { Input } from '../../questions/input.ts'
import type { Words } from '../../words/index.ts'

const DESCRIPTION = 100
const CHOICES = 25

/** Discord's option names: lower case, digits, hyphen; ours already are. */
const describe = (text: string): string => {
  const sentence = text.charAt(0).toUpperCase() + text.slice(1)
  return sentence.length <= DESCRIPTION ? sentence : `${sentence.slice(0, DESCRIPTION - 1)}…`
}

// Nothing is required: what is missing is asked back, with what to measure and a ladder of answers.
const option = (name: string, input: Input<unknown>, words: Words): APIApplicationCommandBasicOption => {
  const { ask } = words.inputs[name as keyof Words['inputs']]
  const base = { name, type: ApplicationCommandOptionType.String as const, required: false }
  if (input.choices && input.choices.length <= CHOICES) {
    return { ...base, description: describe(ask), choices: input.choices.map((value) => ({ name: value, value })) }
  }
  const { metric, inch } = input.example
  const like = metric === inch ? metric : `${metric} or ${inch}`
  return {
    ...base,
    description: describe(`${ask}, like ${like}`),
    ...(input.fitting ? { autocomplete: true } : {}),
  }
}

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

const topicOptions = (topic: Topic, words: Words): APIApplicationCommandOption[] => {
  if (topic.shape === 'text') return [textOption(words)]
  if (topic.shape === 'alone') return optionsOf([topic.question], words)
  if (topic.shape === 'find') return [...optionsOf(offersOf(topic), words), findOption(topic, words)]
  return topic.offers.map(({ word, question }) => ({
    name: word,
    type: ApplicationCommandOptionType.Subcommand as const,
    description: describe(words.offers[word]),
    options: optionsOf([question], words),
  }))
}

const everywhere = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
}

/** The commands of the desk, ready to be put to Discord. */
export const buildCommands = (topics: readonly Topic[], words: Words): RESTPostAPIApplicationCommandsJSONBody[] => [
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
