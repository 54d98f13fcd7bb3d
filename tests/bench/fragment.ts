// The part of a kiosk page that follows each key, of the built program: alone, and while its chat is busy. Times as the browser has them.
import { Agent, request } from 'node:http'
import { gzipSync } from 'node:zlib'
import { startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { startService } from '../support/service.ts'

const COUNT = 1000
const A_SECOND = 100

const quantile = (times: readonly number[], q: number): number =>
  [...times].sort((one, other) => one - other)[Math.floor(times.length * q)] as number

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

interface Fragment {
  readonly ms: number
  readonly text: string
}

// A torque that nobody asked for before: nothing is ready.
const fragment = (agent: Agent, url: string, n: number): Promise<Fragment> =>
  new Promise((resolve, reject) => {
    const torque = (60 + n / 1000).toFixed(5)
    const path = `/ask/adapter-setting/live?torque=${torque}+N%C2%B7m&lever=380+mm&adapter=45+mm%4030&tolerance=4+%25`
    const before = performance.now()
    request(url + path, { agent }, (reply) => {
      const parts: Buffer[] = []
      reply.on('data', (part: Buffer) => parts.push(part))
      reply.on('end', () => {
        const text = Buffer.concat(parts).toString()
        if (reply.statusCode !== 200 || !text.includes('id="answer"'))
          reject(new Error(`no answer: ${reply.statusCode}`))
        else resolve({ ms: performance.now() - before, text })
      })
    })
      .on('error', reject)
      .end()
  })

let asked = 0
const timed = async (agent: Agent, url: string): Promise<number[]> => {
  const times: number[] = []
  for (let n = 0; n < COUNT; n++) {
    times.push((await fragment(agent, url, ++asked)).ms)
    await pause(8)
  }
  return times
}

export interface FragmentBench {
  readonly name: string
  readonly p50: number
  readonly p99: number
}

export const benchFragment = async (): Promise<{ rows: FragmentBench[]; bytes: number; packed: number }> => {
  const fake = await startFakeDiscord()
  const service = await startService({ DISCORD_TOKEN: fake.token, DISCORD_API_URL: fake.url })
  await fake.ready()
  await fake.until('the commands are registered', () => fake.commands.length > 0)
  const agent = new Agent({ keepAlive: true })
  const { text } = await fragment(agent, service.url, ++asked)
  for (let n = 0; n < 200; n++) await fragment(agent, service.url, ++asked)
  const alone = await timed(agent, service.url)

  let busy = true
  let answered = 0
  const chat = (async () => {
    for (let n = 0; busy; n++) {
      const user = { id: String(400_000_000_000_000_000n + BigInt(n)), username: `hand-${n}` }
      const options =
        n % 2 ? { quantity: `${n} kgf·cm`, to: 'N·m' } : { torque: '100 lb-ft', lever: '14 in', adapter: '2 in@30' }
      void fake.interaction({ command: n % 2 ? 'convert' : 'adapter', options, user, guild: null }).then(() => {
        answered++
      })
      await pause(1000 / A_SECOND)
    }
  })()
  const began = performance.now()
  const beside = await timed(agent, service.url)
  busy = false
  await chat
  const rate = answered / ((performance.now() - began) / 1000)
  agent.destroy()
  service.kill()
  await fake.close()
  return {
    rows: [
      { name: 'alone', p50: quantile(alone, 0.5), p99: quantile(alone, 0.99) },
      { name: `beside ${rate.toFixed(0)} chat asks a second`, p50: quantile(beside, 0.5), p99: quantile(beside, 0.99) },
    ],
    bytes: Buffer.byteLength(text),
    packed: gzipSync(text).length,
  }
}
