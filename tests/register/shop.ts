// The record of a demo garage, Kiln Lane Garage, as tests write it: short calls that make whole entries.
import { quantity } from '../../src/core/quantity.ts'
import { type UnitSymbol, units } from '../../src/core/unit.ts'
import { type Book, foldBook, type WrenchFolder, wrenchOf } from '../../src/register/book.ts'
import { type Measured, measured } from '../../src/register/parts.ts'
import { type Entry, entrySchema, type Kind } from '../../src/register/records.ts'

export const m = (value: number, unit: UnitSymbol): Measured => measured(quantity(value, units[unit]))
export const lbft = (value: number): Measured => m(value, 'lbf·ft')
export const nm = (value: number): Measured => m(value, 'N·m')

export const by = { role: 'keeper', door: 'kiosk' } as const

/** Any entry, by the shape that everything from outside passes; `at` is the day it was recorded. */
export const entry = <K extends Kind>(
  id: string,
  kind: K,
  body: unknown,
  more: { readonly supersedes?: string; readonly why?: string; readonly at?: string } = {},
): Entry => entrySchema.parse({ id, at: '2026-01-02T08:00:00Z', by, kind, body, ...more }) as Entry

export const card = (tag = 'W-07', more: object = {}): Entry =>
  entry(`card-${tag}`, 'wrench', {
    tag,
    name: 'Half-inch click wrench',
    'wrench-type': 'click',
    least: lbft(30),
    most: lbft(150),
    mark: lbft(1),
    lever: m(14, 'in'),
    unit: 'lbf·ft',
    ...more,
  })

export const gauge = (tag = 'S-1', more: object = {}): Entry =>
  entry(`gauge-${tag}`, 'gauge', {
    tag,
    name: 'Luggage scale',
    'gauge-type': 'luggage-scale',
    tolerance: { share: m(2, '%'), of: 'reading' },
    checked: '2026-01-01',
    ...more,
  })

interface CheckMore {
  readonly tag?: string
  readonly state?: 'as-found' | 'as-left'
  readonly body?: object
  readonly supersedes?: string
  readonly why?: string
}

/** A check on a tester: settings and what the tester read, in lbf·ft. */
export const tested = (
  id: string,
  date: string,
  points: ReadonlyArray<readonly [number, readonly number[]]>,
  { tag = 'W-07', state = 'as-found', body = {}, ...more }: CheckMore = {},
): Entry =>
  entry(
    id,
    'check',
    {
      wrench: tag,
      date,
      way: 'tester',
      state,
      points: points.map(([setting, readings]) => ({ setting: lbft(setting), readings: readings.map(lbft) })),
      ...body,
    },
    more,
  )

/** A check with a scale at 12 in, where lbf read as lbf·ft. */
export const pulled = (
  id: string,
  date: string,
  points: ReadonlyArray<readonly [number, readonly number[]]>,
  { tag = 'W-07', state = 'as-found', body = {}, ...more }: CheckMore = {},
): Entry =>
  entry(
    id,
    'check',
    {
      wrench: tag,
      date,
      way: 'pull',
      distance: m(12, 'in'),
      gauge: 'S-1',
      'own-weight': { lie: 'upright' },
      state,
      points: points.map(([setting, forces]) => ({
        setting: lbft(setting),
        readings: forces.map((force) => m(force, 'lbf')),
      })),
      ...body,
    },
    more,
  )

export const event = (
  id: string,
  what: string,
  date: string,
  more: { readonly tag?: string; readonly body?: object; readonly supersedes?: string; readonly why?: string } = {},
): Entry => {
  const { tag = 'W-07', body = {}, ...rest } = more
  return entry(id, 'event', { wrench: tag, what, date, ...body }, rest)
}

export const uses = (
  id: string,
  date: string,
  count: number,
  since: 'check' | 'count' = 'check',
  tag = 'W-07',
): Entry => entry(id, 'uses', { wrench: tag, date, count, since })

export const withdrawal = (id: string, supersedes: string, why = 'noted twice'): Entry =>
  entry(id, 'withdrawal', {}, { supersedes, why })

export const bookOf = (...entries: readonly Entry[]): Book => foldBook(entries)

export const folderOf = (book: Book, tag = 'W-07'): WrenchFolder => {
  const folder = wrenchOf(book, tag)
  if (!folder) throw new Error(`no ${tag} in this book`)
  return folder
}
