// clamp-force: how hard a torque clamps, and how much of the bolt's strength that uses. A range, since friction scatters.
import type { SeatText } from '../core/parse-seat.ts'
import type { Size } from '../core/parse-size.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { plainShare, yieldShare } from '../mechanics/strength.ts'
import { citations } from '../tables/citation.ts'
import { torque } from './input.ts'
import { classInput, conditionInput, frictionInput, nutFactorInput, seatInput } from './input-joint.ts'
import { benchRuns } from './input-shop.ts'
import { size } from './input-words.ts'
import {
  checkJoint,
  classOf,
  frictionGroups,
  type Joint,
  jointAssumed,
  jointCautions,
  jointNeeds,
  jointSources,
  leversOf,
  seatOf,
  threadOf,
} from './joint.ts'
import { type Caution, caution, type Outcome, put, type Result, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { percentOf } from './reach-doubt.ts'
import { splitOf } from './torque-split.ts'

const inputs = {
  size: size({ needed: true }),
  torque: torque({ needed: true }),
  condition: conditionInput(),
  k: nutFactorInput(),
  'mu-threads': frictionInput(),
  'mu-seat': frictionInput(),
  class: classInput(),
  seat: seatInput(),
  bench: benchRuns(),
}

interface Asked extends Joint {
  readonly size: Size
  readonly torque: Quantity
  readonly seat?: SeatText | undefined
}

/** Clamp forces are told in kN or lbf; hands pull in N. */
export const clampUnit = ({ given, system }: ResultUnits) =>
  given('force') ?? (system === 'metric' ? units.kN : units.lbf)

const strengthResults = (
  given: Asked,
  F: { low: number; typical: number; high: number },
): { results: Record<string, Result>; steps: Step[]; over: boolean } => {
  const row = classOf(given)
  if (!row) return { results: {}, steps: [], over: false }
  const thread = threadOf(given.size)
  const levers = leversOf(given)
  // Low friction clamps hardest; the thread's part of the torque goes with it.
  const used = {
    low: yieldShare(F.low, row.yield, thread, levers.thread.high, 'plastic'),
    typical: yieldShare(F.typical, row.yield, thread, levers.thread.typical, 'plastic'),
    high: yieldShare(F.high, row.yield, thread, levers.thread.low, 'plastic'),
  }
  const { proof } = row
  const proofShare = (force: number): number => plainShare(force, proof as number, thread.As)
  return {
    over: used.high > 1 || (proof !== undefined && proofShare(F.high) > 1),
    results: {
      ...(proof === undefined
        ? {}
        : {
            'proof-share': result(percentOf(proofShare(F.typical)), proofShare(F.low) * 100, proofShare(F.high) * 100),
          }),
      'yield-share': result(percentOf(used.typical), used.low * 100, used.high * 100),
    },
    steps: [
      ...(proof === undefined
        ? []
        : [
            step(
              phrase('bolt.proof-share'),
              'F/(S_p A_s)',
              put`${fromSi(F.typical, units.kN)} / (${fromSi(proof, units.MPa)} · ${quantity(thread.As * 1e6, units['1'])} mm²)`,
              percentOf(proofShare(F.typical)),
            ),
          ]),
      step(
        phrase('bolt.yield-share'),
        '√((F/A_s)² + 3 (T_th/W_p)²)/R_p',
        put`${fromSi(row.yield, units.MPa)}`,
        percentOf(used.typical),
      ),
    ],
  }
}

const answerClampForce = (given: Asked, resultUnits: ResultUnits): Outcome => {
  const T = si(given.torque)
  const { whole, byNutFactor } = leversOf(given)
  const F = { low: T / whole.high, typical: T / whole.typical, high: T / whole.low }
  const unit = clampUnit(resultUnits)
  const thread = threadOf(given.size)
  const clamp = fromSi(F.typical, unit)
  const low = fromSi(F.low, unit)
  const high = fromSi(F.high, unit)
  const strength = strengthResults(given, F)
  const withSeat = seatOf(given) !== undefined && (!byNutFactor || given.class !== undefined)
  const split = splitOf(given)
  const steps: Step[] = byNutFactor
    ? [
        step(
          phrase('bolt.by-nut-factor'),
          'F = T/(K d)',
          put`${given.torque} / (${quantity(whole.typical / thread.d, units['1'])} · ${given.size.diameter})`,
          clamp,
        ),
      ]
    : [
        step(
          phrase('bolt.by-friction'),
          'F = T/Λ, Λ = (d2/2) tan(φ + ρ′) + μ_s r_s',
          put`${given.torque} / ${fromSi(whole.typical, units.mm)}`,
          clamp,
        ),
      ]
  const spread: Step[] =
    whole.low === whole.high
      ? []
      : [step(phrase('bolt.span'), 'T/(K_high d) … T/(K_low d)', put`${low} … ${high}`, clamp)]
  const cautions: Caution[] = [
    ...(strength.over ? [caution('past-strength')] : []),
    caution('which-condition'),
    caution('estimate-only'),
    ...jointCautions(given),
    caution('yield-fastener'),
    caution('critical-joint'),
  ]
  const params = { torque: given.torque, clamp, low, high }
  return {
    headline: strength.over
      ? phrase('clamp-force.too-much', params)
      : whole.low === whole.high
        ? phrase('clamp-force.known', { torque: given.torque, clamp })
        : phrase('clamp-force.span', params),
    assumed: jointAssumed(given, withSeat),
    results: { 'clamp-force': result(clamp, low.value, high.value), ...strength.results, ...split.results },
    steps: [...steps, ...split.steps, ...spread, ...strength.steps],
    cautions,
    pointers: ['torque-figure', 'lubricant-maker'],
    sources: [...jointSources(given, withSeat), ...(given.class ? [citations.strength] : [])],
    related: [],
  }
}

export const clampForce = defineQuestion({
  name: 'clamp-force',
  inputs,
  results: ['clamp-force', 'proof-share', 'yield-share', 'torque-split'],
  oneOf: frictionGroups,
  alsoNeeded: jointNeeds,
  check: checkJoint,
  answer: answerClampForce,
})
