// wrench-check: a wrench against a reference, point by point: is every reading within its limit, and which way is it off.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import type { Unit } from '../core/unit.ts'
import { units } from '../core/unit.ts'
import { checkSample } from '../mechanics/check-sample.ts'
import {
  type CheckVerdict,
  type DecisionRule,
  decisionRules,
  isoClasses,
  isoTypes,
  judgeCheck,
  type Limits,
  type PointResult,
} from '../mechanics/check-verdict.ts'
import { checkShares, deviation, LEAST_SHARE, referenceAtMost, referenceWindow } from '../mechanics/deviation.ts'
import { citations } from '../tables/citation.ts'
import { checkClass, type HeldTo, highestOf, limitFor, neededForLimit } from './check-limit.ts'
import { percent, torque } from './input.ts'
import { points } from './input-samples.ts'
import { wrenchTag } from './input-shop.ts'
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

/** A point this near to a share of the largest setting stands for it: marks do not always fall on it. */
const NEAR = 0.1
/** So far off no wrench is: another unit was read off it (lbf·ft for N·m is 26 or 36 %). */
const ANOTHER_UNIT = 0.25

const shares = { metric: ['0.25 %', '0.5 %', '1 %', '1.5 %', '2 %'], inch: ['0.25 %', '0.5 %', '1 %', '1.5 %', '2 %'] }

const inputs = {
  points: points({ needed: true }),
  'iso-type': choice({ of: isoTypes }),
  'iso-class': choice({ of: isoClasses }),
  most: torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  'gauge-uncertainty': percent({
    least: quantity(0.001, units['%']),
    most: quantity(50, units['%']),
    example: { metric: '1 %', inch: '1 %' },
    ladder: shares,
  }),
  rule: choice({ of: decisionRules }),
  wrench: wrenchTag(),
}

interface Asked extends HeldTo {
  readonly 'gauge-uncertainty'?: Quantity | undefined
  readonly rule?: DecisionRule | undefined
}

interface Worst {
  readonly setting: Quantity
  readonly reading: Quantity
  /** In %. */
  readonly off: Quantity
}

const enoughOf = ({ 'iso-type': type, 'iso-class': isoClass }: Asked): number =>
  checkSample(type ?? 'indicating', isoClass).readings

const near = (setting: number, wanted: number): boolean => Math.abs(setting - wanted) <= wanted * NEAR

const percentage = (value: number): Quantity => quantity(value, units['%'])

const worstReading = ({ points: all }: Asked, unit: Unit): Worst => {
  const readings = all.flatMap(({ setting, readings: found }) =>
    found.map((reading) => ({ setting, reading, value: deviation(si(setting), si(reading)) })),
  )
  const worst = readings.reduce((far, one) => (Math.abs(one.value) > Math.abs(far.value) ? one : far))
  return {
    setting: fromSi(si(worst.setting), unit),
    reading: fromSi(si(worst.reading), unit),
    off: percentage(worst.value),
  }
}

const headline = (verdict: CheckVerdict, limit: Quantity, { setting, off }: Worst): Phrase => {
  const way = phrase(off.value > 0 ? 'wrench-check.low' : off.value < 0 ? 'wrench-check.high' : 'wrench-check.right')
  return phrase(`wrench-check.${verdict}`, { limit, setting, deviation: off, way })
}

const cautionsOf = (given: Asked, verdict: CheckVerdict, limit: Quantity, worst: Worst): Caution[] => {
  const list: Caution[] = []
  const gauge = given['gauge-uncertainty']
  const quarter = percentage(referenceAtMost(limit.value))
  const largest = given.most ?? highestOf(given.points)
  const fifth = si(largest) * LEAST_SHARE
  const beyond = given.points.find(({ setting }) => si(setting) > si(largest) * (1 + 1e-12))
  if (verdict === 'fail' || verdict === 'fail-in-doubt') list.push(caution('out-of-limit'))
  if (Math.abs(worst.off.value) >= ANOTHER_UNIT * 100) list.push(caution('unit-on-wrench'))
  if (beyond) list.push(caution('beyond-range', { setting: beyond.setting, limit: largest }))
  // The tool goes at least to the highest point, so a fifth of that is below a fifth of its scale whatever its most is.
  if (given.points.some(({ setting }) => si(setting) < fifth * (1 - 1e-12))) {
    list.push(caution('below-a-fifth', { fifth: fromSi(fifth, largest.unit) }))
  }
  if (!given.tolerance && !(given['iso-type'] && given['iso-class'])) list.push(caution('limit-assumed', { limit }))
  if (!gauge) list.push(caution('reference-unknown', { quarter }))
  else if (gauge.value > quarter.value * (1 + 1e-12)) list.push(caution('reference-too-coarse', { gauge, quarter }))
  if (given.points.some(({ readings }) => readings.length < enoughOf(given))) list.push(caution('few-readings'))
  const left = checkShares.filter(
    (share) => !given.points.some(({ setting }) => near(si(setting), share * si(largest))),
  )
  if (left.length > 0) list.push(caution('points-missing', { shares: checkShares.map((one) => one * 100).join(', ') }))
  return [...list, caution('click-once'), caution('not-accredited')]
}

const pointRow = (point: PointResult, unit: Unit): Row => ({
  setting: result(fromSi(point.setting, unit)),
  mean: result(fromSi(point.mean, unit)),
  deviation: result(percentage(point.deviation * 100)),
  spread: result(fromSi(point.spread, unit)),
  verdict: { word: point.verdict },
})

const pointStep = (point: PointResult, l: number, unit: Unit): Step => {
  const [setting, mean] = [fromSi(point.setting, unit), fromSi(point.mean, unit)]
  const { low, high } = referenceWindow(point.setting, l)
  return step(
    phrase('wrench-check.point', { setting }),
    'a = (X_a − X_r)/X_r; S/(1 + l) … S/(1 − l)',
    put`(${setting} − ${mean}) / ${mean}; ${fromSi(low, unit)} … ${fromSi(high, unit)}`,
    percentage(point.deviation * 100),
  )
}

const answerWrenchCheck = (given: Asked, { of }: ResultUnits): Outcome => {
  const unit = of('torque')
  const rule = given.rule ?? 'simple'
  const gauge = given['gauge-uncertainty']
  const { limit, step: limitStep } = limitFor(given)
  const l = limit.value / 100
  const limits: Limits = { limit: l, rule, ...(gauge ? { uncertainty: gauge.value / 100 } : {}) }
  const { points: judged, verdict } = judgeCheck(
    given.points.map(({ setting, readings }) => ({ setting: si(setting), references: readings.map(si) })),
    limits,
  )
  const worst = worstReading(given, unit)
  const guard =
    rule === 'guarded' && gauge
      ? [
          step(
            phrase('wrench-check.guard'),
            'AL = TL − U',
            put`${limit} − ${gauge}`,
            percentage(Math.max(limit.value - gauge.value, 0)),
          ),
        ]
      : []
  const assumed: Given[] = [
    ...(given.tolerance ? [] : [{ input: 'tolerance', value: limit, from: 'assumed' as const }]),
    ...(given.rule ? [] : [{ input: 'rule', value: rule, from: 'assumed' as const }]),
  ]
  return {
    headline: headline(verdict, limit, worst),
    assumed,
    results: {
      points: { rows: judged.map((point) => pointRow(point, unit)) },
      verdict: { word: verdict },
    } satisfies Record<string, Result>,
    steps: [
      limitStep,
      ...guard,
      ...judged.map((point) => pointStep(point, l, unit)),
      step(
        phrase('wrench-check.worst'),
        'a = (X_a − X_r)/X_r',
        put`(${worst.setting} − ${worst.reading}) / ${worst.reading}`,
        worst.off,
      ),
    ],
    cautions: cautionsOf(given, verdict, limit, worst),
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [
      citations.deviation,
      ...(given.tolerance ? [] : [citations.limits]),
      ...(given['iso-type'] && given['iso-class'] && !given.tolerance ? [citations.classLimits] : []),
      ...(rule === 'guarded' ? [citations.guardBand] : []),
      citations.quarterRule,
      citations.plan,
    ],
    related: [],
  }
}

export const wrenchCheck = defineQuestion({
  name: 'wrench-check',
  inputs,
  results: ['points', 'verdict'],
  alsoNeeded: (given) => [
    ...neededForLimit(given),
    // The guard band is the reference's uncertainty: without it there is nothing to guard by.
    ...(given.rule === 'guarded' && !given['gauge-uncertainty'] ? (['gauge-uncertainty'] as const) : []),
  ],
  check: checkClass,
  answer: answerWrenchCheck,
})
