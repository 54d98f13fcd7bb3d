// `/spec`: the shop's list of where makers' figures are found: looked up by anybody, added to and taken from by keepers.

import {
  type APIApplicationCommandOption,
  type APIInteraction,
  ApplicationCommandOptionType,
  ComponentType,
  InteractionType,
} from 'discord.js'
import { sayerFor } from '../../desk/say.ts'
import { type Spec, type Specs, specInputs } from '../../desk/specs.ts'
import type { Language, Words } from '../../words/index.ts'
import { cut } from './cut.ts'
import { describe } from './option.ts'
import { textsOf } from './reading.ts'
import { refusalFor, roleIn, type WriterRoles } from './register/rights.ts'
import { type ChatReply, escapeChat, linkOf, privateLine } from './reply.ts'

const NAME = 'spec'
const TAKE_OUT = 'spec-out'
const LABEL = 100
const MESSAGE = 1900

export const specOptions = ({ chat: { spec } }: Words): APIApplicationCommandOption[] => {
  const text = (name: string, description: string) => ({
    name,
    type: ApplicationCommandOptionType.String as const,
    required: false,
    description: describe(description),
    max_length: 200,
  })
  return [
    {
      name: 'find',
      type: ApplicationCommandOptionType.Subcommand,
      description: describe(spec.offers.find),
      options: [text('text', spec.inputs.text)],
    },
    {
      name: 'add',
      type: ApplicationCommandOptionType.Subcommand,
      description: describe(spec.offers.add),
      options: specInputs.map((name) => text(name, spec.inputs[name])),
    },
  ]
}

export interface SpecParts {
  readonly specs: Specs
  readonly roles: WriterRoles
}

const lineOf = ({ title, where, covers }: Spec): string => {
  const place = /^https?:\/\/\S+$/.test(where) ? linkOf(where) : escapeChat(where)
  return `**${escapeChat(title)}**: ${place}${covers === '' ? '' : ` (${escapeChat(covers)})`}`
}

const listed = (found: readonly Spec[], { chat: { spec } }: Words, mayTakeOut: boolean): ChatReply => {
  if (found.length === 0) return privateLine(spec.none)
  const lines: string[] = []
  for (const line of found.map(lineOf)) if ([...lines, line].join('\n').length <= MESSAGE) lines.push(line)
  const reply = privateLine([spec.found, ...lines].join('\n'))
  if (!mayTakeOut) return reply
  const options = found.slice(0, 25).map(({ id, title }) => ({ label: cut(title, LABEL, '…'), value: id }))
  const select = { type: ComponentType.StringSelect as const, custom_id: TAKE_OUT, placeholder: spec.takeOut, options }
  return { ...reply, data: { ...reply.data, components: [{ type: ComponentType.ActionRow, components: [select] }] } }
}

/** The reply to `/spec` and to its list; undefined where it is something else. Told to the asker alone. */
export const handleSpec = async (
  interaction: APIInteraction,
  { specs, roles }: SpecParts,
  language: Language,
): Promise<ChatReply | undefined> => {
  const { words } = language
  const { spec } = words.chat
  const isKeeper = roleIn(interaction, roles) === 'keeper'
  const by = { role: 'keeper', door: 'chat' } as const
  if (interaction.type === InteractionType.MessageComponent) {
    if (interaction.data.custom_id !== TAKE_OUT || !('values' in interaction.data)) return undefined
    if (!isKeeper) return privateLine(refusalFor(interaction, roles, words, words.chat.settings.forbidden))
    const isGone = await specs.remove(interaction.data.values[0] ?? '', by)
    return privateLine(isGone ? spec.takenOut : spec.none)
  }
  if (interaction.type !== InteractionType.ApplicationCommand || interaction.data.name !== NAME) return undefined
  const [part] = 'options' in interaction.data ? (interaction.data.options ?? []) : []
  if (part?.type !== ApplicationCommandOptionType.Subcommand) return undefined
  const texts = textsOf(part.options)
  if (part.name === 'find') return listed(await specs.find(texts['text'] ?? ''), words, isKeeper)
  if (!isKeeper) return privateLine(refusalFor(interaction, roles, words, words.chat.settings.forbidden))
  const faults = await specs.add(texts, interaction.id, by)
  if (faults.length === 0)
    return privateLine(`${spec.added}\n${lineOf({ id: '', title: '', where: '', covers: '', ...texts })}`)
  const say = sayerFor(language)
  const lines = faults.map(say.fault).map(({ input, hint }) => `${input}: ${escapeChat(hint)}`)
  return privateLine([words.chatRegister.notKept, ...lines].join('\n'))
}
