// Random appends, corrections, repeats and late ones: every store does as a model of a few lines does.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Entry } from '../../src/register/records.ts'
import type { Store } from '../../src/store/store.ts'
import { card, checkEntry, eventEntry } from '../support/entries.ts'
import { SEED } from '../support/random.ts'
import { onEveryStore } from '../support/stores.ts'

const tags = ['W-1', 'W-2', 'ß-3', 'Ä.4'] as const

interface Step {
  readonly tag: number
  readonly size: number
  /** Which earlier entry of the tag it corrects, if any. */
  readonly corrects: number | undefined
  readonly keyed: boolean
  /** Behind by so many places. */
  readonly late: number
  readonly again: boolean
  readonly note: string
}

const step: fc.Arbitrary<Step> = fc.record({
  tag: fc.nat(tags.length - 1),
  size: fc.integer({ min: 1, max: 4 }),
  corrects: fc.option(fc.nat(20), { nil: undefined }),
  keyed: fc.boolean(),
  late: fc.constantFrom(0, 0, 0, 1),
  again: fc.boolean(),
  note: fc.string({ unit: 'binary', minLength: 1, maxLength: 20 }),
})

const play = async (store: Store, steps: readonly Step[]): Promise<void> => {
  const model: Array<{ tag: string; entry: Entry }> = []
  const ofTag = (tag: string) => model.flatMap((one, n) => (one.tag === tag ? [{ seq: n + 1, entry: one.entry }] : []))
  for (const [n, { tag: which, size, corrects, keyed, late, again, note }] of steps.entries()) {
    const tag = tags[which] as string
    const there = ofTag(tag)
    const last = there.at(-1)?.seq ?? 0
    const corrected = corrects === undefined ? undefined : there[corrects % Math.max(there.length, 1)]
    const told = { ...(keyed && { key: `k${n}` }), ...(corrected && { supersedes: corrected.entry.id, why: note }) }
    const entries = Array.from({ length: size }, (_, m) =>
      m % 2 ? checkEntry(`${n}-${m}`, tag, m + 1, told) : eventEntry(`${n}-${m}`, tag, note, told),
    )
    const wanted = { entries, expects: [{ tag, seq: last - late }], cards: [card(tag, { summary: n })] }
    const got = await store.append(wanted)
    if (late) {
      expect(got).toEqual({ kind: 'moved', tag, seq: last })
      continue
    }
    model.push(...entries.map((entry) => ({ tag, entry })))
    const filed = ofTag(tag).slice(-size)
    expect(got).toEqual({ kind: 'kept', seqs: filed.map(({ seq }) => seq) })
    if (again) expect(await store.append(wanted)).toEqual({ kind: 'known', filed })
    expect(await store.card({ kind: 'wrench', tag })).toMatchObject({ summary: n, seq: filed.at(-1)?.seq })
  }
  for (const tag of tags) {
    expect(await store.history(tag)).toEqual(ofTag(tag))
    expect(await store.history(tag, 'check')).toEqual(ofTag(tag).filter(({ entry }) => entry.kind === 'check'))
  }
  expect(await store.since(0, 1000)).toEqual(model.map(({ entry }, n) => ({ seq: n + 1, entry })))
}

onEveryStore('whatever is appended', (open) => {
  it('is there as a model has it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 25 }), async (steps) => play(await open(), steps)),
      { numRuns: 25, seed: SEED },
    )
  }, 120_000)
})
