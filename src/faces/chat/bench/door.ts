// Bench runs in chat: begun, read and finished by those who may write, shown to everybody with their picture.

import type { APIInteraction } from 'discord.js'
import type { Topic } from '../../../../commands/topic.ts'
import { isRunMend, mendReadings, type RunMend } from '../../../desk/run-corrections.ts'
import { runDocument } from '../../../desk/run-document.ts'
import { runRow } from '../../../desk/run-rows.ts'
import type { Shop } from '../../../desk/shop.ts'
import { drawRunCard } from '../../../figures/run-card.ts'
import type { RunDocument } from '../../../questions/run-document.ts'
import { tagOf } from '../../../register/records.ts'
import type { Language } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import type { Pictures } from '../../pictures.ts'
import { cut } from '../cut.ts'
import { pictureFrom } from '../picture.ts'
import { readPart } from '../reading.ts'
import { message } from '../register/layout.ts'
import { faultLines, refused } from '../register/refusal.ts'
import { refusalFor, roleIn, type WriterRoles } from '../register/rights.ts'
import { type ChatReply, escapeChat, type Picture, privateLine } from '../reply.ts'
import { keepsRun, runKeeps } from './commands.ts'

export interface BenchDoorParts {
  readonly shop: Shop
  readonly roles: WriterRoles
  readonly pictures: Pictures
}

type Raw = Readonly<Record<string, string>>

export interface BenchDoor {
  /** Undefined where the interaction is none of the bench's. */
  readonly handle: (
    interaction: APIInteraction,
    topics: readonly Topic[],
    language: Language,
  ) => Promise<ChatReply | undefined>
}

const LONGEST = 3800
const LIST = 40

/** Whole lines, as many as a message holds. */
const within = (lines: readonly string[]): string => {
  const kept: string[] = []
  let length = 0
  for (const line of lines) {
    length += line.length + 1
    if (length > LONGEST) break
    kept.push(line)
  }
  return kept.join('\n')
}

const runMessage = (document: RunDocument, told: readonly string[], picture: Picture | undefined): ChatReply => {
  const { tag, asked, state, headline, lines, readings } = document
  const numbered = readings.map(
    ({ date, condition, text }, at) => `${at + 1}\\. ${date} ${escapeChat(`${condition}: ${text}`)}`,
  )
  const body = within([
    ...told,
    `**${escapeChat(headline)}**`,
    '',
    ...lines.map((line) => `- ${escapeChat(line)}`),
    '',
    ...numbered,
  ])
  return message(
    { title: cut(`${tag}: ${escapeChat(asked)}`, 250, '…'), description: body, footer: { text: state.text } },
    { picture },
  )
}

export const createBenchDoor = ({ shop, roles, pictures }: BenchDoorParts): BenchDoor => {
  const pictureOf = async (document: RunDocument, { words, style }: Language): Promise<Picture | undefined> => {
    return pictureFrom(pictures, drawRunCard(document, { words, style, theme: 'dark' }))
  }

  const shown = async (
    tag: string,
    told: (run: string) => readonly string[],
    language: Language,
    withPicture: boolean,
  ): Promise<ChatReply> => {
    const found = await shop.runs.one(tag)
    if (!found) return privateLine(language.words.bench.chat.noSuchRun)
    const document = runDocument(found.folder, language, shop.today().today)
    return runMessage(document, told(document.tag), withPicture ? await pictureOf(document, language) : undefined)
  }

  const keep = async (
    word: keyof typeof runKeeps,
    raw: Raw,
    interaction: APIInteraction,
    language: Language,
  ): Promise<ChatReply> => {
    const { words } = language
    const role = roleIn(interaction, roles)
    if (!role) return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
    const isDayTold = raw['date'] !== undefined
    const whole = { date: shop.today().today, ...raw }
    const kept = await shop.keep(runKeeps[word], whole, { role, door: 'chat', key: `chat-${interaction.id}` })
    if (kept.kind === 'forbidden') return privateLine(words.chatRegister.forbidden)
    if (kept.kind === 'refused') return refused(faultLines(kept, language), language)
    // As it was begun, however it was typed.
    const told = (run: string): string[] => [
      render(words.bench.chat.kept, () => run),
      ...(isDayTold ? [] : [words.chatRegister.dayAssumed]),
      ...(kept.again ? [words.chatRegister.known] : []),
    ]
    return shown(tagOf(kept.entry) ?? '', told, language, word !== 'start')
  }

  const mend = async (word: RunMend, raw: Raw, interaction: APIInteraction, language: Language): Promise<ChatReply> => {
    const { words } = language
    const role = roleIn(interaction, roles)
    if (!role) return privateLine(refusalFor(interaction, roles, words, words.chatRegister.forbidden))
    const kept = await mendReadings(shop, word, raw, { role, door: 'chat', key: `chat-${interaction.id}` })
    if (kept.kind === 'forbidden') return privateLine(words.chatRegister.forbidden)
    if (kept.kind === 'refused') return refused(faultLines(kept, language), language)
    const told = (run: string): string[] => [
      render(words.bench.chat.kept, () => run),
      ...(kept.again ? [words.chatRegister.known] : []),
    ]
    return shown(kept.run, told, language, true)
  }

  const list = async ({ words }: Language): Promise<ChatReply> => {
    const page = await shop.runs.page(LIST)
    const rows = page.runs.map((run) => runRow(run, words))
    const lines = rows.map(({ tag, asked, state, due }) =>
      [
        `**${escapeChat(tag)}** ${escapeChat(asked)} (${state.text})`,
        ...(due === undefined ? [] : [`${words.bench.labels.again}: ${due}`]),
      ].join(', '),
    )
    const description = lines.length === 0 ? words.bench.page.none : within(lines)
    const more = page.next === undefined ? '' : `\n${words.chatRegister.andMore}`
    return message({ title: words.bench.page.title, description: description + more })
  }

  return {
    handle: async (interaction, topics, language) => {
      const part = readPart(interaction, topics, (topic, name) => topic.runs?.find((word) => word === name))
      if (!part) return undefined
      const { word, raw } = part
      if (word === 'list') return list(language)
      if (isRunMend(word)) return mend(word, raw, interaction, language)
      if (keepsRun(word)) return keep(word, raw, interaction, language)
      return shown(raw['run'] ?? '', () => [], language, true)
    },
  }
}
