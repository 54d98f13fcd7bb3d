// Cautions about a lever, by rule: direction and hands, then the wrench's range and the unit that may have been meant.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { echoQuantity, showQuantity } from '../core/quantity-text.ts'
import { type Unit, units } from '../core/unit.ts'
import { reachAhead, reachAside } from '../mechanics/lever.ts'
import { type Caution, caution } from './outcome.ts'
import { anglesAssumed, chainOf, handAway, handPast, pivotOf, type Reach } from './reach.ts'

// Hand wrenches are about this long; what is far outside is a slip of the unit or of the decimal mark until it was looked at again.
const LEVERS = { least: 0.1, most: 1.5 } as const // m

/** Lengths that no hand wrench has, and adapters longer than the wrench that drives them. */
export const lengthSlips = ({ lever, adapter }: Pick<Reach, 'lever' | 'adapter'>): Caution[] => {
  const L = si(lever)
  const longest = adapter.map((link) => link.length).find((length) => Math.abs(si(length)) > L)
  return [
    ...(L < LEVERS.least || L > LEVERS.most
      ? [
          caution('lever-unusual', {
            lever,
            low: fromSi(LEVERS.least, lever.unit),
            high: fromSi(LEVERS.most, lever.unit),
          }),
        ]
      : []),
    ...(longest ? [caution('adapter-longer', { adapter: longest, lever })] : []),
  ]
}

/** Cautions that hold wherever adapters are pulled by hand; those about direction first. */
export const reachCautions = (given: Reach): Caution[] => {
  const chain = chainOf(given)
  const H = si(given.hand ?? given.lever)
  const X = reachAhead(chain)
  const Y = reachAside(chain)
  const cautions: Caution[] = lengthSlips(given)
  const bent = Math.abs(X) > H * 1e-9
  if (X < 0 && bent) {
    cautions.push(caution('one-hand'))
    cautions.push(caution('points-back', { reach: fromSi(-X, (given.hand ?? given.lever).unit) }))
    if (X < -H / 2) cautions.push(caution('far-back'))
  }
  if (anglesAssumed(given)) cautions.push(caution('direction-assumed'))
  if (X > 0 && bent) cautions.push(caution('one-hand'))
  if (Math.abs(Y) > H * 1e-9) cautions.push(caution('keep-square'))
  cautions.push(caution('already-corrected'))
  if (handPast(given)) cautions.push(caution('no-pipe'))
  cautions.push(...pivotCautions(given))
  return cautions
}

/** A pivot that its kind of wrench has not as a rule, and the grip on a pin that would fix the hand. */
export const pivotCautions = (given: Pick<Reach, 'lever' | 'hand' | 'pivot' | 'wrench-type'>): Caution[] => {
  const { pivot, 'wrench-type': type, lever } = given
  if (!handAway(given) || !type) return []
  const usual = pivotOf({ lever, 'wrench-type': type })
  const unusual = pivot && (si(pivot) < usual.low * (1 - 1e-9) || si(pivot) > usual.high * (1 + 1e-9))
  return [
    ...(type === 'beam' ? [caution('floating-grip')] : []),
    ...(unusual
      ? [caution('pivot-unusual', { low: fromSi(usual.low, lever.unit), high: fromSi(usual.high, lever.unit) })]
      : []),
  ]
}

/** The setting outside the range of the wrench, or too low on its scale; `factor-twelve` where another unit would fit. */
export const rangeCautions = (
  setting: Quantity,
  asked: Quantity,
  least: Quantity | undefined,
  most: Quantity | undefined,
): Caution[] => {
  const S = si(setting)
  const cautions: Caution[] = []
  const above = most !== undefined && S > si(most) * (1 + 1e-12)
  const below = least !== undefined && S < si(least) * (1 - 1e-12)
  if (above || below) {
    cautions.push(caution('beyond-range', { setting, limit: (above ? most : least) as Quantity }))
    const meant = otherUnit(S, asked, least, most)
    if (meant) cautions.push(caution('factor-twelve', { got: echoQuantity(asked), meant: showQuantity(meant) }))
    const slipped = tenfold(S, asked, least, most)
    if (slipped) cautions.push(caution('factor-ten', { got: echoQuantity(asked), meant: showQuantity(slipped) }))
  }
  if (most && S < si(most) / 5 && !below)
    cautions.push(caution('below-a-fifth', { fifth: fromSi(si(most) / 5, most.unit) }))
  return cautions
}

type Ends = { readonly low: Quantity; readonly high: Quantity }
type Range = { readonly least?: Quantity | undefined; readonly most?: Quantity | undefined }

/** The settings of a span that lie in the range of the wrench; undefined where none does. */
export const partInRange = (
  { low, high }: Ends,
  { least, most }: Range,
): { from: Quantity; to: Quantity } | undefined => {
  const from = least && si(least) > si(low) ? least : low
  const to = most && si(most) < si(high) ? most : high
  return si(from) <= si(to) ? { from, to } : undefined
}

/** The end of what may be set that this wrench cannot be set to, or that lies too low on its scale, where the middle does not. */
export const endCautions = ({ low, high }: Ends, { least, most }: Range): Caution[] => [
  ...(least && si(low) < si(least) * (1 - 1e-12) ? [caution('end-beyond-range', { setting: low, limit: least })] : []),
  ...(most && si(high) > si(most) * (1 + 1e-12) ? [caution('end-beyond-range', { setting: high, limit: most })] : []),
]

/** Ten times or a tenth of what was asked, where that would lie inside the range of the wrench: a slip of the decimal mark. */
const tenfold = (
  S: number,
  asked: Quantity,
  least: Quantity | undefined,
  most: Quantity | undefined,
): Quantity | undefined => {
  if (!most) return undefined
  const low = least ? si(least) : si(most) / 5
  const times = [0.1, 10].find((by) => S * by >= low && S * by <= si(most))
  return times === undefined ? undefined : quantity(asked.value * times, asked.unit)
}

const lookalikes: readonly Unit[] = [units['lbf·in'], units['lbf·ft'], units['N·m'], units['kgf·cm'], units['kgf·m']]

const otherUnit = (
  S: number,
  asked: Quantity,
  least: Quantity | undefined,
  most: Quantity | undefined,
): Quantity | undefined => {
  const low = least ? si(least) : most ? si(most) / 5 : 0
  const high = most ? si(most) : Number.POSITIVE_INFINITY
  const unit = lookalikes.find((other) => {
    const scaled = (S * other.factor) / asked.unit.factor
    return other !== asked.unit && scaled >= low && scaled <= high
  })
  return unit && most ? quantity(asked.value, unit) : undefined
}
