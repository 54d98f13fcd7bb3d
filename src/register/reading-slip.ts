// A slip of the pen told from a wrench that is off: a reading far from its setting that would be right with its mark moved, or
// with the unit beside it on the gauge.
//
// Statement  |ln(r/m)| > 0.15, and for r′ = 10 r, r/10 or the same number in another unit |ln(r′/m)| ≤ 0.12;
//            r the reading, m the middle of its window.
// Source     Worked out: units of one gauge lie a factor of 1.36 apart or more, ln 1.36 = 0.30; half of it parts the two cases.
//            lbf·in and kgf·cm alone are 1.15 apart: a slip between them looks like a wrench that is off, and is taken for one.
// Holds      A wrench that is off by 16 % or more and by chance near another unit's number is asked about as well; whoever
//            asks must take yes for an answer.
// Example    At 100 N·m a tester that shows 73.8 was read in lbf·ft; one that shows 88 belongs to a wrench that is off.
import { fromSi, type Quantity, quantity, si, tidy } from '../core/quantity.ts'
import { unitsOf } from '../core/unit.ts'

const FAR = 0.15
const NEAR = 0.12
const TENS = [10, 0.1] as const

export const slipKinds = ['by-ten', 'other-unit'] as const
export type SlipKind = (typeof slipKinds)[number]

export interface Slip {
  readonly kind: SlipKind
  /** What may have been meant, the nearest first. */
  readonly likely: readonly Quantity[]
}

/** Whether a reading is a slip against the middle of its window [SI]; undefined: it is taken. */
export const slipOf = (reading: Quantity, middle: number): Slip | undefined => {
  const away = (q: Quantity): number => Math.abs(Math.log(si(q) / middle))
  if (away(reading) <= FAR) return undefined
  const others = unitsOf(reading.unit.dimension).filter((unit) => unit !== reading.unit)
  const meant = [
    ...others.map((unit) => ({ kind: 'other-unit' as const, q: quantity(reading.value, unit) })),
    ...TENS.map((times) => ({ kind: 'by-ten' as const, q: tidy(fromSi(si(reading) * times, reading.unit)) })),
  ]
    .filter(({ q }) => away(q) <= NEAR)
    .sort((one, other) => away(one.q) - away(other.q))
  const [first] = meant
  return first && { kind: first.kind, likely: meant.map(({ q }) => q) }
}
