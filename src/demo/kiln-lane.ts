// A shop of our own invention, for looking around: Kiln Lane Garage, its wrenches and gauges, and months of checks as they might
// have been. Made from a seed, so that it is the same every time; its days end today, which is handed in. No person is in it.
import { benchRuns } from './bench-runs.ts'
import { createChance, type DemoEntry, monthsBefore, round } from './made.ts'
import { type DemoWrench, gauges, wrenches } from './tools.ts'

const SCATTER = 0.35 // %, of one pull to the next on a sound wrench

const checkOf = (one: DemoWrench, date: string, deviation: number, state: string, chance: () => number): DemoEntry => ({
  kind: 'check',
  raw: {
    wrench: one.card['tag'] ?? '',
    date,
    way: 'tester',
    gauge: 'T-1',
    state,
    points: one.settings
      .map((setting) => {
        // Deviation is indicated less reference, of the reference: a wrench that reads high delivers low.
        const readings = Array.from({ length: 5 }, () => round(setting / (1 + (deviation + SCATTER * chance()) / 100)))
        return `${round(setting)} ${one.unit}: ${readings.join('; ')} ${one.unit}`
      })
      .join(' | '),
  },
})

/** Everything of the shop in the order in which it happened. */
export const kilnLane = (today: string): readonly DemoEntry[] => {
  const chance = createChance(20_260)
  const ago = (months: number): string => monthsBefore(today, months)
  const checks = wrenches.flatMap((one) =>
    one.checked.map((months) => {
      const years = ((one.checked[0] ?? months) - months) / 12
      return { months, entry: checkOf(one, ago(months), one.start + years * one.perYear, 'as-found', chance) }
    }),
  )
  const event = (wrenchTag: string, what: string, months: number, more: Readonly<Record<string, string>> = {}) => ({
    months,
    entry: { kind: 'event' as const, raw: { wrench: wrenchTag, what, date: ago(months), ...more } },
  })
  const w04 = wrenches[3] as DemoWrench
  const happened = [
    // Found out, put right, checked again the same day.
    event('W-04', 'adjusted', 2, { note: 'screw turned in, one turn' }),
    { months: 2, entry: checkOf(w04, ago(2), 0.3, 'as-left', chance) },
    event('W-02', 'dropped', 0.4, { note: 'off the bench, on its head' }),
    event('W-06', 'lent', 0.7, { note: 'to the evening course' }),
    event('W-09', 'wound-up', 3, { from: ago(8), setting: '650 N·m', note: 'found in its case' }),
    event('W-12', 'retired', 27, { note: 'worn, not worth mending' }),
    {
      months: 0.2,
      entry: { kind: 'uses' as const, raw: { wrench: 'W-03', date: ago(0.2), count: '1850', since: 'check' } },
    },
  ]
  const timed = [...checks, ...happened, ...benchRuns(ago)].sort((one, other) => other.months - one.months)
  return [
    ...gauges.map((raw): DemoEntry => ({ kind: 'gauge', raw: { ...raw, checked: ago(7) } })),
    ...wrenches.map(({ card }): DemoEntry => ({ kind: 'wrench', raw: card })),
    ...timed.map(({ entry }) => entry),
  ]
}
