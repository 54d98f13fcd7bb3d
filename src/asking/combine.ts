// Measures that belong together: the ends of a span, a value and its tolerance, a row of readings with one unit behind it, a value told twice.
import { type Measure, siOf } from './measure.ts'
import type { Piece } from './pieces.ts'

type Measured = Extract<Piece, { kind: 'measure' }>

const isMeasured = (piece: Piece | undefined): piece is Measured => piece?.kind === 'measure'
const numeric = (measure: Measure): boolean =>
  (measure.kind === 'bare' || measure.kind === 'quantity') && !measure.doubtful && measure.low === undefined
const textAt = (pieces: readonly Piece[], at: number): string | undefined => {
  const piece = pieces[at]
  return piece === undefined || piece.kind === 'measure' ? undefined : piece.text
}

/** The first measure in the unit of the second, where it has none of its own. */
const likeSecond = (first: Measure, second: Measure): Measure =>
  first.kind === 'bare' && second.kind === 'quantity' && second.unit
    ? { ...second, value: first.value, raw: first.raw, ...(first.fraction ? { fraction: true } : {}) }
    : first

const spanOf = (first: Measure, second: Measure, raw: string): Measure | undefined => {
  const low = likeSecond(first, second)
  const alike = low.unit === second.unit && low.weight === second.weight
  if (!alike || !numeric(low) || !numeric(second) || low.value >= second.value) return undefined
  return { ...second, value: (low.value + second.value) / 2, low: low.value, high: second.value, raw }
}

const tolerated = (value: Measure, half: Measure, raw: string): Measure | undefined => {
  if (!numeric(value) || !numeric(half)) return undefined
  const whole = likeSecond(value, half)
  const percent = half.unit?.symbol === '%'
  if (whole.unit === undefined || (!percent && half.unit !== undefined && half.unit !== whole.unit)) return undefined
  const by = percent ? (whole.value * half.value) / 100 : half.value
  return by >= whole.value ? undefined : { ...whole, low: whole.value - by, high: whole.value + by, raw }
}

const joined = (pieces: readonly Piece[], at: number, text: string): { piece: Measured; next: number } | undefined => {
  const first = pieces[at]
  const second = pieces[at + 2]
  if (!isMeasured(first) || !isMeasured(second)) return undefined
  const raw = text.slice(first.start, second.end)
  const between = textAt(pieces, at + 1)
  const found =
    between === '±'
      ? tolerated(first.measure, second.measure, raw)
      : between === '-' || between === 'to' || (between === 'and' && textAt(pieces, at - 1) === 'between')
        ? spanOf(first.measure, second.measure, raw)
        : undefined
  return found && { piece: { kind: 'measure', measure: found, start: first.start, end: second.end }, next: at + 3 }
}

const spans = (pieces: readonly Piece[], text: string): Piece[] => {
  const out: Piece[] = []
  for (let at = 0; at < pieces.length; ) {
    const pair = joined(pieces, at, text)
    out.push(pair ? pair.piece : (pieces[at] as Piece))
    at = pair ? pair.next : at + 1
  }
  return out
}

/** What parts two numbers of one row. */
const parts: ReadonlySet<string | undefined> = new Set([',', 'and', '&', '/', ';'])

const gave: ReadonlySet<string | undefined> = new Set(['got', 'gave', 'read', 'reads', 'showed', 'shows'])

/** `40: 41.2`, `40 -> 41.2`, `40 => 41.2`: how many marks stand between a setting and what was shown at it; 0 where none do. */
export const marksBehind = (pieces: readonly Piece[], at: number): number => {
  const [mark, next] = [textAt(pieces, at + 1), textAt(pieces, at + 2)]
  const marks = mark === ':' || mark === '→' ? 1 : (mark === '-' || mark === '=') && next === '>' ? 2 : 0
  if (marks === 0) return 0
  const words = gave.has(textAt(pieces, at + 1 + marks)) ? 1 : 0
  return isMeasured(pieces[at + 1 + marks + words]) ? marks + words : 0
}

const led: ReadonlySet<string | undefined> = new Set([':', '>', '→'])

/** From `at` on: the places of numbers that stand in one row, parted by nothing, commas or a last `and`. */
const rowFrom = (pieces: readonly Piece[], at: number): number[] => {
  const places: number[] = []
  for (let here = at; isMeasured(pieces[here]); ) {
    const { measure } = pieces[here] as Measured
    // `40: 41 42; 100: 102`: the setting of the next row is none of this one.
    const isNext = here > at && led.has(textAt(pieces, at - 1)) && marksBehind(pieces, here) > 0
    if (!numeric(measure) || isNext) break
    places.push(here)
    if (measure.kind === 'quantity' && measure.unit?.symbol !== '°') {
      const next = pieces[here + (parts.has(textAt(pieces, here + 1)) ? 2 : 1)]
      if (!isMeasured(next) || next.measure.unit !== measure.unit) break
    }
    const between = textAt(pieces, here + 1)
    here += between === ',' && textAt(pieces, here + 2) === 'and' ? 3 : parts.has(between) ? 2 : 1
  }
  return places
}

const MOST_APART = 5

const isClose = (row: readonly Measure[]): boolean => {
  const sizes = row.map(({ value }) => value)
  return Math.max(...sizes) <= MOST_APART * Math.min(...sizes)
}

const isRow = (row: readonly Measure[], parted: boolean): boolean => {
  const last = row.at(-1)
  if (!last || row.length < 2 || last.kind !== 'quantity') return false
  if (row.some(({ kind, unit }) => kind === 'quantity' && unit !== last.unit)) return false
  if (!isClose(row)) return false
  return row.length > 2 || parted
}

/** `50 mm at 30 and 30 mm at 45°`: how a link stands is of no row. */
const isOfLink = (pieces: readonly Piece[], at: number): boolean => {
  const link = pieces[at - 2]
  return (
    ['at', '@'].includes(textAt(pieces, at - 1) ?? '') && isMeasured(link) && link.measure.unit?.dimension === 'length'
  )
}

/** Numbers of one row take the unit that stands behind the last, and know that they are one row. */
const rows = (pieces: readonly Piece[]): Piece[] => {
  const out = [...pieces]
  let list = 0
  for (let at = 0; at < out.length; ) {
    if (!isMeasured(out[at]) || isOfLink(out, at)) {
      at++
      continue
    }
    const places = rowFrom(out, at)
    const row = places.map((place) => (out[place] as Measured).measure)
    const [first, second] = places
    // `swivel at 10, 40 ft lb`: two things, not two torques.
    const isTwo = places.length === 2 && textAt(out, at - 1) === 'at' && textAt(out, at + 1) === ','
    if (!isTwo && isRow(row, first !== undefined && second !== undefined && second > first + 1)) {
      list++
      const last = row.at(-1) as Measure
      for (const place of places) {
        const piece = out[place] as Measured
        out[place] = { ...piece, measure: { ...likeSecond(piece.measure, last), list } }
      }
    }
    at = Math.max(at + 1, (places.at(-1) ?? -1) + 1)
  }
  return bareRows(out, list)
}

const FEWEST_BARE = 3
const FARTHEST = 1.5

/** `clicks at 100 Nm: 97 98 96`, `97 98 96 at 100 Nm`: the one torque that is told, and a row of about its size. */
const isShownAt = (pieces: readonly Piece[], row: readonly number[]): boolean => {
  const told = pieces.flatMap((piece, at) =>
    isMeasured(piece) && !row.includes(at) && numeric(piece.measure) ? [at] : [],
  )
  const [at, ...more] = told
  const setting = at === undefined || more.length > 0 ? undefined : (pieces[at] as Measured).measure
  if (at === undefined || setting?.unit?.dimension !== 'torque') return false
  return row.every((place) => {
    const share = (pieces[place] as Measured).measure.value / setting.value
    return share < FARTHEST && share > 1 / FARTHEST
  })
}

/** Two rows of three numbers and more without any unit (`A 48.9 49.3 49.0, B 51.2 50.8 51.0`) are rows too; one alone may be anything. */
const bareRows = (pieces: Piece[], list: number): Piece[] => {
  const found: number[][] = []
  for (let at = 0; at < pieces.length; at++) {
    if (!isMeasured(pieces[at])) continue
    const places = rowFrom(pieces, at)
    const row = places.map((place) => (pieces[place] as Measured).measure)
    if (row.length >= FEWEST_BARE && row.every(({ kind, fraction }) => kind === 'bare' && !fraction) && isClose(row))
      found.push(places)
    at = places.at(-1) ?? at
  }
  const [only] = found
  if (only === undefined || (found.length === 1 && !isShownAt(pieces, only))) return pieces
  for (const places of found) {
    list++
    for (const place of places) {
      const piece = pieces[place] as Measured
      pieces[place] = { ...piece, measure: { ...piece.measure, list } }
    }
  }
  return pieces
}

const SAME = 0.02

/** True where two measures tell the same in two units: 70 N·m (52 ft-lb). */
export const sameTold = (one: Measure, other: Measure): boolean =>
  one.kind === 'quantity' &&
  other.kind === 'quantity' &&
  one.unit !== other.unit &&
  one.unit?.dimension === other.unit?.dimension &&
  Math.abs(siOf(one) - siOf(other)) <= SAME * siOf(one)

export const combine = (pieces: readonly Piece[], text: string): readonly Piece[] => rows(spans(pieces, text))
