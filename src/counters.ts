// What is counted, in place of a log line for every ask: answers, faults, chat events, HTTP times. No values, nobody's name.
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Asked } from './desk/desk.ts'

export const chatEvents = [
  'answered',
  'offered',
  'refused-busy',
  'twice',
  'too-old',
  'unknown',
  'failed',
  'timed-out',
  'late',
  'already-answered',
  'answered-late',
  'expired',
  'rate-limited',
  'dropped',
] as const
/** What became of one interaction. */
export type ChatEvent = (typeof chatEvents)[number]

export const messageEvents = [
  'answered',
  'hinted',
  'quiet',
  'silent',
  'refused-busy',
  'twice',
  'too-old',
  'forbidden',
  'gone',
  'timed-out',
  'failed',
  'dropped',
] as const
/** What became of one message that asked the bot. */
export type MessageEvent = (typeof messageEvents)[number]

export type ShardEvent = 'ready' | 'resumed' | 'reconnecting' | 'closed'

export interface Counters {
  readonly asked: (asked: Asked) => void
  readonly chat: (event: ChatEvent, shard?: number) => void
  readonly message: (event: MessageEvent) => void
  readonly http: (route: string, status: number, seconds: number) => void
  readonly shard: (shard: number, event: ShardEvent, isUp: boolean) => void
  readonly shards: (up: number) => void
  readonly registry: Registry
}

export const createCounters = ({ process: withProcess }: { readonly process: boolean }): Counters => {
  const registry = new Registry()
  if (withProcess) collectDefaultMetrics({ register: registry })
  const registers = [registry]
  const asks = new Counter({
    name: 'armlength_answers_total',
    help: 'Answers given, by question, outcome and door',
    labelNames: ['question', 'status', 'door'],
    registers,
  })
  const faults = new Counter({
    name: 'armlength_faults_total',
    help: 'Faults told to askers, by code',
    labelNames: ['code'],
    registers,
  })
  const chat = new Counter({
    name: 'armlength_chat_interactions_total',
    help: 'Chat interactions, by what became of them',
    labelNames: ['event'],
    registers,
  })
  const messages = new Counter({
    name: 'armlength_chat_messages_total',
    help: 'Messages that mention the bot or are sent to it, by what became of them',
    labelNames: ['event'],
    registers,
  })
  const shardsUp = new Gauge({ name: 'armlength_chat_shards_up', help: 'Chat shards connected', registers })
  const shardUp = new Gauge({
    name: 'armlength_chat_shard_up',
    help: 'Whether a shard is connected',
    labelNames: ['shard'],
    registers,
  })
  const shardEvents = new Counter({
    name: 'armlength_chat_shard_events_total',
    help: 'What happened to the connection of a shard',
    labelNames: ['shard', 'event'],
    registers,
  })
  const shardInteractions = new Counter({
    name: 'armlength_chat_shard_interactions_total',
    help: 'Chat interactions, by the shard over which they came',
    labelNames: ['shard'],
    registers,
  })
  const http = new Histogram({
    name: 'armlength_http_request_seconds',
    help: 'HTTP requests, by route and status',
    labelNames: ['route', 'status'],
    buckets: [0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.5, 1],
    registers,
  })
  return {
    asked: ({ question, status, door, faults: codes }) => {
      asks.inc({ question, status, door })
      for (const code of codes) faults.inc({ code })
    },
    chat: (event, shard) => {
      chat.inc({ event })
      if (shard !== undefined) shardInteractions.inc({ shard: String(shard) })
    },
    message: (event) => messages.inc({ event }),
    shard: (shard, event, isUp) => {
      shardEvents.inc({ shard: String(shard), event })
      shardUp.set({ shard: String(shard) }, isUp ? 1 : 0)
    },
    http: (route, status, seconds) => http.observe({ route, status: String(status) }, seconds),
    shards: (up) => shardsUp.set(up),
    registry,
  }
}
