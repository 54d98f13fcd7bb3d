// Card rows as they count today. Rows are folded when something is kept, by the clock of that moment; where it was ahead, a row may
// hold a check of next year in place of the last one. Such rows are folded anew as they are read.
import { foldBook } from '../register/book.ts'
import type { Today } from '../register/status.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { FiledCard } from '../store/store.ts'
import { cardsOf, liesAhead } from './card-rows.ts'
import { historyOf } from './histories.ts'

export const presentCards =
  (store: Pick<RegisterStore, 'cards' | 'history'>, today: () => Today): RegisterStore['cards'] =>
  async (wanted) => {
    const page = await store.cards(wanted)
    const now = today()
    const present = async (card: FiledCard): Promise<FiledCard> => {
      if (card.kind !== 'wrench' || !liesAhead(card, now)) return card
      const book = foldBook((await historyOf(store, [card.tag])).map(({ entry }) => entry))
      const fresh = cardsOf(book, card.tag, now).find(({ kind }) => kind === card.kind)
      return fresh ? { ...fresh, seq: card.seq } : card
    }
    return { ...page, cards: await Promise.all(page.cards.map(present)) }
  }
