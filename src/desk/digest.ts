// The weekly digest: made and sent once a week, however many processes run and however often they start. A lease lets one process
// at a time try; the week is marked once it is sent. Between the sending and the mark a process may die: whoever tries next sends
// again under the same name, and the channel takes a name once (see the door). The clock and the sender are handed in.
import { neverBack } from '../core/never-back.ts'
import { type Digest, digestOf, horizonOf } from '../register/digest.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Shop } from './shop.ts'

/** `gone`: nobody can be reached there, and trying again this week is no use. `later`: it may work in a while. */
export type Sent = 'sent' | 'gone' | 'later'

export interface DigestParts {
  readonly shop: Shop
  readonly store: Pick<RegisterStore, 'lease' | 'mark' | 'marked' | 'settings'>
  readonly now: () => Date
  /** IANA name. */
  readonly timeZone: string
  /** This process, by a name of its own. */
  readonly owner: string
  readonly send: (channel: string, digest: Digest, name: string) => Promise<Sent>
}

export const SHOP_SCOPE = 'shop'
export const DIGEST_CHANNEL = 'digest-channel'
const JOB = 'digest'
/** Monday at seven, by the shop's own clock. */
const HOUR = 7
const LEASE_MS = 120_000
const FIRST_WAIT_MS = 60_000
const LONGEST_WAIT_MS = 3_600_000
const DAY_MS = 86_400_000

interface Local {
  readonly day: string
  /** 0 is Monday. */
  readonly weekday: number
  readonly hour: number
}

const localOf = (at: Date, timeZone: string): Local => {
  const parts = Object.fromEntries(
    new Intl.DateTimeFormat('en-GB', {
      timeZone,
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      hourCycle: 'h23',
    })
      .formatToParts(at)
      .map(({ type, value }) => [type, value]),
  )
  const day = `${parts['year']}-${parts['month']}-${parts['day']}`
  return { day, weekday: (new Date(`${day}T00:00:00Z`).getUTCDay() + 6) % 7, hour: Number(parts['hour']) }
}

/** The Monday whose digest is to be sent by now; before seven on a Monday it is that of the week before. */
export const weekOf = (at: Date, timeZone: string): string => {
  const { day, weekday, hour } = localOf(at, timeZone)
  const back = weekday === 0 && hour < HOUR ? 7 : weekday
  return new Date(Date.parse(`${day}T00:00:00Z`) - back * DAY_MS).toISOString().slice(0, 10)
}

export type Tick = 'no-channel' | 'done' | 'elsewhere' | 'waiting' | Sent

export interface DigestLoop {
  /** Looks whether a digest is to be sent, and sends it; to be called every minute or so. Throws an Outage of the store. */
  readonly tick: () => Promise<Tick>
}

export const createDigest = ({ shop, store, now, timeZone, owner, send }: DigestParts): DigestLoop => {
  const steady = neverBack(() => now().getTime())
  let wait = FIRST_WAIT_MS
  let notBefore = 0
  let begun: string | undefined
  return {
    tick: async () => {
      const at = now()
      const week = weekOf(at, timeZone)
      if (steady() < notBefore) return 'waiting'
      const channel = (await store.settings(SHOP_SCOPE))[DIGEST_CHANNEL]
      if (channel === undefined) {
        // A channel that is chosen on a Thursday hears from the desk on the Monday after.
        begun = week
        return 'no-channel'
      }
      if (begun === week || (await store.marked(JOB, week))) return 'done'
      const iso = (ms: number): string => new Date(ms).toISOString()
      const lease = { name: JOB, owner, now: iso(at.getTime()), until: iso(at.getTime() + LEASE_MS) }
      if (!(await store.lease(lease))) return 'elsewhere'
      // Somebody may have sent it between the look and the lease.
      if (await store.marked(JOB, week)) return 'done'
      const today = shop.today()
      const digest = digestOf(await shop.fleet(), today, await shop.runs.dueBy(horizonOf(today)))
      const sent = await send(channel, digest, `${JOB}-${week}`)
      if (sent === 'later') {
        notBefore = steady() + wait
        wait = Math.min(wait * 2, LONGEST_WAIT_MS)
        return sent
      }
      wait = FIRST_WAIT_MS
      await store.mark(JOB, week, iso(now().getTime()))
      return sent
    },
  }
}
