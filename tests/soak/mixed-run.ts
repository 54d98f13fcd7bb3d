// The built program with a register in a file, asked and written to over HTTP and in chat at a steady rate while it is killed and
// people hang up; and what became of every request.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { hashOfKey } from '../../src/faces/http/writers.ts'
import { memoryMiB, untilWorks } from '../faults/shop.ts'
import { seeded } from '../support/random.ts'
import { type Service, startService } from '../support/service.ts'
import { nextRead, type ReadKind } from './mixed-asks.ts'
import { type MixedChat, openMixedChat } from './mixed-chat.ts'

const KEY = 'kiln-lane-keeper-000001'
export const READS_A_SECOND = 40
export const WRITES_A_SECOND = 8
export const CHAT_A_SECOND = 10
/** Every so manieth of them writes. */
const CHAT_WRITES = 5
/** A wrench has so many entries and no more: the length of a history is none of what is looked at here. */
const WRITES_A_WRENCH = 40
const PATIENCE_MS = 30_000

export interface Write {
  readonly key: string
  readonly note: string
  /** The id that was acknowledged, at every time that it was. */
  readonly ids: string[]
  /** Said to be kept where no id is told, as chat says it. */
  isTold?: boolean
}

export type MixedKind = ReadKind | 'write' | 'chat'

export interface MixedReport {
  readonly times: Readonly<Partial<Record<MixedKind, number[]>>>
  /** What was answered with 500 or more, or not at all, while nothing was done to the program. */
  readonly wrong: readonly string[]
  readonly writes: readonly Write[]
  readonly kept: ReadonlyArray<{ readonly id: string; readonly note: string }>
  readonly deeds: Readonly<Record<string, number>>
  /** Seconds since the beginning, and MiB: resident, and of the heap what is in use. */
  readonly rss: ReadonlyArray<readonly [number, number]>
  readonly heap: ReadonlyArray<readonly [number, number]>
  readonly logs: string
  readonly exit: number | null
}

interface Told {
  readonly status: number
  readonly text: string
}

/** What is typed letter by letter is refused now and then; of two who write at once one is told to do it again. */
const isWrong = (kind: ReadKind | 'write', status: number): boolean =>
  status >= (kind === 'typing' ? 500 : 400) && !(kind === 'write' && status === 409)

const agent = new Agent({ keepAlive: true, maxSockets: 64 })

const send = (url: string, body?: object, key = '', signal?: AbortSignal): Promise<Told> =>
  new Promise((resolve, reject) => {
    const headers = { authorization: `Bearer ${KEY}`, 'content-type': 'application/json', 'idempotency-key': key }
    const sent = request(
      url,
      { agent, timeout: 10_000, ...(signal ? { signal } : {}), ...(body ? { method: 'POST', headers } : {}) },
      (reply) => {
        const parts: Buffer[] = []
        reply.on('data', (part: Buffer) => parts.push(part)).on('error', reject)
        reply.on('end', () => resolve({ status: reply.statusCode ?? 0, text: Buffer.concat(parts).toString() }))
      },
    )
    sent.on('timeout', () => sent.destroy(new Error('no answer in 10 s'))).on('error', reject)
    sent.end(body && JSON.stringify(body))
  })

export const runMixed = async (seconds: number, seed: number): Promise<MixedReport> => {
  const [asks, chance, pen] = [seeded(seed), seeded(seed + 1), seeded(seed + 2)]
  const folder = mkdtempSync(join(tmpdir(), 'armlength-mixed-'))
  writeFileSync(join(folder, 'keys'), `keeper office ${hashOfKey(KEY)}\n`)
  const chat: MixedChat = await openMixedChat(seed + 3)
  const env = {
    ...chat.env,
    DATABASE_URL: `file:${join(folder, 'shop.db')}`,
    API_KEYS_FILE: join(folder, 'keys'),
    // As its unit and its container run it.
    MALLOC_ARENA_MAX: '2',
    NODE_OPTIONS: '--max-old-space-size=256',
  }
  let service: Service = await startService(env)
  await chat.ready()
  const { url } = service
  const port = new URL(url).port
  const started = [service]
  const began = performance.now()
  const since = (): number => (performance.now() - began) / 1000

  /** When the program was not there; open while it is not. */
  const down: Array<{ readonly from: number; to: number }> = []
  /** The same for chat, which is there a little later. */
  const mutes: Array<{ readonly from: number; to: number }> = []
  const isClear = (of: typeof down, from: number, to: number): boolean =>
    of.every((one) => to < one.from || from > one.to + 0.5)
  const wasUp = (from: number, to: number): boolean => isClear(down, from, to)
  const wrong: string[] = []
  const chatTimes: number[] = []
  const times: Partial<Record<MixedKind, number[]>> = { chat: chatTimes }
  const deeds: Record<string, number> = {}
  const timed = async (
    kind: ReadKind | 'write',
    what: string,
    work: () => Promise<Told>,
  ): Promise<Told | undefined> => {
    const from = since()
    const told = await work().catch((error: Error) => error)
    const to = since()
    if (told instanceof Error ? wasUp(from, to) : isWrong(kind, told.status) && wasUp(from, to))
      wrong.push(`${what} at ${from.toFixed(1)} s: ${told instanceof Error ? told.message : told.status}`)
    if (told instanceof Error) return undefined
    const list = times[kind] ?? []
    times[kind] = list
    list.push((to - from) * 1000)
    return told
  }

  const writes: Write[] = []
  const wrenches: string[] = []
  const acknowledged = ({ status, text }: Told): string => {
    if (status !== 201 && status !== 200) throw new Error(`a write gave ${status}: ${text}`)
    return (JSON.parse(text) as { id: string }).id
  }
  /** As a client should: again under the same key until it is acknowledged. */
  const insist = async (write: Write, path: string, body: object): Promise<void> => {
    const until = since() + PATIENCE_MS / 1000
    for (;;) {
      const told = await timed('write', `write ${write.key}`, () => send(url + path, body, write.key))
      if (told && told.status < 500 && told.status !== 409) return void write.ids.push(acknowledged(told))
      if (since() > until) throw new Error(`${write.key} was not taken in ${PATIENCE_MS} ms`)
      await pause(100)
    }
  }
  const addWrench = async (n: number): Promise<void> => {
    const [tag, name] = [`W-${n}`, `Click wrench ${n}`]
    const write: Write = { key: `wrench-${seed}-${n}`, note: name, ids: [] }
    writes.push(write)
    await insist(write, '/v1/wrenches', { tag, name, 'wrench-type': 'click', most: '200 N·m' })
    wrenches.push(tag)
  }
  const addNote = async (n: number, isTwice: boolean, isCut: boolean): Promise<void> => {
    const write: Write = { key: `note-${seed}-${n}`, note: `note ${n}`, ids: [] }
    writes.push(write)
    const path = `/v1/wrenches/${wrenches.at(-1)}/events`
    const body = { what: 'dropped', date: new Date().toISOString().slice(0, 10), note: write.note }
    if (isCut) {
      // Hung up on: it may have been kept or not, but never twice.
      deeds['a write is hung up on'] = (deeds['a write is hung up on'] ?? 0) + 1
      await send(url + path, body, write.key, AbortSignal.timeout(1 + (n % 8))).then(acknowledged, () => undefined)
      if (n % 2) return
    }
    await insist(write, path, body)
    if (isTwice) await insist(write, path, body)
  }

  const inChat = async (n: number): Promise<void> => {
    const write: Write | undefined =
      n % CHAT_WRITES === 0 ? { key: `chat-${seed}-${n}`, note: `chat note ${n}`, ids: [] } : undefined
    if (write) writes.push(write)
    const from = since()
    const told = write ? await chat.keep(wrenches.at(-1) ?? '', write.note) : await chat.ask()
    const to = since()
    if (write && told === 'kept') write.isTold = true
    if (told !== 'nowhere' && told !== 'failed') chatTimes.push((to - from) * 1000)
    else if (isClear(mutes, from, to)) wrong.push(`chat at ${from.toFixed(1)} s: ${told}`)
  }

  const kill = async (): Promise<void> => {
    const one = { from: since(), to: Number.POSITIVE_INFINITY }
    down.push(one)
    const mute = { from: one.from, to: Number.POSITIVE_INFINITY }
    mutes.push(mute)
    service.kill()
    while (service.running()) await pause(5)
    service = await untilWorks(() => startService({ ...env, PORT: port }), 10_000)
    started.push(service)
    one.to = since()
    await chat.ready()
    mute.to = since()
  }
  const slowClients = async (): Promise<void> => {
    const sockets = Array.from({ length: 10 }, () => connect(Number(port), '127.0.0.1').on('error', () => undefined))
    for (const letter of 'GET / HTTP/1.1\r\nhost: desk\r\nx-slow: ') {
      for (const socket of sockets) if (socket.writable) socket.write(letter)
      await pause(10 + chance() * 30)
    }
    for (const socket of sockets) socket.destroy()
  }
  const hangUps = async (): Promise<void> => {
    const cut = () =>
      send(
        url + nextRead(chance, wrenches[0] ?? '').path,
        undefined,
        '',
        AbortSignal.timeout(1 + Math.floor(chance() * 6)),
      )
    await Promise.allSettled(Array.from({ length: 20 }, cut))
  }

  await addWrench(0)
  let isOver = false
  const under = new Set<Promise<void>>()
  const troubles: unknown[] = []
  const go = (work: Promise<unknown>): void => {
    const mine = work.then(
      () => undefined,
      (error: unknown) => void troubles.push(error),
    )
    under.add(mine)
    void mine.then(() => under.delete(mine))
  }
  /** At a steady rate, by the time that has passed: a late turn is made up for. */
  const steadily = async (aSecond: number, work: (n: number) => void): Promise<void> => {
    for (let n = 0; !isOver; n++) {
      const ahead = n / aSecond - since()
      if (ahead > 0) await pause(ahead * 1000)
      if (!isOver) work(n)
    }
  }
  const load = [
    steadily(READS_A_SECOND, () => {
      const { kind, path } = nextRead(asks, wrenches[Math.floor(asks() * wrenches.length)] ?? '')
      go(timed(kind, path, () => send(url + path)))
    }),
    steadily(WRITES_A_SECOND, (n) => {
      const roll = pen()
      if (n > 0 && n % WRITES_A_WRENCH === 0) go(addWrench(n / WRITES_A_WRENCH))
      else go(addNote(n, roll < 0.2, roll > 0.9))
    }),
    steadily(CHAT_A_SECOND, (n) => go(inChat(n))),
  ]
  const rss: Array<readonly [number, number]> = []
  const heap: Array<readonly [number, number]> = []
  const watch = (async () => {
    while (!isOver) {
      if (service.running()) rss.push([since(), memoryMiB(service)])
      const told = await send(`${url}/metrics`).catch(() => undefined)
      const used = /^nodejs_heap_size_used_bytes (\S+)$/m.exec(told?.text ?? '')
      if (used) heap.push([since(), Number(used[1]) / 2 ** 20])
      await pause(Math.min(1000, seconds * 20))
    }
  })()
  // Killed in the first quarter, and once more at the end: what stands between is no longer young when its memory begins to be looked
  // at (a third in; a process that started a moment ago holds 40 MiB less), and stands long enough to show whether it grows.
  const chaos = (async () => {
    for (let n = 0; since() < seconds - 1; n++) {
      await pause(Math.min(400 + chance() * 1600, Math.max(0, (seconds - 1 - since()) * 1000)))
      const deed = n % 3 === 0 && since() < seconds / 4 ? 'killed' : chance() < 0.5 ? 'slow clients' : 'hung up on'
      deeds[deed] = (deeds[deed] ?? 0) + 1
      await (deed === 'killed' ? kill() : deed === 'slow clients' ? slowClients() : hangUps())
    }
    deeds['killed'] = (deeds['killed'] ?? 0) + 1
    await kill()
  })()
  await chaos
  while (since() < seconds) await pause(50)
  isOver = true
  await Promise.all([...load, watch])
  await Promise.all(under)
  const exported = await send(`${url}/v1/export.json`)
  const { entries } = JSON.parse(exported.text) as {
    entries: Array<{ id: string; body: { note?: string; name?: string } }>
  }
  agent.destroy()
  const exit = await service.stop()
  await chat.close()
  rmSync(folder, { recursive: true, force: true })
  if (troubles.length > 0) throw troubles[0]
  const kept = entries.map(({ id, body }) => ({ id, note: body.note ?? body.name ?? '' }))
  return { times, wrong, writes, kept, deeds, rss, heap, logs: started.map(({ log }) => log()).join(''), exit }
}
