// The parts of a command that keep and show bench runs, made from what can be kept: one list of inputs, told in Discord's words.
import { type APIApplicationCommandOption, ApplicationCommandOptionType } from 'discord.js'
import type { RunWord } from '../../../../commands/topic.ts'
import { keepables } from '../../../keeping/index.ts'
import type { Input } from '../../../questions/input.ts'
import type { Words } from '../../../words/index.ts'
import { basicOption, describe } from '../option.ts'

/** Which kind a part keeps; the others show. */
export const runKeeps = { start: 'run', add: 'run-reading', finish: 'run-finish' } as const satisfies Partial<
  Record<RunWord, keyof typeof keepables>
>
export const keepsRun = (word: RunWord): word is keyof typeof runKeeps => Object.hasOwn(runKeeps, word)

/** Corrections are made where the entries stand with their ids: at the kiosk and over HTTP. */
const left: ReadonlySet<string> = new Set(['supersedes', 'why'])
/** What names something of the shop's is completed while it is typed. */
const completed: ReadonlySet<string> = new Set(['run', 'wrench'])

const optionsOf = (word: RunWord, words: Words) => {
  if (word === 'list') return []
  const kind = keepsRun(word) ? runKeeps[word] : 'run-finish'
  return Object.entries(keepables[kind].inputs)
    .filter(([name]) => (word === 'show' ? name === 'run' : !left.has(name)))
    .map(([name, input]: [string, Input<unknown>]) =>
      basicOption(
        name,
        input,
        words.register.inputs[name as keyof Words['register']['inputs']].ask,
        completed.has(name),
      ),
    )
}

export const runParts = (parts: readonly RunWord[], words: Words): APIApplicationCommandOption[] =>
  parts.map((word) => ({
    name: word,
    type: ApplicationCommandOptionType.Subcommand as const,
    description: describe(words.bench.offers[word]),
    options: optionsOf(word, words),
  }))
