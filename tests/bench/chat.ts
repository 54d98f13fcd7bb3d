// Interaction to callback, on the fake Discord of the tests: the built program against a bare discord.js echo of the same payload.
import { startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { startService } from '../support/service.ts'
import { startBare } from './bare.ts'

const COUNT = 300
const quantile = (times: readonly number[], q: number): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length * q)] as number

export interface ChatBench {
  readonly name: string
  readonly p50: number
  readonly p99: number
}

type Fake = Awaited<ReturnType<typeof startFakeDiscord>>
type Ask = Parameters<Fake['interaction']>[0]

const person = (n: number) => ({ id: String(300_000_000_000_000_000n + BigInt(n)), username: `hand-${n}` })

const time = async (fake: Fake, ask: Ask): Promise<number[]> => {
  const times: number[] = []
  for (let n = 0; n < COUNT; n++) {
    const { ms, status } = await fake.interaction({ ...ask, user: person(n), guild: null })
    if (status >= 300) throw new Error(`callback ${status}`)
    if (n >= 50) times.push(ms)
  }
  return times
}

const asks: ReadonlyArray<readonly [string, Ask]> = [
  ['without a picture', { command: 'convert', options: { quantity: '300 kg-cm', to: 'Nm' } }],
  [
    'with the same ready picture',
    { command: 'adapter', options: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in@30' } },
  ],
]

export const benchChat = async (): Promise<ChatBench[]> => {
  const rows: ChatBench[] = []
  for (const [name, ask] of asks) {
    const fake = await startFakeDiscord()
    const service = await startService({ DISCORD_TOKEN: fake.token, DISCORD_API_URL: fake.url })
    await fake.ready()
    await fake.until('the commands are registered', () => fake.commands.length > 0)
    const first = await fake.interaction({ ...ask, guild: null })
    const ours = await time(fake, ask)
    const commands = fake.commands
    service.kill()
    await fake.close()

    const peer = await startFakeDiscord()
    peer.register(commands)
    const bare = startBare(peer, first)
    await peer.ready()
    await peer.interaction({ ...ask, guild: null })
    const theirs = await time(peer, ask)
    bare.kill()
    await peer.close()
    rows.push(
      { name: `ours ${name}`, p50: quantile(ours, 0.5), p99: quantile(ours, 0.99) },
      { name: `bare ${name}`, p50: quantile(theirs, 0.5), p99: quantile(theirs, 0.99) },
    )
  }
  return rows
}
