// A busy day at once: the built program with a register in a file, asked a thousand distinct answers and ten writes a second from
// another process, over connections that stay open. Times run from when something was to be sent, so that falling behind is seen.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { hashOfKey } from '../../src/faces/http/writers.ts'
import { type Service, startService } from '../support/service.ts'
import { openWire, quantile, torqueOf, type Wire } from './wire.ts'

const KEY = 'kiln-lane-keeper-000001'
export const STEADY_SECONDS = 20
const WARM_SECONDS = 3
const CONNECTIONS = 32
const WRITES_A_WRENCH = 40
/** What Linux counts the time of processes in, a second. */
const TICKS = 100

interface Tally {
  readonly times: number[]
  failed: number
}

export interface SteadyRow {
  readonly name: string
  readonly wanted: number
  readonly reached: number
  readonly p50: number
  readonly p99: number
  readonly failed: number
}

/** Each of some connections sends its share, at its own moments. */
const drive = async (
  aSecond: number,
  wires: readonly Wire[],
  seconds: number,
  send: (wire: Wire, n: number) => Promise<number>,
): Promise<Tally> => {
  const tally: Tally = { times: [], failed: 0 }
  const began = performance.now()
  const all = Math.round(aSecond * seconds)
  const worker = async (wire: Wire, own: number): Promise<void> => {
    for (let n = own; n < all; n += wires.length) {
      const due = began + (n / aSecond) * 1000
      const early = due - performance.now()
      if (early > 0) await pause(early)
      // What is not sent by the end is not reached.
      if (performance.now() - began > seconds * 1000) return
      const status = await send(wire, n).catch(() => 0)
      if (status === 200 || status === 201) tally.times.push(performance.now() - due)
      else tally.failed++
    }
  }
  await Promise.all(wires.map(worker))
  return tally
}

const ticksOf = ({ pid }: Service): number => {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? []
  return Number(fields[11]) + Number(fields[12])
}

export const benchSteady = async (): Promise<{ rows: SteadyRow[]; cpu: number; loads: string }> => {
  const loads = loadavg()
    .map((one) => one.toFixed(2))
    .join(' ')
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  writeFileSync(join(folder, 'keys'), `keeper office ${hashOfKey(KEY)}\n`)
  const env = { DATABASE_URL: `file:${join(folder, 'shop.db')}`, API_KEYS_FILE: join(folder, 'keys') }
  const service = await startService(env)
  const wires = Array.from({ length: CONNECTIONS }, (_, n) => openWire(service.url, n))
  const pens = Array.from({ length: 4 }, (_, n) => openWire(service.url, CONNECTIONS + n))
  const headers = { authorization: `Bearer ${KEY}`, 'content-type': 'application/json' }
  let [asked, written] = [0, 0]
  const post = async (wire: Wire, path: string, body: object): Promise<number> =>
    (await wire.send(path, { text: JSON.stringify(body), headers })).status
  const tagOf = (n: number): string => `W-${Math.floor(n / WRITES_A_WRENCH)}`
  const answer = async (wire: Wire): Promise<number> =>
    (await wire.send(`/v1/questions/adapter-setting?torque=${torqueOf(++asked)}&lever=380+mm&adapter=45+mm%4030`))
      .status
  const write = (wire: Wire): Promise<number> => {
    const n = written++
    const date = new Date().toISOString().slice(0, 10)
    return post(wire, `/v1/wrenches/${tagOf(n)}/events`, { what: 'dropped', date, note: `note ${n}` })
  }
  const both = (seconds: number): Promise<[Tally, Tally]> =>
    Promise.all([drive(1000, wires, seconds, answer), drive(10, pens, seconds, write)])
  try {
    for (let n = 0; n <= (10 * (STEADY_SECONDS + WARM_SECONDS)) / WRITES_A_WRENCH; n++) {
      const tag = tagOf(n * WRITES_A_WRENCH)
      const status = await post(pens[0] as Wire, '/v1/wrenches', {
        tag,
        name: `Click wrench ${tag}`,
        'wrench-type': 'click',
        most: '200 N·m',
      })
      if (status !== 201) throw new Error(`the wrench ${tag} gave ${status}`)
    }
    await both(WARM_SECONDS)
    const [ticks, from] = [ticksOf(service), performance.now()]
    const [answers, writes] = await both(STEADY_SECONDS)
    const took = (performance.now() - from) / 1000
    const cpu = ((ticksOf(service) - ticks) / TICKS / took) * 100
    const row = (name: string, wanted: number, { times, failed }: Tally): SteadyRow => ({
      ...{ name, wanted, failed, reached: times.length / took },
      ...{ p50: quantile(times, 0.5), p99: quantile(times, 0.99) },
    })
    return { rows: [row('answers, distinct', 1000, answers), row('writes', 10, writes)], cpu, loads }
  } finally {
    for (const wire of [...wires, ...pens]) wire.close()
    service.kill()
    rmSync(folder, { recursive: true, force: true })
  }
}
