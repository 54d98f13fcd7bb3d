// Runs out of the register's book, and their readings as judging takes them.
import type { Kept, StrayReason } from '../register/book.ts'
import { foldBook, type Stray } from '../register/book.ts'
import type { Entry } from '../register/records.ts'
import type { RunFolder } from '../register/run-folders.ts'
import { isSameName, type Reading, type RunEntry, type RunKind } from './run.ts'

export { runOf } from '../register/book.ts'

export type KeptRun<K extends RunKind = RunKind> = Kept<K>
export type StandingRun = RunFolder
export type RunStrayReason = StrayReason

/** One reading with when it was taken and as what one who took it wrote. */
export interface TakenReading extends Reading {
  readonly entry: string
  readonly date: string
  readonly role: RunEntry['by']['role']
}

export interface RunBook {
  /** By folded tag. */
  readonly runs: ReadonlyMap<string, StandingRun>
  readonly strays: readonly Stray[]
}

/** Folds entries into runs. The same entries give the same book, whoever folds them. */
export const foldRuns = (entries: readonly Entry[]): RunBook => foldBook(entries)

/** The readings under a condition, in order: of the run itself, or of a re-run so many months on. */
export const readingsUnder = (run: StandingRun, condition: string, again?: number): readonly TakenReading[] =>
  run.readings
    .filter(({ entry }) => isSameName(entry.body.condition, condition) && entry.body.again === again)
    .flatMap(({ entry }) =>
      entry.body.readings.map((reading) => ({
        ...reading,
        entry: entry.id,
        date: entry.body.date,
        role: entry.by.role,
      })),
    )
