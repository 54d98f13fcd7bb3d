// Pages of cards, and what is looked for in them: the same in every store.
import { folded, orderOf, plain, tagOrder } from './order.ts'
import type { CardOrder, CardPage, FiledCard } from './store.ts'

const PART = '\n'
export type Cursor = readonly [order: string, tag: string, kind: string]
export const cursorText = (cursor: Cursor): string => cursor.join(PART)
/** Any text is read: what is not there counts as the least. */
export const cursorOf = (text: string): Cursor => {
  const [order = '', tag = '', kind = ''] = plain(text).split(PART)
  return [order, tag, kind]
}

/** A page from one card more than fits on it. */
export const pageOf = (cards: readonly FiledCard[], order: CardOrder, limit: number): CardPage => {
  const shown = cards.slice(0, limit)
  const last = shown.at(-1)
  return cards.length > limit && last
    ? { cards: shown, next: cursorText([orderOf[order](last), tagOrder(last.tag), last.kind]) }
    : { cards: shown }
}

/** Longer than any tag or name: nothing has it in it. */
const LONGEST_SOUGHT = 200

/** A typed text as it is looked for; undefined where it cannot be found. */
export const soughtIn = (text: string): string | undefined => {
  const sought = folded(text.trim())
  return sought.length > LONGEST_SOUGHT ? undefined : sought
}
