// The pictures of a bench run: as many dots as readings, to scale, the margin where it belongs, and the same in words.
import { describe, expect, it } from 'vitest'
import { runDocument } from '../../src/desk/run-document.ts'
import { roundNumbers } from '../../src/figures/plot.ts'
import { drawRun, type RunView, viewsOf } from '../../src/figures/run-view.ts'
import { languageFor, localeNames } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oiled } from '../support/oil-run.ts'

const filled = async (locale = 'en') => {
  const shop = testShop('2026-12-01')
  await beginOil(shop)
  await addReadings(shop, 'A', dry)
  await addReadings(shop, 'B', oiled)
  await addReadings(shop, 'A', { 'clamp-force': '32 kN', again: '1 month', date: '2026-06-01' })
  await addReadings(shop, 'A', { 'clamp-force': '31 kN', again: '3 months', date: '2026-08-01' })
  const run = await shop.runs.one('B-01')
  if (!run) throw new Error('no run')
  return runDocument(run.folder, languageFor(locale, 'en'), '2026-12-01')
}

const drawn = async (view: RunView, locale = 'en') => {
  const { words, style } = languageFor(locale, 'en')
  const figure = drawRun(await filled(locale), view, { words, style, theme: 'light' })
  if (!figure) throw new Error('no figure')
  return figure
}

const numbers = (svg: string, pattern: RegExp): number[][] =>
  [...svg.matchAll(pattern)].map((match) => match.slice(1).map(Number))
const dotsIn = (svg: string) => numbers(svg, /<circle cx="([\d.]+)" cy="([\d.]+)" r="[68]" class="nut"/g)

describe('the readings by condition', () => {
  it('every reading is a dot at its place, and the margin is ±4 % of the first mean wide', async () => {
    const { svg } = await drawn('sets')
    const dots = dotsIn(svg)
    expect(dots).toHaveLength(10)
    const values = [33.1, 34.2, 32.7, 33.6, 33.4, 37.1, 38.2, 36.4, 38.9, 37.4]
    const xs = dots.map(([x]) => x as number)
    const scale = ((xs[8] as number) - (xs[2] as number)) / (38.9 - 32.7)
    values.forEach((value, n) => {
      expect(xs[n]).toBeCloseTo((xs[2] as number) + (value - 32.7) * scale, 0)
    })
    const [[left = 0, width = 0] = []] = numbers(
      svg,
      /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="[\d.]+" class="nut"/g,
    )
    expect(width / scale).toBeCloseTo(0.08 * 33.4, 1)
    expect(left + width / 2).toBeCloseTo((xs[2] as number) + (33.4 - 32.7) * scale, 0)
    // The bar of B lies clear of the margin: it matters.
    const bars = numbers(svg, /<line x1="([\d.]+)" y1="[\d.]+" x2="([\d.]+)" y2="[\d.]+" class="pull"/g).flat()
    expect(Math.min(...bars)).toBeGreaterThan(left + width)
  })

  it('the same in words', async () => {
    const { alt, svg } = await drawn('sets')
    expect(alt).toContain('B is 12.57 % higher than A')
    expect(svg).toContain('<title>B-01: Does oil')
  })
})

describe('over its re-runs', () => {
  it('a dot for each day, falling', async () => {
    const { svg, alt } = await drawn('series')
    const dots = dotsIn(svg).slice(0, 3)
    expect(dots.map(([x]) => x)).toEqual([...dots.map(([x]) => x as number)].sort((one, other) => one - other))
    expect(dots.map(([, y]) => y)).toEqual([...dots.map(([, y]) => y as number)].sort((one, other) => one - other))
    expect(alt).toContain('3 days')
  })
})

describe('torque against clamp force', () => {
  it('the line of K goes from 0 through the mean of the first condition', async () => {
    const { svg } = await drawn('factor')
    const dots = dotsIn(svg).filter(([x]) => (x as number) > 400)
    expect(dots).toHaveLength(5)
    const solid = numbers(svg, /<line x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)" class="rule"/g)
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = solid.find(([a, b, c, d]) => a !== c && b !== d) ?? []
    const at = y1 + ((y2 - y1) * ((dots[0]?.[0] as number) - x1)) / (x2 - x1)
    const middle = dots.reduce((sum, [, y]) => sum + (y as number), 0) / 5
    expect(Math.abs(at - middle)).toBeLessThan(1.5)
  })
})

it('only the pictures that the readings bear are there', async () => {
  const bare = testShop()
  await bare.keep(
    'run',
    { tag: 'B-01', date: '2026-05-01', asked: 'x', conditions: 'A | B' },
    { role: 'keeper', door: 'http' },
  )
  const run = await bare.runs.one('B-01')
  if (!run) throw new Error('no run')
  const document = runDocument(run.folder, languageFor('en', 'en'), '2026-06-01')
  expect(viewsOf(document)).toEqual([])
  expect(viewsOf(await filled())).toEqual(['sets', 'series', 'factor'])
})

it.each(localeNames)('are told in %s', async (locale) => {
  for (const view of ['sets', 'series', 'factor'] as const) {
    const { svg, alt } = await drawn(view, locale)
    expect(svg + alt).not.toMatch(/undefined|NaN|\{[a-z]+\}(?!)/)
  }
})

it.each<[number, number, readonly number[]]>([
  [0, 88, [0, 20, 40, 60, 80]],
  [30.1, 34.9, [31, 32, 33, 34]],
  [0.18, 0.22, [0.18, 0.19, 0.2, 0.21, 0.22]],
])('round numbers from %d to %d', (low, high, wanted) => {
  expect(roundNumbers({ low, high }, 5)).toEqual(wanted)
})
