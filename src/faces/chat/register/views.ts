// What chat shows of the register: a wrench with its picture, the board or one of its lists, what is due.
import { shows } from '../../../desk/fleet-index.ts'
import type { Shop } from '../../../desk/shop.ts'
import { drawHistory } from '../../../figures/history-view.ts'
import { driftOf } from '../../../register/drift.ts'
import type { Language } from '../../../words/index.ts'
import type { Pictures } from '../../pictures.ts'
import { pictureFrom } from '../picture.ts'
import { type ChatReply, type Picture, privateLine } from '../reply.ts'
import { checksMessage, dueMessage, type Found, listMessage, wrenchMessage } from './layout.ts'

type Raw = Readonly<Record<string, string>>

const LIST = 200

export interface Views {
  readonly show: (asked: Raw, language: Language, all: boolean) => Promise<ChatReply>
  readonly list: (asked: Raw, language: Language) => Promise<ChatReply>
  readonly due: (language: Language) => Promise<ChatReply>
}

export const createViews = (shop: Shop, pictures: Pictures): Views => {
  const pictureOf = async (
    { book, row: { folder } }: Found,
    { words, style }: Language,
  ): Promise<Picture | undefined> => {
    const drawn = drawHistory(
      { folder, drifts: driftOf(book, folder) },
      { words, style, theme: 'dark', shape: 'narrow' },
    )
    return pictureFrom(pictures, drawn)
  }

  const show = async (asked: Raw, language: Language, all: boolean): Promise<ChatReply> => {
    const found = await shop.wrench(asked['wrench'] ?? '')
    if (!found) return privateLine(language.words.chatRegister.noSuchWrench)
    const picture = await pictureOf(found, language)
    return (all ? checksMessage : wrenchMessage)(found, language, picture)
  }

  const list = async (asked: Raw, language: Language): Promise<ChatReply> => {
    const { words } = language
    const only = shows.find((one) => one === asked['show'])
    if (only) {
      const [page, counts] = await Promise.all([shop.lists.list(only, LIST), shop.lists.counts()])
      return listMessage(words.history.list[only], page.rows, counts[only], language)
    }
    const page = await shop.board(LIST)
    // How many there are beyond these is not worth a walk past all of them.
    return listMessage(
      words.register.board,
      page.rows,
      page.next === undefined ? page.rows.length : undefined,
      language,
    )
  }

  return {
    show,
    list,
    due: async (language) => {
      const [due, never] = await Promise.all([shop.due(), shop.lists.list('never', LIST)])
      return dueMessage(due, never.rows, shop.today().today, language)
    },
  }
}
