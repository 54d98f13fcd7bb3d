// What deploy/ says of the program is true of it: every setting, every metric, every file it names.
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type SettingName, settings } from '../src/config.ts'
import { createCounters } from '../src/counters.ts'

const folder = join(import.meta.dirname, '../deploy')
const read = (name: string): string => readFileSync(join(folder, name), 'utf8')
// README's pictures are no part of running it.
const files = readdirSync(folder).filter((name) => name !== 'pictures')

describe('env.example', () => {
  const lines = read('env.example')
    .split('\n')
    .flatMap((line) => {
      const [, name, value] = /^# ([A-Z_]+)=(.*)$/.exec(line) ?? []
      return name === undefined ? [] : [{ name, value: value as string }]
    })

  it('names every setting once, and no other', () => {
    expect(lines.map(({ name }) => name).sort()).toEqual(Object.keys(settings).sort())
  })

  it.each(lines)('$name is shown as it is without being set', ({ name, value }) => {
    expect(value).toBe(settings[name as SettingName].without ?? '')
  })
})

describe('the other files', () => {
  it('name only settings that there are', () => {
    const known = new Set([
      ...Object.keys(settings),
      'NODE_ENV',
      'DATABASE_PASSWORD',
      'KIOSK_ADDRESS',
      'XDG_RUNTIME_DIR',
      'MALLOC_ARENA_MAX',
      'NODE_OPTIONS',
    ])
    const foreign = /^(POSTGRES_\w+)$/
    for (const name of files.filter((file) => /\.(yml|service)$|^Containerfile$/.test(file))) {
      for (const [, setting = ''] of read(name).matchAll(/(?:^|[\s"{])([A-Z]+_[A-Z_]+)(?=[:=}?])/gm))
        if (!foreign.test(setting)) expect(known, `${name}: ${setting}`).toContain(setting)
    }
  })

  it('count what the program counts', async () => {
    const told = await createCounters({ process: true }).registry.metrics()
    for (const name of ['alerts.yml', 'dashboard.json']) {
      for (const [metric] of read(name).matchAll(/\b(?:armlength|process)_[a-z_]+/g))
        expect(told, `${name}: ${metric}`).toContain(metric.replace(/_(bucket|count|sum)$/, ''))
    }
  })

  it('the runbook tells of each of them', () => {
    const runbook = read('runbook.md')
    for (const name of files) if (name !== 'runbook.md') expect(runbook).toContain(name)
    for (const [, name = ''] of runbook.matchAll(/\bdeploy\/([\w.-]+)/g))
      if (name !== 'env') expect(existsSync(join(folder, name)), name).toBe(true)
  })

  it('what is JSON is JSON, and what is a script is one', () => {
    for (const name of files.filter((file) => file.endsWith('.json')))
      expect(() => JSON.parse(read(name))).not.toThrow()
    for (const name of files.filter((file) => !file.includes('.') && file !== 'Containerfile'))
      expect(() => execFileSync('bash', ['-n', join(folder, name)])).not.toThrow()
  })

  it('the unit starts what the build leaves, and gives way to nobody', () => {
    const unit = read('armlength.service')
    expect(unit).toContain('ExecStart=/usr/bin/node dist/src/main.js')
    for (const line of [
      'Type=notify',
      'WatchdogSec=',
      'NoNewPrivileges=yes',
      'ProtectSystem=strict',
      'CapabilityBoundingSet=\n',
    ])
      expect(unit).toContain(line)
  })
  it.each(files.filter((file) => file.endsWith('.service')))('%s leaves nothing that others can read', (name) => {
    const unit = read(name)
    const setting = (of: string): string | undefined => new RegExp(`^${of}=(.*)$`, 'm').exec(unit)?.[1]
    expect(setting('UMask')).toMatch(/^00[0-7]7$/)
    // The mode of a folder that two units share is set by the one that starts last.
    for (const folder of ['State', 'Runtime'].filter((one) => setting(`${one}Directory`) !== undefined))
      expect(setting(`${folder}DirectoryMode`)).toMatch(/^07[0-7]0$/)
  })

  it('what copies the register is told the same of the folder as what writes it', () => {
    const modes = (name: string) => read(name).match(/^(?:StateDirectory|StateDirectoryMode|UMask|User|Group)=.*$/gm)
    expect(modes('armlength-backup.service')?.sort()).toEqual(modes('armlength.service')?.sort())
  })
})
