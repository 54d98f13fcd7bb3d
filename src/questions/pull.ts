// pull: how hard the hand pulls, square to the handle, for a torque.
import { fromSi, type Quantity, si } from '../core/quantity.ts'
import { pullFor } from '../mechanics/lever.ts'
import { citations } from '../tables/citation.ts'
import { handleLength, torque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { handPast } from './reach.ts'

const inputs = {
  torque: torque({ needed: true }),
  lever: handleLength(),
  hand: handleLength({ example: { metric: '330 mm', inch: '13 in' } }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly torque: Quantity
  readonly lever?: Quantity | undefined
  readonly hand?: Quantity | undefined
}

// What one person pulls steadily by a handle, and no more [N]; common practice.
const HARDEST_PULL = 500

const answerPull = (given: Asked, { of }: ResultUnits): Outcome => {
  const at = (given.hand ?? given.lever) as Quantity
  const pull = fromSi(pullFor(si(given.torque), si(at)), of('force'))
  const out = given.lever !== undefined && handPast({ lever: given.lever, hand: given.hand })
  return {
    headline: phrase('pull.pull', { pull, at, torque: given.torque }),
    assumed: given.hand ? [] : [{ input: 'hand', value: at, from: 'assumed' }],
    results: { pull: result(pull) },
    steps: [step(phrase('pull.step'), 'F = T/H', put`${given.torque} / ${at}`, pull)],
    cautions: [
      ...(si(pull) > HARDEST_PULL ? [caution('hard-pull', { pull })] : []),
      ...(out ? [caution('no-pipe')] : []),
      caution('steady-pull'),
    ],
    pointers: ['torque-figure'],
    sources: [citations.statics],
    related: [],
  }
}

export const pull = defineQuestion({
  name: 'pull',
  inputs,
  results: ['pull'],
  oneOf: [['lever', 'hand']],
  answer: answerPull,
})
