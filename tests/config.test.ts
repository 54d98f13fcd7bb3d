// The settings: what each takes, all faults together, no value in a fault.
import { describe, expect, it } from 'vitest'
import { loadSettings, SettingsFault, settings } from '../src/config.ts'

const refused = (env: Record<string, string>): string[] => {
  try {
    loadSettings(env)
  } catch (error) {
    if (error instanceof SettingsFault) return error.faults.map(({ name }) => name)
    throw error
  }
  return []
}

describe('settings', () => {
  it('an empty environment gives a service on loopback with chat off', () => {
    expect(loadSettings({})).toMatchObject({
      HOST: '127.0.0.1',
      PORT: 8080,
      UNITS: 'metric',
      LOCALE: 'en',
      DISCORD_TOKEN: undefined,
      DISCORD_API_URL: 'https://discord.com/api',
      DISCORD_SHARDS: 'auto',
      DISCORD_TRANSPORT: 'gateway',
      TRUST_PROXY: false,
    })
  })

  it('a variable that is set to nothing is not set', () => {
    expect(loadSettings({ PORT: '', DISCORD_TOKEN: '' })).toMatchObject({ PORT: 8080, DISCORD_TOKEN: undefined })
  })

  it.each([
    ['PORT', '0', 0],
    ['PORT', '65535', 65_535],
    ['HOST', '::', '::'],
    ['UNITS', 'inch', 'inch'],
    ['DISCORD_APPLICATION_ID', '1', '1'],
    ['DISCORD_APPLICATION_ID', '12345678901234567890', '12345678901234567890'],
    ['DISCORD_API_URL', 'http://127.0.0.1:9/api/', 'http://127.0.0.1:9/api'],
    ['DISCORD_TOKEN', 'anything at all', 'anything at all'],
    ['TRUST_PROXY', 'true', true],
    ['LOG_LEVEL', 'silent', 'silent'],
  ] as const)('%s takes %s', (name, text, value) => {
    expect(loadSettings({ [name]: text })[name]).toEqual(value)
  })

  it('shards are read as ids and how many there are', () => {
    expect(loadSettings({ DISCORD_SHARDS: '0,1/4' }).DISCORD_SHARDS).toEqual({ ids: [0, 1], count: 4 })
    expect(loadSettings({ TRUST_PROXY: '10.0.0.0/8, loopback' }).TRUST_PROXY).toEqual(['10.0.0.0/8', 'loopback'])
  })

  it.each([
    ['PORT', '65536', 'there is no such port'],
    ['PORT', '80a', 'not a number'],
    ['PORT', '-1', 'not a number'],
    ['PORT', '0x50', 'hex'],
    ['PORT', '8e3', 'an exponent'],
    ['UNITS', 'imperial', 'not a choice'],
    ['LOCALE', 'tlh', 'not spoken here'],
    ['DISCORD_APPLICATION_ID', '123456789012345678901', '21 digits'],
    ['DISCORD_APPLICATION_ID', 'abc', 'not digits'],
    ['DISCORD_API_URL', 'ftp://x', 'another protocol'],
    ['DISCORD_API_URL', 'discord', 'no address'],
    ['DISCORD_SHARDS', '4/4', 'there is no shard 4 of 4'],
    ['DISCORD_SHARDS', '0,0/2', 'twice the same'],
    ['DISCORD_SHARDS', '2', 'of how many'],
    ['TRUST_PROXY', 'everyone', 'not an address'],
    ['LOG_LEVEL', 'loud', 'not a choice'],
  ])('%s refuses %s: %s', (name, text) => {
    expect(refused({ [name]: text })).toEqual([name])
  })

  it('interactions over HTTP need the public key by which they are known', () => {
    expect(refused({ DISCORD_TRANSPORT: 'http' })).toEqual(['DISCORD_PUBLIC_KEY'])
    expect(refused({ DISCORD_TRANSPORT: 'http', DISCORD_PUBLIC_KEY: 'ab' })).toEqual(['DISCORD_PUBLIC_KEY'])
    expect(refused({ DISCORD_TRANSPORT: 'post' })).toEqual(['DISCORD_TRANSPORT'])
    const key = 'aB'.repeat(32)
    expect(loadSettings({ DISCORD_TRANSPORT: 'http', DISCORD_PUBLIC_KEY: key }).DISCORD_PUBLIC_KEY).toBe(key)
  })

  it('all faults come together, by name, with what is allowed and without the value', () => {
    const env = { PORT: 'secret-port', UNITS: 'secret-unit', DISCORD_APPLICATION_ID: 'secret-id' }
    expect(refused(env)).toEqual(['PORT', 'DISCORD_APPLICATION_ID', 'UNITS'])
    expect(() => loadSettings(env)).toThrow(/^PORT is not usable; allowed: .+\nDISCORD_APPLICATION_ID .+\nUNITS /)
    try {
      loadSettings(env)
    } catch (error) {
      expect((error as Error).message).not.toContain('secret')
    }
  })

  it('settings are frozen', () => {
    expect(Object.isFrozen(loadSettings({}))).toBe(true)
  })

  it('every setting says what is allowed', () => {
    for (const { allowed } of Object.values(settings)) expect(allowed).not.toBe('')
  })
})
