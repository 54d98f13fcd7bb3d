// A strict Discord on loopback for tests: REST and gateway, faults on request, and every payload held against the
// documented limits. `startFakeDiscord()` gives the controller; end a test by finding `violations` empty.

import { setTimeout as pause } from 'node:timers/promises'
import { arrivals as newArrivals, type Waiting } from './arrivals.ts'
import type { Ask } from './ask.ts'
import { type CallbackRecord, newBooks } from './books.ts'
import { channels as newChannels } from './channels.ts'
import { commandShelf } from './commands.ts'
import { openDoor } from './door.ts'
import { type Fault, faultQueues } from './faults.ts'
import { openGateway } from './gateway.ts'
import { ledger as newLedger } from './ledger.ts'
import { isRecord, type Json } from './limits.ts'
import { buildInteraction } from './raw-interaction.ts'
import { type FaultFor, restServer } from './rest.ts'
import { buildRoutes, callbackRecord, type RouteName } from './routes.ts'
import { newSender, type Posting } from './sender.ts'
import { speaking } from './speaking.ts'

export interface FakeOptions {
  token?: string
  applicationId?: string
  botName?: string
  /** What GET /gateway/bot recommends. */
  shards?: number
  /** Shards that may identify within the same 5 s; Discord's default is 1. */
  maxConcurrency?: number
  /** 5000 as Discord has it; 0, the default, lets tests start one service after another. */
  identifySpacingMs?: number
  identifiesADay?: number
  heartbeatMs?: number
  faultFor?: FaultFor
  /** Strangers may invite the bot. */
  isPublic?: boolean
  /** Unavailable guilds in READY. */
  guilds?: readonly Json[]
}

/** A callback to come, and the interaction it is for. */
export type Sent = Promise<CallbackRecord> & { id: string; raw: Json }

export type FakeDiscord = Awaited<ReturnType<typeof startFakeDiscord>>

export async function startFakeDiscord(options: FakeOptions = {}) {
  const token = options.token ?? 'fake-token.for-tests.only'
  const applicationId = options.applicationId ?? '100000000000000001'
  const username = options.botName ?? 'armlength'
  const botUser = {
    id: applicationId,
    username,
    discriminator: '0001',
    global_name: null,
    avatar: null,
    bot: true,
    flags: 0,
  }
  const books = newBooks()
  const queues = faultQueues()
  const shelf = commandShelf(applicationId)
  const ledger = newLedger(books, { applicationId, botUser })
  const channels = newChannels(books, { applicationId, botUser })
  const arrivals = newArrivals()
  const sender = newSender()
  let heard: (record: CallbackRecord) => void = () => {}
  const gateway = await openGateway({
    token,
    applicationId,
    botUser,
    books,
    heartbeatMs: options.heartbeatMs ?? 41_250,
    guilds: options.guilds ?? [],
    spacingMs: options.identifySpacingMs ?? 0,
    maxConcurrency: options.maxConcurrency ?? 1,
  })
  const identifiesADay = options.identifiesADay ?? 1000

  const table = {
    books,
    applicationId,
    botUser,
    ledger,
    channels,
    isPublic: options.isPublic ?? false,
    shelf,
    gatewayInformation: () => ({
      url: gateway.url,
      shards: options.shards ?? 1,
      session_start_limit: {
        total: identifiesADay,
        remaining: Math.max(0, identifiesADay - books.identifies.length),
        reset_after: 14_400_000,
        max_concurrency: options.maxConcurrency ?? 1,
      },
    }),
    onCallback(record: CallbackRecord) {
      books.callbacks.push(record)
      arrivals.arrived(record)
      heard(record)
    },
  } satisfies Parameters<typeof buildRoutes>[0]
  const routes = buildRoutes(table)
  const server = restServer({ token, books, routes, faults: queues, faultFor: options.faultFor })
  const rest = await openDoor(server)

  function issue(ask: Ask): Json {
    const raw = buildInteraction(ask, { applicationId, commands: shelf.all(), now: Date.now() })
    ledger.issue(raw, ask.age)
    return raw
  }

  function deliver(raw: Json): void {
    const guild = typeof raw['guild_id'] === 'string' ? raw['guild_id'] : null
    if (gateway.dispatch('INTERACTION_CREATE', raw, guild) === 0)
      throw new Error('There is no gateway session to send the interaction to: await ready() first')
  }

  async function until(what: string, isSo: () => boolean, within = 5000): Promise<void> {
    const end = performance.now() + within
    while (!isSo()) {
      if (performance.now() > end) throw new Error(`Not so within ${within} ms: ${what}`)
      await pause(5)
    }
  }

  const callbacksOf = (id: string) => books.callbacks.filter((one) => one.id === id)

  return {
    ...books,
    get heartbeats() {
      return books.heartbeats
    },
    ...speaking({ botUser, channels, tell: gateway.tell }),
    token,
    applicationId,
    /** The API's base without version, for DISCORD_API_URL. */
    url: `http://127.0.0.1:${rest.port}/api`,
    gatewayUrl: gateway.url,

    /** Sends a new interaction over the gateway; the promise is of its callback. */
    interaction(ask: Ask, waiting: Waiting = {}): Sent {
      const raw = issue(ask)
      const id = String(raw['id'])
      deliver(raw)
      const come = arrivals.awaitCallback(id, waiting)
      return Object.assign(come, { id, raw })
    },
    /** The same interaction delivered twice; every callback that came until `settle` ms after the first. */
    async sendTwice(ask: Ask, waiting: Waiting & { settle?: number } = {}): Promise<CallbackRecord[]> {
      const raw = issue(ask)
      const id = String(raw['id'])
      deliver(raw)
      deliver(raw)
      const come = arrivals.awaitCallback(id, waiting)
      await come
      await pause(waiting.settle ?? 250)
      return callbacksOf(id)
    },
    /** An interaction that may be answered, but is not sent: for deliveries by other ways. */
    issue,
    deliver,
    /** To every session, whichever shard the server belongs to: as if Discord were mistaken. */
    deliverToAll(raw: Json): void {
      for (const session of gateway.sessions) if (!session.ended) session.give('INTERACTION_CREATE', raw)
    },
    /** The key by which what is posted is known, for DISCORD_PUBLIC_KEY. */
    publicKey: sender.publicKey,
    /** Posts an interaction to the application's own address; its reply is the callback, held to the same rules. */
    async post(url: string, ask: Ask | { raw: Json }, posting: Posting = {}) {
      const raw = 'raw' in ask && ask.raw && !('kind' in ask) && !('command' in ask) ? ask.raw : issue(ask as Ask)
      const posted = await sender.post(url, raw, posting)
      const id = String(raw['id'])
      if (posted.status === 200 && ledger.find(id)) {
        const answer = ledger.callback(id, String(raw['token']), posted, false, true)
        const asked = { ...posted, parts: [id], query: new URLSearchParams(), confirmed: true }
        const code = answer.body && isRecord(answer.body) ? Number(answer.body['code']) : undefined
        table.onCallback(callbackRecord(table, asked, { at: Date.now(), status: answer.status, code }))
      }
      return { ...posted, id, raw }
    },
    awaitCallback: arrivals.awaitCallback,
    callbacksOf,
    /** Makes an interaction older than it is, to end its 3 s or its 15 min. */
    makeOlder(id: string, ms: number): void {
      const entry = ledger.find(id)
      if (entry) entry.createdAt -= ms
    },

    /** Until so many gateway sessions are connected. */
    ready: (shards = 1, within = 10_000) =>
      until(
        `${shards} session(s) connected`,
        () => gateway.sessions.filter((one) => one.connected).length >= shards,
        within,
      ),
    until,

    /** Tears the sockets without a close frame; the sessions can be resumed. */
    dropSockets: gateway.drop,
    closeSockets: gateway.shutAll,
    /** Opcode 7: reconnect and resume. */
    askToReconnect: () => gateway.sendAll(7, null),
    /** No session can be resumed from now on; with `tell`, opcode 9 says so at once. */
    endSessions(tell = false): void {
      gateway.endSessions()
      if (tell) gateway.sendAll(9, false)
    },
    /** Heartbeats go unanswered. */
    ignoreHeartbeats: gateway.deafen,
    /** Sends any text at all over the sockets. */
    babble: gateway.babble,
    /** An event of any name to every session. */
    dispatch: (event: string, data: unknown) => gateway.dispatch(event, data, null),
    /** Told of every callback that comes. */
    onCallback(listener: (record: CallbackRecord) => void): void {
      heard = listener
    },
    /** For long runs: lets go of what is older than so long. */
    forget(olderMs: number): void {
      const before = Date.now() - olderMs
      for (const list of [books.requests, books.callbacks, books.resumes] as { at: number }[][])
        list.splice(
          0,
          Math.max(
            list.findIndex(({ at }) => at >= before),
            0,
          ),
        )
      ledger.forget(performance.now() - olderMs)
      for (const session of gateway.sessions) session.forget(5000)
    },

    /** New connections meet ECONNREFUSED; those that are open stay. */
    async refuseConnections(on: boolean, where: 'gateway' | 'rest' | 'both' = 'gateway'): Promise<void> {
      if (where !== 'rest') await gateway.refuse(on)
      if (where !== 'gateway') await rest.refuse(on)
    },

    fail: (route: RouteName, fault: Fault, times = 1) => queues.add(route, fault, times),
    clearFaults: queues.clear,

    /** The registered commands, with localizations. */
    get commands(): readonly Json[] {
      return shelf.all()
    },
    /** What was registered before the test, without a request; it is checked like any. */
    register: (commands: readonly Json[]) => shelf.replace(commands),
    /** Requests that Discord counts toward the ban of an address. */
    get invalidRequests(): number {
      return books.requests.filter((one) => [401, 403, 429].includes(one.status)).length
    },
    forgetViolations(): void {
      books.violations.length = 0
    },

    async close(): Promise<void> {
      await gateway.close()
      await rest.close()
    },
  }
}
