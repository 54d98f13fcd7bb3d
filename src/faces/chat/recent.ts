// What people typed last, offered to them again while they type: in memory alone, for an hour, a few values an input.
// Nothing hangs on it; another process offers what was typed there.
import { neverBack } from '../../core/never-back.ts'

const HELD_MS = 3_600_000
const MOST_PEOPLE = 5000
const MOST_VALUES = 5
const LONGEST = 100

interface Typed {
  readonly at: number
  readonly values: Map<string, readonly string[]>
}

export interface Recent {
  readonly note: (user: string, raw: Readonly<Record<string, unknown>>) => void
  readonly of: (user: string, input: string) => readonly string[]
  readonly forget: (user: string) => void
}

export const createRecent = (clock: () => number): Recent => {
  const now = neverBack(clock)
  const people = new Map<string, Typed>()
  return {
    note: (user, raw) => {
      const values = new Map(people.get(user)?.values)
      for (const [input, text] of Object.entries(raw)) {
        if (typeof text !== 'string' || text.trim() === '' || text.length > LONGEST) continue
        values.set(input, [text, ...(values.get(input) ?? []).filter((one) => one !== text)].slice(0, MOST_VALUES))
      }
      people.delete(user)
      people.set(user, { at: now(), values })
      for (const [oldest, { at }] of people) {
        if (people.size <= MOST_PEOPLE && now() - at < HELD_MS) break
        people.delete(oldest)
      }
    },
    of: (user, input) => {
      const typed = people.get(user)
      return typed && now() - typed.at < HELD_MS ? (typed.values.get(input) ?? []) : []
    },
    forget: (user) => {
      people.delete(user)
    },
  }
}
