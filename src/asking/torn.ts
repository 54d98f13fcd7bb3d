// What stands before a number and belongs to it, though it was not read with it: `twenty-five Nm`, `1 234,5 Nm`, `10^2 Nm`.
// Its last part alone would be a wrong number.
import type { Piece } from './pieces.ts'

const counting =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand)$/
const joining: ReadonlySet<string> = new Set(['and', 'a', 'an', '-'])
const tied = /^[.,'·\\_^*+×\p{Cf}-]*$/u
const signed = /^\s?[+*^×]\s?$/
const first = /^[,·]$/
const led = /\s[,·]$/
const spelled = /^[a-z]/
const standing: ReadonlySet<string> = new Set(['@', 'at'])

const isBare = (piece: Piece | undefined): boolean =>
  piece?.kind === 'measure' && (piece.measure.kind === 'bare' || piece.measure.kind === 'noise')

/** Where the number that ends in the measure at `at` begins; undefined where it is whole. */
export const wholeFrom = (pieces: readonly Piece[], at: number, text: string): number | undefined => {
  const piece = pieces[at]
  if (piece?.kind !== 'measure' || (piece.measure.kind !== 'quantity' && piece.measure.kind !== 'bare'))
    return undefined
  let before = at - 1
  if (spelled.test(piece.measure.raw)) {
    let from: number | undefined
    for (let one = pieces[before]; one !== undefined; one = pieces[--before]) {
      if (one.kind === 'word' && counting.test(one.text)) from = one.start
      else if (isBare(one) && before < at - 1) return one.start
      else if (one.kind === 'measure' || !joining.has(one.text)) break
    }
    return from
  }
  while (pieces[before] !== undefined && pieces[before]?.kind === 'mark') before--
  const last = pieces[before]
  const gap = text.slice(last?.end ?? 0, piece.start)
  if (last?.kind !== 'measure')
    return led.test(gap) || (last === undefined && first.test(gap)) ? piece.start - 1 : undefined
  // `50 mm@45 + 30 mm`: what stands at an angle is no part of a sum.
  const ahead = pieces[before - 1]
  const isAngle = ahead !== undefined && ahead.kind !== 'measure' && standing.has(ahead.text)
  // `40-200 Nm` is a range, whatever it is of.
  const isRange = gap === '-' && last.measure.value < piece.measure.value
  if (isBare(last) && !isAngle && !isRange && (tied.test(gap) || signed.test(gap))) return last.start
  return led.test(gap) ? piece.start - 1 : undefined
}
