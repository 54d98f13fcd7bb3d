// Answer document to lines that any door can lay out: what stands under what, in which order. No markup of any door.
import type { Answer, ShownGiven, ShownResult } from '../questions/answer.ts'
import { foremostOf } from '../questions/foremost.ts'
import type { Words } from '../words/index.ts'
import { render } from '../words/render.ts'

export type SectionName =
  | 'missing'
  | 'faults'
  | 'results'
  | 'cautions'
  | 'reading'
  | 'alternatives'
  | 'given'
  | 'working'
  | 'ladder'
  | 'pointers'
  | 'sources'

export interface Section {
  readonly name: SectionName
  readonly title: string
  readonly lines: readonly string[]
}

const label = (words: Words, input: string): string =>
  (words.inputs as Readonly<Record<string, { label: string } | undefined>>)[input]?.label ?? input

// A result may have a name of its own in one question: the torque of bolt-torque is one at typical friction.
const resultLabel = (words: Words, name: string, question = ''): string => {
  const labels = words.results as Readonly<Record<string, string | undefined>>
  return labels[`${question}.${name}`] ?? labels[name] ?? name
}

const alsoText = (also: ReadonlyArray<{ text: string }> | undefined): string =>
  also && also.length > 0 ? ` = ${also.map(({ text }) => text).join(' = ')}` : ''

type CellShown = { text: string; span?: string | undefined; also?: ReadonlyArray<{ text: string }> | undefined }

const cellText = (cell: CellShown, withAlso: boolean): string =>
  `${cell.text}${cell.span ? ` (${cell.span})` : ''}${withAlso ? alsoText(cell.also) : ''}`

const isCell = (result: ShownResult): result is Extract<ShownResult, { text: string }> =>
  !Array.isArray(result) && typeof (result as { text?: unknown }).text === 'string'

const rowText = (words: Words, row: Readonly<Record<string, CellShown>>): string =>
  Object.entries(row)
    .map(([name, cell]) => `${resultLabel(words, name)} ${cellText(cell, false)}`)
    .join(' · ')

const resultLines = (words: Words, name: string, result: ShownResult, question: string): string[] => {
  const title = resultLabel(words, name, question)
  if (Array.isArray(result))
    return [`${title}:`, ...result.map((row) => `  ${rowText(words, row as Record<string, CellShown>)}`)]
  if (isCell(result)) return [`${title}: ${cellText(result, true)}`]
  return [`${title}: ${rowText(words, result as Record<string, CellShown>)}`]
}

/** One line of what went in: what, how it was read, in the other system, and where it is from. */
export const givenLine = (words: Words, given: ShownGiven): string => {
  const place = given.index === undefined ? '' : ` ${given.index + 1}`
  const from = given.from === 'asked' ? '' : ` (${words.faces[given.from]})`
  // A span is not its middle: only a single value is told in the other system too.
  const also = given.low === undefined || given.low === given.high ? given.also.slice(0, 1) : []
  return `${label(words, given.input)}${place}: ${given.text}${alsoText(also)}${from}`
}

// What people typed is shown as they typed it, but for what would move a cursor or turn the reading direction.
const visible = (text: string): string => text.replace(/[\p{Cc}\p{Bidi_Control}]+/gu, ' ')

const stepLine = (step: Answer['steps'][number]): string =>
  `${step.say}. ${step.formula}: ${step.numbers} → ${stepValue(step)}`

// A step's value is shown by the same rounding as all else; the document carries it unrounded.
const stepValue = ({ shown }: Answer['steps'][number]): string => shown

const ladderLines = (words: Words, ladder: NonNullable<Answer['ladder']>): string[] => {
  const by = label(words, ladder.by)
  return ladder.rows.map(({ at, results }) => {
    const first = Object.entries(results).find(([, result]) => isCell(result))
    const [list] = Object.values(results).filter((result) => Array.isArray(result))
    const rows = ((list ?? []) as ReadonlyArray<Record<string, CellShown>>).map((row) => rowText(words, row))
    const text = first ? `${resultLabel(words, first[0])} ${cellText(first[1] as CellShown, false)}` : rows.join('; ')
    return `${by} ${at.text}: ${text}`
  })
}

const sourceLine = (words: Words, { title, where, standing }: Answer['sources'][number]): string =>
  `${title}, ${where} (${words.standings[standing]})`

/** What was taken from free text as what, and what was left aside: as typed, made visible. */
const readingLines = (words: Words, { taken, ignored }: NonNullable<Answer['reading']>): string[] => [
  ...taken.map(({ span, input, text }) =>
    visible(
      render(
        words.faces[span === '' ? 'as-followed' : 'as-input'],
        (place) => ({ span, text, label: label(words, input) })[place],
      ),
    ),
  ),
  ...(ignored.length === 0
    ? []
    : [visible(render(words.faces['left-aside'], () => ignored.map((span) => `“${span}”`).join(', ')))]),
]

/** What is read before the headline: the wrench that was named is not one to pull with as it is. */
export const foremostLines = (answer: Answer): readonly string[] =>
  foremostOf(answer).map(({ text }) => `▲ ${visible(text)}`)

const beside = ['mark-below', 'mark-above'] as const

/** The marks of the scale next to a setting with what each gives, the lower one first; one where the setting is on a mark. */
export const marksBeside = (answer: Answer): readonly Readonly<Record<'setting' | 'torque', string>>[] => {
  const cells = beside.flatMap((name) => {
    const row = answer.results[name] as Readonly<Record<string, CellShown>> | undefined
    return row?.['setting'] && row['torque'] ? [{ setting: row['setting'].text, torque: row['torque'].text }] : []
  })
  return cells[0]?.setting === cells[1]?.setting ? cells.slice(0, 1) : cells
}

/** Settings for other directions than the one that was asked: nothing to be taken for the answer. */
export const besidesLines = (answer: Answer, words: Words): readonly string[] => {
  const { directions } = answer.results
  return Array.isArray(directions)
    ? directions.map((row) => rowText(words, row as Readonly<Record<string, CellShown>>))
    : []
}

/** An answer without what `marksBeside` and `besidesLines` tell of it. */
export const withoutBeside = (answer: Answer): Answer => {
  const told: ReadonlySet<string> = new Set([...beside, 'directions'])
  return { ...answer, results: Object.fromEntries(Object.entries(answer.results).filter(([name]) => !told.has(name))) }
}

/** The headline; where it quotes what was typed it is made visible too. */
export const headlineOf = (answer: Answer): string => visible(answer.headline)

// Two cells a row need no names: where it is read, and what it is there.
const pairsText = (words: Words, name: string, result: ShownResult, question: string): string | undefined => {
  if (!Array.isArray(result)) return undefined
  const rows = (result as ReadonlyArray<Record<string, CellShown>>).map((row) => Object.values(row))
  if (rows.length === 0 || rows.some((cells) => cells.length !== 2)) return undefined
  const told = rows.map((cells) => cells.map((cell) => cellText(cell, false)).join(' '))
  return `${resultLabel(words, name, question)}: ${told.join('; ')}`
}

/** What was asked in one line, what was assumed in another. */
const givenInShort = (answer: Answer, words: Words): string[] => {
  const asked = answer.given.filter(({ from }) => from !== 'assumed').map((given) => givenLine(words, given))
  const assumed = answer.given
    .filter(({ from }) => from === 'assumed')
    .map(({ input, index, text }) => `${label(words, input)}${index === undefined ? '' : ` ${index + 1}`} ${text}`)
  return [
    ...(asked.length > 0 ? [asked.join(' · ')] : []),
    ...(assumed.length > 0 ? [`${words.faces.assumed}: ${assumed.join(' · ')}`] : []),
  ]
}

/**
 * The same sections where people talk and a page is too much: rows of pairs, what was given and where it is from in a line each,
 * the working as formulas alone. Nothing is left out but the words of the working.
 */
export const sectionsInShort = (answer: Answer, words: Words): readonly Section[] =>
  sectionsOf(answer, words).map((section) => {
    if (section.name === 'given') return { ...section, lines: givenInShort(answer, words) }
    if (section.name === 'sources') return { ...section, lines: [section.lines.join('; ')] }
    if (section.name === 'working')
      return { ...section, lines: answer.steps.map((step) => `${step.formula}: ${step.numbers} → ${stepValue(step)}`) }
    if (section.name !== 'results') return section
    const lines = Object.entries(answer.results).flatMap(([name, result]) => {
      const pairs = pairsText(words, name, result, answer.question ?? '')
      return pairs === undefined ? resultLines(words, name, result, answer.question ?? '') : [pairs]
    })
    return { ...section, lines }
  })

/** The sections that hold something, in the order in which they are read: what to act on first. */
export const sectionsOf = (answer: Answer, words: Words): readonly Section[] => {
  const foremost = foremostOf(answer)
  const lines: Readonly<Record<SectionName, readonly string[]>> = {
    faults: answer.faults.map(({ input, got, allowed, hint }) =>
      visible(`${input}: ${words.faces.got} “${got}”, ${words.faces.allowed} ${allowed}. ${hint}`),
    ),
    missing: answer.missing.map(({ input, ask, measure }) => `${input}: ${ask}. ${measure}`),
    results: Object.entries(answer.results).flatMap(([name, result]) =>
      resultLines(words, name, result, answer.question ?? ''),
    ),
    ladder: answer.ladder ? ladderLines(words, answer.ladder) : [],
    cautions: answer.cautions.filter((one) => !foremost.includes(one)).map(({ text }) => text),
    reading: answer.reading ? readingLines(words, answer.reading) : [],
    alternatives: (answer.reading?.alternatives ?? []).map((one) => visible(one.label)),
    given: answer.given.map((given) => givenLine(words, given)),
    working: answer.steps.map(stepLine),
    pointers: answer.pointers.map(({ text, url }) => (url ? `${text} ${url}` : text)),
    sources: answer.sources.map((source) => sourceLine(words, source)),
  }
  const order: readonly SectionName[] = [
    'faults',
    'missing',
    'results',
    'ladder',
    'reading',
    'alternatives',
    'cautions',
    'given',
    'working',
    'pointers',
    'sources',
  ]
  return order
    .filter((name) => lines[name].length > 0)
    .map((name) => ({ name, title: words.faces[name], lines: lines[name] }))
}
