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

/** `text` is folded, `typed` is not. Pieces keep the places of the text as it was typed. */
export const piecesOf = (text: string, typed: string): readonly Piece[] => {
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
