// What somebody has erased is in none of the bytes of a SQLite register once its log is folded in.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { openSqlite } from '../../src/store/sqlite.ts'

it('leaves nothing of whom it was', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'erased-'))
  const store = await openSqlite(join(folder, 'register.db'))
  const at = '2026-06-01T10:00:00.000Z'
  for (const owner of ['user:300000000000005555', 'user:300000000000000001'])
    await store.setOwn({ owner, name: 'wrench', value: 'W-07', at })
  await store.forgetOwn('user:300000000000005555')
  await store.close()
  const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name)).includes('300000000000005555'))
  expect(bytes).not.toContain(true)
  rmSync(folder, { recursive: true })
})
