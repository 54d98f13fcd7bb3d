// The register as messages: a wrench, the list, what is due, what was kept. Within Discord's limits; what is cut is counted.

import { type APIEmbed, MessageFlags } from 'discord.js'
import type { DueWrench, Shop } from '../../../desk/shop.ts'
import { textsOf } from '../../../keeping/texts.ts'
import { gaugeOf } from '../../../register/book.ts'
import type { ListedRow } from '../../../register/fleet.ts'
import { judge } from '../../../register/verdict.ts'
import type { Language } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { pointText } from '../../point-text.ts'
import { marks } from '../../status-marks.ts'
import { cut } from '../cut.ts'
import { type ChatReply, escapeChat, type Picture } from '../reply.ts'
import { button, row } from './form.ts'

const COLOUR = 0x1d7a6b
const FIELD = 1000
const TITLE = 250
const LIST = 3800
const MOST = 5

export type Found = NonNullable<Awaited<ReturnType<Shop['wrench']>>>

/** As many whole lines as fit. */
const fitting = (lines: readonly string[], most: number): { text: string; left: number } => {
  const kept: string[] = []
  let length = 0
  for (const line of lines) {
    if (length + line.length + 1 > most) break
    kept.push(line)
    length += line.length + 1
  }
  return { text: kept.join('\n'), left: lines.length - kept.length }
}

export const message = (
  embed: APIEmbed,
  more: {
    readonly isPrivate?: boolean
    readonly buttons?: ReadonlyArray<ReturnType<typeof row>>
    readonly picture?: Picture | undefined
  } = {},
): ChatReply => {
  const { isPrivate = false, buttons = [], picture } = more
  return {
    data: {
      embeds: [{ color: COLOUR, ...embed, ...(picture ? { image: { url: 'attachment://armlength.png' } } : {}) }],
      allowed_mentions: { parse: [] },
      ...(isPrivate ? { flags: MessageFlags.Ephemeral } : {}),
      ...(buttons.length > 0 ? { components: [...buttons] } : {}),
      ...(picture ? { attachments: [{ id: 0, filename: 'armlength.png', description: cut(picture.alt, 1024) }] } : {}),
    },
    files: picture ? [{ name: 'armlength.png', data: picture.data }] : [],
  }
}

const statusText = ({ status }: Pick<ListedRow, 'status'>, { words }: Language): string => {
  const reasons = status.reasons.map(({ code, date }) => `${words.register.reasons[code]} (${date})`).join(' ')
  const due =
    status.due && (status.status === 'in-service' || status.status === 'check-due')
      ? ` ${words.register.due}: ${status.due.on}.`
      : ''
  return `${marks[status.status]} **${words.register.statuses[status.status]}** ${reasons}${due}`
}

const checkLines = ({ book, row: { folder } }: Found, { words, style }: Language): string[] => {
  const card = folder.card.entry.body
  return folder.checks.map(({ entry }) => {
    const { gauge, date, state } = entry.body
    const judged = judge(entry.body, card, gaugeOf(book, gauge)?.entry.body)
    const points = judged.points.map((point) => pointText(point, judged.limit, { words, style })).join(', ')
    return `${date}, ${words.checking.states[state]}: ${words.codes[judged.verdict]} (${words.register.deviation} ${points})`
  })
}

const enterButton = (tag: string, { words }: Language) => row(button(`check:${tag}`, words.chatRegister.enterCheck))

export const wrenchMessage = (found: Found, language: Language, picture: Picture | undefined): ChatReply => {
  const { words } = language
  const { folder } = found.row
  const { tag, name } = folder.card.entry.body
  const labels = words.keep.labels as Readonly<Record<string, string>>
  const { tag: _, name: __, ...card } = textsOf(folder.card.entry)
  const checks = checkLines(found, language).slice(0, MOST)
  const events = folder.events
    .slice(0, MOST)
    .map(
      ({ entry: { body } }) =>
        `${body.date}: ${words.register.events[body.what]}${body.note === undefined ? '' : `, ${escapeChat(body.note)}`}`,
    )
  const field = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [{ name: title, value: fitting(lines, FIELD).text || '…' }]
  return message(
    {
      title: cut(`${tag}: ${escapeChat(name)}`, TITLE, '…'),
      description: statusText(found.row, language),
      fields: [
        ...field(
          words.chatRegister.card,
          Object.entries(card).map(([input, text]) => `${labels[input] ?? input}: ${escapeChat(text)}`),
        ),
        ...field(words.chatRegister.lastChecks, checks.length > 0 ? checks : [words.chatRegister.noChecks]),
        ...field(words.chatRegister.happened, events),
      ],
    },
    { buttons: [enterButton(tag, language)], picture },
  )
}

export const checksMessage = (found: Found, language: Language, picture: Picture | undefined): ChatReply => {
  const { words } = language
  const lines = checkLines(found, language)
  const { text, left } = fitting(lines.length > 0 ? lines : [words.chatRegister.noChecks], LIST)
  const more = left > 0 ? `\n${render(words.chatRegister.more, () => String(left))}` : ''
  const { tag, name } = found.row.folder.card.entry.body
  return message(
    {
      title: cut(`${tag}: ${escapeChat(name)}`, TITLE, '…'),
      description: `${statusText(found.row, language)}\n\n${text}${more}`,
    },
    { buttons: [enterButton(tag, language)], picture },
  )
}

/** `all`: how many there are, where that is known. */
export const listMessage = (
  title: string,
  rows: readonly ListedRow[],
  all: number | undefined,
  language: Language,
): ChatReply => {
  const { words } = language
  const lines = rows.map((one) => {
    const { tag, name, place } = one.folder.card.entry.body
    const [reason] = one.status.reasons
    return `${marks[one.status.status]} **${escapeChat(tag)}** ${escapeChat(name)}${place === undefined ? '' : `, ${escapeChat(place)}`}: ${words.register.statuses[one.status.status]}${reason ? ` (${reason.date})` : ''}`
  })
  if (lines.length === 0) return message({ title, description: words.chatRegister.nobody })
  const { text, left } = fitting(lines, LIST)
  const more = all === undefined ? undefined : left + all - rows.length
  const told =
    more === undefined
      ? [words.chatRegister.andMore]
      : more > 0
        ? [render(words.chatRegister.more, () => String(more))]
        : []
  return message({ title, description: [text, ...told].join('\n') })
}

const MONTH_DAYS = 31

/** What has a day, the earliest first; then what was never checked, which is due since it came. */
export const dueMessage = (
  due: readonly DueWrench[],
  never: readonly ListedRow[],
  today: string,
  language: Language,
): ChatReply => {
  const { words } = language
  const until = new Date(Date.parse(`${today}T00:00:00Z`) + MONTH_DAYS * 86_400_000).toISOString().slice(0, 10)
  const soon = due.filter((one) => one.due <= until)
  const title = words.register.due
  if (soon.length + never.length === 0) return message({ title, description: words.chatRegister.noneDue })
  const days = soon.map(
    ({ tag, name, due: day, place }) =>
      `${day < today ? `**${day}, ${words.chatRegister.overdue}**` : day}: ${escapeChat(tag)}, ${escapeChat(name)}${place === undefined ? '' : `, ${escapeChat(place)}`}`,
  )
  const unchecked = never.map(({ folder }) => {
    const { tag, name } = folder.card.entry.body
    return `**${escapeChat(tag)}**, ${escapeChat(name)}: ${words.chatRegister.noChecks}`
  })
  const { text, left } = fitting([...days, ...unchecked], LIST)
  return message({
    title,
    description: left > 0 ? `${text}\n${render(words.chatRegister.more, () => String(left))}` : text,
  })
}

/** What was kept, and how the wrench stands now. */
export const keptMessage = (lines: readonly string[], found: Found | undefined, language: Language): ChatReply => {
  const status = found ? [statusText(found.row, language)] : []
  return message({
    title: language.words.chatRegister.kept,
    description: fitting([...lines.map(escapeChat), ...status], LIST).text,
  })
}
