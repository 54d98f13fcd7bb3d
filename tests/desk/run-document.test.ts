// A bench run in words: the headline, what is said of each kind of reading, what was held, how far it speaks; in every language.
import { describe, expect, it } from 'vitest'
import { runDocument } from '../../src/desk/run-document.ts'
import { runDocumentSchema } from '../../src/questions/run-document.ts'
import { languageFor, localeNames } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oiled, wholeOil } from '../support/oil-run.ts'

const TODAY = '2026-06-15'
const documentOf = async (
  fill: (shop: ReturnType<typeof testShop>) => Promise<void>,
  locale = 'en',
  planned?: number,
) => {
  const shop = testShop(TODAY)
  await fill(shop)
  const run = await shop.runs.one('B-01')
  if (!run) throw new Error('no run')
  return runDocument(run.folder, languageFor(locale, 'en'), TODAY, planned)
}

describe('a run as a document', () => {
  it('before the first reading: what it can see, and that nothing was read', async () => {
    const document = await documentOf((shop) => beginOil(shop), 'en', 10)
    expect(document.state.code).toBe('planned')
    expect(document.headline).toMatch(/^Nothing was read yet\. .*10 of each see a difference of \d/)
    expect(document.limits).toBeUndefined()
    expect(document.held).toEqual(['W-07', 'M12', 'flat 18 mm x 13 mm'])
    expect(document.again.map(({ text }) => text)).toEqual([
      'Month 1: due for measuring again since 2026-06-01.',
      'Month 3: to be measured again on 2026-08-01.',
      'Month 6: to be measured again on 2026-11-01.',
    ])
  })

  it('with one condition read: why nothing can be told yet', async () => {
    const document = await documentOf(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', dry)
    })
    expect(document.state.code).toBe('under-way')
    expect(document.subjects[0]?.open).toBe('B has fewer than two readings.')
    // K of one condition is told all the same.
    expect(document.headline).toMatch(
      /^A: K is 0\.1996 from 5 readings; the next bolt will lie between 0\.1895 and 0\.21 /,
    )
  })

  it('whole: the verdict leads, with both ends of the interval, K and friction of each, and how far it speaks', async () => {
    const document = await documentOf(wholeOil)
    expect(runDocumentSchema.safeParse(document).error).toBeUndefined()
    expect(document.headline).toMatch(
      /^clamp force, B against A: a difference that matters\. B is 12\.\d+ % higher than A, \+\d+\.\d+ % to \+\d+\.\d+ %, against a margin of ±4 %\.$/,
    )
    const [clamp] = document.subjects
    expect(clamp?.sets.map(({ values }) => values.length)).toEqual([5, 5])
    expect(clamp?.verdicts[0]).toMatchObject({
      condition: 'B',
      against: 'A',
      verdict: { code: 'a-difference-that-matters' },
    })
    // Mean 37.6 against 33.4: (37.6 − 33.4)/33.4.
    expect(clamp?.verdicts[0]?.difference.value).toBeCloseTo(12.57, 2)
    const [a] = document.factors
    // 80 N·m/(12 mm · 33.4 kN) = 0.1996; μ by P 1.75, d2 10.863, r_s (18 + 13)/4.
    expect(a?.k.value).toBeCloseTo(0.1996, 3)
    expect(a?.friction?.value).toBeCloseTo(
      (80 / 33_400 - 0.00175 / (2 * Math.PI)) / (0.010863 / (2 * Math.cos(Math.PI / 6)) + 0.00775),
      3,
    )
    expect(document.limits).toBe(
      'Measured here from 2026-05-01 to 2026-05-01, n = 10: one size (M12), one wrench (W-07). It speaks for nothing else.',
    )
    expect(document.end).toEqual({ date: '2026-05-02', note: 'oil it is' })
    expect(document.method[0]).toBe('Each interval is at 95 % (Welch, Fieller).')
  })

  it('of three conditions: each against the first, the family’s error told', async () => {
    const document = await documentOf(async (shop) => {
      await beginOil(shop, { conditions: 'A: dry | B: oiled | C: waxed' })
      await addReadings(shop, 'A', dry)
      await addReadings(shop, 'B', oiled)
      await addReadings(shop, 'C', { ...oiled, 'clamp-force': '33; 33.5; 33.4; 32.9; 33.7 kN' })
    })
    expect(document.subjects[0]?.verdicts.map(({ condition, verdict }) => [condition, verdict.code])).toEqual([
      ['B', 'a-difference-that-matters'],
      ['C', 'no-difference-that-matters'],
    ])
    expect(document.method[0]).toContain('97.5 %')
  })

  it('over its re-runs and by pieces', async () => {
    const document = await documentOf(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', { ...dry, piece: '1; 2; 3; 4; 5' })
      await addReadings(shop, 'B', { 'clamp-force': '37.1; 38.2; 36.4; 38.9 kN', piece: '1; 2; 3; 4' })
      await addReadings(shop, 'A', { 'clamp-force': '32.1; 32.3 kN', again: '1 month', date: '2026-06-01' })
      await addReadings(shop, 'A', { 'clamp-force': '31 kN', again: '3 months', date: '2026-06-10' })
    })
    const [clamp] = document.subjects
    expect(clamp?.pairs[0]).toMatchObject({ n: 4, unpaired: ['5'] })
    expect(clamp?.series[0]?.dots).toHaveLength(3)
    expect(clamp?.series[0]?.text).toMatch(/^A, clamp force over 1\.3\d* months, 3 days: /)
    expect(document.again.map(({ isDone }) => isDone)).toEqual([true, true, false])
  })

  it.each(localeNames)('says all of it in %s, with the same numbers', async (locale) => {
    const [plain, told] = [await documentOf(wholeOil), await documentOf(wholeOil, locale)]
    expect(JSON.stringify(told)).not.toMatch(/undefined|\{[a-z]+\}/i)
    expect(
      told.subjects.map(({ sets, verdicts }) => [
        sets.map(({ values }) => values),
        verdicts.map(({ difference }) => difference.value),
      ]),
    ).toEqual(
      plain.subjects.map(({ sets, verdicts }) => [
        sets.map(({ values }) => values),
        verdicts.map(({ difference }) => difference.value),
      ]),
    )
  })
})
