// The guided check behind every door: the plan, reading by reading with the verdict growing, what is asked back, and what is kept.
import fc from 'fast-check'
import { beforeEach, describe, expect, it } from 'vitest'
import { type Checking, checkInputs, checkingOf } from '../../src/desk/checking.ts'
import type { Shop } from '../../src/desk/shop.ts'
import { type CheckDocument, checkDocumentSchema } from '../../src/questions/check-document.ts'
import { languages } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'
import { SEED } from '../support/random.ts'

const who = { role: 'keeper', door: 'terminal' } as const
const wrench = {
  tag: 'W-07',
  name: 'Half-inch click wrench',
  'wrench-type': 'click',
  'iso-type': 'setting',
  'iso-class': 'A',
  least: '40 N·m',
  most: '200 N·m',
  mark: '1 N·m',
  lever: '400 mm',
}
const scale = {
  tag: 'S-1',
  name: 'Luggage scale',
  'gauge-type': 'luggage-scale',
  'most-force': '600 N',
  tolerance: '0.5 %',
  checked: '2026-01-05',
}
const tester = { tag: 'T-1', name: 'Bench tester', 'gauge-type': 'torque-tester', 'most-torque': '250 N·m' }
const asked = { wrench: 'W-07', gauge: 'S-1', distance: '400 mm', lie: 'upright' }

let shop: Shop
let checking: Checking
const plan = (raw: unknown): Promise<CheckDocument> => checking.plan(raw, languages.en)
const grow = (raw: unknown): Promise<CheckDocument> => checking.grow(raw, languages.en)
const told = ({ faults }: CheckDocument): string[] => faults.map(({ code, input }) => `${code} ${input}`)

beforeEach(async () => {
  shop = testShop()
  checking = checkingOf(shop)
  for (const [kind, raw] of [
    ['wrench', wrench],
    ['gauge', scale],
    ['gauge', tester],
  ] as const) {
    expect((await shop.keep(kind, raw, who)).kind).toBe('kept')
  }
})

describe('the plan', () => {
  it('says where to set it and what the scale must show, the ends rounded inward', async () => {
    // 40 / 1.04 / 0.4 = 96.15 and 40 / 0.96 / 0.4 = 104.17 N; 480.77 … 520.83 N at 200 N·m.
    const document = await plan(asked)
    expect(document).toMatchObject({ status: 'planned', prePulls: 5, readings: 5, taken: 0, open: 15, notes: [] })
    expect(document.points.map(({ setting, share }) => `${setting.text} ${share.text}`)).toEqual([
      '40 N·m 20 %',
      '120 N·m 60 %',
      '200 N·m 100 %',
    ])
    expect(document.points.map(({ shows }) => [shows.low.text, shows.middle.text, shows.high.text])).toEqual([
      ['96.2 N', '100 N', '104.1 N'],
      ['289 N', '300 N', '312 N'],
      ['481 N', '500 N', '520 N'],
    ])
    expect(document.points.every(({ reaches, fineEnough }) => reaches && !fineEnough === false)).toBe(true)
    expect(document.next?.ask).toContain('Set 40 N·m. Reading 1 of 5')
  })

  it('takes the way from the gauge, the day and the state as they usually are', async () => {
    expect((await plan(asked)).inputs).toMatchObject({ way: 'pull', date: '2026-06-01', state: 'as-found' })
    const onTester = await plan({ wrench: 'w-07', gauge: 't-1' })
    expect(onTester.inputs).toMatchObject({ way: 'tester' })
    expect(onTester.points[0]?.shows.low.text).toBe('38.5 N·m')
  })

  it('asks for what is missing, and says what is wrong, all at once', async () => {
    const { distance: _, ...without } = asked
    expect(await plan(without)).toMatchObject({ status: 'incomplete', missing: [{ input: 'distance' }] })
    expect((await plan({ wrench: 'W-07' })).missing.map(({ input }) => input)).toEqual(['way'])
    expect(told(await plan({ wrench: 'W-99', gauge: 'S-9', distance: '400' }))).toEqual([
      'unit-missing distance',
      'not-in-register wrench',
      'not-in-register gauge',
    ])
    expect(told(await plan({ ...asked, gauge: 'T-1', way: 'pull' }))).toEqual(['conflict gauge'])
    expect(told(await plan('W-07'))).toEqual(['not-allowed '])
    expect(told(await plan({ ...asked, date: '2027-01-01' }))).toEqual(['out-of-range date'])
  })

  it('says where a gauge runs out and from where it would do', async () => {
    // 208.33 N·m at 480 N: 0.434 m.
    await shop.keep('gauge', { ...scale, tag: 'S-2', 'most-force': '480 N' }, who)
    const document = await plan({ ...asked, gauge: 'S-2' })
    expect(document.notes.map(({ code }) => code)).toEqual(['gauge-runs-out'])
    expect(document.farEnough?.text).toBe('435 mm')
    expect(document.lines.at(-1)).toContain('435 mm')
    // It is said before the reading that it cannot show, and not before those that it can.
    expect(document.next?.held).toBeUndefined()
    const low = '40 N·m: 100; 100; 100; 100; 100 N | 120 N·m: 300; 300; 300; 300; 300 N'
    const { next } = await grow({ ...asked, gauge: 'S-2', points: low })
    expect(next?.setting.text).toBe('200 N·m')
    expect(next?.held).toBe(
      'The gauge goes up to 480 N, this point needs up to 520 N: take another gauge, or pull from 435 mm on.',
    )
    const past = await grow({ ...asked, gauge: 'S-2', points: `${low} | 200 N·m: 500; 500; 500; 500; 500 N` })
    expect(past).toMatchObject({ status: 'whole', verdict: { code: 'pass-in-doubt' } })
    expect(past.notes.map(({ code }) => code)).toContain('beyond-gauge')
    expect(past.means).toContain('cannot tell for sure')
  })

  it('of a wrench heavier than its pull is refused', async () => {
    const heavy = { lie: 'level', 'wrench-mass': '9 kg', 'balance-point': '395 mm', 'pull-direction': 'down' }
    await shop.keep('wrench', { ...wrench, tag: 'W-08', least: '4 N·m', most: '20 N·m' }, who)
    expect(told(await plan({ ...asked, ...heavy, wrench: 'W-08' }))).toEqual(['out-of-range wrench-mass'])
  })
})

describe('reading by reading', () => {
  it('goes on from what it handed out until all is read, and what it hands out can be kept', async () => {
    let raw: Record<string, string> = asked
    let last: CheckDocument | undefined
    for (let n = 0; n < 15; n++) {
      const { next } = await grow(raw)
      const force = (next?.shows.middle.value as number) * (n % 2 === 0 ? 1.01 : 0.99)
      // The unit is typed once; a bare number is in that of the reading before.
      last = await grow({ ...raw, reading: n === 0 ? `${force} N` : String(force) })
      expect(last.faults).toEqual([])
      expect(last.taken).toBe(n + 1)
      raw = last.inputs
    }
    expect(last).toMatchObject({ status: 'whole', open: 0, verdict: { code: 'pass' } })
    expect(last?.next).toBeUndefined()
    expect(last?.means).toBe('By these readings it may be used.')
    expect((await grow({ ...asked, points: '40 N·m: 100 N' })).means).toBeUndefined()
    const kept = await shop.keep('check', raw, who)
    expect(kept.kind).toBe('kept')
    const found = await shop.wrench('W-07')
    expect(found?.row.status.lastCheck?.judged.verdict).toBe(last?.verdict?.code)
    expect(told(await grow({ ...raw, reading: '500 N' }))).toEqual(['conflict reading'])
  })

  it('asks a slip back and does not take it, unless it is said to stand', async () => {
    const unit = await grow({ ...asked, reading: '10.2 N' })
    expect(unit).toMatchObject({ status: 'refused', taken: 0 })
    expect(unit.faults[0]).toMatchObject({ code: 'out-of-range', input: 'reading', got: '10.2 N' })
    expect(unit.faults[0]?.hint).toContain('10.2 kgf')
    expect(unit.faults[0]?.hint).toContain('102 N')
    expect(unit.inputs).not.toHaveProperty('points')
    expect((await grow({ ...asked, reading: '1005 N' })).faults[0]?.hint).toContain('100.5 N')
    const sure = await grow({ ...asked, reading: '10.2 N', sure: '10.2 N' })
    expect(sure).toMatchObject({ status: 'asking', taken: 1, verdict: { code: 'fail' } })
    expect((await grow({ ...sure.inputs, reading: '9.9' })).faults[0]?.got).toBe('9.9 N')
  })

  it('asks a slip in what was handed in back as well, and judges the rest', async () => {
    const document = await grow({ ...asked, points: '40 N·m: 100; 1010; 101 N' })
    expect(told(document)).toEqual(['out-of-range points'])
    expect(document).toMatchObject({ taken: 2, verdict: { code: 'pass' } })
    expect(document.inputs['points']).toBe('40 N·m: 100; 101 N')
  })

  it('refuses a reading of another kind or unit, and a first one without a unit', async () => {
    expect(told(await grow({ ...asked, reading: '100' }))).toEqual(['unit-missing reading'])
    expect(told(await grow({ ...asked, reading: '40 N·m' }))).toEqual(['unit-wrong-kind reading'])
    expect(told(await grow({ ...asked, reading: '-100 N' }))).toEqual(['negative reading'])
    expect(told(await grow({ ...asked, points: '40 N·m: 100 N', reading: '10.2 kgf' }))).toEqual(['conflict reading'])
  })

  it('keeps nothing', async () => {
    await grow({ ...asked, points: '40 N·m: 100; 101 N' })
    expect((await shop.wrench('W-07'))?.row.folder.checks).toEqual([])
  })
})

describe('whatever is handed in', () => {
  const text = fc.oneof(
    fc.string(),
    fc.constantFrom('1e400 N', '0 N', '-1', '40 N·m: 1; 2 N', '40 N·m: 0.001 N | 1 N·m: 9 N', '100', 'W-07', 'S-1', ''),
    fc.tuple(fc.double({ noNaN: true }), fc.constantFrom('N', 'kgf', 'N·m', 'mm', 'kg')).map(([n, u]) => `${n} ${u}`),
  )
  const value = fc.oneof(text, fc.array(text, { maxLength: 3 }), fc.constantFrom(null, 0, true, {}))
  const raw = fc.dictionary(fc.constantFrom(...Object.keys(checkInputs), 'colour'), value)

  it('is answered with a document, and never thrown at', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          raw,
          raw.map((more) => ({ ...asked, ...more })),
          fc.anything(),
        ),
        async (any) => {
          for (const document of [await plan(any), await grow(any)]) {
            expect(checkDocumentSchema.parse(document)).toEqual(document)
            if (document.status === 'refused') expect(document.faults).not.toEqual([])
          }
        },
      ),
      { seed: SEED, numRuns: 300 },
    )
  })
})
