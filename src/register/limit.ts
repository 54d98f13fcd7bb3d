// Which limit a wrench is held to: its own card's, else the standard's by kind and class, else by its largest torque.
//
// Statement  Of the reading: |a| ≤ l at every torque. Of the full scale: |X_a − X_r| ≤ l·most, so |a| ≤ l·most/X_r.
// Source     A maker's tolerance wins; else ISO 6789-1:2017 by kind and class, ISO 6789:2003 by the largest torque (from memory).
// Example    4 % of 250 lbf·ft is 33 % at 30 lbf·ft.
import { limitOf } from '../mechanics/check-verdict.ts'
import { referenceWindow, standardLimit } from '../mechanics/deviation.ts'
import type { WrenchCard } from './records.ts'

export interface CardLimit {
  /** l [fraction]. */
  readonly share: number
  readonly of: 'reading' | 'full-scale'
  /** Largest torque [N·m]. */
  readonly most: number
  readonly by: 'card' | 'class' | 'most'
}

export const limitOfCard = (card: WrenchCard): CardLimit => {
  const most = card.most.value
  if (card.tolerance) {
    return { share: card.tolerance.share.value / 100, of: card.tolerance.of, most, by: 'card' }
  }
  const { 'iso-type': type, 'iso-class': isoClass } = card
  if (type && isoClass) return { share: limitOf(type, isoClass, most), of: 'reading', most, by: 'class' }
  return { share: standardLimit(most), of: 'reading', most, by: 'most' }
}

/** The limit [fraction] at a torque [N·m]. */
export const limitAt = ({ share, of, most }: CardLimit, torque: number): number =>
  of === 'reading' ? share : (share * most) / torque

/** The references [N·m] within the limit at a setting [N·m]. */
export const windowAt = (limit: CardLimit, setting: number): { readonly low: number; readonly high: number } => {
  if (limit.of === 'reading') return referenceWindow(setting, limit.share)
  // Of the full scale the allowed difference is the same at every torque: X_a − X_r = ± l · most.
  const away = limit.share * limit.most
  return { low: Math.max(setting - away, 0), high: setting + away }
}
