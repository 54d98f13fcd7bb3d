// Interaction JSON in, reply out. No socket, no REST: the gateway and a test are the same thing with another callback.
import {
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  type APIMessageApplicationCommandInteraction,
  ApplicationCommandType,
  InteractionType,
} from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import { Outage } from '../../core/outage.ts'
import { askKnowing, type Desk } from '../../desk/desk.ts'
import { figureOf } from '../../figures/index.ts'
import type { Answer } from '../../questions/answer.ts'
import { languageFor, type Words } from '../../words/index.ts'
import type { Pictures } from '../pictures.ts'
import { type ChatAsk, type ChatText, readCommand, readMessage } from './reading.ts'
import type { RegisterDoor } from './register/door.ts'
import { type ChatReply, type Picture, privateLine, renderReply } from './reply.ts'
import { handleSettings, type SettingsParts } from './settings.ts'

export interface HandlerParts {
  readonly desk: Desk
  readonly topics: readonly Topic[]
  readonly pictures: Pictures
  /** Absent where no register is kept. */
  readonly register?: RegisterDoor | undefined
  readonly settings?: SettingsParts | undefined
  /** Told of bugs; gives the reference that the asker sees. */
  readonly failed: (error: unknown) => string
}

const isSlashCommand = (interaction: APIInteraction): interaction is APIChatInputApplicationCommandInteraction =>
  interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.ChatInput

const isMessageCommand = (interaction: APIInteraction): interaction is APIMessageApplicationCommandInteraction =>
  interaction.type === InteractionType.ApplicationCommand && interaction.data.type === ApplicationCommandType.Message

const askOf = (interaction: APIInteraction, topics: readonly Topic[]): ChatAsk | ChatText | undefined => {
  if (isMessageCommand(interaction)) return readMessage(interaction.data)
  return isSlashCommand(interaction) ? readCommand(interaction.data, topics) : undefined
}

/** Who asked, for fair limits: an id of a user and of the server it was asked in. */
export const askerOf = (interaction: APIInteraction): { user: string; server: string | undefined } => ({
  user: interaction.member?.user.id ?? interaction.user?.id ?? 'unknown',
  server: interaction.guild_id,
})

/** The language of whoever reads the answer: the asker's own. */
export const languageOf = (interaction: APIInteraction, desk: Desk) =>
  languageFor('locale' in interaction ? interaction.locale : undefined, desk.locale)

// A picture that is late or fails is left out: the answer in words does not wait for it.
const PICTURE_WAIT_MS = 1200

const pictureOf = async (answer: Answer, words: Words, pictures: Pictures): Promise<Picture | undefined> => {
  const figure = figureOf(answer, words, 'dark')
  if (!figure) return undefined
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), PICTURE_WAIT_MS)
  })
  const drawn = pictures.png(figure.svg).catch(() => undefined)
  const data = await Promise.race([drawn, late])
  clearTimeout(timer)
  return data && { data, alt: figure.alt }
}

/** The reply to an interaction; undefined where it is not a command of ours. A bug becomes one calm line. */
export const handleInteraction = async (
  interaction: APIInteraction,
  { desk, topics, pictures, register, settings, failed }: HandlerParts,
): Promise<ChatReply | undefined> => {
  const language = languageOf(interaction, desk)
  const { words, locale } = language
  try {
    const ours = await register?.handle(interaction, topics, language)
    if (ours) return ours
    const set = settings && (await handleSettings(interaction, settings, language))
    if (set) return set
    const ask = askOf(interaction, topics)
    if (!ask) return undefined
    const asker = { door: 'chat', locale } as const
    const answer = 'text' in ask ? desk.askText(ask.text, asker) : await askKnowing(desk, ask.question, ask.raw, asker)
    return renderReply(answer, words, await pictureOf(answer, words, pictures))
  } catch (error) {
    const text = error instanceof Outage ? words.faces['register-away'] : words.faces.outage
    return privateLine(text.replace('{reference}', failed(error)))
  }
}

export const busyReply = (interaction: APIInteraction, desk: Desk): ChatReply =>
  privateLine(languageOf(interaction, desk).words.faces['too-fast'])
