// Figures: the numbers are those of the document, the geometry is that of the inputs, everything stays on the sheet.
import { describe, expect, it } from 'vitest'
import { figureOf, figureQuestions } from '../../src/figures/index.ts'
import { escapeXml } from '../../src/figures/svg.ts'
import { themes } from '../../src/figures/theme.ts'
import type { Answer } from '../../src/questions/answer.ts'
import { questionNames } from '../../src/questions/index.ts'
import { languages } from '../../src/words/index.ts'
import { cases } from '../contract/cases.ts'
import { testDesk } from '../support/doors.ts'

const words = languages.en.words
const desk = testDesk()
const ask = (raw: Record<string, string | readonly string[]>): Answer =>
  desk.ask('adapter-setting', raw, { door: 'http' })
const drawn = (answer: Answer, theme: (typeof themes)[number] = 'light') => {
  const figure = figureOf(answer, words, theme)
  if (!figure) throw new Error(`no figure for ${answer.question} ${answer.status}`)
  return figure
}
const texts = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => match[1] as string)

/** The six corners of the outer fastener: the first polygon of its class with six points. */
const centreOfNut = (svg: string): { x: number; y: number } => {
  const corners = [...svg.matchAll(/<polygon points="([^"]+)" class="nut"\/>/g)].at(-1)?.[1] ?? ''
  const points = corners.split(' ').map((pair) => pair.split(',').map(Number) as [number, number])
  return {
    x: points.reduce((sum, [x]) => sum + x, 0) / points.length,
    y: points.reduce((sum, [, y]) => sum + y, 0) / points.length,
  }
}
const circleOf = (svg: string, cls: string): { x: number; y: number } => {
  const match = new RegExp(`<circle cx="([\\d.-]+)" cy="([\\d.-]+)" r="[\\d.]+" class="${cls}"`).exec(svg)
  return { x: Number(match?.[1]), y: Number(match?.[2]) }
}

/** One nut factor does not tell thread from seat: such an answer about a lubricant has nothing to draw. */
const hasFigure = ({ question, raw }: Pick<(typeof cases)[number], 'question' | 'raw'>): boolean =>
  figureQuestions.includes(question) && (question !== 'lubricant' || 'where' in raw)

describe('which questions have a figure', () => {
  it('only known ones, and every answered case of them draws', () => {
    for (const name of figureQuestions) expect(questionNames).toContain(name)
    const covered = new Set<string>()
    for (const { question, raw, status } of cases) {
      const figure = figureOf(desk.ask(question, raw, { door: 'http' }), words, 'auto')
      expect(figure !== undefined, `${question} ${status}`).toBe(status === 'answered' && hasFigure({ question, raw }))
      if (figure) covered.add(question)
    }
    expect([...covered].sort()).toEqual([...figureQuestions].sort())
  })
})

describe('what a figure says', () => {
  it.each(cases.filter((one) => one.status === 'answered' && hasFigure(one)))(
    '$name: its numbers are those of the document',
    ({ question, raw }) => {
      const answer = desk.ask(question, raw, { door: 'http' })
      const { svg, alt } = drawn(answer)
      const told = texts(svg).join('\n').replaceAll('−', '-')
      const document = JSON.stringify(answer)
      // Every number on the sheet stands in the document as it is written there.
      for (const [number] of told
        .replaceAll('95 %', '')
        .replaceAll(/^\d: /gm, '')
        .matchAll(/\d+(?:\.\d+)?/g)) {
        expect(document.includes(number as string), `${number} is on the sheet but not in the document`).toBe(true)
      }
      const { setting, 'highest-torque': highest, torque, pull, 'clamp-force': clamp } = answer.results
      const main = (setting ?? highest ?? torque ?? clamp ?? pull) as { text?: string; span?: string } | undefined
      // Where friction, bend or hinge decide, the span is what is told, not its middle.
      const shown = ['flex-head', 'swivel', 'clamp-force'].includes(question) ? (main?.span ?? main?.text) : main?.text
      if (shown) {
        expect(told).toContain(shown)
        expect(alt).toContain(shown)
      }
    },
  )

  it('warns on the sheet where the adapter points back or the setting is out of range', () => {
    expect(drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: '50 mm@180' })).svg).toContain(
      escapeXml(words.figures.warnings['points-back']),
    )
    expect(drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: '50 mm', most: '50 N·m' })).svg).toContain(
      words.figures.warnings['beyond-range'],
    )
    expect(drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: '50 mm' })).svg).not.toContain('▲')
  })
})

describe('the geometry', () => {
  const angles = Array.from({ length: 49 }, (_, n) => -180 + n * 7.5)

  it.each(angles)('an adapter at %d° points there: + to the side of the pull, which is up the sheet', (degrees) => {
    const { svg } = drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: `120 mm@${degrees}` }))
    const hand = circleOf(svg, 'ring')
    const drive = circleOf(svg, 'steel')
    const nut = centreOfNut(svg)
    const scale = (drive.x - hand.x) / 400
    expect((nut.x - drive.x) / scale).toBeCloseTo(120 * Math.cos((degrees * Math.PI) / 180), 0)
    expect((drive.y - nut.y) / scale).toBeCloseTo(120 * Math.sin((degrees * Math.PI) / 180), 0)
  })

  it.each([
    [['100 mm@30', '80 mm@-90', '60 mm@170', '50 mm']],
    [['200 mm@90', '200 mm@90', '200 mm@90', '200 mm@90']],
    [['150 mm@-180', '90 mm@180']],
    [['3 m@0', '1 mm@90']],
  ])('a chain of %j ends where its parts say, and stays on the sheet', (chain) => {
    const answer = ask({ torque: '100 N·m', lever: '400 mm', adapter: chain })
    const { svg } = drawn(answer)
    const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.map(Number) ?? []
    for (const [, x = '0', y = '0'] of svg.matchAll(/(?:cx|x[12]?)="([\d.-]+)" (?:cy|y[12]?)="([\d.-]+)"/g)) {
      expect(Number(x) >= 0 && Number(x) <= width && Number(y) >= 0 && Number(y) <= height, `${x},${y}`).toBe(true)
    }
    const parts = chain.map((one) => one.split(' mm@').map((part) => Number.parseFloat(part)))
    const metres = (text: string, value: number): number =>
      text.includes(' m@') && !text.includes('mm') ? value * 1000 : value
    const ahead = parts.reduce(
      (sum, [length = 0, degrees = 0], n) =>
        sum + metres(chain[n] as string, length) * Math.cos((degrees * Math.PI) / 180),
      0,
    )
    const hand = circleOf(svg, 'ring')
    const drive = circleOf(svg, 'steel')
    const scale = (drive.x - hand.x) / 400
    if (!chain.some((one) => one.startsWith('3 m')))
      expect((centreOfNut(svg).x - drive.x) / scale).toBeCloseTo(ahead, 0)
  })

  it('the hand stands where it pulls, the grip centre where the lever ends', () => {
    const { svg } = drawn(ask({ torque: '40 N·m', lever: '400 mm', adapter: '50 mm', hand: '200 mm' }))
    const drive = circleOf(svg, 'steel')
    const hand = circleOf(svg, 'ring')
    const grip = circleOf(svg, 'paper')
    expect((drive.x - hand.x) / (drive.x - grip.x)).toBeCloseTo(0.5, 2)
  })
})

describe('the sheet', () => {
  it.each(themes)('%s has its colours, and every colour class that is used is told', (theme) => {
    const { svg } = drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: '50 mm@-120', hand: '300 mm' }), theme)
    const style = /<style>(.*?)<\/style>/.exec(svg)?.[1] ?? ''
    for (const [, names = ''] of svg.matchAll(/class="([^"]+)"/g))
      for (const name of names.split(' ')) expect(style, name).toContain(`.${name}{`)
    expect(style.includes('prefers-color-scheme')).toBe(theme === 'auto')
  })

  it('is one well-formed picture with its words, and holds nothing that could run or load', () => {
    const { svg, alt } = drawn(ask({ torque: '100 N·m', lever: '400 mm', adapter: '50 mm' }))
    expect(svg).toContain(`<title>${escapeXml(alt)}</title>`)
    expect(svg).not.toMatch(/<script|href=|url\(|on\w+=|NaN|undefined|Infinity/)
    const open = [...svg.matchAll(/<([a-z]+)(?:\s[^>]*[^/])?>/g)].map((match) => match[1])
    const close = [...svg.matchAll(/<\/([a-z]+)>/g)].map((match) => match[1])
    expect(open.sort()).toEqual(close.sort())
  })

  it('nothing that is read is smaller than 18 of 800', () => {
    const { svg } = drawn(
      ask({
        torque: '48.123456 ± 3.123456 N·m',
        lever: '380.25 mm',
        adapter: '45.123456 mm@-130.25',
        hand: '300.25 mm',
      }),
    )
    for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) expect(Number(size)).toBeGreaterThanOrEqual(18)
  })
})
