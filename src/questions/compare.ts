// compare: two sets of readings, b against a: is there a difference, and is it one that matters.
import { type Fault, fault } from '../core/fault.ts'
import { inUnit, type Quantity, quantity } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { type Unit, units } from '../core/unit.ts'
import { mean } from '../mechanics/scale-pull.ts'
import { tPoint } from '../mechanics/student.ts'
import { type Comparison, compareSamples, type Margin, type SampleVerdict } from '../mechanics/two-samples.ts'
import { doubtOf } from '../mechanics/welch.ts'
import { citations } from '../tables/citation.ts'
import { percent } from './input.ts'
import { anyStep, samples } from './input-samples.ts'
import {
  type Caution,
  caution,
  type Given,
  type Outcome,
  put,
  type Result,
  result,
  type Step,
  step,
} from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const inputs = {
  a: samples({ needed: true }),
  b: samples({ needed: true, example: { metric: '103; 104.5; 103.8 N·m', inch: '77; 78.5; 77.8 lbf·ft' } }),
  margin: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  confidence: percent({
    least: quantity(50, units['%']),
    most: quantity(99.9, units['%']),
    example: { metric: '95 %', inch: '95 %' },
  }),
  resolution: anyStep(),
}

interface Asked {
  readonly a: readonly Quantity[]
  readonly b: readonly Quantity[]
  readonly margin?: Quantity | undefined
  readonly confidence?: Quantity | undefined
  readonly resolution?: Quantity | undefined
}

const usualMargin = quantity(4, units['%'])
const usualConfidence = quantity(95, units['%'])

/** Where the means stand among the steps of an answer. */
export const meanSteps = { a: 0, b: 1 } as const

const codes = {
  'seen-too-small-to-matter': 'seen-too-small-to-matter',
  'no-difference-that-matters': 'no-difference-that-matters',
  'a-difference-that-matters': 'a-difference-that-matters',
  'seen-not-decided': 'seen-not-decided-whether-it-matters',
  'not-decided': 'not-decided',
} as const satisfies Record<SampleVerdict, string>

const percentage = (fraction: number): Quantity => quantity(fraction * 100, units['%'])
const plain = (value: number): Quantity => quantity(value, units['1'])
const numbersOf = (list: readonly Quantity[], unit: Unit): number[] => list.map((q) => inUnit(q, unit).value)

const headline = ({ difference, verdict }: Comparison, margin: Quantity, confidence: Quantity): Phrase => {
  const { value, low, high } = difference
  const interval =
    low === undefined || high === undefined
      ? phrase('compare.no-interval')
      : phrase('compare.interval', { low: percentage(low), high: percentage(high), confidence })
  const size = percentage(Math.abs(value))
  const what =
    value === 0
      ? phrase('compare.same', { interval })
      : phrase(value > 0 ? 'compare.higher' : 'compare.lower', { size, interval })
  return phrase(`compare.${codes[verdict]}`, { what, margin })
}

/** What each set is, how they differ, and the two bounds that are held against the margin. */
const stepsOf = (
  { a, b, absolute, difference, varianceRatio }: Comparison,
  { m, confidence }: Margin,
  unit: Unit,
): Step[] => {
  const here = (value: number): Quantity => quantity(value, unit)
  const above = doubtOf(a, b, 1 + m)
  const below = doubtOf(a, b, 1 - m)
  const upper = above.D + tPoint(confidence, above.nu) * above.u
  const lower = below.D - tPoint(confidence, below.nu) * below.u
  const margin = percentage(m)
  return [
    step(phrase('compare.mean-a', { n: String(a.n) }), 'x̄_a = Σ x/n', put`n = ${plain(a.n)}`, here(a.mean)),
    step(phrase('compare.mean-b', { n: String(b.n) }), 'x̄_b = Σ x/n', put`n = ${plain(b.n)}`, here(b.mean)),
    step(phrase('compare.spread-a'), 's_a = √(Σ (x − x̄)²/(n − 1)) ≥ r/√12', put`ν = ${plain(a.n - 1)}`, here(a.s)),
    step(phrase('compare.spread-b'), 's_b = √(Σ (x − x̄)²/(n − 1)) ≥ r/√12', put`ν = ${plain(b.n - 1)}`, here(b.s)),
    ...(varianceRatio === undefined
      ? []
      : [step(phrase('compare.variances'), 's_b²/s_a²', put`(${here(b.s)})² / (${here(a.s)})²`, plain(varianceRatio))]),
    step(
      phrase('compare.difference'),
      'x̄_b − x̄_a ± t(ν) √(s_b²/n_b + s_a²/n_a)',
      put`ν = ${plain(doubtOf(a, b, 1).nu)}: ${here(absolute.low)} … ${here(absolute.high)}`,
      here(absolute.value),
    ),
    ...(difference.low === undefined || difference.high === undefined
      ? []
      : [
          step(
            phrase('compare.relative'),
            'x̄_b/x̄_a − 1; all k with |x̄_b − k x̄_a| ≤ t(ν_k) u_k',
            put`${percentage(difference.low)} … ${percentage(difference.high)}`,
            percentage(difference.value),
          ),
        ]),
    step(
      phrase('compare.upper-bound', { margin }),
      'x̄_b − (1 + m) x̄_a + t(ν) u',
      put`${here(above.D)} + ${plain(tPoint(confidence, above.nu))} · ${here(above.u)}`,
      here(upper),
    ),
    step(
      phrase('compare.lower-bound', { margin }),
      'x̄_b − (1 − m) x̄_a − t(ν) u',
      put`${here(below.D)} − ${plain(tPoint(confidence, below.nu))} · ${here(below.u)}`,
      here(lower),
    ),
  ]
}

const cautionsOf = ({ hidden, difference }: Comparison, given: Asked): Caution[] => [
  ...hidden.map((set) =>
    caution(given.resolution ? 'alike-resolution' : 'alike-no-resolution', { set: set.toUpperCase() }),
  ),
  ...(difference.low === undefined ? [caution('mean-near-zero')] : []),
  caution('independent-readings'),
]

const answerCompare = (given: Asked): Outcome => {
  const unit = (given.a[0] as Quantity).unit
  const margin = given.margin ?? usualMargin
  const confidence = given.confidence ?? usualConfidence
  const asked: Margin = { m: margin.value / 100, confidence: confidence.value / 100 }
  const resolution = given.resolution ? inUnit(given.resolution, unit).value : 0
  const found = compareSamples(numbersOf(given.a, unit), numbersOf(given.b, unit), asked, resolution)
  const { value, low, high } = found.difference
  const assumed: Given[] = [
    ...(given.margin ? [] : [{ input: 'margin', value: margin, from: 'assumed' as const }]),
    ...(given.confidence ? [] : [{ input: 'confidence', value: confidence, from: 'assumed' as const }]),
  ]
  return {
    headline: headline(found, margin, confidence),
    assumed,
    results: {
      difference: result(
        percentage(value),
        low === undefined ? undefined : low * 100,
        high === undefined ? undefined : high * 100,
      ),
      verdict: { word: codes[found.verdict] },
      ...(found.readingsNeeded === undefined ? {} : { 'readings-needed': result(plain(found.readingsNeeded)) }),
    } satisfies Record<string, Result>,
    steps: stepsOf(found, asked, unit),
    cautions: cautionsOf(found, given),
    pointers: [],
    sources: [
      citations.welch,
      citations.fieller,
      citations.twoOneSided,
      ...(given.resolution ? [citations.resolution] : []),
    ],
    related: [],
  }
}

const checkSets = ({ a, b, resolution }: Partial<Asked>): Fault[] => {
  const faults: Fault[] = []
  const [first] = a ?? []
  if (!a || !first) return faults
  const { dimension } = first.unit
  const [other] = b ?? []
  if (other && other.unit.dimension !== dimension) {
    faults.push(fault('readings-differ', 'b', writeQuantity(other), { kind: dimension }))
  }
  if (resolution && resolution.unit.dimension !== dimension) {
    faults.push(fault('readings-differ', 'resolution', writeQuantity(resolution), { kind: dimension }))
  }
  const middle = mean(numbersOf(a, first.unit))
  if (middle <= 0) faults.push(fault('mean-not-above-zero', 'a', writeQuantity(quantity(middle, first.unit))))
  return faults
}

export const compare = defineQuestion({
  name: 'compare',
  inputs,
  results: ['difference', 'verdict', 'readings-needed'],
  check: checkSets,
  answer: answerCompare,
})
