// Sheets as they are painted, held against another renderer of SVG (librsvg, within sharp) of the same sheet and the same font: every
// line, every letter and every colour in its place. Edges of letters are smoothed in other ways, so both are blurred first.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { runDocument } from '../../src/desk/run-document.ts'
import { createPictures } from '../../src/faces/pictures.ts'
import { drawHistory } from '../../src/figures/history-view.ts'
import { figureOf } from '../../src/figures/index.ts'
import { drawRunCard } from '../../src/figures/run-card.ts'
import { drawRun, viewsOf } from '../../src/figures/run-view.ts'
import { element, text } from '../../src/figures/svg.ts'
import { driftOf } from '../../src/register/drift.ts'
import { languageFor, languages } from '../../src/words/index.ts'
import { cases } from '../contract/cases.ts'
import { bookOf, card, folderOf, gauge, tested } from '../register/shop.ts'
import { testDesk, testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oiled } from '../support/oil-run.ts'

// It takes a font only through fontconfig, which reads its file once, before the first text is drawn.
const folder = mkdtempSync(join(tmpdir(), 'armlength-fonts-'))
const fonts = dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/inter/package.json'))
const places = ['400Regular', '600SemiBold', '700Bold'].map((weight) => `<dir>${join(fonts, weight)}</dir>`).join('')
writeFileSync(
  join(folder, 'fonts.conf'),
  `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${places}<cachedir>${folder}</cachedir></fontconfig>`,
)
process.env.FONTCONFIG_FILE = join(folder, 'fonts.conf')
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const { default: sharp } = await import('sharp')

const pictures = createPictures()
const BLUR = 2
const blurred = async (picture: Buffer): Promise<{ data: Buffer; width: number }> => {
  const { data, info } = await sharp(picture).removeAlpha().blur(BLUR).raw().toBuffer({ resolveWithObject: true })
  return { data, width: info.width }
}

/** The greatest difference of a channel, 0 to 255, and where it is. */
const apart = async (svg: string, other = svg): Promise<{ most: number; at: string }> => {
  const [ours, theirs] = await Promise.all([
    pictures.png(svg).then(blurred),
    sharp(Buffer.from(other)).png().toBuffer().then(blurred),
  ])
  expect(ours.data.length).toBe(theirs.data.length)
  let [most, place] = [0, 0]
  ours.data.forEach((value, n) => {
    const off = Math.abs(value - (theirs.data[n] as number))
    if (off > most) [most, place] = [off, n]
  })
  const pixel = Math.floor(place / 3)
  return { most, at: `${pixel % ours.width}, ${Math.floor(pixel / ours.width)}` }
}
const ALIKE = 48
// Two ways to shape text: one lifts a colon between figures or a dash between capitals, the other does not.
const ALIKE_TEXT = 140

const wordless = (svg: string): string => svg.replace(/<text [^>]*>[^<]*<\/text>/g, '')
const isAlike = async (name: string, svg: string): Promise<void> => {
  const whole = await apart(svg)
  const lines = await apart(wordless(svg))
  expect(whole.most, `${name} at ${whole.at}`).toBeLessThan(ALIKE_TEXT)
  expect(lines.most, `${name}, without its texts, at ${lines.at}`).toBeLessThan(ALIKE)
}

const desk = testDesk()
const sheets: Array<readonly [name: string, svg: string]> = []
for (const { name, question, raw } of cases) {
  const answer = desk.ask(question, raw, { door: 'http' })
  const figure = figureOf(answer, languages.en.words, sheets.length % 2 === 0 ? 'light' : 'dark')
  if (figure) sheets.push([`${question}: ${name}`, figure.svg])
}
for (const locale of ['de', 'es', 'fr'] as const) {
  const answer = desk.ask(
    'adapter-setting',
    { torque: '100 N·m', lever: '380 mm', adapter: '45 mm@-30' },
    { door: 'http', locale },
  )
  sheets.push([locale, figureOf(answer, languages[locale].words, 'print')?.svg ?? ''])
}

it.each(sheets)('%s', isAlike)

describe('pictures of the register', () => {
  it('checks over time', async () => {
    const entries = ['2024-01-01', '2024-07-01', '2025-01-01', '2025-07-01'].map((date, n) =>
      tested(`c${n}`, date, [[100, [99 - n, 98.5 - n]]]),
    )
    const book = bookOf(card(), gauge('S-1', { name: 'Tester', 'gauge-type': 'torque-tester' }), ...entries)
    const one = folderOf(book)
    const { words, style } = languages.en
    for (const shape of ['wide', 'narrow'] as const) {
      const figure = drawHistory({ folder: one, drifts: driftOf(book, one) }, { words, style, theme: 'dark', shape })
      await isAlike(shape, figure?.svg ?? '')
    }
  })

  it('a bench run, and its card', async () => {
    const shop = testShop('2026-12-01')
    await beginOil(shop)
    await addReadings(shop, 'A', dry)
    await addReadings(shop, 'B', oiled)
    await addReadings(shop, 'A', { 'clamp-force': '32 kN', again: '1 month', date: '2026-06-01' })
    const run = await shop.runs.one('B-01')
    if (!run) throw new Error('no run')
    const { words, style } = languageFor('en', 'en')
    const document = runDocument(run.folder, languageFor('en', 'en'), '2026-12-01')
    const look = { words, style, theme: 'light' } as const
    const drawn = [...viewsOf(document).map((view) => drawRun(document, view, look)), drawRunCard(document, look)]
    expect(drawn.length).toBeGreaterThan(2)
    for (const figure of drawn) await isAlike('a run', figure?.svg ?? '')
  })
})

describe('what is seen', () => {
  const [, svg = ''] = sheets[0] ?? []
  it.each([
    ['a line', /<line [^>]*class="axis"\/>/],
    ['an arrow head', /<polygon [^>]*class="pull-tip"\/>/],
    ['a fastener', /<polygon [^>]*class="nut"\/>/],
  ])('%s that is missing', async (_, part) => {
    expect(svg).toMatch(part)
    const lines = wordless(svg)
    expect((await apart(lines, lines.replace(part, ''))).most).toBeGreaterThan(ALIKE * 1.4)
  })
  it('a text that is missing', async () => {
    const without = svg.replace(/<text [^>]*class="ink"[^>]*>[^<]*<\/text>/, '')
    expect((await apart(svg, without)).most).toBeGreaterThan(ALIKE_TEXT)
  })
  it('letters that do not stand clear of what they cross', async () => {
    const without = svg.replace(/text\{paint-order:stroke[^}]*\}/, '')
    expect((await apart(svg, without)).most).toBeGreaterThan(2 * (await apart(svg)).most)
  })
})

describe('what cannot be painted', () => {
  const around = (...parts: readonly string[]): string =>
    element('svg', { xmlns: 'http://www.w3.org/2000/svg', width: 100, height: 50 }, ...parts)
  it.each([
    ['no sheet', 'nothing', /no sheet/],
    ['an element that none has', around(element('ellipse', { rx: 3 })), /<ellipse>/],
    ['parts within parts', around(element('g', {}, text('a', { x: 1, y: 1 }))), /within/],
    ['colours that follow the reader', around('<style>@media print{.a{fill:#000}}</style>'), /more than one set/],
  ])('%s', (_, svg, message) => expect(pictures.png(svg)).rejects.toThrow(message))
})

it('a text is painted as it was written, whatever it has', async () => {
  const content = '<b>&lt;"½ ▲ °'
  const sheet = (told: string): string =>
    element(
      'svg',
      { xmlns: 'http://www.w3.org/2000/svg', width: 400, height: 80 },
      '<style>text{font-family:Inter}.a{fill:#fff}</style>',
      element('rect', { x: 0, y: 0, width: 400, height: 80, class: 'a' }),
      text(told, { x: 10, y: 50, 'font-size': 40 }),
    )
  expect((await apart(sheet(content))).most).toBeLessThan(ALIKE)
  expect((await apart(sheet(content), sheet('<b><"½ ▲ °'))).most).toBeGreaterThan(ALIKE_TEXT)
})
