// The bench runs of the shop: one whole, all of them as they stand, and those that are to be measured again.
import { foldBook, runOf, type Withdrawn } from '../register/book.ts'
import type { Entry } from '../register/records.ts'
import type { RunFolder } from '../register/run-folders.ts'
import type { RegisterStore } from '../store/lazy.ts'
import { entriesIn } from './card-rows.ts'

export interface RunPage {
  readonly runs: readonly RunFolder[]
  readonly next?: string | undefined
}

export interface FoundRun {
  readonly folder: RunFolder
  /** All that was ever kept of it, in the order of the record. */
  readonly entries: readonly Entry[]
  /** Readings that were taken back, with why. */
  readonly withdrawn: readonly Withdrawn[]
}

export interface Runs {
  /** A run with all that belongs to it; undefined where there is none of this tag. */
  readonly one: (tag: string) => Promise<FoundRun | undefined>
  /** By tag, a page at a time. */
  readonly page: (limit: number, after?: string) => Promise<RunPage>
  /** Those with a planned re-run that is due by a day, the earliest first. */
  readonly dueBy: (day: string) => Promise<readonly RunFolder[]>
}

const PAGE = 200

const foldersIn = (entries: readonly Entry[]): RunFolder[] => [...foldBook(entries).runs.values()]

const isOfRun = ({ kind }: Entry): boolean => kind === 'run' || kind === 'run-reading' || kind === 'run-finish'

export const createRuns = (store: Pick<RegisterStore, 'history' | 'cards'>): Runs => ({
  one: async (tag) => {
    const entries = (await store.history(tag)).map(({ entry }) => entry)
    const folder = runOf(foldBook(entries), tag)
    if (!folder) return undefined
    const byId = new Map(entries.map((entry) => [entry.id, entry]))
    const chainOf = (id: string | undefined): Entry[] => {
      const entry = id === undefined ? undefined : byId.get(id)
      return entry ? [...chainOf(entry.supersedes), entry] : []
    }
    const withdrawn = entries.flatMap((entry): Withdrawn[] => {
      if (entry.kind !== 'withdrawal') return []
      const earlier = chainOf(entry.supersedes)
      return earlier.some(isOfRun) ? [{ by: entry, earlier }] : []
    })
    const own = new Set(withdrawn.map(({ by }) => by.id))
    return { folder, withdrawn, entries: entries.filter((entry) => isOfRun(entry) || own.has(entry.id)) }
  },
  page: async (limit, after) => {
    const page = await store.cards({ order: 'tag', kind: 'run', limit, after })
    return { runs: foldersIn(entriesIn(page)), ...(page.next === undefined ? {} : { next: page.next }) }
  },
  dueBy: async (day) => {
    const found: RunFolder[] = []
    let after: string | undefined
    do {
      const page = await store.cards({ order: 'due', kind: 'run', limit: PAGE, dueBy: day, after })
      found.push(...page.cards.flatMap((card) => foldersIn(entriesIn({ cards: [card] }))))
      after = page.next
    } while (after !== undefined)
    return found
  },
})
