// The built program where its register can be read and not written to: it says so, and looks no more often than it needs.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, expect, it } from 'vitest'
import { startService } from '../support/service.ts'

const folder = mkdtempSync(join(tmpdir(), 'readiness-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it('a register that cannot be written to is told, and questions and the board are answered all the same', async () => {
  const path = join(folder, 'register.db')
  const service = await startService({ DATABASE_URL: `file:${path}` })
  try {
    expect((await fetch(`${service.url}/v1/wrenches`)).status).toBe(200)
    const other = new Database(path)
    other.exec('begin immediate')
    const ready = await fetch(`${service.url}/readyz`)
    expect(ready.status).toBe(200)
    expect(await ready.json()).toEqual({ status: 'degraded', reasons: ['the register cannot be written to (locked)'] })
    const begun = performance.now()
    expect(await (await fetch(`${service.url}/readyz`)).json()).toMatchObject({ status: 'degraded' })
    // Nobody waits for the lock a second time.
    expect(performance.now() - begun).toBeLessThan(1500)
    expect((await fetch(`${service.url}/v1/wrenches`)).status).toBe(200)
    other.exec('rollback')
    other.close()
  } finally {
    service.kill()
  }
}, 30_000)
