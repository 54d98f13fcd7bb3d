// The picture of a wrench's checks over time: every check where its day and deviation say, a trend and a day only where told.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { driftSentences } from '../../src/figures/drift-text.ts'
import { drawHistory, type Shape, shapes } from '../../src/figures/history-view.ts'
import { type Theme, themes } from '../../src/figures/theme.ts'
import { driftOf } from '../../src/register/drift.ts'
import type { Entry } from '../../src/register/records.ts'
import { languages } from '../../src/words/index.ts'
import { bookOf, card, event, folderOf, gauge, tested } from '../register/shop.ts'
import { SEED } from '../support/random.ts'

const { words, style } = languages.en
let made = 0
/** A check at 100 lbf·ft whose mean is off by so many percent. */
const off = (date: string, percent: number, more: object = {}): Entry =>
  tested(`c${++made}`, date, [[100, [100 / (1 + percent / 100)]]], more)

const draw = (entries: readonly Entry[], shape: Shape = 'wide', theme: Theme = 'light') => {
  const book = bookOf(card(), gauge('S-1', { name: 'Tester', 'gauge-type': 'torque-tester' }), ...entries)
  const folder = folderOf(book)
  const drifts = driftOf(book, folder)
  const figure = drawHistory({ folder, drifts }, { words, style, theme, shape })
  if (!figure) throw new Error('no picture')
  const tongue = { words: words.history, deviation: words.deviation, style, unit: folder.card.entry.body.unit }
  return { ...figure, drifts, told: drifts.flatMap((drift) => driftSentences(drift, tongue)).join(' ') }
}

interface At {
  readonly x: number
  readonly y: number
}
const circles = (svg: string, kind: string): At[] =>
  [...svg.matchAll(new RegExp(`<circle cx="([\\d.]+)" cy="([\\d.]+)" r="[\\d.]+" class="${kind}"`, 'g'))].map(
    ([, x, y]) => ({ x: Number(x), y: Number(y) }),
  )
/** Heights of the lines that go from the left of the panel to its right. */
const levels = (svg: string, kind: 'rule' | 'axis'): number[] =>
  [...svg.matchAll(new RegExp(`<line x1="196" y1="([\\d.]+)" x2="[\\d.]+" y2="\\1" class="${kind}"/>`, 'g'))].map(
    ([, y]) => Number(y),
  )

const days = ['2024-01-01', '2024-07-01', '2025-01-01', '2025-07-01'] as const
const rising = days.map((date, n) => off(date, [1, 1.5, 2.1, 2.5][n] as number))
const untold = /limit about|reaches its limit about|a year/

describe('the picture of checks over time', () => {
  it('puts each check at its day and its deviation, to scale with the limits', () => {
    const { svg, drifts } = draw(rising.slice(0, 3))
    const [upper = 0, lower = 0] = levels(svg, 'rule')
    const [zero = 0] = levels(svg, 'axis')
    expect(zero).toBeCloseTo((upper + lower) / 2, 0)
    const dots = circles(svg, 'nut')
    expect(dots).toHaveLength(3)
    for (const [n, { y }] of dots.entries()) {
      const deviation = drifts[0]?.dots[n]?.deviation as number
      expect(Math.abs(y - (zero + (deviation / 4) * (zero - upper)))).toBeLessThan(0.3)
    }
    const [one, two, three] = dots as [At, At, At]
    // 182 and 184 days apart.
    expect((two.x - one.x) / (three.x - two.x)).toBeCloseTo(182 / 184, 2)
  })

  it('draws the doubt of each check as a bar of that height, and none where it is not known', () => {
    const known = draw([off('2025-01-01', 1, { body: { gauge: 'S-1' } })])
    const bars = [...known.svg.matchAll(/y1="([\d.]+)" x2="[\d.]+" y2="([\d.]+)" class="bar"/g)]
    expect(bars).toHaveLength(1)
    const [upper = 0, lower = 0] = levels(known.svg, 'rule')
    const height = Number(bars[0]?.[2]) - Number(bars[0]?.[1])
    const doubt = known.drifts[0]?.dots[0]?.doubt as number
    expect(Math.abs(height - (2 * doubt * (lower - upper)) / 8)).toBeLessThan(0.3)
    const open = draw([off('2025-01-01', 1)])
    expect(open.svg).not.toContain('class="bar"')
    expect(open.alt).toContain('its doubt is not known')
  })

  it('a failed check has another shape; one before the last work is hollow', () => {
    const work = event('e', 'adjusted', '2024-09-01')
    const { svg } = draw([...rising.slice(0, 2), work, off('2025-01-01', 7), off('2025-02-01', 0.2)])
    expect(circles(svg, 'hole')).toHaveLength(2)
    expect(circles(svg, 'nut')).toHaveLength(1)
    expect(svg.match(/class="warn"\/>/g)).toHaveLength(1)
    expect(svg).toContain('>adjusted</text>')
  })

  it('marks what was done to it and what it went through, with words, and leaves out who had it', () => {
    const { svg, alt } = draw([
      ...rising,
      event('a', 'dropped', '2024-09-01'),
      event('b', 'repaired', '2025-02-01'),
      event('l', 'lent', '2025-03-01'),
    ])
    expect(svg).toContain('>dropped</text>')
    expect(svg).toContain('>repaired</text>')
    expect(svg).not.toContain('>lent</text>')
    expect(alt).toContain('2024-09-01: dropped.')
  })

  it('a wild check stands at the edge with its number, and flattens nobody else', () => {
    const { svg } = draw([off('2024-01-01', 1), off('2024-07-01', 36), off('2025-01-01', 1.5)])
    expect(svg).toContain('>36 % low (gives less)</text>')
    const [upper = 0, lower = 0] = levels(svg, 'rule')
    expect(lower - upper).toBeGreaterThan(60)
    expect(circles(svg, 'nut')).toHaveLength(2)
  })

  it('has a panel for each setting, lowest first', () => {
    const { svg } = draw([
      tested('p', '2025-01-01', [
        [100, [100]],
        [40, [40]],
      ]),
    ])
    expect(svg.indexOf('>40 lbf·ft: ')).toBeGreaterThan(0)
    expect(svg.indexOf('>40 lbf·ft: ')).toBeLessThan(svg.indexOf('>100 lbf·ft: '))
  })

  it('tells the trend, its band and the month only where the checks bear them', () => {
    const { svg, told, drifts } = draw(rising)
    const { outlook } = drifts[0] as (typeof drifts)[number]
    if (!outlook.told) throw new Error(outlook.why)
    const month = outlook.middle.slice(0, 7)
    expect(svg).toContain(`>limit about ${month}</text>`)
    expect(svg.match(/class="pull"/g)).toHaveLength(2)
    expect(svg).toContain('class="hand" fill-opacity="0.2"')
    expect(told).toContain(`It reaches its limit about ${month}`)
    expect(told).toContain('It gives less by 1.02 ± ')
  })

  it('fewer than four checks that count: no line, no day, whatever they say', () => {
    const series = fc.array(fc.double({ min: -12, max: 12, noNaN: true }), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(series, fc.boolean(), (all, worked) => {
        const before = worked ? [...rising, event('w', 'adjusted', '2025-08-01')] : []
        const { svg, alt, told } = draw([...before, ...all.map((percent, n) => off(`202${6 + n}-06-01`, percent))])
        const dates = alt.match(/\d{4}-\d\d/g) ?? []
        return (
          !untold.test(svg) &&
          !untold.test(told) &&
          !svg.includes('class="pull"') &&
          dates.every((date) => date <= `202${5 + all.length}-06`) &&
          told.includes('Fewer than four checks count')
        )
      }),
      { seed: SEED, numRuns: 200 },
    )
  })

  const many = Array.from({ length: 100 }, (_, n) => off(`${2000 + Math.floor(n / 4)}-0${(n % 4) + 1}-01`, Math.sin(n)))
  const busy = Array.from({ length: 12 }, (_, n) => event(`x${n}`, 'dropped', `2024-0${(n % 6) + 1}-02`))
  const rows: ReadonlyArray<readonly [string, readonly Entry[]]> = [
    ['one check', rising.slice(0, 1)],
    ['two on one day', [off('2025-01-01', 0), off('2025-01-01', 1, { state: 'as-left' })]],
    ['two days', [off('2025-01-01', 0), off('2025-01-02', 1)]],
    ['a hundred', many],
    ['a wild one on each side', [off('2024-01-01', 80), off('2025-01-01', -60)]],
    ['many drops', [...rising, ...busy]],
  ]
  it.each(rows.flatMap(([name, entries]) => shapes.map((shape) => [name, shape, entries] as const)))(
    '%s, %s: stays on the sheet, in letters that can be read',
    (_name, shape, entries) => {
      const { svg } = draw(entries, shape)
      const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.map(Number) ?? []
      expect(width).toBe(shape === 'wide' ? 1200 : 800)
      for (const [, x = '0', y = '0'] of svg.matchAll(/(?:cx|x[12]?)="([\d.-]+)" (?:cy|y[12]?)="([\d.-]+)"/g))
        expect(Number(x) >= 0 && Number(x) <= width && Number(y) >= 0 && Number(y) <= height, `${x},${y}`).toBe(true)
      for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) expect(Number(size)).toBeGreaterThanOrEqual(18)
      expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    },
  )

  it.each(themes)('%s has every colour that is used', (theme) => {
    const { svg } = draw([...rising, off('2026-01-01', 30), event('d', 'dropped', '2024-02-01')], 'wide', theme)
    const used = /<style>(.*?)<\/style>/.exec(svg)?.[1] ?? ''
    for (const [, names = ''] of svg.matchAll(/class="([^"]+)"/g))
      for (const name of names.split(' ')) expect(used, name).toContain(`.${name}{`)
  })

  it('says where it stands in words: low, high, or no more than its doubt', () => {
    const known = { body: { gauge: 'S-1' } }
    expect(draw([off('2025-01-01', 3, known)]).told).toContain('found 3 % low (gives less), ± ')
    expect(draw([off('2025-01-01', -3, known)]).told).toContain('found 3 % high (gives more), ± ')
    const small = draw([off('2025-01-01', 0.5, known)]).told
    expect(small).toContain('no more than its doubt')
    expect(draw([off('2025-01-01', 3, known)]).told).not.toContain('no more than its doubt')
  })
})
