// From an answer to the card of a wrench: what was typed of a wrench corrects its card, under the rights and rules of any correction.
import type { APIInteraction } from 'discord.js'
import { sayerFor } from '../../../desk/say.ts'
import type { Shop } from '../../../desk/shop.ts'
import { textsOf } from '../../../keeping/texts.ts'
import type { Language } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { refusalFor, roleIn, type WriterRoles } from '../register/rights.ts'
import { type ChatReply, escapeChat, privateLine } from '../reply.ts'

export type SaveToWrench = (
  tag: string,
  texts: Readonly<Record<string, string>>,
  interaction: APIInteraction,
  language: Language,
) => Promise<ChatReply>

export const saverOf =
  (shop: Shop, roles: WriterRoles): SaveToWrench =>
  async (tag, texts, interaction, language) => {
    const { words } = language
    const role = roleIn(interaction, roles)
    if (role !== 'keeper') return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
    if (Object.keys(texts).length === 0) return privateLine(words.chat.save.nothing)
    const found = await shop.wrench(tag)
    if (!found) return privateLine(words.chatRegister.noSuchWrench)
    const { entry } = found.row.folder.card
    const raw = { ...textsOf(entry), ...texts, supersedes: entry.id, why: words.chat.save.why }
    const kept = await shop.keep('wrench', raw, { role, door: 'chat', key: `chat-${interaction.id}` })
    if (kept.kind === 'forbidden') return privateLine(words.chatRegister.forbidden)
    if (kept.kind === 'refused') {
      const say = sayerFor(language)
      const lines = kept.faults.map(say.fault).map(({ input, got, hint }) => escapeChat(`${input}: “${got}”. ${hint}`))
      return privateLine([words.chatRegister.notKept, ...lines].join('\n'))
    }
    const labels = words.keep.labels as Readonly<Record<string, string>>
    const what = Object.entries(texts)
      .map(([name, text]) => `${labels[name] ?? name} ${escapeChat(text)}`)
      .join(', ')
    return privateLine(render(words.chat.save.saved, (place) => ({ wrench: found.row.folder.tag, what })[place]))
  }
