// In which language a server is set up, as its interactions tell: messages do not. In memory alone, and bounded.
const MOST = 10_000

export interface Places {
  /** Takes whatever came as an interaction, and learns from what is one. */
  readonly note: (interaction: unknown) => void
  readonly localeOf: (server: string | undefined) => string | undefined
}

export const createPlaces = (): Places => {
  const locales = new Map<string, string>()
  return {
    note: (interaction) => {
      const { guild_id: server, guild_locale: locale } = Object(interaction) as Record<string, unknown>
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
