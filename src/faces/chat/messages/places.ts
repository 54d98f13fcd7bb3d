// In which language a server is set up, as its interactions tell: messages do not. In memory alone, and bounded.
import type { APIInteraction } from 'discord.js'

const MOST = 10_000

export interface Places {
  readonly note: (interaction: Pick<APIInteraction, 'guild_id' | 'guild_locale'>) => void
  readonly localeOf: (server: string | undefined) => string | undefined
}

export const createPlaces = (): Places => {
  const locales = new Map<string, string>()
  return {
    note: ({ guild_id: server, guild_locale: locale }) => {
      if (typeof server !== 'string' || typeof locale !== 'string') return
      locales.delete(server)
      locales.set(server, locale)
      for (const oldest of locales.keys()) {
        if (locales.size <= MOST) break
        locales.delete(oldest)
      }
    },
    localeOf: (server) => (server === undefined ? undefined : locales.get(server)),
  }
}
