// scale-check: how far a wrench is off, from a scale pulled or a weight hung at a distance from its drive.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { deviation, referenceAtMost } from '../mechanics/deviation.ts'
import { cosine } from '../mechanics/lever.ts'
import { mean, sampleDeviation, torqueOfPull, weightTorque } from '../mechanics/scale-pull.ts'
import { band95, type Contribution } from '../mechanics/uncertainty.ts'
import { citations } from '../tables/citation.ts'
import { angle, handleLength, length, mass, percent, torque } from './input.ts'
import { readings } from './input-lists.ts'
import { choice } from './input-words.ts'
import {
  type Caution,
  caution,
  type Given,
  type Outcome,
  put,
  type Result,
  type Row,
  result,
  type Step,
  step,
} from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { habits, percentOf } from './reach-doubt.ts'

const lies = ['level', 'upright'] as const
const directions = ['down', 'up'] as const

const inputs = {
  distance: handleLength({ needed: true }),
  force: readings({
    needed: true,
    dimension: 'force',
    most: 20,
    ladder: {
      metric: ['5 kgf', '10 kgf', '15 kgf', '20 kgf', '25 kgf', '30 kgf'],
      inch: ['10 lbf', '20 lbf', '30 lbf', '40 lbf', '50 lbf', '60 lbf'],
    },
  }),
  setting: torque(),
  'pull-angle': angle({ most: quantity(60, units['°']), example: { metric: '10°', inch: '10°' } }),
  'wrench-mass': mass({ most: quantity(50, units.kg) }),
  'balance-point': length({ example: { metric: '180 mm', inch: '7 in' } }),
  lie: choice({ of: lies }),
  'pull-direction': choice({ of: directions }),
  'gauge-tolerance': percent({ zero: true, most: quantity(50, units['%']), example: { metric: '1 %', inch: '1 %' } }),
}

interface Asked {
  readonly distance: Quantity
  readonly force: readonly Quantity[]
  readonly setting?: Quantity | undefined
  readonly 'pull-angle'?: Quantity | undefined
  readonly 'wrench-mass'?: Quantity | undefined
  readonly 'balance-point'?: Quantity | undefined
  readonly lie?: (typeof lies)[number] | undefined
  readonly 'pull-direction'?: (typeof directions)[number] | undefined
  readonly 'gauge-tolerance'?: Quantity | undefined
}

const weightOf = (given: Asked): number => {
  const { 'wrench-mass': m, 'balance-point': x, lie, 'pull-direction': direction } = given
  return m && x && lie === 'level' && direction ? weightTorque(si(m), si(x), direction) : 0
}

/** Relative contributions to the mean torque. */
const contributions = (
  given: Asked,
  T: number,
  pulled: number,
  torques: readonly number[],
  system: 'metric' | 'inch',
): Contribution[] => {
  const habit = habits(system)
  const share = pulled / T
  const psi = given['pull-angle']?.value ?? 0
  const parts: Contribution[] = [
    { name: 'distance', halfWidth: (share * si(habit.length)) / si(given.distance) },
    { name: 'pull-angle', halfWidth: (share * Math.tan((psi * Math.PI) / 180) * habit.angle.value * Math.PI) / 180 },
  ]
  if (given['gauge-tolerance']) parts.push({ name: 'gauge', halfWidth: (share * given['gauge-tolerance'].value) / 100 })
  if (torques.length > 1)
    parts.push({
      name: 'readings',
      u: sampleDeviation(torques) / Math.sqrt(torques.length) / T,
      nu: torques.length - 1,
    })
  return parts
}

// Where the doubt is this much of the torque, the readings say nothing about the wrench.
const TOO_WIDE = 0.3

const headline = (
  setting: Quantity | undefined,
  torque: Quantity,
  off: Quantity | undefined,
  ends: { low: number; high: number },
  band: number,
  gauge: boolean,
): Phrase => {
  if (band > TOO_WIDE) return phrase('scale-check.too-wide', { torque, band: percentOf(band) })
  if (!setting || !off) return phrase('scale-check.torque', { torque })
  const { low, high } = { low: quantity(ends.low, off.unit), high: quantity(ends.high, off.unit) }
  // A deviation smaller than its own doubt is neither high nor low: said so, not guessed.
  if (low.value <= 0 && high.value >= 0) {
    return phrase('scale-check.within', { setting, torque, deviation: off, low, high })
  }
  const byScale = off.value > 0 ? 'scale-check.low-by-scale' : 'scale-check.high-by-scale'
  const sure = off.value > 0 ? 'scale-check.low' : 'scale-check.high'
  return phrase(gauge ? sure : byScale, { setting, torque, deviation: off })
}

const cautions = (given: Asked): Caution[] => {
  const list: Caution[] = []
  const gauge = given['gauge-tolerance']
  // The tool's limit is not asked here; ±4 % is the tighter of the standard's two.
  if (gauge && gauge.value > referenceAtMost(4))
    list.push(caution('gauge-too-coarse', { gauge, quarter: quantity(referenceAtMost(4), units['%']) }))
  if (!gauge) list.push(caution('gauge-unknown'))
  if (!given['wrench-mass'] && given.lie !== 'upright') list.push(caution('own-weight'))
  return [...list, caution('click-once'), caution('not-accredited')]
}

const answerScaleCheck = (given: Asked, { of, system }: ResultUnits): Outcome => {
  const D = si(given.distance)
  const psi = given['pull-angle']?.value ?? 0
  const weight = weightOf(given)
  const unit = of('torque')
  const torques = given.force.map((F) => torqueOfPull({ F: si(F), D, psi }, weight))
  const T = mean(torques)
  const torque = fromSi(T, unit)
  const force = fromSi(mean(given.force.map(si)), (given.force[0] as Quantity).unit)
  const setting = given.setting
  const parts = contributions(given, T, T - weight, torques, system)
  const band = band95(parts)
  const offAt = (reference: number): number => deviation(si(setting as Quantity), reference)
  const off = setting ? quantity(offAt(T), units['%']) : undefined
  const ends = setting ? { low: offAt(T * (1 + band)), high: offAt(T * (1 - band)) } : { low: 0, high: 0 }
  const rows: Row[] = given.force.map((F, index) => {
    const one = torques[index] as number
    return {
      force: result(F),
      torque: result(fromSi(one, unit)),
      ...(setting ? { deviation: result(quantity(offAt(one), units['%'])) } : {}),
    }
  })
  const weightQuantity = fromSi(weight, unit)
  const steps: Step[] = [
    step(
      phrase(given.force.length > 1 ? 'scale-check.step-mean' : 'scale-check.step'),
      weight === 0 ? 'T = F D cos ψ' : 'T = F D cos ψ ± m g x',
      weight === 0
        ? put`${force} · ${given.distance} · ${quantity(cosine(psi), units['1'])}`
        : put`${force} · ${given.distance} · ${quantity(cosine(psi), units['1'])} + (${weightQuantity})`,
      torque,
    ),
  ]
  if (setting && off)
    steps.push(
      step(phrase('scale-check.deviation'), 'a = (X_a − X_r)/X_r', put`(${setting} − ${torque}) / ${torque}`, off),
    )
  steps.push(
    step(
      phrase('scale-check.doubt'),
      'u² = Σ (c u)²; 95 %',
      put`${fromSi(Math.max(0, T * (1 - band)), unit)} … ${fromSi(T * (1 + band), unit)}`,
      percentOf(band),
    ),
  )
  const habit = habits(system)
  const assumed: Given[] = [
    ...(given['pull-angle'] ? [] : [{ input: 'pull-angle', value: quantity(0, units['°']), from: 'assumed' as const }]),
    { input: 'length-doubt', value: habit.length, from: 'assumed' },
    ...(psi === 0 ? [] : [{ input: 'angle-doubt', value: habit.angle, from: 'assumed' as const }]),
  ]
  const spread = fromSi(Math.max(...torques) - Math.min(...torques), unit)
  return {
    headline: headline(setting, torque, off, ends, band, given['gauge-tolerance'] !== undefined),
    assumed,
    results: {
      torque: result(torque, Math.max(0, torque.value * (1 - band)), torque.value * (1 + band)),
      // Down to no torque at all the deviation has no end: it is told without one.
      ...(off ? { deviation: band < 1 ? result(off, ends.low, ends.high) : result(off) } : {}),
      readings: { rows },
      mean: result(torque),
      spread: result(spread),
    } satisfies Record<string, Result>,
    steps,
    cautions: cautions(given),
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [citations.statics, citations.deviation, citations.quarterRule, citations.doubtPractice, citations.gum],
    related: [],
  }
}

// A wrench hangs level nearer its drive than its grip; past the pull the number is a slip of a unit or a mark.
const FARTHEST_BALANCE = 1.2

const checkWeight = (given: Partial<Asked>): Fault[] => {
  const {
    distance,
    force,
    'wrench-mass': m,
    'balance-point': x,
    lie,
    'pull-direction': direction,
    'pull-angle': psi,
  } = given
  if (distance && x && si(x) > si(distance) * FARTHEST_BALANCE) {
    return [fault('balance-past-pull', 'balance-point', writeQuantity(x), { limit: distance })]
  }
  if (!distance || !force || !m || !x || lie !== 'level' || direction !== 'up') return []
  const weight = weightTorque(si(m), si(x), 'up')
  const beaten = force.find((F) => torqueOfPull({ F: si(F), D: si(distance), psi: psi?.value ?? 0 }, weight) <= 0)
  return beaten
    ? [
        fault('weight-beats-pull', 'force', writeQuantity(beaten), {
          weight: fromSi(-weight / si(distance), beaten.unit),
        }),
      ]
    : []
}

export const scaleCheck = defineQuestion({
  name: 'scale-check',
  inputs,
  results: ['torque', 'deviation', 'readings', 'mean', 'spread'],
  alsoNeeded: (given) => {
    if (given['wrench-mass'] === undefined) return []
    // A wrench's own weight counts only where its drive axis lies level, and its sign depends on the pull.
    if (given.lie === undefined)
      return ['lie', ...(given['pull-direction'] === undefined ? (['pull-direction'] as const) : [])]
    if (given.lie === 'upright') return []
    return [
      ...(given['balance-point'] === undefined ? (['balance-point'] as const) : []),
      ...(given['pull-direction'] === undefined ? (['pull-direction'] as const) : []),
    ]
  },
  check: checkWeight,
  answer: answerScaleCheck,
})
