// Answer document to a Discord message: laid out within its limits; what does not fit goes into a file, whole. Pure.

import {
  type APIEmbed,
  type APIInteractionResponseCallbackData,
  type APIModalInteractionResponseCallbackData,
  MessageFlags,
} from 'discord.js'
import type { Answer } from '../../questions/answer.ts'
import type { QuestionName } from '../../questions/index.ts'
import type { Words } from '../../words/index.ts'
import { foremostLines, headlineOf, type Section, type SectionName, sectionsInShort, sectionsOf } from '../wording.ts'
import type { Rows } from './answer/keys.ts'
import { cut } from './cut.ts'

export interface ChatReply {
  readonly data: APIInteractionResponseCallbackData
  readonly files: ReadonlyArray<{ readonly name: string; readonly data: Buffer }>
  /** In place of a new message: the one whose key was pressed is changed, or taken away. */
  readonly way?: 'update' | 'remove'
  /** A form to be filled in, in place of a message. */
  readonly modal?: APIModalInteractionResponseCallbackData
}

const FIELD = 1024
const DESCRIPTION = 4096
const EMBED = 5800 // of 6000, with room for the line that points to the file
const colours: Readonly<Record<Answer['status'], number>> = {
  answered: 0x1d7a6b,
  incomplete: 0xb07a1a,
  refused: 0xa23b4a,
}

/**
 * Texts that came from people are shown as they were typed: no markup, no mentions, no links of theirs come alive. A bare address
 * becomes a link by `://` behind its first word; a colon that is escaped is shown as a colon and is none of that.
 */
export const escapeChat = (text: string): string => text.replace(/[\\`*_~|>[\]<@#]|:(?=\/\/)/g, '\\$&')

/** An address that is meant as a link: whole, in marks that keep it from unfolding into a preview. */
export const linkOf = (address: string): string => `<${address.replace(/[<>]/g, '')}>`

/** A pointer may end with its address, which the shop's keepers chose; what stands before it is text. */
const pointerLine = (line: string): string => {
  const [address] = /(?<=\s)https?:\/\/\S+$/.exec(line) ?? []
  return address === undefined ? escapeChat(line) : `${escapeChat(line.slice(0, -address.length))}${linkOf(address)}`
}

// Sentences beside each other run into one where a screen is narrow.
const listed: ReadonlySet<SectionName> = new Set(['cautions', 'faults', 'missing', 'alternatives', 'pointers'])
const bullet = (line: string, isListed: boolean): string =>
  isListed || line.startsWith('  ') ? `- ${line.trim()}` : line

const field = ({ name: section, title, lines }: Section): { name: string; value: string; isShort: boolean } => {
  const kept: string[] = []
  let length = 0
  const escaped = section === 'pointers' ? pointerLine : escapeChat
  for (const line of lines.map((one) => bullet(escaped(one), listed.has(section)))) {
    if (length + line.length + 1 > FIELD) break
    kept.push(line)
    length += line.length + 1
  }
  const value = kept.length > 0 ? kept.join('\n') : cut(escapeChat(lines[0] ?? ''), FIELD, '…')
  return { name: title, value, isShort: kept.length < lines.length }
}

export const plainText = (answer: Answer, sections: readonly Section[]): string =>
  [
    ...foremostLines(answer),
    headlineOf(answer),
    ...sections.flatMap(({ title, lines }) => ['', title, ...lines.map((line) => `  ${line}`)]),
  ].join('\n')

const layOut = (answer: Answer, words: Words): { embed: APIEmbed; whole: string | undefined } => {
  const sections = sectionsInShort(answer, words)
  const title = answer.question === null ? words.page.askTitle : words.questions[answer.question as QuestionName]
  const description = cut(
    [...foremostLines(answer).map(escapeChat), `**${escapeChat(headlineOf(answer))}**`].join('\n'),
    DESCRIPTION,
  )
  let left = EMBED - title.length - description.length
  let isCut = false
  const fields: Array<{ name: string; value: string }> = []
  for (const section of sections) {
    const { name, value, isShort } = field(section)
    isCut ||= isShort
    if (name.length + value.length > left) {
      isCut = true
      continue
    }
    left -= name.length + value.length
    fields.push({ name, value })
  }
  const embed: APIEmbed = {
    title,
    description,
    color: colours[answer.status],
    fields,
    ...(isCut ? { footer: { text: words.faces['whole-answer'] } } : {}),
  }
  return { embed, whole: isCut ? plainText(answer, sectionsOf(answer, words)) : undefined }
}

/** A figure ready to be sent, and the same in words for those who cannot see it. */
export interface Picture {
  readonly data: Buffer
  readonly alt: string
}

const ALT = 1024
const MESSAGE = 2000

/** Unless it is told otherwise, an answer is for everybody who was there, faults and gaps for the asker alone. */
export const renderReply = (
  answer: Answer,
  words: Words,
  picture?: Picture,
  { isPrivate = answer.status !== 'answered', rows = [] }: { readonly isPrivate?: boolean; readonly rows?: Rows } = {},
): ChatReply => {
  const { embed, whole } = layOut(answer, words)
  const files = [
    ...(picture ? [{ name: 'armlength.png', data: picture.data, description: picture.alt }] : []),
    ...(whole === undefined
      ? []
      : [{ name: 'armlength-answer.txt', data: Buffer.from(whole, 'utf8'), description: headlineOf(answer) }]),
  ]
  const attachments = files.map(({ name, description }, id) => ({
    id,
    filename: name,
    description: cut(description, ALT),
  }))
  return {
    data: {
      embeds: [picture ? { ...embed, image: { url: 'attachment://armlength.png' } } : embed],
      allowed_mentions: { parse: [] },
      ...(isPrivate ? { flags: MessageFlags.Ephemeral } : {}),
      ...(rows.length === 0 ? {} : { components: rows }),
      ...(files.length === 0 ? {} : { attachments }),
    },
    files: files.map(({ name, data }) => ({ name, data })),
  }
}

/** One calm line, to the asker alone. */
export const privateLine = (text: string): ChatReply => ({
  data: { content: cut(text, MESSAGE), allowed_mentions: { parse: [] }, flags: MessageFlags.Ephemeral },
  files: [],
})
