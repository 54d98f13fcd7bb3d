// Numbers that are taken back: `50 Nm, no, 60 Nm`, `2 in crowfoot, actually its 3 in`, `M10 no M12`. Which one counts is plain to
// people, and too dear to be read wrongly: both are refused together.
import { type Doubt, measureAt, type Rule, textAt, words } from './doubt.ts'
import type { Measure } from './measure.ts'
import type { Piece } from './pieces.ts'

const amending = words('sorry oops correction mean meant rather scratch actually pardon nope no wait')
const idle = words('its it is that make i the to a , . - ... ; : ( ) !')
const MOST_WORDS = 7

const isNumber = (measure: Measure): boolean => measure.kind === 'bare' || measure.kind === 'quantity'

/** Two of one kind; of two bare numbers nobody knows. */
const isAlike = (one: Measure, other: Measure): boolean =>
  one.kind === 'size'
    ? other.kind === 'size'
    : isNumber(one) &&
      isNumber(other) &&
      (one.kind === 'bare'
        ? other.kind !== 'bare'
        : other.kind === 'bare' || one.unit?.dimension === other.unit?.dimension)

const nextMeasure = (pieces: readonly Piece[], at: number, step: 1 | -1): number => {
  let other = at + step
  while (pieces[other] !== undefined && pieces[other]?.kind !== 'measure') other += step
  return other
}

const isTakenBack = (between: readonly string[]): boolean => {
  const turn = between.findIndex((word) => amending.has(word))
  if (turn === -1 || !between.slice(turn).every((word) => amending.has(word) || idle.has(word))) return false
  // `no` is said of other things too: alone it must stand right between the two.
  const isOnlyNo = between.every((word) => word === 'no' || !amending.has(word))
  return !isOnlyNo || between.slice(0, turn).length <= 2
}

export const amended: Rule = (pieces, at, { measure }) => {
  const told = (step: 1 | -1): Doubt | undefined => {
    const other = nextMeasure(pieces, at, step)
    const second = measureAt(pieces, other)
    if (!second || Math.abs(other - at) > MOST_WORDS || !isAlike(measure, second)) return undefined
    const [first, last] = [Math.min(at, other), Math.max(at, other)]
    const between = Array.from({ length: last - first - 1 }, (_, n) => textAt(pieces, first + 1 + n))
    return isTakenBack(between) ? { first, last } : undefined
  }
  return told(1) ?? told(-1)
}
