// Heights of hexagon nuts, to guess a bolt's length. ISO 4032 m_max and inch hex nuts (ASME B18.2.2), from memory.
import type { Citation } from './citation.ts'

export const iso4032Memory: Citation = { title: 'ISO 4032, hexagon nuts', where: 'm, max', standing: 'from memory' }
export const inchNutsMemory: Citation = {
  title: 'ASME B18.2.2, hex nuts',
  where: 'basic height',
  standing: 'from memory',
}

export interface NutRow {
  readonly d: number
  /** Height [m]. */
  readonly m: number
  readonly from: Citation
}

const rows = (unit: number, list: ReadonlyArray<readonly [number, number]>, from: Citation): readonly NutRow[] =>
  list.map(([d, m]) => ({ d: d * unit, m: m * unit, from }))

export const metricNuts: readonly NutRow[] = rows(
  0.001,
  [
    [3, 2.4],
    [3.5, 2.8],
    [4, 3.2],
    [5, 4.7],
    [6, 5.2],
    [8, 6.8],
    [10, 8.4],
    [12, 10.8],
    [14, 12.8],
    [16, 14.8],
    [18, 15.8],
    [20, 18],
    [22, 19.4],
    [24, 21.5],
    [27, 23.8],
    [30, 25.6],
    [33, 28.7],
    [36, 31],
    [39, 33.4],
    [42, 34],
    [45, 36],
    [48, 38],
  ],
  iso4032Memory,
)

export const inchNuts: readonly NutRow[] = rows(
  0.0254,
  [
    [0.25, 7 / 32],
    [0.3125, 17 / 64],
    [0.375, 21 / 64],
    [0.4375, 3 / 8],
    [0.5, 7 / 16],
    [0.5625, 31 / 64],
    [0.625, 35 / 64],
    [0.75, 41 / 64],
    [0.875, 3 / 4],
    [1, 55 / 64],
    [1.125, 31 / 32],
    [1.25, 1.0625],
    [1.375, 1.171875],
    [1.5, 1.28125],
  ],
  inchNutsMemory,
)
