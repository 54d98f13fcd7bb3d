// One list of commands in every language that is spoken here: the same payload built in each, laid over the first.
// Names of options stay as they are: they are what an answer calls its inputs, in every language and at every door.
import {
  ApplicationCommandOptionType,
  type Locale,
  type LocalizationMap,
  type RESTPostAPIApplicationCommandsJSONBody,
} from 'discord.js'
import { type LocaleName, languages, type Words } from '../../words/index.ts'

/** What Discord calls the languages that are spoken here; where it has two for one, both are told. */
const tagsOf: Readonly<Record<LocaleName, readonly `${Locale}`[]>> = {
  // Without en-US, whoever is set to it would be shown en-GB, or nothing.
  en: ['en-US', 'en-GB'],
  de: ['de'],
  // Discord has one German.
  'de-CH': [],
  es: ['es-ES'],
  'es-419': ['es-419'],
  fr: ['fr'],
}

type Node = { readonly [name: string]: unknown }

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value)

// Commands of a slash and their parts; a message command's name is a text of its own.
const isNamedPart = ({ type, description }: Node, depth: number): boolean =>
  description !== undefined && (depth === 0 || type === ApplicationCommandOptionType.Subcommand)

const nameIn = (name: unknown, { chat }: Words): string =>
  (chat.names as Readonly<Record<string, string>>)[String(name)] ?? String(name)

interface Spoken {
  readonly tags: readonly `${Locale}`[]
  readonly words: Words
  readonly node: Node
}

const mapOf = (spoken: readonly Spoken[], textIn: (one: Spoken) => string): LocalizationMap =>
  Object.fromEntries(spoken.flatMap((one) => one.tags.map((tag) => [tag, textIn(one)])))

const overlay = (base: Node, spoken: readonly Spoken[], depth: number): Node => {
  const told: Record<string, unknown> = { ...base }
  const isChoice = 'value' in base
  const isMessageCommand = depth === 0 && base['description'] === undefined
  if (isNamedPart(base, depth)) told['name_localizations'] = mapOf(spoken, ({ words }) => nameIn(base['name'], words))
  else if (isChoice || isMessageCommand) told['name_localizations'] = mapOf(spoken, ({ node }) => String(node['name']))
  if (base['description'] !== undefined)
    told['description_localizations'] = mapOf(spoken, ({ node }) => String(node['description']))
  for (const list of ['options', 'choices']) {
    const inner = base[list]
    if (!Array.isArray(inner)) continue
    told[list] = inner.map((one: unknown, n) =>
      isNode(one)
        ? overlay(
            one,
            spoken.map((other) => ({ ...other, node: (other.node[list] as Node[])[n] as Node })),
            depth + 1,
          )
        : one,
    )
  }
  return told
}

/** The commands as `build` makes them for the words of one language, with those of every language laid over. */
export const localised = (
  build: (words: Words) => readonly RESTPostAPIApplicationCommandsJSONBody[],
  first: Words,
): RESTPostAPIApplicationCommandsJSONBody[] => {
  const lists = (Object.keys(languages) as LocaleName[]).map((name) => ({
    tags: tagsOf[name],
    words: languages[name].words as Words,
    list: build(languages[name].words),
  }))
  return build(first).map(
    (command, n) =>
      overlay(
        command as unknown as Node,
        lists.map(({ tags, words, list }) => ({ tags, words, node: list[n] as unknown as Node })),
        0,
      ) as unknown as RESTPostAPIApplicationCommandsJSONBody,
  )
}
