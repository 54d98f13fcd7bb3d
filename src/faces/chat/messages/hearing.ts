// Messages that ask the bot: each is taken once, held to the limits of who asks, answered by a reply, and counted by what became of
// it. What is refused is refused silently: a line to all for every message too many would be worse than none.
import { within } from '../../../core/in-time.ts'
import type { MessageEvent } from '../../../counters.ts'
import { createOnce } from '../once.ts'
import type { ChatReply } from '../reply.ts'
import type { Taking } from '../wire/taking.ts'
import { type Heard, readHeard } from './heard.ts'
import { type ReplyingParts, replyTo } from './replying.ts'
import type { Arrived } from './sending.ts'

/** What comes later, after a connection was lost for long, nobody waits for any more. */
const LONGEST_MS = 120_000
/** Refused requests bar an address: where the bot may not write, it tries again only after so long. */
const BARRED_MS = 60_000
const MOST_BARRED = 10_000
/** Discord takes about one message a second in a channel: a longer queue would answer late and hold others up. */
const MOST_WAITING = 5

export interface HearingParts extends Omit<ReplyingParts, 'failed'> {
  readonly isWithin: Taking['isWithin']
  readonly send: (heard: Heard, reply: ChatReply) => Promise<Arrived>
  readonly now: () => number
  readonly reference: () => string
  readonly countMessage: (event: MessageEvent) => void
  readonly log: { readonly error: (facts: object, message: string) => void }
}

export interface Hearing {
  /** Answers a message that asks the bot, whose id is `self`; undefined where it does not ask. Never rejects. */
  readonly hear: (raw: unknown, self: string | undefined) => Promise<MessageEvent | undefined>
  /** Hears no more; resolves once nothing is under way, or after so long. */
  readonly finish: (withinMs: number) => Promise<void>
}

const createBars = (now: () => number) => {
  const until = new Map<string, number>()
  return {
    isBarred: (channel: string): boolean => now() < (until.get(channel) ?? 0),
    bar: (channel: string): void => {
      until.delete(channel)
      until.set(channel, now() + BARRED_MS)
      for (const oldest of until.keys()) {
        if (until.size <= MOST_BARRED) break
        until.delete(oldest)
      }
    },
  }
}

export const createHearing = (parts: HearingParts): Hearing => {
  const { isWithin, send, now, log } = parts
  const admit = createOnce(now, LONGEST_MS)
  const bars = createBars(now)
  const waiting = new Map<string, number>()
  const underWay = new Set<Promise<unknown>>()
  let closed = false

  const failed = (error: unknown): string => {
    const reference = parts.reference()
    log.error({ err: error, reference }, 'a chat answer failed')
    return reference
  }

  const answer = async (heard: Heard): Promise<MessageEvent> => {
    const { event, reply } = await replyTo(heard, { ...parts, failed })
    if (!reply) return event
    const arrived = await send(heard, reply)
    if (arrived === 'forbidden') bars.bar(heard.channel)
    return arrived === 'sent' ? event : arrived
  }

  const outcomeOf = async (heard: Heard): Promise<MessageEvent> => {
    const { id, channel, user, server } = heard
    if (closed) return 'dropped'
    const admission = admit(id)
    if (admission !== 'new') return admission === 'unknown' ? 'failed' : admission
    if (bars.isBarred(channel)) return 'forbidden'
    if (!(await isWithin({ user, server }))) return 'refused-busy'
    const before = waiting.get(channel) ?? 0
    if (before >= MOST_WAITING) return 'refused-busy'
    waiting.set(channel, before + 1)
    try {
      return await answer(heard)
    } finally {
      const left = (waiting.get(channel) ?? 1) - 1
      if (left > 0) waiting.set(channel, left)
      else waiting.delete(channel)
    }
  }

  return {
    hear: async (raw, self) => {
      const heard = self === undefined ? undefined : readHeard(raw, self)
      if (!heard) return undefined
      const outcome = outcomeOf(heard).catch((error: unknown): MessageEvent => {
        log.error({ err: error }, 'a message failed')
        return 'failed'
      })
      underWay.add(outcome)
      const event = await outcome
      underWay.delete(outcome)
      parts.countMessage(event)
      return event
    },
    finish: async (withinMs) => {
      closed = true
      await within(Promise.all(underWay), withinMs)
    },
  }
}
