// Any text comes back from every store as it went in: entries and cards travel as JSON, which can tell them all.
import { expect, it } from 'vitest'
import { card, eventEntry } from '../support/entries.ts'
import { onEveryStore } from '../support/stores.ts'

const hostile: Readonly<Record<string, string>> = {
  quotes: `'"\`; drop table entries; -- ' or 1=1`,
  'NUL in the middle': 'before\0after',
  'half a pair': 'x\ud800y\udfffz',
  emoji: '👩🏽‍🔧🔧🇩🇪',
  'right to left': '\u202eabc\u202c مفتاح',
  'ten thousand letters': 'ä'.repeat(10_000),
  'line ends': 'a\r\nb\rc\nd\te\u2028f\u2029g',
  'an escape written out': '\\u0000 \\n %s $1 ?1 :name @x',
  'composed and not': 'é é ﬁ ﬀ',
  'the last character there is': '\u{10ffff}\uffff',
  'not a prototype': '__proto__ constructor',
}

onEveryStore('any text', (open) => {
  it.each(Object.entries(hostile))('%s', async (_, text) => {
    const store = await open()
    const entry = eventEntry('e', 'W-1', text, { key: 'k' })
    const held = card('W-1', { name: text, place: text, summary: { text, [text]: [text] } })
    const kept = await store.append({ entries: [entry], expects: [{ tag: 'W-1', seq: 0 }], cards: [held] })
    expect(kept.kind).toBe('kept')
    expect((await store.history('W-1'))[0]?.entry).toEqual(entry)
    expect((await store.known('k'))[0]?.entry).toEqual(entry)
    expect(await store.card({ kind: 'wrench', tag: 'W-1' })).toEqual({ ...held, seq: 1 })
    const page = await store.cards({ order: 'place', limit: 5 })
    expect(page.cards).toEqual([{ ...held, seq: 1 }])
    if (text.length < 200) expect(await store.find(text, { limit: 5 })).toHaveLength(1)
    // Asked for what is not there, none of it does harm.
    expect(await store.history(text)).toEqual([])
    expect(await store.entry(text)).toBeUndefined()
    expect(await store.known(text)).toEqual([])
    expect(await store.settings(text)).toEqual({})
    expect(await store.mark(text, text, text)).toBe(true)
    expect(await store.since(0, 10)).toHaveLength(1)
  })

  it('numbers come back to the last bit', async () => {
    const store = await open()
    const numbers = [0.1 + 0.2, 1e-320, 1.7976931348623157e308, 2 ** 53, -123.456, 90.5]
    await store.append({
      entries: [eventEntry('e', 'W-1', 'x')],
      expects: [{ tag: 'W-1', seq: 0 }],
      cards: [card('W-1', { summary: numbers })],
    })
    expect((await store.card({ kind: 'wrench', tag: 'W-1' }))?.summary).toEqual(numbers)
  })
})
