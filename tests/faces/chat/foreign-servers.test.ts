// Whoever manages a server of their own is nobody here: they may take the bot along for themselves, or invite it.
import { describe, expect, it } from 'vitest'
import { refusalFor, roleIn } from '../../../src/faces/chat/register/rights.ts'
import { languageFor, languages } from '../../../src/words/index.ts'

const english = languageFor('en', 'en').words
const member = { roles: [], permissions: '32' }
const roles = { keeper: undefined, mechanic: undefined }
const [shop, theirs] = ['400000000000000001', '400000000000000002']

describe('as whom somebody writes', () => {
  it('is nobody where a user has the bot for themselves', () => {
    for (const owners of [{ '1': '3' }, { '0': '0' }, { '0': shop }, {}])
      expect(roleIn({ member, guild_id: theirs, authorizing_integration_owners: owners }, roles)).toBeUndefined()
    expect(roleIn({ member, guild_id: shop, authorizing_integration_owners: { '0': shop, '1': '3' } }, roles)).toBe(
      'keeper',
    )
  })

  it('is nobody in a server that is none of the shop’s, once these are named', () => {
    const named = { ...roles, servers: [shop] }
    const in_ = (guild: string) => ({ member, guild_id: guild, authorizing_integration_owners: { '0': guild } })
    expect(roleIn(in_(theirs), named)).toBeUndefined()
    expect(roleIn(in_(shop), named)).toBe('keeper')
  })

  it('is nobody anywhere while strangers may take the bot along and no server is named; and it is told what to do', () => {
    const open = { ...roles, isOpenToAll: () => true }
    const here = { member, guild_id: shop, authorizing_integration_owners: { '0': shop } }
    expect(roleIn(here, open)).toBeUndefined()
    expect(roleIn(here, { ...open, servers: [shop] })).toBe('keeper')
    expect(roleIn(here, { ...open, isOpenToAll: () => false })).toBe('keeper')
    for (const language of Object.values(languages)) {
      expect(refusalFor(here, open, language.words, 'no')).toContain(`DISCORD_SERVERS`)
      expect(refusalFor(here, open, language.words, 'no')).toContain(shop)
    }
    expect(refusalFor(here, { ...open, servers: [theirs] }, english, 'no')).toBe('no')
    expect(refusalFor(here, roles, english, 'no')).toBe('no')
  })
})
