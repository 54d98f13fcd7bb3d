// nut-factor: a shop's own K from torque and clamp force; with several runs the interval for the next bolt.
import { type Fault, fault } from '../core/fault.ts'
import type { Size } from '../core/parse-size.ts'
import { type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { nextBolt, nutFactorOf } from '../mechanics/nut-factor.ts'
import { citations } from '../tables/citation.ts'
import { length } from './input.ts'
import { readings } from './input-lists.ts'
import { size } from './input-words.ts'
import { caution, type Outcome, put, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const inputs = {
  size: size(),
  diameter: length({ example: { metric: '12 mm', inch: '1/2 in' } }),
  torque: readings({
    needed: true,
    dimension: 'torque',
    most: 50,
    example: { metric: '60; 61.5 N·m', inch: '45; 46 lbf·ft' },
  }),
  'clamp-force': readings({
    needed: true,
    dimension: 'force',
    most: 50,
    example: { metric: '24; 25.1 kN', inch: '5400; 5600 lbf' },
  }),
}

interface Asked {
  readonly size?: Size | undefined
  readonly diameter?: Quantity | undefined
  readonly torque: readonly Quantity[]
  readonly 'clamp-force': readonly Quantity[]
}

const diameterOf = (given: Pick<Asked, 'size' | 'diameter'>): Quantity =>
  (given.diameter ?? given.size?.diameter) as Quantity

const answerNutFactor = (given: Asked): Outcome => {
  const d = diameterOf(given)
  const values = given.torque.map((T, run) => nutFactorOf(si(T), si(d), si(given['clamp-force'][run] as Quantity)))
  const { mean, halfWidth } = nextBolt(values)
  const k = quantity(mean, units['1'])
  const low = halfWidth === undefined ? undefined : mean - halfWidth
  const high = halfWidth === undefined ? undefined : mean + halfWidth
  const steps: Step[] = values.map((value, run) =>
    step(
      phrase('nut-factor.run', { run: String(run + 1) }),
      'K = T/(d F)',
      put`${given.torque[run] as Quantity} / (${d} · ${given['clamp-force'][run] as Quantity})`,
      quantity(value, units['1']),
    ),
  )
  if (halfWidth !== undefined) {
    steps.push(
      step(
        phrase('nut-factor.next'),
        'mean ± t s √(1 + 1/n)',
        put`${quantity(low as number, units['1'])} … ${quantity(high as number, units['1'])}`,
        quantity(halfWidth, units['1']),
      ),
    )
  }
  return {
    headline:
      low === undefined || high === undefined
        ? phrase('nut-factor.one', { k })
        : phrase('nut-factor.several', {
            k,
            low: quantity(low, units['1']),
            high: quantity(high, units['1']),
            n: String(values.length),
          }),
    assumed: [],
    results: { k: result(k, low, high) },
    steps,
    cautions: [caution('one-joint'), caution('estimate-only'), caution('critical-joint')],
    pointers: ['torque-figure'],
    sources: [citations.nutFactor, ...(halfWidth === undefined ? [] : [citations.nextBolt])],
    related: [],
  }
}

const checkRuns = (given: Partial<Asked>): Fault[] => {
  const faults: Fault[] = []
  const { torque, 'clamp-force': force, size: named, diameter } = given
  if (torque && force && torque.length !== force.length) {
    faults.push(fault('pairs-uneven', 'clamp-force', String(force.length), { count: String(torque.length) }))
  }
  if (named && diameter && Math.abs(si(named.diameter) - si(diameter)) > 1e-5) {
    faults.push(fault('diameter-not-size', 'diameter', writeQuantity(diameter), { size: named.name }))
  }
  return faults
}

export const nutFactor = defineQuestion({
  name: 'nut-factor',
  inputs,
  results: ['k'],
  oneOf: [['size', 'diameter']],
  check: checkRuns,
  answer: answerNutFactor,
})
