// The register in chat, on the built program with a real file, against a fake Discord: who may write, what is kept once, a check by
// a form, a slip asked back, and what everybody may look at.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Ask } from '../support/fake-discord/ask.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { type Service, startService } from '../support/service.ts'

const KEEPERS = '600000000000000001'
const MECHANICS = '600000000000000002'

let discord: FakeDiscord
let service: Service
const folder = mkdtempSync(join(tmpdir(), 'chat-'))
beforeAll(async () => {
  discord = await startFakeDiscord()
  service = await startService({
    DISCORD_TOKEN: discord.token,
    DISCORD_API_URL: discord.url,
    DISCORD_KEEPER_ROLE: KEEPERS,
    DISCORD_MECHANIC_ROLE: MECHANICS,
    DATABASE_URL: `file:${join(folder, 'register.db')}`,
  })
  await discord.ready()
  await discord.until('the commands are registered', () => discord.commands.length > 0)
})
afterAll(async () => {
  service?.kill()
  await discord?.close()
  rmSync(folder, { recursive: true, force: true })
})

let askers = 0
// Everybody is somebody else: nobody runs into the limit of one.
const as = (roles: readonly string[], permissions = '0'): Pick<Ask, 'raw'> => ({
  raw: {
    member: {
      user: {
        id: `30000000000000${1000 + ++askers}`,
        username: 'asker',
        global_name: 'Asker',
        discriminator: '0',
        avatar: null,
      },
      roles: [...roles],
      permissions,
      joined_at: '2024-01-01T00:00:00.000000+00:00',
      deaf: false,
      mute: false,
      flags: 0,
    },
  },
})
const keeper = as([KEEPERS])
const mechanic = as([MECHANICS])
const stranger = as([])
const MANAGE_GUILD = '32'

const wrench = (subcommand: string, options: Record<string, string> = {}, who: Pick<Ask, 'raw'> = keeper): Ask => ({
  kind: 'slash',
  command: 'wrench',
  subcommand,
  options,
  ...who,
})
const card = {
  tag: 'W-07',
  name: 'Half-inch click wrench',
  'wrench-type': 'click',
  least: '40 N·m',
  most: '200 N·m',
  mark: '1 N·m',
  lever: '400 mm',
  tolerance: '4 %',
  place: 'Bay 2',
}

interface Shown {
  readonly type: number
  readonly text: string
  readonly isPrivate: boolean
  readonly data: Record<string, unknown>
}
const send = async (ask: Ask): Promise<Shown> => {
  const record = await discord.interaction(ask)
  const data = record.data as unknown as Record<string, unknown>
  return {
    type: record.type ?? 0,
    text: JSON.stringify(data),
    isPrivate: ((data['flags'] as number | undefined) ?? 0) === 64,
    data,
  }
}
const messageOf = (shown: Shown): Record<string, unknown> => ({
  id: '700000000000000001',
  type: 0,
  flags: 0,
  content: '',
  attachments: [],
  ...shown.data,
})
const press = (customId: string, on: Shown, who: Pick<Ask, 'raw'> = mechanic): Promise<Shown> =>
  send({ kind: 'component', customId, componentType: 2, message: messageOf(on), ...who })
const submit = (customId: string, fields: Record<string, string>, who: Pick<Ask, 'raw'> = mechanic): Promise<Shown> =>
  send({ kind: 'modal', customId, fields, ...who })
const idOf = ({ text }: Shown, what: string): string =>
  new RegExp(`"custom_id":"(${what}:[^"]+)"`).exec(text)?.[1] ?? ''

const form = { way: 'pull', gauge: '', distance: '400 mm', when: '2026-06-01 as-found' }

describe('the register in chat', () => {
  it('is written by those who may, and nothing is kept of the others', async () => {
    for (const who of [stranger, mechanic, as([], '0')]) {
      const refused = await send(wrench('add', card, who))
      expect(refused.isPrivate).toBe(true)
      expect(refused.text).toContain('You may not write this here')
    }
    const direct = await send({ ...wrench('add', card), guild: null, raw: {} })
    expect(direct.text).toContain('You may not write this here')
    expect((await send(wrench('list'))).text).toContain('No wrench is in the register yet')
    const kept = await send(wrench('add', card))
    expect(kept.isPrivate).toBe(false)
    expect(kept.text).toContain('W-07 is in the register.')
    expect((await send(wrench('add', { ...card, tag: 'W-08' }, as([], MANAGE_GUILD)))).text).toContain(
      'W-08 is in the register.',
    )
  })

  it('tells what is wrong with what was typed, to the typer alone', async () => {
    const shown = await send(wrench('add', { ...card, tag: 'W 9', most: '200' }))
    expect(shown.isPrivate).toBe(true)
    expect(shown.text).toContain('tag: “W 9”')
    expect(shown.text).toContain('most: “200”')
  })

  it('notes an event, and says which day was taken', async () => {
    const first = await send(wrench('event', { wrench: 'w-07', what: 'dropped' }, mechanic))
    expect(first.text).toContain('W-07: dropped on')
    expect(first.text).toContain('today was taken')
    expect(first.text).toContain('check before use')
  })

  it('shows a wrench with its card, its status and what happened; and completes tags while they are typed', async () => {
    const shown = await send(wrench('show', { wrench: 'W-07' }, stranger))
    expect(shown.isPrivate).toBe(false)
    expect(shown.text).toContain('Highest mark: 200 N·m')
    expect(shown.text).toContain('check before use')
    expect(idOf(shown, 'check')).toBe('check:W-07')
    const offered = await send({
      ...wrench('show', { wrench: 'half' }, stranger),
      kind: 'autocomplete',
      focused: 'wrench',
    })
    expect(offered.text).toContain('"value":"W-07"')
    const lever = await send({
      kind: 'autocomplete',
      command: 'adapter',
      options: { wrench: 'W-0' },
      focused: 'wrench',
      ...stranger,
    })
    expect(lever.text).toContain('"value":"W-08"')
  })

  it('takes a check by a form: faults and slips come back with what was typed, and the verdict with the kept one', async () => {
    const shown = await send(wrench('checks', { wrench: 'W-07' }, mechanic))
    const opened = await press('check:W-07', shown)
    expect(opened.type).toBe(9)
    expect((await press('check:W-07', shown, stranger)).text).toContain('You may not write this here')
    const wrong = await submit('check:W-07', { ...form, points: '40 N·m 10.2 kg' })
    expect(wrong.isPrivate).toBe(true)
    expect(wrong.text).toContain('points: ')
    const again = await press(idOf(wrong, 'again'), wrong)
    expect(again.text).toContain('40 N·m 10.2 kg')
    const readings = (factor: number): string =>
      [
        '40 N·m: 10.2; 10.2; 10.1; 10.2; 10.3 kg',
        `120 N·m: ${30.6 * factor}; 30.6; 30.5; 30.6; 30.7 kg`,
        '200 N·m: 51; 51; 50.9; 51; 51.1 kg',
      ].join(' | ')
    const slip = await submit('check:W-07', { ...form, points: readings(10) })
    expect(slip.isPrivate).toBe(true)
    expect(slip.text).toContain('306 kgf')
    expect(idOf(slip, 'sure')).not.toBe('')
    const kept = await submit('check:W-07', {
      ...form,
      when: `${new Date().toISOString().slice(0, 10)} as-left`,
      points: readings(1),
    })
    expect(kept.isPrivate).toBe(false)
    expect(kept.text).toContain('pass')
    const checks = await send(wrench('checks', { wrench: 'W-07' }, stranger))
    expect(checks.text).toContain('as left: pass')
  })

  it('keeps a form once, whatever is pressed how often, and says of what stands as it is what it comes to', async () => {
    await send(wrench('add', { ...card, tag: 'W-10' }))
    const count = async (): Promise<number> => {
      const reply = await fetch(`${service.url}/v1/wrenches/W-10`)
      return ((await reply.json()) as { checks: unknown[] }).checks.length
    }
    const slip = await submit('check:W-10', { ...form, points: '40 N·m: 102 kg' })
    const back = await press(idOf(slip, 'again'), slip)
    const name = /"custom_id":"(check:[^"]+)"/.exec(back.text)?.[1] ?? ''
    const second = await submit(name, { ...form, points: '40 N·m: 103 kg' })
    const sure = idOf(second, 'sure')
    const both = await Promise.all([press(sure, second), press(sure, second)])
    expect(await count()).toBe(1)
    const kept = both.find(({ text }) => text.includes('1 of 15 readings are in. So far: fail.'))
    expect(kept?.text).not.toContain('Mend what is listed')
    for (const [button, on] of [
      [sure, second],
      [idOf(second, 'again'), second],
      [idOf(slip, 'sure'), slip],
      [idOf(slip, 'again'), slip],
    ] as const) {
      const pressed = await press(button, on)
      expect(pressed.isPrivate).toBe(true)
      expect(pressed.text).toContain('nothing was written twice')
    }
    expect((await submit(name, { ...form, points: '40 N·m: 10.2 kg' })).text).toContain('nothing was written twice')
    expect(await count()).toBe(1)
  })

  it('shows a name as it is written, not as marks of the chat, in its title as well', async () => {
    await send(wrench('add', { ...card, tag: 'W-11', name: '**bold** [here](http://kiln.example)' }))
    for (const word of ['show', 'checks']) {
      const { text } = await send(wrench(word, { wrench: 'W-11' }))
      expect(JSON.parse(text)).toMatchObject({ embeds: [{ title: expect.stringContaining('\\*\\*bold\\*\\*') }] })
    }
  })

  it('does not offer to let a day stand that is still to come', async () => {
    const ahead = await submit('check:W-07', { ...form, when: '2199-01-01', points: '40 N·m: 102 kg' })
    expect(ahead.text).toContain('still to come')
    expect([idOf(ahead, 'sure'), idOf(ahead, 'again')]).toEqual(['', expect.stringContaining('again:')])
  })

  it('lists the wrenches and what is due, and takes one out of service', async () => {
    const list = await send(wrench('list', {}, stranger))
    expect(list.text).toContain('**W-07**')
    expect((await send(wrench('list', { show: 'never' }, stranger))).text).toContain('W-08')
    expect((await send(wrench('due', {}, stranger))).text).toContain('W-08')
    expect((await send(wrench('retire', { wrench: 'W-08', note: 'worn' }))).text).toContain('retired')
    expect((await send(wrench('which', { torque: '120 N·m' }, stranger))).text).toContain('W-07')
    expect((await send(wrench('show', { wrench: 'W-99' }, stranger))).text).toContain('No wrench of this tag')
  })

  it('an old button says so, and one of somebody else is none', async () => {
    const shown = await send(wrench('checks', { wrench: 'W-07' }, mechanic))
    const old = await send({
      kind: 'component',
      customId: 'again:123',
      componentType: 2,
      stale: true,
      message: messageOf(shown),
      ...as([MECHANICS]),
    })
    expect(old.text).toContain('too old')
  })

  it('the digest goes where a keeper says, and stays there until it is taken away', async () => {
    const settings = (subcommand: string, options: Record<string, string>, who: Pick<Ask, 'raw'>): Ask => ({
      kind: 'slash',
      command: 'settings',
      subcommand,
      options,
      ...who,
    })
    const channel = '500000000000000001'
    expect((await send(settings('digest', { channel }, as([MECHANICS])))).text).toContain('those who manage the server')
    expect((await send(settings('show', {}, as([])))).text).toContain('goes nowhere')
    expect((await send(settings('digest', { channel }, as([KEEPERS])))).text).toContain(`<#${channel}>`)
    expect((await send(settings('show', {}, as([])))).text).toContain(`<#${channel}>`)
    expect((await send(settings('digest', {}, as([KEEPERS])))).text).toContain('goes nowhere')
  })

  it('sent nothing that Discord would not take', () => expect(discord.violations).toEqual([]))
})

describe('a bot that anybody may invite', () => {
  it('writes for nobody before the servers of the shop are named, says so, and answers all the same', async () => {
    const open = await startFakeDiscord({ isPublic: true })
    const start = (more: Readonly<Record<string, string>>) =>
      startService({ DISCORD_TOKEN: open.token, DISCORD_API_URL: open.url, DISCORD_KEEPER_ROLE: KEEPERS, ...more })
    const card = { tag: 'W-70', name: 'Long one', 'wrench-type': 'click', most: '200 N·m' }
    const add: Ask = { command: 'wrench', subcommand: 'add', options: card, ...as([], MANAGE_GUILD) }
    const contentOf = async (): Promise<string> => JSON.stringify((await open.interaction(add)).data)
    const unnamed = await start({})
    await open.ready()
    await open.until('the commands are registered', () => open.commands.length > 0)
    expect(await contentOf()).toContain('DISCORD_SERVERS to 400000000000000001')
    const ready = await fetch(`${unnamed.url}/readyz`)
    expect([ready.status, await ready.text()]).toEqual([200, expect.stringContaining('DISCORD_SERVERS')])
    expect((await open.interaction({ command: 'wrench', subcommand: 'list' })).status).toBe(204)
    await unnamed.stop()
    const named = await start({ DISCORD_SERVERS: '400000000000000001' })
    await open.ready()
    expect(await contentOf()).toContain('W-70')
    named.kill()
    await open.close()
  })
})
