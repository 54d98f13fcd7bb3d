// A shop on the built program, a real port and a real file, for one fault each: writes that are acknowledged, and what stands.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { hashOfKey } from '../../src/faces/http/writers.ts'
import { type Service, startService } from '../support/service.ts'

const KEY = 'kiln-lane-keeper-000001'
const headers = { authorization: `Bearer ${KEY}`, 'content-type': 'application/json' }

export interface FaultShop {
  readonly service: () => Service
  readonly url: (path: string) => string
  /** Starts the program on the same register; `before` are shell words with its limits. */
  readonly start: (before?: string, env?: Readonly<Record<string, string>>) => Promise<Service>
  /** Adds the wrench that all else is noted of. */
  readonly addWrench: () => Promise<void>
  /** Notes that the wrench was dropped; the id of the entry once it was acknowledged. */
  readonly note: (text: string) => Promise<string>
  /** The ids of every entry, in order. */
  readonly ids: () => Promise<readonly string[]>
  readonly end: () => Promise<void>
}

export const openFaultShop = (database?: string): FaultShop => {
  const folder = mkdtempSync(join(tmpdir(), 'armlength-fault-'))
  const keys = join(folder, 'keys')
  writeFileSync(keys, `keeper office ${hashOfKey(KEY)}\n`)
  const fixed = { DATABASE_URL: database ?? `file:${join(folder, 'shop.db')}`, API_KEYS_FILE: keys }
  let service: Service | undefined
  const running = (): Service => {
    if (!service) throw new Error('not started')
    return service
  }
  const url = (path: string): string => running().url + path
  const post = async (path: string, body: object): Promise<{ id: string }> => {
    const reply = await fetch(url(path), {
      method: 'POST',
      headers,
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(10_000),
    })
    if (reply.status !== 201) throw new Error(`${path} gave ${reply.status}: ${await reply.text()}`)
    return (await reply.json()) as { id: string }
  }
  return {
    service: running,
    url,
    start: async (before = '', env = {}) => {
      service = await startService({ ...fixed, ...env }, [], before)
      return service
    },
    addWrench: async () => {
      await post('/v1/wrenches', {
        tag: 'W-1',
        name: 'Half-inch click wrench',
        'wrench-type': 'click',
        most: '200 N·m',
      })
    },
    note: async (text) => {
      const date = new Date().toISOString().slice(0, 10)
      return (await post('/v1/wrenches/W-1/events', { what: 'dropped', date, note: text })).id
    },
    ids: async () => {
      const reply = await fetch(url('/v1/export.json'))
      if (reply.status !== 200) throw new Error(`the register gave ${reply.status}`)
      return ((await reply.json()) as { entries: Array<{ id: string }> }).entries.map(({ id }) => id)
    },
    end: async () => {
      service?.kill()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const asked = '/v1/questions/pull?torque=100+N%C2%B7m&hand=400+mm'

/** Asks a question; how long the answer took in ms. Throws where it was none. */
export const answerMs = async (service: Service): Promise<number> => {
  const before = performance.now()
  const reply = await fetch(service.url + asked, { signal: AbortSignal.timeout(10_000) })
  const { status } = (await reply.json()) as { status: string }
  if (reply.status !== 200 || status !== 'answered') throw new Error(`not answered: ${reply.status} ${status}`)
  return performance.now() - before
}

export const memoryMiB = ({ pid }: Service): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024

export const handlesOf = (limits: string): number => Number(/Max open files\s+(\d+)/.exec(limits)?.[1] ?? 1024)

/** Tries until it does not throw; throws the last error once the time is up. */
export const untilWorks = async <T>(work: () => Promise<T>, mostMs: number): Promise<T> => {
  const end = performance.now() + mostMs
  for (;;) {
    try {
      return await work()
    } catch (error) {
      if (performance.now() > end) throw error
      await new Promise((resolve) => setTimeout(resolve, 100))
    }
  }
}
