// What the store keeps at hand of a wrench, a gauge or a bench run: folded from its book when something is added, and read back as entries.

import { type Book, foldBook, gaugeOf, runOf, wrenchOf } from '../register/book.ts'
import { lastingOf } from '../register/event-rules.ts'
import type { Entry } from '../register/records.ts'
import type { RunFolder } from '../register/run-folders.ts'
import { statusOf, type Today } from '../register/status.ts'
import type { Card, CardPage, FoldCards } from '../store/store.ts'

/** Up to the newest that counts today; what lies ahead of it was kept by a clock that was ahead. */
const countingOf = <T extends { readonly entry: { readonly body: { readonly date: string } } }>(
  newestFirst: readonly T[],
  today: string,
): readonly T[] => {
  const counts = newestFirst.findIndex(({ entry }) => entry.body.date <= today)
  return counts === -1 ? newestFirst : newestFirst.slice(0, counts + 1)
}

/** What a card row holds of a wrench: the entries that its status today and later follows from, oldest first. */
const summaryOf = (book: Book, tag: string, today: string): readonly Entry[] => {
  const folder = wrenchOf(book, tag)
  if (!folder) return []
  const checks = countingOf(folder.checks, today)
  const check = checks.at(-1)
  const since = check?.order ?? -1
  // The last of each, not only those that take a wrench away: without what ended it, it would be away for good.
  const lasting = [folder.events, folder.events.filter(({ entry }) => entry.body.date <= today)].map(lastingOf)
  const kept = [
    folder.card,
    ...checks,
    ...lasting.flatMap(({ retired, moved }) => [retired, moved]).filter((event) => event !== undefined),
    ...folder.events.filter(({ order }) => order > since),
    ...folder.events.filter(({ entry }) => check && entry.body.date >= check.entry.body.date),
    ...folder.uses,
  ]
  const once = [...new Map(kept.map((one) => [one.entry.id, one])).values()]
  return once.sort((one, other) => one.order - other.order).map(({ entry }) => bare(entry))
}

// Folded alone, an entry may not point to one that is not there.
const bare = (entry: Entry): Entry => {
  const { supersedes: _, why: __, ...rest } = entry
  return rest as Entry
}

/** All of a run: what it says follows from its readings, and a list of runs tells it. */
const runCard = ({ opening, readings, finish, again }: RunFolder): Card => {
  const { tag, asked } = opening.entry.body
  const due = again.find(({ isDone }) => !isDone)?.due
  const summary = [opening, ...readings, ...(finish ? [finish] : [])].map(({ entry }) => bare(entry))
  return { kind: 'run', tag, name: asked, ...(due === undefined ? {} : { due }), retired: false, summary }
}

/** The rows that find a tag's cards, as they follow from its book. */
export const cardsOf = (book: Book, tag: string, now: Today): Card[] => {
  const folder = wrenchOf(book, tag)
  const gauge = gaugeOf(book, tag)
  const run = runOf(book, tag)
  const cards: Card[] = []
  if (folder) {
    const { name, place } = folder.card.entry.body
    const status = statusOf(book, folder, now)
    cards.push({
      kind: 'wrench',
      tag: folder.tag,
      name,
      ...(place === undefined ? {} : { place }),
      ...(status.due ? { due: status.due.on } : {}),
      retired: status.status === 'retired',
      summary: summaryOf(book, tag, now.today),
    })
  }
  if (gauge) {
    const { tag: own, name, place } = gauge.entry.body
    const where = place === undefined ? {} : { place }
    cards.push({ kind: 'gauge', tag: own, name, ...where, retired: false, summary: [bare(gauge.entry)] })
  }
  if (run) cards.push(runCard(run))
  return cards
}

/** Raised where the rows of one history come out otherwise than before: those that are stored are then folded anew. */
export const FOLD_VERSION = 2

/** Folds a tag's rows from its own history alone: none of them hangs on the gauges of its checks. */
export const foldRows =
  (now: Today): FoldCards =>
  (tag, history) =>
    cardsOf(foldBook(history.map(({ entry }) => entry)), tag, now)

/** Whether a row holds what has not happened yet: it was folded by a clock that was ahead, and may lack what counts today. */
export const liesAhead = ({ summary }: Pick<Card, 'summary'>, { today }: Today): boolean =>
  (summary as readonly Entry[]).some(({ body }) => 'date' in body && body.date !== undefined && body.date > today)

export const entriesIn = (page: Pick<CardPage, 'cards'>): Entry[] =>
  page.cards.flatMap(({ summary }) => summary as Entry[])
