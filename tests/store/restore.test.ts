// A copy back into its place: only a sound one of ours, never over a register with entries unless that is said, nothing lost.
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { restoreSqlite } from '../../src/store/restore.ts'
import { openSqlite } from '../../src/store/sqlite.ts'
import { appendTo, wrenchEntry } from '../support/entries.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'restore-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const at = (name: string): string => join(folder, name)
const filled = async (name: string, tags: readonly string[]): Promise<void> => {
  const store = await openSqlite(at(name))
  for (const tag of tags) await appendTo(store, tag, [wrenchEntry(`first-${tag}`, tag)])
  await store.close()
}
const copied = async (name: string): Promise<string> => {
  const store = await openSqlite(at(name))
  await store.backup(at('copy.db'))
  await store.close()
  return at('copy.db')
}
const tagsIn = async (name: string): Promise<string[]> => {
  const store = await openSqlite(at(name))
  const { cards } = await store.cards({ order: 'tag', limit: 50 })
  await store.close()
  return cards.map(({ tag }) => tag)
}
const now = { stamp: '2026', replace: false }

describe('a copy is restored', () => {
  it('where nothing is, and where an empty register is', async () => {
    await filled('a.db', ['W-1', 'W-2'])
    const copy = await copied('a.db')
    expect(await restoreSqlite(copy, at('deep/b.db'), now)).toEqual({ last: 2 })
    expect(await tagsIn('deep/b.db')).toEqual(['W-1', 'W-2'])
    await filled('c.db', [])
    expect(await restoreSqlite(copy, at('c.db'), now)).toMatchObject({ last: 2 })
    expect(existsSync(copy)).toBe(true)
  })

  it('over a register with entries only where that is said, and that one is moved aside whole', async () => {
    await filled('a.db', ['W-1'])
    const copy = await copied('a.db')
    await filled('b.db', ['W-8', 'W-9'])
    await expect(restoreSqlite(copy, at('b.db'), now)).rejects.toMatchObject({ code: 'not-offered' })
    expect(await tagsIn('b.db')).toEqual(['W-8', 'W-9'])
    const { aside = '' } = await restoreSqlite(copy, at('b.db'), { ...now, replace: true })
    expect(await tagsIn('b.db')).toEqual(['W-1'])
    expect(await tagsIn(aside.slice(folder.length + 1))).toEqual(['W-8', 'W-9'])
  })

  it('not where the copy is empty: nothing is given up for nothing', async () => {
    await filled('a.db', ['W-1'])
    writeFileSync(at('copy.db'), '')
    await expect(restoreSqlite(at('copy.db'), at('a.db'), { ...now, replace: true })).rejects.toMatchObject({
      code: 'not-ours',
    })
    expect(await tagsIn('a.db')).toEqual(['W-1'])
  })

  it('not under a desk that still runs: what it goes on writing would be lost', async () => {
    await filled('a.db', ['W-1'])
    const copy = await copied('a.db')
    await filled('b.db', ['W-8'])
    const running = await openSqlite(at('b.db'))
    await running.cards({ order: 'tag', limit: 1 })
    await expect(restoreSqlite(copy, at('b.db'), { ...now, replace: true })).rejects.toMatchObject({ code: 'locked' })
    await appendTo(running, 'W-9', [wrenchEntry('late', 'W-9')])
    await running.close()
    expect(await tagsIn('b.db')).toEqual(['W-8', 'W-9'])
  })

  it('over one that is damaged only where that is said', async () => {
    await filled('a.db', ['W-1'])
    const copy = await copied('a.db')
    writeFileSync(at('b.db'), 'not a database at all, but somebody’s file')
    await expect(restoreSqlite(copy, at('b.db'), now)).rejects.toThrow()
    expect(await restoreSqlite(copy, at('b.db'), { ...now, replace: true })).toMatchObject({ last: 1 })
  })

  it.each([
    ['is not there', undefined],
    ['is no database', 'hello'],
    ['is torn', 'SQLite format 3\u0000 and then nothing'],
  ])('not where it %s: what is in use stays', async (_what, content) => {
    await filled('b.db', ['W-8'])
    if (content !== undefined) writeFileSync(at('copy.db'), content)
    await expect(restoreSqlite(at('copy.db'), at('b.db'), { ...now, replace: true })).rejects.toThrow()
    expect(await tagsIn('b.db')).toEqual(['W-8'])
    expect(readdirSync(folder).filter((name) => name.includes('restoring'))).toEqual([])
  })
})
