// Inputs of bolts and joints: class, condition, friction, seat, share of strength.
import { refuse } from '../core/fault.ts'
import type { Wanted } from '../core/parse-quantity.ts'
import { parseSeat, type SeatText, seatExamples } from '../core/parse-seat.ts'
import { parseShare, type Share, shareExamples } from '../core/parse-share.ts'
import { parseTarget } from '../core/parse-target.ts'
import { quantity, type Target } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import type { Span } from '../mechanics/nut-factor.ts'
import { type Condition, conditionSpellings, conditions } from '../tables/conditions.ts'
import { classNames } from '../tables/property-classes.ts'
import { asked, common, type Input, type Options, one, plainNumber, same, within } from './input.ts'
import { choice } from './input-words.ts'

const bounds = { least: quantity(0.02, units['1']), most: quantity(1, units['1']) }

/** K, a plain number, or a span of one's own: where the next bolt will lie. */
export const nutFactorInput = <N extends boolean = false>(options: Options<N> = {}): Input<Target, N> => ({
  kind: 'number',
  most: 1,
  ...common(options, same('0.2')),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted: Wanted = { input, dimensions: ['number'] }
    const target = parseTarget(text.value, wanted)
    if (!target.ok) return target
    const { value, low = value, high = value, unit } = target.value
    const wrong = [value, low, high].flatMap((end) => within({ value: end, unit }, wanted, text.value, bounds) ?? [])
    return wrong[0] ? refuse(wrong[0]) : target
  },
  given: (value, input) => {
    const { low, high } = value
    return [{ ...asked(input, value), ...(low === undefined || high === undefined ? {} : { low, high }) }]
  },
})

/** A number of one's own with its ends; alike where it was told as one value. */
export const spanOfOwn = ({ value, low = value, high = value }: Target): Span => ({ low, typical: value, high })

/** μ, a plain number. */
export const frictionInput = <N extends boolean = false>(options: Options<N> = {}) =>
  plainNumber({ ...bounds, example: { metric: '0.14', inch: '0.14' }, ...options })

export const conditionInput = <N extends boolean = false>(options: Options<N> = {}): Input<Condition, N> =>
  choice({
    of: conditions,
    spellings: conditionSpellings,
    ladder: { metric: conditions.slice(0, 12), inch: conditions.slice(0, 12) },
    ...options,
  })

const spellingsOf = (name: string): readonly string[] => {
  const grade = /^SAE (.+)$/.exec(name)?.[1]?.replace('.', '')
  return grade === undefined
    ? [`class${name.replace(/[.-]/g, '').toLowerCase()}`]
    : [`grade${grade}`, `gr${grade}`, `saegrade${grade}`, `saej429grade${grade}`]
}
const classSpellings = Object.fromEntries(classNames.map((name) => [name, spellingsOf(name)]))
const classRungs = ['5.8', '8.8', '10.9', '12.9', 'A2-70', 'A4-80']
const gradeRungs = ['SAE 1', 'SAE 2', 'SAE 5', 'SAE 8', 'SAE 8.2']

/** The class of the fastener: 8.8, A2-70, SAE 5. */
export const classInput = <N extends boolean = false>(options: Options<N> = {}): Input<string, N> =>
  choice({
    of: classNames,
    spellings: classSpellings,
    example: { metric: '8.8', inch: 'SAE 5' },
    ladder: { metric: classRungs, inch: gradeRungs },
    ...options,
  })

/** The seat under head or nut, outer x hole. */
export const seatInput = (): Input<SeatText, false> => ({
  kind: 'seat',
  most: 1,
  ...common({}, { metric: seatExamples[0], inch: 'flat 0.72 in x 0.55 in' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const seat = parseSeat(text.value, input)
    if (!seat.ok) return seat
    const lengths = [seat.value.outer, seat.value.hole, seat.value.radius].filter((length) => length !== undefined)
    const wrong = lengths
      .map((length) => within(length, { input, dimensions: ['length'] }, text.value, { most: quantity(1, units.m) }))
      .filter((found) => found !== undefined)
    return wrong.length > 0 ? refuse(...wrong) : seat
  },
  given: (value, input) => [{ input, value: value.outer, name: seatName(value), from: 'asked' }],
})

const plain = (value: number, symbol: string): string => `${Math.round(value * 1e6) / 1e6} ${symbol}`

/** How a seat is written in one line. */
export const seatName = ({ kind, outer, hole, angle, radius }: SeatText): string => {
  const shape = angle ? ` ${angle.value}°` : radius ? ` ${plain(radius.value, radius.unit.symbol)}` : ''
  return `${kind}${shape} ${plain(outer.value, outer.unit.symbol)} x ${plain(hole.value, hole.unit.symbol)}`
}

/** How much of its strength the bolt may use. */
export const shareInput = (): Input<Share, false> => ({
  kind: 'share',
  most: 1,
  ...common({}, { metric: shareExamples[0], inch: shareExamples[0] }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const share = parseShare(text.value, input)
    if (!share.ok) return share
    const most = { least: quantity(1, units['%']), most: quantity(100, units['%']) }
    const wrong = within(share.value.percent, { input, dimensions: ['percent'] }, text.value, most)
    return wrong ? refuse(wrong) : share
  },
  given: (value, input) => [
    { input, value: value.percent, name: `${value.percent.value} % of ${value.of}`, from: 'asked' },
  ],
})
