// A check judged by its wrench's card and its gauge: limits, doubt, own weight, and what stands beside the verdict.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judgeCheck } from '../../src/mechanics/check-verdict.ts'
import { band95 } from '../../src/mechanics/uncertainty.ts'
import { limitAt, limitOfCard } from '../../src/register/limit.ts'
import type { Check, Entry, GaugeCard, WrenchCard } from '../../src/register/records.ts'
import { type CheckNote, checkNotes, judge } from '../../src/register/verdict.ts'
import { SEED } from '../support/random.ts'
import { card, gauge, lbft, m, nm, pulled, tested } from './shop.ts'

const LBFT = 1.3558179483314
const bodyOf = <T>(one: Entry): T => one.body as T
const wrench = (more: object = {}): WrenchCard => bodyOf(card('W-07', more))
const scale = (more: object = {}): GaugeCard => bodyOf(gauge('S-1', more))
const meter = (more: object = {}): GaugeCard => scale({ 'gauge-type': 'torque-tester', ...more })
const tester = (points: Parameters<typeof tested>[2], body: object = {}): Check =>
  bodyOf(tested('c', '2026-03-01', points, { body }))
const pull = (points: Parameters<typeof pulled>[2], body: object = {}): Check =>
  bodyOf(pulled('c', '2026-03-01', points, { body }))

describe('the limit of a card', () => {
  it.each([
    [
      'the card’s own',
      { tolerance: { share: m(3, '%'), of: 'reading' }, 'iso-type': 'setting', 'iso-class': 'A' },
      0.03,
      'card',
    ],
    ['the class’s', { 'iso-type': 'setting', 'iso-class': 'D' }, 0.06, 'class'],
    ['a class alone says nothing', { 'iso-class': 'D' }, 0.04, 'most'],
    ['by the largest torque', {}, 0.04, 'most'],
    ['of a small tool', { least: nm(2), most: nm(10) }, 0.06, 'most'],
  ])('%s', (_name, more, share, by) => {
    expect(limitOfCard(wrench(more))).toMatchObject({ share, by })
  })

  it('of the full scale grows as the torque falls: 4 % of 250 is 33 % at 30', () => {
    const limit = limitOfCard(wrench({ most: lbft(250), tolerance: { share: m(4, '%'), of: 'full-scale' } }))
    expect(limitAt(limit, 30 * LBFT)).toBeCloseTo(1 / 3, 9)
    expect(limitAt(limit, 250 * LBFT)).toBeCloseTo(0.04, 9)
  })
})

describe('a check on a tester', () => {
  it('without a gauge that is known is judged by the simple rule, as the mechanics do', () => {
    const readings = fc.array(fc.double({ min: 85, max: 115, noNaN: true }), { minLength: 1, maxLength: 6 })
    fc.assert(
      fc.property(readings, (all) => {
        const judged = judge(tester([[100, all]]), wrench(), undefined)
        const plain = judgeCheck([{ setting: 100, references: all }], { limit: 0.04, rule: 'simple' })
        expect(judged.rule).toBe('simple')
        expect(judged.verdict).toBe(plain.verdict)
        expect(judged.points[0]?.deviation).toBeCloseTo(plain.points[0]?.deviation as number, 9)
        expect(judged.points[0]?.spread).toBeCloseTo((plain.points[0]?.spread as number) * LBFT, 6)
      }),
      { seed: SEED },
    )
  })

  it.each([
    [0.03, 'pass'],
    [0.035, 'pass-in-doubt'],
    [0.045, 'fail-in-doubt'],
    [0.051, 'fail'],
    [-0.03, 'pass'],
    [-0.035, 'pass-in-doubt'],
    [-0.045, 'fail-in-doubt'],
    [-0.051, 'fail'],
  ])('off by %d in 4 %% with a stated 1 %%: %s', (off, verdict) => {
    const check = tester([[100, [100, 100 / (1 + off)]]], { 'gauge-uncertainty': m(1, '%') })
    const judged = judge(check, wrench(), scale({ tolerance: { share: m(20, '%'), of: 'reading' } }))
    expect(judged.verdict).toBe(verdict)
    expect(judged.rule).toBe('guarded')
    expect(judged.worst.deviation).toBeCloseTo(off, 12)
  })

  it('has a doubt from the gauge’s tolerance, of the reading or of its full scale', () => {
    const doubt = (tolerance: object, more: object = {}) =>
      judge(tester([[100, [100]]]), wrench(), meter({ tolerance, ...more })).worst.uncertainty
    const rect = (halfWidth: number) => band95([{ name: 'gauge', halfWidth }])
    expect(doubt({ share: m(1, '%'), of: 'reading' })).toBeCloseTo(rect(0.01), 12)
    expect(doubt({ share: m(1, '%'), of: 'full-scale' }, { most: lbft(200) })).toBeCloseTo(rect(0.02), 12)
    expect(doubt({ share: m(1, '%'), of: 'full-scale' })).toBeUndefined()
  })

  it('has no doubt from a gauge that reads another kind of thing: newtons are not set against newton metres', () => {
    for (const of of ['reading', 'full-scale']) {
      const tolerance = { share: m(1, '%'), of }
      const byScale = judge(tester([[100, [100]]]), wrench(), scale({ tolerance, most: m(500, 'N') }))
      const byTester = judge(pull([[50, [50]]]), wrench(), meter({ tolerance, most: m(10, 'N·m') }))
      for (const { worst, notes, rule } of [byScale, byTester]) {
        expect(worst.uncertainty).toBeUndefined()
        expect(notes).toContain('gauge-unknown')
        expect(rule).toBe('simple')
      }
    }
  })

  it('is as good as its worst reading for the limit there, not as its mean', () => {
    const judged = judge(
      tester([
        [60, [60]],
        [100, [106, 94]],
      ]),
      wrench(),
      undefined,
    )
    expect(judged.points.map(({ verdict }) => verdict)).toEqual(['pass', 'fail'])
    expect(judged.points[1]?.mean).toBeCloseTo(100 * LBFT, 9)
    expect(judged.worst.setting).toBeCloseTo(100 * LBFT, 9)
    expect(judged.worst.deviation).toBeCloseTo(6 / 94, 9)
  })

  it('of a full-scale tool allows the same torque at every point', () => {
    const tool = wrench({ most: lbft(250), tolerance: { share: m(4, '%'), of: 'full-scale' } })
    expect(judge(tester([[60, [69.9]]]), tool, undefined).verdict).toBe('pass')
    expect(judge(tester([[60, [70.1]]]), tool, undefined).verdict).toBe('fail')
    expect(judge(tester([[60, [49.9]]]), tool, undefined).verdict).toBe('fail')
  })
})

describe('a check by force at a distance', () => {
  it('has the torque force times distance: 50 lbf at 12 in is 50 lbf·ft', () => {
    const judged = judge(pull([[50, [50]]]), wrench(), scale())
    expect(judged.points[0]?.mean).toBeCloseTo(50 * LBFT, 9)
    expect(judged.points[0]?.deviation).toBeCloseTo(0, 12)
  })

  it('has the doubt of the gauge and of the rule together', () => {
    const { uncertainty } = judge(pull([[50, [50]]]), wrench(), scale()).worst
    const parts = [
      { name: 'gauge', halfWidth: 0.02 },
      { name: 'distance', halfWidth: 0.125 / 12 },
    ]
    expect(uncertainty).toBeCloseTo(band95(parts), 9)
    const metric = judge(pull([[50, [50]]], { distance: m(300, 'mm') }), wrench(), scale()).worst.uncertainty
    expect(metric).toBeCloseTo(
      band95([
        { name: 'gauge', halfWidth: 0.02 },
        { name: 'distance', halfWidth: 0.01 },
      ]),
      9,
    )
  })

  it.each([
    ['down', 1],
    ['up', -1],
  ] as const)('counts the wrench’s own weight where it lies level and is pulled %s', (direction, sign) => {
    const own = { lie: 'level', mass: m(1.5, 'kg'), 'balance-point': m(250, 'mm'), 'pull-direction': direction }
    const judged = judge(pull([[50, [50]]], { 'own-weight': own }), wrench(), scale())
    expect((judged.points[0]?.mean as number) - 50 * LBFT).toBeCloseTo(sign * 1.5 * 9.80665 * 0.25, 9)
    expect(judged.notes).not.toContain('own-weight-open')
  })
})

describe('what stands beside a verdict', () => {
  const full = [20, 40, 60, 80, 100, 120].map((S): [number, number[]] => [S, [S, S, S, S, S]])
  // At 72 in the rule's doubt is small, and a sixth of the force gives the torque.
  const far = full.filter(([S]) => S >= 40).map(([S, all]): [number, number[]] => [S, all.map((force) => force / 6)])
  const good = full.filter(([S]) => S >= 40)
  const quiet = wrench({ lever: m(12, 'in'), 'iso-type': 'setting', 'iso-class': 'A' })
  const fine = { tolerance: { share: m(0.5, '%'), of: 'reading' } }

  it('nothing, where a check is as the standard wants it', () => {
    expect(judge(tester(good, { gauge: 'S-1' }), quiet, meter(fine)).notes).toEqual([])
  })

  const rows: ReadonlyArray<readonly [CheckNote, Check, WrenchCard, GaugeCard | undefined]> = [
    ['unit-on-wrench', tester([[40, [54, 54, 54, 54, 54]], ...good]), quiet, meter(fine)],
    ['beyond-most', tester([...good, [151, [151, 151, 151, 151, 151]]]), quiet, meter(fine)],
    // 120 lbf·ft is read off a tester that goes to 110.
    ['beyond-gauge', tester(good, { gauge: 'S-1' }), quiet, meter({ ...fine, most: lbft(110) })],
    ['below-a-fifth', tester([[29, [29, 29, 29, 29, 29]], ...good]), quiet, meter(fine)],
    ['gauge-unknown', tester(good), quiet, undefined],
    ['gauge-too-coarse', tester(good), quiet, meter()],
    ['gauge-day-unknown', tester(good), quiet, meter({ ...fine, checked: undefined })],
    ['gauge-overdue', tester(good), quiet, meter({ ...fine, checked: '2025-03-01' })],
    [
      'own-weight-open',
      pull(far, { 'own-weight': undefined, distance: m(72, 'in') }),
      wrench({ ...quiet, lever: m(72, 'in') }),
      scale(fine),
    ],
    ['distance-not-lever', pull(far, { distance: m(72, 'in') }), wrench({ ...quiet, lever: m(74, 'in') }), scale(fine)],
    ['temperature-outside', tester(good, { conditions: { 'temperature-c': 17.9 } }), quiet, meter(fine)],
    ['few-points', tester(good.slice(0, 2)), quiet, meter(fine)],
    ['few-readings', tester([[40, [40, 40, 40, 40]], ...good]), quiet, meter(fine)],
    ['limit-by-most', tester(good), wrench({ lever: m(12, 'in') }), meter(fine)],
  ]

  it.each(rows)('%s alone', (note, check, held, against) => {
    expect(judge(check, held, against).notes).toEqual([note])
  })

  it('every note is told by a row', () => {
    expect(rows.map(([note]) => note)).toEqual([...checkNotes])
  })

  it('beyond what the gauge shows nothing passes plainly, a fail stays one, and what it does show counts as it is', () => {
    const short = meter({ ...fine, most: lbft(110) })
    const verdicts = (high: number) =>
      judge(
        tester(
          [
            [100, [100]],
            [120, [high]],
          ],
          { gauge: 'S-1' },
        ),
        quiet,
        short,
      ).points.map(({ verdict }) => verdict)
    expect(verdicts(120)).toEqual(['pass', 'pass-in-doubt'])
    expect(verdicts(140)).toEqual(['pass', 'fail'])
    // At its very end it still shows.
    expect(judge(tester([[110, [110]]]), quiet, short).verdict).toBe('pass')
    expect(judge(tester([[120, [120]]]), quiet, scale({ most: m(10, 'N') })).notes).not.toContain('beyond-gauge')
  })

  it('a deviation smaller than the doubt is told as such', () => {
    expect(judge(pull([[50, [50.5]]]), wrench(), scale()).withinDoubt).toBe(true)
    expect(judge(pull([[50, [52]]]), wrench(), scale()).withinDoubt).toBe(false)
    expect(judge(pull([[50, [50.5]]]), wrench(), undefined).withinDoubt).toBe(false)
  })
})
