// Kinds of input that only bench runs have: their conditions, what is held the same, months, and readings typed one or many at once.
import { type Fault, fault, type Read, read, refuse } from '../core/fault.ts'
import { parseReadings } from '../core/parse-list.ts'
import type { Wanted } from '../core/parse-quantity.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { type Dimension, units } from '../core/unit.ts'
import { asked, common, type Input, type Options, one, same, within } from '../questions/input.ts'
import {
  areDifferent,
  type Condition,
  LONGEST_CONDITION,
  LONGEST_QUESTION,
  MOST_AGAIN,
  MOST_CONDITIONS,
  MOST_MONTHS,
  MOST_READINGS_AT_ONCE,
  MOST_SAME,
} from '../register/run-bodies.ts'

/** Between parts that are put into one text again; a part may hold `;` and commas. */
export const PART_MARK = ' | '

const partsOf = (texts: readonly string[]): string[] =>
  texts
    .flatMap((text) => text.split(/[\r\n|]/))
    .map((part) => part.trim())
    .filter((part) => part !== '')

const tooLong = (text: string, input: string, most: number): Fault[] =>
  text.length > most ? [fault('too-long', input, text, { most: String(most) })] : []

const counted = (parts: readonly string[], texts: readonly string[], input: string, most: number): Fault[] => {
  if (parts.length === 0) return [fault('empty', input, texts.join(PART_MARK))]
  return parts.length > most ? [fault('too-many', input, texts.join(PART_MARK), { most: String(most) })] : []
}

const conditionIn = (part: string): Condition => {
  const at = part.indexOf(':')
  const name = (at === -1 ? part : part.slice(0, at)).trim()
  const what = at === -1 ? '' : part.slice(at + 1).trim()
  return { name, what: what === '' ? name : what }
}

/** One to six conditions, each `name` or `name: what it is`; the first is the baseline. */
export const conditions = <N extends boolean = false>(options: Options<N> = {}): Input<readonly Condition[], N> => ({
  kind: 'text',
  most: MOST_CONDITIONS,
  between: PART_MARK,
  ...common(options, same('A: dry, as delivered | B: oil on thread and seat')),
  read: (texts, input) => {
    const parts = partsOf(texts)
    const wrong = counted(parts, texts, input, MOST_CONDITIONS)
    if (wrong.length > 0) return refuse(...wrong)
    const all = parts.map(conditionIn)
    const faults = all.flatMap(({ name, what }, at) => [
      ...(name === '' ? [fault('not-a-condition', input, parts[at] as string)] : []),
      ...tooLong(name, input, LONGEST_CONDITION),
      ...tooLong(what, input, LONGEST_QUESTION),
    ])
    if (faults.length > 0) return refuse(...faults)
    return areDifferent(all.map(({ name }) => name))
      ? read(all)
      : refuse(fault('conditions-alike', input, texts.join(PART_MARK)))
  },
  given: (all, input) => [asked(input, all.map(({ name, what }) => `${name}: ${what}`).join(PART_MARK))],
})

/** What is held the same, in any words. */
export const heldSame = <N extends boolean = false>(options: Options<N> = {}): Input<readonly string[], N> => ({
  kind: 'text',
  most: MOST_SAME,
  between: PART_MARK,
  ...common(options, same('the same ten bolts | washers new each time')),
  read: (texts, input) => {
    const parts = partsOf(texts)
    const wrong = [
      ...counted(parts, texts, input, MOST_SAME),
      ...parts.flatMap((part) => tooLong(part, input, LONGEST_QUESTION)),
    ]
    return wrong.length > 0 ? refuse(...wrong) : read(parts)
  },
  given: (all, input) => [asked(input, all.join(PART_MARK))],
})

const monthsPattern = /^((?:\d{1,4}(?:\s*[,;]\s*|\s+and\s+|\s+))*\d{1,4})\s*(?:months?|mo\.?)$/i

const parseMonths = (texts: readonly string[], input: string): Read<number[]> => {
  const typed = texts.join('; ').trim()
  const found = monthsPattern.exec(typed.replace(/\s*months?\s*(?=[,;])/gi, ''))
  if (!found) return refuse(fault(typed === '' ? 'empty' : 'not-months', input, typed))
  const months = (found[1] as string).match(/\d+/g)?.map(Number) ?? []
  const past = months.find((month) => month < 1 || month > MOST_MONTHS)
  if (past !== undefined) return refuse(fault('not-months', input, typed))
  return read([...new Set(months)].sort((one, other) => one - other))
}

/** When it is to be measured again: `1; 3; 6 months`. */
export const plannedMonths = <N extends boolean = false>(options: Options<N> = {}): Input<readonly number[], N> => ({
  kind: 'text',
  most: MOST_AGAIN,
  ...common(options, same('1; 3; 6 months')),
  read: (texts, input) => {
    const months = parseMonths(texts, input)
    if (!months.ok || months.value.length <= MOST_AGAIN) return months
    return refuse(fault('too-many', input, texts.join('; '), { most: String(MOST_AGAIN) }))
  },
  given: (all, input) => [asked(input, `${all.join('; ')} months`)],
})

/** One number of months: of which planned re-run a reading is. */
export const ofMonths = <N extends boolean = false>(options: Options<N> = {}): Input<number, N> => ({
  kind: 'text',
  most: 1,
  ...common(options, same('3 months')),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const months = parseMonths([text.value], input)
    if (!months.ok) return months
    return months.value.length === 1 ? read(months.value[0] as number) : refuse(fault('not-months', input, text.value))
  },
  given: (value, input) => [asked(input, `${value} months`)],
})

const examples = {
  torque: { metric: '99.5; 101; 100.2 N·m', inch: '74; 75.5; 74.8 lbf·ft' },
  force: { metric: '24.1; 25 kN', inch: '5400; 5600 lbf' },
  angle: { metric: '42°; 44°', inch: '42°; 44°' },
} as const

/** Readings of one kind as they were taken: one, or several with the unit on each or once at the end. */
export const runReadings = <N extends boolean = false>(
  dimension: Dimension & keyof typeof examples,
  options: Options<N> = {},
): Input<readonly Quantity[], N> => ({
  kind: 'readings',
  most: MOST_READINGS_AT_ONCE,
  ...common(options, examples[dimension]),
  read: (texts, input) => {
    const wanted: Wanted = { input, dimensions: [dimension] }
    const all = parseReadings(texts, wanted, { most: MOST_READINGS_AT_ONCE })
    if (!all.ok) return all
    const bounds = dimension === 'angle' ? { zero: true, most: quantity(3600, units['°']) } : {}
    const wrong = all.value.flatMap((q) => within(q, wanted, texts.join('; '), bounds) ?? [])
    return wrong.length > 0 ? refuse(...wrong) : all
  },
  given: (all, input) => all.map((reading, index) => ({ ...asked(input, reading), index })),
})

/** Which piece each reading is of, in their order: `1; 2; 3`. */
export const pieces = <N extends boolean = false>(options: Options<N> = {}): Input<readonly string[], N> => ({
  kind: 'text',
  most: MOST_READINGS_AT_ONCE,
  ...common(options, same('1; 2; 3')),
  read: (texts, input) => {
    const all = texts.flatMap((text) => text.split(';')).map((piece) => piece.trim())
    const wrong = all.includes('')
      ? [fault('empty', input, texts.join('; '))]
      : [
          ...counted(all, texts, input, MOST_READINGS_AT_ONCE),
          ...all.flatMap((piece) => tooLong(piece, input, LONGEST_CONDITION)),
        ]
    return wrong.length > 0 ? refuse(...wrong) : read(all)
  },
  given: (all, input) => [asked(input, all.join('; '))],
})
