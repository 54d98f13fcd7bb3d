// How often one user, one server and the whole process may ask, with Bottleneck. Never refuses 10 asks in 10 s of one user
// or 100 in 10 s of one server. Reservoirs refill on a heartbeat of up to 5 s beyond their 10 s, so they hold for 15 s.
import Bottleneck from 'bottleneck'

const WINDOW_MS = 10_000
const USER_IN_WINDOW = 20
const SERVER_IN_WINDOW = 200
/** Answers under way at once; past this something is badly stuck, and the rest is told to wait. */
const AT_ONCE = 200
const IDLE_MS = 60_000

export interface Limits {
  /** Runs a job now, or answers `busy` at once; nothing is queued behind a person's back. */
  readonly run: <T>(who: { user: string; server: string | undefined }, job: () => Promise<T>) => Promise<T | 'busy'>
  readonly close: () => Promise<void>
}

const reservoir = (amount: number): Bottleneck.ConstructorOptions => ({
  reservoir: amount,
  reservoirRefreshAmount: amount,
  reservoirRefreshInterval: WINDOW_MS,
  highWater: 0,
  strategy: Bottleneck.strategy.OVERFLOW,
})

export const createLimits = (): Limits => {
  const users = new Bottleneck.Group({ ...reservoir(USER_IN_WINDOW), timeout: IDLE_MS })
  const servers = new Bottleneck.Group({ ...reservoir(SERVER_IN_WINDOW), timeout: IDLE_MS })
  const whole = new Bottleneck({ maxConcurrent: AT_ONCE, highWater: 0, strategy: Bottleneck.strategy.OVERFLOW })
  return {
    run: async (who, job) => {
      const inner = () => whole.schedule(job)
      const within = who.server === undefined ? inner : () => servers.key(who.server as string).schedule(inner)
      try {
        return await users.key(who.user).schedule(within)
      } catch (error) {
        if (error instanceof Bottleneck.BottleneckError) return 'busy'
        throw error
      }
    },
    close: async () => {
      await Promise.all([users.disconnect(), servers.disconnect(), whole.disconnect()])
    },
  }
}
