// The keys under an answer, pressed: each reply within Discord's limits, the same digits as the question asked by itself, nothing
// public changed under anybody's eyes, and only who may taking it away.
import { beforeEach, describe, expect, it } from 'vitest'
import { saverOf } from '../../../src/faces/chat/answer/save.ts'
import { handleInteraction } from '../../../src/faces/chat/handler.ts'
import { ownScope, serverScope } from '../../../src/faces/chat/liking.ts'
import { languages } from '../../../src/words/index.ts'
import { cases } from '../../contract/cases.ts'
import { type Chat, isPrivate, keyOf, openChatInProcess, START, said, verbsOf } from '../../support/chat.ts'
import { commandFor } from '../../support/doors.ts'
import { type Ask, people, places } from '../../support/fake-discord/ask.ts'
import type { Json } from '../../support/fake-discord/limits.ts'
import { snowflake } from '../../support/fake-discord/snowflake.ts'

const { words } = languages.en
const MANAGES = String(1n << 5n)
const at = new Date(START).toISOString()

let chat: Chat
let send: Chat['send']
let press: Chat['press']
beforeEach(() => {
  chat = openChatInProcess()
  send = chat.send
  press = chat.press
})

const adapter: Ask = { command: 'adapter', options: { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30' } }

describe('the keys under an answer', () => {
  it('an answer for all can be refined, pictured, edited and taken away; one for the asker can be shown to all', async () => {
    const open = await send(adapter)
    expect(verbsOf(open)).toEqual(['next', 'work', 'pic', 'units', 'edit', 'gone'])
    const own = await send({ ...adapter, options: { ...adapter.options, 'seen-by': 'me' } })
    expect(isPrivate(own)).toBe(true)
    expect(verbsOf(own)).toEqual(['next', 'share', 'work', 'pic', 'units', 'edit'])
  })

  it('every answer of the table has keys that fit, and the working of each is whole', async () => {
    for (const { question, raw } of cases) {
      const command = commandFor(question, raw)
      const interaction = {
        id: snowflake(START),
        application_id: '9',
        type: 2,
        token: 't',
        version: 1,
        locale: 'en-US',
      }
      const full = { ...interaction, user: people.asker, data: command }
      const reply = await handleInteraction(full as never, chat.parts)
      if (!reply || isPrivate(reply)) continue
      expect(verbsOf(reply), question).toContain('gone')
      const answer = await chat.desk.ask(question, raw, { door: 'chat' })
      expect(verbsOf(reply).includes('work'), question).toBe(answer.steps.length > 0)
      if (answer.steps.length === 0) continue
      const working = await press(reply, 'work', { guild: null })
      expect(isPrivate(working)).toBe(true)
      const text = working.files[0]?.data.toString() ?? working.data.content ?? ''
      for (const { formula } of answer.steps) expect(text).toContain(formula)
    }
  })

  it('another direction of a public answer is told to whoever asked for it, and the public one stays', async () => {
    const open = await send(adapter)
    const { options = [] } = keyOf(open, 'next')
    const square = options.find(({ label }) => label.includes('90°'))
    const reply = await press(open, 'next', { values: [square?.value ?? ''], user: people.other })
    expect(reply.way).toBeUndefined()
    expect(isPrivate(reply)).toBe(true)
    expect(said(reply)).toContain('120 N·m')
    const same = chat.desk.ask(
      'adapter-setting',
      { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@90' },
      { door: 'chat' },
    )
    expect(said(reply)).toContain(same.headline.slice(0, 20))
  })

  it('another direction of a private answer takes its place', async () => {
    const own = await send({ ...adapter, options: { ...adapter.options, 'seen-by': 'me' } })
    const [first] = keyOf(own, 'next').options ?? []
    const reply = await press(own, 'next', { values: [first?.value ?? ''] })
    expect(reply.way).toBe('update')
    expect(reply.data.flags).toBeUndefined()
  })

  it('the other units are the same answer in them, and there is a way back', async () => {
    const own = await send({ ...adapter, options: { ...adapter.options, 'seen-by': 'me' } })
    expect(said(own)).toContain('108.8 N·m')
    const inch = await press(own, 'units')
    expect(said(inch)).toContain('80.3 lbf·ft')
    const back = await press({ ...inch, data: { ...inch.data, flags: 64 } }, 'units')
    expect(said(back)).toBe(said(own))
  })

  it('showing to all says who asked, pings nobody, and is the same answer', async () => {
    const own = await send({ ...adapter, options: { ...adapter.options, 'seen-by': 'me' } })
    const shown = await press(own, 'share')
    expect(shown.data.flags).toBeUndefined()
    expect(shown.data.content).toContain(`<@${people.asker.id}>`)
    expect(shown.data.allowed_mentions).toEqual({ parse: [] })
    expect(said(shown)).toBe(said(own))
    expect(verbsOf(shown)).toContain('gone')
  })

  it('a form changes what was typed: a field that is emptied is gone, one that was not shown stays', async () => {
    const own = await send({ ...adapter, options: { ...adapter.options, tolerance: '6 %', 'seen-by': 'me' } })
    const form = await press(own, 'edit')
    const fields = JSON.stringify(form.modal)
    for (const text of ['120 N·m', '380 mm', '45 mm@30', '6 %']) expect(fields).toContain(text)
    const customId = form.modal?.custom_id ?? ''
    const changed = await send({
      kind: 'modal',
      customId,
      message: chat.messageOf(own),
      fields: { torque: '100 N·m', lever: '380 mm', adapter: '45 mm@30', tolerance: '' },
    })
    const same = chat.desk.ask(
      'adapter-setting',
      { torque: '100 N·m', lever: '380 mm', adapter: '45 mm@30' },
      { door: 'chat' },
    )
    expect(said(changed)).toBe(`**${same.headline}**`)
    expect(changed.way).toBe('update')
  })

  it('what is missing is asked for in a form with just that', async () => {
    const gap = await send({ command: 'adapter', options: { torque: '120 N·m', adapter: '45 mm' } })
    expect(isPrivate(gap)).toBe(true)
    const form = await press(gap, 'fill')
    const names = [...JSON.stringify(form.modal).matchAll(/"custom_id":"([^"]+)"/g)].map(([, name]) => name)
    expect(names).toEqual(['fill~', 'lever'])
    const whole = await send({
      kind: 'modal',
      customId: 'fill~',
      message: chat.messageOf(gap),
      fields: { lever: '380 mm' },
    })
    expect(said(whole)).toContain('107.3 N·m')
  })

  it('a refused answer comes back filled in, to be mended', async () => {
    const wrong = await send({ command: 'adapter', options: { torque: '120', lever: '380 mm', adapter: '45 mm' } })
    const form = await press(wrong, 'edit')
    expect(JSON.stringify(form.modal)).toContain('"value":"120"')
  })

  it('readings of a text are offered, and the one that is picked is answered', async () => {
    const text = await send({
      command: 'ask',
      options: { text: 'clicked at 80 ft lbs, crowfoot 3 in straight, 18 in wrench' },
    })
    const [first] = keyOf(text, 'next').options ?? []
    const reply = await press(text, 'next', { values: [first?.value ?? ''] })
    expect(said(reply)).not.toBe(said(text))
  })

  it('a list that is another after a newer program, keys that are too old or spoilt, say so and do nothing', async () => {
    const open = await send(adapter)
    expect(said(await press(open, 'next', { values: ['0:pull'] }))).toBe(words.chat.formOld)
    expect(said(await press(open, 'next', { values: ['99:adapter-setting'] }))).toBe(words.chat.formOld)
    expect(said(await press(open, 'work', { message: chat.messageOf(open, 8 * 86_400_000) }))).toBe(words.chat.formOld)
    const spoilt = {
      ...chat.messageOf(open),
      components: [{ type: 1, components: [{ type: 2, custom_id: 'work~1AAA', label: 'x', style: 2 }] }],
    }
    expect(said(await press(open, 'work', { customId: 'work~1AAA', message: spoilt }))).toBe(words.chat.formOld)
  })
})

describe('taking an answer away', () => {
  it.each([
    ['by who asked', { user: people.asker }, true],
    [
      'by somebody else',
      { user: people.other, raw: { member: { user: people.other, roles: [], permissions: '0' } } },
      false,
    ],
    [
      'by who manages messages',
      { user: people.other, raw: { member: { user: people.other, roles: [], permissions: String(1n << 13n) } } },
      true,
    ],
  ])('%s', async (_name, more, isGone) => {
    const open = await send(adapter)
    const reply = await press(open, 'gone', more as Ask)
    expect(reply.way === 'remove').toBe(isGone)
    if (!isGone) expect(said(reply)).toBe(words.chat.formNotYours)
  })
})

describe('an answer that looks wrong', () => {
  const setReports = () =>
    chat.store.set({
      scope: serverScope(places.shop),
      name: 'reports',
      value: '777',
      at,
      by: { role: 'keeper', door: 'chat' },
    })

  it('is told to the channel that was chosen, with what was asked and where; markup of people stays text', async () => {
    await setReports()
    const open = await send(adapter)
    const form = await press(open, 'wrong')
    expect(form.modal?.custom_id).toBe('wrong~')
    const what = 'should be **more** @everyone'
    const reply = await send({ kind: 'modal', customId: 'wrong~', message: chat.messageOf(open), fields: { what } })
    expect(said(reply)).toBe(words.chat.wrong.sent)
    expect(chat.told).toHaveLength(1)
    const { channel, body } = chat.told[0] as {
      channel: string
      body: { embeds: unknown[]; allowed_mentions: unknown }
    }
    expect(channel).toBe('777')
    expect(body.allowed_mentions).toEqual({ parse: [] })
    expect(JSON.stringify(body.embeds)).toContain('\\\\*\\\\*more')
    expect(JSON.stringify(body.embeds)).toContain(`/channels/${places.shop}/${places.channel}/`)
  })

  const report = (message: Json, user = people.asker) =>
    send({ kind: 'modal', customId: 'wrong~', message, fields: { what: 'should be more' }, user })

  it('is told once by the same person, and again after a day', async () => {
    await setReports()
    const message = chat.messageOf(await send(adapter))
    expect(said(await report(message))).toBe(words.chat.wrong.sent)
    const again = await Promise.all(Array.from({ length: 20 }, () => report(message)))
    for (const reply of again) expect(said(reply)).toBe(words.chat.wrong.again)
    expect(chat.told).toHaveLength(1)
    expect(said(await report(message, people.other))).toBe(words.chat.wrong.sent)
    chat.pass(86_400_000)
    expect(said(await report(message))).toBe(words.chat.wrong.sent)
    expect(chat.told).toHaveLength(3)
  })

  it('is told from one server five times a minute', async () => {
    await setReports()
    const open = await send(adapter)
    const replies: string[] = []
    for (let n = 0; n < 7; n++) replies.push(said(await report(chat.messageOf(open))))
    const { sent, many } = words.chat.wrong
    expect(replies).toEqual([sent, sent, sent, sent, sent, many, many])
    chat.pass(60_000)
    expect(said(await report(chat.messageOf(open)))).toBe(sent)
    expect(chat.told).toHaveLength(6)
  })

  it('has no key where nobody chose a channel', async () => {
    expect(verbsOf(await send(adapter))).not.toContain('wrong')
  })
})

describe('what is set', () => {
  const setOwn = (name: string, value: string) =>
    chat.store.setOwn({ owner: ownScope(people.asker.id), name, value, at })

  it('a quiet channel has answers for the asker alone, and nothing to show to all', async () => {
    await chat.store.set({
      scope: serverScope(places.shop),
      name: 'quiet',
      value: `1,${places.channel}`,
      at,
      by: { role: 'keeper', door: 'chat' },
    })
    const reply = await send(adapter)
    expect(isPrivate(reply)).toBe(true)
    expect(verbsOf(reply)).not.toContain('share')
    expect(isPrivate(await send({ ...adapter, channel: '42' }))).toBe(false)
    const inThread = (parent: string): Ask => ({
      ...adapter,
      raw: { channel: { id: '42', type: 11, name: 'torque', parent_id: parent } },
    })
    expect(isPrivate(await send(inThread(places.channel)))).toBe(true)
    expect(isPrivate(await send(inThread('43')))).toBe(false)
  })

  it('own units go behind bare numbers, are told as assumed, and stay with the answer whoever presses', async () => {
    await setOwn('units', 'metric')
    const bare: Ask = { command: 'adapter', options: { torque: '120', lever: '380', adapter: '45@30' } }
    const reply = await send(bare)
    expect(said(reply)).toContain('108.8 N·m')
    expect(JSON.stringify(reply.data.embeds)).toMatch(/assumed: [^"]*Torque 120 N·m · Lever 380 mm/)
    const working = await press(reply, 'work', { user: people.other })
    expect(working.data.content).toContain('108.8 N·m')
    expect(said(await send({ ...bare, user: people.other }))).toContain('cannot be worked out')
  })

  it('an own wrench is asked where none is named and nothing of one is typed', async () => {
    const wrench = { tag: 'W-07', name: 'half inch', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
    const kept = await chat.shop.keep('wrench', wrench, { role: 'keeper', door: 'http', key: 'k' })
    expect(kept.kind).toBe('kept')
    await setOwn('wrench', 'W-07')
    const without = await send({ command: 'adapter', options: { torque: '120 N·m', adapter: '45 mm' } })
    expect(JSON.stringify(without.data.embeds)).toMatch(/assumed: [^"]*Wrench W-07/)
    const typed = await send(adapter)
    expect(JSON.stringify(typed.data.embeds)).not.toContain('W-07')
  })

  it('a keeper saves the lever of an answer to the card of a wrench; others have no key for it', async () => {
    const wrench = { tag: 'W-07', name: 'half inch', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
    await chat.shop.keep('wrench', wrench, { role: 'keeper', door: 'http', key: 'k' })
    const keeper = { raw: { member: { user: people.asker, roles: [], permissions: MANAGES } } }
    const plain = { raw: { member: { user: people.asker, roles: [], permissions: '0' } } }
    expect(verbsOf(await send({ ...adapter, ...plain }))).not.toContain('save')
    const open = await send({ ...adapter, ...keeper })
    expect((await press(open, 'save', keeper)).modal?.custom_id).toBe('save~')
    const form: Ask = { kind: 'modal', customId: 'save~', message: chat.messageOf(open), fields: { wrench: 'w-07' } }
    expect(said(await send({ ...form, ...plain }))).toBe(words.chatRegister.forbidden)
    expect(said(await send({ ...form, ...keeper }))).toBe('W-07: Lever 380 mm.')
    expect((await chat.shop.wrench('W-07'))?.row.folder.card.entry.body.lever?.text).toBe('380 mm')
  })

  it('what is refused of a card comes back as text', async () => {
    const wrench = { tag: 'W-07', name: 'half inch', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }
    await chat.shop.keep('wrench', wrench, { role: 'keeper', door: 'http', key: 'k' })
    const save = saverOf(chat.shop, { keeper: undefined, mechanic: undefined })
    const interaction = {
      id: '1',
      guild_id: places.shop,
      member: { user: people.asker, roles: [], permissions: MANAGES },
    }
    const told = said(await save('W-07', { lever: '**x** https://x.example' }, interaction as never, languages.en))
    expect(told).toContain('\\*\\*x\\*\\* https\\://x.example')
  })

  it('a store that is away gives answers as if nothing were set', async () => {
    await chat.store.close()
    chat.pass(60_000)
    expect(said(await send(adapter))).toContain('108.8 N·m')
  })
})
