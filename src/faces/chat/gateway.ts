// The gateway: logs in within what Discord allows a day, hands on interactions and messages as raw JSON, and stays honest when Discord is away.
import {
  type APIInteraction,
  Client,
  Events,
  GatewayDispatchEvents,
  GatewayIntentBits,
  type REST,
  Routes,
  SimpleIdentifyThrottler,
} from 'discord.js'
import type { ChatParts, ChatSettings } from './door.ts'
import { createIdentifyPace, type IdentifyPace } from './wire/identify-pace.ts'
import { type SessionStartLimit, waitBeforeLogin } from './wire/login-budget.ts'
import { createShards } from './wire/shards.ts'

export interface GatewayParts extends Pick<ChatParts, 'settings' | 'now' | 'shard' | 'shardsUp' | 'log'> {
  /** Speaks as the bot. */
  readonly bot: REST
  readonly take: (interaction: APIInteraction, shard: number) => Promise<unknown>
  /** A message of anybody; `self` is the bot's own id. */
  readonly hear: (message: unknown, self: string | undefined) => Promise<unknown>
}

export interface Gateway {
  readonly troubles: () => readonly string[]
  readonly close: () => Promise<void>
}

// Neither is privileged: what a message says comes only where it mentions the bot or is sent to it, and no other is read.
const INTENTS = [GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages]
// What the library would do with events that we read ourselves, or that these intents bring besides.
const LEFT_OUT = ['InteractionCreate', 'MessageCreate', 'MessageUpdate', 'MessageDelete', 'MessageDeleteBulk']

const REST_TIMEOUT_MS = 10_000
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

const pause = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise((resolve, reject) => {
    signal.throwIfAborted()
    const timer = setTimeout(resolve, ms)
    timer.unref()
    signal.addEventListener('abort', () => {
      clearTimeout(timer)
      reject(signal.reason)
    })
  })

/** Before a shard identifies again: how long until it may, by what is left of the day's logins. */
type Budget = () => Promise<number>

const clientFor = ({ apiUrl, shards }: ChatSettings, pace: IdentifyPace, budget: Budget): Client =>
  new Client({
    intents: INTENTS,
    rest: { api: apiUrl, timeout: REST_TIMEOUT_MS },
    ...(shards === 'auto' ? { shards: 'auto' as const } : { shards: [...shards.ids], shardCount: shards.count }),
    ws: {
      buildIdentifyThrottler: async (manager) => {
        const { session_start_limit: limit } = await manager.fetchGatewayInformation()
        const inTurn = new SimpleIdentifyThrottler(limit.max_concurrency)
        return {
          waitForIdentify: async (shard, signal) => {
            const wait = pace.isAgain(shard) ? await budget() : 0
            await pause(Math.max(wait, pace.waitFor(shard)), signal)
            await inTurn.waitForIdentify(shard, signal)
            pace.identified(shard)
          },
        }
      },
    },
  })

interface GatewayInformation {
  readonly shards?: number
  readonly session_start_limit?: Partial<SessionStartLimit>
}

/** Opens the gateway and keeps it open. Never throws for what Discord does. */
export const openGateway = ({
  settings,
  now,
  shard: counted,
  shardsUp,
  log,
  bot,
  take,
  hear,
}: GatewayParts): Gateway => {
  const pace = createIdentifyPace(now)
  const shards = createShards({ count: counted, up: shardsUp, log })
  let client: Client | undefined
  let trouble: string | undefined = 'chat is logging in'
  let state: 'open' | 'fatal' | 'closed' = 'open'
  let retry: NodeJS.Timeout | undefined

  const dieFor = (reason: string): void => {
    if (state !== 'open') return
    state = 'fatal'
    trouble = reason
    shards.end()
    log.error({}, `chat is closed until restart: ${reason}`)
    void client?.destroy()
  }

  const listenTo = (one: Client): void => {
    // The library would build its own objects of every interaction and message, and a shape that it does not know rejects where
    // nobody listens, which ends the process. We read the JSON ourselves, so its builders are left out.
    const nothing = { handle: () => ({}) }
    Object.assign(
      (one as unknown as { actions: object }).actions,
      Object.fromEntries(LEFT_OUT.map((name) => [name, nothing])),
    )
    // Rejected async listeners surface here; without it they would end the process.
    one.on(Events.Error, (error) => log.error({ err: error }, 'chat error'))
    one.on(Events.ShardDisconnect, (event, id) => dieFor(`Discord closed shard ${id} for good (code ${event.code})`))
    one.on(Events.ShardReconnecting, (id) => state === 'open' && shards.changed(id, 'reconnecting'))
    one.on(Events.ShardReady, (id) => state === 'open' && shards.changed(id, 'ready'))
    one.on(Events.ShardResume, (id) => state === 'open' && shards.changed(id, 'resumed'))
    // Whatever Discord sends, and whatever becomes of it: thrown or rejected in a listener it would end the process.
    const handOn = (work: () => Promise<unknown>): void => {
      void (async () => await work())().catch((error: unknown) => log.error({ err: error }, 'chat error'))
    }
    one.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction: APIInteraction, id: number) =>
      handOn(() => take(interaction, id)),
    )
    one.ws.on(GatewayDispatchEvents.MessageCreate, (message: unknown) => handOn(() => hear(message, one.user?.id)))
  }

  // Where it cannot be asked for, the pace alone holds.
  const budgetAgain = async (): Promise<number> => {
    const told = (await bot.get(Routes.gatewayBot()).catch(() => ({}))) as GatewayInformation
    const wait = waitBeforeLogin(told.session_start_limit, 1)
    if (wait > 0) log.warn({ ...told.session_start_limit, waitMs: wait }, 'a chat shard waits before it logs in again')
    return wait
  }

  const later = (wait: number, next: number): void => {
    retry = setTimeout(() => void login(next), wait)
    retry.unref()
  }

  // Discord allows few logins a day: wait longer after each that failed, and none after one that cannot succeed.
  const login = async (wait: number): Promise<void> => {
    try {
      const { shards: wanted = 1, session_start_limit: limit } = (await bot.get(
        Routes.gatewayBot(),
      )) as GatewayInformation
      if (state !== 'open') return
      const ids = settings.shards === 'auto' ? Array.from({ length: wanted }, (_, id) => id) : settings.shards.ids
      const budget = waitBeforeLogin(limit, ids.length)
      if (budget > 0) {
        trouble = `few logins are left today (${limit?.remaining}): chat waits ${Math.ceil(budget / 60_000)} min`
        log.warn({ ...limit, waitMs: budget }, 'chat waits before it logs in')
        // Looked at again after some time: the allowance may be whole sooner, or shared by others.
        return later(Math.min(budget, LONGEST_RETRY_MS * 12), wait)
      }
      client = clientFor(settings, pace, budgetAgain)
      listenTo(client)
      shards.expect(ids)
      await client.login(settings.token)
      trouble = undefined
    } catch (error) {
      if (state !== 'open') return
      if (isFatalLogin(error)) return dieFor('Discord does not accept the token, the shards or the intents')
      trouble = 'Discord cannot be reached'
      log.warn({ err: error, waitMs: wait }, 'chat login failed; trying again later')
      later(wait, Math.min(wait * 2, LONGEST_RETRY_MS))
    }
  }
  void login(FIRST_RETRY_MS)

  return {
    troubles: () => (trouble === undefined ? shards.troubles() : [trouble]),
    close: async () => {
      state = 'closed'
      clearTimeout(retry)
      // Between identify and ready the library's own goodbye never ends.
      await Promise.race([client?.destroy(), new Promise((resolve) => setTimeout(resolve, GOODBYE_MS).unref())])
    },
  }
}
