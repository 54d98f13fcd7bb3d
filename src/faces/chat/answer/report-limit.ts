// How often wrong answers may be told: a message once a day by the same person, and a server a few times a minute, so that nobody
// floods those who look after the desk. In memory alone, and bounded: the oldest goes.
import { neverBack } from '../../../core/never-back.ts'

const DAY_MS = 86_400_000
const MINUTE_MS = 60_000
const MOST_IN_MINUTE = 5
const MOST_HELD = 10_000

export interface Reporter {
  readonly user: string
  readonly server: string
  readonly message: string
}

export interface ReportLimit {
  /** Whether it may be told now; if so it counts at once, so that a second one beside it is the second. */
  readonly admit: (reporter: Reporter) => 'open' | 'again' | 'many'
  /** It did not arrive: they may try again. */
  readonly giveBack: (reporter: Reporter) => void
}

// A Map keeps the order in which they came: the oldest stand first.
const letGo = <T>(held: Map<string, T>, isOver: (one: T) => boolean): void => {
  for (const [oldest, one] of held) {
    if (held.size < MOST_HELD && !isOver(one)) break
    held.delete(oldest)
  }
}

export const createReportLimit = (clock: () => number): ReportLimit => {
  const now = neverBack(clock)
  const told = new Map<string, number>()
  const minutes = new Map<string, { readonly since: number; count: number }>()
  const keyOf = ({ user, message }: Reporter): string => `${user} ${message}`
  return {
    admit: (reporter) => {
      const time = now()
      letGo(told, (at) => time - at >= DAY_MS)
      letGo(minutes, ({ since }) => time - since >= MINUTE_MS)
      if (told.has(keyOf(reporter))) return 'again'
      const minute = minutes.get(reporter.server) ?? { since: time, count: 0 }
      if (minute.count >= MOST_IN_MINUTE) return 'many'
      minute.count++
      minutes.set(reporter.server, minute)
      told.set(keyOf(reporter), time)
      return 'open'
    },
    giveBack: (reporter) => {
      told.delete(keyOf(reporter))
    },
  }
}
