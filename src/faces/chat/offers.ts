// Autocomplete: what is offered while an option is being typed. It holds nobody to it; free text is sent as it stands.

import {
  type APIApplicationCommandAutocompleteInteraction,
  type APICommandAutocompleteInteractionResponseCallbackData,
  type APIInteraction,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import { completionsFor } from '../../desk/completing.ts'
import type { System } from '../../desk/own-units.ts'
import { type CardKind, cardKinds } from '../../desk/shop.ts'
import { questions } from '../../questions/index.ts'
import { topicIn, type Words } from '../../words/index.ts'
import { cut } from './cut.ts'
import { readCommand } from './reading.ts'

const MOST_OFFERS = 25
/** Of a name and of a value. */
const LONGEST = 100

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

export interface OfferParts {
  /** The words of whoever types. */
  readonly words: (interaction: APIInteraction) => Words
  readonly find?: FindInShop | undefined
  /** The units that come first for whoever types. */
  readonly system: (interaction: APIInteraction) => Promise<System>
  /** What they typed last for an input. */
  readonly recent: (interaction: APIInteraction, input: string) => readonly string[]
}

const isCardKind = (name: string): name is CardKind => (cardKinds as readonly string[]).includes(name)

/** The offers for the option that is being typed; none where it has none, is not ours, or the register is away. */
export const offersFor = async (
  interaction: APIApplicationCommandAutocompleteInteraction,
  topics: readonly Topic[],
  { find, words, system, recent }: OfferParts,
): Promise<APICommandAutocompleteInteractionResponseCallbackData> => {
  const { data } = interaction
  const typed = focusedIn(data.options as readonly TypedOption[] | undefined)
  const text = typeof typed?.value === 'string' ? typed.value : ''
  const kind = typed?.name === 'bench' ? 'run' : typed?.name
  if (find && kind !== undefined && isCardKind(kind) && topics.some(({ name }) => name === data.name)) {
    const found = await find(kind, text).catch(() => [])
    return {
      choices: found
        .slice(0, MOST_OFFERS)
        .map(({ tag, name }) => ({ name: cut(`${tag}: ${name}`, LONGEST, '…'), value: tag })),
    }
  }
  const ask = readCommand(data, topics)
  if (!ask || !('question' in ask) || !typed) return { choices: [] }
  const { inputs } = questions[ask.question]
  const input = Object.hasOwn(inputs, typed.name) ? inputs[typed.name] : undefined
  if (!input) return { choices: [] }
  const last = recent(interaction, typed.name).filter((one) => one.toLowerCase().startsWith(text.trim().toLowerCase()))
  const fitting = completionsFor(input, typed.name, text, await system(interaction))
  const called = (value: string): string => (input.kind === 'topic' ? topicIn(words(interaction), value) : value)
  const all = [...new Set(text.trim() === '' ? [...last, ...fitting] : [...fitting, ...last])]
  return {
    choices: all
      .filter((value) => value.length <= LONGEST)
      .slice(0, MOST_OFFERS)
      .map((value) => ({ name: called(value), value })),
  }
}
