// The status of a wrench: every reason by itself, which of two wins, and what a check settles.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addMonths } from '../../src/mechanics/check-due.ts'
import type { Entry } from '../../src/register/records.ts'
import { statusOf, type WrenchStatus } from '../../src/register/status.ts'
import { type ReasonCode, reasonCodes, reasonStatus, type Status, statuses } from '../../src/register/status-rules.ts'
import { SEED } from '../support/random.ts'
import { bookOf, card, event, folderOf, lbft, m, tested, uses, withdrawal } from './shop.ts'

const good = [[60, [60]]] as const
const bad = [[60, [50]]] as const
const passed = (id = 'c1', date = '2026-02-01', more: object = {}): Entry => tested(id, date, good, more)
const doubtful = (reading: number): Entry =>
  tested('c1', '2026-02-01', [[60, [reading]]], { body: { 'gauge-uncertainty': m(1, '%') } })

const stateOf = (entries: readonly Entry[], today = '2026-06-01', warnDays?: number): WrenchStatus => {
  const book = bookOf(card('W-07', cardMore), ...entries)
  return statusOf(book, folderOf(book), { today, ...(warnDays === undefined ? {} : { warnDays }) })
}
const cardMore = { interval: { months: 12, uses: 1000 } }
const codesOf = ({ reasons }: WrenchStatus): ReasonCode[] => reasons.map(({ code }) => code)

interface Row {
  readonly entries: readonly Entry[]
  readonly today?: string
  readonly date: string
  readonly entry: string
}

const rows: Readonly<Record<ReasonCode, Row>> = {
  retired: { entries: [passed(), event('e1', 'retired', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  lost: { entries: [passed(), event('e1', 'lost', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  lent: { entries: [passed(), event('e1', 'lent', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  failed: { entries: [tested('c1', '2026-02-01', bad)], date: '2026-02-01', entry: 'c1' },
  'failed-in-doubt': { entries: [doubtful(60 / 1.045)], date: '2026-02-01', entry: 'c1' },
  dropped: { entries: [passed(), event('e1', 'dropped', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  overloaded: { entries: [passed(), event('e1', 'overloaded', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  repaired: { entries: [passed(), event('e1', 'repaired', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  adjusted: { entries: [passed(), event('e1', 'adjusted', '2026-03-01')], date: '2026-03-01', entry: 'e1' },
  'wound-up': {
    entries: [passed(), event('e1', 'wound-up', '2026-05-01', { body: { from: '2026-03-01' } })],
    date: '2026-05-01',
    entry: 'e1',
  },
  returned: {
    entries: [passed(), event('e0', 'lent', '2026-03-01'), event('e1', 'returned', '2026-04-01')],
    date: '2026-04-01',
    entry: 'e1',
  },
  found: {
    entries: [passed(), event('e0', 'lost', '2026-03-01'), event('e1', 'found', '2026-04-01')],
    date: '2026-04-01',
    entry: 'e1',
  },
  'never-checked': { entries: [], date: '2026-01-02', entry: 'card-W-07' },
  months: { entries: [passed()], today: '2027-02-01', date: '2027-02-01', entry: 'c1' },
  uses: { entries: [passed(), uses('u1', '2026-05-20', 1000)], date: '2026-05-20', entry: 'c1' },
  'uses-foreseen': {
    entries: [passed(), uses('u1', '2026-05-02', 900)],
    today: '2026-05-12',
    date: '2026-05-12',
    entry: 'c1',
  },
  'due-soon': { entries: [passed()], today: '2027-01-02', date: '2027-02-01', entry: 'c1' },
  'passed-in-doubt': { entries: [doubtful(60 / 1.035)], date: '2026-02-01', entry: 'c1' },
  passed: { entries: [passed()], date: '2026-02-01', entry: 'c1' },
}

describe('every reason by itself', () => {
  it.each(reasonCodes)('%s', (code) => {
    const { entries, today, date, entry } = rows[code]
    const found = stateOf(entries, today)
    expect(found.reasons[0]).toEqual({ code, date, entry })
    expect(found.status).toBe(reasonStatus[code])
  })

  it('every status has a reason that leads to it', () => {
    expect([...new Set(Object.values(reasonStatus))].sort()).toEqual([...statuses].sort())
  })
})

describe('precedence', () => {
  it('is stated once, from what keeps a wrench from use the longest to what does not', () => {
    expect(statuses).toEqual(['retired', 'set-aside', 'out-of-limit', 'check-before-use', 'check-due', 'in-service'])
  })
})

describe('of two reasons the one that keeps the wrench from use longer leads', () => {
  const later = '2027-06-01'
  const made: Readonly<Record<Status, readonly Entry[]>> = {
    retired: [event('r', 'retired', '2026-05-01')],
    'set-aside': [event('l', 'lost', '2026-05-01')],
    'out-of-limit': [tested('f', '2026-04-01', bad)],
    'check-before-use': [event('d', 'dropped', '2026-05-02')],
    'check-due': [],
    'in-service': [],
  }
  const pairs = statuses.flatMap((one, place) => statuses.slice(place + 1).map((other) => [one, other] as const))
  it.each(pairs)('%s before %s', (one, other) => {
    const today = [one, other].includes('check-due') ? later : '2026-05-10'
    const found = stateOf([passed(), ...made[one], ...made[other]], today)
    expect(found.status).toBe(one)
    const ranks = codesOf(found).map((code) => statuses.indexOf(reasonStatus[code]))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    if (other !== 'in-service') expect(codesOf(found).map((code) => reasonStatus[code])).toContain(other)
  })
})

describe('a check settles what came before it', () => {
  it.each<[string, readonly Entry[], Status]>([
    ['a drop before the day', [event('e', 'dropped', '2026-01-31'), passed()], 'in-service'],
    ['a drop on the day, noted before the check', [event('e', 'dropped', '2026-02-01'), passed()], 'in-service'],
    ['a drop on the day, noted after it', [passed(), event('e', 'dropped', '2026-02-01')], 'check-before-use'],
    [
      'adjusted on the day: an as-left check is after it, however noted',
      [
        tested('c0', '2026-02-01', bad),
        passed('c1', '2026-02-01', { state: 'as-left' }),
        event('e', 'adjusted', '2026-02-01'),
      ],
      'in-service',
    ],
    [
      'adjusted on the day, and only found before',
      [passed('c1', '2026-02-01'), event('e', 'adjusted', '2026-02-01')],
      'check-before-use',
    ],
    [
      'dropped on the day after an as-left check',
      [passed('c1', '2026-02-01', { state: 'as-left' }), event('e', 'dropped', '2026-02-01')],
      'check-before-use',
    ],
    ['a failed check by a later one', [tested('c0', '2026-01-01', bad), passed()], 'in-service'],
    [
      'a failed check not by an adjustment',
      [tested('c0', '2026-02-01', bad), event('e', 'adjusted', '2026-02-02')],
      'out-of-limit',
    ],
    ['not a loss: who has it?', [event('e', 'lost', '2026-01-15'), passed()], 'set-aside'],
    [
      'a find, once checked',
      [event('e', 'lost', '2026-01-01'), event('f', 'found', '2026-01-15'), passed()],
      'in-service',
    ],
    [
      'lost, then found, then lost',
      [passed(), event('a', 'lost', '2026-03-01'), event('b', 'found', '2026-03-02'), event('c', 'lost', '2026-03-03')],
      'set-aside',
    ],
    [
      'lent and lost there, then returned',
      [
        passed(),
        event('a', 'lent', '2026-03-01'),
        event('b', 'lost', '2026-03-02'),
        event('c', 'returned', '2026-03-03'),
      ],
      'check-before-use',
    ],
    ['a drop that was withdrawn', [passed(), event('e', 'dropped', '2026-03-01'), withdrawal('x', 'e')], 'in-service'],
    [
      'a retirement that was withdrawn',
      [passed(), event('e', 'retired', '2026-03-01'), withdrawal('x', 'e')],
      'in-service',
    ],
    [
      'a correction keeps its place: the drop stays before the check',
      [
        event('e', 'dropped', '2026-02-01'),
        passed(),
        event('e2', 'dropped', '2026-02-01', { supersedes: 'e', why: 'a note' }),
      ],
      'in-service',
    ],
    [
      'a check of after today does not count',
      [passed(), event('e', 'dropped', '2026-03-01'), passed('c2', '2026-06-02')],
      'check-before-use',
    ],
    ['a drop of after today does not count', [passed(), event('e', 'dropped', '2026-06-02')], 'in-service'],
  ])('%s', (_name, entries, status) => {
    expect(stateOf(entries).status).toBe(status)
  })
})

describe('left wound up', () => {
  const left = (from: string | undefined, date: string, more: object = {}) =>
    event('e', 'wound-up', date, { body: { ...(from === undefined ? {} : { from }), ...more } })
  it.each<[string, Entry, Status]>([
    ['a day short of a month', left('2026-03-01', '2026-03-31'), 'in-service'],
    ['a month', left('2026-03-01', '2026-04-01'), 'check-before-use'],
    ['nobody knows how long', left(undefined, '2026-03-01'), 'check-before-use'],
    ['mostly before the check: less than a month since', left('2025-06-01', '2026-02-20'), 'in-service'],
    ['at its lowest mark', left('2026-03-01', '2026-05-01', { setting: lbft(30) }), 'in-service'],
    ['wound right down', left('2026-03-01', '2026-05-01', { setting: lbft(0) }), 'in-service'],
    ['at half its scale', left('2026-03-01', '2026-05-01', { setting: lbft(75) }), 'check-before-use'],
  ])('%s', (_name, entry, status) => {
    expect(stateOf([passed(), entry]).status).toBe(status)
  })
})

describe('due', () => {
  it('by months, warned so many days ahead, due on the day itself', () => {
    const on = (today: string, warn?: number) => codesOf(stateOf([passed()], today, warn))[0]
    expect(on('2027-01-01')).toBe('passed')
    expect(on('2027-01-02')).toBe('due-soon')
    expect(on('2027-01-31')).toBe('due-soon')
    expect(on('2027-02-01')).toBe('months')
    expect(on('2027-01-25', 7)).toBe('due-soon')
    expect(on('2027-01-24', 7)).toBe('passed')
    expect(on('2027-01-31', 0)).toBe('passed')
    const found = stateOf([passed()], '2027-01-22')
    expect([found.due?.on, found.daysLeft]).toEqual(['2027-02-01', 10])
  })

  it('counts uses since the check: a count since the check starts anew, one since the count adds', () => {
    const counted = (...more: readonly Entry[]) => codesOf(stateOf([passed(), ...more], '2026-06-01', 0))[0]
    expect(counted(uses('a', '2026-01-20', 5000))).toBe('passed')
    expect(counted(uses('a', '2026-03-01', 40), uses('b', '2026-05-30', 130))).toBe('passed')
    expect(counted(uses('a', '2026-03-01', 600), uses('b', '2026-06-01', 400, 'count'))).toBe('uses')
    expect(counted(uses('a', '2026-03-01', 60), uses('b', '2026-06-01', 90, 'count'))).toBe('passed')
  })

  it('goes by the card’s own interval, and by the standard’s where it has none', () => {
    const due = (interval: object | undefined) => {
      const book = bookOf(card('W-07', { interval }), passed())
      return statusOf(book, folderOf(book), { today: '2026-06-01' }).due?.on
    }
    expect(due({ months: 6 })).toBe('2026-08-01')
    expect(due(undefined)).toBe('2027-02-01')
  })
})

describe('whatever happened', () => {
  const day = fc
    .integer({ min: 0, max: 500 })
    .map((days) => new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10))
  const kind = fc.constantFrom(
    'dropped',
    'overloaded',
    'repaired',
    'adjusted',
    'wound-up',
    'lent',
    'returned',
    'lost',
    'found',
    'good',
    'bad',
  )
  const history = fc.array(fc.tuple(kind, day), { maxLength: 12 })
  const entriesOf = (all: ReadonlyArray<readonly [string, string]>): Entry[] =>
    all.map(([what, date], place) =>
      what === 'good' || what === 'bad'
        ? tested(`i${place}`, date, what === 'good' ? good : bad)
        : event(`i${place}`, what, date),
    )
  const rank = ({ status }: WrenchStatus): number => statuses.indexOf(status)

  it('a mishap never makes a status better', () => {
    fc.assert(
      fc.property(history, day, fc.constantFrom('dropped', 'overloaded', 'retired', 'lost'), (all, date, mishap) => {
        const entries = entriesOf(all)
        const today = '2027-06-01'
        const before = stateOf(entries, today)
        const after = stateOf([...entries, event('m', mishap, date)], today)
        // Losing it does end a find; nothing else gets better.
        expect(rank(after)).toBeLessThanOrEqual(rank(before))
      }),
      { seed: SEED, numRuns: 300 },
    )
  })

  it('a check that passes today puts every wrench that is here in service', () => {
    fc.assert(
      fc.property(history, (all) => {
        const today = '2027-06-01'
        const entries = entriesOf(all)
        const before = stateOf(entries, today)
        const after = stateOf([...entries, passed('now', today)], today)
        expect(after.status).toBe(before.status === 'set-aside' ? 'set-aside' : 'in-service')
        expect(after.due?.on).toBe(addMonths(today, 12))
      }),
      { seed: SEED, numRuns: 300 },
    )
  })
})
