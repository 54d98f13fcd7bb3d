// hand-position: what the fastener gets when the hand pulls elsewhere than at the grip centre, with no adapter on.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { torqueAt } from '../mechanics/lever.ts'
import { type WrenchType, wrenchTypes } from '../mechanics/pivot-range.ts'
import { citations } from '../tables/citation.ts'
import { handleLength, length, percent, torque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { choice } from './input-words.ts'
import { caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { checkReach, firstOf, leverOf, pivotOf, type Reach } from './reach.ts'
import { pivotCautions } from './reach-cautions.ts'
import { assumptions, checkDoubt, doubtOf, doubtStep, percentOf, pivotTaken, spanOf } from './reach-doubt.ts'

const inputs = {
  setting: torque({ needed: true }),
  lever: handleLength({ needed: true }),
  hand: handleLength({
    needed: true,
    example: { metric: '330 mm', inch: '13 in' },
    ladder: {
      metric: ['150 mm', '200 mm', '250 mm', '300 mm', '350 mm', '400 mm', '500 mm'],
      inch: ['6 in', '8 in', '10 in', '12 in', '14 in', '16 in', '20 in'],
    },
  }),
  pivot: length({ zero: true, example: { metric: '20 mm', inch: '3/4 in' } }),
  'wrench-type': choice({ of: wrenchTypes }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly setting: Quantity
  readonly lever: Quantity
  readonly hand: Quantity
  readonly pivot?: Quantity | undefined
  readonly 'wrench-type'?: WrenchType | undefined
  readonly tolerance?: Quantity | undefined
}

const answerHandPosition = (given: Asked, { of, system }: ResultUnits): Outcome => {
  const reach: Reach = { ...given, adapter: [] }
  const unit = of('torque')
  const p = pivotTaken(reach)
  const S = si(given.setting)
  const torque = fromSi(torqueAt(S, leverOf(reach, p)), unit)
  const doubt = doubtOf(reach, p, system)
  const span = spanOf(reach, S, system, doubt)
  const low = span.low / unit.factor
  const high = span.high / unit.factor
  const lengthUnit = of('length')
  const { L, H } = leverOf(reach, p)
  const change = percentOf(H === L ? 0 : torque.value / fromSi(S, unit).value - 1)
  const out = H > L
  const range = pivotOf(reach)
  const open = H !== L && range.low !== range.high
  const params = { setting: given.setting, torque, change }
  return {
    headline: open
      ? phrase(change.value > 0 ? 'hand-position.open-more' : 'hand-position.open-less', {
          ...params,
          low: quantity(low, unit),
          high: quantity(high, unit),
        })
      : phrase(
          p === 0
            ? 'hand-position.none'
            : H === L
              ? 'hand-position.at-grip'
              : change.value > 0
                ? 'hand-position.more'
                : 'hand-position.less',
          params,
        ),
    assumed: assumptions(reach, system, false),
    results: { torque: result(torque, low, high), change: result(change) },
    steps: [
      step(
        phrase('hand-position.torque'),
        'T = S · (L − p)/L · H/(H − p)',
        put`${given.setting} · ${fromSi(L - p, lengthUnit)} / ${given.lever} · ${given.hand} / ${fromSi(H - p, lengthUnit)}`,
        torque,
      ),
      step(phrase('hand-position.change'), '(T − S)/S', put`(${torque} − ${given.setting}) / ${given.setting}`, change),
      doubtStep(torque, low, high, doubt),
    ],
    cautions: [...(out ? [caution('no-pipe')] : []), ...pivotCautions(reach), caution('critical-joint')],
    pointers: ['wrench-manual', 'torque-figure'],
    sources: [
      citations.statics,
      ...(given.pivot ? [] : [citations.pivotPractice]),
      citations.doubtPractice,
      citations.gum,
    ],
    related: [],
  }
}

const shares = [0, 0.02, 0.04, 0.06, 0.08, 0.1]

export const handPosition = defineQuestion({
  name: 'hand-position',
  inputs,
  results: ['torque', 'change'],
  oneOf: [['pivot', 'wrench-type']],
  rungs: ({ lever }, missing) =>
    missing === 'pivot' && lever ? shares.map((share) => quantity(lever.value * share, lever.unit)) : undefined,
  check: (given) =>
    firstOf(
      () => checkReach(given),
      () => (given.pivot || given['wrench-type'] ? checkDoubt({ ...given, adapter: [] }, 'hand') : []),
    ),
  answer: answerHandPosition,
})
