// The units as data: every factor against an independent library and against exact decimals, every spelling read one way only.
import { unit as oracle } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  allSpellings,
  type Dimension,
  everyday,
  spelledUnits,
  type UnitSymbol,
  units,
  unitsOf,
} from '../../src/core/unit.ts'

/** How mathjs writes each unit, and the SI unit that the factor leads to; angles and percent are kept as they are. */
const oracleNames: Partial<Record<UnitSymbol, readonly [string, string]>> = {
  N·m: ['N m', 'N m'],
  lbf·ft: ['lbf ft', 'N m'],
  lbf·in: ['lbf inch', 'N m'],
  ozf·in: ['oz inch m / s^2', 'N m'],
  kgf·m: ['kgf m', 'N m'],
  kgf·cm: ['kgf cm', 'N m'],
  mm: ['mm', 'm'],
  cm: ['cm', 'm'],
  m: ['m', 'm'],
  in: ['inch', 'm'],
  ft: ['ft', 'm'],
  N: ['N', 'N'],
  kN: ['kN', 'N'],
  lbf: ['lbf', 'N'],
  kgf: ['kgf', 'N'],
  MPa: ['MPa', 'Pa'],
  psi: ['lbf / inch^2', 'Pa'],
  ksi: ['lbf / inch^2', 'Pa'],
  kg: ['kg', 'kg'],
  g: ['g', 'kg'],
  lb: ['lbm', 'kg'],
  oz: ['oz', 'kg'],
}
/** What mathjs has no word for is asked of it as another unit, and multiplied here. */
const times: Partial<Record<UnitSymbol, number>> = { ozf·in: 9.80665, ksi: 1000 }

describe('a unit', () => {
  it.each(Object.entries(oracleNames))('%s has the factor that mathjs gives', (symbol, [name, siName]) => {
    const factor = oracle(1, name).toNumber(siName) * (times[symbol as UnitSymbol] ?? 1)
    expect(units[symbol as UnitSymbol].factor / factor).toBeCloseTo(1, 14)
  })

  it('that mathjs is not asked about is kept as it is', () => {
    const rest = Object.values(units).filter(({ symbol }) => !(symbol in oracleNames))
    expect(rest.map(({ symbol, factor }) => [symbol, factor])).toEqual([
      ['1', 1],
      ['°', 1],
      ['%', 1],
    ])
  })

  it.each<[UnitSymbol, string]>([
    ['lbf·ft', '1.3558179483314004'],
    ['lbf·in', '0.1129848290276167'],
    ['ozf·in', '0.00706155181422604375'],
    ['kgf·m', '9.80665'],
    ['kgf·cm', '0.0980665'],
    ['lbf', '4.4482216152605'],
    ['kgf', '9.80665'],
    ['in', '0.0254'],
    ['ft', '0.3048'],
    ['lb', '0.45359237'],
    ['oz', '0.028349523125'],
    ['psi', '6894.75729316836133672'],
    ['ksi', '6894757.29316836133672'],
  ])('%s has the double nearest to the exact decimal %s of NIST SP 811', (symbol, exact) => {
    expect(units[symbol].factor).toBe(Number(exact))
  })

  it('of torque follows from pound, inch and standard gravity in exact decimal arithmetic', () => {
    const pound = 45_359_237n // 1e-8 kg
    const gravity = 980_665n // 1e-5 m/s²
    const inch = 254n // 1e-4 m
    const decimal = (digits: bigint, places: number): number => Number(`${digits}e-${places}`)
    expect(units.lbf.factor).toBe(decimal(pound * gravity, 13))
    expect(units['lbf·in'].factor).toBe(decimal(pound * gravity * inch, 17))
    expect(units['lbf·ft'].factor).toBe(decimal(pound * gravity * inch * 12n, 17))
    expect(units['ozf·in'].factor).toBe(decimal(pound * gravity * inch * 10_000n, 17 + 4) / 16)
  })

  it('carries its own symbol, a source, and a system', () => {
    for (const [symbol, unit] of Object.entries(units)) {
      expect(unit.symbol).toBe(symbol)
      expect(unit.source).not.toBe('')
    }
  })

  it('of torque is written with the middle dot U+00B7, and degrees with U+00B0', () => {
    for (const { symbol } of unitsOf('torque')) expect(symbol).toMatch(/^[a-zA-Z]+\u00b7[a-z]+$/u)
    expect(unitsOf('angle').map(({ symbol }) => symbol)).toEqual(['\u00b0'])
  })
})

describe('everyday units', () => {
  it.each(Object.entries(everyday))('of %s are of that dimension and of their system', (dimension, pair) => {
    for (const system of ['metric', 'inch'] as const) {
      expect(pair[system].dimension).toBe(dimension)
      expect(['either', system]).toContain(pair[system].system)
    }
  })
})

describe('a spelling', () => {
  it('names one unit of a dimension at most', () => {
    const twice = [...allSpellings].filter(([, meant]) => {
      const dimensions = meant.map(({ unit }) => unit.dimension)
      return new Set(dimensions).size !== dimensions.length
    })
    expect(twice).toEqual([])
  })

  it('in the list can be typed: folding it changes nothing', () => {
    for (const [word, meant] of allSpellings) expect(spelledUnits(word), word).toEqual(meant)
  })

  it.each(Object.values(units).filter(({ symbol }) => symbol !== '1'))('$symbol is read as itself', (unit) => {
    expect(spelledUnits(unit.symbol)).toContainEqual({ unit, times: 1 })
  })

  it.each<[string, readonly string[]]>([
    [
      'lbf·ft',
      'ft/lbs|ft./lbs|ftlb|ftlbs|ft lbs.|ft.-lbs.|lb. ft.|lb ft|lbs.ft|lbf.ft|lbft|lbs/ft|lb/ft|foot/pounds|pound feet'.split(
        '|',
      ),
    ],
    ['lbf·ft', ['ft-lb', 'ft.lbs', 'foot pounds', 'FT-LBS', 'foot-pound', 'lbf·ft', 'ft·lbf', 'lbf-ft', 'ft lbf']],
    ['lbf·in', ['in/lbs', 'in.-lb', 'in lb', 'inch pounds', 'in-lb', 'lbf in', 'inch-lbs', 'lb-in']],
    ['N·m', ['Nm', 'nm', 'nM', 'N.m', 'newton meters', 'N m', 'N-m', 'N*m', 'N⋅m', 'newton-metre', 'NM']],
    ['kgf·m', ['kgm', 'm.kg', 'kg-m', 'kgf m', 'kgf·m', 'm·kg', 'kpm']],
    ['kgf·cm', ['kg-cm', 'kgf cm', 'cm.kg']],
    ['ozf·in', ['oz-in', 'in oz', 'ozf·in']],
  ])('of %s as people type it is read: %j', (symbol, typed) => {
    for (const text of typed) {
      const torques = spelledUnits(text).filter(({ unit }) => unit.dimension === 'torque')
      expect(torques, text).toEqual([{ unit: units[symbol as UnitSymbol], times: 1 }])
    }
  })

  it.each<[string, Dimension[]]>([
    ['pounds', ['force', 'mass']],
    ['lbs', ['force', 'mass']],
    ['kg', ['force', 'mass']],
    ['lbf', ['force']],
    ['in', ['length']],
    ['"', ['length']],
    ['″', ['length']],
    ['′', ['length']],
    ['deg', ['angle']],
  ])('%s alone means %j', (text, dimensions) => {
    expect(spelledUnits(text).map(({ unit }) => unit.dimension)).toEqual(dimensions)
  })

  it.each([
    ['kN·m', 1000],
    ['daN·m', 10],
    ['cN·m', 0.01],
    ['N·cm', 0.01],
  ])('%s is read as %d newton metres', (text, count) => {
    expect(spelledUnits(text)).toEqual([{ unit: units['N·m'], times: count }])
  })

  it.each([
    ['N/m', 'a stiffness, not a torque'],
    ['kg/m', 'a mass per length'],
    ['ft2', 'an area'],
    ['mNm', 'a prefix that nobody puts on a wrench'],
    ['', 'nothing'],
    ['bar', 'a pressure that is not used here'],
  ])('%j names no unit: %s', (text) => {
    expect(spelledUnits(text)).toEqual([])
  })
})
