// How texts are compared and put in order, the same in every store: by code point, numbers in a text by their size.
import { foldTag } from '../register/parts.ts'
import type { Card, CardOrder } from './store.ts'

const LONGEST_NUMBER = 12

// Columns cannot hold NUL or half a surrogate pair everywhere; the JSON beside them holds any text whole.
export const plain = (text: string): string => Buffer.from(text).toString().replaceAll('\0', '\uFFFD')

export const folded = (text: string): string => plain(foldTag(text))

// W-2 comes before W-10: digits are padded before texts are compared.
const byNumber = (text: string): string =>
  folded(text).replace(/\d+/g, (digits) => digits.padStart(LONGEST_NUMBER, '0'))

/** A tag's place in the order; different for different tags. */
export const tagOrder = (tag: string): string => `${byNumber(tag)} ${folded(tag)}`

/** What a card is put in order by, before its tag. Cards without it come last. */
export const orderOf: Readonly<Record<CardOrder, (card: Card) => string>> = {
  place: ({ place }) => (place === undefined ? '1' : `0${byNumber(place)}`),
  due: ({ due }) => (due === undefined ? '1' : `0${due}`),
  tag: () => '',
}

/** As `orderOf.due` writes a day. */
export const dueOrder = (day: string): string => `0${plain(day)}`

/** By code point, as databases compare UTF-8. */
export const byCodePoint = (one: string, other: string): number => Buffer.compare(Buffer.from(one), Buffer.from(other))
