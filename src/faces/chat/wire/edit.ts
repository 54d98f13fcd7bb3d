// What follows the first response, by the interaction's own token: the answer put in the place of what was promised, and messages
// taken away. A token lives 15 min; afterwards nothing can be said any more, and nothing is.
import { DiscordAPIError, MessageFlags, RateLimitError, type REST, Routes } from 'discord.js'
import type { ChatReply } from '../reply.ts'
import { ageOf, type Known } from './first-response.ts'

const TOKEN_MS = 15 * 60_000
const MARGIN_MS = 10_000
const PAUSES_MS = [300, 1000, 3000] as const
const TOKEN_EXPIRED = 50027
// The deferral and what follows it go different ways: what follows may be there first.
const NOT_YET: ReadonlySet<unknown> = new Set([10008, 10015])

export type Edited = 'answered-late' | 'expired' | 'failed'

export interface EditParts {
  readonly rest: REST
  readonly now: () => number
  readonly told: (edited: Edited, error: unknown) => void
}

export interface Edits {
  /** Puts a reply where one was promised. */
  readonly fillIn: (interaction: Known, reply: ChatReply) => Promise<Edited>
  /** Takes away the message that the interaction's first response is, or whose key was pressed. */
  readonly takeAway: (interaction: Known) => Promise<Edited>
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

// Private or not was fixed by the first response.
const withoutPrivacy = ({ flags, ...data }: ChatReply['data']): object => {
  const rest = (flags ?? 0) & ~MessageFlags.Ephemeral
  return rest === 0 ? data : { ...data, flags: rest }
}

const waitFor = (error: unknown, tries: number): number | undefined => {
  if (error instanceof RateLimitError) {
    // Where one of both is not said, the library has nonsense for it.
    const waits = [error.timeToReset, error.retryAfter, PAUSES_MS[0]].filter((ms) => Number.isFinite(ms))
    return Math.max(...waits)
  }
  // Anything else that Discord says of it, it will say again.
  if (error instanceof DiscordAPIError && !NOT_YET.has(error.code)) return undefined
  return PAUSES_MS[tries]
}

export const createEdits = ({ rest, now, told }: EditParts): Edits => {
  const attempt = async (interaction: Known, run: () => Promise<unknown>): Promise<Edited> => {
    const left = (): number => TOKEN_MS - MARGIN_MS - ageOf(interaction, now())
    for (let tries = 0; left() > 0; tries++) {
      try {
        await run()
        return 'answered-late'
      } catch (error) {
        const isExpired = error instanceof DiscordAPIError && error.code === TOKEN_EXPIRED
        const wait = isExpired || tries >= PAUSES_MS.length ? undefined : waitFor(error, tries)
        if (wait === undefined || wait >= left()) {
          const edited = isExpired || error instanceof RateLimitError ? 'expired' : 'failed'
          told(edited, error)
          return edited
        }
        await pause(wait)
      }
    }
    return 'expired'
  }
  const original = ({ application_id: id, token }: Known) => Routes.webhookMessage(id, token, '@original')
  return {
    fillIn: (interaction, reply) =>
      attempt(interaction, () =>
        rest.patch(original(interaction), {
          auth: false,
          body: withoutPrivacy(reply.data),
          files: reply.files.map(({ name, data }) => ({ name, data })),
        }),
      ),
    takeAway: (interaction) => attempt(interaction, () => rest.delete(original(interaction), { auth: false })),
  }
}
