// The units of the desk as data: one row a unit, with its exact factor to SI and where that factor comes from.
// Knows nothing of numbers as text beyond the spellings of each unit's own name.

export type Dimension = 'torque' | 'length' | 'force' | 'angle' | 'stress' | 'mass' | 'percent' | 'number'
export type System = 'metric' | 'inch' | 'either'

/** One unit. `factor` times a value in this unit is the value in SI (N·m, m, N, rad stays °, Pa, kg, % stays %, 1). */
export interface Unit {
  readonly symbol: string
  readonly dimension: Dimension
  readonly system: System
  readonly factor: number
  readonly source: string
}

const NIST = 'NIST SP 811 (2008), App. B.8'
// Exact by definition: lb = 0.45359237 kg, in = 0.0254 m, standard gravity = 9.80665 m/s² (NIST SP 811, App. B.8).
const LBF = 4.4482216152605 // N = 0.45359237 · 9.80665, exact
const LBF_FT = 1.3558179483314003 // N·m = LBF · 0.3048 = 1.3558179483314004 exactly; the nearest double
const LBF_IN = 0.1129848290276167 // N·m = LBF · 0.0254, exact
const OZF_IN = 0.0070615518142260435 // N·m = LBF_IN / 16 = 0.00706155181422604375 exactly; the nearest double
const LBF_PER_IN2 = 6894.757293168362 // Pa = LBF / 0.0254² = 6894.75729316836134 …; the nearest double
const KIP_PER_IN2 = 6894757.293168361 // Pa = 1000 LBF / 0.0254²; the nearest double (a thousand times the above is not)

export const units = {
  N·m: { symbol: 'N·m', dimension: 'torque', system: 'metric', factor: 1, source: 'SI' },
  lbf·ft: { symbol: 'lbf·ft', dimension: 'torque', system: 'inch', factor: LBF_FT, source: NIST },
  lbf·in: { symbol: 'lbf·in', dimension: 'torque', system: 'inch', factor: LBF_IN, source: NIST },
  ozf·in: { symbol: 'ozf·in', dimension: 'torque', system: 'inch', factor: OZF_IN, source: NIST },
  kgf·m: { symbol: 'kgf·m', dimension: 'torque', system: 'metric', factor: 9.80665, source: NIST },
  kgf·cm: { symbol: 'kgf·cm', dimension: 'torque', system: 'metric', factor: 0.0980665, source: NIST },
  mm: { symbol: 'mm', dimension: 'length', system: 'metric', factor: 0.001, source: 'SI' },
  cm: { symbol: 'cm', dimension: 'length', system: 'metric', factor: 0.01, source: 'SI' },
  m: { symbol: 'm', dimension: 'length', system: 'metric', factor: 1, source: 'SI' },
  in: { symbol: 'in', dimension: 'length', system: 'inch', factor: 0.0254, source: NIST },
  ft: { symbol: 'ft', dimension: 'length', system: 'inch', factor: 0.3048, source: NIST },
  N: { symbol: 'N', dimension: 'force', system: 'metric', factor: 1, source: 'SI' },
  kN: { symbol: 'kN', dimension: 'force', system: 'metric', factor: 1000, source: 'SI' },
  lbf: { symbol: 'lbf', dimension: 'force', system: 'inch', factor: LBF, source: NIST },
  kgf: { symbol: 'kgf', dimension: 'force', system: 'metric', factor: 9.80665, source: NIST },
  '°': { symbol: '°', dimension: 'angle', system: 'either', factor: 1, source: 'kept in degrees' },
  MPa: { symbol: 'MPa', dimension: 'stress', system: 'metric', factor: 1e6, source: 'SI' },
  psi: { symbol: 'psi', dimension: 'stress', system: 'inch', factor: LBF_PER_IN2, source: NIST },
  ksi: { symbol: 'ksi', dimension: 'stress', system: 'inch', factor: KIP_PER_IN2, source: NIST },
  kg: { symbol: 'kg', dimension: 'mass', system: 'metric', factor: 1, source: 'SI' },
  g: { symbol: 'g', dimension: 'mass', system: 'metric', factor: 0.001, source: 'SI' },
  lb: { symbol: 'lb', dimension: 'mass', system: 'inch', factor: 0.45359237, source: NIST },
  oz: { symbol: 'oz', dimension: 'mass', system: 'inch', factor: 0.028349523125, source: NIST },
  '%': { symbol: '%', dimension: 'percent', system: 'either', factor: 1, source: 'kept in percent' },
  '1': { symbol: '1', dimension: 'number', system: 'either', factor: 1, source: 'plain number' },
} as const satisfies Record<string, Unit>

export type UnitSymbol = keyof typeof units

/** The units that may be shown or typed for a dimension, in the order they are offered. */
export const unitsOf = (dimension: Dimension): readonly Unit[] =>
  Object.values(units).filter((unit) => unit.dimension === dimension)

/** Everyday unit of a dimension in each system: what a result takes where no given input of its dimension says otherwise. */
export const everyday = {
  torque: { metric: units['N·m'], inch: units['lbf·ft'] },
  length: { metric: units.mm, inch: units.in },
  force: { metric: units.N, inch: units.lbf },
  angle: { metric: units['°'], inch: units['°'] },
  stress: { metric: units.MPa, inch: units.ksi },
  mass: { metric: units.kg, inch: units.lb },
  percent: { metric: units['%'], inch: units['%'] },
  number: { metric: units['1'], inch: units['1'] },
} as const satisfies Record<Dimension, { metric: Unit; inch: Unit }>

const POUND = ['lb', 'lbs', 'lbf', 'lbsf', 'pound', 'pounds', 'poundforce', 'poundsforce']
const KILO = ['kg', 'kgs', 'kgf', 'kp', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramforce', 'kilopond']
const OUNCE = ['oz', 'ozs', 'ozf', 'ounce', 'ounces']
const FOOT = ['ft', 'foot', 'feet']
const INCH = ['in', 'ins', 'inch', 'inches']
const METRE = ['m', 'meter', 'meters', 'metre', 'metres']
const CENTIMETRE = ['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres']
const NEWTON = ['n', 'newton', 'newtons']

// Force and arm may be written in either order; people also put a slash between them and mean a product.
const products = (force: readonly string[], arm: readonly string[], slash: boolean): string[] =>
  force.flatMap((f) => arm.flatMap((a) => (slash ? [f + a, a + f, `${f}/${a}`, `${a}/${f}`] : [f + a, a + f])))

/** A spelling of a unit; `times` turns a number so written into the unit (3 kN·m is 3000 N·m). */
export interface Spelling {
  readonly unit: Unit
  readonly times: number
}

const listed: ReadonlyArray<readonly [Unit, readonly string[], number?]> = [
  [units['lbf·ft'], products(POUND, FOOT, true)],
  [units['lbf·in'], products(POUND, INCH, true)],
  [units['ozf·in'], products(OUNCE, INCH, true)],
  [units['kgf·m'], products(KILO, METRE, false)],
  [units['kgf·cm'], products(KILO, CENTIMETRE, false)],
  // mN and MN are forces a million times apart, and neither is N·m.
  [units['N·m'], products(NEWTON, METRE, false).filter((word) => !/^mn(?:ewtons?)?$/.test(word))],
  [units['N·m'], ['knm', 'kilonewtonmeter', 'kilonewtonmetre', 'kilonewtonmeters', 'kilonewtonmetres'], 1000],
  [units['N·m'], ['danm', 'decanewtonmetre', 'decanewtonmetres'], 10],
  [units['N·m'], ['cnm', 'ncm', 'centinewtonmetre', 'centinewtonmetres'], 0.01],
  [units.mm, ['mm', 'millimeter', 'millimeters', 'millimetre', 'millimetres']],
  [units.cm, CENTIMETRE],
  [units.m, METRE],
  [units.in, [...INCH, '"', "''"]],
  [units.ft, [...FOOT, "'"]],
  [units.N, NEWTON],
  [units.N, ['dan', 'decanewton', 'decanewtons'], 10],
  [units.kN, ['kn', 'kilonewton', 'kilonewtons']],
  [units.lbf, POUND],
  [units.kgf, KILO],
  [units['°'], ['°', 'º', '˚', 'deg', 'degs', 'degree', 'degrees']],
  [units.MPa, ['mpa', 'n/mm2', 'n/mm²', 'megapascal', 'megapascals']],
  [units.psi, ['psi', 'lb/in2', 'lbf/in2', 'lb/in²', 'lbf/in²']],
  [units.ksi, ['ksi', 'kpsi']],
  [
    units.kg,
    KILO.filter((word) => !word.includes('force') && !word.startsWith('kp') && word !== 'kgf' && word !== 'kilopond'),
  ],
  [units.g, ['g', 'gram', 'grams', 'gramme', 'grammes']],
  [units.lb, ['lb', 'lbs', 'pound', 'pounds']],
  [units.oz, ['oz', 'ozs', 'ounce', 'ounces']],
  [units['%'], ['%', 'percent', 'pct']],
]

const spellings = new Map<string, Spelling[]>()
for (const [unit, words, times = 1] of listed) {
  for (const word of words) {
    const known = spellings.get(word)
    if (known === undefined) spellings.set(word, [{ unit, times }])
    else if (!known.some((other) => other.unit === unit)) known.push({ unit, times })
  }
}

/** Every spelling that is read, once: for tests that audit the list. */
export const allSpellings: ReadonlyMap<string, readonly Spelling[]> = spellings

// Dots, hyphens, middle dots and spaces between the parts of a unit carry no meaning; a slash does (N/m is no torque).
const doubleMarks = /[″“”〃]/g
const singleMarks = /[′’‘´`]/g
const meaningless = /[\s.\-‐‑–·⋅∙•*×]/g
const fold = (text: string): string =>
  text.toLowerCase().replace(doubleMarks, '"').replace(singleMarks, "'").replace(meaningless, '')

/** Whether any spelling begins so; `text` without what carries no meaning. For those who read a text piece by piece. */
export const beginsUnit = (text: string): boolean => beginnings.has(text)

const beginnings: ReadonlySet<string> = new Set(
  [...spellings.keys()].flatMap((word) => Array.from(word, (_, place) => word.slice(0, place + 1))),
)

/** The same text without what carries no meaning in the name of a unit. */
export const foldUnit = (text: string): string => (/[^a-z]/.test(text) ? fold(text) : text)

const noSpelling: readonly Spelling[] = []

/** The units that a text may name, whatever their dimension; none where it names no unit. */
export const spelledUnits = (text: string): readonly Spelling[] => spellings.get(foldUnit(text)) ?? noSpelling
