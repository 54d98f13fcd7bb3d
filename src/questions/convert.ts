// convert: the same quantity in another unit, and in the usual others.
import { type Fault, fault } from '../core/fault.ts'
import { inUnit, quantity, type Target } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { type Unit, units, unitsOf } from '../core/unit.ts'
import { citations } from '../tables/citation.ts'
import { anyQuantity, unitName } from './input-words.ts'
import { caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const inputs = { quantity: anyQuantity({ needed: true }), to: unitName() }

interface Asked {
  readonly quantity: Target
  readonly to?: readonly Unit[] | undefined
}

const counterpart = new Map<Unit, Unit>([
  [units['N·m'], units['lbf·ft']],
  [units['lbf·ft'], units['N·m']],
  [units['lbf·in'], units['N·m']],
  [units['ozf·in'], units['N·m']],
  [units['kgf·m'], units['N·m']],
  [units['kgf·cm'], units['N·m']],
  [units.mm, units.in],
  [units.cm, units.in],
  [units.m, units.ft],
  [units.in, units.mm],
  [units.ft, units.m],
  [units.N, units.lbf],
  [units.kN, units.lbf],
  [units.lbf, units.N],
  [units.kgf, units.N],
  [units.MPa, units.ksi],
  [units.psi, units.MPa],
  [units.ksi, units.MPa],
  [units.kg, units.lb],
  [units.g, units.oz],
  [units.lb, units.kg],
  [units.oz, units.g],
])

/** Scales are marked in kg and lb, and what they show is a force; where a force is wanted a mass is read as one. */
const asForce = new Map<Unit, Unit>([
  [units.kg, units.kgf],
  [units.lb, units.lbf],
])

const meant = (from: Target, to: readonly Unit[] | undefined): { from: Target; to: Unit } | undefined => {
  if (!to) {
    const other = counterpart.get(from.unit)
    return other ? { from, to: other } : undefined
  }
  const direct = to.find((unit) => unit.dimension === from.unit.dimension)
  if (direct) return { from, to: direct }
  const force = asForce.get(from.unit)
  const forced = force && to.find((unit) => unit.dimension === 'force')
  return force && forced ? { from: { ...from, unit: force }, to: forced } : undefined
}

const ends = (from: Target, unit: Unit): { low?: number; high?: number } =>
  from.low === undefined || from.high === undefined
    ? {}
    : {
        low: inUnit(quantity(from.low, from.unit), unit).value,
        high: inUnit(quantity(from.high, from.unit), unit).value,
      }

const answerConvert = (given: Asked): Outcome => {
  const { from, to } = meant(given.quantity, given.to) as { from: Target; to: Unit }
  const value = inUnit(from, to)
  const { low, high } = ends(from, to)
  const ratio = quantity(from.unit.factor / to.factor, units['1'])
  return {
    headline:
      low === undefined || high === undefined
        ? phrase('convert.is', { from: { echo: from }, value })
        : phrase('convert.span', { value, low: quantity(low, to), high: quantity(high, to) }),
    assumed: [],
    results: { value: result(value, low, high) },
    steps: [
      step(
        phrase('convert.step', { unit: from.unit.symbol, to: to.symbol }),
        'x · (from/to)',
        put`${from} · ${ratio}`,
        value,
      ),
    ],
    cautions: from.unit.dimension === 'torque' ? [caution('unit-on-wrench')] : [],
    pointers: from.unit.dimension === 'torque' ? ['torque-figure'] : [],
    sources: [citations.si],
    related: [],
  }
}

const checkUnits = (given: Partial<Asked>): Fault[] => {
  if (!given.quantity || meant(given.quantity, given.to)) return []
  const { dimension } = given.quantity.unit
  const offered = unitsOf(dimension).map(({ symbol }) => symbol)
  if (!given.to)
    return [
      fault('unit-wrong-kind', 'quantity', writeQuantity(given.quantity), {
        kind: 'torque',
        units: unitsOf('torque').map(({ symbol }) => symbol),
        options: ['20 N·m', '15 lbf·ft'],
      }),
    ]
  return [
    fault('unit-wrong-kind', 'to', (given.to[0] as Unit).symbol, { kind: dimension, units: offered, options: offered }),
  ]
}

export const convert = defineQuestion({
  name: 'convert',
  inputs,
  results: ['value'],
  check: checkUnits,
  answer: answerConvert,
})
