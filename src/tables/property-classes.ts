// Strength of bolts by class. Pascal and metres inside; megapascal, kilopound and the standards' size limits as printed.
// ISO 898-1:2013 table 3 and SAE J429 as reprinted; ISO 3506-1 as reprinted; rows and limits from memory say so.
import type { Citation } from './citation.ts'

const iso898: Citation = { title: 'EN ISO 898-1:2013 (reprint)', where: 'table 3', standing: 'published' }
const iso898Memory: Citation = { title: 'ISO 898-1:2013', where: 'table 3', standing: 'from memory' }
const j429: Citation = {
  title: "SAE J429 (reprinted in Shigley's Mechanical Engineering Design)",
  where: 'table 8-9',
  standing: 'published',
}
const j429Memory: Citation = { title: 'SAE J429', where: 'table 1', standing: 'from memory' }
const iso3506: Citation = { title: 'ISO 3506-1 (supplier reprint)', where: 'p. 1', standing: 'published' }

export const propertyStandards = ['ISO 898-1', 'SAE J429', 'ISO 3506-1'] as const
export type PropertyStandard = (typeof propertyStandards)[number]

export interface ClassRow {
  /** As it is written: 8.8, SAE 5, A2-70. */
  readonly name: string
  readonly standard: PropertyStandard
  /** Nominal diameters [m] it holds for, ends included. */
  readonly from: number
  readonly to: number
  /** Proof stress [Pa]; stainless has none. */
  readonly proof?: number
  /** Least yield: R_eL, R_pf or R_p0.2 [Pa]. */
  readonly yield: number
  /** Least tensile strength [Pa]. */
  readonly tensile: number
  readonly source: Citation
}

const MPA = 1e6
const KSI = 6_894_757.293168361 // NIST SP 811, App. B.8: lbf/in² · 1000
const MM = 0.001
const INCH = 0.0254

const iso = (
  name: string,
  [from, to]: readonly [number, number],
  [proof, yields, tensile]: readonly [number, number, number],
  source: Citation = iso898,
): ClassRow => ({
  name,
  standard: 'ISO 898-1',
  from: from * MM,
  to: to * MM,
  proof: proof * MPA,
  yield: yields * MPA,
  tensile: tensile * MPA,
  source,
})

const sae = (
  grade: string,
  [from, to]: readonly [number, number],
  [proof, yields, tensile]: readonly [number, number, number],
  source: Citation = j429,
): ClassRow => ({
  name: `SAE ${grade}`,
  standard: 'SAE J429',
  from: from * INCH,
  to: to * INCH,
  proof: proof * KSI,
  yield: yields * KSI,
  tensile: tensile * KSI,
  source,
})

const stainless = (name: string, [yields, tensile]: readonly [number, number], to: number): ClassRow => ({
  name,
  standard: 'ISO 3506-1',
  from: 1.6 * MM,
  to: to * MM,
  yield: yields * MPA,
  tensile: tensile * MPA,
  source: iso3506,
})

export const classTable: readonly ClassRow[] = [
  iso('4.6', [1.6, 39], [225, 240, 400]),
  iso('4.8', [1.6, 39], [310, 340, 420], iso898Memory),
  iso('5.6', [1.6, 39], [280, 300, 500]),
  iso('5.8', [1.6, 39], [380, 420, 520]),
  iso('6.8', [1.6, 39], [440, 480, 600]),
  iso('8.8', [1.6, 16], [580, 640, 800]),
  iso('8.8', [16.1, 39], [600, 660, 830]),
  iso('9.8', [1.6, 16], [650, 720, 900]),
  iso('10.9', [1.6, 39], [830, 940, 1040]),
  iso('12.9', [1.6, 39], [970, 1100, 1220]),
  sae('1', [0.25, 1.5], [33, 36, 60]),
  sae('2', [0.25, 0.75], [55, 57, 74]),
  sae('2', [0.7501, 1.5], [33, 36, 60]),
  sae('5', [0.25, 1], [85, 92, 120]),
  sae('5', [1.0001, 1.5], [74, 81, 105]),
  sae('8', [0.25, 1.5], [120, 130, 150]),
  sae('5.2', [0.25, 1], [85, 92, 120], j429Memory),
  sae('8.2', [0.25, 1], [120, 130, 150], j429Memory),
  ...(['A2', 'A4'] as const).flatMap((steel) => [
    stainless(`${steel}-50`, [210, 500], 39),
    stainless(`${steel}-70`, [450, 700], 24),
    stainless(`${steel}-80`, [600, 800], 24),
  ]),
]

/** Every class by name, once. */
export const classNames: readonly string[] = [...new Set(classTable.map(({ name }) => name))]

/** The row of a class for a nominal diameter [m]; undefined where the standard has none for that size. */
export const findClass = (name: string, d: number): ClassRow | undefined =>
  classTable.find((row) => row.name === name && d >= row.from - 1e-9 && d <= row.to + 1e-9)
