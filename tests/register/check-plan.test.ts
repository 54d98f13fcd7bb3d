// The plan of a check: its points on the wrench's own marks, windows worked out by hand, and whether a gauge will do.
import { describe, expect, it } from 'vitest'
import { type CheckHead, type PlanNote, planCheck, planNotes } from '../../src/register/check-plan.ts'
import { quantityOf } from '../../src/register/parts.ts'
import type { GaugeCard, WrenchCard } from '../../src/register/records.ts'
import { settingsOfCard } from '../../src/register/sample.ts'
import { card, gauge, lbft, m, nm } from './shop.ts'

const wrench = (more: object = {}): WrenchCard => card('W-07', more).body as WrenchCard
const scale = (more: object = {}): GaugeCard => gauge('S-1', { most: m(50, 'kgf'), ...more }).body as GaugeCard
const metric = (more: object = {}): WrenchCard =>
  wrench({ least: nm(40), most: nm(200), mark: nm(1), lever: m(400, 'mm'), unit: 'N·m', ...more })
const pull = (more: object = {}): CheckHead => ({
  wrench: 'W-07',
  date: '2026-03-01',
  gauge: 'S-1',
  way: 'pull',
  distance: m(400, 'mm'),
  'own-weight': { lie: 'upright' },
  state: 'as-found',
  ...more,
})
const tester: CheckHead = { wrench: 'W-07', date: '2026-03-01', way: 'tester', state: 'as-found' }

describe('the settings', () => {
  it.each([
    ['20, 60 and 100 % of most', { least: lbft(30), most: lbft(150), mark: lbft(1) }, [30, 90, 150]],
    [
      'the lowest up to a mark, never below a fifth',
      { least: lbft(10), most: lbft(110), mark: lbft(5) },
      [25, 65, 110],
    ],
    ['the scale begins above a fifth', { least: lbft(50), most: lbft(150), mark: lbft(5) }, [50, 90, 150]],
    ['no mark is known', { least: lbft(10), most: lbft(147), mark: undefined }, [29.4, 88.2, 147]],
    ['a tool fixed to one torque', { 'iso-type': 'setting', 'iso-class': 'B' }, [150]],
    ['a tool without a scale', { 'iso-type': 'setting', 'iso-class': 'C' }, [30, 90, 150]],
    ['a mark that is no whole number', { least: lbft(3), most: lbft(18.5), mark: lbft(0.25) }, [3.75, 11, 18.5]],
  ])('%s', (_name, more, settings) => {
    expect(settingsOfCard(wrench(more)).map((one) => quantityOf(one).value)).toEqual(settings)
  })
})

describe('a plan by force', () => {
  const plan = planCheck(pull(), metric(), scale())

  it('has the windows that follow by hand from 4 % and 400 mm', () => {
    // 40 / 1.04 = 38.4615, 40 / 0.96 = 41.6667 N·m; at 0.4 m 96.154 and 104.167 N; in the middle 100 N.
    expect(plan.points.map(({ setting }) => setting.value)).toEqual([40, 120, 200])
    expect(plan.points[0]?.window.low).toBeCloseTo(38.4615, 4)
    expect(plan.points[0]?.window.high).toBeCloseTo(41.6667, 4)
    expect(plan.points[0]?.shows.low).toBeCloseTo(96.1538, 4)
    expect(plan.points[0]?.shows.middle).toBeCloseTo(100, 9)
    expect(plan.points[0]?.shows.high).toBeCloseTo(104.1667, 4)
    expect(plan.points[2]?.shows.high).toBeCloseTo(520.8333, 4)
  })

  it('takes the kind by what the wrench is, and pulls and reads as often as that kind is', () => {
    expect(plan).toMatchObject({ prePulls: 5, readings: 5, reads: 'force' })
    expect(plan.notes).toContain('kind-by-type')
    expect(planCheck(pull(), metric({ 'wrench-type': 'beam' }), scale()).prePulls).toBe(1)
  })

  it('says where the gauge runs out, and from which distance it would do', () => {
    // 50 kgf is 490.33 N; 200 N·m at 4 % needs 520.83 N at 0.4 m, so 0.4 · 520.83 / 490.33 = 0.42488 m.
    expect(plan.points.map(({ reaches }) => reaches)).toEqual([true, true, false])
    expect(plan.notes).toContain('gauge-runs-out')
    expect(plan.farEnough).toBeCloseTo(0.42488, 4)
    const farther = planCheck(pull({ distance: m(425, 'mm') }), metric(), scale())
    expect(farther.points.every(({ reaches }) => reaches)).toBe(true)
    expect(farther.farEnough).toBeUndefined()
  })

  it('takes the wrench’s own weight out of the force', () => {
    // 1.5 kg at 0.18 m, pulled down: 1.5 · 9.80665 · 0.18 = 2.6478 N·m come from the weight; (40 − 2.6478) / 0.4 = 93.3805 N.
    const own = { lie: 'level', mass: m(1.5, 'kg'), 'balance-point': m(180, 'mm'), 'pull-direction': 'down' }
    const level = planCheck(pull({ 'own-weight': own }), metric(), scale())
    expect(level.points[0]?.shows.middle).toBeCloseTo(93.3805, 4)
    expect(level.points[0]?.window).toEqual(plan.points[0]?.window)
  })

  it('holds the gauge to a quarter of the limit', () => {
    // ±2 % is half of 4 %.
    expect(plan.points.map(({ fineEnough }) => fineEnough)).toEqual([false, false, false])
    expect(planCheck(pull({ 'gauge-uncertainty': m(1, '%') }), metric(), scale()).points[0]).toMatchObject({
      uncertainty: 0.01,
      fineEnough: true,
    })
    expect(planCheck(pull(), metric(), undefined).points[0]?.fineEnough).toBeUndefined()
  })
})

describe('a plan by torque', () => {
  it('shows the window itself, in the unit of the wrench', () => {
    const plan = planCheck(tester, wrench(), undefined)
    expect(plan.unit.symbol).toBe('lbf·ft')
    expect(
      plan.points.map(({ shows, window }) => [shows.low, shows.high].join() === [window.low, window.high].join()),
    ).toEqual([true, true, true])
  })

  it('of a wrench that is held to its full scale allows the same torque everywhere', () => {
    const full = metric({ tolerance: { share: m(4, '%'), of: 'full-scale' } })
    expect(planCheck(tester, full, undefined).points.map(({ window }) => [window.low, window.high])).toEqual([
      [32, 48],
      [112, 128],
      [192, 208],
    ])
  })
})

describe('what a plan says besides', () => {
  const quiet = metric({ 'iso-type': 'setting', 'iso-class': 'A' })
  const fine = scale({ most: m(1000, 'N'), tolerance: { share: m(0.2, '%'), of: 'reading' } })
  const sure = pull({ 'gauge-uncertainty': m(0.5, '%') })
  const rows: ReadonlyArray<readonly [PlanNote, CheckHead, WrenchCard, GaugeCard | undefined]> = [
    ['gauge-runs-out', sure, quiet, scale({ most: m(500, 'N') })],
    ['gauge-most-unknown', sure, quiet, scale({ most: undefined })],
    ['marks-unknown', sure, metric({ 'iso-type': 'setting', 'iso-class': 'A', mark: undefined }), fine],
    ['kind-by-type', sure, metric({ tolerance: { share: m(4, '%'), of: 'reading' } }), fine],
    ['gauge-unknown', { ...tester }, quiet, undefined],
    ['gauge-too-coarse', pull({ 'gauge-uncertainty': m(1.5, '%') }), quiet, fine],
    ['gauge-day-unknown', sure, quiet, scale({ most: m(1000, 'N'), checked: undefined })],
    ['gauge-overdue', sure, quiet, scale({ most: m(1000, 'N'), checked: '2025-02-01' })],
    ['own-weight-open', pull({ 'gauge-uncertainty': m(0.5, '%'), 'own-weight': undefined }), quiet, fine],
    ['distance-not-lever', pull({ 'gauge-uncertainty': m(0.5, '%'), distance: m(350, 'mm') }), quiet, fine],
    [
      'temperature-outside',
      pull({ 'gauge-uncertainty': m(0.5, '%'), conditions: { 'temperature-c': 12 } }),
      quiet,
      fine,
    ],
  ]
  it.each(rows)('%s alone', (note, head, held, against) => {
    expect(planCheck(head, held, against).notes).toEqual([note])
  })

  it('a limit by the largest torque comes with a kind that nobody said', () => {
    expect(planCheck(sure, metric(), fine).notes).toEqual(['kind-by-type', 'limit-by-most'])
  })

  it('every note is told by a row or is told beside another', () => {
    const told = new Set<string>([...rows.map(([note]) => note), 'limit-by-most', 'below-a-fifth'])
    expect([...told].sort()).toEqual([...planNotes].sort())
  })
})
