// Registration of the commands at the start: tried again where Discord is away, given up where it refuses.
import { DiscordAPIError } from 'discord.js'
import type { RegistrationPlan } from '../registration.ts'

const FIRST_RETRY_MS = 5000
const LONGEST_RETRY_MS = 300_000

export interface RegisteringParts {
  readonly register: () => Promise<RegistrationPlan>
  readonly log: {
    readonly info: (facts: object, message: string) => void
    readonly error: (facts: object, message: string) => void
  }
}

export interface Registering {
  readonly troubles: () => readonly string[]
  readonly stop: () => void
}

export const startRegistering = ({ register, log }: RegisteringParts): Registering => {
  let isDone = false
  let retry: NodeJS.Timeout | undefined
  const attempt = (wait: number): void => {
    register().then(
      (plan) => {
        isDone = true
        log.info({ ...plan }, 'chat commands are registered')
      },
      (error: unknown) => {
        log.error({ err: error }, 'chat commands could not be registered')
        if (error instanceof DiscordAPIError) return
        retry = setTimeout(attempt, wait, Math.min(wait * 2, LONGEST_RETRY_MS)).unref()
      },
    )
  }
  attempt(FIRST_RETRY_MS)
  return {
    troubles: () => (isDone ? [] : ['chat commands are not registered']),
    stop: () => clearTimeout(retry),
  }
}
