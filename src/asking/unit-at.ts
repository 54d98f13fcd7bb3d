// The unit that stands behind a number in running text: the longest run of pieces that spells one; and what is counted but is no unit of ours.
import { beginsUnit, foldUnit, type Spelling, spelledUnits } from '../core/unit.ts'

const MOST_PIECES = 5
// `20 kN M10`: what begins a thread is none of the unit.
const piece = /[\s.\-/·*]{0,3}(?:(?!m\d)[a-zµ²]{1,20}(?![a-z])|''|["'%°#])/y

export interface UnitAt {
  readonly spelled: readonly Spelling[]
  readonly end: number
}

// What no unit can begin with costs nothing to look at.
const begins = /[\s.\-/·*]{0,3}[a-z"'%°#µ]/y

const NEXT_WORD = /[\s.]{0,3}([a-z]{1,24})/y

const nextWord = (text: string, at: number): string => {
  NEXT_WORD.lastIndex = at
  return NEXT_WORD.exec(text)?.[1] ?? ''
}

// `45 in the manual`, `45 in Nm`: a little word, not inches.
const afterPreposition = new Set(
  (
    'the a an my this that these those your our his her its their order total all each one steps stages increments case place use ' +
    'good mind there here it nm lb lbs lbft ftlb ftlbs newton newtons foot pound pounds metric kgm summer winter both general fact between'
  ).split(' '),
)

const SPACED_IN = /^\s+in$/

const isPreposition = (text: string, at: number, end: number): boolean => {
  if (!SPACED_IN.test(text.slice(at, end))) return false
  const next = nextWord(text, end)
  if (next === 'ft' || next === 'n') return true
  return afterPreposition.has(next)
}

const LETTER = /[a-z]/
const isApostrophe = (text: string, end: number): boolean => text[end - 1] === "'" && LETTER.test(text[end] ?? '')

// `40 ft. lb. which` goes on, `want 45 Nm. How` ends: only what is written short has a dot of its own, and a capital begins a sentence.
const SHORT = /(?:in|ins|ft|lb|lbs|deg|oz)$/
const MARK_BEHIND = /^\.[,;)\-/]/
const GOES_ON = /^\.\s[a-z\d(]/

const dotOfIts = (text: string, typed: string, at: number, end: number): boolean =>
  text[end] === '.' &&
  SHORT.test(text.slice(at, end)) &&
  (MARK_BEHIND.test(text.slice(end, end + 2)) || GOES_ON.test(typed.slice(end, end + 3)))

const LEADING = /^[\s.\-/·*]+/
const OF_ANOTHER = /^\s*[./·*]/

/** The unit that begins at `at`, if one does. `typed` is the text before it was folded. */
export const unitAt = (text: string, at: number, typed = text): UnitAt | undefined => {
  begins.lastIndex = at
  if (!begins.test(text)) return undefined
  let named: UnitAt | undefined
  let spelling = ''
  piece.lastIndex = at
  for (let taken = 0, from = at; taken < MOST_PIECES && piece.test(text); taken++, from = piece.lastIndex) {
    const end = piece.lastIndex
    spelling += pieceOf(taken === 0 ? text.slice(from, end).replace(LEADING, '') : text.slice(from, end))
    if (!beginsUnit(spelling)) break
    const spelled = spelledUnits(spelling)
    if (spelled.length > 0) named = { spelled, end }
  }
  if (named === undefined) return undefined
  const { spelled, end } = named
  // A dot or slash before the unit belongs to something else: `5. in`, `1/m`.
  if (OF_ANOTHER.test(text.slice(at, end))) return undefined
  if (isPreposition(text, at, end) || isApostrophe(text, end)) return undefined
  return { spelled, end: dotOfIts(text, typed, at, end) ? end + 1 : end }
}

const pieceOf = (written: string): string => foldUnit(written.includes('#') ? written.replaceAll('#', 'lb') : written)

const counted = new Set(
  (
    'year years yr yrs yo month months week weeks day days hour hours hr hrs minute minutes min mins second seconds sec secs ' +
    'mile miles mi km kms mph kmh kph hp bhp kw cc ci cid l liter litre liters litres v volt volts amp amps watt ' +
    'quid buck bucks dollar dollars euro euros usd gbp eur grand cent cents pence rpm hz pull pulls cycle cycles use uses click ' +
    'clicks stage stages step steps pass passes turn turns rotation rotations bolt bolts stud studs nut nuts lug lugs wheel wheels cylinder cylinders cyl ' +
    'wrench wrenches reading readings tpi pt point spline splined tooth teeth k ton tons gallon quart grit octane percentile star stars ' +
    'time times people guys car cars bike bikes piece pieces thread threads screw screws door speed gear c f litreish valve valves v6 v8 diesel petrol turbo'
  ).split(' '),
)
const countedWord = /[\s-]{0,2}([a-z]{1,12}\d?)(?![a-z])/y

/** The end of a word that says what is counted (years, bolts, miles), and the word. */
export const countedAt = (text: string, at: number): { readonly word: string; readonly end: number } | undefined => {
  countedWord.lastIndex = at
  const word = countedWord.exec(text)?.[1]
  return word !== undefined && counted.has(word) ? { word, end: countedWord.lastIndex } : undefined
}
