// Entries and cards for tests of the store: small, of every kind, and such as the record takes.
import { foldTag } from '../../src/register/parts.ts'
import { type Entry, entrySchema } from '../../src/register/records.ts'
import type { Append, Card, Filed, Store } from '../../src/store/store.ts'

const by = { role: 'keeper', door: 'http' } as const
const at = '2026-03-01T08:00:00.000Z'

type Told = Partial<Pick<Entry, 'key' | 'supersedes' | 'why'>>
const torque = (value: number) => ({ value, text: `${value} N·m`, unit: 'N·m' as const })

export const wrenchEntry = (id: string, tag: string, told: Told & { name?: string; place?: string } = {}): Entry => {
  const { name = `Wrench ${tag}`, place, ...head } = told
  const body = { tag, name, 'wrench-type': 'click', most: torque(200), unit: 'N·m', ...(place && { place }) } as const
  return { id, at, by, kind: 'wrench', body, ...head }
}

export const checkEntry = (id: string, wrench: string, reading: number, told: Told = {}): Entry => ({
  id,
  at,
  by,
  kind: 'check',
  body: {
    wrench,
    date: '2026-03-01',
    way: 'tester',
    state: 'as-found',
    points: [{ setting: torque(100), readings: [torque(reading)] }],
  },
  ...told,
})

export const eventEntry = (id: string, wrench: string, note: string, told: Told = {}): Entry => ({
  id,
  at,
  by,
  kind: 'event',
  body: { wrench, what: 'dropped', date: '2026-03-02', note },
  ...told,
})

export const withdrawalEntry = (id: string, supersedes: string): Entry => ({
  id,
  at,
  by,
  kind: 'withdrawal',
  supersedes,
  why: 'never was',
  body: {},
})

/** Entries of tests are entries as the record has them. */
export const assertTaken = (entries: readonly Entry[]): void => {
  for (const entry of entries) entrySchema.parse(entry)
}

export const card = (tag: string, rest: Partial<Card> = {}): Card => ({
  kind: 'wrench',
  tag,
  name: `Wrench ${tag}`,
  retired: false,
  summary: { checks: 0 },
  ...rest,
})

/** A fold as a register might do it: the last card, and how many checks there are. */
export const foldCards = (_tag: string, history: readonly Filed[]): readonly Card[] => {
  const last = history.map(({ entry }) => entry).findLast((entry) => entry.kind === 'wrench')
  if (last?.kind !== 'wrench') return []
  const { tag, name, place } = last.body
  const checks = history.filter(({ entry }) => entry.kind === 'check').length
  return [card(tag, { name, ...(place && { place }), summary: { checks } })]
}

/** What a caller does: reads, folds, appends, and does it again where somebody was quicker. Gives how often it had to. */
export const appendTo = async (store: Store, tag: string, entries: readonly Entry[]): Promise<number> => {
  for (let tries = 1; ; tries++) {
    const history = await store.history(tag)
    const last = history.at(-1)?.seq ?? 0
    const whole = [...history, ...entries.map((entry, n) => ({ seq: last + n + 1, entry }))]
    const wanted: Append = { entries, expects: [{ tag, seq: last }], cards: foldCards(foldTag(tag), whole) }
    const { kind } = await store.append(wanted)
    if (kind === 'kept' || kind === 'known') return tries
    if (kind === 'clash') throw new Error('a key was used before')
  }
}
