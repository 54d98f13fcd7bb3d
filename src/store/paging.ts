// Pages of cards, and what is looked for in them: the same in every store.
import { folded, orderOf, plain, tagOrder } from './order.ts'
import type { CardOrder, CardPage, FiledCard } from './store.ts'

export type Cursor = readonly [order: string, tag: string, kind: string]
// As JSON in letters that may stand in an address: whatever is in a place, its parts stay apart.
export const cursorText = (cursor: Cursor): string => Buffer.from(JSON.stringify(cursor)).toString('base64url')

const partsOf = (text: string): readonly unknown[] => {
  try {
    const parts: unknown = JSON.parse(Buffer.from(text, 'base64url').toString())
    return Array.isArray(parts) ? parts : []
  } catch {
    return []
  }
}

/** Any text is read: what is not there counts as the least. */
export const cursorOf = (text: string): Cursor => {
  const [order = '', tag = '', kind = ''] = partsOf(text).map((part) => (typeof part === 'string' ? plain(part) : ''))
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
