// Cautions about a lever, by rule: direction and hands, then the wrench's range and the unit that may have been meant.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { echoQuantity, showQuantity } from '../core/quantity-text.ts'
import { type Unit, units } from '../core/unit.ts'
import { reachAhead, reachAside } from '../mechanics/lever.ts'
import { type Caution, caution } from './outcome.ts'
import { anglesAssumed, chainOf, handPast, type Reach } from './reach.ts'

/** Cautions that hold wherever adapters are pulled by hand; those about direction first. */
export const reachCautions = (given: Reach): Caution[] => {
  const chain = chainOf(given)
  const H = si(given.hand ?? given.lever)
  const X = reachAhead(chain)
  const Y = reachAside(chain)
  const cautions: Caution[] = []
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
  return cautions
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
  }
  if (most && S < si(most) / 5 && !below)
    cautions.push(caution('below-a-fifth', { fifth: fromSi(si(most) / 5, most.unit) }))
  return cautions
}

/** The end of a span that this wrench cannot be set to, where its middle can. */
export const endCautions = (
  { low, high }: { readonly low: Quantity; readonly high: Quantity },
  { least, most }: { readonly least?: Quantity | undefined; readonly most?: Quantity | undefined },
): Caution[] => [
  ...(least && si(low) < si(least) * (1 - 1e-12) ? [caution('end-beyond-range', { setting: low, limit: least })] : []),
  ...(most && si(high) > si(most) * (1 + 1e-12) ? [caution('end-beyond-range', { setting: high, limit: most })] : []),
]

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
