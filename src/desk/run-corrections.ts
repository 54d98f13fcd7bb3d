// Readings of a run that were wrong: corrected or taken back, named by the number before them as the run shows them, or by the id of
// their entry. An entry of its own supersedes; who may do that is judged where every entry is.
import { fault } from '../core/fault.ts'
import { textsOf } from '../keeping/texts.ts'
import type { Kept } from '../register/book.ts'
import type { Keeping, Shop, Writer } from './shop.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>

export const runMends = ['correct', 'take-back'] as const
export type RunMend = (typeof runMends)[number]
export const isRunMend = (word: string): word is RunMend => (runMends as readonly string[]).includes(word)

const MOST_SHOWN = 12

export type Mending =
  | Exclude<Keeping, { kind: 'kept' }>
  /** `run` by its own tag. */
  | { readonly kind: 'kept'; readonly run: string; readonly again: boolean }

const plain = (told: string | readonly string[] | undefined): string =>
  typeof told === 'string' ? told.trim() : told === undefined ? '' : told.join('; ').trim()

const named = (readings: ReadonlyArray<Kept<'run-reading'>>, told: string): Kept<'run-reading'> | undefined =>
  /^\d{1,4}$/.test(told) ? readings[Number(told) - 1] : readings.find(({ entry }) => entry.id === told)

/** What is not told of a correction stays as it was. Needs run and reading, and why. */
export const mendReadings = async (shop: Shop, word: RunMend, raw: Raw, who: Writer): Promise<Mending> => {
  const { run, reading, ...more } = raw
  const missing = [...(plain(run) === '' ? ['run'] : []), ...(plain(reading) === '' ? ['reading'] : [])]
  if (plain(more['why']) === '') missing.push('why')
  if (missing.length > 0) return { kind: 'refused', faults: [], missing }
  const found = await shop.runs.one(plain(run))
  if (!found) return { kind: 'refused', faults: [fault('no-such-run', 'run', plain(run))], missing: [] }
  const { readings, opening } = found.folder
  const meant = named(readings, plain(reading))
  if (!meant) {
    const numbers = readings.slice(0, MOST_SHOWN).map((_, at) => String(at + 1))
    const options = readings.length > MOST_SHOWN ? [...numbers, `… ${readings.length}`] : numbers
    const wrong = fault('no-such-reading', 'reading', plain(reading), {
      options: options.length > 0 ? options : ['-'],
    })
    return { kind: 'refused', faults: [wrong], missing: [] }
  }
  const supersedes = meant.entry.id
  const kept =
    word === 'correct'
      ? await shop.keep('run-reading', { ...textsOf(meant.entry), ...more, supersedes }, who)
      : await shop.keep('withdrawal', { ...more, supersedes }, who)
  return kept.kind === 'kept' ? { kind: 'kept', run: opening.entry.body.tag, again: kept.again } : kept
}
