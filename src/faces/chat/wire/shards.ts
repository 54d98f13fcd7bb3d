// How each shard of this process is: what is told when somebody asks whether chat is well, what is counted, and one log line for
// each change.
import type { ShardEvent } from '../../../counters.ts'

export interface ShardParts {
  readonly count: (shard: number, event: ShardEvent, isUp: boolean) => void
  readonly up: (shards: number) => void
  readonly log: { readonly warn: (facts: object, message: string) => void }
}

export interface Shards {
  readonly expect: (shards: readonly number[]) => void
  readonly changed: (shard: number, event: ShardEvent) => void
  /** A sentence for each shard that is not connected. */
  readonly troubles: () => readonly string[]
  /** None is connected, and none will be. */
  readonly end: () => void
}

const isUpAfter: Readonly<Record<ShardEvent, boolean>> = {
  ready: true,
  resumed: true,
  reconnecting: false,
  closed: false,
}

export const createShards = ({ count, up, log }: ShardParts): Shards => {
  const connected = new Map<number, boolean>()
  const tell = (): void => up([...connected.values()].filter(Boolean).length)
  return {
    expect: (shards) => {
      for (const shard of shards) if (!connected.has(shard)) connected.set(shard, false)
    },
    changed: (shard, event) => {
      const isUp = isUpAfter[event]
      // While a shard is away, the library tells of each try.
      if (!isUp && connected.get(shard)) log.warn({ shard }, 'a chat shard is away')
      connected.set(shard, isUp)
      count(shard, event, isUp)
      tell()
    },
    troubles: () => [...connected].flatMap(([shard, isUp]) => (isUp ? [] : [`chat shard ${shard} is not connected`])),
    end: () => {
      for (const shard of connected.keys()) {
        connected.set(shard, false)
        count(shard, 'closed', false)
      }
      tell()
    },
  }
}
