// The REST clients of the chat door: one speaks as the bot, one sends callbacks, one edits what was promised. They are three, so
// that none waits in another's queue.
import { REST, type RESTOptions } from 'discord.js'

export interface RestSettings {
  readonly token: string
  readonly apiUrl: string
}

type Transport = Partial<Pick<RESTOptions, 'makeRequest'>>

const BOT_TIMEOUT_MS = 10_000
// A callback that hangs may have been taken: it ends by its own deadline and is not sent again. A 5xx is, once.
const CALLBACK_TIMEOUT_MS = 5000
const CALLBACK_RETRIES = 1
// A token lives 15 min, and so do the queues that the library keeps for each.
const SWEEP_MS = 300_000
// Discord holds what is said with an interaction's token to limits of its own, not to the 50 a second of the bot.
const EDITS_A_SECOND = 1000

export const botRest = ({ token, apiUrl }: RestSettings, transport: Transport = {}): REST =>
  new REST({ version: '10', api: apiUrl, timeout: BOT_TIMEOUT_MS, ...transport }).setToken(token)

/** Told of every 429 at once: how long it may be waited for, only the caller knows. */
export const callbackRest = ({ apiUrl }: Pick<RestSettings, 'apiUrl'>, transport: Transport = {}): REST =>
  new REST({
    version: '10',
    api: apiUrl,
    timeout: CALLBACK_TIMEOUT_MS,
    retries: CALLBACK_RETRIES,
    rejectOnRateLimit: () => true,
    ...transport,
  })

export const editRest = ({ apiUrl }: Pick<RestSettings, 'apiUrl'>, transport: Transport = {}): REST =>
  new REST({
    version: '10',
    api: apiUrl,
    timeout: BOT_TIMEOUT_MS,
    retries: CALLBACK_RETRIES,
    handlerSweepInterval: SWEEP_MS,
    globalRequestsPerSecond: EDITS_A_SECOND,
    rejectOnRateLimit: () => true,
    ...transport,
  })
