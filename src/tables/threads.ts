// Threads by name: nominal diameter and pitch. Geometry is worked out from them (mechanics/thread-friction.ts).
// Sources: ISO 261 and ISO 262 (metric coarse, and the fine pitches in common use), ASME B1.1 (UNC, UNF). All from memory;
// the rows that published stress areas and torque tables name agree (tests/published).
import type { Citation } from './citation.ts'

export const isoThreads: Citation = {
  title: 'ISO 261 and ISO 262, general purpose metric screw threads',
  where: 'coarse and common fine pitches',
  standing: 'from memory',
}
export const unifiedThreads: Citation = {
  title: 'ASME B1.1, Unified inch screw threads',
  where: 'UNC and UNF series',
  standing: 'from memory',
}

export const threadSeries = ['coarse', 'fine', 'UNC', 'UNF'] as const
export type ThreadSeries = (typeof threadSeries)[number]

export interface ThreadRow {
  /** As it is written: M12x1.75, 3/8-16, #10-32. */
  readonly name: string
  readonly series: ThreadSeries
  readonly system: 'metric' | 'inch'
  /** Nominal diameter and pitch [m]. */
  readonly d: number
  readonly P: number
  readonly from: Citation
}

const MM = 0.001
const INCH = 0.0254

// d [mm], coarse pitch, then fine pitches [mm].
const metric: ReadonlyArray<readonly [number, number, ...number[]]> = [
  [3, 0.5],
  [3.5, 0.6],
  [4, 0.7],
  [5, 0.8],
  [6, 1, 0.75],
  [7, 1],
  [8, 1.25, 1],
  [10, 1.5, 1.25, 1],
  [12, 1.75, 1.5, 1.25],
  [14, 2, 1.5, 1.25],
  [16, 2, 1.5],
  [18, 2.5, 2, 1.5],
  [20, 2.5, 2, 1.5],
  [22, 2.5, 2, 1.5],
  [24, 3, 2, 1.5],
  [27, 3, 2, 1.5],
  [30, 3.5, 2, 1.5],
  [33, 3.5, 2, 1.5],
  [36, 4, 3, 2, 1.5],
  [39, 4, 3, 2],
  [42, 4.5, 3, 2],
  [45, 4.5, 3, 2],
  [48, 5, 3, 2],
]

// Name of the diameter, d [in], threads an inch UNC and UNF. #n: 0.060 + 0.013 n.
const unified: ReadonlyArray<readonly [string, number, number, number]> = [
  ['#4', 0.112, 40, 48],
  ['#5', 0.125, 40, 44],
  ['#6', 0.138, 32, 40],
  ['#8', 0.164, 32, 36],
  ['#10', 0.19, 24, 32],
  ['#12', 0.216, 24, 28],
  ['1/4', 0.25, 20, 28],
  ['5/16', 0.3125, 18, 24],
  ['3/8', 0.375, 16, 24],
  ['7/16', 0.4375, 14, 20],
  ['1/2', 0.5, 13, 20],
  ['9/16', 0.5625, 12, 18],
  ['5/8', 0.625, 11, 18],
  ['3/4', 0.75, 10, 16],
  ['7/8', 0.875, 9, 14],
  ['1', 1, 8, 12],
  ['1-1/8', 1.125, 7, 12],
  ['1-1/4', 1.25, 7, 12],
  ['1-3/8', 1.375, 6, 12],
  ['1-1/2', 1.5, 6, 12],
]

const metricRow = (d: number, P: number, series: ThreadSeries): ThreadRow => ({
  name: `M${d}x${P}`,
  series,
  system: 'metric',
  d: d * MM,
  P: P * MM,
  from: isoThreads,
})
const inchRow = (name: string, d: number, n: number, series: ThreadSeries): ThreadRow => ({
  name: `${name}-${n}`,
  series,
  system: 'inch',
  d: d * INCH,
  P: INCH / n,
  from: unifiedThreads,
})

/** Every thread once, metric before inch, by diameter, coarse first. */
export const threadTable: readonly ThreadRow[] = [
  ...metric.flatMap(([d, coarse, ...fine]) => [
    metricRow(d, coarse, 'coarse'),
    ...fine.map((P) => metricRow(d, P, 'fine')),
  ]),
  ...unified.flatMap(([name, d, unc, unf]) => [inchRow(name, d, unc, 'UNC'), inchRow(name, d, unf, 'UNF')]),
]

// Sizes reach here through units; a micrometre tells every pair of rows apart.
const same = (one: number, other: number): boolean => Math.abs(one - other) < 1e-6

/** The row of a diameter [m] in a system, and of a pitch [m]: without one the coarse thread. Undefined where the table has none. */
export const findThread = (system: 'metric' | 'inch', d: number, P?: number): ThreadRow | undefined =>
  threadTable.find(
    (row) =>
      row.system === system &&
      same(row.d, d) &&
      (P === undefined ? row.series === 'coarse' || row.series === 'UNC' : same(row.P, P)),
  )
