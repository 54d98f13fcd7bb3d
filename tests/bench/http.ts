// The answer route against bare Fastify and zod that send the same bytes: repeated inputs, and inputs that are new each time.
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const here = import.meta.dirname
const ROUNDS = 5
const SECONDS = 2
const CONNECTIONS = 16

const start = (kind: 'ours' | 'bare', answerFile: string): Promise<{ child: ChildProcess; url: string }> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', join(here, 'http-server.ts'), kind, answerFile], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    child.once('exit', (code) => reject(new Error(`${kind} ended with ${code}`)))
    child.stdout?.once('data', (chunk: Buffer) => resolve({ child, url: chunk.toString().trim() }))
  })

// A torque that nobody asked for before in this run: five decimals, so that it is never read as a thousands mark.
const path = (n: number): string =>
  `/v1/questions/adapter-setting?torque=${(100 + n / 100_000).toFixed(5)}+N%C2%B7m&lever=380+mm&adapter=45+mm%4030`

const get = (agent: Agent, url: string): Promise<number> =>
  new Promise((resolve, reject) => {
    request(url, { agent }, (reply) => {
      let bytes = 0
      reply.on('data', (chunk: Buffer) => {
        bytes += chunk.length
      })
      reply.on('end', () => (reply.statusCode === 200 ? resolve(bytes) : reject(new Error(`HTTP ${reply.statusCode}`))))
    })
      .on('error', reject)
      .end()
  })

let asked = 0

const load = async (url: string, distinct: boolean): Promise<number> => {
  const agent = new Agent({ keepAlive: true, maxSockets: CONNECTIONS })
  const end = performance.now() + SECONDS * 1000
  let done = 0
  const worker = async (): Promise<void> => {
    while (performance.now() < end) {
      await get(agent, url + path(distinct ? ++asked : 0))
      done++
    }
  }
  await Promise.all(Array.from({ length: CONNECTIONS }, worker))
  agent.destroy()
  return done / SECONDS
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number

export interface HttpBench {
  readonly name: string
  readonly ours: number
  readonly bare: number
  readonly ratio: number
}

export const benchHttp = async (answer: object): Promise<HttpBench[]> => {
  const answerFile = join(mkdtempSync(join(tmpdir(), 'bench-')), 'answer.json')
  writeFileSync(answerFile, JSON.stringify(answer))
  const [ours, bare] = await Promise.all([start('ours', answerFile), start('bare', answerFile)])
  const agent = new Agent()
  const [ourBytes, bareBytes] = await Promise.all([get(agent, ours.url + path(0)), get(agent, bare.url + path(0))])
  if (ourBytes !== bareBytes) throw new Error(`not the same bytes: ${ourBytes} and ${bareBytes}`)
  agent.destroy()
  const results: HttpBench[] = []
  for (const distinct of [false, true]) {
    const rates: Array<[number, number]> = []
    for (let round = 0; round < ROUNDS; round++)
      rates.push([await load(ours.url, distinct), await load(bare.url, distinct)])
    const ratios = rates.slice(1).map(([one, other]) => one / other)
    results.push({
      name: distinct ? 'distinct inputs' : 'repeated inputs',
      ours: median(rates.map(([one]) => one)),
      bare: median(rates.map(([, other]) => other)),
      ratio: median(ratios),
    })
  }
  for (const { child } of [ours, bare]) {
    child.removeAllListeners('exit')
    child.kill()
  }
  return results
}
