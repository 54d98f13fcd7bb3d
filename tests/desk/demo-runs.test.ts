// The bench runs of the demo: finished ones that a question can name, and one under way that is to be measured again.
import { describe, expect, it } from 'vitest'
import { fillDemo } from '../../src/demo/fill.ts'
import { askKnowing, createDesk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import { runDocument } from '../../src/desk/run-document.ts'
import { viewsOf } from '../../src/figures/run-view.ts'
import { languageFor } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'

const days = ['2026-06-01', '2026-11-25', '2028-02-29']
const demo = async (today: string) => {
  const shop = testShop(today)
  await fillDemo(shop)
  const { runs } = await shop.runs.page(50)
  const documents = runs.map((run) => runDocument(run, languageFor('en', 'en'), today))
  return { shop, documents }
}

describe('the bench runs of the demo', () => {
  it.each(days)('stand as they were invented, on %s', async (today) => {
    const { documents } = await demo(today)
    expect(documents.map(({ tag, state }) => [tag, state.code])).toEqual([
      ['B-01', 'finished'],
      ['B-02', 'finished'],
      ['B-03', 'under-way'],
    ])
    const verdicts = documents.map(({ subjects }) => subjects[0]?.verdicts.map(({ verdict }) => verdict.code))
    expect(verdicts[0]).toEqual(['a-difference-that-matters'])
    expect(verdicts[1]).toEqual(['no-difference-that-matters', 'a-difference-that-matters'])
    expect(verdicts[2]).toEqual(['seen-too-small-to-matter'])
    expect(documents[1]?.margin.text).toBe('10 %')
    const [again] = documents[2]?.again ?? []
    expect(again).toMatchObject({ months: 3, isDone: false })
    expect((again?.due as string) > today).toBe(true)
    for (const one of documents) expect(viewsOf(one)[0]).toBe('sets')
  })

  it('have nut factors of dry and of oiled steel', async () => {
    const { documents } = await demo(days[0] as string)
    const [dry, oil] = documents[0]?.factors.map(({ k }) => k.value) ?? []
    // K 0.2 dry and 0.15 oiled are the usual round numbers (common practice).
    expect(Math.abs((dry as number) - 0.2)).toBeLessThan(0.02)
    expect(Math.abs((oil as number) - 0.15)).toBeLessThan(0.015)
  })

  it('are cited by an answer as measured here', async () => {
    const { shop } = await demo(days[0] as string)
    const desk = createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) })
    const answer = await askKnowing(desk, 'clamp-force', { torque: '80 N·m', bench: 'B-01 oil' }, { door: 'http' })
    expect(answer.status).toBe('answered')
    expect(answer.sources[0]).toMatchObject({ standing: 'measured here' })
  })
})
