// An answer in chat: worked out by the desk with what its asker and the server have set, drawn, and laid out with its keys.
import type { APIInteraction } from 'discord.js'
import { type Asker, askKnowing, askTextKnowing, type Desk } from '../../../desk/desk.ts'
import { figureOf } from '../../../figures/index.ts'
import type { Answer } from '../../../questions/answer.ts'
import { isQuestionName, type QuestionName, questions } from '../../../questions/index.ts'
import type { Language, Words } from '../../../words/index.ts'
import type { Pictures } from '../../pictures.ts'
import { inputsTaken } from '../../taken.ts'
import { askerOf } from '../asker.ts'
import type { Likings, OwnSettings, ServerSettings } from '../liking.ts'
import { pictureFrom } from '../picture.ts'
import { type MemberThere, roleIn, type WriterRoles } from '../register/rights.ts'
import { type ChatReply, type Picture, renderReply } from '../reply.ts'
import { type Carried, idsFor } from './carried.ts'
import { keysUnder, type Place, verbs } from './keys.ts'

export interface WorkParts {
  readonly desk: Desk
  readonly pictures: Pictures
  readonly likings: Likings
  readonly roles: WriterRoles
}

/** Whoever asks or presses, and where. */
export interface Here {
  readonly user: string
  readonly server: ServerSettings
  readonly isServer: boolean
  readonly isQuiet: boolean
  readonly mayKeep: boolean
}

export interface Worked {
  readonly answer: Answer
  readonly carried: Carried
}

/** What a wrench of one's own lends; where any of it was typed, another wrench is meant. */
const lentByWrench = ['lever', 'pivot', 'wrench-type', 'tolerance', 'mark', 'least', 'most', 'iso-type', 'iso-class']

const takesOwnWrench = (question: QuestionName, raw: Carried['raw']): boolean =>
  questions[question].inputs['wrench']?.kind === 'wrench' && !['wrench', ...lentByWrench].some((name) => name in raw)

type Where = MemberThere & {
  readonly user: string
  readonly channel: string | undefined
  /** Of what the channel is a thread; undefined where nobody can say. */
  readonly parentOf: (channel: string) => Promise<string | null | undefined>
}

/** What holds for a channel holds for its threads; where it cannot be known it is held as well. */
const isQuietAt = async ({ channel, parentOf }: Where, { quiet }: ServerSettings): Promise<boolean> => {
  if (channel === undefined || quiet.length === 0) return false
  if (quiet.includes(channel)) return true
  const parent = await parentOf(channel)
  return parent === undefined || (parent !== null && quiet.includes(parent))
}

/** Whoever asks by an interaction or by a message, and where. */
export const hereAt = async (where: Where, { likings, roles }: WorkParts): Promise<Here> => {
  const { guild_id: guild, user } = where
  const server = await likings.server(guild)
  return {
    user,
    server,
    isServer: guild !== undefined,
    isQuiet: await isQuietAt(where, server),
    mayKeep: roleIn(where, roles) === 'keeper',
  }
}

export const hereOf = (interaction: APIInteraction, parts: WorkParts): Promise<Here> => {
  const { member, guild_id, channel, authorizing_integration_owners } = interaction
  const { parent_id: parent } = (channel ?? {}) as { readonly parent_id?: unknown }
  const parentOf = async (): Promise<string | null> => (typeof parent === 'string' ? parent : null)
  const where = { member, guild_id, authorizing_integration_owners, user: askerOf(interaction).user }
  return hereAt({ ...where, channel: channel?.id, parentOf }, parts)
}

/** What a command or a text asks, with what its asker has set for themselves. */
export const carriedFor = (
  ask: { readonly question: QuestionName; readonly raw: Carried['raw'] } | { readonly text: unknown },
  user: string,
  own: OwnSettings,
): Carried =>
  'text' in ask
    ? { asker: user, question: null, raw: { text: ask.text }, own }
    : { asker: user, question: ask.question, raw: ask.raw, own }

export const workOut = async (
  carried: Carried,
  { desk }: WorkParts,
  { server }: Here,
  { locale }: Language,
): Promise<Worked> => {
  const { question, raw, shown, own = {} } = carried
  const asker: Asker = { door: 'chat', locale, own: own.units, prefers: server.units, shown }
  if (question === null) {
    const answer = await askTextKnowing(desk, raw['text'], asker)
    const isShort = idsFor(carried, verbs) !== undefined
    // A long post is carried as what was taken from it.
    return {
      answer,
      carried:
        isShort || answer.question === null
          ? carried
          : { ...carried, question: answer.question, raw: inputsTaken(answer) },
    }
  }
  if (!isQuestionName(question)) throw new Error('bug: a key carries a question that is none')
  if (own.wrench === undefined || !takesOwnWrench(question, raw))
    return { answer: await askKnowing(desk, question, raw, asker), carried }
  const whole = { ...raw, wrench: own.wrench }
  return { answer: await askKnowing(desk, question, whole, { ...asker, assumed: ['wrench'] }), carried }
}

export const pictureOf = (
  answer: Answer,
  words: Words,
  pictures: Pictures,
  theme: 'dark' | 'light' = 'dark',
): Promise<Picture | undefined> => pictureFrom(pictures, figureOf(answer, words, theme))

/**
 * The message of an answer, with its keys. Whatever is no answer is for the asker alone, and so is all in a quiet channel; but
 * `open` is for all who are there whatever it is, since what answers a message can be nothing else.
 */
export const replyOf = async (
  { answer, carried }: Worked,
  { pictures }: WorkParts,
  here: Here,
  { words }: Language,
  seen: 'all' | 'me' | 'open',
): Promise<ChatReply> => {
  const isPrivate = seen !== 'open' && (seen === 'me' || here.isQuiet || answer.status !== 'answered')
  const place: Place = {
    isPrivate,
    isQuiet: here.isQuiet,
    mayKeep: here.mayKeep,
    hasReports: here.server.reports !== undefined,
  }
  const picture = await pictureOf(answer, words, pictures)
  const hasFigure = picture !== undefined
  return renderReply(answer, words, picture, { isPrivate, rows: keysUnder(answer, carried, words, place, hasFigure) })
}
