// adapter-reading: what the fastener got, from what the wrench showed or clicked at through one to four adapters.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { effectiveLever, factor, torqueAt } from '../mechanics/lever.ts'
import { wrenchTypes } from '../mechanics/pivot-range.ts'
import { citations } from '../tables/citation.ts'
import { angle, handleLength, length, percent, torque } from './input.ts'
import { adapters } from './input-lists.ts'
import { wrenchTag } from './input-shop.ts'
import { choice } from './input-words.ts'
import { caution, type Outcome, put, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import {
  checkReach,
  directionFirst,
  firstOf,
  handAway,
  leverOf,
  pivotOf,
  type Reach,
  reachSteps,
  writeAdapter,
  writeReach,
} from './reach.ts'
import { reachCautions } from './reach-cautions.ts'
import { assumptions, checkDoubt, doubtOf, doubtStep, pivotTaken, spanOf } from './reach-doubt.ts'

const inputs = {
  reading: torque({ needed: true }),
  lever: handleLength({ needed: true }),
  adapter: adapters({ needed: true }),
  angle: angle(),
  hand: handleLength({ example: { metric: '330 mm', inch: '13 in' } }),
  pivot: length({ zero: true, example: { metric: '20 mm', inch: '3/4 in' } }),
  'wrench-type': choice({ of: wrenchTypes }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  wrench: wrenchTag(),
}

interface Asked extends Reach {
  readonly reading: Quantity
}

const answerAdapterReading = (given: Asked, { of, system }: ResultUnits): Outcome => {
  const unit = of('torque')
  const range = pivotOf(given)
  const away = handAway(given)
  const p = pivotTaken(given)
  const S = si(given.reading)
  const torque = fromSi(torqueAt(S, leverOf(given, p)), unit)
  const doubt = doubtOf(given, p, system)
  const reached = (away ? [range.low, range.high] : [p]).map((at) => torqueAt(S, leverOf(given, at)) / unit.factor)
  const span = spanOf(given, S, system, doubt)
  const low = span.low / unit.factor
  const high = span.high / unit.factor
  const lever = leverOf(given, p)
  const ratio = quantity(factor(lever), units['1'])
  const steps: Step[] = [
    ...reachSteps(given, { of }, p),
    step(phrase('adapter-reading.torque'), 'T = S · (T/S)', put`${given.reading} · ${ratio}`, torque),
  ]
  if (reached.length === 2 && reached[0] !== reached[1]) {
    const [one = 0, other = 0] = reached
    steps.push(
      step(
        phrase('adapter-reading.pivot-unknown'),
        'T at both ends of p',
        put`${quantity(one, unit)} … ${quantity(other, unit)}`,
        quantity(other, unit),
      ),
    )
  }
  return {
    headline: directionFirst(
      given,
      phrase('adapter-reading.got', {
        reading: given.reading,
        torque,
        low: quantity(low, unit),
        high: quantity(high, unit),
      }),
    ),
    assumed: assumptions(given, system, true),
    results: {
      torque: result(torque, low, high),
      factor: result(ratio),
      'effective-lever': result(fromSi(effectiveLever(lever), of('length'))),
    },
    steps: [...steps, doubtStep(torque, low, high, doubt)],
    cautions: [...reachCautions(given), caution('critical-joint')],
    pointers: ['torque-figure', 'wrench-manual'],
    sources: [
      citations.adapterRule,
      citations.statics,
      ...(away && !given.pivot ? [citations.pivotPractice] : []),
      citations.doubtPractice,
      citations.gum,
    ],
    related: [
      {
        question: 'adapter-setting',
        inputs: {
          torque: writeQuantity(given.reading),
          ...writeReach(given),
          adapter: given.adapter.map((link) =>
            writeAdapter(link.angle || !given.angle ? link : { ...link, angle: given.angle }),
          ),
        },
        label: phrase('related.setting', { torque: given.reading }),
      },
    ],
  }
}

export const adapterReading = defineQuestion({
  name: 'adapter-reading',
  inputs,
  results: ['torque', 'factor', 'effective-lever'],
  check: (given) =>
    firstOf(
      () => checkReach(given),
      () => checkDoubt(given, 'adapter'),
    ),
  answer: answerAdapterReading,
})
