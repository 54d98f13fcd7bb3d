// The book: what stands, what was replaced and why, and that nothing of the record is lost or told twice.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foldBook, gaugeOf, wrenchOf } from '../../src/register/book.ts'
import type { Entry } from '../../src/register/records.ts'
import { SEED } from '../support/random.ts'
import { bookOf, card, entry, event, folderOf, gauge, tested, uses, withdrawal } from './shop.ts'

const point = [[60, [60]]] as const
const ids = (list: ReadonlyArray<{ readonly entry: Entry }>): string[] => list.map(({ entry: { id } }) => id)

describe('the book', () => {
  it('is empty of an empty record', () => {
    const book = bookOf()
    expect([book.wrenches.size, book.gauges.size, book.strays, book.standing.size]).toEqual([0, 0, [], 0])
  })

  it('puts cards, checks, events and uses into the wrench’s folder, newest first', () => {
    const book = bookOf(
      card(),
      gauge(),
      tested('c1', '2026-03-01', point),
      tested('c2', '2026-05-01', point),
      tested('c3', '2026-05-01', point),
      tested('c0', '2025-03-01', point),
      event('e1', 'dropped', '2026-04-01'),
      event('e2', 'lent', '2026-06-01'),
      uses('u1', '2026-06-01', 120),
    )
    const folder = folderOf(book)
    expect(ids(folder.checks)).toEqual(['c3', 'c2', 'c1', 'c0'])
    expect(ids(folder.events)).toEqual(['e2', 'e1'])
    expect(ids(folder.uses)).toEqual(['u1'])
    expect(gaugeOf(book, 's-1')?.entry.id).toBe('gauge-S-1')
    expect(book.strays).toEqual([])
    expect(book.standing.size).toBe(9)
  })

  it('finds a wrench however its tag is typed, and not what is not there', () => {
    const book = bookOf(card())
    expect(wrenchOf(book, 'w-07')?.tag).toBe('W-07')
    expect(wrenchOf(book, 'W-08')).toBeUndefined()
    expect(gaugeOf(book, undefined)).toBeUndefined()
  })

  it('takes a correction in the place of what it corrects, and keeps that with the reason', () => {
    const book = bookOf(
      card(),
      tested('c1', '2026-03-01', point),
      event('e1', 'dropped', '2026-03-01'),
      tested('c1b', '2026-03-01', [[60, [61]]], { supersedes: 'c1', why: 'misread by one' }),
      tested('c1c', '2026-03-01', [[60, [62]]], { supersedes: 'c1b', why: 'misread again' }),
    )
    const [check] = folderOf(book).checks
    expect(check?.entry.id).toBe('c1c')
    expect(check?.order).toBe(1)
    expect(check?.earlier.map(({ id, why }) => [id, why])).toEqual([
      ['c1', undefined],
      ['c1b', 'misread by one'],
    ])
    expect([...book.past]).toEqual(['c1', 'c1b'])
  })

  it('takes a new card for the old one, and checks of before stay', () => {
    const moved = entry(
      'card-2',
      'wrench',
      { ...card().body, place: 'Bay 2' },
      { supersedes: 'card-W-07', why: 'moved' },
    )
    const folder = folderOf(bookOf(card(), tested('c1', '2026-03-01', point), moved))
    expect(folder.card.entry.body.place).toBe('Bay 2')
    expect(folder.card.earlier).toHaveLength(1)
    expect(ids(folder.checks)).toEqual(['c1'])
  })

  it('a correction may move a check to the wrench that it was of', () => {
    const book = bookOf(
      card('W-07'),
      card('W-08'),
      tested('c1', '2026-03-01', point),
      tested('c1b', '2026-03-01', point, { tag: 'W-08', supersedes: 'c1', why: 'the other wrench' }),
    )
    expect(folderOf(book, 'W-07').checks).toEqual([])
    expect(ids(folderOf(book, 'W-08').checks)).toEqual(['c1b'])
  })

  it('lists what was withdrawn, with the reason, and counts it no more', () => {
    const folder = folderOf(bookOf(card(), event('e1', 'dropped', '2026-03-01'), withdrawal('x1', 'e1')))
    expect(folder.events).toEqual([])
    expect(folder.withdrawn.map(({ by, earlier }) => [by.why, earlier.map(({ id }) => id)])).toEqual([
      ['noted twice', ['e1']],
    ])
  })
})

describe('entries that stand nowhere are listed with the reason', () => {
  const base = [card(), gauge(), event('e1', 'dropped', '2026-03-01')]
  const again = event('e2', 'dropped', '2026-03-02', { supersedes: 'e1', why: 'the day was wrong' })
  it.each<[string, string, readonly Entry[]]>([
    ['same-id', 'e1', [event('e1', 'lost', '2026-03-01')]],
    ['supersedes-unknown', 'e9', [event('e9', 'lost', '2026-03-01', { supersedes: 'nobody', why: 'x' })]],
    ['supersedes-unknown', 'x9', [withdrawal('x9', 'nobody')]],
    ['superseded-already', 'e3', [again, event('e3', 'lost', '2026-03-01', { supersedes: 'e1', why: 'x' })]],
    [
      'superseded-already',
      'e3',
      [withdrawal('x1', 'e1'), event('e3', 'lost', '2026-03-01', { supersedes: 'x1', why: 'x' })],
    ],
    ['superseded-already', 'x2', [withdrawal('x1', 'e1'), withdrawal('x2', 'e1')]],
    ['supersedes-other-kind', 'c9', [tested('c9', '2026-03-01', point, { supersedes: 'e1', why: 'x' })]],
    [
      'tag-changed',
      'card-2',
      [entry('card-2', 'wrench', { ...card().body, tag: 'W-99' }, { supersedes: 'card-W-07', why: 'x' })],
    ],
    ['tag-taken', 'card-w-07', [card('w-07')]],
    ['no-such-wrench', 'c9', [tested('c9', '2026-03-01', point, { tag: 'W-99' })]],
  ])('%s: %s', (reason, id, more) => {
    const { strays, standing } = foldBook([...base, ...more])
    expect(strays.map((stray) => [stray.reason, stray.entry.id])).toEqual([[reason, id]])
    // What stood before still stands, or what rightly replaced it.
    expect(standing.has('card-W-07')).toBe(true)
    expect(standing.has('gauge-S-1')).toBe(true)
  })
})

describe('whatever is recorded', () => {
  const tags = ['W-1', 'W-2', 'w-1'] as const
  const anything = fc.array(
    fc.record({
      what: fc.constantFrom('card', 'check', 'event', 'uses', 'withdrawal'),
      tag: fc.constantFrom(...tags),
      supersedes: fc.option(fc.nat(25)),
    }),
    { maxLength: 25 },
  )
  const entriesOf = (made: ReadonlyArray<{ what: string; tag: string; supersedes: number | null }>): Entry[] =>
    made.map(({ what, tag, supersedes }, place) => {
      const more = supersedes === null ? {} : { supersedes: `i${supersedes}`, why: 'because' }
      const id = `i${place}`
      if (what === 'card') return entry(id, 'wrench', { ...card(tag).body }, more)
      if (what === 'check') return tested(id, '2026-03-01', point, { tag, ...more })
      if (what === 'event') return event(id, 'dropped', '2026-03-01', { tag, ...more })
      if (what === 'uses') return entry(id, 'uses', { wrench: tag, date: '2026-03-01', count: 1, since: 'check' }, more)
      return withdrawal(id, `i${supersedes ?? 0}`)
    })

  it('every entry is told exactly once: standing, replaced, withdrawn or stray', () => {
    fc.assert(
      fc.property(anything, (made) => {
        const entries = entriesOf(made)
        const book = foldBook(entries)
        const folders = [...book.wrenches.values()]
        const kept = folders.flatMap(({ card: held, checks, events, uses: counts }) => [
          held,
          ...checks,
          ...events,
          ...counts,
        ])
        const told = [
          ...kept.flatMap(({ entry: one, earlier }) => [one, ...earlier]),
          ...folders.flatMap(({ withdrawn }) => withdrawn.flatMap(({ by, earlier }) => [by, ...earlier])),
          ...book.strays.map(({ entry: one }) => one),
        ].map(({ id }) => id)
        expect(new Set(told).size).toBe(told.length)
        // What was replaced by a stray, or withdrawn of a wrench that is no more, is past but in no folder.
        for (const { id } of entries) expect(told.includes(id) || book.past.has(id), id).toBe(true)
        expect(book.standing.size).toBe(kept.length)
        expect(book.standing.size + book.past.size).toBe(entries.length)
      }),
      { seed: SEED, numRuns: 300 },
    )
  })

  it('a later entry never changes what an earlier one said', () => {
    fc.assert(
      fc.property(anything, (made) => {
        const entries = entriesOf(made)
        const before = JSON.stringify(entries)
        foldBook(entries)
        expect(JSON.stringify(entries)).toBe(before)
      }),
      { seed: SEED, numRuns: 50 },
    )
  })
})
