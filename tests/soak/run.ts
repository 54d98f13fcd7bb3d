// The built program under load while Discord misbehaves: sends interactions of every kind, each with a fate, and reports what became
// of each, what the program counted, and how much memory it held.
import { setTimeout as pause } from 'node:timers/promises'
import type { Ask } from '../support/fake-discord/ask.ts'
import type { CallbackRecord } from '../support/fake-discord/books.ts'
import { startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { seeded } from '../support/random.ts'
import { startService } from '../support/service.ts'
import { newAsks } from './asks.ts'
import { runChaos, type Spell } from './chaos.ts'
import { type Fate, faultOf, pickFate } from './fates.ts'

/** One interaction, from its making on. */
export interface Sent {
  readonly kind: NonNullable<Ask['kind']>
  readonly fate: Fate
  readonly at: number
  /** When the last of its callbacks came. */
  callbacks: number
  /** How often Discord took an answer. */
  answers: number
  /** When its first callback came, in ms from its making. */
  firstMs: number | undefined
  /** What its last callback was told. */
  status: number
  /** There was no session to send it to. */
  isNowhere: boolean
}

export interface SoakReport {
  readonly sent: readonly Sent[]
  readonly spells: readonly Spell[]
  readonly counted: Readonly<Record<string, number>>
  readonly deliveries: number
  readonly heapMiB: ReadonlyArray<readonly [number, number]>
  readonly rssMiB: ReadonlyArray<readonly [number, number]>
  /** How much later than asked for this process itself was woken, in ms, at worst in 19 of 20 times. */
  readonly lagMs: number
  /** Of the program, over all of the run. */
  readonly cpuSeconds: number
  readonly pages: Readonly<Record<number, number>>
  readonly violations: readonly string[]
  readonly identifies: number
  readonly log: string
  readonly exit: number | null
}

const KEPT_MS = 30_000
const TOOK: ReadonlySet<number> = new Set([200, 204])

const metric = (text: string, name: string): number => Number(new RegExp(`^${name} (\\S+)$`, 'm').exec(text)?.[1] ?? 0)

export const runSoak = async (seconds: number, aSecond: number, seed: number): Promise<SoakReport> => {
  const random = seeded(seed)
  const asks = newAsks(seeded(seed + 1))
  const known = new Map<string, { one: Sent; ask: Ask }>()
  const sent: Sent[] = []
  const discord = await startFakeDiscord({
    shards: 2,
    maxConcurrency: 2,
    heartbeatMs: 8000,
    faultFor: (route, [id = '']) => {
      const found = route === 'callback' ? known.get(id) : undefined
      return found && faultOf(found.one.fate, found.one.callbacks++)
    },
  })
  const service = await startService({
    DISCORD_TOKEN: discord.token,
    DISCORD_API_URL: discord.url,
    LOG_LEVEL: 'error',
    // As its unit and its container run it.
    MALLOC_ARENA_MAX: '2',
    NODE_OPTIONS: '--max-old-space-size=256',
  })
  await discord.ready(2)
  await discord.until('the commands are registered', () => discord.commands.length > 0)
  const began = performance.now()
  const isOver = (): boolean => performance.now() - began > seconds * 1000
  let deliveries = 0

  const learn = (record: CallbackRecord): void => {
    const found = known.get(record.id)
    if (!found) return
    found.one.firstMs ??= performance.now() - found.one.at
    found.one.status = record.code ?? record.status
    const { callbacks = [] } = found.one.fate
    const fault = faultOf(found.one.fate, found.one.callbacks - 1)
    // A lie is answered 200 and taken by nobody; what is taken and hangs is answered by nobody and taken.
    const isTaken =
      fault?.took === true || (TOOK.has(record.status) && !(fault && callbacks.includes(fault) && fault.status))
    if (isTaken) found.one.answers++
    if (isTaken && !fault) asks.learn(record, found.ask)
  }
  discord.onCallback(learn)

  const deliver = (raw: Parameters<typeof discord.deliver>[0], one: Sent): void => {
    try {
      discord.deliver(raw)
      deliveries++
    } catch {
      one.isNowhere = true
    }
  }
  const send = async (): Promise<void> => {
    const ask = asks.next()
    const fate = pickFate(random)
    const raw = discord.issue(ask)
    const one: Sent = {
      kind: ask.kind ?? 'slash',
      fate,
      at: performance.now(),
      callbacks: 0,
      answers: 0,
      status: 0,
      firstMs: undefined,
      isNowhere: false,
    }
    sent.push(one)
    known.set(String(raw['id']), { one, ask })
    setTimeout(() => known.delete(String(raw['id'])), KEPT_MS).unref()
    if (fate.lateMs) await pause(fate.lateMs)
    for (let copy = 0; copy < (fate.copies ?? 1); copy++) deliver(raw, one)
  }

  const heapMiB: Array<readonly [number, number]> = []
  const rssMiB: Array<readonly [number, number]> = []
  const pages: Record<number, number> = {}
  // A program that is gone is no failed request: what it said last is what is looked for.
  const ended = (): never => {
    throw new Error(`the program ended:\n${service.log().slice(-4000)}`)
  }
  const watch = async (): Promise<void> => {
    while (!isOver()) {
      await pause(1000)
      const at = (performance.now() - began) / 1000
      const text = await (await fetch(`${service.url}/metrics`).catch(ended)).text()
      heapMiB.push([at, metric(text, 'nodejs_heap_size_used_bytes') / 2 ** 20])
      rssMiB.push([at, metric(text, 'process_resident_memory_bytes') / 2 ** 20])
      const { status } = await fetch(`${service.url}/ask/pull?torque=100+N%C2%B7m&hand=1+m`)
      pages[status] = (pages[status] ?? 0) + 1
      discord.forget(KEPT_MS)
    }
  }

  const lags: number[] = []
  const load = async (): Promise<void> => {
    while (!isOver()) {
      const due = Math.floor(((performance.now() - began) / 1000) * aSecond)
      const batch = Array.from({ length: Math.max(due - sent.length, 0) }, send)
      // What was sent within one turn arrives in another order than it was made.
      batch.reverse()
      void Promise.all(batch)
      const before = performance.now()
      await pause(10)
      lags.push(performance.now() - before - 10)
    }
  }

  const [spells] = await Promise.all([runChaos(discord, seeded(seed + 2), isOver), watch(), load()])
  // Whatever is under way is given its time.
  await pause(5000)
  const text = await (await fetch(`${service.url}/metrics`)).text()
  const counted = Object.fromEntries(
    [...text.matchAll(/^armlength_chat_interactions_total\{event="([\w-]+)"\} (\d+)$/gm)].map(([, event, n]) => [
      event as string,
      Number(n),
    ]),
  )
  const exit = await service.stop()
  await discord.close()
  return {
    ...{ sent, spells, counted, deliveries, heapMiB, rssMiB, pages, exit },
    lagMs: lags.sort((one, other) => one - other)[Math.floor(lags.length * 0.95)] ?? 0,
    cpuSeconds: metric(text, 'process_cpu_seconds_total'),
    violations: discord.violations.map(({ where, code, message, path }) => `${where} ${path} ${code} ${message}`),
    identifies: discord.identifies.length,
    log: service.log(),
  }
}
