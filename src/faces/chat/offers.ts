// Autocomplete: what is offered while an option is being typed. It holds nobody to it; free text is sent as it stands.
import {
  type APIApplicationCommandAutocompleteInteraction,
  type APICommandAutocompleteInteractionResponseCallbackData,
  type APIInteraction,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import { questions } from '../../questions/index.ts'
import { readCommand } from './reading.ts'

const MOST_OFFERS = 25

export const isTyping = (interaction: APIInteraction): interaction is APIApplicationCommandAutocompleteInteraction =>
  interaction.type === InteractionType.ApplicationCommandAutocomplete

interface Typed {
  readonly name: string
  readonly value: unknown
}

type TypedOption = { name: string; value?: unknown; focused?: boolean; options?: readonly TypedOption[] }

const focusedIn = (options: readonly TypedOption[] = []): Typed | undefined => {
  for (const option of options) {
    if (option.focused) return { name: option.name, value: option.value }
    const inner = focusedIn(option.options)
    if (inner) return inner
  }
  return undefined
}

/** The offers for the option that is being typed; none where it has none, or is not ours. */
export const offersFor = (
  { data }: APIApplicationCommandAutocompleteInteraction,
  topics: readonly Topic[],
): APICommandAutocompleteInteractionResponseCallbackData => {
  const typed = focusedIn(data.options as readonly TypedOption[] | undefined)
  const ask = readCommand(data, topics)
  const input =
    ask && 'question' in ask && typed && Object.hasOwn(questions[ask.question].inputs, typed.name)
      ? questions[ask.question].inputs[typed.name]
      : undefined
  const fitting = input?.fitting?.(typeof typed?.value === 'string' ? typed.value : '') ?? []
  return { choices: fitting.slice(0, MOST_OFFERS).map((value) => ({ name: value, value })) }
}
