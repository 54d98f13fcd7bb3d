// What is said to a message that asks: the answer to its text as `/ask` gives it, a hint where there is no text, or nothing.
import type { MessageEvent } from '../../../counters.ts'
import { languageForText } from '../../../desk/text-language.ts'
import type { Answer } from '../../../questions/answer.ts'
import { carriedFor, hereAt, replyOf, type WorkParts, workOut } from '../answer/worked.ts'
import { calmLine } from '../handler.ts'
import { type ChatReply, privateLine } from '../reply.ts'
import type { Heard } from './heard.ts'
import type { ParentOf } from './parents.ts'
import type { Places } from './places.ts'

export interface ReplyingParts {
  readonly work: WorkParts
  readonly places: Pick<Places, 'localeOf'>
  readonly parentOf: ParentOf
  /** Told of bugs; gives the reference that the asker sees. */
  readonly failed: (error: unknown) => string
}

/** What is said, and what became of the message once that has arrived; without a reply nothing is said. */
export interface Replied {
  readonly event: MessageEvent
  readonly reply?: ChatReply
}

const holdsQuestion = ({ question, reading }: Answer): boolean =>
  question !== null || (reading?.alternatives.length ?? 0) > 0

export const replyTo = async (heard: Heard, { work, places, parentOf, failed }: ReplyingParts): Promise<Replied> => {
  const { text, user, server, channel, isMeant } = heard
  const language = languageForText(text, places.localeOf(server), work.desk.locale)
  try {
    // Without permissions told, a keeper is known by role alone.
    const member = { roles: [...heard.roles], permissions: '0' }
    const here = await hereAt({ user, guild_id: server, channel, member, parentOf }, work)
    // An answer to a message is seen by all who are there: in a quiet channel none is given.
    if (here.isQuiet) return { event: 'quiet' }
    if (text === '') return { event: 'hinted', reply: privateLine(language.words.chat.mentionHint) }
    const worked = await workOut(carriedFor({ text }, user, await work.likings.own(user)), work, here, language)
    // Who only replies to an answer may be talking about it.
    if (!isMeant && !holdsQuestion(worked.answer)) return { event: 'silent' }
    return { event: 'answered', reply: await replyOf(worked, work, here, language, 'open') }
  } catch (error) {
    return { event: 'failed', reply: privateLine(calmLine(error, language.words, failed)) }
  }
}
