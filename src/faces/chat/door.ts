// The chat door: interactions come over the gateway or over HTTP, and are answered by the same handler; messages that ask the bot
// come over the gateway alone. Registers the commands,
// sends the digest, and says whether it is well.
import type { Topic } from '../../../commands/topic.ts'
import type { ChatEvent, MessageEvent, ShardEvent } from '../../counters.ts'
import type { Desk } from '../../desk/desk.ts'
import type { Shop } from '../../desk/shop.ts'
import type { Specs } from '../../desk/specs.ts'
import type { RegisterStore } from '../../store/lazy.ts'
import { languageFor } from '../../words/index.ts'
import type { Pictures } from '../pictures.ts'
import { buildCommands } from './commands.ts'
import { startDigest } from './digesting.ts'
import { openGateway } from './gateway.ts'
import { buildHandling } from './handling.ts'
import { createHearing } from './messages/hearing.ts'
import { createParents } from './messages/parents.ts'
import { createPlaces } from './messages/places.ts'
import { sendReply } from './messages/sending.ts'
import { type RegistrationPlan, register } from './registration.ts'
import { startRetention } from './retention.ts'
import { askApplication } from './wire/application.ts'
import { createCallbacks } from './wire/callback.ts'
import { createEdits } from './wire/edit.ts'
import { createPosted, type TakePosted } from './wire/posted.ts'
import { startRegistering } from './wire/registering.ts'
import { botRest, callbackRest, editRest } from './wire/rest.ts'
import { createTaking } from './wire/taking.ts'

export interface ChatLog {
  readonly info: (facts: object, message: string) => void
  readonly warn: (facts: object, message: string) => void
  readonly error: (facts: object, message: string) => void
}

export interface ChatSettings {
  readonly token: string
  readonly applicationId: string | undefined
  readonly apiUrl: string
  /** In hex, where interactions come over HTTP; over the gateway it is not needed. */
  readonly publicKey: string | undefined
  readonly transport: 'gateway' | 'http'
  readonly shards: 'auto' | { readonly ids: readonly number[]; readonly count: number }
  /** Roles whose members may write; see register/rights.ts. */
  readonly keeperRole?: string | undefined
  readonly mechanicRole?: string | undefined
  readonly servers?: readonly string[] | undefined
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
  readonly count: (event: ChatEvent, shard?: number) => void
  readonly countMessage: (event: MessageEvent) => void
  readonly shard: (shard: number, event: ShardEvent, isUp: boolean) => void
  readonly shardsUp: (up: number) => void
  readonly log: ChatLog
}

export interface Chat {
  /** What is wrong with this door, a sentence each. */
  readonly troubles: () => readonly string[]
  /** Takes an interaction that came over HTTP; absent where they come over the gateway. */
  readonly posted: TakePosted | undefined
  readonly close: () => Promise<void>
}

/** What was taken is finished within this; a program that ends is given some seconds in all. */
const FINISH_MS = 5000

/** Whoever manages a server of their own would be a keeper. */
const UNGUARDED =
  'anybody may invite the bot, so nobody writes in chat: name the servers of the shop in DISCORD_SERVERS'

const commandsOf = (topics: readonly Topic[], desk: Desk) =>
  buildCommands(topics, languageFor(undefined, desk.locale).words)

/** Registers the commands of the desk once, with nothing else running. */
export const registerCommands = async (
  settings: ChatSettings,
  topics: readonly Topic[],
  desk: Desk,
  isTried = false,
): Promise<RegistrationPlan> => register(botRest(settings), settings.applicationId, commandsOf(topics, desk), isTried)

/** Opens the chat door. Never throws for what Discord does: the door is ill then, and says why. */
export const openChat = (parts: ChatParts): Chat => {
  const { settings, desk, topics, now, log } = parts
  const bot = botRest(settings)
  let isOpenToAll = false
  const { handling, offers, work } = buildHandling(parts, bot, () => isOpenToAll)
  const lost = (delivery: string, error: unknown): void =>
    log.warn({ err: error, delivery }, 'a chat answer did not arrive')
  const callbacks = createCallbacks({ rest: callbackRest(settings), now, told: lost })
  const edits = createEdits({ rest: editRest(settings), now, told: lost })
  const taking = createTaking({ ...parts, handling, offers, edits })
  const places = createPlaces()
  const hearing = createHearing({
    ...{ ...parts, work, places, isWithin: taking.isWithin, parentOf: createParents(bot, now) },
    send: (heard, reply) =>
      sendReply(bot, heard, reply, (arrived, error) =>
        log.warn({ err: error, arrived, channel: heard.channel }, 'a reply did not arrive'),
      ),
  })
  const isUnguarded = (): boolean => isOpenToAll && settings.servers === undefined
  const registering = startRegistering({
    register: async () => {
      const application = await askApplication(bot)
      isOpenToAll = application.isOpenToAll
      if (isUnguarded()) log.warn({}, UNGUARDED)
      return register(bot, settings.applicationId ?? application.id, commandsOf(topics, desk))
    },
    log,
  })
  const digesting = startDigest(parts, bot, languageFor(undefined, desk.locale).words)
  const retaining = startRetention(parts)
  const gateway =
    settings.transport === 'gateway'
      ? openGateway({
          ...parts,
          bot,
          take: (interaction, shard) => {
            places.note(interaction)
            return taking.take(interaction, callbacks.respondTo(interaction), shard)
          },
          hear: hearing.hear,
        })
      : undefined
  const hushed = (): readonly string[] => (callbacks.isHushed() ? ['Discord asks this address to wait'] : [])
  return {
    troubles: () => [
      ...(gateway ? gateway.troubles() : registering.troubles()),
      ...hushed(),
      ...(isUnguarded() ? [UNGUARDED] : []),
    ],
    posted:
      gateway || settings.publicKey === undefined
        ? undefined
        : createPosted({ ...parts, taking, key: settings.publicKey }),
    close: async () => {
      clearInterval(digesting)
      clearInterval(retaining)
      registering.stop()
      await Promise.all([hearing.finish(FINISH_MS), taking.finish(FINISH_MS)])
      await gateway?.close()
    },
  }
}
