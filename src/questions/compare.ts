// compare: does b differ from a, and by enough to matter? An interval and an honest word, also when it is not decided.
import { type Fault, fault, type Read, read, refuse } from '../core/fault.ts'
import { parseReadings } from '../core/parse-list.ts'
import { inUnit, type Quantity, quantity } from '../core/quantity.ts'
import { type Dimension, units } from '../core/unit.ts'
import { compareSamples } from '../mechanics/two-samples.ts'
import { citations } from '../tables/citation.ts'
import { asked, common, type Input, one, percent } from './input.ts'
import { caution, type Outcome, put, type Result, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'
import { percentOf } from './reach-doubt.ts'

const MOST = 500
const LONGEST = 20_000
const kinds: readonly Dimension[] = ['number', 'torque', 'force', 'length', 'angle', 'percent']

/** Readings of one kind: with a unit, or plain numbers. */
const readAlike = (texts: readonly string[], input: string): Read<readonly Quantity[]> => {
  const whole = texts.join('; ')
  if (whole.length > LONGEST) return refuse(fault('too-long', input, whole, { most: String(LONGEST) }))
  // The first kind that all of them are: plain numbers where no unit stands, else what the units say.
  const tries = kinds.map((dimension) => parseReadings(texts, { input, dimensions: [dimension] }, LONGEST))
  return tries.find(({ ok }) => ok) ?? (tries[/[a-z%°"']/i.test(whole) ? 1 : 0] as Read<readonly Quantity[]>)
}

const sample = (): Input<readonly Quantity[], true> => ({
  kind: 'readings',
  most: MOST,
  ...common({ needed: true }, { metric: '99.5; 101; 100.2; 100.4 N·m', inch: '74; 75.5; 75.1; 74.8 lbf·ft' }),
  read: (texts, input) => {
    const all = readAlike(texts, input)
    if (!all.ok) return all
    if (all.value.length > MOST) return refuse(fault('too-many', input, texts.join('; '), { most: String(MOST) }))
    if (all.value.length < 2) return refuse(fault('too-few-readings', input, texts.join('; ')))
    return read(all.value)
  },
  given: (all, input) => all.map((reading, index) => ({ ...asked(input, reading), index })),
})

const anyReading = (): Input<Quantity, false> => ({
  kind: 'readings',
  most: 1,
  ...common({}, { metric: '0.1 N·m', inch: '0.1 lbf·ft' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const all = readAlike([text.value], input)
    if (!all.ok) return all
    const [first] = all.value
    return first && first.value >= 0 ? read(first) : refuse(fault('negative', input, text.value, { kind: 'torque' }))
  },
  given: (value, input) => [asked(input, value)],
})

const inputs = {
  a: sample(),
  b: sample(),
  margin: percent({ least: quantity(0.01, units['%']), most: quantity(90, units['%']) }),
  confidence: percent({
    least: quantity(50, units['%']),
    most: quantity(99.99, units['%']),
    example: { metric: '95 %', inch: '95 %' },
  }),
  resolution: anyReading(),
}

interface Asked {
  readonly a: readonly Quantity[]
  readonly b: readonly Quantity[]
  readonly margin?: Quantity | undefined
  readonly confidence?: Quantity | undefined
  readonly resolution?: Quantity | undefined
}

const answerCompare = (given: Asked): Outcome => {
  const unit = (given.a[0] as Quantity).unit
  const values = (readings: readonly Quantity[]): number[] => readings.map((reading) => inUnit(reading, unit).value)
  const margin = given.margin ?? quantity(4, units['%'])
  const confidence = given.confidence ?? quantity(95, units['%'])
  const resolution = given.resolution ? inUnit(given.resolution, unit).value : 0
  const found = compareSamples(
    values(given.a),
    values(given.b),
    { m: margin.value / 100, confidence: confidence.value / 100 },
    resolution,
  )
  const difference = percentOf(found.difference.value)
  const { low, high } = found.difference
  const inUnits = (value: number): Quantity => quantity(value, unit)
  const more = found.readingsNeeded
  const ends =
    low === undefined || high === undefined
      ? []
      : [
          step(
            phrase('compare.interval', { confidence }),
            '(mean b − mean a)/mean a',
            put`${percentOf(low)} … ${percentOf(high)}`,
            difference,
          ),
        ]
  const steps: Step[] = [
    step(
      phrase('compare.mean-a', { count: String(found.a.n) }),
      'mean, s',
      put`${inUnits(found.a.mean)}, s ${inUnits(found.a.s)}`,
      inUnits(found.a.mean),
    ),
    step(
      phrase('compare.mean-b', { count: String(found.b.n) }),
      'mean, s',
      put`${inUnits(found.b.mean)}, s ${inUnits(found.b.s)}`,
      inUnits(found.b.mean),
    ),
    ...ends,
    ...(found.varianceRatio === undefined
      ? []
      : [
          step(
            phrase('compare.variances'),
            's_b²/s_a²',
            put`${inUnits(found.b.s)}² / ${inUnits(found.a.s)}²`,
            quantity(found.varianceRatio, units['1']),
          ),
        ]),
  ]
  const results: Record<string, Result> = {
    difference: result(
      difference,
      low === undefined ? undefined : low * 100,
      high === undefined ? undefined : high * 100,
    ),
    verdict: { word: found.verdict },
    ...(more === undefined ? {} : { 'readings-needed': result(quantity(more, units['1'])) }),
  }
  const shown = { verdict: phrase(`matters.${found.verdict}`), difference, margin }
  return {
    headline:
      more === undefined
        ? phrase('compare.verdict', shown)
        : phrase('compare.undecided', { ...shown, more: String(more) }),
    assumed: [
      ...(given.margin ? [] : [{ input: 'margin', value: margin, from: 'assumed' as const }]),
      ...(given.confidence ? [] : [{ input: 'confidence', value: confidence, from: 'assumed' as const }]),
    ],
    results,
    steps,
    cautions: [
      ...(found.hidden.length > 0 && !given.resolution ? [caution('resolution-hides')] : []),
      caution('same-but-one-thing'),
    ],
    pointers: ['calibration-lab'],
    sources: [citations.welch, citations.equivalence],
    related: [],
  }
}

const checkSamples = (given: Partial<Asked>): Fault[] => {
  const { a, b, resolution } = given
  const kind = a?.[0]?.unit.dimension
  const other = [b?.[0], resolution].find((reading) => reading && kind && reading.unit.dimension !== kind)
  if (other) return [fault('kinds-differ', 'b', other.unit.symbol, { unit: a?.[0]?.unit.symbol ?? '' })]
  const mean = a?.reduce((sum, { value }) => sum + value, 0)
  return mean !== undefined && mean <= 0 ? [fault('mean-not-above-zero', 'a', String(mean))] : []
}

export const compare = defineQuestion({
  name: 'compare',
  inputs,
  results: ['difference', 'verdict', 'readings-needed'],
  check: checkSamples,
  answer: answerCompare,
})
