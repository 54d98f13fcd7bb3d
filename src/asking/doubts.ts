// Numbers that are not what they seem by themselves: `100 or 110 Nm`, `minus 120 Nm`, `45° back toward me`, `half of 120 Nm`. What
// stands around them changes them in a way that is not read: so the whole goes on as it was typed, and the question refuses it.
import { units } from '../core/unit.ts'
import { sameTold } from './combine.ts'
import { type Doubt, measureAt, type Rule, textAt, words } from './doubt.ts'
import { amended } from './doubt-amended.ts'
import { direction } from './doubt-direction.ts'
import { fromTheEnd, fromTheGrip, toTheFastener } from './doubt-hand.ts'
import { isDimension, type Measure } from './measure.ts'
import type { Piece } from './pieces.ts'
import { wholeFrom } from './torn.ts'
import { unitAt } from './unit-at.ts'

const isNumber = (measure: Measure | undefined): measure is Measure =>
  measure !== undefined && (measure.kind === 'bare' || measure.kind === 'quantity')

const isSize = (measure: Measure | undefined): boolean => measure?.kind === 'size'

/** `100 or 110 Nm`; but not the same told again in another unit. */
const either: Rule = (pieces, at, { measure }) => {
  const beside = (step: 1 | -1): Doubt | undefined => {
    const other = measureAt(pieces, at + 2 * step)
    if (textAt(pieces, at + step) !== 'or') return undefined
    const places = { first: Math.min(at, at + 2 * step), last: Math.max(at, at + 2 * step) }
    if (isSize(other) && isSize(measure)) return places
    if (!isNumber(other) || !isNumber(measure)) return undefined
    const isAlike =
      other.kind === 'bare' || measure.kind === 'bare' || other.unit?.dimension === measure.unit?.dimension
    if (!isAlike || other.weight !== measure.weight || sameTold(other, measure)) return undefined
    if (other.value === measure.value && other.unit === measure.unit) return undefined
    return places
  }
  return beside(1) ?? beside(-1)
}

const signs = words('- + / ±')

/** `25 -2 Nm`, `80 -5/+10 Nm`: a value and how far it may be off, which is neither of them; one span was read before. */
const lopsided: Rule = (pieces, at, { measure }) => {
  if (measure.kind !== 'quantity' || measure.low !== undefined || signless.has(measure.unit?.dimension))
    return undefined
  let first = at
  while (signs.has(textAt(pieces, first - 1)) || (first < at && isBare(measureAt(pieces, first - 1)))) first--
  const isOfLink = ['@', 'at'].includes(textAt(pieces, first - 1))
  return first < at - 1 && isBare(measureAt(pieces, first)) && !isOfLink ? { first, last: at } : undefined
}

const isBare = (measure: Measure | undefined): boolean => measure?.kind === 'bare' && !measure.fraction

const signless: ReadonlySet<string | undefined> = new Set(['angle', 'temperature', 'percent'])

/** `-50 mm`, `minus 120 Nm`: a range, a dash of a list and an angle to the other side are none. */
const negative: Rule = (pieces, at, { measure, start }) => {
  if (!isNumber(measure) || signless.has(measure.unit?.dimension)) return undefined
  const [sign, before] = [pieces[at - 1], pieces[at - 2]]
  if (sign === undefined || sign.kind === 'measure' || before?.kind === 'measure') return undefined
  const isTied = sign.kind === 'mark' && sign.text === '-' && sign.end === start
  const isApart = before === undefined || before.end < sign.start
  const isSaid = sign.kind === 'word' && sign.text === 'minus'
  if (isSaid) return { first: at - 1, last: at }
  return isTied && isApart && measure.kind === 'quantity' ? { first: at - 1, last: at, isPlain: true } : undefined
}

const DRAWN = /(\d+)\s?\/\s?(\d+)/
const halves: ReadonlySet<number> = new Set([2, 3, 4, 8, 16, 32, 64])

/** `100/110 Nm`: two figures rather than a fraction. */
const slashed: Rule = (_pieces, at, { measure }) => {
  const drawn = measure.fraction && isDimension(measure, 'torque') ? DRAWN.exec(measure.raw) : null
  return drawn && !halves.has(Number(drawn[2])) ? { first: at, last: at, isPlain: true } : undefined
}

const mending = words('or sorry mean rather wait no i / . , ( ) ?')
const turning = words('or sorry mean rather wait /')
const MOST_BETWEEN = 6

/** `100 in-lb/ft-lb`, `100 in lbs, sorry, ft lbs`: which unit it is, is not told. */
const otherUnit =
  (text: string): Rule =>
  (pieces, at, { measure }) => {
    if (measure.kind !== 'quantity' || !isNumber(measure)) return undefined
    let next = at + 1
    let turns = false
    for (; next <= at + MOST_BETWEEN && mending.has(textAt(pieces, next)); next++)
      turns ||= turning.has(textAt(pieces, next))
    const piece = pieces[next]
    if (!turns || piece?.kind !== 'word') return undefined
    const named = unitAt(text, piece.start)
    const unit = named?.spelled.find(({ unit: one }) => one.dimension === measure.unit?.dimension)?.unit
    if (!named || !unit || unit === measure.unit) return undefined
    let last = next
    while ((pieces[last + 1]?.end ?? Number.POSITIVE_INFINITY) <= named.end) last++
    return { first: at, last }
  }

const counts = words('two three four both')
const adapters = /^(?:adapt[eo]rs?|crowfoots?|crowfeet|crowsfeet|extensions?|spanners?|attachments?)$/

/** `two 50 mm adapters in line`: each is to be told. */
const several: Rule = (pieces, at, { measure }) => {
  if (!isDimension(measure, 'length')) return undefined
  const before = measureAt(pieces, at - 1)
  const isCounted = counts.has(textAt(pieces, at - 1)) || (before !== undefined && /^[2-4]\s?x?$/.test(before.raw))
  const named = [1, 2, 3].find((ahead) => adapters.test(textAt(pieces, at + ahead)))
  if (isCounted && named !== undefined) return { first: at - 1, last: at + named }
  // `two adapters 50 mm in line`, where no second length follows.
  const isBehind = adapters.test(textAt(pieces, at - 1)) && counts.has(textAt(pieces, at - 2))
  const follows = [1, 2, 3].some((ahead) => {
    const next = measureAt(pieces, at + ahead)
    return next !== undefined && (isDimension(next, 'length') || next.kind === 'bare')
  })
  return isBehind && !follows && measure.list === undefined ? { first: at - 2, last: at } : undefined
}

/** `1 ft 6`, `a foot and a half`: more of it stands behind. */
const goesOn: Rule = (pieces, at, { measure, end }) => {
  if (!isDimension(measure, 'length')) return undefined
  const next = pieces[at + 1]
  const isInches =
    next?.kind === 'measure' && next.measure.kind === 'bare' && next.start - end <= 1 && next.measure.value < 12
  if (isInches && measure.unit === units.ft) return { first: at, last: at + 1 }
  const behind = [1, 2, 3].map((ahead) => textAt(pieces, at + ahead))
  return /^and (?:a )?(?:half|quarter)$/.test(behind.join(' ').trim()) || /^and half/.test(behind.slice(0, 2).join(' '))
    ? { first: at, last: behind[1] === 'a' ? at + 3 : at + 2 }
    : undefined
}

const shares = words('half third thirds quarter quarters fifth tenth')
const manifold = words('twice double triple buck')
const changes = words('less minus plus more +')
const MOST_TOLERANCE = 10 // %: a tolerance of a torque is no share of it that is wanted

/** `75 % of 120 Nm`, `half of 120 Nm`, `120 Nm less 10 %`: a share of what stands there. */
const shareOf: Rule = (pieces, at, { measure }) => {
  if (!isDimension(measure, 'torque')) return undefined
  if (manifold.has(textAt(pieces, at - 1))) return { first: at - 1, last: at }
  const of = ['the', 'spec', 'my'].includes(textAt(pieces, at - 1)) ? at - 2 : at - 1
  if (['of', 'from'].includes(textAt(pieces, of))) {
    const part = textAt(pieces, of - 1) === 'torque' ? of - 2 : of - 1
    if (shares.has(textAt(pieces, part))) return { first: part, last: at }
    const share = measureAt(pieces, of - 1)
    if (share && isDimension(share, 'percent') && share.value > MOST_TOLERANCE) return { first: of - 1, last: at }
  }
  const by = measureAt(pieces, at + 2)
  const isShare = by !== undefined && isDimension(by, 'percent')
  return changes.has(textAt(pieces, at + 1)) && isShare ? { first: at, last: at + 2 } : undefined
}

/** `,5 Nm` begins with its mark, and is read so. */
const LED = /^[.,]\d/

/** As they are read, with each that is in doubt as a whole, from the first word that belongs to it to the last; `quote` gives what was typed. */
export const doubted = (
  pieces: readonly Piece[],
  text: string,
  quote: (start: number, end: number) => string,
): readonly Piece[] => {
  const rules = [
    either,
    amended,
    lopsided,
    negative,
    slashed,
    otherUnit(text),
    direction,
    fromTheEnd,
    fromTheGrip,
    toTheFastener,
    several,
    goesOn,
    shareOf,
  ]
  return pieces.map((piece, at) => {
    if (piece.kind !== 'measure' || piece.measure.doubtful) return piece
    const torn = wholeFrom(pieces, at, text)
    if (torn !== undefined) {
      const raw = quote(torn, piece.end)
      return {
        ...piece,
        measure: { ...piece.measure, doubtful: true, unclear: LED.test(raw) ? undefined : 'number', raw },
      }
    }
    for (const rule of rules) {
      const found = rule(pieces, at, piece)
      if (!found) continue
      const raw = quote(pieces[found.first]?.start ?? piece.start, pieces[found.last]?.end ?? piece.end)
      const as = found.unit
        ? { kind: 'quantity' as const, unit: found.unit }
        : isSize(piece.measure)
          ? { name: raw }
          : {}
      return {
        ...piece,
        measure: {
          ...piece.measure,
          ...as,
          doubtful: true,
          unclear: found.isPlain ? undefined : (found.as ?? 'number'),
          raw,
        },
      }
    }
    return piece
  })
}
