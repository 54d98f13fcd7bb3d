// Directions that are another one than their number says: counted from elsewhere, backward, denied, or in another unit.
import { units } from '../core/unit.ts'
import { measureAt, type Rule, textAt, words } from './doubt.ts'
import { isDimension, type Measure } from './measure.ts'
import type { Piece } from './pieces.ts'

const otherAngles = words('rad rads radian radians gon gons grad grads gradian gradians oclock')
const backward = words('back backward backwards rearward rearwards')
const past = words('past beyond over short before off from')
const pointing = words('pointing points turned facing bent angled')
const across = words('square perpendicular')
const denials = words('not isnt arent no never nor')

const isTurn = (measure: Measure | undefined): boolean =>
  measure !== undefined && (isDimension(measure, 'angle') || /^\d+$/.test(measure.raw))

const isAcross = (pieces: readonly Piece[], at: number): boolean =>
  across.has(textAt(pieces, at)) ||
  (textAt(pieces, at) === 'right' && textAt(pieces, at + 1) === 'angle') ||
  isTurn(measureAt(pieces, at))

const handles = words('handle grip shank')
const tools = words('handle grip shank wrench spanner tool')

/** `120° between the adapter and the handle`, `30° from the handle`: an angle between two things may be either of two. */
const heldBy = (pieces: readonly Piece[], at: number): number | undefined => {
  const ahead = textAt(pieces, at) === 'between' ? [1, 2, 3, 4, 5, 6] : textAt(pieces, at) === 'from' ? [1, 2] : []
  const named = textAt(pieces, at) === 'between' ? tools : handles
  if (textAt(pieces, at) === 'angle' && ['with', 'between'].includes(textAt(pieces, at + 1))) return at + 1
  return ahead.map((one) => at + one).find((one) => named.has(textAt(pieces, one)))
}

/** `45° back toward me`, `30° from square`, `1.05 rad`, `not at 90°`: another direction than the number says. */
export const direction: Rule = (pieces, at, { measure }) => {
  const leads = textAt(pieces, at - 1) === 'at' ? at - 2 : at - 1
  const isSaid = isDimension(measure, 'angle') || (measure.kind === 'bare' && !measure.fraction)
  if (!isSaid) return undefined
  const unit = units['°']
  const as = 'angle'
  const isAngle = isDimension(measure, 'angle')
  if (measure.kind === 'bare' && otherAngles.has(textAt(pieces, at + 1))) return { first: at, last: at + 1, unit, as }
  if (isAngle && otherAngles.has(textAt(pieces, at + 1))) return { first: at, last: at + 1, as }
  if (isAngle && (measure.value === 0 || measure.value === 180)) return undefined
  const isAt = isAngle || leads === at - 2 || backward.has(textAt(pieces, at - 1))
  if (!isAt) return undefined
  if (backward.has(textAt(pieces, leads))) return { first: leads, last: at, unit, as }
  if (!isAngle) return undefined
  if (denials.has(textAt(pieces, leads))) return { first: leads, last: at, as }
  const behind = pointing.has(textAt(pieces, at + 1)) ? at + 2 : at + 1
  if (backward.has(textAt(pieces, behind))) return { first: at, last: behind, as }
  const angle = [1, 2, 3, 4, 5, 6, 7].map((back) => at - back).find((one) => textAt(pieces, one) === 'between')
  if (angle !== undefined && textAt(pieces, angle - 1) === 'angle') return { first: angle - 1, last: at, as }
  const held = heldBy(pieces, at + 1)
  if (held !== undefined) return { first: at, last: held, as }
  if (!past.has(textAt(pieces, at + 1))) return undefined
  const next = ['the', 'of'].includes(textAt(pieces, at + 2)) ? at + 3 : at + 2
  return isAcross(pieces, next) ? { first: at, last: next, as } : undefined
}
