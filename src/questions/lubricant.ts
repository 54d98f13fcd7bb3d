// lubricant: what another state of threads and seat does at the same torque, and which torque gives the same clamp force.
// The safe side leads: no reduced torque above the asked one, and no number in the headline where the sources disagree by 2:1.
import { type Fault, fault } from '../core/fault.ts'
import type { SeatText } from '../core/parse-seat.ts'
import type { Size } from '../core/parse-size.ts'
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { ratioOf, type Span } from '../mechanics/nut-factor.ts'
import type { Citation } from '../tables/citation.ts'
import { citations } from '../tables/citation.ts'
import { type Condition, conditionSpellings, conditions, conditionTable } from '../tables/conditions.ts'
import { torque } from './input.ts'
import { nutFactorInput, seatInput, spanOfOwn } from './input-joint.ts'
import { benchRuns } from './input-shop.ts'
import { choice, size } from './input-words.ts'
import { checkJoint } from './joint.ts'
import {
  frictionAssumed,
  frictionRatio,
  frictionSources,
  frictionSteps,
  type Place,
  places,
  seatWanted,
  splitResults,
  twoFrictions,
} from './lubricant-places.ts'
import {
  caution,
  type Given,
  type Outcome,
  put,
  type QuantityResult,
  rangeOnly,
  result,
  type Step,
  step,
  stepTo,
} from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { percentOf } from './reach-doubt.ts'

const inputs = {
  torque: torque({ needed: true }),
  from: choice({
    needed: true,
    of: conditions,
    spellings: conditionSpellings,
    ladder: { metric: conditions.slice(0, 12), inch: conditions.slice(0, 12) },
  }),
  to: choice({
    needed: true,
    of: conditions,
    spellings: conditionSpellings,
    example: { metric: 'anti-seize', inch: 'anti-seize' },
    ladder: { metric: conditions.slice(1), inch: conditions.slice(1) },
  }),
  'k-from': nutFactorInput(),
  'k-to': nutFactorInput({ example: { metric: '0.13', inch: '0.13' } }),
  bench: benchRuns('B-01 A; B-01 B', 2),
  size: size(),
  seat: seatInput(),
  where: choice({ of: places }),
}

export interface LubricantAsked {
  readonly torque: Quantity
  readonly from: Condition
  readonly to: Condition
  readonly 'k-from'?: Target | undefined
  readonly 'k-to'?: Target | undefined
  readonly size?: Size | undefined
  readonly seat?: SeatText | undefined
  readonly where?: Place | undefined
}

const spanOf = (condition: Condition, own: Target | undefined): Span =>
  own ? spanOfOwn(own) : conditionTable[condition]

const bare = (value: number): Quantity => quantity(value, units['1'])

const fromTable = (input: string, condition: Condition, own: Quantity | undefined): Given[] => {
  if (own) return []
  const { low, typical, high } = conditionTable[condition]
  return [{ input, value: bare(typical), low, high, from: 'table' }]
}

/**
 * The new state is the slipperier one where either way of looking at it says so: the safe side is taken. Own factors may
 * lower the torque further; above the asked one they never lift it for a state that is the slipperier by name.
 */
const isSlipperier = (given: LubricantAsked, raw: Span): boolean =>
  raw.typical < 1 || conditionTable[given.to].typical < conditionTable[given.from].typical

/** The ratio of torques for the same clamp force, capped at 1 where the new state is the slipperier one. */
const torqueRatio = (raw: Span, slipperier: boolean, unchanged: boolean): Span & { slipperier: boolean } => {
  if (unchanged) return { low: 1, typical: 1, high: 1, slipperier: false }
  const cap = (value: number): number => (slipperier ? Math.min(value, 1) : value)
  return { low: cap(raw.low), typical: cap(raw.typical), high: cap(raw.high), slipperier }
}

/** Whether a torque may be named at all: where the sources span more than two to one, or friction grows, none may. */
const namesTorque = ({ slipperier, low, typical, high }: Span & { slipperier: boolean }): boolean =>
  slipperier && high <= low * 2 * (1 + 1e-12) && typical < 1

const headline = (
  given: LubricantAsked,
  ratio: Span & { slipperier: boolean },
  raw: Span,
  low: Quantity,
  typical: Quantity,
  unchanged: boolean,
): Phrase => {
  const from = phrase(`condition.${given.from}`)
  const to = phrase(`condition.${given.to}`)
  if (unchanged) return phrase('lubricant.same', { from })
  if (!ratio.slipperier) return phrase(raw.typical === 1 ? 'lubricant.alike' : 'lubricant.rougher', { from, to })
  if (!namesTorque(ratio)) return phrase('lubricant.too-wide', { from, to })
  if (ratio.low === ratio.typical) return phrase('lubricant.known', { from, to, torque: given.torque, typical })
  return phrase('lubricant.reduced', { from, to, torque: given.torque, low, typical })
}

const citationsOf = (given: LubricantAsked): Citation[] => {
  const rows = [
    ...(given['k-from'] ? [] : [conditionTable[given.from]]),
    ...(given['k-to'] ? [] : [conditionTable[given.to]]),
  ]
  return rows.flatMap(({ rangeFrom, typicalFrom }) => [rangeFrom, typicalFrom])
}

/** How the last steps end: in a value, or where no torque may be named in a range. */
type Ending = (one: Step, low: number, high: number) => Step

/** What it does at the same torque, and which torque does the same: by nut factors K or by friction Λ alike. */
const lastSteps = (
  by: 'K' | 'Λ',
  given: LubricantAsked,
  ratio: Span & { readonly slipperier: boolean },
  change: Span,
  reduced: (share: number) => Quantity,
  ending: Ending,
): Step[] => [
  ending(
    step(
      phrase('lubricant.same-torque'),
      `F_to/F_from − 1 = ${by}_from/${by}_to − 1`,
      put`${percentOf(change.low)} … ${percentOf(change.high)}`,
      percentOf(change.typical),
    ),
    change.low * 100,
    change.high * 100,
  ),
  ending(
    step(
      phrase(ratio.slipperier ? 'lubricant.same-clamp-capped' : 'lubricant.same-clamp'),
      `T_to = T ${by}_to/${by}_from`,
      put`${given.torque} · ${bare(ratio.low)} … ${given.torque} · ${bare(ratio.high)}`,
      reduced(ratio.typical),
    ),
    reduced(ratio.low).value,
    reduced(ratio.high).value,
  ),
]

const nutFactorSteps = (from: Span, to: Span, last: readonly Step[]): Step[] => [
  step(
    phrase('lubricant.nut-factors'),
    'K_to/K_from',
    put`${bare(to.typical)} / ${bare(from.typical)}`,
    bare(to.typical / from.typical),
  ),
  step(
    phrase('lubricant.span'),
    'K_to,low/K_from,high … K_to,high/K_from,low',
    put`${bare(to.low)} / ${bare(from.high)} … ${bare(to.high)} / ${bare(from.low)}`,
    bare(to.high / from.low),
  ),
  ...last,
]

const answerLubricant = (given: LubricantAsked, { of }: ResultUnits): Outcome => {
  const from = spanOf(given.from, given['k-from'])
  const to = spanOf(given.to, given['k-to'])
  const unchanged = given.from === given.to && !given['k-from'] && !given['k-to']
  const places_ = twoFrictions(given) ? frictionRatio(given) : undefined
  const raw = places_ ?? ratioOf(to, from)
  const ratio = torqueRatio(raw, isSlipperier(given, raw), unchanged)
  const unit = of('torque')
  const reduced = (share: number): Quantity => fromSi(si(given.torque) * share, unit)
  const clamp: Span = { low: 1 / raw.high, typical: 1 / raw.typical, high: 1 / raw.low }
  const change: Span = unchanged
    ? { low: 0, typical: 0, high: 0 }
    : { low: clamp.low - 1, typical: clamp.typical - 1, high: clamp.high - 1 }
  const isNamed = unchanged || namesTorque(ratio)
  const told = (one: QuantityResult): QuantityResult => (isNamed ? one : rangeOnly(one))
  const ending: Ending = isNamed ? (one) => one : stepTo
  const last = lastSteps(places_ ? 'Λ' : 'K', given, ratio, change, reduced, ending)
  const stainless = given.from === 'stainless-dry' || given.to === 'stainless-dry'
  return {
    headline: headline(given, ratio, raw, reduced(ratio.low), reduced(ratio.typical), unchanged),
    assumed: places_
      ? frictionAssumed(given)
      : [...fromTable('k-from', given.from, given['k-from']), ...fromTable('k-to', given.to, given['k-to'])],
    results: {
      'reduced-torque': told(result(reduced(ratio.typical), reduced(ratio.low).value, reduced(ratio.high).value)),
      'clamp-change': told(result(percentOf(change.typical), change.low * 100, change.high * 100)),
      ...(places_ ? splitResults(given) : {}),
    },
    steps: places_ ? frictionSteps(given, places_, last) : nutFactorSteps(from, to, last),
    cautions: [
      caution('which-condition'),
      caution('estimate-only'),
      ...(stainless ? [caution('galling')] : []),
      caution('yield-fastener'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure', 'lubricant-maker'],
    sources: places_ ? frictionSources(given) : [citations.nutFactor, ...citationsOf(given)],
    related: [],
  }
}

/** Nut factors are of thread and seat together: with them nothing can be told of one place alone. */
const checkPlaces = (given: Partial<LubricantAsked>): Fault[] => {
  const own = given['k-from'] ? 'k-from' : given['k-to'] ? 'k-to' : undefined
  const joint = checkJoint({ size: given.size, seat: given.seat })
  return own && given.where ? [fault('own-factors-and-where', own, given.where), ...joint] : joint
}

export const lubricant = defineQuestion({
  name: 'lubricant',
  inputs,
  results: ['reduced-torque', 'clamp-change', 'split-before', 'split-after'],
  alsoNeeded: (given) => [...(given.where && !given.size ? (['size'] as const) : []), ...seatWanted(given)],
  check: checkPlaces,
  answer: answerLubricant,
})
