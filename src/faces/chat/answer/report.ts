// An answer that looks wrong to somebody, as a message to those who look after the desk: what was asked, what was said, what is doubted.

import type { APIEmbed, RESTPostAPIChannelMessageJSONBody } from 'discord.js'
import type { Answer } from '../../../questions/answer.ts'
import type { Words } from '../../../words/index.ts'
import { givenLine, headlineOf } from '../../wording.ts'
import { cut } from '../cut.ts'
import { escapeChat } from '../reply.ts'

/** Writes into a channel; false where it cannot be written to. */
export type TellChannel = (channel: string, body: RESTPostAPIChannelMessageJSONBody) => Promise<boolean>

const COLOUR = 0xa23b4a
const FIELD = 1000

export interface Doubted {
  readonly answer: Answer
  readonly what: string
  readonly server: string
  readonly channel: string
  readonly message: string
}

export const reportOf = (
  { answer, what, server, channel, message }: Doubted,
  words: Words,
): RESTPostAPIChannelMessageJSONBody => {
  const { wrong } = words.chat
  const field = (name: string, value: string) => ({ name, value: cut(value, FIELD, '…') || '…' })
  const asked = answer.given.map((one) => escapeChat(givenLine(words, one))).join('\n')
  const embed: APIEmbed = {
    title: wrong.report,
    description: cut(escapeChat(what), 4000, '…'),
    color: COLOUR,
    fields: [
      field(wrong.asked, `${answer.question ?? ''}\n${asked}`),
      field(wrong.said, escapeChat(headlineOf(answer))),
      field(wrong.where, `https://discord.com/channels/${server}/${channel}/${message}`),
    ],
    footer: { text: `${answer.versions.engine} / ${answer.versions.data}` },
  }
  return { embeds: [embed], allowed_mentions: { parse: [] } }
}
