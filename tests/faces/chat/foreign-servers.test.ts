// Whoever manages a server of their own is nobody here: they may take the bot along for themselves, or invite it.
import { describe, expect, it } from 'vitest'
import { roleIn } from '../../../src/faces/chat/register/rights.ts'

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
})
