// What people set for themselves and for a server, what is kept of them, and the shop's list of makers' figures: who may, what is
// said, and that what is erased is gone.
import { beforeEach, describe, expect, it } from 'vitest'
import { SHOP_SCOPE } from '../../../src/desk/digest.ts'
import { ownScope, serverScope } from '../../../src/faces/chat/liking.ts'
import { createRecent } from '../../../src/faces/chat/recent.ts'
import { startRetention } from '../../../src/faces/chat/retention.ts'
import { languages } from '../../../src/words/index.ts'
import { type Chat, isPrivate, keyOf, openChatInProcess, START, said } from '../../support/chat.ts'
import { type Ask, people, places } from '../../support/fake-discord/ask.ts'

const { words } = languages.en
const { settings, privacy, spec } = words.chat
const as = (permissions: string): Ask => ({ raw: { member: { user: people.asker, roles: [], permissions } } })
const keeper = as(String(1n << 5n))
const anybody = as('0')

let chat: Chat
beforeEach(() => {
  chat = openChatInProcess()
})

const set = (subcommand: string, options: Ask['options'] = {}, more: Ask = {}) =>
  chat.send({ command: 'settings', subcommand, options, ...more })
const adapter: Ask = { command: 'adapter', options: { torque: '120', lever: '380', adapter: '45' } }

describe('own settings', () => {
  it('are told, changed, cleared, and known by the next answer at once', async () => {
    expect(said(await set('mine'))).toContain('units as typed; wrench none')
    expect(said(await chat.send(adapter))).toContain('cannot be worked out')
    const kept = await set('mine', { units: 'metric' })
    expect(isPrivate(kept)).toBe(true)
    expect(said(kept)).toContain('units N·m and mm')
    expect(said(await chat.send(adapter))).toContain('107.3 N·m')
    await set('mine', { clear: 'units' })
    expect(said(await chat.send(adapter))).toContain('cannot be worked out')
  })

  it('take a wrench only as it hangs in the register', async () => {
    expect(said(await set('mine', { wrench: 'nope' }))).toBe(words.chatRegister.noSuchWrench)
    const card = { tag: 'W-07', name: 'half inch', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
    await chat.shop.keep('wrench', card, { role: 'keeper', door: 'http', key: 'k' })
    expect(said(await set('mine', { wrench: 'w-07' }))).toContain('wrench W-07')
  })

  it('hold in a direct message as well', async () => {
    await set('mine', { units: 'inch' }, { guild: null })
    expect(said(await chat.send({ ...adapter, guild: null }))).toContain('lbf·ft')
  })
})

describe('settings of a server', () => {
  it.each([
    ['server', { units: 'inch' }],
    ['digest', { channel: '5' }],
  ])('%s is for those who manage it, and for no one in a direct message', async (part, options) => {
    expect(said(await set(part, options, anybody))).toBe(settings.forbidden)
    expect(said(await set(part, options, { guild: null }))).toBe(settings.onlyServer)
    expect(await chat.store.settings(serverScope(places.shop))).toEqual({})
  })

  it('units come first where nobody has their own, and are lent to no bare number', async () => {
    await set('server', { units: 'inch' }, keeper)
    expect(said(await chat.send(adapter))).toContain('cannot be worked out')
    const check: Ask = {
      command: 'bolt',
      subcommand: 'clamp',
      options: { size: 'M12', torque: '80 N·m', condition: 'dry' },
    }
    expect(said(await chat.send(check))).toContain('kN')
  })

  it('a channel is quiet until it is named again', async () => {
    expect(said(await set('server', { quiet: places.channel }, keeper))).toContain('is quiet now')
    const asked: Ask = { command: 'convert', options: { quantity: '10 N·m' } }
    expect(isPrivate(await chat.send(asked))).toBe(true)
    expect(said(await set('server', { quiet: places.channel }, keeper))).toContain('no longer quiet')
    expect(isPrivate(await chat.send(asked))).toBe(false)
  })

  it('no more than fifty channels are quiet, and one of them can still be let go', async () => {
    const ids = Array.from({ length: 60 }, (_, n) => String(600 + n))
    const replies: string[] = []
    for (const quiet of ids) replies.push(said(await set('server', { quiet }, keeper)))
    expect(replies[49]).toContain('is quiet now')
    for (const reply of replies.slice(50)) expect(reply).toContain('50 quiet channels already')
    const kept = async () => (await chat.store.settings(serverScope(places.shop)))['quiet']?.split(',') ?? []
    expect(await kept()).toEqual(ids.slice(0, 50))
    expect(await chat.store.settingsHistory(serverScope(places.shop))).toHaveLength(50)
    expect(said(await set('server', { quiet: '600' }, keeper))).toContain('no longer quiet')
    expect(await kept()).toHaveLength(49)
  })

  it.each([
    ['server', 'quiet'],
    ['server', 'reports'],
    ['digest', 'channel'],
  ])('%s %s takes no channel that Discord does not tell of', async (part, name) => {
    await set('digest', { channel: '888' }, keeper)
    const before = await chat.store.settings(SHOP_SCOPE)
    const options = [{ name: part, type: 1, options: [{ name, type: 7, value: '999' }] }]
    const resolved = { channels: { '998': { id: '998', type: 0 } } }
    for (const more of [{}, { resolved }]) {
      const data = { id: '1', name: 'settings', type: 1, options, ...more }
      expect(said(await set(part, {}, { raw: { ...keeper.raw, data } }))).toBe(settings.noChannel)
    }
    expect(await chat.store.settings(serverScope(places.shop))).toEqual({})
    expect(await chat.store.settings(SHOP_SCOPE)).toEqual(before)
  })

  it('show tells all that is set', async () => {
    await set('server', { reports: '777', units: 'metric' }, keeper)
    await set('digest', { channel: '888' }, keeper)
    const shown = said(await set('show'))
    for (const part of ['<#777>', '<#888>', 'N·m and mm']) expect(shown).toContain(part)
  })
})

describe('privacy', () => {
  const ask = (subcommand: string) => chat.send({ command: 'privacy', subcommand, options: {} })

  it('nothing is kept of who only asks', async () => {
    await chat.send({ command: 'convert', options: { quantity: '10 N·m' } })
    expect(said(await ask('show'))).toContain(privacy.nothing)
    expect(said(await ask('show'))).toContain('400 days')
  })

  it('what is erased is gone: settings from the store, what was typed from memory', async () => {
    await set('mine', { units: 'inch' })
    await chat.send({ command: 'convert', options: { quantity: '10 N·m' } })
    expect(chat.recent.of(people.asker.id, 'quantity')).toEqual(['10 N·m'])
    expect(said(await ask('show'))).toContain('units inch')
    expect(said(await ask('erase'))).toBe(privacy.erased)
    expect(await chat.store.own(ownScope(people.asker.id))).toEqual({})
    expect(chat.recent.of(people.asker.id, 'quantity')).toEqual([])
    expect(said(await chat.send(adapter))).toContain('cannot be worked out')
  })

  it.each(Object.entries(languages))('it is told in %s that copies hold what was erased', (locale, { words }) => {
    const weeks = { en: 'four weeks', de: 'vier Wochen', fr: 'quatre semaines', es: 'cuatro semanas' } as const
    const { about, erased } = words.chat.privacy
    for (const text of [about, erased]) expect(text).toContain(weeks[locale.slice(0, 2) as keyof typeof weeks])
  })

  it('settings that nobody used are let go, and used ones stay', async () => {
    const day = 86_400_000
    const put = (owner: string, ms: number) =>
      chat.store.setOwn({ owner, name: 'units', value: 'inch', at: new Date(ms).toISOString() })
    await put('user:1', START - 401 * day)
    await put('user:2', START - 399 * day)
    const lines: string[] = []
    const log = {
      info: (_: object, line: string) => lines.push(line),
      warn: (_: object, line: string) => lines.push(line),
    }
    const look = async (ms: number): Promise<void> => {
      clearInterval(startRetention({ store: chat.store, retentionDays: 400, now: () => ms, log }))
      await new Promise((resolve) => setTimeout(resolve, 5))
    }
    for (const back of [2, 1, 0]) await look(START - back * day)
    expect(await chat.store.own('user:1')).toEqual({})
    expect(await chat.store.own('user:2')).toEqual({ units: 'inch' })
    expect(lines).toHaveLength(1)
  })

  it('what was typed last is held for an hour, and for so many people only', () => {
    let now = START
    const recent = createRecent(() => now)
    recent.note('1', { torque: '10 N·m', points: 'x'.repeat(200), adapter: ['1 in'] })
    recent.note('1', { torque: '12 N·m' })
    expect(recent.of('1', 'torque')).toEqual(['12 N·m', '10 N·m'])
    expect(recent.of('1', 'points')).toEqual([])
    for (let n = 2; n < 5003; n++) recent.note(String(n), { torque: '1 N·m' })
    expect(recent.of('1', 'torque')).toEqual([])
    now += 3_600_000
    expect(recent.of('5000', 'torque')).toEqual([])
  })
})

describe('where makers’ figures are found', () => {
  const add = (options: NonNullable<Ask['options']>, more: Ask = keeper) =>
    chat.send({ command: 'spec', subcommand: 'add', options, ...more })
  const find = (text: string, more: Ask = anybody) =>
    chat.send({ command: 'spec', subcommand: 'find', options: { text }, ...more })
  const book = { title: 'Van book', where: 'red folder, bay *2*', covers: 'adapter-setting' }

  it('is added by keepers, found by anybody, offered with the answer that it covers', async () => {
    expect(said(await add(book, anybody))).toBe(settings.forbidden)
    expect(said(await find('van'))).toBe(spec.none)
    expect(said(await add(book))).toContain('**Van book**: red folder, bay \\*2\\*')
    expect(said(await find('van'))).toContain('**Van book**')
    const answer = await chat.send({
      command: 'adapter',
      options: { torque: '120 N·m', lever: '380 mm', adapter: '45 mm' },
    })
    expect(JSON.stringify(answer.data.embeds)).toContain('Van book: red folder')
  })

  it('never takes a figure', async () => {
    const reply = said(await add({ ...book, covers: 'wheels 160 Nm' }))
    expect(reply).toContain('leave out “160 Nm”')
    expect(said(await find(''))).toBe(spec.none)
  })

  it('an address is a link with the answer and in the list, what stands before it is none', async () => {
    await add({
      title: 'see https://elsewhere.example',
      where: 'https://book.example/van_1',
      covers: 'adapter-setting',
    })
    const answer = await chat.send({
      command: 'adapter',
      options: { torque: '120 N·m', lever: '380 mm', adapter: '45 mm' },
    })
    for (const text of [JSON.stringify(answer.data.embeds).replaceAll('\\\\', '\\'), said(await find(''))]) {
      expect(text).toContain('<https://book.example/van_1>')
      expect(text).toContain('see https\\://elsewhere.example')
    }
  })

  it('a title that is cut in the list keeps its characters whole', async () => {
    await add({ ...book, title: `${'x'.repeat(98)}🔧🔧` })
    const [option] = keyOf(await find('', keeper), 'spec-out').options ?? []
    expect(option?.label).toBe(`${'x'.repeat(98)}…`)
  })

  it('is taken out by keepers alone', async () => {
    await add(book)
    const shown = await find('van', keeper)
    expect(() => keyOf({ data: {}, files: [] }, 'spec-out')).toThrow()
    const [option] = keyOf(shown, 'spec-out').options ?? []
    expect(said(await chat.press(shown, 'spec-out', { values: [option?.value ?? ''], ...anybody }))).toBe(
      settings.forbidden,
    )
    expect(said(await chat.press(shown, 'spec-out', { values: [option?.value ?? ''], ...keeper }))).toBe(spec.takenOut)
    expect(said(await find('van'))).toBe(spec.none)
  })
})
