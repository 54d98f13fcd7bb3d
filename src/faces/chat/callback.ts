// The first response to an interaction, in the callback itself, well within the 3 s that Discord waits. One try that counts:
// what Discord says of it is sorted into what became of the interaction, and never thrown.
import {
  type APICommandAutocompleteInteractionResponseCallbackData,
  type APIInteraction,
  DiscordAPIError,
  InteractionResponseType,
  type REST,
  Routes,
} from 'discord.js'
import { FIRST_RESPONSE_MS, madeAt } from './once.ts'
import type { ChatReply } from './reply.ts'

export type Delivery = 'answered' | 'late' | 'already-answered' | 'timed-out' | 'failed'

/** Left for Discord's own side of the way, and for whoever waits behind. */
const MARGIN_MS = 1000
const UNKNOWN_INTERACTION = 10062
const ALREADY_ACKNOWLEDGED = 40060

const sort = (error: unknown): Delivery => {
  if (error instanceof DiscordAPIError && error.code === UNKNOWN_INTERACTION) return 'late'
  if (error instanceof DiscordAPIError && error.code === ALREADY_ACKNOWLEDGED) return 'already-answered'
  return error instanceof Error && (error.name === 'AbortError' || error.name === 'TimeoutError')
    ? 'timed-out'
    : 'failed'
}

/** Offers while somebody types; they are worth nothing later, so one that fails is let go. */
export const deliverOffers = async (
  rest: REST,
  { id, token }: Pick<APIInteraction, 'id' | 'token'>,
  data: APICommandAutocompleteInteractionResponseCallbackData,
): Promise<void> => {
  const body = { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data }
  const signal = AbortSignal.timeout(FIRST_RESPONSE_MS - MARGIN_MS)
  await rest.post(Routes.interactionCallback(id, token), { auth: false, body, signal }).catch(() => {})
}

const bodyOf = ({ data, modal, way }: ChatReply): object => {
  if (modal) return { type: InteractionResponseType.Modal, data: modal }
  // What is taken away is acknowledged first, and then deleted: see `takeAway`.
  if (way === 'remove') return { type: InteractionResponseType.DeferredMessageUpdate }
  return {
    type: way === 'update' ? InteractionResponseType.UpdateMessage : InteractionResponseType.ChannelMessageWithSource,
    data,
  }
}

/** Deletes the message whose key was pressed. The interaction was acknowledged before. */
const takeAway = (rest: REST, { application_id: id, token }: Pick<APIInteraction, 'application_id' | 'token'>) =>
  rest.delete(Routes.webhookMessage(id, token, '@original'), { auth: false })

/** Sends a reply. `told` gets the error behind anything but `answered`. */
export const deliver = async (
  rest: REST,
  interaction: Pick<APIInteraction, 'id' | 'token' | 'application_id'>,
  reply: ChatReply,
  now: number,
  told: (delivery: Delivery, error: unknown) => void,
): Promise<Delivery> => {
  const age = now - (madeAt(interaction.id) ?? now)
  const left = Math.max(FIRST_RESPONSE_MS - MARGIN_MS - Math.max(age, 0), 100)
  const signal = AbortSignal.timeout(left)
  const post = rest.post(Routes.interactionCallback(interaction.id, interaction.token), {
    auth: false,
    body: bodyOf(reply),
    files: reply.files.map(({ name, data }) => ({ name, data })),
    signal,
  })
  // The client may wait out a rate limit behind our back; the signal ends that wait for us as well.
  const timeUp = new Promise<never>((_, reject) => {
    signal.addEventListener('abort', () => reject(signal.reason), { once: true })
  })
  try {
    await Promise.race([post, timeUp])
    if (reply.way === 'remove') await takeAway(rest, interaction)
    return 'answered'
  } catch (error) {
    post.catch(() => {})
    const delivery = sort(error)
    told(delivery, error)
    return delivery
  } finally {
    timeUp.catch(() => {})
  }
}
