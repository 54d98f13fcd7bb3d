// lubricant with size and place: thread and seat apart, since oil on the threads alone does far less than on both.
import type { SeatText } from '../core/parse-seat.ts'
import type { Size } from '../core/parse-size.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import type { Span } from '../mechanics/nut-factor.ts'
import { tighteningLever } from '../mechanics/torque-split.ts'
import { type Citation, citations } from '../tables/citation.ts'
import type { Condition } from '../tables/conditions.ts'
import { frictionTable } from '../tables/friction.ts'
import { jointAssumed, seatOf, seatRadiusOf, threadOf } from './joint.ts'
import { type Given, put, type Result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { splitAt } from './torque-split.ts'

export const places = ['both', 'threads', 'seat'] as const
export type Place = (typeof places)[number]

interface PlacesAsked {
  readonly torque: Quantity
  readonly from: Condition
  readonly to: Condition
  readonly size?: Size | undefined
  readonly seat?: SeatText | undefined
  readonly where?: Place | undefined
}

/** With a place and a size the friction of thread and seat is worked out apart; else one nut factor stands for both. */
export const twoFrictions = ({ where, size }: Pick<PlacesAsked, 'where' | 'size'>): boolean =>
  where !== undefined && size !== undefined

/** The seat is needed where the tables have none for the size. */
export const seatWanted = ({ where, size, seat }: Partial<PlacesAsked>): readonly 'seat'[] =>
  where !== undefined && size !== undefined && !seatOf({ size, seat }) ? ['seat'] : []

/** μ of a state: the ends over all sources, the middle of the first as the typical one. */
export const muSpan = (condition: Condition): Span => {
  const rows = frictionTable[condition]
  const [first] = rows
  const high = Math.max(...rows.map((row) => row.high ?? row.low))
  return { low: Math.min(...rows.map((row) => row.low)), typical: (first.low + (first.high ?? first.low)) / 2, high }
}

/** Λ_to/Λ_from: what is not lubricated anew keeps the friction that it had, at its most telling end. */
export const frictionRatio = (given: PlacesAsked): Span => {
  const thread = threadOf(given.size as Size)
  const rs = seatRadiusOf(given)
  const from = muSpan(given.from)
  const to = muSpan(given.to)
  const where = given.where ?? 'both'
  const ratio = (before: number, after: number, kept: number): number => {
    const was = { thread: where === 'seat' ? kept : before, seat: where === 'threads' ? kept : before }
    const is = { thread: where === 'seat' ? kept : after, seat: where === 'threads' ? kept : after }
    return tighteningLever(thread, is, rs, 'wedge') / tighteningLever(thread, was, rs, 'wedge')
  }
  // A slippery place that stays as it was hides least of the change, a rough one most.
  const lows = [ratio(from.high, to.low, from.low), ratio(from.high, to.low, from.high)]
  const highs = [ratio(from.low, to.high, from.low), ratio(from.low, to.high, from.high)]
  return { low: Math.min(...lows), typical: ratio(from.typical, to.typical, from.typical), high: Math.max(...highs) }
}

const bare = (value: number): Quantity => quantity(value, units['1'])

export const frictionAssumed = (given: PlacesAsked): Given[] =>
  [['mu-from', given.from] as const, ['mu-to', given.to] as const]
    .map(([input, condition]): Given => {
      const { low, typical, high } = muSpan(condition)
      return { input, value: bare(typical), low, high, from: 'table' }
    })
    .concat(jointAssumed({ size: given.size, seat: given.seat }, true))

/** Where the torque goes before and after, at typical friction; a place that is not lubricated stays as it was. */
export const splitResults = (given: PlacesAsked): Readonly<Record<string, Result>> => {
  const [from, to] = [muSpan(given.from).typical, muSpan(given.to).typical]
  const { size, seat, where } = given
  const before = splitAt({ size, seat }, { thread: from, seat: from })
  const after = splitAt({ size, seat }, { thread: where === 'seat' ? from : to, seat: where === 'threads' ? from : to })
  return before && after ? { 'split-before': before, 'split-after': after } : {}
}

export const frictionSources = (given: PlacesAsked): Citation[] => [
  citations.wedge,
  ...[...frictionTable[given.from], ...frictionTable[given.to]].map((row) => row.from),
  ...(seatOf(given)?.sources ?? []),
]

export const frictionSteps = (given: PlacesAsked, raw: Span, lastSteps: readonly Step[]): Step[] => [
  step(
    phrase('lubricant.two-frictions', { where: phrase(`place.${given.where ?? 'both'}`) }),
    'Λ_to/Λ_from, Λ = (d2/2) tan(φ + ρ′) + μ_s r_s',
    put`r_s ${quantity(seatRadiusOf(given) * 1000, units.mm)}; μ ${bare(muSpan(given.from).typical)} → ${bare(muSpan(given.to).typical)}`,
    bare(raw.typical),
  ),
  step(
    phrase('lubricant.span'),
    'Λ_to/Λ_from over the ends of μ',
    put`${bare(raw.low)} … ${bare(raw.high)}`,
    bare(raw.high),
  ),
  ...lastSteps,
]
