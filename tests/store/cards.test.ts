// The cards in every store: as they hang, by tag, by what is due; page by page; found by what is typed; folded anew.
import { expect, it } from 'vitest'
import type { Card, CardsWanted, Store } from '../../src/store/store.ts'
import { appendTo, card, checkEntry, foldCards, wrenchEntry } from '../support/entries.ts'
import { onEveryStore } from '../support/stores.ts'

const put = async (store: Store, cards: readonly Card[]): Promise<void> => {
  const entries = cards.map(({ tag, kind }) => wrenchEntry(`${kind}-${tag}`, tag))
  const tags = [...new Set(cards.map(({ tag }) => tag))]
  const last = await Promise.all(tags.map(async (tag) => (await store.history(tag)).at(-1)?.seq ?? 0))
  const kept = await store.append({
    entries,
    expects: tags.map((tag, n) => ({ tag, seq: last[n] as number })),
    cards,
  })
  expect(kept.kind).toBe('kept')
}

const tagsOf = (cards: readonly Card[]): string[] => cards.map(({ tag }) => tag)
const all = async (store: Store, wanted: Omit<CardsWanted, 'limit'>): Promise<string[]> =>
  tagsOf((await store.cards({ ...wanted, limit: 100 })).cards)

const board: readonly Card[] = [
  card('W-10', { place: 'Rack 2', due: '2026-05-01' }),
  card('W-2', { place: 'Rack 2', due: '2026-04-01' }),
  card('W-1', { place: 'Rack 10' }),
  card('W-3', { due: '2026-04-01' }),
  card('a1', { place: 'rack 2', due: '2026-03-31' }),
  card('Ä1', { place: 'Rack 2', due: '2027-01-01', retired: true }),
  card('G-1', { kind: 'gauge', place: 'Rack 2', due: '2026-06-01' }),
]

onEveryStore('the cards', (open) => {
  it('come as they hang, by tag and by what is due; numbers by their size, what has none last', async () => {
    const store = await open()
    await put(store, board)
    expect(await all(store, { order: 'place' })).toEqual(['a1', 'G-1', 'W-2', 'W-10', 'W-1', 'W-3'])
    expect(await all(store, { order: 'tag' })).toEqual(['a1', 'G-1', 'W-1', 'W-2', 'W-3', 'W-10'])
    expect(await all(store, { order: 'due' })).toEqual(['a1', 'W-2', 'W-3', 'W-10', 'G-1', 'W-1'])
  })

  it('come of one kind, due by a day, with the retired ones only when they are asked for', async () => {
    const store = await open()
    await put(store, board)
    expect(await all(store, { order: 'due', dueBy: '2026-04-01' })).toEqual(['a1', 'W-2', 'W-3'])
    expect(await all(store, { order: 'tag', kind: 'gauge' })).toEqual(['G-1'])
    expect(await all(store, { order: 'tag', kind: 'wrench', withRetired: true })).toEqual([
      'a1',
      'W-1',
      'W-2',
      'W-3',
      'W-10',
      'Ä1',
    ])
  })

  it.each(['place', 'tag', 'due'] as const)('come page by page by %s: each once, none left out', async (order) => {
    const store = await open()
    const many = Array.from({ length: 23 }, (_, n) =>
      card(`T${n}`, { ...(n % 3 && { place: `P${n % 4}` }), ...(n % 5 && { due: `2026-01-0${1 + (n % 3)}` }) }),
    )
    await put(store, [...many, ...many.slice(0, 5).map((one) => ({ ...one, kind: 'gauge' as const }))])
    const whole = await store.cards({ order, limit: 100 })
    expect(whole.next).toBeUndefined()
    expect(whole.cards).toHaveLength(28)
    for (const limit of [1, 7, 14, 28]) {
      const seen: unknown[] = []
      let pages = 0
      for (let after: string | undefined; ; ) {
        const page = await store.cards({ order, limit, after })
        seen.push(...page.cards)
        pages += 1
        after = page.next
        if (after === undefined) break
      }
      expect(seen, `${limit} a page`).toEqual(whole.cards)
      expect(pages).toBe(Math.ceil(28 / limit))
    }
  })

  it('end, whatever stands in a place: line ends, NUL, marks', async () => {
    const store = await open()
    const places = ['a\nb', 'a\nb\nc', '\n', 'a\0b', '[",]', '\ud800', '💥', 'a']
    await put(
      store,
      places.map((place, n) => card(`T${n}`, { place })),
    )
    const seen: string[] = []
    let after: string | undefined
    for (let pages = 0; pages < 20; pages++) {
      const page = await store.cards({ order: 'place', limit: 1, after })
      seen.push(...page.cards.map(({ tag }) => tag))
      after = page.next
      if (after === undefined) break
    }
    expect([...seen].sort()).toEqual(places.map((_, n) => `T${n}`))
  })

  it('take any text for a place in the order', async () => {
    const store = await open()
    await put(store, board)
    for (const after of ['', 'x', '\0', "'; drop table cards; --", '\n\n\n', '💥', '\ud800']) {
      const page = await store.cards({ order: 'place', limit: 3, after })
      expect(page.cards.length).toBeLessThanOrEqual(3)
    }
    expect(await all(store, { order: 'place', after: '' })).toHaveLength(6)
  })

  it('are replaced with the entries that change them, and go when they are dropped', async () => {
    const store = await open()
    await put(store, [card('W-1', { name: 'old' }), card('W-1', { kind: 'gauge', name: 'a gauge' })])
    const seq = 2
    await store.append({
      entries: [checkEntry('c', 'w-1', 99)],
      expects: [{ tag: 'W-1', seq }],
      cards: [card('W-1', { name: 'new', summary: { checks: 1 } })],
      dropped: [{ kind: 'gauge', tag: 'w-1' }],
    })
    expect(await store.card({ kind: 'wrench', tag: 'w-1' })).toEqual({
      ...card('W-1', { name: 'new', summary: { checks: 1 } }),
      seq: 3,
    })
    expect(await store.card({ kind: 'gauge', tag: 'W-1' })).toBeUndefined()
  })

  it.each<[string, string, string[]]>([
    ['a tag as typed', 'W-1', ['W-1', 'W-10', 'W-12']],
    ['a tag in small letters', 'w-12', ['W-12']],
    ['a tag in wide letters', 'Ｗ－１２', ['W-12']],
    ['a part of a tag, after the names that begin so', '1', ['1st', 'W-1', 'W-10', 'W-12']],
    ['the beginning of a name before its middle', 'beam', ['W-12', 'W-10']],
    ['nothing typed: all, by tag', '', ['1st', 'W-1', 'W-10', 'W-12']],
    ['spaces around it', '  beam ', ['W-12', 'W-10']],
    ['a percent sign is a percent sign', '%', ['W-1']],
    ['so is a line', '_', []],
    ['and a stroke', '\\', []],
    ['a quote', "o'", ['1st']],
    ['what is not there', 'zzz', []],
    ['NUL', '\0', []],
    ['far too much', 'x'.repeat(10_000), []],
  ])('are found by %s', async (_, typed, found) => {
    const store = await open()
    await put(store, [
      card('W-10', { name: 'The beam' }),
      card('W-12', { name: 'Beam, long' }),
      card('W-1', { name: '4 % click' }),
      card('1st', { name: "O'Hara's" }),
      card('Old', { name: 'Retired', retired: true }),
    ])
    expect(tagsOf(await store.find(typed, { limit: 25 }))).toEqual(found)
    expect(tagsOf(await store.find(typed, { limit: 1 }))).toEqual(found.slice(0, 1))
    expect(await store.find(typed, { limit: 25, kind: 'gauge' })).toEqual([])
  })

  it('find the retired only when they are asked for', async () => {
    const store = await open()
    await put(store, board)
    expect(await store.find('ä', { limit: 5 })).toEqual([])
    expect(tagsOf(await store.find('ä', { limit: 5, withRetired: true }))).toEqual(['Ä1'])
  })

  it('are folded anew from the entries: what is wrong is mended, what is no more goes', async () => {
    const store = await open()
    const tags = Array.from({ length: 60 }, (_, n) => `W-${n}`)
    for (const tag of tags) await appendTo(store, tag, [wrenchEntry(`w-${tag}`, tag), checkEntry(`c-${tag}`, tag, 99)])
    const right = await store.cards({ order: 'tag', limit: 100 })
    expect(right.cards[7]?.summary).toEqual({ checks: 1 })
    await store.append({
      entries: [checkEntry('more', 'W-7', 99)],
      expects: [{ tag: 'W-7', seq: (await store.history('W-7')).at(-1)?.seq ?? 0 }],
      cards: [card('W-7', { name: 'wrong' }), card('W-7', { kind: 'gauge' })],
    })
    expect(await store.rebuild(foldCards)).toBe(60)
    const again = await store.cards({ order: 'tag', limit: 100 })
    expect(again.cards.filter(({ tag }) => tag !== 'W-7')).toEqual(right.cards.filter(({ tag }) => tag !== 'W-7'))
    expect(await store.card({ kind: 'wrench', tag: 'W-7' })).toMatchObject({
      name: 'Wrench W-7',
      summary: { checks: 2 },
    })
    expect(await store.card({ kind: 'gauge', tag: 'W-7' })).toBeUndefined()
  })

  it('a fold that makes the card of another tag is a bug, said so', async () => {
    const store = await open()
    await appendTo(store, 'W-1', [wrenchEntry('w', 'W-1')])
    await expect(store.rebuild(() => [card('W-2')])).rejects.toThrow('bug: the fold of w-1')
  })
})
