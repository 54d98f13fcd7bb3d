// Lists as people type them: one text with `;`, readings also with spaces or comma and space, a unit on each or once at the end.
import { type Fault, type FaultTell, fault, type Read, read, refuse } from './fault.ts'
import { readNumber, VULGAR } from './number-text.ts'
import { LONGEST_QUANTITY, numberFault, parseQuantity, type Wanted, withUnit } from './parse-quantity.ts'
import type { Quantity } from './quantity.ts'

/** An adapter: how long, which way it points from straight ahead of the wrench; no `angle` where none was said. */
export interface Adapter {
  readonly length: Quantity
  readonly angle?: Quantity
}

export const LONGEST_LIST = 2000
// So many wrong readings are one slip, such as a wrong column: the rest is not read.
const MOST_FAULTS = 100

/** What one text of readings may hold. `most` is counted before units are read, so that no text takes long. */
export interface ListLimits {
  readonly longest?: number
  readonly most?: number
  readonly tooMany?: FaultTell
}

const splitChain = (text: string): string[] => text.split(/\s*;\s*|\s+\+\s+/)

// `2 in+3 in` and `2 in, 3 in` are two adapters: told how to part them, never to leave one out.
const unparted = (found: Fault): Fault =>
  found.tell === 'trailing' && /^[+,]/.test(String(found.facts?.extra))
    ? fault('adapters-unparted', found.input, found.got)
    : found

const parseAdapter = (text: string, input: string): Read<Adapter> => {
  const [lengthText = '', angleText, ...more] = text.split('@')
  if (more.length > 0 && /[^@\s]\s*[+,]/.test(angleText ?? '')) return refuse(fault('adapters-unparted', input, text))
  if (more.length > 0) return refuse(fault('trailing', input, text, { extra: `@${more.join('@')}` }))
  const length = parseQuantity(lengthText, { input, dimensions: ['length'] })
  if (angleText === undefined)
    return length.ok ? read({ length: length.value }) : refuse(...length.faults.map(unparted))
  const angle = parseQuantity(angleText, { input, dimensions: ['angle'] })
  if (length.ok && angle.ok) return read({ length: length.value, angle: angle.value })
  return refuse(...(length.ok ? [] : length.faults), ...(angle.ok ? [] : angle.faults.map(unparted)))
}

/** A chain of adapters: `2 in@90; 40 mm@-30`, `2 in + 3 in@45`. All faults of all links. */
export const parseAdapters = (
  texts: readonly string[],
  input: string,
  most = Number.POSITIVE_INFINITY,
): Read<readonly Adapter[]> => {
  const faults: Fault[] = []
  const chain: Adapter[] = []
  const links = texts.flatMap((text) => (text.length > LONGEST_LIST ? [text] : splitChain(text)))
  if (links.length > most) return refuse(fault('too-many', input, texts.join('; '), { most: String(most) }))
  for (const link of links) {
    const adapter = parseAdapter(link, input)
    if (adapter.ok) chain.push(adapter.value)
    else faults.push(...adapter.faults)
  }
  return faults.length > 0 ? refuse(...faults) : read(chain)
}

interface Item {
  readonly value: number
  readonly unitText: string
  readonly got: string
}

// Spaces separate readings, so `14 1/2` and `14 ½` in a list are two readings or one and a half: never guessed.
const mixedInList = new RegExp(`(?:^|(?<=\\s))(\\d+)\\s+(\\d+[/⁄]\\d+|[${VULGAR}])`)
// Looked at from the first space of a run only: a long run of spaces must not cost its square.
const betweenReadings = new RegExp(`(?<!\\s)\\s+(?=[-−+]?[\\d.,${VULGAR}])`)
const partsOf = (text: string): string[] => text.split(/;|,\s+/).map((part) => part.trim())

const scanPart = (part: string, wanted: Wanted): Read<Item[]> => {
  if (part === '') return refuse(fault('empty', wanted.input, part, { kind: wanted.dimensions[0] as string }))
  if (mixedInList.test(part)) return refuse(fault('two-readings', wanted.input, part, { readings: twoWays(part) }))
  const items: Item[] = []
  for (const piece of part.split(betweenReadings)) {
    const number = readNumber(piece)
    if (!number.ok) return refuse(numberFault(number.trouble, wanted, piece, number.rest))
    // In a list 1,234.5 may be two readings with a forgotten space: only one mark is taken.
    if ((piece.slice(0, piece.length - number.rest.length).match(/[.,]/g)?.length ?? 0) > 1) {
      return refuse(fault('thousands-mark', wanted.input, piece, { kind: wanted.dimensions[0] as string }))
    }
    const unitText = number.rest.trim()
    if (unitText.length > LONGEST_QUANTITY) {
      return refuse(fault('too-long', wanted.input, piece, { most: String(LONGEST_QUANTITY) }))
    }
    items.push({ value: number.value, unitText, got: piece })
  }
  return read(items)
}

const twoWays = (part: string): string[] => [
  part.replace(mixedInList, (_, whole: string, part_: string) =>
    part_.length > 1 ? `${whole}-${part_}` : whole + part_,
  ),
  part.replace(mixedInList, '$1; $2'),
]

/** Readings, each with its unit: from one text or several. Faults name the reading that is wrong, all at once. */
export const parseReadings = (
  texts: readonly string[],
  wanted: Wanted,
  { longest = LONGEST_LIST, most = Number.POSITIVE_INFINITY, tooMany = 'too-many' }: ListLimits = {},
): Read<readonly Quantity[]> => {
  const faults: Fault[] = []
  const all: Quantity[] = []
  for (const text of texts) {
    if (text.length > longest) {
      faults.push(
        fault('too-long', wanted.input, text, { kind: wanted.dimensions[0] as string, most: String(longest) }),
      )
      continue
    }
    const parts = partsOf(text)
    const scanned = parts.length > most ? [] : parts.map((part) => scanPart(part, wanted))
    const items = scanned.flatMap((part) => (part.ok ? part.value : []))
    if (parts.length > most || faults.length > MOST_FAULTS || all.length + items.length > most) {
      return refuse(fault(tooMany, wanted.input, text, { most: String(most) }))
    }
    faults.push(...scanned.flatMap((part) => (part.ok ? [] : part.faults)))
    // A unit once at the end serves all; a unit on some but not on others is a slip.
    const named = items.filter((item) => item.unitText !== '')
    const shared = named.length === 1 && items.at(-1)?.unitText !== '' ? items.at(-1)?.unitText : undefined
    for (const item of items) {
      const reading = withUnit(item.value, shared ?? item.unitText, wanted, item.got)
      if (reading.ok) all.push(reading.value)
      else faults.push(...reading.faults)
    }
  }
  return faults.length > 0 ? refuse(...faults) : read(all)
}
