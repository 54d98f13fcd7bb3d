// Bearing faces of heads, and across flats. Millimetres as printed; inch heads in inches.
// ISO 4014: d_w,min of product grade A up to M24, grade B above. M5 to M24 as a distributor's sheet prints them (M14: 19.37; the
// rule of ISO 4759-1, 0.95 of the least across flats, would give 19.64: sheets differ); the rest, ISO 4762 and inch from memory.
import type { Citation } from './citation.ts'

export const iso4014Sheet: Citation = {
  title: 'ISO 4014, hexagon head bolts, product grade A (distributor sheet)',
  where: 's and d_w,min',
  standing: 'published',
}
export const iso4014Memory: Citation = {
  ...iso4014Sheet,
  title: 'ISO 4014, hexagon head bolts',
  standing: 'from memory',
}
export const iso4762Memory: Citation = {
  title: 'ISO 4762, hexagon socket head cap screws',
  where: 'd_k,max and d_w,min',
  standing: 'from memory',
}
export const inchHexMemory: Citation = {
  title: 'ASME B18.2.1, hex cap screws',
  where: 'width across flats; washer face taken as 0.95 of it',
  standing: 'from memory',
}

export interface HeadRow {
  /** Nominal diameter, across flats (or head diameter) and least bearing diameter [m]. */
  readonly d: number
  readonly s: number
  readonly dw: number
  readonly from: Citation
}

const rows = (
  unit: number,
  list: ReadonlyArray<readonly [number, number, number]>,
  from: Citation,
): readonly HeadRow[] => list.map(([d, s, dw]) => ({ d: d * unit, s: s * unit, dw: dw * unit, from }))

const MM = 0.001
const INCH = 0.0254

export const hexagonHeads: readonly HeadRow[] = [
  ...rows(
    MM,
    [
      [3, 5.5, 4.57],
      [3.5, 6, 5.07],
      [4, 7, 5.88],
    ],
    iso4014Memory,
  ),
  ...rows(
    MM,
    [
      [5, 8, 6.88],
      [6, 10, 8.88],
      [8, 13, 11.63],
      [10, 16, 14.63],
      [12, 18, 16.63],
      [14, 21, 19.37],
      [16, 24, 22.49],
      [20, 30, 28.19],
      [24, 36, 33.61],
    ],
    iso4014Sheet,
  ),
  ...rows(
    MM,
    [
      [7, 11, 9.63],
      [18, 27, 25.34],
      [22, 34, 31.71],
      [27, 41, 38],
      [30, 46, 42.75],
      [33, 50, 46.55],
      [36, 55, 51.11],
      [39, 60, 55.86],
      [42, 65, 59.95],
      [45, 70, 64.7],
      [48, 75, 69.45],
    ],
    iso4014Memory,
  ),
].sort((one, other) => one.d - other.d)

export const socketHeads: readonly HeadRow[] = rows(
  MM,
  [
    [3, 5.5, 5.07],
    [4, 7, 6.53],
    [5, 8.5, 8.03],
    [6, 10, 9.38],
    [8, 13, 12.33],
    [10, 16, 15.33],
    [12, 18, 17.23],
    [14, 21, 20.17],
    [16, 24, 23.17],
    [20, 30, 28.87],
    [24, 36, 34.81],
    [30, 45, 43.61],
    [36, 54, 52.54],
    [42, 63, 61.34],
    [48, 72, 70.34],
  ],
  iso4762Memory,
)

const inchFlats: ReadonlyArray<readonly [number, number]> = [
  [0.25, 7 / 16],
  [0.3125, 1 / 2],
  [0.375, 9 / 16],
  [0.4375, 5 / 8],
  [0.5, 3 / 4],
  [0.5625, 13 / 16],
  [0.625, 15 / 16],
  [0.75, 1.125],
  [0.875, 1.3125],
  [1, 1.5],
  [1.125, 1.6875],
  [1.25, 1.875],
  [1.375, 2.0625],
  [1.5, 2.25],
]
export const inchHexagonHeads: readonly HeadRow[] = rows(
  INCH,
  inchFlats.map(([d, s]) => [d, s, 0.95 * s]),
  inchHexMemory,
)

/** The row of a nominal diameter [m]. */
export const findHead = (table: readonly HeadRow[], d: number): HeadRow | undefined =>
  table.find((row) => Math.abs(row.d - d) < 1e-6)
