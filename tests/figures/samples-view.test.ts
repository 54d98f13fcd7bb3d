// The picture of two sets: a dot for each reading, both means, the margin around A, and the interval of the difference, to scale.
import { describe, expect, it } from 'vitest'
import { figureOf } from '../../src/figures/index.ts'
import { themes } from '../../src/figures/theme.ts'
import { languages } from '../../src/words/index.ts'
import { answered, resultOf } from '../support/desk.ts'

const words = languages.en.words
type Raw = Readonly<Record<string, string | readonly string[]>>
const draw = (a: string, b: string, more: Raw = {}, theme: (typeof themes)[number] = 'light') => {
  const answer = answered('compare', { a, b, ...more })
  const figure = figureOf(answer, words, theme)
  if (!figure) throw new Error('no figure')
  return { answer, ...figure }
}
const dotsOf = (svg: string): number[] =>
  [...svg.matchAll(/<circle cx="([\d.]+)" cy="[\d.]+" r="6" class="nut"/g)].map((match) => Number(match[1]))
const marginOf = (svg: string): [number, number] => {
  const [, x, width] = /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="[\d.]+" class="nut"/.exec(svg) ?? []
  return [Number(x), Number(x) + Number(width)]
}
/** Where the interval ends in a bar: upright strokes of the pull's colour. */
const barsOf = (svg: string): number[] =>
  [...svg.matchAll(/<line x1="([\d.]+)" y1="[\d.]+" x2="\1" y2="[\d.]+" class="pull"\/>/g)].map((match) =>
    Number(match[1]),
  )

describe('the picture of two sets of readings', () => {
  const [a, b] = ['99.5; 101; 100.2; 99.8 N·m', '103; 104.5; 103.8; 102.9 N·m']

  it('has a dot for each reading, and shades the margin around the mean of A, to scale', () => {
    const { svg } = draw(a, b)
    const [from, to] = marginOf(svg)
    const scale = (to - from) / (0.08 * 100.125)
    const at = (reading: number): number => (from + to) / 2 + (reading - 100.125) * scale
    const dots = dotsOf(svg)
    expect(dots).toHaveLength(8)
    for (const [index, reading] of [99.5, 101, 100.2, 99.8, 103, 104.5, 103.8, 102.9].entries())
      expect(Math.abs((dots[index] as number) - at(reading))).toBeLessThan(0.3)
  })

  it('draws the interval of the difference where B lies against A', () => {
    const { svg, answer } = draw(a, b)
    const [from, to] = marginOf(svg)
    const { low = 0, high = 0 } = resultOf(answer, 'difference')
    const at = (percent: number): number => (from + to) / 2 + (percent / 4) * ((to - from) / 2)
    const bars = barsOf(svg)
    expect(bars).toHaveLength(2)
    expect(Math.abs((bars[0] as number) - at(low))).toBeLessThan(0.3)
    expect(Math.abs((bars[1] as number) - at(high))).toBeLessThan(0.3)
  })

  it('reads sets in two units on one line', () => {
    const one = dotsOf(draw('100; 110 N·m', '100; 110 N·m').svg)
    const two = dotsOf(draw('100; 110 N·m', '73.756215; 81.131836 lbf·ft').svg)
    for (const [index, x] of one.entries()) expect(Math.abs((two[index] as number) - x)).toBeLessThan(0.3)
  })

  it('an interval that goes on beyond the sheet ends in an arrow, none is drawn where it has no ends', () => {
    const wide = draw('1 2 3 4', '1.01 2 3 4.1').svg
    expect(barsOf(wide)).toHaveLength(1)
    expect(wide.match(/class="pull-tip"/g)).toHaveLength(1)
    const open = draw('0.7 -1.6 -0.2 3.4 3.7 0.8 0 2', '1.9 0.8 1.1 4.4 5.5 1.6 4.6 3.4').svg
    expect(open).not.toContain('class="pull"')
  })

  it('says all of it in words for those who do not see it', () => {
    expect(draw(a, b).alt).toBe(
      'B − A 3.42 %. seen, not decided whether it matters. 95 %: 2.19 to 4.66 %. ' +
        'Readings as dots: the mean of A is 100.1 N·m, the mean of B is 103.6 N·m. The margin of ±4 % around A is shaded.',
    )
  })

  const many = (middle: number): string =>
    Array.from({ length: 500 }, (_, n) => middle + ((n * 7) % 90) / 10).join('; ')
  it.each([
    ['two of each', '1 2', '1 2', {}],
    ['all alike', '100 100', '100 100', {}],
    ['far apart', '1 1.1', '900 1000', {}],
    ['five hundred', `${many(100)} N·m`, `${many(101)} N·m`, {}],
    ['a wide margin', '100 101', '100 101', { margin: '50 %' }],
    ['a narrow one', '100 101', '100 101', { margin: '0.01 %' }],
  ])('%s: stays on the sheet, in letters that can be read', (_name, left, right, more) => {
    const { svg } = draw(left, right, more)
    const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.map(Number) ?? []
    for (const [, x = '0', y = '0'] of svg.matchAll(/(?:cx|x[12]?)="([\d.-]+)" (?:cy|y[12]?)="([\d.-]+)"/g))
      expect(Number(x) >= 0 && Number(x) <= width && Number(y) >= 0 && Number(y) <= height, `${x},${y}`).toBe(true)
    for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) expect(Number(size)).toBeGreaterThanOrEqual(18)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    expect(svg.length).toBeLessThan(150_000)
  })

  it.each(themes)('%s has every colour that is used', (theme) => {
    const { svg } = draw('1 2 3 4', '1.01 2 3 4.1', {}, theme)
    const style = /<style>(.*?)<\/style>/.exec(svg)?.[1] ?? ''
    for (const [, names = ''] of svg.matchAll(/class="([^"]+)"/g))
      for (const name of names.split(' ')) expect(style, name).toContain(`.${name}{`)
  })
})
