// Free text to pieces in reading order: words, measures, marks. One pass, and a time that grows with the text and no faster.
import type { Measure } from './measure.ts'
import { measureAt } from './measure-at.ts'
import { meantBy } from './misspelt.ts'

export type Piece =
  | { readonly kind: 'word'; readonly text: string; readonly start: number; readonly end: number }
  | { readonly kind: 'mark'; readonly text: string; readonly start: number; readonly end: number }
  | { readonly kind: 'measure'; readonly measure: Measure; readonly start: number; readonly end: number }

const word = /[a-zß-öø-ÿœ][a-zß-öø-ÿœ']{0,40}/y
const tolerance = /(?:\+\s?\/\s?-|±|\+-|plus\s?(?:\/|or)\s?minus)/y
const isTolerance = (char: string, text: string, at: number): boolean => {
  if (char !== '+' && char !== '±' && char !== 'p') return false
  tolerance.lastIndex = at
  return tolerance.test(text)
}

/** A question has fewer; what stands behind them is left unread, and told so. */
export const MOST_PIECES = 450
const MOST_MEASURES = 100

const readPieces = (text: string, typed: string): readonly Piece[] => {
  const pieces: Piece[] = []
  let at = 0
  let measures = 0
  while (at < text.length && pieces.length < MOST_PIECES && measures < MOST_MEASURES) {
    const char = text[at] as string
    if (char === '\n' || char === '\r') {
      pieces.push({ kind: 'mark', text: '\n', start: at, end: at + 1 })
      at++
      continue
    }
    if (char <= ' ') {
      at++
      continue
    }
    if (isTolerance(char, text, at)) {
      pieces.push({ kind: 'mark', text: '±', start: at, end: tolerance.lastIndex })
      at = tolerance.lastIndex
      continue
    }
    const measured = measureAt(text, at, typed)
    if (measured) {
      measures++
      pieces.push({ kind: 'measure', measure: measured.measure, start: at, end: measured.end })
      at = measured.end
      continue
    }
    word.lastIndex = at
    if (word.test(text)) {
      const plain = text.slice(at, word.lastIndex).replaceAll("'", '')
      pieces.push({ kind: 'word', text: meantBy(plain) ?? plain, start: at, end: word.lastIndex })
      at = word.lastIndex
      continue
    }
    pieces.push({ kind: 'mark', text: char, start: at, end: at + 1 })
    at++
  }
  return pieces
}

// What stands before a number and belongs to it, though it was not read with it: `twenty-five Nm`, `1 234,5 Nm`, `10^2 Nm`.
// Its last part alone would be a wrong number: the whole goes on as it was typed, and the question refuses it.
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
const wholeFrom = (pieces: readonly Piece[], at: number, text: string): number | undefined => {
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

/** `text` is folded, `typed` is not. Pieces keep the places of the text as it was typed. */
export const piecesOf = (text: string, typed: string): readonly Piece[] => {
  const pieces = readPieces(text, typed)
  return pieces.map((piece, at) => {
    const from = wholeFrom(pieces, at, text)
    if (from === undefined || piece.kind !== 'measure') return piece
    return { ...piece, measure: { ...piece.measure, doubtful: true, raw: typed.slice(from, piece.end) } }
  })
}
