// What a whole check of a wrench consists of, by its card: its points on marks of its own scale, its pulls and its readings.
//
// Statement  The lowest point is a fifth of most, rounded up to a mark and never below the least; the middle one is rounded to
//            the nearest mark; the highest is most itself. Marks are counted from zero.
// Source     ISO 6789-1:2017 (from memory): 20, 60, 100 %; where the scale begins above a fifth, its lowest mark.
// Holds      A card without a mark gives the shares as they are.
// Example    30 … 150 lbf·ft by 1: 30, 90, 150. Up to 110 by 5: 25, 65, 110.
import { quantity, tidy } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { type CheckSample, checkSample } from '../mechanics/check-sample.ts'
import type { IsoType } from '../mechanics/check-verdict.ts'
import type { WrenchType } from '../mechanics/pivot-range.ts'
import { type Measured, measured } from './parts.ts'
import type { WrenchCard } from './records.ts'

// Which kind a wrench is that does not say so: what trips is set, what shows is read. Common practice.
const usualType: Readonly<Record<WrenchType, IsoType>> = {
  click: 'setting',
  'split-beam': 'setting',
  beam: 'indicating',
  dial: 'indicating',
  electronic: 'indicating',
}

export const sampleOfCard = (card: WrenchCard): CheckSample =>
  checkSample(card['iso-type'] ?? usualType[card['wrench-type']], card['iso-type'] && card['iso-class'])

const SLACK = 1e-9

/** The settings of a whole check, rising, in the unit of the wrench's own scale. */
export const settingsOfCard = (card: WrenchCard): readonly Measured[] => {
  const unit = units[card.unit]
  const most = card.most.value
  const least = card.least?.value ?? 0
  const mark = card.mark?.value
  const onMark = (torque: number, share: number): number => {
    if (share === 1) return most
    if (mark === undefined) return Math.max(torque, least)
    const steps = torque / mark
    const whole = share === sampleOfCard(card).shares[0] ? Math.ceil(steps - SLACK) : Math.round(steps)
    return Math.min(Math.max(whole * mark, least), most)
  }
  const torques = sampleOfCard(card).shares.map((share) => onMark(share * most, share))
  const settings = torques.map((torque) => measured(tidy(quantity(torque / unit.factor, unit))))
  return settings.filter(
    ({ value }, place) => place === 0 || value > (settings[place - 1] as Measured).value * (1 + SLACK),
  )
}
