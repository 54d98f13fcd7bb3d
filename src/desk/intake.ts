// Reading a sheet in: every row judged as if it were typed, one after the other, against the record as it would then be. All of it
// is kept, or nothing. A row that is there already (the same id, key or content) is counted and left alone, so that the same sheet,
// or a longer one, can be read in again.
import { fault } from '../core/fault.ts'
import { whileWriting } from '../core/outage.ts'
import { readSheet, type SheetFault, type SheetRow } from '../keeping/sheet.ts'
import { admissionFaults, mayRecord } from '../register/admit.ts'
import { foldBook } from '../register/book.ts'
import { foldTag } from '../register/parts.ts'
import { type Draft, type Entry, entryFrom, entrySchema, tagOf } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import type { RegisterStore } from '../store/lazy.ts'
import { type Card, type CardName, cardKinds } from '../store/store.ts'
import { cardsOf } from './card-rows.ts'
import { firstUser, walkForGauge, wrenchesNaming } from './gauge-users.ts'
import { gaugeTags, namedIn } from './histories.ts'
import type { Writer } from './keep-entry.ts'
import { createOverlay } from './overlay.ts'
import { createTwins, type Drafted, draftOf } from './sheet-drafts.ts'
import type { ShopParts } from './shop.ts'
import { shopDay } from './shop-day.ts'

export type Intake =
  | { readonly kind: 'refused'; readonly faults: readonly SheetFault[] }
  | { readonly kind: 'forbidden' }
  /** `fresh`: rows that are new; `again`: rows that were there. `kept`: whether they are in the record now. */
  | { readonly kind: 'read'; readonly fresh: number; readonly again: number; readonly kept: boolean }

/** More than these nobody reads at once; they are counted. */
export const MOST_SHEET_FAULTS = 500

/** After so many rows whoever else asks has a turn: a long sheet is no reason to wait. */
const AT_ONCE = 20
const MOST_TRIES = 5

/** Somebody wrote between judging and keeping: nothing was kept. */
interface Overtaken {
  readonly kind: 'overtaken'
  readonly refused: Intake
}

const othersTurn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

const readingOf =
  ({ store, now, id, timeZone }: ShopParts) =>
  async (text: string, who: Writer, dryRun: boolean): Promise<Intake | Overtaken> => {
    if (!mayRecord({ by: who, kind: 'wrench' })) return { kind: 'forbidden' }
    const sheet = readSheet(text)
    if (!sheet.ok) return { kind: 'refused', faults: sheet.faults }
    const today = { today: shopDay(timeZone)(now()) }
    const at = now().toISOString()
    const faults: SheetFault[] = []
    const drafts = sheet.rows.flatMap((row): Drafted[] => {
      const made = draftOf(row, { role: who.role, door: who.door }, now())
      if ('draft' in made) return [made]
      faults.push(...made.map((one) => ({ line: row.line, fault: one })))
      return []
    })
    const isEmpty = (await store.since(0, 1)).length === 0
    const overlay = createOverlay(store)
    const twinOf = createTwins()
    const own = new Map<string, string>()
    const hangsOn = new Map<string, string>()
    let asOf: number | undefined
    const entries: Entry[] = []
    let again = 0
    let row = 0
    for (const { line, draft, head } of drafts) {
      if (++row % AT_ONCE === 0) await othersTurn()
      const held = isEmpty ? [] : await heldAs(store, draft, head)
      const twin = twinOf({ line, draft, head }, held.length)
      if (twin.is === 'wrong') {
        faults.push({ line, fault: twin.fault })
        continue
      }
      const [known] = held
      if (known || twin.is === 'same') {
        if (!known || isSameDraft(known, draft)) again++
        else
          faults.push({
            line,
            fault: fault('key-taken', head.id === undefined ? 'key' : 'id', head.id ?? draft.key ?? ''),
          })
        continue
      }
      const replaced = draft.supersedes === undefined ? undefined : await overlay.entry(draft.supersedes)
      const tags = [tagOf(draft), replaced && tagOf(replaced)].filter((tag) => tag !== undefined)
      const user: string[] = []
      if (draft.kind === 'withdrawal' && replaced?.kind === 'gauge') {
        const { tag } = replaced.body
        const walk = await walkForGauge(store, tag)
        const named = [...walk.wrenches, ...wrenchesNaming(entries, tag)]
        const found = await firstUser(named, tag, (one) => overlay.of([one]))
        if (found !== undefined) user.push(found)
        asOf ??= walk.last
      }
      const book = await overlay.bookFor(draft, [...tags, ...namedIn(draft), ...user])
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
      for (const tag of [...tags, ...namedIn(draft)]) hangsOn.set(foldTag(tag), tag)
    }
    if (faults.length > 0) return { kind: 'refused', faults: faults.sort((one, other) => one.line - other.line) }
    if (dryRun || entries.length === 0) return { kind: 'read', fresh: entries.length, again, kept: !dryRun }
    const cards: Card[] = []
    const dropped: CardName[] = []
    for (const tag of own.values()) {
      const all = await overlay.of([tag])
      const found = cardsOf(foldBook(await overlay.of([tag, ...gaugeTags(all)])), tag, today)
      cards.push(...found)
      // What was taken back altogether has no card any more.
      for (const kind of cardKinds) if (!found.some((card) => card.kind === kind)) dropped.push({ kind, tag })
    }
    const appended = await store.append({ entries, expects: overlay.expects(hangsOn.values()), asOf, cards, dropped })
    if (appended.kind === 'kept') return { kind: 'read', fresh: entries.length, again, kept: true }
    if (appended.kind === 'known') return { kind: 'read', fresh: 0, again: again + entries.length, kept: true }
    const told =
      appended.kind === 'moved' ? fault('others-write', '', '') : fault('key-taken', appended.by, appended.value)
    return { kind: 'overtaken', refused: { kind: 'refused', faults: [{ line: 1, fault: told }] } }
  }

/** What the record holds under a row's id or key; the first is the one that the row is held against. */
const heldAs = async (store: RegisterStore, draft: Draft, head: SheetRow['head']): Promise<Entry[]> => {
  const own = head.id === undefined ? undefined : await store.entry(head.id)
  if (own) return [own.entry]
  return draft.key === undefined ? [] : (await store.known(draft.key)).map(({ entry }) => entry)
}

/** Reads a sheet in; where others write meanwhile it is judged again, and finds then what they wrote. */
export const intakeOf = (parts: ShopParts): ((text: string, who: Writer, dryRun: boolean) => Promise<Intake>) => {
  const readIn = readingOf(parts)
  return async (text, who, dryRun) => {
    for (let tries = 1; ; tries++) {
      const read = await whileWriting(() => readIn(text, who, dryRun))
      if (read.kind !== 'overtaken') return read
      if (tries === MOST_TRIES) return read.refused
    }
  }
}
