// The tables of both databases as types, and what a row is made of. What the columns mean stands in the first migration.
import type { Entry } from '../register/records.ts'
import { folded, orderOf, plain, tagOrder } from './order.ts'
import type { Card, Filed, FiledCard } from './store.ts'

export interface Tables {
  entries: {
    seq: number
    id: string
    at: string
    kind: string
    supersedes: string | null
    key: string | null
    entry: string
  }
  filings: { tag: string; seq: number }
  cards: {
    kind: string
    tag: string
    name: string
    tag_order: string
    place_order: string
    due_order: string
    retired: number
    seq: number
    card: string
  }
  leases: { name: string; owner: string; until: string }
  marks: { job: string; key: string; at: string }
  settings: { seq: number; scope: string; name: string; value: string | null; setting: string }
  own: { owner: string; name: string; value: string; at: string }
  probe: { one: number; times: number }
}

export const entryRow = (entry: Entry, seq: number): Tables['entries'] => ({
  seq,
  id: plain(entry.id),
  at: plain(entry.at),
  kind: entry.kind,
  supersedes: entry.supersedes === undefined ? null : plain(entry.supersedes),
  key: entry.key === undefined ? null : plain(entry.key),
  entry: JSON.stringify(entry),
})

export const filedFrom = ({ seq, entry }: Pick<Tables['entries'], 'seq' | 'entry'>): Filed => ({
  seq,
  entry: JSON.parse(entry) as Entry,
})

export const cardRow = (card: Card, seq: number): Tables['cards'] => ({
  kind: card.kind,
  tag: folded(card.tag),
  name: folded(card.name),
  tag_order: tagOrder(card.tag),
  place_order: orderOf.place(card),
  due_order: orderOf.due(card),
  retired: card.retired ? 1 : 0,
  seq,
  card: JSON.stringify(card),
})

export const cardFrom = ({ seq, card }: Pick<Tables['cards'], 'seq' | 'card'>): FiledCard => ({
  ...(JSON.parse(card) as Card),
  seq,
})
