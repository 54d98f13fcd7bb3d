// Bench runs as they stand: of each its opening, its readings and its end. The chains come from the book's own fold, so a
// correction or a taking back of a reading is the same thing as one of a check.
import { addMonths } from '../mechanics/check-due.ts'
import type { Kept, Stray } from './book.ts'
import { foldTag } from './parts.ts'
import type { Entry } from './records.ts'
import { isSameName } from './run-bodies.ts'

/** A re-run that was planned: when it is due, and whether readings of it are there. */
export interface PlannedAgain {
  readonly months: number
  readonly due: string
  readonly isDone: boolean
}

export interface RunFolder {
  readonly opening: Kept<'run'>
  /** In the order in which they were taken. */
  readonly readings: ReadonlyArray<Kept<'run-reading'>>
  readonly finish?: Kept<'run-finish'>
  readonly again: readonly PlannedAgain[]
}

export interface RunChains {
  readonly openings: ReadonlyArray<Kept<'run'>>
  readonly readings: ReadonlyArray<Kept<'run-reading'>>
  readonly finishes: ReadonlyArray<Kept<'run-finish'>>
}

const againOf = (opening: Kept<'run'>, readings: RunFolder['readings']): PlannedAgain[] =>
  (opening.entry.body.again ?? []).map((months) => ({
    months,
    due: addMonths(opening.entry.body.date, months),
    isDone: readings.some(({ entry }) => entry.body.again === months),
  }))

/** The runs by folded tag; what fits none of them goes to the strays with its reason. */
export const runFolders = (
  { openings, readings, finishes }: RunChains,
  strays: Stray[],
): ReadonlyMap<string, RunFolder> => {
  const stray = (entry: Kept['entry'], reason: Stray['reason']): void =>
    void strays.push({ entry: entry as Entry, reason })
  const held = new Map<string, Kept<'run'>>()
  for (const opening of openings) {
    const tag = foldTag(opening.entry.body.tag)
    if (held.has(tag)) stray(opening.entry, 'tag-taken')
    else held.set(tag, opening)
  }
  const taken = new Map<string, Array<Kept<'run-reading'>>>()
  for (const one of readings) {
    const { run, condition } = one.entry.body
    const opening = held.get(foldTag(run))
    if (!opening) stray(one.entry, 'no-such-run')
    else if (!opening.entry.body.conditions.some(({ name }) => isSameName(name, condition)))
      stray(one.entry, 'no-such-condition')
    else taken.set(foldTag(run), [...(taken.get(foldTag(run)) ?? []), one])
  }
  const ends = new Map<string, Kept<'run-finish'>>()
  for (const finish of finishes) {
    const tag = foldTag(finish.entry.body.run)
    if (!held.has(tag)) stray(finish.entry, 'no-such-run')
    else if (ends.has(tag)) stray(finish.entry, 'finished-already')
    else ends.set(tag, finish)
  }
  return new Map(
    [...held].map(([tag, opening]): [string, RunFolder] => {
      const own = taken.get(tag) ?? []
      const finish = ends.get(tag)
      return [tag, { opening, readings: own, again: againOf(opening, own), ...(finish ? { finish } : {}) }]
    }),
  )
}
