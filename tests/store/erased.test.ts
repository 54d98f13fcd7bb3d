// What somebody has erased is in none of the bytes of a SQLite register, neither in its file nor in the log beside it.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { openSqlite } from '../../src/store/sqlite.ts'
import type { Store } from '../../src/store/store.ts'

const gone = 'user:300000000000005555'
const at = '2026-06-01T10:00:00.000Z'

let folder: string
let store: Store
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'erased-'))
  store = await openSqlite(join(folder, 'register.db'))
  for (const owner of [gone, 'user:300000000000000001'])
    await store.setOwn({ owner, name: 'wrench', value: 'W-07', at })
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true })
})

const filesThatHold = (text: string): string[] =>
  readdirSync(folder).filter((name) => readFileSync(join(folder, name)).includes(text))

it('leaves nothing of whom it was, at once', async () => {
  expect(filesThatHold(gone)).not.toEqual([])
  expect(await store.forgetOwn(gone)).toBe(1)
  expect(filesThatHold(gone)).toEqual([])
  expect(filesThatHold('user:300000000000000001')).not.toEqual([])
})

it('leaves nothing of what was taken back before', async () => {
  await store.setOwn({ owner: gone, name: 'wrench', value: null, at })
  expect(await store.forgetOwn(gone)).toBe(0)
  expect(filesThatHold(gone)).toEqual([])
})

it('leaves nothing of what nobody used for long', async () => {
  await store.forgetIdle('2027-06-01T10:00:00.000Z')
  expect(filesThatHold(gone)).toEqual([])
})

it('leaves nothing once it is closed', async () => {
  await store.forgetOwn(gone)
  await store.close()
  expect(filesThatHold(gone)).toEqual([])
})
