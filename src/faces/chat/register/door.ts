// The register in chat: a command, a button or a form in, a reply out. What may be kept and how is the desk's; who may write is
// asked here, as chat knows people by Discord's permissions and roles.

import { type APIInteraction, ComponentType, InteractionType } from 'discord.js'
import type { RegisterWord, Topic } from '../../../../commands/topic.ts'
import { neverBack } from '../../../core/never-back.ts'
import { checkingOf, slipsIn } from '../../../desk/checking.ts'
import type { Shop } from '../../../desk/shop.ts'
import type { EventKind } from '../../../register/bodies.ts'
import type { Language } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import type { Pictures } from '../../pictures.ts'
import { readPart } from '../reading.ts'
import { type ChatReply, privateLine } from '../reply.ts'
import { keeps } from './commands.ts'
import { button, checkForm, type FormTexts, rawOfForm, row, textsOfForm } from './form.ts'
import { keptMessage } from './layout.ts'
import { faultLines, refused } from './refusal.ts'
import { refusalFor, roleIn, type WriterRoles } from './rights.ts'
import { createViews } from './views.ts'

export interface RegisterDoorParts {
  readonly shop: Shop
  readonly roles: WriterRoles
  readonly pictures: Pictures
  readonly now: () => number
}

type Raw = Readonly<Record<string, string>>

/** Forms that came back: what was typed is kept for as long as somebody may be mending it. */
interface Pending {
  readonly tag: string
  readonly texts: FormTexts
  readonly at: number
  /** The form's own name, the same each time that it comes back: whatever is pressed twice, it is kept once. */
  readonly form: string
}

const MOST_PENDING = 200
const PENDING_MS = 900_000
const formName = /^\d{1,20}$/

export interface RegisterDoor {
  /** Undefined where the interaction is none of the register's. */
  readonly handle: (
    interaction: APIInteraction,
    topics: readonly Topic[],
    language: Language,
  ) => Promise<ChatReply | undefined>
}

export const createRegisterDoor = ({ shop, roles, pictures, now: clock }: RegisterDoorParts): RegisterDoor => {
  const now = neverBack(clock)
  const views = createViews(shop, pictures)
  const pending = new Map<string, Pending>()
  /** Forms that are kept already: their buttons still stand in the chat. */
  const done = new Map<string, number>()
  const remember = (key: string, one: Omit<Pending, 'at'>): void => {
    pending.set(key, { ...one, at: now() })
    for (const [oldest, { at }] of pending) {
      if (pending.size <= MOST_PENDING && now() - at < PENDING_MS) break
      pending.delete(oldest)
    }
  }
  const finish = (form: string): void => {
    const names = [...pending].flatMap(([key, one]) => (one.form === form ? [key] : []))
    for (const name of [form, ...names]) done.set(name, now())
    for (const name of names) pending.delete(name)
    for (const [oldest, at] of done) {
      if (done.size <= MOST_PENDING && now() - at < PENDING_MS) break
      done.delete(oldest)
    }
  }

  const keep = async (
    word: RegisterWord,
    raw: Raw,
    interaction: APIInteraction,
    language: Language,
  ): Promise<ChatReply> => {
    const { words } = language
    const role = roleIn(interaction, roles)
    const kind = keeps[word]?.kind
    if (!role || !kind) return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
    const { today } = shop.today()
    const dayAssumed = kind === 'event' && raw['date'] === undefined
    const whole = {
      ...(kind === 'event' ? { date: today } : {}),
      ...(word === 'retire' ? { what: 'retired' } : {}),
      ...raw,
    }
    const kept = await shop.keep(kind, whole, { role, door: 'chat', key: `chat-${interaction.id}` })
    if (kept.kind === 'forbidden') return privateLine(words.chatRegister.forbidden)
    if (kept.kind === 'refused') return refused(faultLines(kept, language), language)
    const body = kept.entry.body as {
      readonly tag?: string
      readonly wrench?: string
      readonly what?: EventKind
      readonly date?: string
    }
    // As it hangs, however it was typed.
    const found = await shop.wrench(body.tag ?? body.wrench ?? '')
    const wrench = found?.row.folder.tag ?? ''
    const said = body.what
      ? render(
          words.chatRegister.keptEvent,
          (place) => ({ wrench, what: words.register.events[body.what as EventKind], date: body.date ?? '' })[place],
        )
      : render(words.chatRegister.keptWrench, () => wrench)
    const lines = [
      said,
      ...(dayAssumed ? [words.chatRegister.dayAssumed] : []),
      ...(kept.again ? [words.chatRegister.known] : []),
    ]
    return keptMessage(lines, found, language)
  }

  /** A form that was sent: what looks like a slip is asked back before anything is kept, unless it was said to stand. */
  const keepCheck = async (
    one: Omit<Pending, 'at'>,
    interaction: APIInteraction,
    language: Language,
    isSure: boolean,
  ): Promise<ChatReply> => {
    const { words } = language
    const role = roleIn(interaction, roles)
    if (!role) return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
    if (done.has(one.form)) return privateLine(words.chatRegister.known)
    const raw = rawOfForm(one.tag, one.texts)
    const read = await checkingOf(shop).grow(raw, language)
    const slips = slipsIn(read)
    const again = button(`again:${interaction.id}`, words.chatRegister.tryAgain)
    if (slips.length > 0 && !isSure) {
      remember(interaction.id, one)
      const sure = button(`sure:${interaction.id}`, words.chatRegister.asShown)
      return refused(
        slips.map(({ got, hint }) => `“${got}”. ${hint}`),
        language,
        [row(again, sure)],
      )
    }
    const kept = await shop.keep('check', raw, { role, door: 'chat', key: `chat-${one.form}` })
    if (kept.kind === 'forbidden') return privateLine(words.chatRegister.forbidden)
    if (kept.kind === 'refused') {
      remember(interaction.id, one)
      return refused(faultLines(kept, language), language, [row(again)])
    }
    finish(one.form)
    // What was said to stand is judged with the rest, as it was kept.
    const sure = slips.map(({ got }) => got).join('; ')
    const { headline, lines } = slips.length > 0 ? await checkingOf(shop).grow({ ...raw, sure }, language) : read
    const known = kept.again ? [words.chatRegister.known] : []
    return keptMessage([...known, headline, ...lines.slice(0, 8)], await shop.wrench(one.tag), language)
  }

  const openForm = (customId: string, tag: string, texts: FormTexts, { words }: Language): ChatReply => ({
    data: {},
    files: [],
    modal: checkForm(customId, tag, texts, words),
  })

  const press = async (
    customId: string,
    interaction: APIInteraction,
    language: Language,
  ): Promise<ChatReply | undefined> => {
    const { words } = language
    const [what, name = ''] = customId.split(/:(.*)/s)
    if (what === 'check') {
      if (!roleIn(interaction, roles))
        return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
      return openForm(`check:${name}`, name, { way: 'pull', when: `${shop.today().today} as-found` }, language)
    }
    if (what !== 'again' && what !== 'sure') return undefined
    const one = pending.get(name)
    if (!one && done.has(name)) return privateLine(words.chatRegister.known)
    if (!one || now() - one.at > PENDING_MS) return privateLine(words.chatRegister.formOld)
    if (what === 'again') return openForm(`check:${one.tag}:${one.form}`, one.tag, one.texts, language)
    return keepCheck(one, interaction, language, true)
  }

  return {
    handle: async (interaction, topics, language) => {
      if (
        interaction.type === InteractionType.MessageComponent &&
        interaction.data.component_type === ComponentType.Button
      )
        return press(interaction.data.custom_id, interaction, language)
      if (interaction.type === InteractionType.ModalSubmit) {
        const [what, tag = '', name = ''] = interaction.data.custom_id.split(':')
        if (what !== 'check') return undefined
        const form = formName.test(name) ? name : interaction.id
        return keepCheck({ tag, form, texts: textsOfForm(interaction.data.components) }, interaction, language, false)
      }
      const part = readPart(interaction, topics, (topic, name) => topic.register?.find((word) => word === name))
      if (!part) return undefined
      const { word, raw } = part
      if (word === 'show' || word === 'checks') return views.show(raw, language, word === 'checks')
      if (word === 'list') return views.list(raw, language)
      if (word === 'due') return views.due(language)
      return keep(word, raw, interaction, language)
    },
  }
}
