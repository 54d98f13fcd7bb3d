// The picture of a check: a dot for each reading where its deviation lies, a diamond outside the limit, a row for each point.
import { describe, expect, it } from 'vitest'
import { figureOf } from '../../src/figures/index.ts'
import { themes } from '../../src/figures/theme.ts'
import { languages } from '../../src/words/index.ts'
import { answered } from '../support/desk.ts'

const words = languages.en.words
type Raw = Readonly<Record<string, string | readonly string[]>>
const draw = (points: string, more: Raw = {}, theme: (typeof themes)[number] = 'light') => {
  const answer = answered('wrench-check', { points, ...more })
  const figure = figureOf(answer, words, theme)
  if (!figure) throw new Error('no figure')
  return { answer, ...figure }
}
const dotsOf = (svg: string): number[] =>
  [...svg.matchAll(/<circle cx="([\d.]+)" cy="[\d.]+" r="8" class="nut"/g)].map((match) => Number(match[1]))
/** The middles of the diamonds: the x of their first corner. */
const diamondsOf = (svg: string): number[] =>
  [...svg.matchAll(/<polygon points="([\d.]+),[^"]*" class="warn"\/>/g)].map((match) => Number(match[1]))
const boundsOf = (svg: string): number[] =>
  [...svg.matchAll(/<line x1="([\d.]+)" y1="([\d.]+)" x2="\1" y2="([\d.]+)" class="rule"/g)]
    .filter(([, , top, bottom]) => Number(bottom) - Number(top) > 90)
    .map((match) => Number(match[1]))

describe('the picture of a check', () => {
  it('has a dot for each reading inside the limit and a diamond for each outside', () => {
    const { svg } = draw('50 N·m: 50; 51; 50.5 N·m | 100 N·m: 100; 95; 106 N·m')
    expect(dotsOf(svg)).toHaveLength(4)
    expect(diamondsOf(svg)).toHaveLength(2)
  })

  it('puts each reading where its deviation lies: low to the right, high to the left, to scale', () => {
    const { svg } = draw('100 N·m: 100; 98; 103 N·m', { tolerance: '4 %' })
    const [low = 0, high = 0] = boundsOf(svg)
    const scale = (high - low) / 8
    const at = (reading: number): number => (low + high) / 2 + ((100 - reading) / reading) * 100 * scale
    const dots = dotsOf(svg)
    expect(dots[0]).toBeCloseTo(at(100), 0)
    expect(dots[1]).toBeCloseTo(at(98), 0)
    expect(dots[2]).toBeCloseTo(at(103), 0)
    expect(dots[1]).toBeGreaterThan(dots[0] as number)
  })

  it('a reading at the limit is drawn inside it', () => {
    expect(diamondsOf(draw('104 N·m: 100 N·m', { tolerance: '4 %' }).svg)).toEqual([])
  })

  it.each([
    ['100 N·m: 100 N·m', 'PASS', 'pass'],
    ['100 N·m: 80 N·m', 'FAIL', 'fail'],
  ])('%s: says %s on top and in its row', (points, lead, told) => {
    const { svg, alt } = draw(points)
    expect(svg).toContain(`>${lead}</text>`)
    expect(svg).toContain(`>${told}</text>`)
    expect(alt.startsWith(lead)).toBe(true)
  })

  it('with a guarded rule shows what is surely a pass and surely a fail', () => {
    const guarded = draw('100 N·m: 97 N·m', { rule: 'guarded', 'gauge-uncertainty': '1 %', tolerance: '4 %' })
    expect(guarded.svg.match(/fill-opacity="0.1"/g)).toHaveLength(2)
    expect(guarded.svg).toContain(words.figures.guardCaption)
    const simple = draw('100 N·m: 97 N·m', { 'gauge-uncertainty': '1 %', tolerance: '4 %' })
    expect(simple.svg.match(/fill-opacity="0.1"/g)).toHaveLength(1)
    expect(simple.svg).toContain(words.figures.checkCaption)
  })

  it('says all of it in words for those who do not see it', () => {
    const { alt } = draw('75 lbf·ft: 74 lbf·ft | 150 lbf·ft: 149; 140 lbf·ft')
    expect(alt).toBe(
      'FAIL 7.14 %. the worst reading, at 150 lbf·ft: it delivers LOW. ' +
        'A dot for each reading of the reference against the limit of ±4 %. ' +
        'At 75 lbf·ft the mean deviates 1.351 %: pass. At 150 lbf·ft the mean deviates 3.81 %: fail.',
    )
  })

  it.each([
    ['one point', '100 N·m: 100 N·m'],
    [
      'twelve points of thirty',
      Array(12)
        .fill(`100 N·m: ${'100 '.repeat(29)}100 N·m`)
        .join(' | '),
    ],
    ['far off', '100 N·m: 12; 900 N·m'],
    ['a long unit and digits', '123.456789 lbf·in: 123.456789; 120 lbf·in'],
  ])('%s: stays on the sheet, in letters that can be read', (_name, points) => {
    const { svg } = draw(points)
    const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.map(Number) ?? []
    for (const [, x = '0', y = '0'] of svg.matchAll(/(?:cx|x[12]?)="([\d.-]+)" (?:cy|y[12]?)="([\d.-]+)"/g))
      expect(Number(x) >= 0 && Number(x) <= width && Number(y) >= 0 && Number(y) <= height, `${x},${y}`).toBe(true)
    for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) expect(Number(size)).toBeGreaterThanOrEqual(18)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  })

  it.each(themes)('%s has every colour that is used', (theme) => {
    const { svg } = draw('100 N·m: 100; 90 N·m', {}, theme)
    const style = /<style>(.*?)<\/style>/.exec(svg)?.[1] ?? ''
    for (const [, names = ''] of svg.matchAll(/class="([^"]+)"/g))
      for (const name of names.split(' ')) expect(style, name).toContain(`.${name}{`)
  })
})
