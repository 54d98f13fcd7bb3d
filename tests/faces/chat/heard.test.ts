// Which messages ask the bot, and what of them is the question.
import { describe, expect, it } from 'vitest'
import { type Heard, readHeard } from '../../../src/faces/chat/messages/heard.ts'
import type { Json } from '../../support/fake-discord/limits.ts'
import { buildMessage, type Say } from '../../support/fake-discord/said.ts'

const SELF = '100000000000000001'
const botUser = { id: SELF, username: 'armlength', bot: true }
const told = (say: Say): Json => buildMessage(say, { botUser, now: Date.parse('2026-06-01T10:00:00Z') })
const heard = (say: Say): Heard | undefined => readHeard(told(say), SELF)
const own: Json = { id: '700000000000000001', author: botUser, content: 'Set 84.9 N·m' }
const ofOther: Json = { id: '700000000000000002', author: { id: '300000000000000002' }, content: 'try it' }

describe('a message that asks', () => {
  it.each([
    [`<@${SELF}> 95 Nm, what do I set?`, '95 Nm, what do I set?'],
    [`<@!${SELF}>: 95 Nm`, '95 Nm'],
    [`hey <@${SELF}>, 95 Nm?`, 'hey  , 95 Nm?'],
    [`<@${SELF}><@${SELF}> 95 Nm`, '95 Nm'],
    [
      `<@${SELF}> 95 Nm as <@300000000000000002> said in <#500000000000000001> <:ok:600000000000000001>`,
      '95 Nm as   said in',
    ],
    [`<@${SELF}> 95 Nm <t:1700000000:R> <a:no:600000000000000001> </ask:600000000000000001>`, '95 Nm'],
    [`<@${SELF}> is 3 < 4 and <b> a bolt?`, 'is 3 < 4 and <b> a bolt?'],
    [`<@${SELF}>`, ''],
    [`<@${SELF}> -5 Nm`, '-5 Nm'],
  ])('%s', (content, text) => expect(heard({ content })).toMatchObject({ text, isMeant: true }))

  it('tells who asked, where, with which roles', () => {
    const one = heard({ content: `<@${SELF}> 95 Nm`, roles: ['7'], id: '800000000000000001' })
    expect(one).toMatchObject({
      ...{ id: '800000000000000001', channel: '500000000000000001', user: '300000000000000001' },
      ...{ server: '400000000000000001', roles: ['7'] },
    })
    expect(heard({ content: '95 Nm', guild: null })).toMatchObject({ server: undefined, text: '95 Nm', isMeant: true })
    expect(heard({ content: '', guild: null })).toMatchObject({ text: '', isMeant: true })
  })

  it('a reply to the bot asks where it says something, but is not meant for it beyond doubt', () => {
    expect(heard({ content: 'and at 30°?', replyTo: own })).toMatchObject({ text: 'and at 30°?', isMeant: false })
    expect(heard({ content: `<@${SELF}> and at 30°?`, replyTo: own })).toMatchObject({ isMeant: true })
    expect(heard({ content: '', replyTo: own })).toBeUndefined()
    expect(heard({ content: ' <@300000000000000002> ', replyTo: own })).toBeUndefined()
    expect(heard({ content: '95 Nm?', replyTo: ofOther })).toBeUndefined()
  })
})

describe('a message that does not ask', () => {
  it.each<[string, Say]>([
    ['says nothing of the bot', { content: '95 Nm, what do I set?' }],
    ['mentions somebody else', { content: '<@300000000000000002> 95 Nm' }],
    ['is for everybody', { content: '@everyone 95 Nm' }],
    ['is for a role', { content: `<@&${SELF}> 95 Nm` }],
    ['only looks like a mention', { content: `\`<@${SELF}>\` 95 Nm`, raw: { mentions: [] } }],
    ['is of a bot', { content: `<@${SELF}> 95 Nm`, user: { bot: true } }],
    ['is of the bot itself', { content: `<@${SELF}> 95 Nm`, user: { id: SELF } }],
    ['is of the bot itself, directly', { content: '95 Nm', user: { id: SELF }, guild: null }],
    ['is of a webhook', { content: `<@${SELF}> 95 Nm`, raw: { webhook_id: '900000000000000001' } }],
    ['is of Discord', { content: `<@${SELF}>`, user: { system: true } }],
    ['welcomes somebody', { content: `<@${SELF}>`, raw: { type: 7 } }],
    ['tells of a pin', { content: '', guild: null, raw: { type: 6 } }],
    ['is the answer to a command', { content: `<@${SELF}> 95 Nm`, raw: { type: 20 } }],
  ])('%s', (_, say) => expect(heard(say)).toBeUndefined())

  it.each<[string, unknown]>([
    ['nothing', null],
    ['a text', 'x'],
    ['an empty object', {}],
    ['no content', { ...told({ content: `<@${SELF}>` }), content: undefined }],
    ['no list of mentions', { ...told({ content: `<@${SELF}>` }), mentions: 'all' }],
    ['nobody as author', { ...told({ content: `<@${SELF}>` }), author: null }],
    ['an id that is none', { ...told({ content: `<@${SELF}>` }), id: '../../users' }],
    ['a channel that is none', { ...told({ content: `<@${SELF}>` }), channel_id: '1/../2' }],
    ['nothing among its mentions', { ...told({ content: `<@${SELF}>` }), mentions: [null] }],
  ])('of a shape that Discord does not send: %s', (_, raw) => expect(readHeard(raw, SELF)).toBeUndefined())
})
