// A check of a wrench at the terminal: the plan, then reading by reading as they are typed or piped in, the verdict growing, and
// in the end whether to keep it. Without lines to read it prints what is known. Whoever has the machine keeps as a keeper.

import { checkingOf, slipsIn, toKeep } from '../../desk/checking.ts'
import { sayerFor } from '../../desk/say.ts'
import type { Shop } from '../../desk/shop.ts'
import type { CheckDocument } from '../../questions/check-document.ts'
import { signedText } from '../../words/deviation-text.ts'
import type { Language } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import type { TerminalIo } from './terminal.ts'

interface CheckParts {
  readonly shop: Shop
  readonly language: Language
  readonly io: TerminalIo
  /** The document alone: nobody is asked. */
  readonly json: boolean
}

type Raw = Readonly<Record<string, string | readonly string[]>>

const codes = { kept: 0, refused: 2, incomplete: 3 } as const
const codeOf = ({ status }: CheckDocument): number =>
  status === 'refused' ? codes.refused : status === 'incomplete' ? codes.incomplete : 0

const layOut = ({ headline, lines, faults, missing }: CheckDocument, { words }: Language): string[] => {
  const { terminal } = words.checking
  return [
    headline,
    ...lines.map((line) => `  ${line}`),
    ...(faults.length > 0 ? [terminal.mend] : []),
    ...faults.map(({ input, got, allowed, hint }) => `  ${input}: “${got}”. ${hint} (${allowed})`),
    ...(missing.length > 0 ? [terminal.needed] : []),
    ...missing.map(({ input, ask, measure }) => `  ${input}: ${ask}. ${measure}`),
  ]
}

/** Of a point whose readings have grown: its numbers, then the verdict of the whole. */
const growth = (document: CheckDocument, setting: string, { words }: Language): string => {
  const point = document.points.find((one) => one.setting.text === setting)
  const { mean, deviation, spread, verdict } = point ?? {}
  if (!point || !mean || !deviation || !spread || !verdict) return document.headline
  const places = {
    setting,
    count: String(point.taken.length),
    mean: mean.text,
    deviation: signedText(deviation, words.deviation),
    spread: spread.text,
    verdict: verdict.text,
  }
  return `${render(words.checking.say.soFar, (place) => places[place as keyof typeof places])}. ${document.headline}`
}

// In any language that is spoken here; whoever types another answer has not said yes.
const isYes = (line: string): boolean => /^(?:y|yes|j|ja|s|sí|si|o|oui)$/iu.test(line.trim())

const asTyped = (inputs: CheckDocument['inputs']): string =>
  `npm run ask -- check ${Object.entries(inputs)
    .map(([name, text]) => `${name}="${text.replaceAll('"', '\\"')}"`)
    .join(' ')}`

const keep = async (document: CheckDocument, { shop, language, io }: CheckParts): Promise<number> => {
  const { terminal } = language.words.checking
  const kept = await shop.keep('check', toKeep(document.inputs), { role: 'keeper', door: 'terminal' })
  if (kept.kind === 'kept') {
    const places = { id: kept.entry.id, tag: document.wrench?.tag ?? '' }
    io.out(render(terminal.kept, (place) => places[place as keyof typeof places]))
    return codes.kept
  }
  const faults = kept.kind === 'refused' ? kept.faults.map(sayerFor(language).fault) : []
  for (const { input, got, hint } of faults) io.out(`  ${input}: “${got}”. ${hint}`)
  return codes.refused
}

type NextLine = () => Promise<string | undefined>

/** Asks until the plan is full or nobody answers; undefined where nobody ever did. */
const dialogue = async (
  first: CheckDocument,
  nextLine: NextLine,
  { shop, language, io }: CheckParts,
): Promise<CheckDocument | undefined> => {
  const { terminal } = language.words.checking
  const checking = checkingOf(shop)
  let document = first
  let asked = false
  let doubted: string | undefined
  while (document.next) {
    const { next, inputs } = document
    if (doubted === undefined && next.held !== undefined) io.out(`▲ ${next.held}`)
    if (doubted === undefined) io.out(asked ? next.ask : `${next.ask} ${terminal.stop}`)
    const line = await nextLine()
    if (line === undefined || line.trim() === '') break
    asked = true
    const stands = doubted !== undefined && isYes(line)
    const sure = [inputs['sure'], doubted].filter((one) => one !== undefined).join('; ')
    const more = stands && doubted !== undefined ? { reading: doubted, sure } : { reading: line }
    const grown = await checking.grow({ ...inputs, ...more }, language)
    doubted = slipsIn(grown)[0]?.got
    for (const { input, got, allowed, hint } of grown.faults) io.out(`  ${input}: “${got}”. ${hint} (${allowed})`)
    if (doubted !== undefined) io.out(`  ${render(terminal.retype, () => doubted)}`)
    if (grown.faults.length === 0) io.out(growth(grown, next.setting.text, language))
    // What could not be read at all says nothing of the check: that stays as it was.
    if (grown.points.length > 0) document = grown
  }
  return asked ? checking.grow(document.inputs, language) : undefined
}

/** Goes through a check; returns 0 planned or kept, 2 refused, 3 something is missing or it was left before it was whole. */
export const runCheck = async (raw: Raw, parts: CheckParts): Promise<number> => {
  const { shop, language, io, json } = parts
  const { terminal } = language.words.checking
  const first = await checkingOf(shop).grow(raw, language)
  for (const line of json ? [JSON.stringify(first, null, 2)] : layOut(first, language)) io.out(line)
  if (json || !io.lines || first.status === 'refused' || first.status === 'incomplete') return codeOf(first)
  const typed = io.lines[Symbol.asyncIterator]()
  const nextLine: NextLine = async () => {
    const { value, done } = await typed.next()
    return done ? undefined : value
  }
  try {
    const grown = await dialogue(first, nextLine, parts)
    if (!grown && first.next) return codeOf(first)
    const last = grown ?? first
    if (grown) for (const line of layOut(grown, language)) io.out(line)
    if (last.taken > 0) {
      io.out(terminal.keep)
      const line = await nextLine()
      if (line !== undefined && isYes(line)) return await keep(last, parts)
    }
    io.out(terminal.notKept)
    io.out(`  ${asTyped(last.inputs)}`)
    return last.next ? codes.incomplete : 0
  } finally {
    await typed.return?.()
  }
}
