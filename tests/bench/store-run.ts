// One store, filled and measured in a process of its own, so that its memory is its own too. Arguments: address, wrenches,
// checks. Prints one line of JSON.
import { readFileSync } from 'node:fs'
import { createShop } from '../../src/desk/shop.ts'
import { openStore } from '../../src/store/open.ts'
import { SEED, seeded } from '../support/random.ts'
import { checksOf, importOf, tagOf } from './store-rows.ts'

const [address = '', wrenches = '0', checks = '0'] = process.argv.slice(2)
const count = Number(wrenches)
const each = Math.round(Number(checks) / count)
const random = seeded(SEED)
const store = await openStore(address)
const peakMiB = (): number => Number(/VmHWM:\s+(\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))?.[1] ?? 0) / 1024

const start = performance.now()
const before = peakMiB()
const imported = await store.append(importOf(count, random))
if (imported.kind !== 'kept' || imported.seqs.length !== count) throw new Error('the import was not kept')
const importMs = performance.now() - start
const importMiB = peakMiB()

const last = Array.from({ length: count }, (_, n) => n + 1)
let kept = count
const AT_ONCE = 10
const fillStart = performance.now()
for (let n = 0; n < count; n += AT_ONCE) {
  const some = Array.from({ length: Math.min(AT_ONCE, count - n) }, (_, m) => n + m)
  const got = await store.append(checksOf(some, each, (one) => last[one] as number, random))
  if (got.kind !== 'kept') throw new Error('checks were not kept')
  for (const [m, one] of some.entries()) last[one] = kept + (m + 1) * each
  kept += some.length * each
}
const fillMs = performance.now() - fillStart

const any = (): number => Math.floor(random() * count)
const ROUNDS = 1000

const timed = async (name: string, expected: (got: unknown) => boolean, doing: () => Promise<unknown>) => {
  if (!expected(await doing())) throw new Error(`${name} does not give what it is measured for`)
  for (let n = 0; n < 100; n++) await doing()
  const times: number[] = []
  for (let n = 0; n < ROUNDS; n++) {
    const from = performance.now()
    await doing()
    times.push(performance.now() - from)
  }
  times.sort((a, b) => a - b)
  return { name, p50: times[ROUNDS / 2] as number, p99: times[Math.floor(ROUNDS * 0.99)] as number }
}

const page = (got: unknown): boolean => (got as { cards: unknown[] }).cards.length > 0
const rows = [
  await timed('board, 50 from anywhere', page, () =>
    store.cards({ order: 'place', limit: 50, after: `0rack ${String(any() % 150).padStart(12, '0')}` }),
  ),
  await timed('due by a day, first 50', page, () => store.cards({ order: 'due', limit: 50, dueBy: '2026-06-30' })),
  await timed(
    `a history of ${each + 1}`,
    (got) => (got as unknown[]).length === each + 1,
    () => store.history(tagOf(any())),
  ),
  await timed(
    'find by tag, 25',
    (got) => (got as unknown[]).length === 1,
    () => store.find(`w-${String(any()).padStart(5, '0')}`, { limit: 25, withRetired: true }),
  ),
  await timed(
    'find by name, 25',
    (got) => (got as unknown[]).length > 0,
    () => store.find(`wrench ${any() % 977}`, { limit: 25, withRetired: true }),
  ),
  await timed(
    'export, 500',
    (got) => (got as unknown[]).length === 500,
    () => store.since(Math.floor(random() * (kept - 500)), 500),
  ),
  await timed(
    'append a check',
    (got) => (got as { kind: string }).kind === 'kept',
    async () => {
      const n = any()
      const got = await store.append(checksOf([n], 1, (one) => last[one] as number, random))
      if (got.kind === 'kept') last[n] = got.seqs[0] as number
      return got
    },
  ),
]

// The same with what the pages make of it: entries folded, statuses of today told.
const shop = createShop({ store, now: () => new Date('2026-06-15T10:00:00Z'), id: () => `b${any()}`, timeZone: 'UTC' })
const listed = (got: unknown): boolean => (got as { rows: unknown[] }).rows.length > 0
const firstStart = performance.now()
const counts = await shop.lists.counts()
const fleetMs = performance.now() - firstStart
if (counts.due === 0 || counts.out === 0) throw new Error('the lists are empty')
rows.push(
  await timed('page of the board, folded, 60', listed, () =>
    shop.board(60, `0rack ${String(any() % 150).padStart(12, '0')}`),
  ),
  await timed(
    `a wrench's page, ${each + 1} entries folded`,
    (got) => got !== undefined,
    () => shop.wrench(tagOf(any())),
  ),
  await timed('due this month, folded, 60', listed, () => shop.lists.list('due', 60)),
  await timed('out of limit, folded, 60', listed, () => shop.lists.list('out', 60)),
  await timed('due this month after a check', listed, async () => {
    const n = any()
    const got = await store.append(checksOf([n], 1, (one) => last[one] as number, random))
    if (got.kind === 'kept') last[n] = got.seqs[0] as number
    return shop.lists.list('due', 60)
  }),
)
await store.close()
process.stdout.write(
  `${JSON.stringify({ importMs, importMiB, before, fillMs, peakMiB: peakMiB(), kept, fleetMs, rows })}\n`,
)
