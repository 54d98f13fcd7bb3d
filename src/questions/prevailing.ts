// prevailing: what the wrench must show on a locking nut, whose run-on torque comes on top.
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { finalTorque, finalTorqueFromThird, RUN_ON_THRESHOLD } from '../mechanics/prevailing.ts'
import { citations } from '../tables/citation.ts'
import { targetTorque, torque } from './input.ts'
import { caution, type Outcome, put, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

const inputs = {
  torque: targetTorque({ needed: true, example: { metric: '30 N·m', inch: '22 lbf·ft' } }),
  'run-on': torque({
    needed: true,
    example: { metric: '4 N·m', inch: '35 lbf·in' },
    ladder: {
      metric: ['1 N·m', '2 N·m', '4 N·m', '8 N·m', '12 N·m'],
      inch: ['10 lbf·in', '20 lbf·in', '35 lbf·in', '70 lbf·in', '100 lbf·in'],
    },
  }),
}

interface Asked {
  readonly torque: Target
  readonly 'run-on': Quantity
}

const answerPrevailing = (given: Asked, { of }: ResultUnits): Outcome => {
  const runOn = given['run-on']
  const unit = of('torque')
  const added = (value: number): Quantity => fromSi(finalTorque(value * given.torque.unit.factor, si(runOn)), unit)
  const final = added(given.torque.value)
  const { low, high } = given.torque
  const ends = low === undefined || high === undefined ? undefined : { low: added(low), high: added(high) }
  const army = fromSi(finalTorqueFromThird(si(given.torque), si(runOn)), unit)
  const leftOut = si(runOn) < RUN_ON_THRESHOLD * si(given.torque)
  const steps: Step[] = [
    step(phrase('prevailing.final'), 'T = target + run-on', put`${given.torque} + ${runOn}`, final),
    step(
      phrase(leftOut ? 'prevailing.army-leaves-out' : 'prevailing.army-adds'),
      'run-on ≥ 0.33 target?',
      put`${runOn}; ${quantity(given.torque.value * RUN_ON_THRESHOLD, given.torque.unit)}`,
      army,
    ),
  ]
  return {
    headline: ends
      ? phrase('prevailing.span', { final, low: ends.low, high: ends.high })
      : phrase('prevailing.set', { final, torque: given.torque, run: runOn }),
    assumed: [],
    results: { 'final-torque': result(final, ends?.low.value, ends?.high.value) },
    steps,
    cautions: [
      ...(si(runOn) > si(given.torque) ? [caution('run-on-large', { extra: runOn })] : []),
      caution('run-on-while-turning'),
      caution('run-on-through-adapter'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure'],
    sources: [citations.runOnAviation, citations.runOnArmy],
    related: [],
  }
}

export const prevailing = defineQuestion({
  name: 'prevailing',
  inputs,
  results: ['final-torque'],
  answer: answerPrevailing,
})
