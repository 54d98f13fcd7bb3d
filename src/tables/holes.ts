// Clearance holes. ISO 273: M5 to M16 as reprinted, the rest from memory; inch: ASME B18.2.8 normal fit, from memory.
import type { Citation } from './citation.ts'

export const iso273Reprint: Citation = {
  title: 'ISO 273, clearance holes (reprint)',
  where: 'table',
  standing: 'published',
}
export const iso273Memory: Citation = { title: 'ISO 273, clearance holes', where: 'table', standing: 'from memory' }
export const inchHolesMemory: Citation = {
  title: 'ASME B18.2.8, clearance holes',
  where: 'normal fit',
  standing: 'from memory',
}

export const holeSeries = ['fine', 'medium', 'coarse'] as const
export type HoleSeries = (typeof holeSeries)[number]

export interface HoleRow {
  /** Nominal diameter of the bolt [m]. */
  readonly d: number
  /** Hole [m] by series. */
  readonly hole: Readonly<Record<HoleSeries, number>>
  readonly from: Citation
}

const MM = 0.001
const INCH = 0.0254

const iso = (list: ReadonlyArray<readonly [number, number, number, number]>, from: Citation): readonly HoleRow[] =>
  list.map(([d, fine, medium, coarse]) => ({
    d: d * MM,
    hole: { fine: fine * MM, medium: medium * MM, coarse: coarse * MM },
    from,
  }))

export const metricHoles: readonly HoleRow[] = [
  ...iso(
    [
      [3, 3.2, 3.4, 3.6],
      [3.5, 3.7, 3.9, 4.2],
      [4, 4.3, 4.5, 4.8],
    ],
    iso273Memory,
  ),
  ...iso(
    [
      [5, 5.3, 5.5, 5.8],
      [6, 6.4, 6.6, 7],
      [8, 8.4, 9, 10],
      [10, 10.5, 11, 12],
      [12, 13, 13.5, 14.5],
      [14, 15, 15.5, 16.5],
      [16, 17, 17.5, 18.5],
    ],
    iso273Reprint,
  ),
  ...iso(
    [
      [7, 7.4, 7.6, 8],
      [18, 19, 20, 21],
      [20, 21, 22, 24],
      [22, 23, 24, 26],
      [24, 25, 26, 28],
      [27, 28, 30, 32],
      [30, 31, 33, 35],
      [33, 34, 36, 38],
      [36, 37, 39, 42],
      [39, 40, 42, 45],
      [42, 43, 45, 48],
      [45, 46, 48, 52],
      [48, 50, 52, 56],
    ],
    iso273Memory,
  ),
].sort((one, other) => one.d - other.d)

/** Inch bolts: d and normal hole [in]. */
const inchNormal: ReadonlyArray<readonly [number, number]> = [
  [0.112, 0.128],
  [0.125, 0.141],
  [0.138, 0.154],
  [0.164, 0.18],
  [0.19, 0.206],
  [0.25, 9 / 32],
  [0.3125, 11 / 32],
  [0.375, 13 / 32],
  [0.4375, 15 / 32],
  [0.5, 9 / 16],
  [0.625, 11 / 16],
  [0.75, 13 / 16],
  [0.875, 15 / 16],
  [1, 1.09375],
  [1.125, 1.21875],
  [1.25, 1.34375],
  [1.375, 1.5],
  [1.5, 1.625],
]
export const inchHoles: ReadonlyArray<{ readonly d: number; readonly normal: number; readonly from: Citation }> =
  inchNormal.map(([d, normal]) => ({ d: d * INCH, normal: normal * INCH, from: inchHolesMemory }))

/** The row of a nominal diameter [m]. */
export const findHole = <T extends { readonly d: number }>(table: readonly T[], d: number): T | undefined =>
  table.find((row) => Math.abs(row.d - d) < 1e-6)
