// What people set for themselves is erased when nobody has used it for long: looked at on start and some times a day. What is
// erased cannot be brought back, and so a clock is believed only after it has stood for a while: it leaves a mark in the store on
// each day, and erases on a day only where one was left two to so many days before. A clock that jumps ahead for some hours
// finds none, and erases nothing.
import type { RegisterStore } from '../../store/lazy.ts'

const EVERY_MS = 6 * 3_600_000
const DAY_MS = 86_400_000
const JOB = 'retention'
/** A desk that was off for longer begins anew. */
const LONGEST_GAP_DAYS = 31

export interface RetentionParts {
  readonly store: Pick<RegisterStore, 'forgetIdle' | 'mark' | 'markedBefore'>
  readonly retentionDays: number
  readonly now: () => number
  readonly log: {
    readonly info: (facts: object, message: string) => void
    readonly warn: (facts: object, message: string) => void
  }
}

/** Erases what is idle; gives the number of people, or undefined where the clock is not believed yet. */
export const eraseIdle = async ({ store, retentionDays, now }: RetentionParts): Promise<number | undefined> => {
  const time = now()
  const back = (days: number): string => new Date(time - days * DAY_MS).toISOString()
  const dayBack = (days: number): string => back(days).slice(0, 10)
  await store.mark(JOB, dayBack(0), back(0))
  const before = await store.markedBefore(JOB, dayBack(1))
  if (before === undefined || before < dayBack(LONGEST_GAP_DAYS)) return undefined
  return store.forgetIdle(back(retentionDays))
}

export const startRetention = (parts: RetentionParts): NodeJS.Timeout => {
  const { log } = parts
  const look = (): void => {
    eraseIdle(parts).then(
      (people) => people !== undefined && people > 0 && log.info({ people }, 'settings that nobody used were erased'),
      (error: unknown) => log.warn({ err: error }, 'old settings could not be looked at'),
    )
  }
  look()
  return setInterval(look, EVERY_MS).unref()
}
