// The register's parts of a command, made from what can be kept: one list of inputs, told in Discord's words.
import { type APIApplicationCommandOption, ApplicationCommandOptionType } from 'discord.js'
import type { RegisterWord } from '../../../../commands/topic.ts'
import { shows } from '../../../desk/fleet-index.ts'
import { keepables } from '../../../keeping/index.ts'
import type { Input } from '../../../questions/input.ts'
import type { Kind } from '../../../register/records.ts'
import type { Words } from '../../../words/index.ts'
import { basicOption, describe } from '../option.ts'

/** Inputs that name something of the shop's, and are completed while they are typed. */
export const completed: ReadonlySet<string> = new Set(['wrench', 'gauge'])

/** Which kind a part keeps, and which of its inputs are not asked there. */
export const keeps: Readonly<
  Partial<Record<RegisterWord, { readonly kind: Kind; readonly without: readonly string[] }>>
> = {
  add: { kind: 'wrench', without: ['supersedes', 'why'] },
  event: { kind: 'event', without: ['supersedes', 'why'] },
  retire: { kind: 'event', without: ['supersedes', 'why', 'what', 'from', 'setting'] },
}

/** The tag that a new wrench gets is typed; that of one that is there is picked. */
const ask = (name: string, input: Input<unknown>, words: Words) =>
  basicOption(name, input, words.register.inputs[name as keyof Words['register']['inputs']].ask, completed.has(name))

const wrenchOption = (words: Words) => ask('wrench', keepables.event.inputs['wrench'] as Input<unknown>, words)

const optionsOf = (word: RegisterWord, words: Words) => {
  const kept = keeps[word]
  if (kept) {
    const inputs = Object.entries(keepables[kept.kind].inputs).filter(([name]) => !kept.without.includes(name))
    return inputs.map(([name, input]) => ask(name, input, words))
  }
  if (word === 'list')
    return [
      {
        name: 'show',
        type: ApplicationCommandOptionType.String as const,
        required: false,
        description: describe(words.chatRegister.show),
        choices: shows.map((value) => ({ name: words.history.list[value], value })),
      },
    ]
  return word === 'due' ? [] : [wrenchOption(words)]
}

export const registerParts = (parts: readonly RegisterWord[], words: Words): APIApplicationCommandOption[] =>
  parts.map((word) => ({
    name: word,
    type: ApplicationCommandOptionType.Subcommand as const,
    description: describe(words.chatRegister.offers[word]),
    options: optionsOf(word, words),
  }))
