// What is done to the register from the command line, on the built program and a real file: import, backup, restore, migrate, demo.
import { execFile, spawn } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readPinHash } from '../../src/faces/http/kiosk/pin.ts'
import { startService } from '../support/service.ts'

const run = promisify(execFile)
const root = join(import.meta.dirname, '../..')
const folder = mkdtempSync(join(tmpdir(), 'verbs-'))
const database = `file:${join(folder, 'register.db')}`
afterAll(() => rmSync(folder, { recursive: true, force: true }))

interface Ended {
  readonly code: number
  readonly stdout: string
  readonly stderr: string
}
const verb = (words: readonly string[], url = database, input?: string): Promise<Ended> => {
  const running = run(process.execPath, ['dist/src/main.js', ...words], {
    cwd: root,
    env: { PATH: process.env.PATH, DATABASE_URL: url },
  })
  if (input !== undefined) running.child.stdin?.end(input)
  return running.then(
    ({ stdout, stderr }) => ({ code: 0, stdout, stderr }),
    (error: Ended) => ({ code: error.code, stdout: error.stdout, stderr: error.stderr }),
  )
}

describe('the register from the command line', () => {
  const sheet = join(folder, 'sheet.csv')
  const copy = join(folder, 'copy.db')
  beforeAll(() =>
    writeFileSync(
      sheet,
      'tag,name,wrench-type,most,lever\nW-1,Small,click,25 N·m,210 mm\nW-2,Half-inch,click,200 N·m,400 mm\n',
    ),
  )

  it('a sheet is tried, read in, and known when it comes again', async () => {
    expect((await verb(['import', sheet, '--dry-run'])).stdout).toContain('2 new, 0 there already; tried only')
    expect((await verb(['import', sheet])).stdout).toContain('2 new, 0 there already; kept')
    expect((await verb(['import', sheet])).stdout).toContain('0 new, 2 there already; kept')
  })

  it('a wrong one is told by line, with exit code 2', async () => {
    const wrong = join(folder, 'wrong.csv')
    writeFileSync(wrong, 'tag,name,wrench-type,most\nW-3,Small,click,25\n')
    const { code, stderr } = await verb(['import', wrong])
    expect(code).toBe(2)
    expect(stderr).toContain('line 2, most: got “25”.')
    expect(stderr).toContain('1 to mend; nothing was read in')
  })

  it('the wrench that was read in is known to a question', async () => {
    const { stdout } = await verb(['ask', 'adapter-setting', 'torque=120 N·m', 'wrench=W-2', 'adapter=45 mm@0'])
    expect(stdout).toContain('Set 107.9 N·m') // 120 · 400/445
  })

  it('a copy is made, looked through, and restored elsewhere and in place', async () => {
    expect((await verb(['backup', copy])).stdout).toContain('2 entries, looked through and sound')
    expect((await verb(['backup', copy])).code).toBe(1)
    const elsewhere = `file:${join(folder, 'elsewhere.db')}`
    expect((await verb(['restore', copy], elsewhere)).stdout).toContain('2 entries are in use again')
    expect((await verb(['ask', 'which-wrench', 'torque=20 N·m'], elsewhere)).stdout).toContain('W-1')
    const refused = await verb(['restore', copy])
    expect(refused.code).toBe(1)
    expect(refused.stderr).toContain('--replace')
    expect((await verb(['restore', copy, '--replace'])).stdout).toContain('the register before is at')
  })

  it('a copy that was changed is not taken, and what differs is told', async () => {
    const changed = join(folder, 'changed.db')
    expect((await verb(['backup', changed])).code).toBe(0)
    const db = new Database(changed)
    db.exec('drop trigger entries_no_delete')
    db.close()
    const { code, stderr } = await verb(['restore', changed, '--replace'])
    expect(code).toBe(1)
    expect(stderr).toContain('trigger entries_no_delete is missing')
  })

  it('what it makes is not for others on this machine, whatever the shell allows', async () => {
    const own = join(folder, 'own')
    const url = `file:${join(own, 'register.db')}`
    const service = await startService({ DATABASE_URL: url }, [], 'umask 022')
    expect((await fetch(`${service.url}/board`)).status).toBe(200)
    const shown = (): Record<string, string> =>
      Object.fromEntries(readdirSync(own).map((name) => [name, (statSync(join(own, name)).mode & 0o777).toString(8)]))
    expect(shown()).toEqual({ 'register.db': '640', 'register.db-wal': '640', 'register.db-shm': '640' })
    expect(statSync(own).mode & 0o007).toBe(0)
    await service.stop()
    const before = process.umask(0o022)
    try {
      expect((await verb(['backup', join(own, 'copy.db')], url)).code).toBe(0)
      expect(shown()).toMatchObject({ 'copy.db': '640' })
      chmodSync(join(own, 'copy.db'), 0o666)
      expect((await verb(['restore', join(own, 'copy.db')], `file:${join(own, 'again.db')}`)).code).toBe(0)
      expect(shown()).toMatchObject({ 'again.db': '640' })
      process.umask(0o077)
      expect((await verb(['backup', join(own, 'narrow.db')], url)).code).toBe(0)
      expect(shown()).toMatchObject({ 'narrow.db': '600' })
    } finally {
      process.umask(before)
    }
  })

  it('the nightly copy restores before it counts, and a broken one is none', async () => {
    const copies = join(folder, 'copies')
    const env = { PATH: process.env.PATH, DATABASE_URL: database }
    const { stdout } = await run(join(root, 'deploy/backup'), [copies], { env })
    expect(existsSync(stdout.trim().split('\n').at(-1) ?? '')).toBe(true)
    await expect(
      run(join(root, 'deploy/backup'), [copies], { env: { ...env, DATABASE_URL: 'memory:' } }),
    ).rejects.toThrow()
  })

  it('the schema is brought up to date', async () => {
    expect((await verb(['db-migrate'])).stdout).toMatch(/^the register has schema \d+\n$/)
  })

  it.each([['import'], ['backup'], ['restore']])('%s without a file says how it is used', async (name) => {
    expect((await verb([name])).code).toBe(64)
  })

  it.each([
    ['import', 'sheet.csv', '--dry-runn'],
    ['import', 'sheet.csv', '-n'],
    ['import', 'sheet.csv', 'other.csv'],
    ['backup', '--x'],
    ['restore', 'copy.db', '--replaced'],
    ['db-migrate', '--dry-run'],
    ['kiosk-pin', '--show'],
    ['register', '--dryrun'],
  ])('%s %s %s is told how it is used, and nothing is done', async (...words) => {
    const before = (await verb(['ask', 'which-wrench', 'torque=20 N·m'])).stdout
    const { code, stderr } = await verb(words.map((word) => (word.includes('.') ? join(folder, word) : word)))
    expect(code).toBe(64)
    expect(stderr).toContain('npm run ')
    expect((await verb(['ask', 'which-wrench', 'torque=20 N·m'])).stdout).toBe(before)
    expect(existsSync(join(root, '--x'))).toBe(false)
  })

  it('a sheet that is no UTF-8 is not read in with its letters lost, and what steers a terminal is printed as it is', async () => {
    const odd = join(folder, 'odd.csv')
    writeFileSync(odd, Buffer.from('tag,name,wrench-type,most\nW-9,Schl\xfcssel,click,25 N·m\n', 'latin1'))
    const { code, stderr } = await verb(['import', odd])
    expect(code).toBe(2)
    expect(stderr).toContain('UTF-8')
    writeFileSync(odd, 'tag,name,wrench-type,most\nW-9,\u001b[31mred,click,25 N·m\n')
    const steering = await verb(['import', odd])
    expect(steering.code).toBe(2)
    expect(steering.stderr).toContain('\\u001b[31mred')
    expect(steering.stderr).not.toContain('\u001b')
  })

  it('a PIN from a pipe becomes the setting; a weak one is refused', async () => {
    const { stdout } = await verb(['kiosk-pin'], database, '274915\n')
    expect(readPinHash(stdout.trim().replace('KIOSK_PIN_HASH=', ''))).toBeDefined()
    expect(await verb(['kiosk-pin'], database, '1234\n')).toMatchObject({ code: 64, stdout: '' })
  })
})

describe('the demo', () => {
  it('serves a board of a dozen wrenches', async () => {
    const child = spawn(process.execPath, ['dist/src/main.js', 'demo'], {
      cwd: root,
      env: { PATH: process.env.PATH ?? '', HOST: '127.0.0.1', PORT: '0' },
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    try {
      const line = await new Promise<string>((resolve) =>
        child.stdout.once('data', (chunk: Buffer) => resolve(String(chunk))),
      )
      const url = /http:\/\/[\d.:]+/.exec(line)?.[0] ?? ''
      const board = (await (await fetch(`${url}/v1/wrenches`)).json()) as { wrenches: unknown[] }
      expect(board.wrenches).toHaveLength(12)
      expect(await (await fetch(`${url}/board`)).text()).toContain('Kiln Lane Garage')
    } finally {
      child.kill()
    }
  })
})
