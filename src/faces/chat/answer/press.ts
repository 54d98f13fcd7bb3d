// What is done with the keys of an answer: refined, shown to all, worked out aloud, saved, doubted, taken away.
// What others can see never changes under their eyes; it is only ever taken away, by who asked or who manages messages.

import {
  type APIInteraction,
  type APIMessage,
  type APIMessageComponentInteraction,
  type APIModalSubmitInteraction,
  ComponentType,
  InteractionType,
  MessageFlags,
  PermissionFlagsBits,
} from 'discord.js'
import { isQuestionName, type QuestionName } from '../../../questions/index.ts'
import type { Language } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { foremostLines, headlineOf, sectionsOf } from '../../wording.ts'
import { cut } from '../cut.ts'
import { madeAt } from '../once.ts'
import { fieldsOf } from '../parts.ts'
import { type ChatReply, escapeChat, privateLine } from '../reply.ts'
import { type Carried, carriedBy, verbOf } from './carried.ts'
import { editForm, saveForm, withFields, wrongForm } from './forms.ts'
import { inputsOf, isVerb, nextOf, ofWrench, turnedUnits, type Verb } from './keys.ts'
import { reportOf, type TellChannel } from './report.ts'
import { createReportLimit } from './report-limit.ts'
import type { SaveToWrench } from './save.ts'
import { type Here, hereOf, pictureOf, replyOf, type Worked, type WorkParts, workOut } from './worked.ts'

export interface PressParts extends WorkParts {
  readonly tell: TellChannel
  readonly save: SaveToWrench
  readonly now: () => number
}

/** How long the keys of an answer live. */
const KEYS_LIVE_MS = 7 * 86_400_000
/** Of the 2000 that a message may have. */
const MESSAGE = 1900

/** A key that was pressed, or the form that it opened, once it is known whose and of what. */
interface Pressed {
  readonly interaction: APIMessageComponentInteraction | APIModalSubmitInteraction
  readonly message: APIMessage
  readonly carried: Carried
  readonly here: Here
  readonly language: Language
}

const isPrivateMessage = ({ message }: Pressed): boolean => ((message.flags ?? 0) & MessageFlags.Ephemeral) !== 0

const mayRemove = ({ carried, here, interaction }: Pressed): boolean =>
  carried.asker === here.user ||
  (BigInt(interaction.member?.permissions ?? '0') &
    (PermissionFlagsBits.ManageMessages | PermissionFlagsBits.Administrator)) !==
    0n

const REMOVED: ChatReply = { data: {}, files: [], way: 'remove' }

const workingOf = ({ answer }: Worked, { words }: Language): ChatReply => {
  const sections = sectionsOf(answer, words).filter(({ name }) => ['results', 'given', 'working'].includes(name))
  const text = [
    ...foremostLines(answer),
    headlineOf(answer),
    ...sections.flatMap(({ title, lines }) => ['', title, ...lines.map((line) => `  ${line}`)]),
  ].join('\n')
  // A fence cannot be left from inside, so that what is in it is copied as it stands.
  const fenced = `\`\`\`\n${text.replaceAll('```', "'''")}\n\`\`\``
  if (fenced.length <= MESSAGE) return privateLine(fenced)
  const name = 'armlength-working.txt'
  return {
    data: {
      ...privateLine(words.chat.inFile).data,
      attachments: [{ id: 0, filename: name, description: cut(headlineOf(answer), 1024) }],
    },
    files: [{ name, data: Buffer.from(text, 'utf8') }],
  }
}

/** The reply to a key of an answer or to a form that one opened; undefined where it is neither. */
export type Press = (interaction: APIInteraction, language: Language) => Promise<ChatReply | undefined>

export const createPress = (parts: PressParts): Press => {
  const reportLimit = createReportLimit(parts.now)

  /** The answer anew: in place of a private message, else as one of its own for whoever pressed. */
  const anew = async (carried: Carried, press: Pressed, isSame: boolean): Promise<ChatReply> => {
    const worked = await workOut(carried, parts, press.here, press.language)
    const reply = await replyOf(worked, parts, press.here, press.language, 'me')
    if (!isSame || !isPrivateMessage(press)) return reply
    const { flags: _, ...data } = reply.data
    return {
      ...reply,
      way: 'update',
      data: { ...data, attachments: data.attachments ?? [], components: data.components ?? [] },
    }
  }

  const figureOf = async ({ answer }: Worked, { words }: Language): Promise<ChatReply> => {
    const picture = await pictureOf(answer, words, parts.pictures, 'light')
    const told = [...foremostLines(answer), headlineOf(answer)].map(escapeChat).join('\n')
    if (!picture) return privateLine(told)
    const name = 'armlength.png'
    return {
      data: {
        ...privateLine('').data,
        embeds: [{ description: cut(told, 4000), image: { url: `attachment://${name}` } }],
        attachments: [{ id: 0, filename: name, description: cut(picture.alt, 1024) }],
      },
      files: [{ name, data: picture.data }],
    }
  }

  const share = async (worked: Worked, { here, language }: Pressed): Promise<ChatReply> => {
    const reply = await replyOf(worked, parts, here, language, 'all')
    const content = render(language.words.chat.sharedBy, () => `<@${here.user}>`)
    return { ...reply, data: { ...reply.data, content } }
  }

  const nextAsked = (press: Pressed, worked: Worked): Carried | undefined => {
    const { interaction, carried, here } = press
    if (interaction.type !== InteractionType.MessageComponent) return undefined
    const { data } = interaction
    const [chosen = ''] = data.component_type === ComponentType.StringSelect ? data.values : []
    const [n = '', question] = chosen.split(':')
    const next = nextOf(worked.answer)[Number(n)]
    // After a newer program the list may be another: what was pressed must be what is meant.
    if (!next || next.question !== question) return undefined
    return { asker: here.user, question: next.question, raw: next.inputs, shown: carried.shown, own: carried.own }
  }

  const form = (press: Pressed, worked: Worked, verb: 'edit' | 'fill' | 'save' | 'wrong'): ChatReply => {
    const { words } = press.language
    const raw = inputsOf(worked.answer, worked.carried)
    const modal =
      verb === 'save'
        ? saveForm('save~', words)
        : verb === 'wrong'
          ? wrongForm('wrong~', words)
          : editForm(`${verb}~`, worked.answer.question as QuestionName, worked.answer, raw, words, verb === 'fill')
    return { data: {}, files: [], modal }
  }

  const onKey = async (verb: Verb, press: Pressed): Promise<ChatReply> => {
    const { carried, here, language } = press
    const { words } = language
    if (verb === 'gone') return mayRemove(press) ? REMOVED : privateLine(words.chat.formNotYours)
    const worked = await workOut(carried, parts, here, language)
    if (verb === 'share') return here.isQuiet ? privateLine(words.chat.formOld) : share(worked, press)
    if (verb === 'work') return workingOf(worked, language)
    if (verb === 'pic') return figureOf(worked, language)
    if (verb === 'units') {
      const shown = turnedUnits(worked.answer, carried.shown)
      return anew({ ...worked.carried, asker: here.user, shown }, press, true)
    }
    if (verb === 'next') {
      const next = nextAsked(press, worked)
      if (!next) return privateLine(words.chat.formOld)
      return anew(next, press, next.question === worked.answer.question)
    }
    if (worked.answer.question === null && (verb === 'edit' || verb === 'fill')) return privateLine(words.chat.formOld)
    return form(press, worked, verb)
  }

  const onForm = async (verb: Verb, press: Pressed): Promise<ChatReply> => {
    const { interaction, carried, here, language, message } = press
    const { words } = language
    if (interaction.type !== InteractionType.ModalSubmit) return privateLine(words.chat.formOld)
    const fields = fieldsOf(interaction.data.components)
    const typed = new Map(fields)
    const worked = await workOut(carried, parts, here, language)
    const raw = inputsOf(worked.answer, worked.carried)
    if (verb === 'save') return parts.save(typed.get('wrench') ?? '', ofWrench(raw), interaction, language)
    if (verb === 'wrong') {
      const { reports } = here.server
      const { guild_id: server, channel } = interaction
      if (reports === undefined || server === undefined) return privateLine(words.chat.wrong.none)
      const reporter = { user: here.user, server, message: message.id }
      const admitted = reportLimit.admit(reporter)
      if (admitted !== 'open') return privateLine(words.chat.wrong[admitted])
      const doubt = { answer: worked.answer, what: typed.get('what') ?? '', server, channel: channel?.id ?? '' }
      const isTold = await parts.tell(reports, reportOf({ ...doubt, message: message.id }, words))
      if (!isTold) reportLimit.giveBack(reporter)
      return privateLine(isTold ? words.chat.wrong.sent : words.chat.wrong.away)
    }
    const { question } = worked.answer
    if (question === null || !isQuestionName(question)) return privateLine(words.chat.formOld)
    const { asker: _, ...rest } = worked.carried
    return anew({ ...rest, asker: here.user, question, raw: withFields(raw, fields) }, press, true)
  }

  return async (interaction, language) => {
    const isForm = interaction.type === InteractionType.ModalSubmit
    if (!isForm && interaction.type !== InteractionType.MessageComponent) return undefined
    const verb = verbOf(interaction.data.custom_id)
    if (!isVerb(verb)) return undefined
    const { message } = interaction
    const carried = message && carriedBy(message.components)
    const age = parts.now() - (madeAt(message?.id ?? '') ?? 0)
    if (!message || !carried || age > KEYS_LIVE_MS) return privateLine(language.words.chat.formOld)
    const press: Pressed = { interaction, message, carried, here: await hereOf(interaction, parts), language }
    return isForm ? onForm(verb, press) : onKey(verb, press)
  }
}
