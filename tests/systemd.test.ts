// The words with systemd: secrets as settings, ready, alive, stopping; and nothing at all without it.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { tellSystemd, withSecrets } from '../src/systemd.ts'

describe('secrets', () => {
  let folder: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'secrets-'))
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  it('are settings by the names of their files, without the line that an editor ends with', () => {
    writeFileSync(join(folder, 'secrets_DISCORD_TOKEN'), 'abc\n')
    writeFileSync(join(folder, 'KIOSK_PIN_HASH'), 'def')
    expect(withSecrets({ CREDENTIALS_DIRECTORY: folder, PORT: '1' })).toMatchObject({
      DISCORD_TOKEN: 'abc',
      KIOSK_PIN_HASH: 'def',
      PORT: '1',
    })
  })

  it('do not overrule what the environment says', () => {
    writeFileSync(join(folder, 'PORT'), '2')
    expect(withSecrets({ CREDENTIALS_DIRECTORY: folder, PORT: '1' })['PORT']).toBe('1')
  })

  it('are none without a folder', () => {
    expect(withSecrets({ PORT: '1' })).toEqual({ PORT: '1' })
    expect(withSecrets({ CREDENTIALS_DIRECTORY: join(folder, 'gone') })).not.toHaveProperty('gone')
  })
})

describe('what systemd hears', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  it('ready at once, alive twice as often as asked, and stopping', () => {
    const heard: string[] = []
    const watched = tellSystemd({ NOTIFY_SOCKET: '/run/notify', WATCHDOG_USEC: '30000000' }, (words) =>
      heard.push(words.join(' ')),
    )
    vi.advanceTimersByTime(31_000)
    watched.stopping()
    vi.advanceTimersByTime(60_000)
    expect(heard).toEqual(['--ready', 'WATCHDOG=1', 'WATCHDOG=1', 'STOPPING=1'])
  })

  it('is only that it is ready where it does not watch', () => {
    const heard: string[] = []
    tellSystemd({ NOTIFY_SOCKET: '/run/notify' }, (words) => heard.push(words.join(' ')))
    vi.advanceTimersByTime(600_000)
    expect(heard).toEqual(['--ready'])
  })

  it('is nothing where there is none', () => {
    const heard: string[] = []
    tellSystemd({ WATCHDOG_USEC: '30000000' }, (words) => heard.push(words.join(' '))).stopping()
    vi.advanceTimersByTime(60_000)
    expect(heard).toEqual([])
  })
})
