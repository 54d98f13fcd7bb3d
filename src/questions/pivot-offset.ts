// pivot-offset: how far behind the drive a wrench trips, from two pulls at one setting with the hand at two places.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { pivotFrom } from '../mechanics/lever.ts'
import { band95, type Contribution } from '../mechanics/uncertainty.ts'
import { citations } from '../tables/citation.ts'
import { handleLength, torque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { habits, percentOf } from './reach-doubt.ts'

const inputs = {
  lever: handleLength({ needed: true }),
  hand: handleLength({
    needed: true,
    example: { metric: '190 mm', inch: '7-1/2 in' },
    ladder: {
      metric: ['120 mm', '150 mm', '180 mm', '200 mm', '250 mm'],
      inch: ['5 in', '6 in', '7 in', '8 in', '9 in'],
    },
  }),
  'torque-at-lever': torque({ needed: true, example: { metric: '100 N·m', inch: '75 lbf·ft' } }),
  'torque-at-hand': torque({ needed: true, example: { metric: '104 N·m', inch: '78 lbf·ft' } }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly lever: Quantity
  readonly hand: Quantity
  readonly 'torque-at-lever': Quantity
  readonly 'torque-at-hand': Quantity
}

// How well one pull repeats on the same instrument: common practice, shown as assumed.
const REPEAT = 0.01

/** Contributions to p [m], by small differences: the formula is steep near H = L, so its own slope is taken. */
const contributions = (L: number, H: number, r: number, habit: ReturnType<typeof habits>): Contribution[] => {
  const slope = (at: (h: number) => number, size: number): number => (at(size) - at(-size)) / (2 * size)
  const tiny = 1e-6
  return [
    { name: 'lever', halfWidth: slope((h) => pivotFrom(L + h, H, r), tiny * L) * si(habit.length) },
    { name: 'hand', halfWidth: slope((h) => pivotFrom(L, H + h, r), tiny * H) * si(habit.length) },
    { name: 'torque-at-lever', halfWidth: slope((h) => pivotFrom(L, H, r * (1 - h)), tiny) * REPEAT },
    { name: 'torque-at-hand', halfWidth: slope((h) => pivotFrom(L, H, r * (1 + h)), tiny) * REPEAT },
  ]
}

const answerPivotOffset = (given: Asked, { of, system }: ResultUnits): Outcome => {
  const L = si(given.lever)
  const H = si(given.hand)
  const r = si(given['torque-at-hand']) / si(given['torque-at-lever'])
  const unit = of('length')
  const pivot = fromSi(pivotFrom(L, H, r), unit)
  const habit = habits(system)
  const half = band95(contributions(L, H, r, habit)) / unit.factor
  const low = pivot.value - half
  const high = pivot.value + half
  const ratio = quantity(r, units['1'])
  const shortest = Math.min(L, H) / unit.factor
  // Wherever it trips, a wrench gives no less with the hand nearer, and no more with it farther out; repeats differ a little.
  const repeats = band95([
    { name: 'torque-at-lever', halfWidth: REPEAT },
    { name: 'torque-at-hand', halfWidth: REPEAT },
  ])
  const wrongWay = H < L ? r < 1 - repeats : r > 1 + repeats
  const impossible = wrongWay || high < 0 || low >= shortest
  const key = impossible
    ? 'pivot-offset.impossible'
    : low <= 0 && high >= 0
      ? 'pivot-offset.not-from-zero'
      : 'pivot-offset.found'
  return {
    headline: phrase(key, { pivot, low: quantity(low, unit), high: quantity(high, unit) }),
    assumed: [
      { input: 'length-doubt', value: habit.length, from: 'assumed' },
      { input: 'repeat-doubt', value: percentOf(REPEAT), from: 'assumed' },
    ],
    results: { pivot: result(pivot, low, high) },
    steps: [
      step(
        phrase('pivot-offset.ratio'),
        'r = T_H/T_L',
        put`${given['torque-at-hand']} / ${given['torque-at-lever']}`,
        ratio,
      ),
      step(
        phrase('pivot-offset.pivot'),
        'p = L H (1 − r)/(H − r L)',
        put`${given.lever} · ${given.hand} · ${quantity(1 - r, units['1'])} / ${fromSi(H - r * L, unit)}`,
        pivot,
      ),
      step(
        phrase('pivot-offset.doubt'),
        'u² = Σ (c u)²; 95 %',
        put`${quantity(low, unit)} … ${quantity(high, unit)}`,
        quantity(half, unit),
      ),
    ],
    cautions: [caution('click-once')],
    pointers: ['wrench-manual'],
    sources: [citations.statics, citations.doubtPractice, citations.gum],
    related: [],
  }
}

const checkPulls = (given: { lever?: Quantity; hand?: Quantity }): Fault[] => {
  const { lever, hand } = given
  // The formula divides by what the two places differ in; within a few millimetres there is nothing to divide by.
  if (!lever || !hand || Math.abs(si(hand) - si(lever)) > si(lever) * 0.02) return []
  return [fault('hand-at-lever', 'hand', writeQuantity(hand), { half: fromSi(si(lever) / 2, lever.unit) })]
}

const checkRatio = (given: Partial<Asked>): Fault[] => {
  const { lever, hand } = given
  const at = given['torque-at-hand']
  const of = given['torque-at-lever']
  if (!lever || !hand || !at || !of) return []
  const r = si(at) / si(of)
  const below = Math.abs(si(hand) - r * si(lever))
  return below < si(lever) * 1e-3 ? [fault('pulls-do-not-fit', 'torque-at-hand', writeQuantity(at), { at: of })] : []
}

export const pivotOffset = defineQuestion({
  name: 'pivot-offset',
  inputs,
  results: ['pivot'],
  check: (given) => {
    const same = checkPulls(given)
    return same.length > 0 ? same : checkRatio(given)
  },
  answer: answerPivotOffset,
})
