// What every transport does with an interaction: takes it once, holds it to the limits, has it answered in time, and counts what
// became of it, once. At the end it takes no more and lets those under way finish.

import type { APIInteraction } from 'discord.js'
import { within } from '../../../core/in-time.ts'
import type { ChatEvent } from '../../../counters.ts'
import type { Desk } from '../../../desk/desk.ts'
import { askerOf } from '../asker.ts'
import { busyReply, type HandlerParts, handleInteraction, languageOf } from '../handler.ts'
import { createLimits, type Limits } from '../limits.ts'
import { isTyping, type OfferParts, offersFor } from '../offers.ts'
import { createOnce } from '../once.ts'
import { privateLine } from '../reply.ts'
import { answerInTime, offersInTime } from './answering.ts'
import type { Edits } from './edit.ts'
import { type Respond, responseOf, responseOfOffers } from './first-response.ts'

export interface TakingParts {
  readonly desk: Desk
  readonly handling: Omit<HandlerParts, 'failed'>
  readonly offers: OfferParts
  readonly edits: Edits
  readonly now: () => number
  readonly reference: () => string
  readonly count: (event: ChatEvent, shard?: number) => void
  readonly log: { readonly error: (facts: object, message: string) => void }
}

export interface Taking {
  /** Answers an interaction by `respond`, or does not call it. What became of it is counted and told; never rejects. */
  readonly take: (interaction: APIInteraction, respond: Respond, shard?: number) => Promise<ChatEvent>
  /** Whether somebody may ask now; messages are held to the same limits. */
  readonly isWithin: Limits['admit']
  /** Takes no more; resolves once nothing is under way, or after so long. */
  readonly finish: (withinMs: number) => Promise<void>
}

export const createTaking = (parts: TakingParts): Taking => {
  const { desk, handling, offers, edits, now, log } = parts
  const limits = createLimits(now)
  const admit = createOnce(now)
  const underWay = new Set<Promise<unknown>>()
  let closed = false

  const answer = async (interaction: APIInteraction, respond: Respond): Promise<ChatEvent> => {
    let isBug = false
    const failed = (error: unknown): string => {
      isBug = true
      const reference = parts.reference()
      log.error({ err: error, reference }, 'a chat answer failed')
      return reference
    }
    const work = handleInteraction(interaction, { ...handling, failed })
    // It is waited for below; should it fail first, that is told there.
    work.catch(() => {})
    const instead = () => privateLine(languageOf(interaction, desk).words.chat.formOld)
    const event = await answerInTime(interaction, work, { respond, edits, now, instead })
    return isBug ? 'failed' : event
  }

  const offer = async (interaction: APIInteraction, respond: Respond): Promise<ChatEvent> => {
    if (!isTyping(interaction)) return 'unknown'
    const none = { choices: [] }
    const found = await offersInTime(offersFor(interaction, handling.topics, offers), interaction, now(), none)
    const delivery = await respond(responseOfOffers(found))
    return delivery === 'answered' ? 'offered' : delivery
  }

  const outcomeOf = async (interaction: APIInteraction, respond: Respond): Promise<ChatEvent> => {
    if (closed) return 'dropped'
    const admission = admit(interaction.id)
    if (admission !== 'new') return admission
    // Every letter typed comes here; Discord holds them back itself, and they use up nobody's asks.
    if (isTyping(interaction)) return offer(interaction, respond)
    const isWithin = limits.admit(askerOf(interaction))
    if (isWithin === true || (await isWithin)) return answer(interaction, respond)
    await respond(responseOf(busyReply(interaction, desk)))
    return 'refused-busy'
  }

  return {
    take: async (interaction, respond, shard) => {
      const outcome = outcomeOf(interaction, respond).catch((error: unknown): ChatEvent => {
        log.error({ err: error }, 'an interaction failed')
        return 'failed'
      })
      underWay.add(outcome)
      const event = await outcome
      underWay.delete(outcome)
      parts.count(event, shard)
      return event
    },
    isWithin: limits.admit,
    finish: async (withinMs) => {
      closed = true
      await within(Promise.all(underWay), withinMs)
      await limits.close()
    },
  }
}
