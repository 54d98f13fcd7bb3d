// Which way an adapter points, by degrees and by words; and where they say more than one.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import { bendAngles, type Facts } from '../facts.ts'
import { type Direction, isChained } from './chain.ts'

export const degrees = (value: number): string => writeQuantity(quantity(value, units['°']))

const pieceSpan = (facts: Facts, first: number, next: number): { start: number; end: number } => ({
  start: facts.scene.pieces[first]?.start ?? 0,
  end: facts.scene.pieces[next - 1]?.end ?? 0,
})

/** Every direction that is said, degrees before words, in reading order; each value once. */
export const directionsOf = (facts: Facts, every = false): readonly Direction[] => {
  const typed = bendAngles(facts).map((one): Direction => {
    const { value, doubtful, raw } = one.measure
    return { value, from: one, at: one.at, ...(doubtful ? { doubt: raw } : {}) }
  })
  const words = facts.bends.known.map(
    ({ angle, first, next }): Direction => ({ value: angle as number, from: pieceSpan(facts, first, next), at: first }),
  )
  const back = words.filter(({ value }) => value === 180 && !typed.some((one) => one.value > 0))
  const all = typed.length > 0 ? [...typed, ...(every ? words : back)] : words
  return all.filter((one, index) => all.findIndex(({ value }) => value === one.value) === index)
}

const CLOSE = 2

/** `was at 90 before, now straight`, `either straight or 45°`; but `30° off straight` is one direction. */
const isStraightToo = (facts: Facts): boolean => {
  const straight = facts.bends.known.filter(({ angle }) => angle === 0)
  const isOr = (at: number): boolean => {
    const piece = facts.scene.pieces[at]
    return piece?.kind === 'word' && piece.text === 'or'
  }
  return straight.some(({ first, next }) =>
    bendAngles(facts).every(
      ({ at, measure }) =>
        measure.value > 0 && (isOr(next) || isOr(first - 1) || at - next >= CLOSE || first - at > CLOSE),
    ),
  )
}

/** `perpendicular but tilted 10 degrees forward`: degrees beside words that say another direction. */
export const isTorn = (facts: Facts): boolean => {
  const typed = bendAngles(facts).map(({ measure }) => measure.value)
  const said = facts.bends.known.flatMap(({ angle }) => (angle === undefined || angle === 0 ? [] : [angle]))
  // What points back stands at more than a right angle.
  const fits = (angle: number): boolean => typed.some((value) => value === angle || (angle === 180 && value > 90))
  const isTold = typed.some((value) => value > 0)
  return !isChained(facts) && isTold && (said.some((angle) => !fits(angle)) || isStraightToo(facts))
}

/** A second question, of another direction. */
export const another = /\b(?:what|how) (?:if|about|when)\b|\band (?:if|when|what)\b|\bversus\b|\bcompared\b/

/** Said to point two ways, and no second question is asked: each is to be offered, and none taken. */
export const pointsTwoWays = (facts: Facts, directions: readonly Direction[]): boolean =>
  directions.length > 1 && directions.every(({ doubt }) => doubt === undefined) && !another.test(facts.scene.folded)
