// The register as a sheet of comma-separated values (RFC 4180): a row an entry, a column an input, texts that can be typed again.
// What a row holds besides is its head: id, time, by whom. A sheet of somebody's own needs no more columns than it fills.
import { parse } from 'csv-parse/sync'
import { stringify } from 'csv-stringify/sync'
import { type Fault, fault } from '../core/fault.ts'
import { type Entry, type Kind, kindNames } from '../register/records.ts'
import { keepables } from './index.ts'
import { textsOf } from './texts.ts'

const heads = ['key', 'id', 'at', 'role', 'door'] as const
export type HeadName = (typeof heads)[number]

/** Every column there can be, in the order in which they are written. */
export const columns: readonly string[] = [
  ...new Set(['kind', ...kindNames.flatMap((kind) => Object.keys(keepables[kind].inputs)), ...heads]),
]

export interface SheetRow {
  /** The line of the file on which it ends; the head is line 1. */
  readonly line: number
  readonly kind: Kind
  readonly texts: Readonly<Record<string, string>>
  readonly head: Readonly<Partial<Record<HeadName, string>>>
}

export interface SheetFault {
  readonly line: number
  readonly fault: Fault
}

export type SheetRead =
  | { readonly ok: true; readonly rows: readonly SheetRow[] }
  | { readonly ok: false; readonly faults: readonly SheetFault[] }

// A cell that a table program would take for a formula gets a mark before it, and loses it when it is read in.
const FORMULA = /^'*[=+\-@＝＋－＠\t\r]/
// A table program whose lists are parted by semicolons, or that takes a line end for a row, begins a cell there.
const WITHIN = /([;\t\n\r]\s*)('*[=+\-@＝＋－＠])/g
const MARKED_WITHIN = /([;\t\n\r]\s*)'('*[=+\-@＝＋－＠])/g
const safe = (text: string): string => {
  const within = text.replace(WITHIN, "$1'$2")
  return FORMULA.test(within) ? `'${within}` : within
}
const plain = (cell: string): string =>
  (/^'+[=+\-@＝＋－＠\t\r]/.test(cell) ? cell.slice(1) : cell).replace(MARKED_WITHIN, '$1$2')

export const sheetHead = (): string => stringify([[...columns]])

export const sheetRow = (entry: Entry): string => {
  const { id, at, key, supersedes, why, by, kind } = entry
  const told: Readonly<Record<string, string | undefined>> = {
    ...textsOf(entry),
    kind,
    supersedes,
    why,
    key,
    id,
    at,
    ...by,
  }
  return stringify([columns.map((column) => safe(told[column] ?? ''))])
}

const MOST_ROWS = 10_000
/** What stands between cells: a comma, or the semicolon of countries whose decimal mark is the comma. */
const separatorOf = (text: string): ',' | ';' | '\t' => {
  const [head = ''] = text.split(/\r?\n/, 1)
  const count = (mark: string): number => head.split(mark).length
  return count('\t') > Math.max(count(','), count(';')) ? '\t' : count(';') > count(',') ? ';' : ','
}

interface Parsed {
  readonly record: readonly string[]
  readonly info: { readonly lines: number }
}

const unreadable = (error: unknown): SheetFault => {
  const { lines, message } = error as { lines?: number; message: string }
  return { line: lines ?? 1, fault: fault('sheet-unreadable', '', message.slice(0, 120)) }
}

const columnFaults = (names: readonly string[]): Fault[] => [
  ...names
    .filter((name) => !columns.includes(name))
    .map((name) => fault('sheet-column', name.slice(0, 64), name.slice(0, 64), { options: columns })),
  ...names
    .filter((name, place) => names.indexOf(name) !== place)
    .map((name) => fault('sheet-column-twice', name, name)),
]

const isKind = (text: string): text is Kind => (kindNames as readonly string[]).includes(text)
const isHead = (name: string): name is HeadName => (heads as readonly string[]).includes(name)

/** The rows of a sheet; a row without a kind is a wrench. All that is wrong with its shape at once. */
export const readSheet = (text: string): SheetRead => {
  let parsed: readonly Parsed[]
  try {
    parsed = parse(text, {
      bom: true,
      delimiter: separatorOf(text.replace(/^\uFEFF/, '')),
      info: true,
      skip_empty_lines: true,
      relax_column_count: true,
      max_record_size: 100_000,
      // Rows past the most are not even parsed: millions of short lines would take all memory before they are counted.
      to: MOST_ROWS + 2,
    }) as unknown as readonly Parsed[]
  } catch (error) {
    return { ok: false, faults: [unreadable(error)] }
  }
  const [head, ...body] = parsed
  if (!head || body.length === 0) return { ok: false, faults: [{ line: 1, fault: fault('sheet-empty', '', '') }] }
  if (body.length > MOST_ROWS)
    return {
      ok: false,
      faults: [{ line: 1, fault: fault('sheet-too-long', '', String(body.length), { most: String(MOST_ROWS) }) }],
    }
  const names = head.record.map((name) => name.trim().toLowerCase())
  const wrong = columnFaults(names)
  if (wrong.length > 0) return { ok: false, faults: wrong.map((one) => ({ line: 1, fault: one })) }
  const faults: SheetFault[] = []
  const rows = body.flatMap(({ record, info }): SheetRow[] => {
    const line = info.lines
    if (record.length > names.length) {
      faults.push({ line, fault: fault('sheet-cells', '', String(record.length), { most: String(names.length) }) })
      return []
    }
    const cells = names.flatMap((name, place): [string, string][] => {
      const cell = plain((record[place] ?? '').trim())
      return cell === '' ? [] : [[name, cell]]
    })
    if (cells.length === 0) return []
    const { kind = 'wrench', ...rest } = Object.fromEntries(cells)
    if (!isKind(kind)) {
      faults.push({ line, fault: fault('not-a-choice', 'kind', kind, { options: kindNames }) })
      return []
    }
    const entries = Object.entries(rest)
    return [
      {
        line,
        kind,
        texts: Object.fromEntries(entries.filter(([name]) => !isHead(name))),
        head: Object.fromEntries(entries.filter(([name]) => isHead(name))),
      },
    ]
  })
  return faults.length > 0 ? { ok: false, faults } : { ok: true, rows }
}
