// Autocomplete: what is offered while an option is being typed. It holds nobody to it; free text is sent as it stands.
import {
  type APIApplicationCommandAutocompleteInteraction,
  type APICommandAutocompleteInteractionResponseCallbackData,
  type APIInteraction,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import { type CardKind, cardKinds } from '../../desk/shop.ts'
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

/** Finds wrenches or gauges of the shop by any part of tag or name. */
export type FindInShop = (
  kind: CardKind,
  text: string,
) => Promise<ReadonlyArray<{ readonly tag: string; readonly name: string }>>

const isCardKind = (name: string): name is CardKind => (cardKinds as readonly string[]).includes(name)

const NAME = 100

/** The offers for the option that is being typed; none where it has none, is not ours, or the register is away. */
export const offersFor = async (
  { data }: APIApplicationCommandAutocompleteInteraction,
  topics: readonly Topic[],
  find?: FindInShop,
): Promise<APICommandAutocompleteInteractionResponseCallbackData> => {
  const typed = focusedIn(data.options as readonly TypedOption[] | undefined)
  if (find && typed && isCardKind(typed.name) && topics.some(({ name }) => name === data.name)) {
    const found = await find(typed.name, typeof typed.value === 'string' ? typed.value : '').catch(() => [])
    return {
      choices: found
        .slice(0, MOST_OFFERS)
        .map(({ tag, name }) => ({ name: `${tag}: ${name}`.slice(0, NAME), value: tag })),
    }
  }
  const ask = readCommand(data, topics)
  const input =
    ask && 'question' in ask && typed && Object.hasOwn(questions[ask.question].inputs, typed.name)
      ? questions[ask.question].inputs[typed.name]
      : undefined
  const fitting = input?.fitting?.(typeof typed?.value === 'string' ? typed.value : '') ?? []
  return { choices: fitting.slice(0, MOST_OFFERS).map((value) => ({ name: value, value })) }
}
