// What handles an interaction, wired: the register's part, what is set, what is kept of people, answers with their keys, offers.
import { type REST, Routes } from 'discord.js'
import { createPress } from './answer/press.ts'
import type { TellChannel } from './answer/report.ts'
import { saverOf } from './answer/save.ts'
import type { WorkParts } from './answer/worked.ts'
import { askerOf } from './asker.ts'
import { createBenchDoor } from './bench/door.ts'
import type { ChatParts } from './door.ts'
import { type HandlerParts, languageOf } from './handler.ts'
import { createLikings } from './liking.ts'
import type { OfferParts } from './offers.ts'
import { createRecent } from './recent.ts'
import { createRegisterDoor } from './register/door.ts'

export interface Handling {
  readonly handling: Omit<HandlerParts, 'failed'>
  readonly offers: OfferParts
  /** What any answer is worked out with, whichever way it was asked. */
  readonly work: WorkParts
}

/** `rest` speaks as the bot: what is told in a channel of a server goes that way. */
export const buildHandling = (parts: ChatParts, rest: REST, isOpenToAll: () => boolean): Handling => {
  const { desk, topics, pictures, shop, store, specs, now, retentionDays, log } = parts
  const { keeperRole: keeper, mechanicRole: mechanic, servers } = parts.settings
  const roles = { keeper, mechanic, servers, isOpenToAll }
  const likings = createLikings(store, now)
  const recent = createRecent(now)
  const tell: TellChannel = (channel, body) =>
    rest.post(Routes.channelMessages(channel), { body }).then(
      () => true,
      (error: unknown) => {
        log.warn({ err: error, channel }, 'a report did not arrive')
        return false
      },
    )
  const work = { desk, pictures, likings, roles }
  return {
    work,
    handling: {
      desk,
      topics,
      pictures,
      recent,
      register: createRegisterDoor({ shop, roles, pictures, now }),
      bench: createBenchDoor({ shop, roles, pictures }),
      settings: { store, likings, roles, now, tagOf: async (text) => (await shop.wrench(text))?.row.folder.tag },
      privacy: { store, likings, recent, retentionDays },
      spec: { specs, roles },
      answers: { ...work, press: createPress({ ...work, tell, save: saverOf(shop, roles), now }) },
    },
    offers: {
      words: (interaction) => languageOf(interaction, desk).words,
      find: shop.find,
      system: async (interaction) => {
        const { user, server } = askerOf(interaction)
        return (await likings.own(user)).units ?? (await likings.server(server)).units ?? desk.system
      },
      recent: (interaction, input) => recent.of(askerOf(interaction).user, input),
    },
  }
}
