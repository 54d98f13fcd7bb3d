// multiplier: what to put into a torque multiplier. The torque ratio holds its losses; the turns ratio does not, so the lowest input leads.
import { type Fault, fault, refuse } from '../core/fault.ts'
import { parseQuantity } from '../core/parse-quantity.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { inputByTorqueRatio, inputByTurnsRatio, usualEfficiency } from '../mechanics/multiplier.ts'
import { citations } from '../tables/citation.ts'
import { common, type Input, one, plainNumber, torque, within } from './input.ts'
import { bounded, caution, type Given, type Outcome, put, result, step } from './outcome.ts'
import { atMost, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { percentOf } from './reach-doubt.ts'

const ratioBounds = { least: quantity(1, units['1']), most: quantity(500, units['1']) }
const efficiencyBounds = { least: quantity(10, units['%']), most: quantity(100, units['%']) }

/** An efficiency in percent, or as a plain number from 0 to 1. */
const efficiency = (): Input<Quantity, false> => ({
  kind: 'percent',
  most: 1,
  ...common({}, { metric: '90 %', inch: '90 %' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const plain = parseQuantity(text.value, { input, dimensions: ['number'] })
    const share = plain.ok && plain.value.value > 0 && plain.value.value <= 1 ? percentOf(plain.value.value) : undefined
    const parsed = share
      ? { ok: true as const, value: share }
      : parseQuantity(text.value, { input, dimensions: ['percent'] })
    if (!parsed.ok) return parsed
    const wrong = within(parsed.value, { input, dimensions: ['percent'] }, text.value, efficiencyBounds)
    return wrong ? refuse(wrong) : parsed
  },
  given: (value, input) => [{ input, value, from: 'asked' }],
})

const ladder = { metric: ['3', '4', '5', '10', '25'], inch: ['3', '4', '5', '10', '25'] }

const inputs = {
  torque: torque({ needed: true, example: { metric: '600 N·m', inch: '450 lbf·ft' } }),
  'torque-ratio': plainNumber({ ...ratioBounds, example: { metric: '4', inch: '4' }, ladder }),
  'turns-ratio': plainNumber({ ...ratioBounds, example: { metric: '5', inch: '5' }, ladder }),
  efficiency: efficiency(),
}

interface Asked {
  readonly torque: Quantity
  readonly 'torque-ratio'?: Quantity | undefined
  readonly 'turns-ratio'?: Quantity | undefined
  readonly efficiency?: Quantity | undefined
}

const byTorqueRatio = (
  given: Asked,
  R: Quantity,
  { of }: ResultUnits,
): Pick<Outcome, 'headline' | 'results' | 'steps' | 'assumed'> => {
  const input = fromSi(inputByTorqueRatio(si(given.torque), R.value), of('torque'))
  return {
    headline: phrase('multiplier.set', { input, torque: given.torque }),
    assumed: [],
    results: { 'input-torque': result(input, input.value, input.value) },
    steps: [step(phrase('multiplier.torque-ratio'), 'T_in = T/R', put`${given.torque} / ${R}`, input)],
  }
}

const byTurnsRatio = (
  given: Asked,
  i: Quantity,
  { of }: ResultUnits,
): Pick<Outcome, 'headline' | 'results' | 'steps' | 'assumed'> => {
  const own = given.efficiency && given.efficiency.value / 100
  const band = own === undefined ? usualEfficiency : { low: own, high: own }
  const unit = of('torque')
  const { low, high } = inputByTurnsRatio(si(given.torque), i.value, band)
  const lowest = fromSi(low, unit)
  const highest = fromSi(high, unit)
  const assumed: Given[] =
    own === undefined
      ? [
          {
            input: 'efficiency',
            value: percentOf(band.high),
            low: band.low * 100,
            high: band.high * 100,
            from: 'assumed',
          },
        ]
      : []
  return {
    headline:
      own === undefined
        ? phrase('multiplier.lowest', { input: atMost(lowest), high: highest, torque: given.torque })
        : phrase('multiplier.set', { input: lowest, torque: given.torque }),
    assumed,
    results: { 'input-torque': bounded(result(lowest, lowest.value, highest.value), 'down') },
    steps: [
      step(
        phrase('multiplier.lowest-step'),
        'T_in = T/(i η_high)',
        put`${given.torque} / (${i} · ${percentOf(band.high)})`,
        lowest,
      ),
      step(
        phrase('multiplier.highest-step'),
        'T_in = T/(i η_low)',
        put`${given.torque} / (${i} · ${percentOf(band.low)})`,
        highest,
      ),
    ],
  }
}

const answerMultiplier = (given: Asked, units_: ResultUnits): Outcome => {
  const R = given['torque-ratio']
  const worked = R ? byTorqueRatio(given, R, units_) : byTurnsRatio(given, given['turns-ratio'] as Quantity, units_)
  return {
    ...worked,
    cautions: [caution('which-ratio'), caution('reaction-arm'), caution('critical-joint')],
    pointers: ['multiplier-plate', 'torque-figure'],
    sources: [citations.energy, ...(R || given.efficiency ? [] : [citations.efficiencyPractice])],
    related: [],
  }
}

const checkRatios = (given: Partial<Asked>): Fault[] => {
  const { 'torque-ratio': R, 'turns-ratio': i, efficiency: eta } = given
  if (R && i) return [fault('two-ratios', 'turns-ratio', writeQuantity(i))]
  return R && eta ? [fault('ratio-holds-losses', 'efficiency', writeQuantity(eta))] : []
}

export const multiplier = defineQuestion({
  name: 'multiplier',
  inputs,
  results: ['input-torque'],
  oneOf: [['torque-ratio', 'turns-ratio']],
  check: checkRatios,
  answer: answerMultiplier,
})
