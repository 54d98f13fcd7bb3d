// The built program: what registration would change is told without changing it; keys of an answer outlive a restart; own settings
// hold after one; what is removed is gone from Discord.
import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { type Service, startService } from '../support/service.ts'

const run = promisify(execFile)
const root = join(import.meta.dirname, '../..')

let discord: FakeDiscord
let service: Service | undefined
let folder: string
const chatEnv = () => ({
  DISCORD_TOKEN: discord.token,
  DISCORD_API_URL: discord.url,
  DATABASE_URL: `file:${join(folder, 'shop.db')}`,
})
const open = async (): Promise<void> => {
  service = await startService(chatEnv())
  await discord.ready()
  await discord.until('the commands are registered', () => discord.commands.length > 0)
}
const register = (...flags: readonly string[]) =>
  run(process.execPath, ['dist/src/main.js', 'register', ...flags], {
    cwd: root,
    env: { PATH: process.env.PATH, ...chatEnv() },
  })

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'armlength-keys-'))
  discord = await startFakeDiscord()
})
afterEach(async () => {
  service?.kill()
  await discord.close()
  rmSync(folder, { recursive: true, force: true })
})

interface Message {
  readonly components: ReadonlyArray<{ readonly components: ReadonlyArray<{ readonly custom_id: string }> }>
  readonly embeds: ReadonlyArray<{ readonly description: string }>
}
const keyOf = (message: unknown, verb: string): string => {
  const all = (message as Message).components.flatMap(({ components }) => components.map(({ custom_id: id }) => id))
  const found = all.find((id) => id.startsWith(`${verb}~`))
  if (!found) throw new Error(`no key ${verb} in ${all.map((id) => id.split('~')[0])}`)
  return found
}
const headline = (message: unknown): string => (message as Message).embeds[0]?.description ?? ''
const own = { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30', 'seen-by': 'me' }

describe('registration, tried', () => {
  it('prints what it would change, writes nothing, and says nothing of the same once it is done', async () => {
    const tried = (await register('--dry-run')).stdout
    expect(tried).toContain('tried only, nothing was written')
    expect(tried).toContain('added: adapter hand')
    expect(discord.commands).toEqual([])
    expect((await register()).stdout).toContain('added: adapter hand')
    const again = (await register('--dry-run')).stdout
    expect(again).toContain('added: -; changed: -; removed: -')
    expect(discord.requests.filter(({ route }) => route === 'commands-put')).toHaveLength(1)
  })
})

describe('keys of an answer', () => {
  it('work after a restart, in the message that was there before', async () => {
    await open()
    const asked = await discord.interaction({ command: 'adapter', options: own })
    await service?.stop()
    await open()
    const message = asked.message as never
    const turned = await discord.interaction({
      kind: 'component',
      customId: keyOf(message, 'units'),
      componentType: 2,
      message,
    })
    expect(turned.type).toBe(7)
    expect(headline(turned.data)).toContain('80.3 lbf·ft')
  })

  it('take a message away from Discord, once', async () => {
    await open()
    const { 'seen-by': _, ...open_ } = own
    const asked = await discord.interaction({ command: 'adapter', options: open_ })
    const message = asked.message as never
    const press = { kind: 'component', customId: keyOf(message, 'gone'), componentType: 2, message } as const
    const gone = await discord.interaction(press)
    expect(gone.type).toBe(6)
    await discord.until('it was deleted', () => discord.requests.some(({ route }) => route === 'message-delete'))
  })

  it('own units outlive a restart', async () => {
    await open()
    await discord.interaction({ command: 'settings', subcommand: 'mine', options: { units: 'metric' } })
    await service?.stop()
    await open()
    const bare = { torque: '120', lever: '380', adapter: '45' }
    expect(headline((await discord.interaction({ command: 'adapter', options: bare })).data)).toContain('107.3 N·m')
  })
})
