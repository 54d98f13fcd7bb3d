// Under which channel a channel is: the one that a thread hangs from, or the group of a channel. Messages do not tell it, so Discord is
// asked, once in a while and only where it matters.
import { type REST, Routes } from 'discord.js'
import { within } from '../../../core/in-time.ts'

const KEPT_MS = 10 * 60_000
const LONGEST_MS = 2000
const MOST = 10_000

/** The channel above, null where there is none, undefined where Discord did not say. Never rejects. */
export type ParentOf = (channel: string) => Promise<string | null | undefined>

const ask = async (rest: Pick<REST, 'get'>, channel: string): Promise<string | null | undefined> => {
  try {
    const found = await within(
      rest.get(Routes.channel(channel), { signal: AbortSignal.timeout(LONGEST_MS) }),
      LONGEST_MS,
    )
    if (typeof found !== 'object' || found === null) return undefined
    const { parent_id: parent } = found as { readonly parent_id?: unknown }
    return typeof parent === 'string' ? parent : null
  } catch {
    return undefined
  }
}

export const createParents = (rest: Pick<REST, 'get'>, now: () => number): ParentOf => {
  const known = new Map<string, { readonly at: number; readonly parent: Promise<string | null | undefined> }>()
  return (channel) => {
    const kept = known.get(channel)
    if (kept && Math.abs(now() - kept.at) < KEPT_MS) return kept.parent
    const parent = ask(rest, channel)
    known.delete(channel)
    known.set(channel, { at: now(), parent })
    for (const oldest of known.keys()) {
      if (known.size <= MOST) break
      known.delete(oldest)
    }
    return parent
  }
}
