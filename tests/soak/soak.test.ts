// Whatever Discord does, every interaction is answered once or declined for a reason that is told, and memory stays flat.
// SOAK_SECONDS says how long (10 at a desk, 60 in CI, 600 by `npm run test:soak`); SOAK_SEED repeats a run; the seed is printed.
import { beforeAll, describe, expect, it } from 'vitest'
import { chatEvents } from '../../src/counters.ts'
import { fates } from './fates.ts'
import { runSoak, type Sent, type SoakReport } from './run.ts'

const seconds = Number(process.env.SOAK_SECONDS ?? '10')
const seed = Number(process.env.SOAK_SEED ?? Date.now() % 2 ** 31)
/** Nothing else runs on the machine: then next to nothing may be late. */
const isAlone = process.env.SOAK_ALONE === '1'
/** 50 000 in ten minutes. */
const A_SECOND = 50_000 / 600

let report: SoakReport
beforeAll(
  async () => {
    process.stdout.write(`soak seed ${seed}, ${seconds} s\n`)
    report = await runSoak(seconds, A_SECOND, seed)
  },
  seconds * 1000 + 120_000,
)

/** Nothing befell the connection from just before it was sent until nothing more could come of it. */
const isCalm = ({ at, isNowhere }: Sent): boolean =>
  !isNowhere && report.spells.every(({ from, to }) => at > to || at + 3500 < from)

/** The machine was too slow for it: what cannot arrive within 3 s is not tried, or is refused. */
const isLate = ({ firstMs, fate: { lateMs = 0 } }: Sent): boolean =>
  firstMs === undefined || firstMs > Math.max(lateMs + 500, 1900)

const told = (list: readonly Sent[]): readonly string[] =>
  list.map(
    ({ kind, fate, answers, callbacks, status }) =>
      `${kind}, ${fate.name}: ${answers} of ${callbacks} callbacks, the last ${status}`,
  )

const floorOf = (rows: SoakReport['heapMiB'], from: number, to: number): number =>
  Math.min(...rows.filter(([at]) => at >= seconds * from && at < seconds * to).map(([, mib]) => mib))

describe('the soak', () => {
  it('sent what it was to send, of every kind and with every fate', () => {
    expect(report.sent.length).toBeGreaterThan(seconds * A_SECOND * 0.95)
    expect(new Set(report.sent.map(({ kind }) => kind))).toEqual(
      new Set(['slash', 'autocomplete', 'component', 'modal', 'message-command']),
    )
    if (seconds >= 60) expect(new Set(report.sent.map(({ fate }) => fate))).toEqual(new Set(fates))
    if (seconds >= 60) expect(report.spells.length).toBeGreaterThan(3)
    expect(report.sent.filter(isCalm).length).toBeGreaterThan(report.sent.length * 0.1)
  })

  it('no interaction is answered twice, whatever happened', () => {
    expect(told(report.sent.filter(({ answers }) => answers > 1))).toEqual([])
  })

  it('while the connection is well, each is answered once, or declined as its fate says', () => {
    const calm = report.sent.filter(isCalm)
    const other = calm.filter(({ fate, answers }) => !fate.answers.includes(answers))
    expect(told(other.filter((one) => !isLate(one)))).toEqual([])
    // Each of those was let go under a name.
    const declined = ['late', 'timed-out', 'too-old', 'failed', 'rate-limited', 'expired'] as const
    expect(other.length).toBeLessThanOrEqual(declined.reduce((sum, name) => sum + (report.counted[name] ?? 0), 0))
    const share = other.length / calm.length
    process.stdout.write(`soak: ${(share * 100).toFixed(2)} % of ${calm.length} were too late for this machine\n`)
    expect(share).toBeLessThan(isAlone ? 0.002 : 0.7)
  })

  it('every delivery that arrived is counted once, under a name that says what became of it', () => {
    const all = Object.values(report.counted).reduce((sum, n) => sum + n, 0)
    for (const name of Object.keys(report.counted)) expect(chatEvents).toContain(name)
    const calm = report.sent.filter(isCalm)
    const atLeast = calm.reduce((sum, { fate }) => sum + (fate.copies ?? 1), 0)
    expect(all).toBeGreaterThanOrEqual(atLeast)
    // Nonsense is counted as well; a resume brings again what had come.
    expect(all).toBeLessThanOrEqual(report.deliveries * 1.05 + report.spells.length * 40 + 100)
    for (const event of ['too-old', 'twice', 'already-answered'] as const) {
      const least = calm.filter(({ fate }) => fate.counted.length > 0 && fate.counted.at(-1) === event).length
      expect(report.counted[event] ?? 0, event).toBeGreaterThanOrEqual(least * 0.95)
    }
  })

  it('Discord found nothing wrong with what it was sent, but for what it lied about itself', () => {
    const lies = /Before any callback|Later than 3 s/
    expect(report.violations.filter((one) => !lies.test(one))).toEqual([])
  })

  it('the kiosk answered all the while', () => {
    expect(Object.keys(report.pages)).toEqual(['200'])
  })

  it('memory is flat', () => {
    const [middle, last] = [floorOf(report.heapMiB, 1 / 3, 2 / 3), floorOf(report.heapMiB, 2 / 3, 1)]
    process.stdout.write(
      `soak: ${report.sent.length} sent, ${JSON.stringify(report.counted)}, heap ${middle.toFixed(0)} then ${last.toFixed(0)} MiB, rss at most ${Math.max(...report.rssMiB.map(([, mib]) => mib)).toFixed(0)} MiB, ${report.identifies} logins\n`,
    )
    // In the first minute what is held for some time fills up.
    if (seconds >= 60) expect(last - middle).toBeLessThan(40)
    // What the unit of the service allows.
    expect(Math.max(...report.rssMiB.map(([, mib]) => mib))).toBeLessThan(512)
  })

  it('few logins were used, nothing was unhandled, and the program ended with grace', () => {
    expect(report.identifies).toBeLessThanOrEqual(2 + report.spells.length * 2)
    expect(report.log).not.toMatch(/unhandled|uncaught|closing after a bug|"level":60/i)
    expect(report.exit).toBe(0)
  })
})
