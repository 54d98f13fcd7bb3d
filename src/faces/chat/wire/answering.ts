// One interaction and the reply that is being worked out for it: in time, in the first response itself; late, promised to the asker
// alone and put in afterwards. Says what became of it.
import type { APIInteraction } from 'discord.js'
import { LATE, within } from '../../../core/in-time.ts'
import type { ChatEvent } from '../../../counters.ts'
import type { ChatReply } from '../reply.ts'
import type { Edits } from './edit.ts'
import { ageOf, deferral, type Respond, responseOf } from './first-response.ts'

/** How old an interaction may become before its answer is promised. */
const PROMISED_AT_MS = 1500
const SHORTEST_MS = 100

/** How long an interaction may still be worked on before something must be said. */
export const patienceFor = (interaction: APIInteraction, now: number): number =>
  Math.max(PROMISED_AT_MS - ageOf(interaction, now), SHORTEST_MS)

export interface AnswerParts {
  readonly respond: Respond
  readonly edits: Edits
  readonly now: () => number
  /** In place of a form, or of taking a message away, neither of which can be done once an answer was promised. */
  readonly instead: (interaction: APIInteraction) => ChatReply
}

const putIn = async (
  interaction: APIInteraction,
  reply: ChatReply | undefined,
  { edits, instead }: AnswerParts,
): Promise<ChatEvent> => {
  // Nothing to say after all: the promise is taken back.
  if (!reply) return (await edits.takeAway(interaction)) === 'answered-late' ? 'unknown' : 'failed'
  return edits.fillIn(interaction, reply.modal || reply.way === 'remove' ? instead(interaction) : reply)
}

/** `undefined` as a reply means that it is none of ours, and nothing is said. */
export const answerInTime = async (
  interaction: APIInteraction,
  work: Promise<ChatReply | undefined>,
  parts: AnswerParts,
): Promise<ChatEvent> => {
  const { respond, edits, now } = parts
  const reply = await within(work, patienceFor(interaction, now()))
  if (reply === undefined) return 'unknown'
  if (reply !== LATE) {
    const delivery = await respond(responseOf(reply))
    if (delivery !== 'answered' || reply.way !== 'remove') return delivery
    return (await edits.takeAway(interaction)) === 'answered-late' ? 'answered' : 'failed'
  }
  const promised = await respond(deferral)
  // One that timed out may have been taken; the edit will tell.
  if (promised !== 'answered' && promised !== 'timed-out') {
    await work
    return promised
  }
  return putIn(interaction, await work, parts)
}

/** Offers while somebody types are worth nothing later: there are none then. */
export const offersInTime = async <T>(
  work: Promise<T>,
  interaction: APIInteraction,
  now: number,
  none: T,
): Promise<T> => {
  const offers = await within(work, patienceFor(interaction, now))
  return offers === LATE ? none : offers
}
