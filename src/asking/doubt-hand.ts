// Places of a hand that are counted from elsewhere than the drive: from the end of the handle, from its grip, from where it usually is.
import { type Doubt, measureAt, type Rule, textAt, words } from './doubt.ts'
import { isDimension, siOf } from './measure.ts'
import type { Piece } from './pieces.ts'

const holding = words(
  'hold holding held hand hands palm grip gripping gripped grab grabbing choke choked choking hook hooked hooking scale pull pulled pulling rope strap',
)
const byHand = words('hold holding held hand hands palm gripping gripped grab grabbing')
const FAR = 8

const isHeld = (pieces: readonly Piece[], at: number, how = holding): boolean =>
  Array.from({ length: 2 * FAR + 1 }, (_, place) => textAt(pieces, at - FAR + place)).some((word) => how.has(word))

const little = words('the its that my of a an')
/** The next word that carries something, and where it stands. */
const wordFrom = (pieces: readonly Piece[], at: number): { word: string; at: number } => {
  let place = at
  while (little.has(textAt(pieces, place))) place++
  return { word: textAt(pieces, place), at: place }
}

const ends = words('end butt')
const fromDrive = words('drive head square socket')

/** `I hold it 100 mm from the end`: of the handle, not from the drive. */
export const fromTheEnd: Rule = (pieces, at, { measure }) => {
  if (!isDimension(measure, 'length') || textAt(pieces, at + 1) !== 'from') return undefined
  const end = wordFrom(pieces, at + 2)
  if (!ends.has(end.word) || textAt(pieces, end.at + 1) === 'to') return undefined
  if (fromDrive.has(textAt(pieces, end.at + 2)) || fromDrive.has(textAt(pieces, end.at + 3))) return undefined
  return isHeld(pieces, at) ? { first: at, last: end.at, as: 'hand' } : undefined
}

const grips = words('grip handle mark line centre center middle knob')
/** These say by themselves that it is counted from where it should be. */
const moved = words(
  'lower below under closer nearer inside inboard outside outboard past beyond short shorter further farther',
)
/** These do so where the grip is named behind them. */
const led = words('in up down off above higher from out over')
const steps = words('than from on to of inside towards toward')

/** m: `380 mm from the grip centre` is a lever, 50 mm is not. */
const SHORT = 0.15

const fasteners = words('bolt nut fastener stud lug')

/** `450 mm from grip to bolt`, `hand 14 in from the nut`: with an adapter between, that is neither the lever nor where the hand is. */
export const toTheFastener: Rule = (pieces, at, { measure }): Doubt | undefined => {
  if (!isDimension(measure, 'length')) return undefined
  const ahead = Array.from({ length: 6 }, (_, one) => textAt(pieces, at + 1 + one))
  const grip = ahead.findIndex((word) => grips.has(word) || byHand.has(word))
  const to = ahead.findIndex((word) => fasteners.has(word))
  const isFromGrip = grip !== -1 && to > grip && ahead.slice(grip, to).includes('to')
  const isFromNut = ['from', 'to'].includes(ahead[0] ?? '') && to > 0 && to <= 2 && isHeld(pieces, at, byHand)
  return isFromGrip || isFromNut ? { first: at, last: at + 1 + to, as: 'hand' } : undefined
}

const choking = words('choke choked choking')

/** `hand 50 mm closer to the head`, `5 cm in from the grip`, `choked up 60 mm`: from the grip or from where it usually is. */
export const fromTheGrip: Rule = (pieces, at, { measure }): Doubt | undefined => {
  if (!isDimension(measure, 'length')) return undefined
  if (choking.has(textAt(pieces, at - 2)) && textAt(pieces, at - 1) === 'up')
    return { first: at - 2, last: at, as: 'hand' }
  if (!isHeld(pieces, at, byHand) || measureAt(pieces, at + 1)) return undefined
  const too = textAt(pieces, at + 1) === 'too' ? 1 : 0
  const word = textAt(pieces, at + 1 + too)
  // `crowfoot 45 mm in line` is how it stands.
  if (word === 'in' && textAt(pieces, at + 2) === 'line') return undefined
  const step = steps.has(textAt(pieces, at + 2 + too)) ? 1 : 0
  const of = wordFrom(pieces, at + 2 + too + step)
  if (moved.has(word))
    return { first: at, last: grips.has(of.word) || fromDrive.has(of.word) ? of.at : at + 1 + too, as: 'hand' }
  // `350 mm from the grip to the drive` is the lever.
  const goesOn = ['to', 'and'].includes(textAt(pieces, of.at + 1))
  const isSmall = word === 'from' && siOf(measure) < SHORT
  return (led.has(word) || isSmall) && grips.has(of.word) && !goesOn
    ? { first: at, last: of.at, as: 'hand' }
    : undefined
}
