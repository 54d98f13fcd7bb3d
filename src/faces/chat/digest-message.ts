// The digest as a message to a channel, and what Discord's answer to it means for the week.
import { type APIEmbed, DiscordAPIError, type REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import type { Sent } from '../../desk/digest.ts'
import { type Digest, type DigestLine, digestParts, isQuiet } from '../../register/digest.ts'
import type { Words } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import { escapeChat } from './reply.ts'

const COLOUR = 0x1d7a6b
const FIELD = 1000
/** Discord takes a name of at most so many letters. */
const NONCE = 25

const lineOf = ({ tag, name, place, date }: DigestLine, told: string): string =>
  `**${escapeChat(tag)}** ${escapeChat(name)}${place === undefined ? '' : `, ${escapeChat(place)}`}, ${render(told, () => date)}`

const fieldOf = (lines: readonly string[], { chatRegister }: Words): string => {
  const kept: string[] = []
  let length = 0
  for (const line of lines) {
    if (length + line.length + 1 > FIELD - 80) break
    kept.push(line)
    length += line.length + 1
  }
  const left = lines.length - kept.length
  return left === 0 ? kept.join('\n') : [...kept, render(chatRegister.more, () => String(left))].join('\n')
}

export const digestEmbed = (digest: Digest, date: string, words: Words): APIEmbed => {
  const { digest: told } = words
  const fields = digestParts
    .filter((part) => digest[part].length > 0)
    .map((part) => ({
      name: `${told.parts[part]}: ${digest[part].length}`,
      value: fieldOf(
        digest[part].map((line) => lineOf(line, part === 'soon' || part === 'again' ? told.due : told.since)),
        words,
      ),
    }))
  return {
    title: render(told.title, () => date),
    color: COLOUR,
    ...(isQuiet(digest) ? { description: told.quiet } : { fields }),
  }
}

// No such channel, or no right to write there: that is mended by people, not by trying again.
const GONE: ReadonlySet<number> = new Set([401, 403, 404])

/** Sends under a name that the channel takes once: a second try after a lost answer is the same message. */
export const sendDigest = async (
  rest: REST,
  channel: string,
  embed: APIEmbed,
  name: string,
  failed: (error: unknown) => void,
): Promise<Sent> => {
  const body: RESTPostAPIChannelMessageJSONBody = {
    embeds: [embed],
    allowed_mentions: { parse: [] },
    nonce: name.slice(0, NONCE),
    enforce_nonce: true,
  }
  try {
    await rest.post(Routes.channelMessages(channel), { body })
    return 'sent'
  } catch (error) {
    failed(error)
    return error instanceof DiscordAPIError && GONE.has(error.status) ? 'gone' : 'later'
  }
}
