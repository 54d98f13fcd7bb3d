// Bench runs at the terminal: begin, add readings, finish, show, list. Whoever has the machine keeps as a keeper.
import { isRunMend, type Mending, mendReadings, type RunMend } from '../../desk/run-corrections.ts'
import { runDocument } from '../../desk/run-document.ts'
import { runRow } from '../../desk/run-rows.ts'
import { sayerFor } from '../../desk/say.ts'
import type { Shop } from '../../desk/shop.ts'
import type { Language } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import type { TerminalIo } from './terminal.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>

export interface BenchAsked {
  readonly raw: Raw
  /** Words that are no inputs: what is to be done. */
  readonly stray: readonly string[]
  readonly json: boolean
}

interface BenchParts {
  readonly shop: Shop
  readonly language: Language
  readonly io: TerminalIo
}

const codes = { done: 0, refused: 2, usage: 64 } as const
const kinds = { start: 'run', add: 'run-reading', finish: 'run-finish' } as const
const isKind = (word: string): word is keyof typeof kinds => Object.hasOwn(kinds, word)
const MOST = 200

const show = async (tag: string, json: boolean, { shop, language, io }: BenchParts): Promise<number> => {
  const found = await shop.runs.one(tag)
  if (!found) {
    io.err(language.words.bench.problems['no-such-run'].title)
    return codes.refused
  }
  const document = runDocument(found.folder, language, shop.today().today)
  if (json) {
    io.out(JSON.stringify(document, null, 2))
    return codes.done
  }
  const { tag: own, asked, state, headline, lines, readings } = document
  for (const line of [
    `${own}: ${asked} (${state.text})`,
    headline,
    ...lines.map((one) => `  ${one}`),
    ...readings.map(({ date, condition, text }, at) => `  ${at + 1}. ${date}  ${condition}  ${text}`),
  ])
    io.out(line)
  return codes.done
}

const list = async ({ shop, language, io }: BenchParts): Promise<number> => {
  const { words } = language
  const { runs } = await shop.runs.page(MOST)
  if (runs.length === 0) io.out(words.bench.page.none)
  for (const { tag, asked, state, readings } of runs.map((run) => runRow(run, words)))
    io.out(`${tag.padEnd(10)} ${asked} (${state.text}, n = ${readings})`)
  return codes.done
}

const refuse = (kept: Exclude<Mending, { kind: 'kept' }>, { language, io }: BenchParts): number => {
  const { words } = language
  const refused = kept.kind === 'refused' ? kept : { faults: [], missing: [] }
  for (const { input, got, allowed, hint } of refused.faults.map(sayerFor(language).fault))
    io.err(`  ${input}: “${got}”. ${hint} (${allowed})`)
  for (const input of refused.missing) {
    const { ask, measure } = words.register.inputs[input as keyof typeof words.register.inputs]
    io.err(`  ${input}: ${ask}. ${measure}`)
  }
  return codes.refused
}

const mend = async (word: RunMend, raw: Raw, json: boolean, parts: BenchParts): Promise<number> => {
  const kept = await mendReadings(parts.shop, word, raw, { role: 'keeper', door: 'terminal' })
  return kept.kind === 'kept' ? show(kept.run, json, parts) : refuse(kept, parts)
}

const keep = async (word: keyof typeof kinds, raw: Raw, json: boolean, parts: BenchParts): Promise<number> => {
  const { shop, language, io } = parts
  const { words } = language
  const whole = { date: shop.today().today, ...raw }
  const kept = await shop.keep(kinds[word], whole, { role: 'keeper', door: 'terminal' })
  if (kept.kind !== 'kept') return refuse(kept, parts)
  if (!json) io.out(render(words.bench.terminal.kept, () => kept.entry.id))
  return show(String(raw[word === 'start' ? 'tag' : 'run']), json, parts)
}

/** One thing done with the bench runs; returns 0, 2 refused, 64 where it was not understood. */
export const runBench = ({ raw, stray, json }: BenchAsked, parts: BenchParts): Promise<number> => {
  const [word = 'list', ...more] = stray
  if (more.length === 0) {
    if (isKind(word)) return keep(word, raw, json, parts)
    if (isRunMend(word)) return mend(word, raw, json, parts)
    if (word === 'list' && Object.keys(raw).length === 0) return list(parts)
    if (word === 'show' && typeof raw['run'] === 'string') return show(raw['run'], json, parts)
  }
  parts.io.err(parts.language.words.bench.terminal.usage)
  return Promise.resolve(codes.usage)
}
