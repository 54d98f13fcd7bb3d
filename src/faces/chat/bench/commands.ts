// The parts of a command that keep and show bench runs, made from what can be kept: one list of inputs, told in Discord's words.
import { type APIApplicationCommandOption, ApplicationCommandOptionType } from 'discord.js'
import type { RunWord } from '../../../../commands/topic.ts'
import { keepables } from '../../../keeping/index.ts'
import { text } from '../../../keeping/inputs.ts'
import type { Input } from '../../../questions/input.ts'
import type { Words } from '../../../words/index.ts'
import { basicOption, describe } from '../option.ts'

/** Which kind a part keeps; the others show. */
export const runKeeps = { start: 'run', add: 'run-reading', finish: 'run-finish' } as const satisfies Partial<
  Record<RunWord, keyof typeof keepables>
>
export const keepsRun = (word: RunWord): word is keyof typeof runKeeps => Object.hasOwn(runKeeps, word)

/** What is corrected is named by its number, under words of its own. */
const left: ReadonlySet<string> = new Set(['supersedes', 'why'])
/** What names something of the shop's is completed while it is typed. */
const completed: ReadonlySet<string> = new Set(['run', 'wrench'])

const isMend = (word: RunWord): boolean => word === 'correct' || word === 'take-back'

/** Which readings are meant, and why; to correct them, all that readings have besides. */
const mendInputs = (word: RunWord): ReadonlyArray<readonly [string, Input<unknown>]> => {
  const { run, why, supersedes: _, ...rest } = keepables['run-reading'].inputs
  const all: ReadonlyArray<readonly [string, Input<unknown> | undefined]> = [
    ['run', run],
    ['reading', text({ longest: 64, sample: '2' })],
    ['why', why],
    ...(word === 'correct' ? Object.entries(rest) : []),
  ]
  return all.flatMap(([name, input]) => (input ? [[name, input] as const] : []))
}

const inputsOf = (word: RunWord): ReadonlyArray<readonly [string, Input<unknown>]> => {
  if (isMend(word)) return mendInputs(word)
  const kind = keepsRun(word) ? runKeeps[word] : 'run-finish'
  return Object.entries(keepables[kind].inputs).filter(([name]) => (word === 'show' ? name === 'run' : !left.has(name)))
}

const optionsOf = (word: RunWord, words: Words) => {
  if (word === 'list') return []
  return inputsOf(word).map(([name, input]) =>
    basicOption(name, input, words.register.inputs[name as keyof Words['register']['inputs']].ask, completed.has(name)),
  )
}

export const runParts = (parts: readonly RunWord[], words: Words): APIApplicationCommandOption[] =>
  parts.map((word) => ({
    name: word,
    type: ApplicationCommandOptionType.Subcommand as const,
    description: describe(words.bench.offers[word]),
    options: optionsOf(word, words),
  }))
