// scale-plan: which forces a scale must show at a distance for a wrench to be within its limit, point by point.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { checkShares, referenceAtMost, referenceWindow, standardLimit } from '../mechanics/deviation.ts'
import { forceFor } from '../mechanics/scale-pull.ts'
import { citations } from '../tables/citation.ts'
import { handleLength, percent, torque } from './input.ts'
import { readings } from './input-lists.ts'
import { wrenchTag } from './input-shop.ts'
import { bounded, type Caution, caution, type Outcome, put, type Row, result, type Step, step } from './outcome.ts'
import { atLeast, atMost, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

const inputs = {
  most: torque({ needed: true, example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  distance: handleLength({ needed: true }),
  least: torque({ example: { metric: '40 N·m', inch: '30 lbf·ft' } }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  'gauge-limit': readings({ dimension: 'force', most: 1, example: { metric: '50 kg', inch: '110 lb' } }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly most: Quantity
  readonly distance: Quantity
  readonly least?: Quantity | undefined
  readonly tolerance?: Quantity | undefined
  readonly 'gauge-limit'?: readonly Quantity[] | undefined
}

const answerScalePlan = (given: Asked, { of }: ResultUnits): Outcome => {
  const most = si(given.most)
  const tolerance = given.tolerance ?? quantity(standardLimit(most) * 100, units['%'])
  const l = tolerance.value / 100
  const D = si(given.distance)
  const unit = of('force')
  const least = given.least ? si(given.least) : 0
  const points = checkShares
    .map((share) => Math.max(share * most, least))
    .filter((S, index, all) => all.indexOf(S) === index)
  const forces = points.map((S) => {
    const window = referenceWindow(S, l)
    return { S, force: forceFor(S, D), low: forceFor(window.low, D), high: forceFor(window.high, D) }
  })
  const rows: Row[] = forces.map(({ S, force, low, high }) => ({
    share: result(quantity((S / most) * 100, units['%'])),
    setting: result(fromSi(S, given.most.unit)),
    force: bounded(result(fromSi(force, unit), fromSi(low, unit).value, fromSi(high, unit).value), 'window'),
  }))
  const [limit] = given['gauge-limit'] ?? []
  const beyond = limit ? forces.filter(({ high }) => high > si(limit)) : []
  const highest = forces.at(-1) as (typeof forces)[number]
  const reach = limit ? fromSi((highest.high * D) / si(limit), of('length')) : undefined
  const cautions: Caution[] = [
    ...(limit && reach && beyond.length > 0 ? [caution('gauge-runs-out', { limit, distance: reach })] : []),
    caution('gauge-quarter', { quarter: quantity(referenceAtMost(tolerance.value), units['%']) }),
    caution('click-once'),
    caution('not-accredited'),
  ]
  const steps: Step[] = forces.map(({ S, force, low, high }) =>
    step(
      phrase('scale-plan.point', { setting: fromSi(S, given.most.unit) }),
      'F = S/D; S/(1 + l)/D … S/(1 − l)/D',
      put`${fromSi(low, unit)} … ${fromSi(high, unit)}`,
      fromSi(force, unit),
    ),
  )
  return {
    headline: phrase('scale-plan.headline', {
      setting: fromSi(highest.S, given.most.unit),
      low: atLeast(fromSi(highest.low, unit)),
      high: atMost(fromSi(highest.high, unit)),
      distance: given.distance,
    }),
    assumed: given.tolerance ? [] : [{ input: 'tolerance', value: tolerance, from: 'assumed' }],
    results: { points: { rows } },
    steps,
    cautions,
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [citations.plan, citations.limits, citations.quarterRule, citations.statics],
    related: [],
  }
}

export const scalePlan = defineQuestion({
  name: 'scale-plan',
  inputs,
  results: ['points'],
  check: ({ least, most }): Fault[] =>
    least && most && si(least) >= si(most)
      ? [fault('least-above-most', 'least', echoQuantity(least), { limit: most })]
      : [],
  answer: answerScalePlan,
})
