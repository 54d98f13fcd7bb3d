// The rows that the store is measured with: the same in every run, as many bytes as a real shop's would have.
import type { Append, Card } from '../../src/store/store.ts'
import { checkEntry, wrenchEntry } from '../support/entries.ts'
import type { Random } from '../support/random.ts'

export const tagOf = (n: number): string => `W-${String(n).padStart(5, '0')}`
const racks = 200

const dayOf = (random: Random): string =>
  `2026-${String(1 + Math.floor(random() * 12)).padStart(2, '0')}-${String(1 + Math.floor(random() * 28)).padStart(2, '0')}`

/** A card as the shop folds it: what it holds are the entries that a status follows from. One in fifty is out of limit. */
export const cardOf = (n: number, random: Random): Card => {
  const name = `Click wrench ${n % 977}, half-inch drive`
  const place = `Rack ${Math.floor(random() * racks)}`
  const check = checkEntry(`l${n}`, tagOf(n), n % 50 === 0 ? 90 : 99 + Math.round(random() * 20) / 10)
  const date = dayOf(random).replace('2026', '2025')
  const checked = random() < 0.9
  return {
    kind: 'wrench',
    tag: tagOf(n),
    name,
    place,
    ...(checked && { due: dayOf(random) }),
    retired: random() < 0.02,
    summary: [
      wrenchEntry(`w${n}`, tagOf(n), { name, place }),
      ...(checked ? [{ ...check, body: { ...check.body, date } }] : []),
    ],
  }
}

/** All wrenches in one go, as a file that is read in. */
export const importOf = (wrenches: number, random: Random): Append => {
  const all = Array.from({ length: wrenches }, (_, n) => n)
  return {
    entries: all.map((n) => wrenchEntry(`w${n}`, tagOf(n), { key: `row-${n}`, place: `Rack ${n % racks}` })),
    expects: all.map((n) => ({ tag: tagOf(n), seq: 0 })),
    cards: all.map((n) => cardOf(n, random)),
  }
}

/** The next checks of some wrenches. */
export const checksOf = (
  wrenches: readonly number[],
  each: number,
  last: (n: number) => number,
  random: Random,
): Append => ({
  entries: wrenches.flatMap((n) =>
    Array.from({ length: each }, (_, m) =>
      checkEntry(`c${last(n)}-${n}-${m}`, tagOf(n), 99 + Math.round(random() * 20) / 10),
    ),
  ),
  expects: wrenches.map((n) => ({ tag: tagOf(n), seq: last(n) })),
  cards: wrenches.map((n) => cardOf(n, random)),
})
