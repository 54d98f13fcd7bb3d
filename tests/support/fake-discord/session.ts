// One gateway session: the events it was given, numbered, so that a resume can be given those that it missed. Events
// come to it also while nobody is connected; only a session that Discord gave up stops taking them.

import { randomBytes } from 'node:crypto'
import type { WebSocket } from 'ws'

interface Event {
  op: 0
  t: string
  s: number
  d: unknown
}

/** Close codes after which Discord lets no session be resumed. */
const ending = new Set([1000, 1001, 4004, 4007, 4009, 4010, 4011, 4012, 4013, 4014])
export const endsSession = (code: number): boolean => ending.has(code)

export class Session {
  readonly id = randomBytes(16).toString('hex')
  readonly shard: readonly [number, number]
  readonly events: Event[] = []
  readonly intents: number
  socket: WebSocket | undefined
  ended = false
  private forgotten = 0

  constructor(shard: readonly [number, number], intents: number, socket: WebSocket) {
    this.shard = shard
    this.intents = intents
    this.socket = socket
  }

  get connected(): boolean {
    return this.socket !== undefined && this.socket.readyState === this.socket.OPEN
  }

  get seq(): number {
    return this.forgotten + this.events.length
  }

  /** Lets go of all but the last events; what is gone cannot be replayed. */
  forget(keep: number): void {
    this.forgotten += this.events.splice(0, Math.max(this.events.length - keep, 0)).length
  }

  /** Whether events of this server (null: direct messages) come to this shard. */
  serves(guild: string | null): boolean {
    const [shard, count] = this.shard
    return Number((BigInt(guild ?? '0') >> 22n) % BigInt(count)) === shard
  }

  give(t: string, d: unknown): void {
    const event: Event = { op: 0, t, s: this.seq + 1, d }
    this.events.push(event)
    if (this.connected) this.socket?.send(JSON.stringify(event))
  }

  replay(after: number): number {
    const missed = this.events.filter((event) => event.s > after)
    for (const event of missed) this.socket?.send(JSON.stringify(event))
    return missed.length
  }
}
