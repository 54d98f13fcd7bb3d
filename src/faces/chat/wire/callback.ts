// The first response as a callback over REST, well within the 3 s that Discord waits. One try that counts: what Discord says of it
// is sorted into what became of the interaction, and never thrown.
import { DiscordAPIError, RateLimitError, type REST, Routes } from 'discord.js'
import { neverBack } from '../../../core/never-back.ts'
import { FIRST_RESPONSE_MS } from '../once.ts'
import { ageOf, type Delivery, type FirstResponse, type Known, type Respond } from './first-response.ts'
import { formOf } from './form.ts'

/** Left for Discord's own side of the way, and for whoever waits behind. */
const MARGIN_MS = 1000
const SHORTEST_MS = 100
const UNKNOWN_INTERACTION = 10062
const ALREADY_ACKNOWLEDGED = 40060
// Ten thousand refused requests in ten minutes bar an address: while all of it is told to wait, nothing is sent at all.
const LONGEST_HUSH_MS = 600_000

const sort = (error: unknown): Delivery => {
  if (error instanceof RateLimitError) return 'rate-limited'
  if (error instanceof DiscordAPIError && error.code === UNKNOWN_INTERACTION) return 'late'
  if (error instanceof DiscordAPIError && error.code === ALREADY_ACKNOWLEDGED) return 'already-answered'
  return error instanceof Error && (error.name === 'AbortError' || error.name === 'TimeoutError')
    ? 'timed-out'
    : 'failed'
}

export interface CallbackParts {
  readonly rest: REST
  readonly now: () => number
  /** Gets the error behind anything but `answered`. */
  readonly told: (delivery: Delivery, error: unknown) => void
}

export interface Callbacks {
  readonly respondTo: (interaction: Known) => Respond
  /** True while Discord wants nothing at all from this address. */
  readonly isHushed: () => boolean
}

const pause = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, ms)
    signal.addEventListener(
      'abort',
      () => {
        clearTimeout(timer)
        reject(signal.reason)
      },
      { once: true },
    )
  })

export const createCallbacks = ({ rest, now, told }: CallbackParts): Callbacks => {
  const steady = neverBack(now)
  let hushedUntil = 0

  const send = async (interaction: Known, response: FirstResponse, ends: number): Promise<void> => {
    const signal = AbortSignal.timeout(Math.max(ends - steady(), 0))
    const form = response.files.length > 0 ? formOf(response) : undefined
    const sent = form
      ? { body: form.body, passThroughBody: true, headers: { 'content-type': form.type } }
      : { body: response.body }
    const post = (): Promise<unknown> =>
      rest.post(Routes.interactionCallback(interaction.id, interaction.token), {
        auth: false,
        ...sent,
        signal,
      })
    try {
      await post()
    } catch (error) {
      if (!(error instanceof RateLimitError)) throw error
      const wait = Number.isFinite(error.timeToReset) ? Math.max(error.timeToReset, 0) : 0
      if (error.global) hushedUntil = steady() + Math.min(wait, LONGEST_HUSH_MS)
      // Waited out once, where there is time and Discord says how long.
      if (!(wait > 0 && steady() + wait < ends)) throw error
      await pause(wait, signal)
      await post()
    }
  }

  return {
    isHushed: () => steady() < hushedUntil,
    respondTo: (interaction) => async (response) => {
      const time = steady()
      const left = Math.max(FIRST_RESPONSE_MS - MARGIN_MS - ageOf(interaction, now()), SHORTEST_MS)
      if (time + left < hushedUntil) return 'rate-limited'
      try {
        await send(interaction, response, time + left)
        return 'answered'
      } catch (error) {
        const delivery = sort(error)
        told(delivery, error)
        return delivery
      }
    },
  }
}
