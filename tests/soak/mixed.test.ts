// A busy shop over HTTP and in chat while the program is killed and people hang up: what was acknowledged is there once, nothing fails while it
// stands, memory is flat. MIXED_SECONDS says how long (10 at a desk and in CI, 1800 by `npm run test:soak:mixed`); MIXED_SEED
// repeats what is asked and when; the seed is printed.
import { beforeAll, describe, expect, it } from 'vitest'
import { quantile } from '../bench/wire.ts'
import { reads } from './mixed-asks.ts'
import { CHAT_A_SECOND, type MixedReport, READS_A_SECOND, runMixed, WRITES_A_SECOND } from './mixed-run.ts'

const seconds = Number(process.env.MIXED_SECONDS ?? '10')
const seed = Number(process.env.MIXED_SEED ?? Date.now() % 2 ** 31)
const kinds = [...reads, 'write', 'chat'] as const

let report: MixedReport
beforeAll(
  async () => {
    process.stdout.write(`mixed soak seed ${seed}, ${seconds} s\n`)
    report = await runMixed(seconds, seed)
  },
  seconds * 1000 + 120_000,
)

const timesOf = (kind: (typeof kinds)[number]): readonly number[] => report.times[kind] ?? []

/** What is still held once garbage was collected. */
const floorOf = (rows: MixedReport['heap'], from: number, to: number): number =>
  Math.min(...rows.filter(([at]) => at >= seconds * from && at < seconds * to).map(([, mib]) => mib))

describe('the mixed soak', () => {
  it('asked and wrote at its rate, of every kind, while it was killed and hung up on', () => {
    for (const kind of kinds) {
      const times = timesOf(kind)
      process.stdout.write(
        `mixed soak: ${kind}, ${times.length} times, p50 ${quantile(times, 0.5).toFixed(1)} ms, p99 ${quantile(times, 0.99).toFixed(1)} ms\n`,
      )
      expect(times.length, kind).toBeGreaterThan(0)
    }
    const asked = reads.reduce((sum, kind) => sum + timesOf(kind).length, 0)
    // Some were on their way when it was killed.
    expect(asked).toBeGreaterThan(READS_A_SECOND * seconds * 0.6)
    expect(report.writes.length).toBeGreaterThan(WRITES_A_SECOND * seconds * 0.9)
    expect(timesOf('chat').length).toBeGreaterThan(CHAT_A_SECOND * seconds * 0.5)
    expect(report.deeds['killed']).toBeGreaterThan(1)
    expect(report.deeds['a write is hung up on']).toBeGreaterThan(0)
    expect((report.deeds['slow clients'] ?? 0) + (report.deeds['hung up on'] ?? 0)).toBeGreaterThan(0)
  })

  it('nothing failed while the program stood', () => {
    expect(report.wrong).toEqual([])
  })

  it('every write that was acknowledged is there once, and none is there twice', () => {
    const places = new Map<string, string[]>()
    for (const { id, note } of report.kept) places.set(note, [...(places.get(note) ?? []), id])
    for (const { note, ids, key, isTold } of report.writes) {
      const kept = places.get(note) ?? []
      expect(kept.length, key).toBeLessThanOrEqual(1)
      // However often it was acknowledged, it is the same entry.
      for (const id of ids) expect(kept, key).toEqual([id])
      if (isTold) expect(kept, key).toHaveLength(1)
    }
    expect(report.kept.length).toBeLessThanOrEqual(report.writes.length)
    expect(report.writes.filter(({ ids }) => ids.length > 1).length).toBeGreaterThan(0)
    const acknowledged = report.writes.filter(({ ids, isTold }) => isTold || ids.length > 0).length
    expect(report.writes.filter(({ isTold }) => isTold).length).toBeGreaterThan(0)
    expect(acknowledged).toBeGreaterThan(report.writes.length * 0.85)
    process.stdout.write(
      `mixed soak: ${acknowledged} writes acknowledged, ${report.kept.length} kept, ${JSON.stringify(report.deeds)}\n`,
    )
  })

  it('memory is flat', () => {
    const { rss, heap } = report
    const [middle, last] = [floorOf(heap, 1 / 3, 2 / 3), floorOf(heap, 2 / 3, 1)]
    const most = Math.max(...rss.map(([, mib]) => mib))
    const [before, after] = [floorOf(rss, 1 / 3, 2 / 3), floorOf(rss, 2 / 3, 1)]
    const resident = `${before.toFixed(0)} then ${after.toFixed(0)}`
    process.stdout.write(
      `mixed soak: heap ${middle.toFixed(0)} then ${last.toFixed(0)} MiB, resident ${resident}, at most ${most.toFixed(0)} MiB\n`,
    )
    // What is held for some time fills up first.
    if (seconds >= 120) {
      expect(last - middle).toBeLessThan(30)
      expect(after - before).toBeLessThan(40)
    }
    // What the unit of the service allows.
    expect(most).toBeLessThan(512)
  })

  it('nothing was unhandled, and the program ended with grace', () => {
    expect(report.logs).not.toMatch(/unhandled|uncaught|closing after a bug|"level":[56]0/i)
    expect(report.exit).toBe(0)
  })
})
