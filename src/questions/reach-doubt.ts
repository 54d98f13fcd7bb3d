// The doubt that a pull by hand carries: what is assumed of wrench, lengths and hand, the 95 % band, and what makes it.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si, tidy } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { standardLimit } from '../mechanics/deviation.ts'
import { factor, torqueAt } from '../mechanics/lever.ts'
import { leverContributions } from '../mechanics/lever-doubt.ts'
import { lengthHalfWidth } from '../mechanics/measured-by-hand.ts'
import { band95, type Contribution, combined, ranked } from '../mechanics/uncertainty.ts'
import { type Given, put, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { anglesAssumed, chainOf, handAway, leverOf, pivotOf, type Reach, writeAdapter } from './reach.ts'

/** ±: the wrench's own, else by what it is: 6 % for a deflecting beam and for tools up to 10 N·m, 4 % above. */
export const toleranceOf = ({
  tolerance,
  most,
  'wrench-type': type,
}: Pick<Reach, 'tolerance' | 'most' | 'wrench-type'>): Quantity => {
  if (tolerance) return tolerance
  if (type === 'beam') return quantity(6, units['%'])
  return quantity((most ? standardLimit(si(most)) : 0.04) * 100, units['%'])
}

/** How well people measure and pull, where nobody says: half-widths. Common practice. */
export const habits = (system: 'metric' | 'inch') => ({
  length: tidy(fromSi(lengthHalfWidth[system], system === 'metric' ? units.mm : units.in)),
  hand: quantity(12, units.mm),
  angle: quantity(3, units['°']),
  square: quantity(5, units['°']),
})

export interface Doubt {
  /** Half-width of the 95 % band, a fraction of the torque. */
  readonly band: number
  readonly u: number
  readonly parts: readonly Contribution[]
}

/** The 95 % band at a pivot [m]; where that is open, spanOf takes it at both ends. */
export const doubtOf = (given: Reach, p: number, system: 'metric' | 'inch'): Doubt => {
  const habit = habits(system)
  const parts = leverContributions(
    leverOf(given, p),
    chainOf(given),
    {
      wrench: toleranceOf(given).value / 100,
      length: si(habit.length),
      hand: si(habit.hand),
      angle: habit.angle.value,
      square: habit.square.value,
      pivot: 0,
    },
    given.hand === undefined,
  )
  return { band: band95(parts), u: combined(parts), parts }
}

/**
 * What the fastener may get at a setting [N·m]: at both ends of what the pivot may be, each with the band of its own pivot.
 * Where the hand is at the grip, the pivot has no say.
 */
export const spanOf = (
  given: Reach,
  S: number,
  system: 'metric' | 'inch',
  known: Doubt,
): { low: number; high: number } => {
  const range = pivotOf(given)
  const open = handAway(given) && range.low !== range.high
  const ends = (open ? [range.low, range.high] : [range.low]).map((p) => {
    const T = torqueAt(S, leverOf(given, p))
    // Solving a band costs most of an answer: one that is known already is taken.
    const { band } = open ? doubtOf(given, p, system) : known
    return { low: T * (1 - band), high: T * (1 + band) }
  })
  return { low: Math.min(...ends.map(({ low }) => low)), high: Math.max(...ends.map(({ high }) => high)) }
}

/** Where the pivot is taken to be when one number is told [m]: known, the middle of what is usual, or without effect. */
export const pivotTaken = (given: Reach): number => {
  const { low, high } = pivotOf(given)
  return handAway(given) || given.pivot || given['wrench-type'] ? (low + high) / 2 : 0
}

// Past this the fastener gets anything from half the torque to half as much again: no number may be given.
const WIDEST_BAND = 0.5
// The same where nobody knows where the wrench trips: the two ends of the pivot may not give settings this far apart.
const WIDEST_PIVOT = 1.5

/** The fault of a reach so short that slips of the rule and the hand decide over the torque; the wrench's own ± is left out. */
export const checkDoubt = (given: Partial<Reach>, input: 'adapter' | 'hand'): Fault[] => {
  const { lever, adapter, hand } = given
  if (!lever || !adapter || (input === 'hand' && !hand)) return []
  const reach: Reach = { ...given, lever, adapter, tolerance: quantity(0, units['%']) }
  const { low, high } = pivotOf(reach)
  const ends = handAway(reach) && low !== high ? [low, high] : [low]
  const bands = ends.map((p) => doubtOf(reach, p, 'metric').band)
  const factors = handAway(reach) ? [low, high].map((p) => factor(leverOf(reach, p))) : [1]
  const apart = Math.max(...factors) / Math.min(...factors)
  const band = Math.max(...bands)
  if (band <= WIDEST_BAND && apart <= WIDEST_PIVOT) return []
  const got = input === 'hand' ? writeQuantity(hand as Quantity) : adapter.map(writeAdapter).join(' + ')
  return [
    apart > WIDEST_PIVOT
      ? fault('pivot-decides', input, got, { apart: quantity(apart, units['1']) })
      : fault('too-doubtful', input, got, { limit: percentOf(WIDEST_BAND) }),
  ]
}

/** Everything that was taken without being told, as it goes under `given`. */
export const assumptions = (given: Reach, system: 'metric' | 'inch', withChain: boolean): Given[] => {
  const habit = habits(system)
  const assumed: Given[] = []
  const assume = (input: string, value: Given['value'], more: Partial<Given> = {}): void => {
    assumed.push({ input, value, from: 'assumed', ...more })
  }
  if (withChain && anglesAssumed(given)) {
    given.adapter.forEach((link, index) => {
      if (link.angle === undefined) assume('angle', quantity(0, units['°']), { index })
    })
  }
  if (given.hand === undefined) assume('hand', given.lever)
  if (!given.pivot && handAway(given)) {
    const { low, high } = pivotOf(given)
    const ends = { low: fromSi(low, given.lever.unit).value, high: fromSi(high, given.lever.unit).value }
    assume('pivot', fromSi((low + high) / 2, given.lever.unit), low === high ? {} : ends)
  }
  if (!given.tolerance) assume('tolerance', toleranceOf(given))
  assume('length-doubt', habit.length)
  assume('hand-doubt', habit.hand)
  if (withChain) {
    assume('angle-doubt', habit.angle)
    assume('square-doubt', habit.square)
  }
  return assumed
}

export const percentOf = (fraction: number): Quantity => quantity(fraction * 100, units['%'])

/** The step that shows the band and names what makes it: the largest contributors, with their share of u². */
export const doubtStep = (torque: Quantity, low: number, high: number, doubt: Doubt): Step => {
  const [largest, next] = ranked(doubt.parts)
  const causes = [largest, next].filter((cause) => cause !== undefined && cause.share > 0.02)
  const names = causes.map((cause) => phrase(`cause.${cause?.name ?? 'wrench'}` as 'cause.wrench'))
  const say =
    names[0] && names[1]
      ? phrase('doubt.two', { first: names[0], second: names[1] })
      : phrase('doubt.one', { first: names[0] ?? phrase('cause.wrench') })
  return step(
    say,
    'u² = Σ (c u)²; 95 %',
    put`u ${percentOf(doubt.u)}: ${quantity(low, torque.unit)} … ${quantity(high, torque.unit)}`,
    percentOf(doubt.band),
  )
}

/** What the wrench's own tolerance makes of a torque and of the ends of its span: said beside spans that it is not part of. */
export const wrenchSpanStep = (torque: Quantity, low: number, high: number): Step => {
  const l = standardLimit(si(torque)) // by the torque itself: the range of the wrench is not asked here
  return step(
    phrase('wrench.tolerance-besides', { tolerance: percentOf(l) }),
    'T_low (1 − l) … T_high (1 + l)',
    put`${quantity(low * (1 - l), torque.unit)} … ${quantity(high * (1 + l), torque.unit)}`,
    torque,
  )
}
