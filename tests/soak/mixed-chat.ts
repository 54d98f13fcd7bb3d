// Chat for the mixed soak: a Discord that behaves, people who ask, type and press, and some who write into the register.
import type { Ask } from '../support/fake-discord/ask.ts'
import { startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { seeded } from '../support/random.ts'
import { newAsks } from './asks.ts'

/** `nowhere`: there was no session to send it to; `failed`: no answer came in time, or Discord refused it. */
export type Became = 'answered' | 'kept' | 'refused' | 'nowhere' | 'failed'

export interface MixedChat {
  readonly env: Readonly<Record<string, string>>
  /** Until the program is connected. */
  readonly ready: () => Promise<void>
  readonly ask: () => Promise<Became>
  /** Notes what happened to a wrench, as a keeper. */
  readonly keep: (tag: string, note: string) => Promise<Became>
  readonly violations: () => readonly unknown[]
  readonly close: () => Promise<void>
}

const KEPT_MS = 30_000
const MANAGE_GUILD = '32'

export const openMixedChat = async (seed: number): Promise<MixedChat> => {
  const discord = await startFakeDiscord({ heartbeatMs: 8000 })
  const asks = newAsks(seeded(seed))
  const forgetting = setInterval(() => discord.forget(KEPT_MS), 1000).unref()
  let keepers = 0

  const send = async (ask: Ask): Promise<{ became: Became; text: string }> => {
    let sent: ReturnType<typeof discord.interaction>
    try {
      sent = discord.interaction(ask)
    } catch {
      return { became: 'nowhere', text: '' }
    }
    const record = await sent.catch(() => undefined)
    if (!record || record.status >= 300) return { became: 'failed', text: '' }
    asks.learn(record, ask)
    return { became: 'answered', text: JSON.stringify(record.data) }
  }

  return {
    env: { DISCORD_TOKEN: discord.token, DISCORD_API_URL: discord.url },
    ready: async () => {
      await discord.ready(1, 20_000)
      await discord.until('the commands are registered', () => discord.commands.length > 0, 20_000)
    },
    ask: async () => (await send(asks.next())).became,
    keep: async (tag, note) => {
      const user = { id: String(340_000_000_000_000_000n + BigInt(++keepers % 2000)), username: 'keeper' }
      const { became, text } = await send({
        command: 'wrench',
        subcommand: 'event',
        options: { wrench: tag, what: 'dropped', note },
        user,
        raw: { member: { user, roles: [], permissions: MANAGE_GUILD } },
      })
      if (became !== 'answered') return became
      return text.includes('dropped') ? 'kept' : 'refused'
    },
    violations: () => discord.violations,
    close: async () => {
      clearInterval(forgetting)
      await discord.close()
    },
  }
}
