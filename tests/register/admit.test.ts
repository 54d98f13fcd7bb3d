// What the record takes and what it refuses, with the reason; and who may write what.
import { describe, expect, it } from 'vitest'
import { admissionFaults, mayAdd, mayRecord } from '../../src/register/admit.ts'
import { type Draft, type Entry, kindNames, roles } from '../../src/register/records.ts'
import { isSameDraft } from '../../src/register/same-draft.ts'
import { bookOf, card, entry, event, gauge, lbft, m, pulled, tested, uses, withdrawal } from './shop.ts'

const today = '2026-06-01'
const point = [[60, [60]]] as const
const draftOf = ({ id: _id, at: _at, ...draft }: Entry): Draft => draft as Draft
const book = bookOf(
  card(),
  card('NEW'),
  gauge(),
  gauge('S-2'),
  gauge('T-1', { 'gauge-type': 'torque-tester' }),
  card('OLD'),
  event('retired', 'retired', '2026-02-01', { tag: 'OLD' }),
  pulled('c1', '2026-03-01', point),
  event('e1', 'dropped', '2026-03-01'),
  event('e1b', 'dropped', '2026-03-02', { supersedes: 'e1', why: 'the day was wrong' }),
)
const faultsOf = (one: Entry): Array<readonly [string, string]> =>
  admissionFaults(book, draftOf(one), today).map(({ tell, input }) => [tell, input])
const corrected = { supersedes: 'card-W-07', why: 'moved' }

describe('the record takes', () => {
  it.each<[string, Entry]>([
    ['a card', card('W-99')],
    ['a gauge', gauge('S-99')],
    ['a card in place of another, however its tag is typed', entry('x', 'wrench', { ...card('w-07').body }, corrected)],
    ['a check of today', tested('x', today, point)],
    ['a check with a tester', tested('x', today, point, { body: { gauge: 'T-1' } })],
    ['a certificate, whatever its gauge', tested('x', today, point, { body: { gauge: 'S-1', way: 'laboratory' } })],
    ['an event', event('x', 'wound-up', '2026-05-01', { body: { from: '2026-01-01', setting: lbft(100) } })],
    ['uses', uses('x', today, 12)],
    ['a correction of what stands', event('x', 'dropped', '2026-03-03', { supersedes: 'e1b', why: 'again' })],
    ['a withdrawal', withdrawal('x', 'e1b')],
    ['a withdrawal of a card without a history', withdrawal('x', 'card-NEW')],
    ['a withdrawal of a gauge that nothing was checked against', withdrawal('x', 'gauge-S-2')],
    [
      'a correction of a retired wrench',
      event('x', 'retired', '2026-02-02', { tag: 'OLD', supersedes: 'retired', why: 'day' }),
    ],
  ])('%s', (_name, one) => {
    expect(faultsOf(one)).toEqual([])
  })
})

describe('the record refuses', () => {
  it.each<[string, string, Entry]>([
    ['tag-taken', 'tag', card('w-07')],
    ['tag-taken', 'tag', gauge('s-1')],
    ['tag-taken', 'tag', card('Summary')],
    ['above-limit', 'mark', card('W-99', { mark: lbft(151) })],
    ['above-limit', 'lever', card('W-99', { lever: m(30, 'm') })],
    ['tag-fixed', 'tag', entry('x', 'wrench', { ...card('W-99').body }, corrected)],
    ['least-above-most', 'least', card('W-99', { least: lbft(150) })],
    ['class-not-of-type', 'iso-class', card('W-99', { 'iso-type': 'indicating', 'iso-class': 'G' })],
    ['above-limit', 'pivot', card('W-99', { pivot: { value: m(14, 'in'), found: 'told' } })],
    ['day-ahead', 'checked', gauge('S-99', { checked: '2026-06-02' })],
    ['no-such-wrench', 'wrench', tested('x', today, point, { tag: 'W-99' })],
    ['no-such-wrench', 'wrench', event('x', 'lost', today, { tag: 'W-99' })],
    ['no-such-wrench', 'wrench', uses('x', today, 1, 'check', 'W-99')],
    ['wrench-retired', 'wrench', tested('x', today, point, { tag: 'OLD' })],
    ['no-such-gauge', 'gauge', pulled('x', today, point, { body: { gauge: 'S-99' } })],
    ['gauge-not-of-way', 'gauge', tested('x', today, point, { body: { gauge: 'S-1' } })],
    ['gauge-not-of-way', 'gauge', pulled('x', today, point, { body: { gauge: 'T-1' } })],
    ['day-ahead', 'date', tested('x', '2026-06-02', point)],
    ['day-ahead', 'date', event('x', 'lost', '2026-06-02')],
    ['day-ahead', 'date', uses('x', '2026-06-02', 1)],
    ['event-one-day', 'from', event('x', 'dropped', today, { body: { from: '2026-01-01' } })],
    ['event-without-setting', 'setting', event('x', 'dropped', today, { body: { setting: lbft(50) } })],
    ['days-reversed', 'from', event('x', 'wound-up', '2026-01-01', { body: { from: '2026-02-01' } })],
    ['no-such-entry', 'supersedes', event('x', 'lost', today, { supersedes: 'nobody', why: 'x' })],
    ['superseded-already', 'supersedes', event('x', 'lost', today, { supersedes: 'e1', why: 'x' })],
    ['entry-of-other-kind', 'supersedes', event('x', 'lost', today, { supersedes: 'c1', why: 'x' })],
    ['card-in-use', 'supersedes', withdrawal('x', 'card-W-07')],
    ['card-in-use', 'supersedes', withdrawal('x', 'gauge-S-1')],
    [
      'weight-beats-pull',
      'points',
      pulled('x', today, [[60, [1]]], {
        body: {
          'own-weight': { lie: 'level', mass: m(2, 'kg'), 'balance-point': m(250, 'mm'), 'pull-direction': 'up' },
        },
      }),
    ],
  ])('%s of %s', (tell, input, one) => {
    expect(faultsOf(one)).toEqual([[tell, input]])
  })

  it('a correction without a reason', () => {
    const draft = { ...draftOf(event('x', 'lost', today, { supersedes: 'e1b', why: 'x' })), why: undefined }
    expect(admissionFaults(book, draft, today).map(({ tell }) => tell)).toEqual(['why-missing'])
  })

  it('all at once', () => {
    const one = pulled('x', '2026-07-01', point, {
      tag: 'W-99',
      body: { gauge: 'S-99' },
      supersedes: 'e1',
      why: 'x',
    })
    expect(faultsOf(one).map(([tell]) => tell)).toEqual([
      'superseded-already',
      'no-such-wrench',
      'no-such-gauge',
      'day-ahead',
    ])
  })
})

describe('who may write', () => {
  const as = (role: (typeof roles)[number], one: Entry): boolean =>
    mayRecord({ ...draftOf(one), by: { role, door: 'chat' } } as Draft)

  it.each(roles)('%s adds what its row says', (role) => {
    const samples = [
      card('W-99'),
      gauge('S-99'),
      tested('x', today, point),
      event('x', 'lost', today),
      uses('x', today, 1),
    ]
    for (const one of samples) expect(as(role, one), one.kind).toBe(mayAdd[role].includes(one.kind))
  })

  it('a mechanic corrects and withdraws nothing, a keeper does', () => {
    const fix = event('x', 'dropped', '2026-03-03', { supersedes: 'e1b', why: 'again' })
    expect([as('mechanic', fix), as('keeper', fix)]).toEqual([false, true])
    expect([as('mechanic', withdrawal('x', 'e1b')), as('keeper', withdrawal('x', 'e1b'))]).toEqual([false, true])
  })

  it('every kind can be written by a keeper', () => {
    expect([...mayAdd.keeper].sort()).toEqual([...kindNames].sort())
  })
})

describe('the same sent again', () => {
  const first = event('e9', 'dropped', '2026-03-01', { body: { note: 'off the bench' } })
  it('is the same whatever the order of its fields, its door or its sender', () => {
    const body = Object.fromEntries(Object.entries(first.body).reverse())
    const draft = { ...draftOf(first), body, by: { role: 'mechanic', door: 'http' } } as Draft
    expect(isSameDraft(first, draft)).toBe(true)
  })

  it.each<[string, Entry]>([
    ['another note', event('e9', 'dropped', '2026-03-01', { body: { note: 'off the lift' } })],
    ['no note', event('e9', 'dropped', '2026-03-01')],
    ['another kind', uses('e9', '2026-03-01', 1)],
    [
      'a correction',
      event('e9', 'dropped', '2026-03-01', { body: { note: 'off the bench' }, supersedes: 'e1', why: 'x' }),
    ],
  ])('%s is another entry', (_name, other) => {
    expect(isSameDraft(first, draftOf(other))).toBe(false)
  })
})
