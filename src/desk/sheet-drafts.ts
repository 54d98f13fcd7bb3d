// The rows of a sheet as what is to be kept, and which of them come twice in it.
import { createHash } from 'node:crypto'
import { type Fault, fault } from '../core/fault.ts'
import { keepables } from '../keeping/index.ts'
import type { SheetRow } from '../keeping/sheet.ts'
import { type By, bySchema, type Draft } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import { readQuestion } from './read.ts'

/** Two machines need not have the same time to the minute. */
const CLOCKS_APART_MS = 300_000

export interface Drafted {
  readonly line: number
  readonly draft: Draft
  readonly head: SheetRow['head']
}

/** What a row is to be kept as. `now`: nothing was recorded later than that. */
export const draftOf = (row: SheetRow, by: By, now: Date): Drafted | readonly Fault[] => {
  const reading = readQuestion(keepables[row.kind], row.texts)
  const missing = reading.missing.map((input) => fault('sheet-missing', input, ''))
  if (reading.faults.length > 0 || missing.length > 0) return [...reading.faults, ...missing]
  const body = keepables[row.kind].body(reading.values, row.texts)
  const { supersedes, why } = row.texts
  // An exported row says by whom it was kept; a row of somebody's own was kept by whoever reads it in.
  const told = row.head.id === undefined ? undefined : bySchema.safeParse({ role: row.head.role, door: row.head.door })
  if (told && !told.success) return [fault('sheet-head', 'role', `${row.head.role ?? ''} ${row.head.door ?? ''}`)]
  const { at } = row.head
  if (at !== undefined && Date.parse(at) > now.getTime() + CLOCKS_APART_MS) return [fault('sheet-head', 'at', at)]
  const draft = {
    kind: row.kind,
    body,
    by: told?.data ?? by,
    ...(supersedes === undefined ? {} : { supersedes }),
    ...(why === undefined ? {} : { why }),
    ...keyOf(row),
  } as Draft
  return { line: row.line, draft, head: row.head }
}

// A row without a name of its own is known by its content.
const keyOf = ({ kind, texts, head }: SheetRow): { readonly key?: string } => {
  if (head.key !== undefined) return { key: head.key }
  if (head.id !== undefined) return {}
  const content = JSON.stringify([kind, ...Object.entries(texts).sort(([one], [other]) => (one < other ? -1 : 1))])
  return { key: `row-${createHash('sha256').update(content).digest('base64url')}` }
}

export type Twin =
  /** The first of its name in the sheet. */
  | { readonly is: 'first' }
  /** The same again, under the name that its writer gave both: it is one entry. */
  | { readonly is: 'same' }
  | { readonly is: 'wrong'; readonly fault: Fault }

/**
 * Tells of each row whether one before it in the sheet has its id, its key or its content. `held`: how many entries the record has
 * under its key already, as a sheet that was read in before may have said the same twice.
 */
export const createTwins = (): ((drafted: Drafted, held: number) => Twin) => {
  const ids = new Map<string, number>()
  const keys = new Map<string, { readonly line: number; readonly draft: Draft; times: number }>()
  return ({ line, draft, head }, held) => {
    // An exported row is known by its id alone: two of one key are two entries of the record that it came from.
    if (head.id !== undefined) {
      const other = ids.get(head.id)
      if (other === undefined) ids.set(head.id, line)
      return other === undefined
        ? { is: 'first' }
        : { is: 'wrong', fault: fault('sheet-twice', 'id', head.id, { line: String(other) }) }
    }
    const before = draft.key === undefined ? undefined : keys.get(draft.key)
    if (!before) {
      if (draft.key !== undefined) keys.set(draft.key, { line, draft, times: 1 })
      return { is: 'first' }
    }
    before.times++
    if (!isSameDraft({ ...before.draft, id: '', at: '' }, draft)) {
      return { is: 'wrong', fault: fault('key-taken', 'key', draft.key ?? '') }
    }
    if (before.times <= held) return { is: 'first' }
    if (head.key !== undefined) return { is: 'same' }
    return { is: 'wrong', fault: fault('sheet-twice', '', '', { line: String(before.line) }) }
  }
}
