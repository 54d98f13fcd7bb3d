// What every question about a lever shares: its inputs, the lever and chain made of them, what cannot be, and the steps to T/S.
import { type Fault, fault } from '../core/fault.ts'
import type { Adapter } from '../core/parse-list.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { factor, type Lever, type Link, reachAhead } from '../mechanics/lever.ts'
import { type PivotRange, pivotShareByType, pivotShareUnknown, type WrenchType } from '../mechanics/pivot-range.ts'
import { put, type Step, step } from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import type { ResultUnits } from './question.ts'

export interface Reach {
  readonly lever: Quantity
  readonly adapter: readonly Adapter[]
  readonly angle?: Quantity | undefined
  readonly hand?: Quantity | undefined
  readonly pivot?: Quantity | undefined
  readonly 'wrench-type'?: WrenchType | undefined
  readonly tolerance?: Quantity | undefined
  readonly most?: Quantity | undefined
}

/** The chain with the lone adapter's `angle` put to it; straight where nothing was said. */
export const chainOf = ({ adapter, angle }: Pick<Reach, 'adapter' | 'angle'>): readonly Link[] =>
  adapter.map((link) => ({ E: si(link.length), theta: (link.angle ?? angle)?.value ?? 0 }))

export const anglesAssumed = ({ adapter, angle }: Pick<Reach, 'adapter' | 'angle'>): boolean =>
  angle === undefined && adapter.some((link) => link.angle === undefined)

/** A headline that stands on a direction nobody told says so before its number. */
export const directionFirst = (given: Pick<Reach, 'adapter' | 'angle'>, headline: Phrase): Phrase =>
  anglesAssumed(given) ? phrase('adapter.straight-assumed', { answer: headline }) : headline

/** Where the wrench may trip [m from the drive]; one value where it is known or of no effect. */
export const pivotOf = ({
  lever,
  pivot,
  'wrench-type': type,
}: Pick<Reach, 'lever' | 'pivot' | 'wrench-type'>): PivotRange => {
  if (pivot) return { low: si(pivot), high: si(pivot) }
  const share = type ? pivotShareByType[type] : pivotShareUnknown
  return { low: share.low * si(lever), high: share.high * si(lever) }
}

export const handAway = (given: Pick<Reach, 'lever' | 'hand'>): boolean =>
  given.hand !== undefined && Math.abs(si(given.hand) - si(given.lever)) > si(given.lever) * 1e-9

/** True where the hand pulls past the place that the lever is measured to: a pipe, or a slip of the rule. */
export const handPast = (given: Pick<Reach, 'lever' | 'hand'>): boolean =>
  handAway(given) && si(given.hand as Quantity) > si(given.lever)

/** What cannot be before what is too doubtful: the second is only looked at where the first finds nothing. */
export const firstOf = (...checks: ReadonlyArray<() => readonly Fault[]>): readonly Fault[] => {
  for (const check of checks) {
    const faults = check()
    if (faults.length > 0) return faults
  }
  return []
}

const sensesAtDrive = (type: WrenchType | undefined): boolean => type !== undefined && pivotShareByType[type].high === 0

/** Faults of a lever, from whatever of it is known: behind the hand, a pivot past the hand, an angle said twice. */
export const checkReach = (given: Partial<Reach>): readonly Fault[] => {
  const faults: Fault[] = []
  const { lever, adapter, angle, hand, pivot, 'wrench-type': type } = given
  if (angle && adapter) {
    const said = adapter.some((link) => link.angle !== undefined)
    if (adapter.length > 1) faults.push(fault('angle-with-chain', 'angle', writeQuantity(angle)))
    else if (said) faults.push(fault('angle-twice', 'angle', writeQuantity(angle)))
  }
  const held = hand ?? lever
  const ends = [lever, held].filter((end) => end !== undefined)
  const shortest = ends.length === 0 ? undefined : ends.reduce((one, other) => (si(one) < si(other) ? one : other))
  if (pivot && shortest && si(pivot) >= si(shortest)) {
    faults.push(fault('pivot-past-hand', 'pivot', writeQuantity(pivot), { limit: shortest }))
  }
  if (pivot && si(pivot) > 0 && type && sensesAtDrive(type)) {
    faults.push(fault('pivot-and-type', 'pivot', writeQuantity(pivot), { type }))
  }
  if (hand && lever && !pivot && type && si(hand) <= pivotShareByType[type].high * si(lever)) {
    faults.push(
      fault('hand-inside-pivot', 'hand', writeQuantity(hand), {
        limit: fromSi(pivotShareByType[type].high * si(lever), hand.unit),
      }),
    )
  } else if (
    hand &&
    lever &&
    adapter &&
    !pivot &&
    !type &&
    handAway({ lever, hand }) &&
    si(hand) <= pivotShareUnknown.high * si(lever)
  ) {
    faults.push(
      fault('hand-inside-any-pivot', 'hand', writeQuantity(hand), {
        limit: fromSi(pivotShareUnknown.high * si(lever), hand.unit),
      }),
    )
  }
  if (held && adapter) {
    const X = reachAhead(chainOf({ adapter, angle }))
    if (si(held) + X <= si(held) * 1e-9) {
      faults.push(
        fault('behind-the-hand', 'adapter', adapter.map(writeAdapter).join(' + '), {
          reach: fromSi(-X, held.unit),
          held,
        }),
      )
    }
  }
  return faults
}

export const writeAdapter = ({ length, angle }: Adapter): string =>
  angle === undefined ? writeQuantity(length) : `${writeQuantity(length)}@${writeQuantity(angle)}`

/** What a linked question must be told for the same hand, wrench and doubt. */
export const writeReach = (given: Reach): Record<string, string> => {
  const { lever, hand, pivot, 'wrench-type': type, tolerance } = given
  return {
    lever: writeQuantity(lever),
    ...(hand ? { hand: writeQuantity(hand) } : {}),
    ...(pivot ? { pivot: writeQuantity(pivot) } : {}),
    ...(type ? { 'wrench-type': type } : {}),
    ...(tolerance ? { tolerance: writeQuantity(tolerance) } : {}),
  }
}

export const leverOf = (given: Reach, p: number): Lever => ({
  L: si(given.lever),
  // 14 in and 355.6 mm are one place: what conversion leaves between them is no distance.
  H: handAway(given) ? si(given.hand as Quantity) : si(given.lever),
  p,
  X: reachAhead(chainOf(given)),
})

export const reachSteps = (given: Reach, units_: Pick<ResultUnits, 'of'>, p: number): Step[] => {
  const chain = chainOf(given)
  const lever = leverOf(given, p)
  const unit = units_.of('length')
  const X = fromSi(lever.X, unit)
  const links = given.adapter.flatMap((link, index) => {
    const turn = quantity(chain[index]?.theta ?? 0, units['°'])
    return index === 0 ? put`${link.length} · cos ${turn}` : put` + ${link.length} · cos ${turn}`
  })
  const H = given.hand ?? given.lever
  const steps = [
    step(phrase('adapter.reach'), 'X = Σ E cos θ', links, X),
    step(phrase('adapter.effective'), 'H + X', put`${H} + ${X}`, fromSi(lever.H + lever.X, unit)),
  ]
  const ratio = quantity(factor(lever), units['1'])
  if (!handAway(given)) {
    return [
      ...steps,
      step(
        phrase('adapter.factor'),
        'T/S = (L + X)/L',
        put`${fromSi(lever.L + lever.X, unit)} / ${given.lever}`,
        ratio,
      ),
    ]
  }
  return [
    ...steps,
    step(
      phrase('adapter.factor-hand'),
      'T/S = (L − p)/L · (H + X)/(H − p)',
      put`${fromSi(lever.L - p, unit)} / ${given.lever} · ${fromSi(lever.H + lever.X, unit)} / ${fromSi(lever.H - p, unit)}`,
      ratio,
    ),
  ]
}
