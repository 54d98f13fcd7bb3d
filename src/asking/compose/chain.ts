// Several adapters one behind the other: whether a text puts them together, and which way each of them points.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import type { Facts } from '../facts.ts'
import type { Length } from '../lengths.ts'
import { textOf } from '../measure.ts'
import { type Entry, entry } from '../proposal.ts'

export interface Direction {
  /** As it was typed, where it cannot be read one way: the question refuses it. */
  readonly doubt?: string
  readonly value: number
  readonly from: { readonly start: number; readonly end: number }
  readonly at: number
}

const chained =
  /\b(?:stack\w*|chain\w*|(?:two|three|both) (?:crow|adapt|adaptor|offset|spanner|extension)\w*|plus|joined|bolted together|on top|then an?|daisy|second|another|in series|one after|all in (?:one )?line)\b/
export const eitherOne = /\b(?:or|which|either|vs|versus)\b/

/** `50 mm + 30 mm`, `50 mm@45 + 30 mm` */
const added = /(?:mm|cm|in|inch|inches|["”″])\s?(?:@\s?\d+(?:\.\d+)?\s?°?\s?)?\+\s?\d/

/** `50 mm@45` */
export const tied = /(?:mm|cm|in|inch|inches|["”″])\s?@\s?\d/

/** `50 mm at 30° and 30 mm at 45°`: the second is a link as the first is, though nobody calls it so. */
export const linksBehind = ({ scene, lengths, lengthsOf, angles }: Facts): readonly Length[] => {
  const sure = lengthsOf('adapter')
  const joins = (at: number): boolean => {
    const piece = scene.pieces[at]
    return piece !== undefined && piece.kind !== 'measure' && ['and', '&', '+', ','].includes(piece.text)
  }
  const isTurned = (length: Length): boolean => angles.some(({ at }) => at === length.at + 1 || at === length.at + 2)
  return lengths.filter(
    (one) =>
      one.role === undefined &&
      !one.unitless &&
      isTurned(one) &&
      joins(one.at - 1) &&
      angles.some(({ at }) => at === one.at - 2) &&
      sure.some((link) => isTurned(link) && link.at < one.at && one.at - link.at <= 5),
  )
}

export const isChained = (facts: Facts): boolean => linksBehind(facts).length > 0 || isToldChained(facts)

const isToldChained = ({ scene }: Facts): boolean =>
  added.test(scene.folded) || (chained.test(scene.folded) && !eitherOne.test(scene.folded))

const linkText = (length: Length, angle: number | undefined): string =>
  angle === undefined
    ? textOf(length.measure)
    : `${textOf(length.measure)}@${writeQuantity(quantity(angle, units['1']))}`

/** In a chain each link has the direction that is said before the next one begins, or all have the one that is said of all. */
export const chainEntries = (links: readonly Length[], directions: readonly Direction[], isTied: boolean): Entry[] => {
  const [only, ...more] = directions
  return links.map((link, index) => {
    const next = links[index + 1]?.at ?? Number.POSITIVE_INFINITY
    // `50 mm@45 + 30 mm`: what is tied to one link is not said of the others.
    const own = more.length === 0 && !isTied ? only : directions.find(({ at }) => at > link.at && at < next)
    return entry('adapter', linkText(link, own?.value), link)
  })
}

const saidOfAll = /\b(?:both|all|each|every|stack\w*)\b/

/** The two readings of one bend that is said behind several links; undefined where it is clear of which it is. */
export const ofLastOrAll = (
  { scene }: Facts,
  links: readonly Length[],
  [direction, ...more]: readonly Direction[],
): readonly (readonly string[])[] | undefined => {
  const last = links.at(-1)
  if (!direction || !last || more.length > 0 || direction.value === 0 || direction.at < last.at) return undefined
  if (tied.test(scene.folded) || saidOfAll.test(scene.folded)) return undefined
  const all = links.map((link) => linkText(link, direction.value))
  return [all, links.map((link) => (link === last ? linkText(link, direction.value) : textOf(link.measure)))]
}
