// How cards are read: one, a page of them in an order, those that a typed text may mean; and how they are folded anew.
import { sql } from 'kysely'
import { dropCardPlan, lastSeqsPlan, putCardsPlan } from './append-plan.ts'
import { historyPlan } from './entry-plans.ts'
import { dueOrder, folded } from './order.ts'
import { cursorOf, pageOf, soughtIn } from './paging.ts'
import { type Build, firstOf, type Plan, rowsOf } from './plan.ts'
import { cardFrom } from './rows.ts'
import {
  type CardName,
  type CardPage,
  type CardsWanted,
  cardKinds,
  type FiledCard,
  type FindWanted,
  type FoldCards,
} from './store.ts'

export function* cardPlan(db: Build, { kind, tag }: CardName): Plan<FiledCard | undefined> {
  const row = yield* firstOf(
    db.selectFrom('cards').select(['seq', 'card']).where('kind', '=', kind).where('tag', '=', folded(tag)),
  )
  return row && cardFrom(row)
}

const columns = { place: 'place_order', due: 'due_order', tag: sql.lit('') } as const

const wantedCards = (db: Build, { kind, withRetired }: Pick<CardsWanted, 'kind' | 'withRetired'>) => {
  const all = db.selectFrom('cards').select(['seq', 'card'])
  const ofKind = kind === undefined ? all : all.where('kind', '=', kind)
  return withRetired ? ofKind : ofKind.where('retired', '=', 0)
}

export function* cardsPlan(db: Build, wanted: CardsWanted): Plan<CardPage> {
  const { order, limit, after, dueBy } = wanted
  const column = columns[order]
  let query = wantedCards(db, wanted)
  // '0' begins every due day, '1' those without one.
  if (dueBy !== undefined) query = query.where('due_order', '<=', dueOrder(dueBy))
  if (after !== undefined) {
    const [place, tag, kind] = cursorOf(after)
    query =
      typeof column === 'string'
        ? query.where(sql<boolean>`(${sql.ref(column)}, tag_order, kind) > (${place}, ${tag}, ${kind})`)
        : query.where(sql<boolean>`(tag_order, kind) > (${tag}, ${kind})`)
  }
  const sorted = typeof column === 'string' ? query.orderBy(column) : query
  const rows = yield* rowsOf(
    sorted
      .orderBy('tag_order')
      .orderBy('kind')
      .limit(limit + 1),
  )
  return pageOf(rows.map(cardFrom), order, limit)
}

const escaped = (text: string): string => text.replace(/[\\%_]/g, (mark) => `\\${mark}`)

export function* findPlan(db: Build, text: string, wanted: FindWanted): Plan<FiledCard[]> {
  const sought = soughtIn(text)
  if (sought === undefined) return []
  const like = (column: 'tag' | 'name', pattern: string) => sql<boolean>`${sql.ref(column)} like ${pattern} escape '\\'`
  const part = escaped(sought)
  const rows = yield* rowsOf(
    wantedCards(db, wanted)
      .where((eb) => eb.or([like('tag', `%${part}%`), like('name', `%${part}%`)]))
      .orderBy((eb) =>
        eb
          .case()
          .when(like('tag', `${part}%`))
          .then(sql.lit(0))
          .when(like('name', `${part}%`))
          .then(sql.lit(1))
          .else(sql.lit(2))
          .end(),
      )
      .orderBy('tag_order')
      .orderBy('kind')
      .limit(wanted.limit),
  )
  return rows.map(cardFrom)
}

const TAGS_AT_ONCE = 25

/** Folds the cards of the next few tags after one; gives the last tag, or undefined at the end. Runs under the lock. */
export function* rebuildPlan(
  db: Build,
  after: string,
  fold: FoldCards,
): Plan<{ readonly last: string | undefined; readonly cards: number }> {
  const tags = yield* rowsOf(
    db.selectFrom('filings').select('tag').distinct().where('tag', '>', after).orderBy('tag').limit(TAGS_AT_ONCE),
  )
  let cards = 0
  for (const { tag } of tags) {
    const made = fold(tag, yield* historyPlan(db, tag))
    if (made.some((card) => folded(card.tag) !== tag)) throw new Error(`bug: the fold of ${tag} made another's card`)
    const seqs = yield* lastSeqsPlan(db, [tag])
    yield* putCardsPlan(db, made, () => seqs.get(tag) ?? 0)
    for (const kind of cardKinds) if (!made.some((card) => card.kind === kind)) yield* dropCardPlan(db, { kind, tag })
    cards += made.length
  }
  return { last: tags.at(-1)?.tag, cards }
}
