// Margin and confidence of a run: chosen when it is begun, kept with it, corrected as all else is, and told wherever it is shown.
import { describe, expect, it } from 'vitest'
import { findingsOfRun } from '../../src/bench/findings.ts'
import { runDocument } from '../../src/desk/run-document.ts'
import { drawRun } from '../../src/figures/run-view.ts'
import { sheetRow } from '../../src/keeping/sheet.ts'
import { textsOf } from '../../src/keeping/texts.ts'
import { languageFor } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oilOpening } from '../support/oil-run.ts'

const TODAY = '2026-06-15'
const keeper = { role: 'keeper', door: 'terminal' } as const
const english = languageFor('en', 'en')
/** About 2 % above the dry ones. */
const waxed = { torque: dry['torque'] as string, 'clamp-force': '33.9; 34.6; 33.7; 34.3; 34.0 kN' }

const shopWith = async (more: Readonly<Record<string, string>> = {}) => {
  const shop = testShop(TODAY)
  await beginOil(shop, more)
  await addReadings(shop, 'A', dry)
  await addReadings(shop, 'B', waxed)
  return shop
}
const runOf = async (shop: ReturnType<typeof testShop>) => {
  const found = await shop.runs.one('B-01')
  if (!found) throw new Error('no run')
  return found
}
const told = async (more: Readonly<Record<string, string>>) => {
  const { folder } = await runOf(await shopWith(more))
  return runDocument(folder, english, TODAY)
}

describe('margin and confidence of a run', () => {
  it('are the usual ones where nothing is said', async () => {
    const { margin, confidence, method } = await told({})
    expect([margin.text, confidence.text]).toEqual(['4 %', '95 %'])
    expect(method[0]).toContain('95 %')
  })

  it('decide the verdict, the interval and what the run can see', async () => {
    const [usual, loose, strict] = await Promise.all([
      told({}),
      told({ margin: '10 %' }),
      told({ margin: '0.1 %', confidence: '99 %' }),
    ])
    const codes = [usual, loose, strict].map(({ subjects }) => subjects[0]?.verdicts[0]?.verdict.code)
    expect(codes[1]).toMatch(/^(no-difference-that-matters|seen-too-small-to-matter)$/)
    expect(codes[2]).toMatch(/not-decided/)
    const low = ({ subjects }: typeof usual) => subjects[0]?.verdicts[0]?.difference.low?.value as number
    expect(low(strict)).toBeLessThan(low(usual) - 0.5)
    expect(loose.outlook.join(' ')).toContain('To see a difference of 10 %')
    expect(loose.headline).toContain('±10 %')
    expect(strict.method[0]).toContain('99 %')
  })

  it('stand under the picture and in its shaded band', async () => {
    const look = { words: english.words, style: english.style, theme: 'light' } as const
    const svg = drawRun(await told({ margin: '2.5 %', confidence: '90 %' }), 'sets', look)?.svg as string
    const texts = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, told]) => told)
    expect(texts.join(' ')).toContain('A ±2.5 %')
    expect(texts.join(' ')).toContain('(90 %)')
    // Short enough for the sheet: the caption stands in as many lines as it takes.
    for (const told of texts) expect((told ?? '').length).toBeLessThan(85)
  })

  it('go through a sheet and a form as they were typed', async () => {
    const { folder, entries } = await runOf(await shopWith({ margin: '2.5 percent', confidence: '90 %' }))
    expect(textsOf(folder.opening.entry)).toMatchObject({ margin: '2.5 percent', confidence: '90 %' })
    expect(sheetRow(entries[0] as (typeof entries)[number])).toContain('2.5 percent')
  })

  it('are corrected by an entry that supersedes, and the earlier one stays', async () => {
    const shop = await shopWith({ margin: '2 %' })
    const id = (await runOf(shop)).folder.opening.entry.id
    const kept = await shop.keep('run', { ...oilOpening, margin: '6 %', supersedes: id, why: 'agreed anew' }, keeper)
    expect(kept.kind).toBe('kept')
    const { folder } = await runOf(shop)
    expect(findingsOfRun(folder).margin).toEqual({ m: 0.06, confidence: 0.95 })
    expect(folder.opening.earlier).toHaveLength(1)
  })

  it.each([
    ['margin', '60 %'],
    ['margin', '0 %'],
    ['margin', 'a little'],
    ['confidence', '40 %'],
    ['confidence', '100 %'],
    ['confidence', '5 N·m'],
  ])('%s %j is refused at its own input', async (input, typed) => {
    const shop = testShop(TODAY)
    const kept = await shop.keep('run', { ...oilOpening, wrench: '', [input]: typed }, keeper)
    if (kept.kind !== 'refused') throw new Error(kept.kind)
    expect(kept.faults.map((one) => one.input)).toContain(input)
  })
})
