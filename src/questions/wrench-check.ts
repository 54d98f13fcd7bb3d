// wrench-check: readings against a reference, point by point, and whether the wrench passes. Every reading counts, not the mean alone.
import { type Fault, fault, read, refuse } from '../core/fault.ts'
import { type Point, parsePoints, pointExample } from '../core/parse-points.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import {
  type CheckVerdict,
  classesOf,
  type DecisionRule,
  decisionRules,
  type IsoClass,
  type IsoType,
  isoClasses,
  isoTypes,
  judgeCheck,
  limitOf,
} from '../mechanics/check-verdict.ts'
import { LEAST_SHARE, referenceAtMost, standardLimit } from '../mechanics/deviation.ts'
import { citations } from '../tables/citation.ts'
import { common, type Input, percent, torque, within } from './input.ts'
import { choice } from './input-words.ts'
import { type Caution, caution, type Given, type Outcome, put, type Row, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { percentOf } from './reach-doubt.ts'

const MOST_POINTS = 12
const MOST_READINGS = 30
/** A point takes this many readings by the standard. */
const READINGS_A_POINT = 5

const pointsInput = (): Input<readonly Point[], true> => ({
  kind: 'points',
  most: MOST_POINTS,
  ...common({ needed: true }, { metric: pointExample, inch: '75 lbf·ft: 74.5; 76; 75.2 lbf·ft' }),
  read: (texts, input) => {
    const points = parsePoints(texts, input)
    if (!points.ok) return points
    const got = texts.join(' | ')
    if (points.value.length > MOST_POINTS) return refuse(fault('too-many', input, got, { most: String(MOST_POINTS) }))
    const wrong = points.value.flatMap(({ setting, references }) => [
      ...[setting, ...references].map((one) => within(one, { input, dimensions: ['torque'] }, echoQuantity(one), {})),
      ...(references.length > MOST_READINGS ? [fault('too-many', input, got, { most: String(MOST_READINGS) })] : []),
    ])
    const faults = wrong.filter((one) => one !== undefined)
    return faults.length > 0 ? refuse(...faults) : read(points.value)
  },
  given: (points, input) =>
    points.map(({ setting, references }, index) => ({
      input,
      value: setting,
      name: `${echoQuantity(setting)}: ${references.map((one) => echoQuantity(one)).join('; ')}`,
      index,
      from: 'asked',
    })),
})

const bounds = { least: quantity(0.01, units['%']), most: quantity(50, units['%']) }

const inputs = {
  points: pointsInput(),
  'iso-type': choice({ of: isoTypes }),
  'iso-class': choice({ of: isoClasses }),
  most: torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  tolerance: percent(bounds),
  'gauge-uncertainty': percent({ zero: true, most: quantity(50, units['%']), example: { metric: '1 %', inch: '1 %' } }),
  rule: choice({ of: decisionRules }),
}

interface Asked {
  readonly points: readonly Point[]
  readonly 'iso-type'?: IsoType | undefined
  readonly 'iso-class'?: IsoClass | undefined
  readonly most?: Quantity | undefined
  readonly tolerance?: Quantity | undefined
  readonly 'gauge-uncertainty'?: Quantity | undefined
  readonly rule?: DecisionRule | undefined
}

const mostOf = ({ points, most }: Asked): Quantity =>
  most ?? points.map(({ setting }) => setting).reduce((one, other) => (si(other) > si(one) ? other : one))

const limitFor = (given: Asked): number => {
  if (given.tolerance) return given.tolerance.value / 100
  const most = si(mostOf(given))
  return given['iso-type'] && given['iso-class']
    ? limitOf(given['iso-type'], given['iso-class'], most)
    : standardLimit(most)
}

const cautionsOf = (given: Asked, limit: number): Caution[] => {
  const U = given['gauge-uncertainty']
  const fifth = si(mostOf(given)) * LEAST_SHARE
  return [
    ...(U && U.value > referenceAtMost(limit * 100)
      ? [caution('reference-too-coarse', { gauge: U, quarter: percentOf(referenceAtMost(limit)) })]
      : []),
    ...(U ? [] : [caution('reference-unknown')]),
    ...(given.points.some(({ setting }) => si(setting) < fifth * (1 - 1e-9))
      ? [caution('below-a-fifth', { fifth: fromSi(fifth, mostOf(given).unit) })]
      : []),
    ...(given.points.some(({ references }) => references.length < READINGS_A_POINT)
      ? [caution('few-readings', { count: String(READINGS_A_POINT) })]
      : []),
    caution('click-once'),
    caution('not-accredited'),
  ]
}

const answerWrenchCheck = (given: Asked, _units: ResultUnits): Outcome => {
  const limit = limitFor(given)
  const rule = given.rule ?? 'simple'
  const uncertainty = (given['gauge-uncertainty']?.value ?? 0) / 100
  const judged = judgeCheck(
    given.points.map(({ setting, references }) => ({ setting: si(setting), references: references.map(si) })),
    { limit, rule, uncertainty },
  )
  const worst = judged.points
    .flatMap(({ deviations }) => deviations)
    .reduce((one, other) => (Math.abs(other) > Math.abs(one) ? other : one))
  const rows: Row[] = judged.points.map((point, n) => {
    const unit = (given.points[n] as Point).setting.unit
    return {
      setting: result(fromSi(point.setting, unit)),
      mean: result(fromSi(point.mean, unit)),
      deviation: result(percentOf(point.deviation)),
      spread: result(fromSi(point.spread, unit)),
      verdict: { word: point.verdict },
    }
  })
  const shown = { verdict: phrase(`verdict.${judged.verdict}`), deviation: percentOf(worst), limit: percentOf(limit) }
  const assumed: Given[] = [
    ...(given.tolerance
      ? []
      : [
          {
            input: 'tolerance',
            value: percentOf(limit),
            from: given['iso-class'] ? ('table' as const) : ('assumed' as const),
          },
        ]),
    ...(given.most || given.tolerance ? [] : [{ input: 'most', value: mostOf(given), from: 'assumed' as const }]),
    ...(given.rule ? [] : [{ input: 'rule', value: 'simple', from: 'assumed' as const }]),
  ]
  return {
    headline: phrase(worst > 0 ? 'wrench-check.low' : worst < 0 ? 'wrench-check.high' : 'wrench-check.on', shown),
    assumed,
    results: { points: { rows }, verdict: { word: judged.verdict } },
    steps: judged.points.map((point, n) =>
      step(
        phrase('wrench-check.point', { setting: (given.points[n] as Point).setting }),
        'a = (X_a − X_r)/X_r, each',
        put`${point.deviations.map((a) => `${(a * 100).toFixed(2)} %`).join('; ')}`,
        percentOf(point.deviations.reduce((one, other) => (Math.abs(other) > Math.abs(one) ? other : one))),
      ),
    ),
    cautions: cautionsOf(given, limit),
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [
      citations.deviation,
      citations.limits,
      ...(rule === 'guarded' ? [citations.guard] : []),
      citations.quarterRule,
    ],
    related: [],
  }
}

const checkKind = (given: Partial<Asked>): Fault[] => {
  const { 'iso-type': type, 'iso-class': cls } = given
  return type && cls && !classesOf[type].includes(cls)
    ? [fault('not-a-choice', 'iso-class', cls, { options: classesOf[type] })]
    : []
}

export const verdictWords: readonly CheckVerdict[] = ['pass', 'pass-in-doubt', 'fail-in-doubt', 'fail']

export const wrenchCheck = defineQuestion({
  name: 'wrench-check',
  inputs,
  results: ['points', 'verdict'],
  alsoNeeded: (given) => [
    ...(given['iso-class'] && !given['iso-type'] ? (['iso-type'] as const) : []),
    ...(given['iso-type'] && !given['iso-class'] && !given.tolerance ? (['iso-class'] as const) : []),
    ...(given.rule === 'guarded' && !given['gauge-uncertainty'] ? (['gauge-uncertainty'] as const) : []),
  ],
  check: checkKind,
  answer: answerWrenchCheck,
})
