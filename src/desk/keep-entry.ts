// Keeping one entry: read, judged against the record as it stands, appended where nobody changed meanwhile what it hangs on.
// A duty: what is answered as kept is in the store.
import { type Fault, fault } from '../core/fault.ts'
import { whileWriting } from '../core/outage.ts'
import { keepables } from '../keeping/index.ts'
import { admissionFaults, mayRecord } from '../register/admit.ts'
import { type Book, foldBook, gaugeOf, runOf, wrenchOf } from '../register/book.ts'
import { foldTag } from '../register/parts.ts'
import { type By, type Draft, type Entry, entryFrom, entrySchema, type Kind, tagOf } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import type { Today } from '../register/status.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Filed } from '../store/store.ts'
import { cardsOf } from './card-rows.ts'
import { firstUser, walkForGauge } from './gauge-users.ts'
import { gaugeTags, historyOf, namedIn } from './histories.ts'
import { readQuestion } from './read.ts'

/** Who writes, and the sender's own name for it: the same key a second time is the same entry. */
export interface Writer extends By {
  readonly key?: string | undefined
}

export type Refusal =
  | { readonly kind: 'refused'; readonly faults: readonly Fault[]; readonly missing: readonly string[] }
  | { readonly kind: 'forbidden' }

export type Keeping = Refusal | { readonly kind: 'kept'; readonly entry: Entry; readonly again: boolean }

/** It would be kept as it is; `again`: it is there already. */
export type Judging = Refusal | { readonly kind: 'judged'; readonly again: boolean }

export interface Keeper {
  readonly keep: (kind: Kind, raw: unknown, who: Writer) => Promise<Keeping>
  /** The same judgement, and nothing is kept. */
  readonly judge: (kind: Kind, raw: unknown, who: Writer) => Promise<Judging>
}

export interface KeeperParts {
  readonly store: RegisterStore
  readonly now: () => Date
  readonly id: () => string
  readonly today: () => Today
}

const MOST_TRIES = 5

const draftOf = (kind: Kind, values: Readonly<Record<string, unknown>>, raw: unknown, who: Writer): Draft => {
  const { supersedes, why } = values as { supersedes?: string; why?: string }
  const body = keepables[kind].body(values, raw as Record<string, unknown>)
  return {
    kind,
    body,
    by: { role: who.role, door: who.door },
    ...(supersedes === undefined ? {} : { supersedes }),
    ...(why === undefined ? {} : { why }),
    ...(who.key === undefined ? {} : { key: who.key }),
  } as Draft
}

interface Touched {
  readonly own: readonly string[]
  readonly hangsOn: readonly string[]
  readonly read: readonly string[]
  readonly asOf?: number
}

const correctionIn = (raw: unknown): { readonly supersedes?: string } =>
  typeof raw === 'object' && raw !== null && 'supersedes' in raw ? { supersedes: String(raw.supersedes) } : {}

const lastSeq = (filed: readonly Filed[]): number => filed.at(-1)?.seq ?? 0

const refused = (faults: readonly Fault[], missing: readonly string[] = []): Refusal => ({
  kind: 'refused',
  faults,
  missing,
})

// A sender who heard nothing sends again: the same content is the same entry, another one is a slip.
const sameOr = (entry: Entry, draft: Draft): Keeping =>
  isSameDraft(entry, draft)
    ? { kind: 'kept', entry, again: true }
    : refused([fault('key-taken', 'key', draft.key ?? '')])

// What is kept can be read in again from its own export, or it is not kept: a body that its shape refuses is ours to mend.
const soundEntry = (draft: Draft, id: string, at: string): Entry => {
  const entry = entryFrom(draft, id, at)
  const sound = entrySchema.safeParse(entry)
  if (!sound.success)
    throw new Error(`bug: a ${draft.kind} was about to be kept that no ${draft.kind} can be: ${sound.error.message}`)
  return entry
}

interface Decision {
  readonly book: Book
  readonly filed: readonly Filed[]
  readonly touched: Touched
  readonly expects: ReadonlyArray<{ readonly tag: string; readonly seq: number }>
}

export const createKeeper = ({ store, now, id, today }: KeeperParts): Keeper => {
  /**
   * The tags that a draft is filed under; those that it hangs on, of which nothing may change meanwhile; and all that is read to
   * judge it. A gauge that is taken back hangs on the whole record, as any wrench may have been checked with it.
   */
  const touched = async (draft: Draft): Promise<Touched> => {
    const replaced = draft.supersedes === undefined ? undefined : await store.entry(draft.supersedes)
    const own = [tagOf(draft), replaced && tagOf(replaced.entry)].filter((tag) => tag !== undefined)
    const hangsOn = [...own, ...namedIn(draft)]
    if (draft.kind !== 'withdrawal' || replaced?.entry.kind !== 'gauge') return { own, hangsOn, read: hangsOn }
    const { tag } = replaced.entry.body
    const { wrenches, last } = await walkForGauge(store, tag)
    const user = await firstUser(wrenches, tag, async (one) =>
      (await historyOf(store, [one])).map(({ entry }) => entry),
    )
    return { own, hangsOn, read: [...hangsOn, ...(user === undefined ? [] : [user])], asOf: last }
  }

  /** Everything that a draft is decided on; or what is answered without deciding. */
  const decide = async (draft: Draft): Promise<Decision | Keeping> => {
    const all = await touched(draft)
    const expects = await Promise.all(
      [...new Map(all.hangsOn.map((tag) => [foldTag(tag), tag])).values()].map(async (tag) => ({
        tag,
        seq: lastSeq(await store.history(tag)),
      })),
    )
    const found = await historyOf(store, all.read)
    const filed = await historyOf(store, [...all.read, ...gaugeTags(found.map(({ entry }) => entry))])
    if (draft.key !== undefined) {
      const [known] = await store.known(draft.key)
      if (known) return sameOr(known.entry, draft)
    }
    const book = foldBook(filed.map(({ entry }) => entry))
    const faults = admissionFaults(book, draft, today().today)
    return faults.length > 0 ? refused(faults) : { book, filed, touched: all, expects }
  }

  const tryOnce = async (draft: Draft): Promise<Keeping | 'again'> => {
    const decision = await decide(draft)
    if ('kind' in decision) return decision
    const { book, filed, touched: all, expects } = decision
    const entry = soundEntry(draft, id(), now().toISOString())
    const after = foldBook([...filed.map((one) => one.entry), entry])
    const cards = all.own.flatMap((tag) => cardsOf(after, tag, today()))
    const dropped = all.own.flatMap((tag) => [
      ...(wrenchOf(book, tag) && !wrenchOf(after, tag) ? [{ kind: 'wrench' as const, tag }] : []),
      ...(gaugeOf(book, tag) && !gaugeOf(after, tag) ? [{ kind: 'gauge' as const, tag }] : []),
      ...(runOf(book, tag) && !runOf(after, tag) ? [{ kind: 'run' as const, tag }] : []),
    ])
    const appended = await store.append({ entries: [entry], expects, asOf: all.asOf, cards, dropped })
    if (appended.kind === 'kept') return { kind: 'kept', entry, again: false }
    if (appended.kind === 'known') return sameOr((appended.filed[0] as Filed).entry, draft)
    if (appended.kind === 'moved') return 'again'
    return refused([fault('key-taken', 'key', appended.value)])
  }

  const readDraft = (kind: Kind, raw: unknown, who: Writer): Draft | Refusal => {
    // Before anything is read: whoever may not write learns nothing of what is there.
    if (!mayRecord({ by: who, kind, ...correctionIn(raw) })) return { kind: 'forbidden' }
    const reading = readQuestion(keepables[kind], raw)
    if (reading.faults.length > 0 || reading.missing.length > 0) return refused(reading.faults, reading.missing)
    return draftOf(kind, reading.values, raw, who)
  }

  return {
    keep: async (kind, raw, who) => {
      const draft = readDraft(kind, raw, who)
      if (!('body' in draft)) return draft
      for (let tries = 0; tries < MOST_TRIES; tries++) {
        const kept = await whileWriting(() => tryOnce(draft))
        if (kept !== 'again') return kept
      }
      return refused([fault('others-write', '', '')])
    },
    judge: async (kind, raw, who) => {
      const draft = readDraft(kind, raw, who)
      if (!('body' in draft)) return draft
      const decision = await decide(draft)
      if (!('kind' in decision)) return { kind: 'judged', again: false }
      return decision.kind === 'kept' ? { kind: 'judged', again: true } : decision
    },
  }
}
