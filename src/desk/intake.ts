// Reading a sheet in: every row judged as if it were typed, one after the other, against the record as it would then be. All of it
// is kept, or nothing. A row that is there already (the same id, key or content) is counted and left alone, so that the same sheet,
// or a longer one, can be read in again.
import { createHash } from 'node:crypto'
import { type Fault, fault } from '../core/fault.ts'
import { keepables } from '../keeping/index.ts'
import { readSheet, type SheetFault, type SheetRow } from '../keeping/sheet.ts'
import { admissionFaults, mayRecord } from '../register/admit.ts'
import { foldBook } from '../register/book.ts'
import { foldTag } from '../register/parts.ts'
import { type By, bySchema, type Draft, type Entry, entryFrom, entrySchema, isOf, tagOf } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import type { RegisterStore } from '../store/lazy.ts'
import { type Card, type CardName, cardKinds, type Filed } from '../store/store.ts'
import { cardsOf } from './card-rows.ts'
import { readQuestion } from './read.ts'
import { namedIn, type ShopParts, type Writer } from './shop.ts'

export type Intake =
  | { readonly kind: 'refused'; readonly faults: readonly SheetFault[] }
  | { readonly kind: 'forbidden' }
  /** `fresh`: rows that are new; `again`: rows that were there. `kept`: whether they are in the record now. */
  | { readonly kind: 'read'; readonly fresh: number; readonly again: number; readonly kept: boolean }

/** More than these nobody reads at once; they are counted. */
export const MOST_SHEET_FAULTS = 500

/** After so many rows whoever else asks has a turn: a long sheet is no reason to wait. */
const AT_ONCE = 20
const othersTurn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

type Drafted = { readonly line: number; readonly draft: Draft; readonly head: SheetRow['head'] }

const draftOf = (row: SheetRow, by: By): Drafted | readonly Fault[] => {
  const reading = readQuestion(keepables[row.kind], row.texts)
  const missing = reading.missing.map((input) => fault('sheet-missing', input, ''))
  if (reading.faults.length > 0 || missing.length > 0) return [...reading.faults, ...missing]
  const body = keepables[row.kind].body(reading.values, row.texts)
  const { supersedes, why } = row.texts
  // An exported row says by whom it was kept; a row of somebody's own was kept by whoever reads it in.
  const told = row.head.id === undefined ? undefined : bySchema.safeParse({ role: row.head.role, door: row.head.door })
  if (told && !told.success) return [fault('sheet-head', 'role', `${row.head.role ?? ''} ${row.head.door ?? ''}`)]
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

/** The record of the tags that a sheet touches, with what it adds. */
const createOverlay = (store: RegisterStore) => {
  const byTag = new Map<string, Filed[]>()
  const byId = new Map<string, Entry>()
  const firstNew = new Map<string, number>()
  let seq = Number.MAX_SAFE_INTEGER / 2
  const load = async (tag: string): Promise<Filed[]> => {
    const name = foldTag(tag)
    const known = byTag.get(name)
    if (known) return known
    const filed = [...(await store.history(tag))]
    firstNew.set(name, filed.at(-1)?.seq ?? 0)
    byTag.set(name, filed)
    return filed
  }
  return {
    /** All entries of some tags, in the order in which they were kept. */
    of: async (tags: readonly string[]): Promise<Entry[]> => {
      const lists = await Promise.all([...new Map(tags.map((tag) => [foldTag(tag), tag])).values()].map(load))
      const once = new Map(lists.flat().map((filed) => [filed.seq, filed]))
      return [...once.values()].sort((one, other) => one.seq - other.seq).map(({ entry }) => entry)
    },
    entry: async (id: string): Promise<Entry | undefined> => byId.get(id) ?? (await store.entry(id))?.entry,
    add: (entry: Entry, tags: readonly string[]): void => {
      const filed = { seq: seq++, entry }
      byId.set(entry.id, entry)
      for (const name of new Set(tags.map(foldTag))) byTag.get(name)?.push(filed)
    },
    expects: (tags: Iterable<string>) => [...tags].map((tag) => ({ tag, seq: firstNew.get(foldTag(tag)) ?? 0 })),
  }
}

const gaugesIn = (entries: readonly Entry[]): string[] =>
  entries.flatMap((entry) => (isOf('check')(entry) && entry.body.gauge !== undefined ? [entry.body.gauge] : []))

export const intakeOf =
  ({ store, now, id, timeZone }: ShopParts) =>
  async (text: string, who: Writer, dryRun: boolean): Promise<Intake> => {
    if (!mayRecord({ by: who, kind: 'wrench' })) return { kind: 'forbidden' }
    const sheet = readSheet(text)
    if (!sheet.ok) return { kind: 'refused', faults: sheet.faults }
    const today = { today: new Intl.DateTimeFormat('sv-SE', { timeZone }).format(now()) }
    const at = now().toISOString()
    const faults: SheetFault[] = []
    const drafts = sheet.rows.flatMap((row): Drafted[] => {
      const made = draftOf(row, { role: who.role, door: who.door })
      if ('draft' in made) return [made]
      faults.push(...made.map((one) => ({ line: row.line, fault: one })))
      return []
    })
    const isEmpty = (await store.since(0, 1)).length === 0
    const overlay = createOverlay(store)
    const own = new Map<string, string>()
    const entries: Entry[] = []
    let again = 0
    let row = 0
    for (const { line, draft, head } of drafts) {
      if (++row % AT_ONCE === 0) await othersTurn()
      const known = isEmpty ? undefined : await knownAs(store, draft, head)
      if (known) {
        if (isSameDraft(known, draft)) again++
        else
          faults.push({
            line,
            fault: fault('key-taken', head.id === undefined ? 'key' : 'id', head.id ?? draft.key ?? ''),
          })
        continue
      }
      const replaced = draft.supersedes === undefined ? undefined : await overlay.entry(draft.supersedes)
      const tags = [tagOf(draft), replaced && tagOf(replaced)].filter((tag) => tag !== undefined)
      const book = foldBook(await overlay.of([...tags, ...namedIn(draft)]))
      const wrong = admissionFaults(book, draft, today.today)
      if (wrong.length > 0) {
        faults.push(...wrong.map((one) => ({ line, fault: one })))
        continue
      }
      const entry = entrySchema.safeParse(
        entryFrom(draft, head.id ?? id(), head.id === undefined ? at : (head.at ?? at)),
      )
      if (!entry.success) {
        faults.push({ line, fault: fault('sheet-head', String(entry.error.issues[0]?.path[0] ?? 'id'), head.id ?? '') })
        continue
      }
      overlay.add(entry.data as Entry, tags)
      entries.push(entry.data as Entry)
      for (const tag of tags) own.set(foldTag(tag), tag)
    }
    if (faults.length > 0) return { kind: 'refused', faults: faults.sort((one, other) => one.line - other.line) }
    if (dryRun || entries.length === 0) return { kind: 'read', fresh: entries.length, again, kept: !dryRun }
    const cards: Card[] = []
    const dropped: CardName[] = []
    for (const tag of own.values()) {
      const all = await overlay.of([tag])
      const found = cardsOf(foldBook(await overlay.of([tag, ...gaugesIn(all)])), tag, today)
      cards.push(...found)
      // What was taken back altogether has no card any more.
      for (const kind of cardKinds) if (!found.some((card) => card.kind === kind)) dropped.push({ kind, tag })
    }
    const appended = await store.append({ entries, expects: overlay.expects(own.values()), cards, dropped })
    if (appended.kind === 'kept' || appended.kind === 'known')
      return { kind: 'read', fresh: appended.kind === 'kept' ? entries.length : 0, again, kept: true }
    const told =
      appended.kind === 'moved' ? fault('others-write', '', '') : fault('key-taken', appended.by, appended.value)
    return { kind: 'refused', faults: [{ line: 1, fault: told }] }
  }

const knownAs = async (store: RegisterStore, draft: Draft, head: SheetRow['head']): Promise<Entry | undefined> => {
  if (head.id !== undefined) return (await store.entry(head.id))?.entry
  return draft.key === undefined ? undefined : (await store.known(draft.key))[0]?.entry
}
