// The terminal door: arguments in, lines and an exit code out. Knows the desk and how lines are laid out, nothing of processes.

import { topics } from '../../../commands/index.ts'
import { offersOf } from '../../../commands/topic.ts'
import { checkInputs } from '../../desk/checking.ts'
import { askKnowing, askTextKnowing, type Desk } from '../../desk/desk.ts'
import type { Shop } from '../../desk/shop.ts'
import type { Answer } from '../../questions/answer.ts'
import { isQuestionName, type QuestionName, questions } from '../../questions/index.ts'
import type { Inputs } from '../../questions/question.ts'
import { languageFor, type Words } from '../../words/index.ts'
import { foremostLines, headlineOf, sectionsOf } from '../wording.ts'
import { runBench } from './bench.ts'
import { runCheck } from './check.ts'

export interface TerminalIo {
  readonly out: (line: string) => void
  readonly err: (line: string) => void
  /** What somebody types or pipes in, line by line; absent where nobody can. */
  readonly lines?: AsyncIterable<string> | undefined
}

/** 1 (an outage or a bug) is the process's to give. */
export const exitCodes = { answered: 0, refused: 2, incomplete: 3, usage: 64 } as const

const usage = (words: Words): string[] => [
  'npm run ask -- <question> input="value" …',
  '',
  '  npm run ask -- adapter-setting torque="120 N·m" lever="380 mm" adapter="45 mm@30"',
  '  npm run ask -- "75 lb-ft, 18 in wrench, 3 in crowfoot straight, what do I set?"',
  '  npm run ask -- adapter-setting --help    the inputs of a question',
  '  --json                                   the answer document',
  '  npm run ask -- check wrench=W-07 gauge=S-1 distance="400 mm"    a check of a wrench, reading by reading',
  '  npm run ask -- bench add run=B-01 condition=A torque="80; 81 N·m"    readings of a bench run',
  '',
  ...topics.flatMap((topic) => offersOf(topic).map((name) => `  ${name.padEnd(17)} ${words.questions[name]}`)),
]

type Asks = Readonly<Record<string, { readonly ask: string } | undefined>>

const listedInputs = (
  inputs: Inputs,
  asks: Asks,
  system: 'metric' | 'inch',
  isNeeded: (input: string) => boolean,
): string[] =>
  Object.entries(inputs).map(([input, spec]) => {
    const offered = spec.choices ?? spec.suggestions
    const choices = offered ? ` (${offered.join(' | ')})` : ''
    const sample = `${input}="${spec.example[system]}"`.padEnd(34)
    return `  ${spec.needed || isNeeded(input) ? '*' : ' '} ${sample} ${asks[input]?.ask ?? ''}${choices}`
  })

const inputsOf = (name: QuestionName, words: Words, system: 'metric' | 'inch'): string[] => {
  const question = questions[name]
  const isFirst = (input: string): boolean => question.oneOf.some(([first]) => first === input)
  return [`${name}: ${words.questions[name]}`, ...listedInputs(question.inputs, words.inputs, system, isFirst)]
}

const layOut = (answer: Answer, words: Words): string[] => {
  const sections = sectionsOf(answer, words).flatMap(({ title, lines }) => [
    '',
    title,
    ...lines.map((line) => `  ${line}`),
  ])
  return [...foremostLines(answer), headlineOf(answer), ...sections]
}

interface Parsed {
  readonly raw: Record<string, string | string[]>
  readonly json: boolean
  readonly help: boolean
  readonly stray: readonly string[]
}

const parseArguments = (argv: readonly string[]): Parsed => {
  const raw: Record<string, string | string[]> = Object.create(null)
  const stray: string[] = []
  for (const word of argv.filter((one) => !flags.includes(one))) {
    const at = word.indexOf('=')
    if (at <= 0 || word.startsWith('-')) {
      stray.push(word)
      continue
    }
    const name = word.slice(0, at)
    const value = word.slice(at + 1)
    const before = raw[name]
    raw[name] = before === undefined ? value : [...(typeof before === 'string' ? [before] : before), value]
  }
  return { raw, stray, json: argv.includes('--json'), help: argv.includes('--help') }
}

const flags: readonly string[] = ['--json', '--help']

const tell = (answer: Answer, json: boolean, io: TerminalIo, words: Words): number => {
  for (const line of json ? [JSON.stringify(answer, null, 2)] : layOut(answer, words)) io.out(line)
  return exitCodes[answer.status]
}

/** Words that begin with no question's name are one text in the asker's own words. A lone word is a name that was mistyped. */
const tellText = async (argv: readonly string[], desk: Desk, io: TerminalIo, words: Words): Promise<number> => {
  const text = argv.filter((word) => !flags.includes(word)).join(' ')
  if (/^[\w-]*$/.test(text) || argv.includes('--help')) {
    for (const line of [`No question is called “${argv[0]}”.`, '', ...usage(words)]) io.err(line)
    return exitCodes.usage
  }
  return tell(await askTextKnowing(desk, text, { door: 'terminal' }), argv.includes('--json'), io, words)
}

const check = (argv: readonly string[], desk: Desk, io: TerminalIo, shop: Shop): Promise<number> => {
  const { raw, stray, json, help } = parseArguments(argv)
  const language = languageFor(undefined, desk.locale)
  if (help || stray.length > 0) {
    const print = help ? io.out : io.err
    if (!help) io.err(`Not an input: ${stray.join(' ')}. Write input="value".`)
    const listed = listedInputs(checkInputs, language.words.register.inputs, desk.system, () => false)
    for (const line of listed) print(line)
    return Promise.resolve(help ? exitCodes.answered : exitCodes.usage)
  }
  return runCheck(raw, { shop, language, io, json })
}

/** Answers one question, or goes through the check of a wrench where there is a register; returns one of `exitCodes`. */
export const runTerminal = async (
  argv: readonly string[],
  desk: Desk,
  io: TerminalIo,
  shop?: Shop,
): Promise<number> => {
  const { words } = languageFor(undefined, desk.locale)
  const [name, ...rest] = argv
  if (name === undefined || name === '--help') {
    for (const line of usage(words)) (name === undefined ? io.err : io.out)(line)
    return name === undefined ? exitCodes.usage : 0
  }
  if (name === 'check' && shop) return check(rest, desk, io, shop)
  if (name === 'bench' && shop)
    return runBench(parseArguments(rest), { shop, language: languageFor(undefined, desk.locale), io })
  if (!isQuestionName(name)) return tellText(argv, desk, io, words)
  const { raw, stray, json, help } = parseArguments(rest)
  if (help) {
    for (const line of inputsOf(name, words, desk.system)) io.out(line)
    return 0
  }
  if (stray.length > 0) {
    for (const line of [
      `Not an input: ${stray.join(' ')}. Write input="value".`,
      '',
      ...inputsOf(name, words, desk.system),
    ])
      io.err(line)
    return exitCodes.usage
  }
  return tell(await askKnowing(desk, name, raw, { door: 'terminal' }), json, io, words)
}
