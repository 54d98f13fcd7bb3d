// How often one user, one server and the whole process may ask, counted by Bottleneck. Never refuses 10 asks in 10 s of one
// user or 100 in 10 s of one server. Reservoirs refill on a heartbeat of up to 5 s beyond their 10 s, so they hold for 15 s.
import Bottleneck from 'bottleneck'

const WINDOW_MS = 10_000
const USER_IN_WINDOW = 20
const SERVER_IN_WINDOW = 200
const PROCESS_IN_WINDOW = 20_000
const IDLE_MS = 60_000
// Bottleneck takes a few ms to count, more than an answer takes. So an ask of somebody with few asks being counted goes
// ahead at once; a burst, and everybody who was over the limit a moment ago, waits for the count.
const AHEAD_OF_COUNT = 3
const MOST_GATES = 50_000

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

const counted = async (): Promise<void> => {}

const createGates = (amount: number) => {
  const group = new Bottleneck.Group({ ...reservoir(amount), timeout: IDLE_MS })
  const gates = new Map<string, Gate>()
  const count = async (key: string, gate: Gate): Promise<boolean> => {
    try {
      await group.key(key).schedule(counted)
      gate.shut = false
    } catch (error) {
      if (!(error instanceof Bottleneck.BottleneckError)) throw error
      gate.shut = true
    }
    gate.counting--
    if (gate.counting === 0 && !gate.shut) gates.delete(key)
    return !gate.shut
  }
  return {
    admit: (key: string): Promise<boolean> | true => {
      let gate = gates.get(key)
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

/** The whole process is counted without a timer and without waiting: one queue for everybody, on a busy machine, never ends. */
export const createWhole = (amount: number, now: () => number): (() => boolean) => {
  let [since, count] = [0, 0]
  return () => {
    if (now() - since >= WINDOW_MS) [since, count] = [now(), 0]
    count++
    return count <= amount
  }
}

export const createLimits = (now: () => number): Limits => {
  const users = createGates(USER_IN_WINDOW)
  const servers = createGates(SERVER_IN_WINDOW)
  const whole = createWhole(PROCESS_IN_WINDOW, now)
  return {
    admit: ({ user, server }) => {
      const others = (): Promise<boolean> | true => {
        const isOpen = server === undefined ? true : servers.admit(server)
        if (!whole()) return Promise.resolve(false)
        return isOpen
      }
      // One who asks without end uses up their own share, not that of everybody in the server.
      const own = users.admit(user)
      return own === true ? others() : own.then((open) => open && others())
    },
    close: async () => {
      await Promise.all([users.close(), servers.close()])
    },
  }
}
