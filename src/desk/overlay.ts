// The record of the tags that a sheet touches, with what the sheet adds to it row by row.
import { type Book, foldBook } from '../register/book.ts'
import { foldTag } from '../register/parts.ts'
import type { Draft, Entry } from '../register/records.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Filed } from '../store/store.ts'

// Whether a row is taken hangs on cards, on what was retired and on runs begun or finished; not on the checks, uses, readings and
// other events before it.
const isWeighty = ({ kind, body, supersedes }: Pick<Draft, 'kind' | 'body' | 'supersedes'>): boolean =>
  supersedes !== undefined ||
  kind === 'wrench' ||
  kind === 'gauge' ||
  kind === 'run' ||
  kind === 'run-finish' ||
  kind === 'withdrawal' ||
  ('what' in body && body.what === 'retired')

/** The record of the tags that a sheet touches, with what it adds. */
export const createOverlay = (store: RegisterStore) => {
  const byTag = new Map<string, Filed[]>()
  const byId = new Map<string, Entry>()
  const firstNew = new Map<string, number>()
  const books = new Map<string, Book>()
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
  const of = async (tags: readonly string[]): Promise<Entry[]> => {
    const lists = await Promise.all([...new Map(tags.map((tag) => [foldTag(tag), tag])).values()].map(load))
    const once = new Map(lists.flat().map((filed) => [filed.seq, filed]))
    return [...once.values()].sort((one, other) => one.seq - other.seq).map(({ entry }) => entry)
  }
  return {
    /** All entries of some tags, in the order in which they were kept. */
    of,
    /** What a draft is judged by: folded anew only where it matters, as thousands of rows may be of one wrench. */
    bookFor: async (draft: Draft, tags: readonly string[]): Promise<Book> => {
      if (isWeighty(draft)) return foldBook(await of(tags))
      const name = tags.map(foldTag).join(' ')
      const known = books.get(name) ?? foldBook(await of(tags))
      books.set(name, known)
      return known
    },
    entry: async (id: string): Promise<Entry | undefined> => byId.get(id) ?? (await store.entry(id))?.entry,
    add: (entry: Entry, tags: readonly string[]): void => {
      const filed = { seq: seq++, entry }
      byId.set(entry.id, entry)
      if (isWeighty(entry)) books.clear()
      for (const name of new Set(tags.map(foldTag))) byTag.get(name)?.push(filed)
    },
    expects: (tags: Iterable<string>) => [...tags].map((tag) => ({ tag, seq: firstNew.get(foldTag(tag)) ?? 0 })),
  }
}
