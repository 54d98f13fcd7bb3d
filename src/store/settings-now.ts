// What is set now, from every setting there ever was.
import type { Setting } from './store.ts'

/** What is set, from all that was ever set in order. A scope has a handful of settings, changed a few times a year. */
export const settingsNow = (history: readonly Setting[]): Record<string, string> => {
  const now = new Map<string, string>()
  for (const { name, value } of history) {
    if (value === null) now.delete(name)
    else now.set(name, value)
  }
  return Object.fromEntries(now)
}
