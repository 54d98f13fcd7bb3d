// How often one user, one server and the whole process may ask, counted by Bottleneck. Never refuses 10 asks in 10 s of one
// user or 100 in 10 s of one server. Reservoirs refill on a heartbeat of up to 5 s beyond their 10 s, so they hold for 15 s.
// They refill by the machine's clock, so that they are made anew where it was set back: else nobody over a limit would be let in
// again before it is that late once more.
import Bottleneck from 'bottleneck'
import { neverBack } from '../../core/never-back.ts'

const WINDOW_MS = 10_000
const PROCESS_IN_WINDOW = 20_000
const IDLE_MS = 60_000
// A limiter of its own costs nearly a millisecond and some timers: who asks now and then has none. Beyond what is free in a
// window, asks are counted.
const user = { free: 4, counted: 16 }
const server = { free: 60, counted: 140 }
// Bottleneck takes a few ms to count, more than an answer takes. So an ask of somebody with few asks being counted goes
// ahead at once; a burst, and everybody who was over the limit a moment ago, waits for the count.
const AHEAD_OF_COUNT = 3
const MOST_GATES = 50_000
/** Time servers set a clock by less without anybody's noticing. */
const SET_BACK_MS = 1000

interface Share {
  readonly free: number
  readonly counted: number
}

interface Gate {
  counting: number
  shut: boolean
}

export interface Limits {
  /** True at once, or as soon as it is counted, where an ask is within every limit. */
  readonly admit: (who: { user: string; server: string | undefined }) => Promise<boolean> | true
  readonly close: () => Promise<void>
}

const reservoir = (amount: number): Bottleneck.ConstructorOptions => ({
  reservoir: amount,
  reservoirRefreshAmount: amount,
  reservoirRefreshInterval: WINDOW_MS,
  highWater: 0,
  strategy: Bottleneck.strategy.OVERFLOW,
})

const nothing = async (): Promise<void> => {}

/** Whether it is within the limiter; anything but that is a bug. */
const isCounted = async (counting: Promise<void>): Promise<boolean> => {
  try {
    await counting
    return true
  } catch (error) {
    if (error instanceof Bottleneck.BottleneckError) return false
    throw error
  }
}

/** The first asks of each in a window, for nothing. */
const createFree = (amount: number, now: () => number): ((key: string) => boolean) => {
  const windows = new Map<string, { readonly since: number; count: number }>()
  return (key) => {
    const time = now()
    // A Map keeps the order in which windows began: the oldest stand first.
    for (const [oldest, { since }] of windows) {
      if (time - since < WINDOW_MS && windows.size <= MOST_GATES) break
      windows.delete(oldest)
    }
    const window = windows.get(key)
    if (!window) windows.set(key, { since: time, count: 1 })
    else window.count++
    return (window?.count ?? 1) <= amount
  }
}

const createGates = ({ free, counted }: Share, now: () => number) => {
  const isFree = createFree(free, neverBack(now))
  const group = new Bottleneck.Group({ ...reservoir(counted), timeout: IDLE_MS })
  const gates = new Map<string, Gate>()
  const count = async (key: string, gate: Gate): Promise<boolean> => {
    gate.shut = !(await isCounted(group.key(key).schedule(nothing)))
    gate.counting--
    if (gate.counting === 0 && !gate.shut) gates.delete(key)
    return !gate.shut
  }
  return {
    admit: (key: string): Promise<boolean> | true => {
      let gate = gates.get(key)
      if (isFree(key) && !gate?.shut) return true
      if (!gate) {
        // A gate that is let go opens again; whoever is over the limit is counted out once more.
        for (const oldest of gates.keys()) {
          if (gates.size < MOST_GATES) break
          gates.delete(oldest)
        }
        gate = { counting: 0, shut: false }
        gates.set(key, gate)
      }
      gate.counting++
      // Counting begins after the answer is on its way.
      const counting = gate
      const sure = new Promise((resolve) => setImmediate(resolve)).then(() => count(key, counting))
      return gate.shut || gate.counting > AHEAD_OF_COUNT ? sure : true
    },
    close: () => group.disconnect(),
  }
}

/** The whole process: nobody waits. Asks are counted many at once, as one queue for everybody would grow on a busy machine. */
export const createWhole = (amount: number) => {
  const limiter = new Bottleneck(reservoir(amount))
  let [pending, isShut, isCounting] = [0, false, false]
  const count = async (): Promise<void> => {
    isCounting = true
    while (pending > 0) {
      const weight = Math.min(pending, amount)
      pending = 0
      isShut = !(await isCounted(limiter.schedule({ weight }, nothing)))
    }
    isCounting = false
  }
  return {
    isOpen: (): boolean => {
      pending++
      if (!isCounting) {
        isCounting = true
        setImmediate(() => void count())
      }
      return !isShut
    },
    close: () => limiter.disconnect(),
  }
}

const createAll = (now: () => number) => ({
  users: createGates(user, now),
  servers: createGates(server, now),
  whole: createWhole(PROCESS_IN_WINDOW),
})

const closeAll = async ({ users, servers, whole }: ReturnType<typeof createAll>): Promise<void> => {
  await Promise.all([users.close(), servers.close(), whole.close()])
}

export const createLimits = (now: () => number): Limits => {
  let all = createAll(now)
  let last = now()
  const current = () => {
    const time = now()
    if (time < last - SET_BACK_MS) {
      closeAll(all).catch(() => undefined)
      all = createAll(now)
    }
    last = time
    return all
  }
  return {
    admit: (who) => {
      const { users, servers, whole } = current()
      const others = (): Promise<boolean> | true => {
        if (!whole.isOpen()) return Promise.resolve(false)
        return who.server === undefined ? true : servers.admit(who.server)
      }
      // One who asks without end uses up their own share, not that of everybody in the server.
      const own = users.admit(who.user)
      return own === true ? others() : own.then((open) => open && others())
    },
    close: () => closeAll(all),
  }
}
