// The first response to an interaction, whichever way it leaves: a callback over REST, or the reply to Discord's own request.
import {
  type APICommandAutocompleteInteractionResponseCallbackData,
  type APIInteraction,
  InteractionResponseType,
  MessageFlags,
} from 'discord.js'
import { ageAt, madeAt } from '../once.ts'
import type { ChatReply } from '../reply.ts'

export interface FirstResponse {
  readonly body: object
  readonly files: ChatReply['files']
}

/** What became of it, as far as Discord says. */
export type Delivery = 'answered' | 'late' | 'already-answered' | 'timed-out' | 'rate-limited' | 'failed'

/** Sends the first response, once. Never throws for what Discord says of it. */
export type Respond = (response: FirstResponse) => Promise<Delivery>

/** What is known of an interaction wherever it came from. */
export type Known = Pick<APIInteraction, 'id' | 'token' | 'application_id'>

/** How old an interaction is; none is older than nothing, whatever the clocks say. */
export const ageOf = ({ id }: Pick<APIInteraction, 'id'>, now: number): number => ageAt(madeAt(id) ?? now, now)

const bodyOf = ({ data, modal, way }: ChatReply): object => {
  if (modal) return { type: InteractionResponseType.Modal, data: modal }
  // What is taken away is acknowledged first, and then deleted.
  if (way === 'remove') return { type: InteractionResponseType.DeferredMessageUpdate }
  return {
    type: way === 'update' ? InteractionResponseType.UpdateMessage : InteractionResponseType.ChannelMessageWithSource,
    data,
  }
}

export const responseOf = (reply: ChatReply): FirstResponse => ({ body: bodyOf(reply), files: reply.files })

/** A promise to the asker alone: whether others see an answer is fixed here, and a key shows it to them later. */
export const deferral: FirstResponse = {
  body: { type: InteractionResponseType.DeferredChannelMessageWithSource, data: { flags: MessageFlags.Ephemeral } },
  files: [],
}

export const responseOfOffers = (data: APICommandAutocompleteInteractionResponseCallbackData): FirstResponse => ({
  body: { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data },
  files: [],
})
