// What a bench run takes: rules for its opening, its readings and its end, judged against the runs as they stand.
import { type Fault, fault } from '../core/fault.ts'
import { type Book, type Kept, runOf } from './book.ts'
import { foldTag } from './parts.ts'
import type { BodyOf, Draft } from './records.ts'
import { isSameName } from './run-bodies.ts'

/** A run takes no more than this: beyond it nobody reads its page, and folding it would be felt. */
export const MOST_RUN_ENTRIES = 500

/** A condition that was read under stays, whatever else of the opening is mended. */
const droppedFaults = (book: Book, { tag, conditions }: BodyOf<'run'>): Fault[] => {
  const used = (runOf(book, tag)?.readings ?? []).map(({ entry }) => entry.body.condition)
  const dropped = used.find((name) => !conditions.some((one) => isSameName(one.name, name)))
  return dropped === undefined ? [] : [fault('condition-in-use', 'conditions', dropped)]
}

const openingFaults = (book: Book, { body, supersedes }: Draft<'run'>, replaced: Kept | undefined): Fault[] => {
  const { tag } = body
  if (replaced?.entry.kind === 'run') {
    const held = replaced.entry.body.tag
    return foldTag(held) === foldTag(tag) ? droppedFaults(book, body) : [fault('tag-fixed', 'tag', tag, { tag: held })]
  }
  return runOf(book, tag) && supersedes === undefined ? [fault('tag-taken', 'tag', tag)] : []
}

const readingFaults = (book: Book, { body, supersedes }: Draft<'run-reading'>): Fault[] => {
  const { run, condition, again } = body
  const folder = runOf(book, run)
  if (!folder) return [fault('no-such-run', 'run', run)]
  const names = folder.opening.entry.body.conditions.map(({ name }) => name)
  const planned = folder.again.map(({ months }) => `${months} months`)
  const isNew = supersedes === undefined
  return [
    ...(names.some((name) => isSameName(name, condition))
      ? []
      : [fault('no-such-condition', 'condition', condition, { options: names })]),
    ...(again === undefined || folder.again.some(({ months }) => months === again)
      ? []
      : [fault('not-planned', 'again', `${again} months`, { options: planned.length > 0 ? planned : ['-'] })]),
    // What is measured again later is what the run was finished for.
    ...(isNew && again === undefined && folder.finish ? [fault('run-finished', 'run', run)] : []),
    ...(isNew && folder.readings.length >= MOST_RUN_ENTRIES
      ? [fault('run-full', 'run', run, { most: String(MOST_RUN_ENTRIES) })]
      : []),
  ]
}

const finishFaults = (book: Book, { body, supersedes }: Draft<'run-finish'>): Fault[] => {
  const folder = runOf(book, body.run)
  if (!folder) return [fault('no-such-run', 'run', body.run)]
  return folder.finish && supersedes === undefined ? [fault('run-finished', 'run', body.run)] : []
}

/** Every fault of a run's entry, but for the day and the wrench it names. */
export const runFaults = (
  book: Book,
  draft: Draft<'run'> | Draft<'run-reading'> | Draft<'run-finish'>,
  replaced: Kept | undefined,
): Fault[] => {
  if (draft.kind === 'run') return openingFaults(book, draft, replaced)
  return draft.kind === 'run-reading' ? readingFaults(book, draft) : finishFaults(book, draft)
}
