// The digest's clockwork in the chat door: a look every minute, which keeps no process alive; what goes wrong is logged, not thrown.
import type { REST } from 'discord.js'
import { createDigest } from '../../desk/digest.ts'
import type { Words } from '../../words/index.ts'
import { digestEmbed, sendDigest } from './digest-message.ts'
import type { ChatParts } from './door.ts'

const EVERY_MS = 60_000

export const startDigest = (
  { shop, store, timeZone, now, reference, log }: ChatParts,
  rest: REST,
  words: Words,
): NodeJS.Timeout => {
  const loop = createDigest({
    shop,
    store,
    timeZone,
    now: () => new Date(now()),
    owner: reference(),
    send: (channel, digest, name) =>
      sendDigest(rest, channel, digestEmbed(digest, shop.today().today, words), name, (error) =>
        log.warn({ err: error, channel }, 'the digest did not arrive'),
      ),
  })
  const look = (): void => {
    loop.tick().catch((error: unknown) => log.warn({ err: error }, 'the digest could not be looked at'))
  }
  look()
  return setInterval(look, EVERY_MS).unref()
}
