// What people set for themselves is erased when nobody has used it for long: looked at on start and some times a day.
import type { RegisterStore } from '../../store/lazy.ts'

const EVERY_MS = 6 * 3_600_000
const DAY_MS = 86_400_000

export interface RetentionParts {
  readonly store: Pick<RegisterStore, 'forgetIdle'>
  readonly retentionDays: number
  readonly now: () => number
  readonly log: {
    readonly info: (facts: object, message: string) => void
    readonly warn: (facts: object, message: string) => void
  }
}

export const startRetention = ({ store, retentionDays, now, log }: RetentionParts): NodeJS.Timeout => {
  const look = (): void => {
    store.forgetIdle(new Date(now() - retentionDays * DAY_MS).toISOString()).then(
      (people) => people > 0 && log.info({ people }, 'settings that nobody used were erased'),
      (error: unknown) => log.warn({ err: error }, 'old settings could not be looked at'),
    )
  }
  look()
  return setInterval(look, EVERY_MS).unref()
}
