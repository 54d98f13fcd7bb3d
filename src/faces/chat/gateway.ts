// The gateway around the handler: logs in, registers, takes interactions as raw JSON, and stays honest when Discord is away.
import { type APIInteraction, Client, Events, GatewayDispatchEvents, REST, type WebSocketShard } from 'discord.js'
import type { Topic } from '../../../commands/topic.ts'
import type { ChatEvent } from '../../counters.ts'
import type { Desk } from '../../desk/desk.ts'
import type { Shop } from '../../desk/shop.ts'
import type { Specs } from '../../desk/specs.ts'
import type { RegisterStore } from '../../store/lazy.ts'
import { languageFor } from '../../words/index.ts'
import type { Pictures } from '../pictures.ts'
import { deliver, deliverOffers } from './callback.ts'
import { buildCommands } from './commands.ts'
import { startDigest } from './digesting.ts'
import { askerOf, busyReply, handleInteraction } from './handler.ts'
import { buildHandling } from './handling.ts'
import { createLimits } from './limits.ts'
import { isTyping, offersFor } from './offers.ts'
import { createOnce } from './once.ts'
import { type RegistrationPlan, register as registerAll } from './registration.ts'
import { startRetention } from './retention.ts'

export interface ChatLog {
  readonly info: (facts: object, message: string) => void
  readonly warn: (facts: object, message: string) => void
  readonly error: (facts: object, message: string) => void
}

export interface ChatSettings {
  readonly token: string
  readonly applicationId: string | undefined
  readonly apiUrl: string
  readonly shards: 'auto' | { readonly ids: readonly number[]; readonly count: number }
  /** Roles whose members may write; see register/rights.ts. */
  readonly keeperRole?: string | undefined
  readonly mechanicRole?: string | undefined
}

export interface ChatParts {
  readonly settings: ChatSettings
  readonly desk: Desk
  readonly topics: readonly Topic[]
  readonly pictures: Pictures
  readonly shop: Shop
  readonly store: RegisterStore
  readonly specs: Specs
  /** IANA name; the digest goes by the shop's own clock. */
  readonly timeZone: string
  /** After so many days without use, what people set for themselves is erased. */
  readonly retentionDays: number
  readonly now: () => number
  readonly reference: () => string
  readonly count: (event: ChatEvent) => void
  readonly shardsUp: (up: number) => void
  readonly log: ChatLog
}

export interface Chat {
  /** What is wrong with this door, or nothing. */
  readonly trouble: () => string | undefined
  readonly close: () => Promise<void>
}

const REST_TIMEOUT_MS = 10_000
// A callback that hangs may have been taken: it ends by its own deadline and is not sent again. A 5xx is, once.
const CALLBACK_TIMEOUT_MS = 5000
const CALLBACK_RETRIES = 1
const GOODBYE_MS = 2000
const FIRST_RETRY_MS = 5000
const LONGEST_RETRY_MS = 300_000
// Close codes after which Discord wants no new identify: the token, the shards or the intents are wrong.
const FATAL_CLOSES: ReadonlySet<number> = new Set([4004, 4010, 4011, 4012, 4013, 4014])

const isFatalLogin = (error: unknown): boolean => {
  const { code, status } = error as { code?: unknown; status?: unknown }
  return (
    code === 'TokenInvalid' ||
    status === 401 ||
    status === 403 ||
    (typeof code === 'number' && FATAL_CLOSES.has(code)) ||
    /4004|4010|4011|4012|4013|4014|disallowed intents|invalid token/i.test(String((error as Error).message))
  )
}

export const restFor = ({ token, apiUrl }: Pick<ChatSettings, 'token' | 'apiUrl'>): REST =>
  new REST({ version: '10', api: apiUrl, timeout: REST_TIMEOUT_MS }).setToken(token)

/** Registers the commands of the desk once, with nothing else running. */
export const registerCommands = async (
  settings: ChatSettings,
  topics: readonly Topic[],
  desk: Desk,
  isTried = false,
): Promise<RegistrationPlan> => {
  const rest = restFor(settings)
  const id = settings.applicationId ?? ((await rest.get('/oauth2/applications/@me')) as { id: string }).id
  return registerAll(rest, id, buildCommands(topics, languageFor(undefined, desk.locale).words), isTried)
}

const clientFor = ({ apiUrl, shards }: ChatSettings): Client =>
  new Client({
    intents: [],
    rest: { api: apiUrl, timeout: REST_TIMEOUT_MS },
    ...(shards === 'auto' ? { shards: 'auto' as const } : { shards: [...shards.ids], shardCount: shards.count }),
  })

/** Opens the chat door. Never throws for what Discord does: the door is ill then, and says why. */
export const openChat = (parts: ChatParts): Chat => {
  const { settings, desk, topics, log, count } = parts
  const client = clientFor(settings)
  const callbacks = new REST({
    version: '10',
    api: settings.apiUrl,
    timeout: CALLBACK_TIMEOUT_MS,
    retries: CALLBACK_RETRIES,
  })
  const { handling, offers } = buildHandling(parts, client.rest)
  const limits = createLimits()
  const admit = createOnce(parts.now)
  let trouble: string | undefined = 'chat is logging in'
  let fatal = false
  let closed = false
  let retry: NodeJS.Timeout | undefined
  let digesting: NodeJS.Timeout | undefined

  const fail = (error: unknown): string => {
    const reference = parts.reference()
    log.error({ err: error, reference }, 'a chat answer failed')
    count('failed')
    return reference
  }

  const answer = async (interaction: APIInteraction): Promise<void> => {
    const reply = await handleInteraction(interaction, { ...handling, failed: fail })
    if (!reply) return count('unknown')
    const told = (delivery: string, error: unknown): void =>
      log.warn({ err: error, delivery }, 'a chat answer did not arrive')
    count(await deliver(callbacks, interaction, reply, parts.now(), told))
  }

  const take = async (interaction: APIInteraction): Promise<void> => {
    const admission = admit(interaction.id)
    if (admission !== 'new') return count(admission)
    // Every letter typed comes here; Discord holds them back itself, and they use up nobody's asks.
    if (isTyping(interaction)) {
      count('offered')
      return deliverOffers(callbacks, interaction, await offersFor(interaction, topics, offers))
    }
    const within = limits.admit(askerOf(interaction))
    if (within === true || (await within)) return answer(interaction)
    count('refused-busy')
    await deliver(callbacks, interaction, busyReply(interaction, desk), parts.now(), () => {})
  }

  const dieFor = (reason: string): void => {
    if (fatal || closed) return
    fatal = true
    trouble = reason
    parts.shardsUp(0)
    log.error({}, `chat is closed until restart: ${reason}`)
    void client.destroy()
  }

  const upShards = (): number =>
    [...client.ws.shards.values()].filter((shard: WebSocketShard) => shard.status === 0).length

  // The library would build its own objects of every interaction, and a shape that it does not know rejects where nobody
  // listens, which ends the process. We read the JSON ourselves, so its builder is left out.
  Object.assign((client as unknown as { actions: object }).actions, { InteractionCreate: { handle: () => {} } })
  // Rejected async listeners surface here; without it they would end the process.
  client.on(Events.Error, (error) => log.error({ err: error }, 'chat error'))
  client.on(Events.ShardDisconnect, (event, id) => dieFor(`Discord closed shard ${id} for good (code ${event.code})`))
  client.on(Events.ShardReconnecting, (id) => {
    trouble = `chat shard ${id} is reconnecting`
    parts.shardsUp(upShards())
  })
  const up = (): void => {
    if (fatal) return
    trouble = undefined
    parts.shardsUp(upShards())
  }
  client.on(Events.ShardReady, up)
  client.on(Events.ShardResume, up)
  client.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction: APIInteraction) => {
    take(interaction).catch((error: unknown) => log.error({ err: error }, 'an interaction failed'))
  })
  client.once(Events.ClientReady, ({ application }) => {
    const { words } = languageFor(undefined, desk.locale)
    digesting = startDigest(parts, client.rest, words)
    registerAll(client.rest, settings.applicationId ?? application.id, buildCommands(topics, words)).then(
      (plan) => log.info({ ...plan }, 'chat commands are registered'),
      (error: unknown) => log.error({ err: error }, 'chat commands could not be registered'),
    )
  })

  // Discord allows few logins a day: wait longer after each that failed, and none after one that cannot succeed.
  const login = async (wait: number): Promise<void> => {
    try {
      await client.login(settings.token)
    } catch (error) {
      if (closed || fatal) return
      if (isFatalLogin(error)) return dieFor('Discord does not accept the token, the shards or the intents')
      trouble = 'Discord cannot be reached'
      log.warn({ err: error, waitMs: wait }, 'chat login failed; trying again later')
      retry = setTimeout(() => void login(Math.min(wait * 2, LONGEST_RETRY_MS)), wait)
      retry.unref()
    }
  }
  void login(FIRST_RETRY_MS)
  const retaining = startRetention(parts)

  return {
    trouble: () => trouble,
    close: async () => {
      closed = true
      clearTimeout(retry)
      clearInterval(digesting)
      clearInterval(retaining)
      // Between identify and ready the library's own goodbye never ends.
      await Promise.race([client.destroy(), new Promise((resolve) => setTimeout(resolve, GOODBYE_MS).unref())])
      await limits.close()
    },
  }
}
