// end-fitting: what to dial when the interchangeable head is longer or shorter than the one the wrench was set with.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { settingForHead } from '../mechanics/lever.ts'
import { citations } from '../tables/citation.ts'
import { handleLength, length, targetTorque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

const inputs = {
  torque: targetTorque({ needed: true }),
  lever: handleLength({ needed: true }),
  'fitting-change': length({
    needed: true,
    signed: true,
    example: { metric: '-30 mm', inch: '1/2 in' },
    ladder: {
      metric: ['-30 mm', '-20 mm', '-10 mm', '10 mm', '20 mm', '30 mm', '50 mm'],
      inch: ['-1 in', '-1/2 in', '-1/4 in', '1/4 in', '1/2 in', '1 in', '2 in'],
    },
  }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly torque: Target
  readonly lever: Quantity
  readonly 'fitting-change': Quantity
}

const answerEndFitting = (given: Asked, { of }: ResultUnits): Outcome => {
  const change = given['fitting-change']
  const L = si(given.lever)
  const set = (torque: number): Quantity =>
    fromSi(settingForHead(torque * given.torque.unit.factor, L, si(change)), of('torque'))
  const setting = set(given.torque.value)
  const { low, high } = given.torque
  const ends = low === undefined || high === undefined ? undefined : { low: set(low), high: set(high) }
  const ratio = quantity((L + si(change)) / L, units['1'])
  const used = fromSi(L + si(change), of('length'))
  return {
    headline: ends
      ? phrase('end-fitting.span', { setting, ...ends, torque: given.torque })
      : phrase('end-fitting.set', { setting, torque: given.torque }),
    assumed: [],
    results: { setting: result(setting, ends?.low.value, ends?.high.value), factor: result(ratio) },
    steps: [
      step(phrase('end-fitting.used'), 'L + Δ', put`${given.lever} + ${change}`, used),
      step(phrase('end-fitting.factor'), 'T/S = (L + Δ)/L', put`${used} / ${given.lever}`, ratio),
      step(phrase('end-fitting.setting'), 'S = T L/(L + Δ)', put`${given.torque} · ${given.lever} / ${used}`, setting),
    ],
    cautions: [caution('which-fitting'), caution('already-corrected'), caution('critical-joint')],
    pointers: ['torque-figure', 'wrench-manual'],
    sources: [citations.statics],
    related: [],
  }
}

const LEAST_LEFT = 0.1
const MOST_ADDED = 9

export const checkHead = ({
  lever,
  'fitting-change': change,
}: Partial<Pick<Asked, 'lever' | 'fitting-change'>>): Fault[] => {
  if (!lever || !change) return []
  // A head that takes away nine tenths of the lever, or makes it ten times as long, is a slip of a unit or of a sign.
  if (si(lever) + si(change) < si(lever) * LEAST_LEFT)
    return [fault('head-past-lever', 'fitting-change', writeQuantity(change), { limit: lever })]
  const limit = fromSi(si(lever) * MOST_ADDED, lever.unit)
  return si(change) > si(limit) ? [fault('head-too-long', 'fitting-change', writeQuantity(change), { limit })] : []
}

export const endFitting = defineQuestion({
  name: 'end-fitting',
  inputs,
  results: ['setting', 'factor'],
  check: checkHead,
  answer: answerEndFitting,
})
