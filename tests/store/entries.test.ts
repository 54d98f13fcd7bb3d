// The record in every store: added whole or not at all, never twice, never over somebody else's, and read back as it was.
import { expect, it } from 'vitest'
import type { Entry } from '../../src/register/records.ts'
import type { Store } from '../../src/store/store.ts'
import {
  appendTo,
  assertTaken,
  card,
  checkEntry,
  eventEntry,
  withdrawalEntry,
  wrenchEntry,
} from '../support/entries.ts'
import { onEveryStore } from '../support/stores.ts'

const ids = (filed: ReadonlyArray<{ readonly entry: Entry }>): string[] => filed.map(({ entry }) => entry.id)
const add = (store: Store, tag: string, seq: number, ...entries: Entry[]) =>
  store.append({ entries, expects: [{ tag, seq }], cards: [] })

onEveryStore('the record', (open, kind, address) => {
  it('gives back what it was given, in order, with places from 1 and without a gap', async () => {
    const store = await open()
    const entries = [wrenchEntry('w', 'W-7'), checkEntry('c', 'W-7', 99.5), eventEntry('e', 'W-7', 'from the bench')]
    assertTaken(entries)
    expect(await add(store, 'W-7', 0, ...entries)).toEqual({ kind: 'kept', seqs: [1, 2, 3] })
    const history = await store.history('W-7')
    expect(history).toEqual(entries.map((entry, n) => ({ seq: n + 1, entry })))
    expect(await store.history('w-7'), 'a tag is the same however it is typed').toEqual(history)
    expect(ids(await store.history('W-7', 'check'))).toEqual(['c'])
    expect(await store.history('W-8')).toEqual([])
    expect(await store.entry('c')).toEqual({ seq: 2, entry: entries[1] })
    expect(await store.entry('nothing')).toBeUndefined()
  })

  it('refuses to add where somebody was quicker, and writes nothing then', async () => {
    const store = await open()
    await add(store, 'W-7', 0, wrenchEntry('w', 'W-7'))
    const late = { entries: [checkEntry('c', 'W-7', 99)], expects: [{ tag: 'w-7', seq: 0 }], cards: [card('W-7')] }
    expect(await store.append(late)).toEqual({ kind: 'moved', tag: 'w-7', seq: 1 })
    expect(ids(await store.since(0, 10))).toEqual(['w'])
    expect(await store.card({ kind: 'wrench', tag: 'W-7' })).toBeUndefined()
    expect(await store.append({ ...late, expects: [{ tag: 'W-7', seq: 1 }] })).toEqual({ kind: 'kept', seqs: [2] })
  })

  it('refuses all where one of many tags has moved', async () => {
    const store = await open()
    await add(store, 'W-1', 0, wrenchEntry('a', 'W-1'))
    const both = [checkEntry('b', 'W-1', 99), wrenchEntry('c', 'W-2')]
    const expects = [
      { tag: 'W-2', seq: 0 },
      { tag: 'W-1', seq: 0 },
    ]
    expect(await store.append({ entries: both, expects, cards: [] })).toEqual({ kind: 'moved', tag: 'W-1', seq: 1 })
    expect(await store.history('W-2')).toEqual([])
  })

  it('will not add to a tag of which nothing is expected', async () => {
    const store = await open()
    await expect(add(store, 'W-1', 0, wrenchEntry('a', 'W-2'))).rejects.toThrow('bug: nothing is expected of w-2')
    expect(await store.since(0, 10)).toEqual([])
  })

  it('what hangs on the whole record is refused where anything was added to it meanwhile', async () => {
    const store = await open()
    await add(store, 'W-1', 0, wrenchEntry('a', 'W-1'))
    await add(store, 'W-2', 0, wrenchEntry('b', 'W-2'))
    const wanted = { entries: [checkEntry('c', 'W-1', 99)], expects: [{ tag: 'W-1', seq: 1 }], cards: [] }
    expect(await store.append({ ...wanted, asOf: 1 })).toEqual({ kind: 'moved', tag: 'W-1', seq: 2 })
    expect(await store.since(0, 10)).toHaveLength(2)
    expect(await store.append({ ...wanted, asOf: 2 })).toEqual({ kind: 'kept', seqs: [3] })
  })

  it('keeps what comes twice under a key once, and gives back the first', async () => {
    const store = await open()
    const first = [wrenchEntry('a', 'W-1', { key: 'k1' }), checkEntry('b', 'W-1', 99, { key: 'k1' })]
    await add(store, 'W-1', 0, ...first)
    const again = [wrenchEntry('x', 'W-1', { key: 'k1' }), checkEntry('y', 'W-1', 99, { key: 'k1' })]
    const filed = first.map((entry, n) => ({ seq: n + 1, entry }))
    expect(await add(store, 'W-1', 0, ...again)).toEqual({ kind: 'known', filed })
    expect(await store.known('k1')).toEqual(filed)
    expect(await store.known('k2')).toEqual([])
    expect(await store.since(0, 10)).toHaveLength(2)
  })

  it.each<[string, Entry[]]>([
    ['another reading', [wrenchEntry('x', 'W-1', { key: 'k1' }), checkEntry('y', 'W-1', 98, { key: 'k1' })]],
    ['a part of it', [wrenchEntry('x', 'W-1', { key: 'k1' })]],
    ['more than it', [...['x', 'y', 'z'].map((id) => checkEntry(id, 'W-1', 99, { key: 'k1' }))]],
    ['it beside something new', [wrenchEntry('x', 'W-1', { key: 'k1' }), checkEntry('y', 'W-1', 99, { key: 'k2' })]],
  ])('the same key for %s is a clash', async (_, other) => {
    const store = await open()
    await add(store, 'W-1', 0, wrenchEntry('a', 'W-1', { key: 'k1' }), checkEntry('b', 'W-1', 99, { key: 'k1' }))
    expect(await add(store, 'W-1', 2, ...other)).toEqual({ kind: 'clash', by: 'key', value: 'k1' })
    expect(await store.since(0, 10)).toHaveLength(2)
  })

  it('the same entry a second time is known without a key; another under its id is a clash', async () => {
    const store = await open()
    const entry = wrenchEntry('a', 'W-1')
    await add(store, 'W-1', 0, entry)
    expect(await add(store, 'W-1', 0, entry)).toEqual({ kind: 'known', filed: [{ seq: 1, entry }] })
    const other = await add(store, 'W-1', 1, checkEntry('a', 'W-1', 99))
    expect(other).toEqual({ kind: 'clash', by: 'id', value: 'a' })
  })

  it('two entries with one id in one go are refused, and neither is kept', async () => {
    const store = await open()
    await expect(add(store, 'W-1', 0, wrenchEntry('a', 'W-1'), checkEntry('a', 'W-1', 99))).rejects.toThrow()
    expect(await store.since(0, 10)).toEqual([])
    expect(await store.history('W-1')).toEqual([])
  })

  it('keeps what was superseded; a withdrawal belongs where that belonged', async () => {
    const store = await open()
    await add(store, 'W-1', 0, wrenchEntry('w', 'W-1'), checkEntry('a', 'W-1', 99))
    await add(store, 'W-1', 2, checkEntry('b', 'W-1', 101, { supersedes: 'a', why: 'misread' }))
    await add(store, 'W-1', 3, withdrawalEntry('c', 'b'))
    expect(ids(await store.history('W-1'))).toEqual(['w', 'a', 'b', 'c'])
  })

  it('a correction that moves a check to another wrench is found at both, with what it corrects', async () => {
    const store = await open()
    await add(store, 'W-1', 0, wrenchEntry('w1', 'W-1'), checkEntry('a', 'W-1', 99))
    await add(store, 'W-2', 0, wrenchEntry('w2', 'W-2'))
    await add(store, 'W-1', 2, checkEntry('b', 'W-1', 98, { supersedes: 'a', why: 'misread' }))
    const moves = checkEntry('c', 'W-2', 98, { supersedes: 'b', why: 'it was the other wrench' })
    await expect(add(store, 'W-2', 3, moves)).rejects.toThrow('bug: nothing is expected of w-1')
    const expects = [
      { tag: 'W-1', seq: 4 },
      { tag: 'W-2', seq: 3 },
    ]
    expect(await store.append({ entries: [moves], expects, cards: [] })).toEqual({ kind: 'kept', seqs: [5] })
    expect(ids(await store.history('W-1'))).toEqual(['w1', 'a', 'b', 'c'])
    expect(ids(await store.history('W-2'))).toEqual(['a', 'w2', 'b', 'c'])
    await store.append({
      entries: [withdrawalEntry('d', 'c')],
      expects: expects.map(({ tag }) => ({ tag, seq: 5 })),
      cards: [],
    })
    expect(ids(await store.history('W-1')).at(-1)).toBe('d')
    expect(ids(await store.history('W-2')).at(-1)).toBe('d')
  })

  it('refuses to supersede what is not there', async () => {
    const store = await open()
    await expect(add(store, 'W-1', 0, withdrawalEntry('a', 'b'))).rejects.toThrow('entry b is superseded and is not in')
  })

  it('gives the record page by page', async () => {
    const store = await open()
    for (let n = 0; n < 3; n++) {
      const entries = Array.from({ length: 250 }, (_, m) => wrenchEntry(`${n}-${m}`, `W-${n}-${m}`))
      const expects = entries.map((_, m) => ({ tag: `W-${n}-${m}`, seq: 0 }))
      await store.append({ entries, expects, cards: [] })
    }
    const seqs: number[] = []
    for (let after = 0; ; after = seqs.at(-1) as number) {
      const page = await store.since(after, 100)
      expect(page.length).toBeLessThanOrEqual(100)
      if (page.length === 0) break
      seqs.push(...page.map(({ seq }) => seq))
    }
    expect(seqs).toEqual(Array.from({ length: 750 }, (_, n) => n + 1))
  })

  it('loses no update when many append to one tag at once', async () => {
    const store = await open()
    await Promise.all(Array.from({ length: 12 }, (_, n) => appendTo(store, 'W-1', [checkEntry(`c${n}`, 'W-1', n + 1)])))
    const history = await store.history('W-1')
    expect(history.map(({ seq }) => seq)).toEqual(Array.from({ length: 12 }, (_, n) => n + 1))
    expect(ids(history).sort()).toEqual(Array.from({ length: 12 }, (_, n) => `c${n}`).sort())
  })

  it('changes nothing when what it gave is changed', async () => {
    const store = await open()
    const entry = wrenchEntry('a', 'W-1')
    await add(store, 'W-1', 0, entry)
    Object.assign(entry.body, { name: 'changed' })
    const [given] = await store.history('W-1')
    Object.assign(given?.entry.body ?? {}, { name: 'changed too' })
    expect((await store.entry('a'))?.entry.body).toMatchObject({ name: 'Wrench W-1' })
  })

  it('says that it is closed', async () => {
    const store = await open()
    await store.check()
    await store.close()
    await expect(store.check()).rejects.toMatchObject({ name: 'Outage', code: 'closed' })
    await expect(store.history('W-1')).rejects.toMatchObject({ name: 'Outage', code: 'closed' })
  })

  it.runIf(kind !== 'memory')('is still there when it is opened again', async () => {
    const at = await address()
    const store = await open(at)
    await add(store, 'W-1', 0, wrenchEntry('a', 'W-1'))
    await store.close()
    expect(ids(await (await open(at)).history('W-1'))).toEqual(['a'])
  })
})
