// Entries of runs folded into what stands now. They come in the order in which they were added; a correction takes the place of
// what it corrects, and what fits nowhere is listed with the reason. Nothing is lost.
import { addMonths } from '../mechanics/check-due.ts'
import { foldTag } from '../register/parts.ts'
import { isSameName, type Reading, type RunEntry, type RunKind } from './run.ts'

export interface KeptRun<K extends RunKind = RunKind> {
  readonly entry: RunEntry<K>
  /** What it replaced, oldest first; why is told by the entry after it. */
  readonly earlier: readonly RunEntry[]
}

/** One reading with when it was taken and as what one who took it wrote. */
export interface TakenReading extends Reading {
  readonly entry: string
  readonly date: string
  readonly role: RunEntry['by']['role']
}

/** A re-run that was planned: when it is due, and whether readings of it are there. */
export interface PlannedAgain {
  readonly months: number
  readonly due: string
  readonly isDone: boolean
}

export interface StandingRun {
  readonly opening: KeptRun<'run'>
  readonly readings: ReadonlyArray<KeptRun<'run-reading'>>
  readonly finish?: KeptRun<'run-finish'>
  readonly again: readonly PlannedAgain[]
}

export const runStrayReasons = [
  'same-id',
  'supersedes-unknown',
  'superseded-already',
  'supersedes-other-kind',
  'tag-changed',
  'tag-taken',
  'no-such-run',
  'no-such-condition',
  'finished-already',
] as const
export type RunStrayReason = (typeof runStrayReasons)[number]

export interface RunStray {
  readonly entry: RunEntry
  readonly reason: RunStrayReason
}

export interface RunBook {
  /** By folded tag. */
  readonly runs: ReadonlyMap<string, StandingRun>
  readonly strays: readonly RunStray[]
}

const tagOfRun = (entry: RunEntry): string => foldTag(entry.kind === 'run' ? entry.body.tag : entry.body.run)

/** Corrections in the place of what they correct: each chain by its last entry, in the order of the first ones. */
const chainsOf = (entries: readonly RunEntry[], strays: RunStray[]): KeptRun[] => {
  const chains: RunEntry[][] = []
  const byEnd = new Map<string, RunEntry[]>()
  const seen = new Set<string>()
  const clash = (entry: RunEntry): RunStrayReason | undefined => {
    if (seen.has(entry.id)) return 'same-id'
    if (entry.supersedes === undefined) return undefined
    const replaced = byEnd.get(entry.supersedes)?.at(-1)
    if (!replaced) return seen.has(entry.supersedes) ? 'superseded-already' : 'supersedes-unknown'
    if (replaced.kind !== entry.kind) return 'supersedes-other-kind'
    return tagOfRun(replaced) === tagOfRun(entry) ? undefined : 'tag-changed'
  }
  for (const entry of entries) {
    const reason = clash(entry)
    if (reason) {
      strays.push({ entry, reason })
      continue
    }
    seen.add(entry.id)
    const held = entry.supersedes === undefined ? undefined : byEnd.get(entry.supersedes)
    if (held && entry.supersedes !== undefined) byEnd.delete(entry.supersedes)
    const chain = held ?? []
    if (!held) chains.push(chain)
    chain.push(entry)
    byEnd.set(entry.id, chain)
  }
  return chains.map((chain) => ({ entry: chain.at(-1) as RunEntry, earlier: chain.slice(0, -1) }))
}

const isKept =
  <K extends RunKind>(kind: K) =>
  (kept: KeptRun): kept is KeptRun<K> =>
    kept.entry.kind === kind

const againOf = (opening: KeptRun<'run'>, readings: ReadonlyArray<KeptRun<'run-reading'>>): PlannedAgain[] =>
  (opening.entry.body.again ?? []).map((months) => ({
    months,
    due: addMonths(opening.entry.body.date, months),
    isDone: readings.some(({ entry }) => entry.body.again === months),
  }))

/** Folds the entries into runs. The same entries give the same book, whoever folds them. */
export const foldRuns = (entries: readonly RunEntry[]): RunBook => {
  const strays: RunStray[] = []
  const kept = chainsOf(entries, strays)
  const openings = new Map<string, KeptRun<'run'>>()
  for (const opening of kept.filter(isKept('run'))) {
    const tag = tagOfRun(opening.entry)
    if (openings.has(tag)) strays.push({ entry: opening.entry, reason: 'tag-taken' })
    else openings.set(tag, opening)
  }
  const readings = new Map<string, Array<KeptRun<'run-reading'>>>()
  for (const one of kept.filter(isKept('run-reading'))) {
    const tag = tagOfRun(one.entry)
    const opening = openings.get(tag)
    const isNamed = opening?.entry.body.conditions.some(({ name }) => isSameName(name, one.entry.body.condition))
    if (!isNamed) strays.push({ entry: one.entry, reason: opening ? 'no-such-condition' : 'no-such-run' })
    else readings.set(tag, [...(readings.get(tag) ?? []), one])
  }
  const finishes = new Map<string, KeptRun<'run-finish'>>()
  for (const finish of kept.filter(isKept('run-finish'))) {
    const tag = tagOfRun(finish.entry)
    if (!openings.has(tag)) strays.push({ entry: finish.entry, reason: 'no-such-run' })
    else if (finishes.has(tag)) strays.push({ entry: finish.entry, reason: 'finished-already' })
    else finishes.set(tag, finish)
  }
  const runs = [...openings].map(([tag, opening]): [string, StandingRun] => {
    const own = readings.get(tag) ?? []
    const finish = finishes.get(tag)
    return [tag, { opening, readings: own, again: againOf(opening, own), ...(finish ? { finish } : {}) }]
  })
  return { runs: new Map(runs), strays }
}

export const runOf = (book: RunBook, tag: string): StandingRun | undefined => book.runs.get(foldTag(tag))

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
