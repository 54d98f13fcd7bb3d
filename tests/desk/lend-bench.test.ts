// Bench runs as evidence: what a finished run lends to a question that names it, how that is told, and what is refused.
import { describe, expect, it } from 'vitest'
import { parseRunReferences } from '../../src/core/parse-run-reference.ts'
import { askKnowing, createDesk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import { answerSchema, type ShownQuantity } from '../../src/questions/answer.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { testDesk, testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oiled, wholeOil } from '../support/oil-run.ts'

const desk = async (fill: (shop: ReturnType<typeof testShop>) => Promise<void> = wholeOil) => {
  const shop = testShop()
  await fill(shop)
  const knowing = createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) })
  return async (name: QuestionName, raw: Record<string, string>) => askKnowing(knowing, name, raw, { door: 'http' })
}
const numberOf = (result: unknown): ShownQuantity => result as ShownQuantity

describe('a finished run', () => {
  it('lends its K with where the next bolt will lie: a range of clamp force, told as measured here', async () => {
    const ask = await desk()
    const answer = await ask('clamp-force', { torque: '80 N·m', bench: 'B-01 A' })
    expect(answerSchema.safeParse(answer).error).toBeUndefined()
    expect(answer.status).toBe('answered')
    const k = answer.given.find(({ input }) => input === 'k')
    expect(k).toMatchObject({ from: 'bench' })
    expect(k?.value).toBeCloseTo(0.1996, 4)
    expect(answer.given.find(({ input }) => input === 'size')).toMatchObject({ from: 'bench', text: 'M12' })
    const force = numberOf(answer.results['clamp-force'])
    // 80 N·m/(K 12 mm): with the ends of K of the next bolt.
    expect(force.value).toBeCloseTo(80 / 0.1996 / 12, 1)
    expect(force.low as number).toBeCloseTo(80 / (k?.high as number) / 12, 2)
    expect(force.high as number).toBeCloseTo(80 / (k?.low as number) / 12, 2)
    expect(answer.cautions[0]).toMatchObject({ code: 'bench-factor' })
    expect(answer.cautions[0]?.text).toMatch(/^K was measured here, B-01 \(A\): 0\.1996, .* n = 5, 2026-05-01, M12\./)
    expect(answer.sources[0]).toEqual({
      title: 'B-01: Does oil on the thread change the clamp force?',
      where: '2026-05-01, n = 5, M12, W-07',
      standing: 'measured here',
    })
    // What was measured here is not mixed with the tables: none of their nut factors is cited.
    const plain = testDesk().ask('clamp-force', { torque: '80 N·m', size: 'M12', condition: 'dry' }, { door: 'http' })
    const ofTables = plain.sources.filter(({ title }) => !answer.sources.some((one) => one.title === title))
    expect(ofTables.length).toBeGreaterThan(0)
  })

  it('the highest torque is by the slipperiest next bolt, never by the mean', async () => {
    const ask = await desk()
    const answer = await ask('bolt-torque', { class: '8.8', bench: 'b-01 b' })
    const [k] = answer.given.filter(({ input }) => input === 'k')
    const highest = numberOf(answer.results['highest-torque'])
    const clamp = numberOf(answer.results['clamp-force'])
    expect(highest.value).toBeCloseTo((k?.low as number) * 0.012 * (clamp.high as number) * 1000, 1)
    expect(highest.value).toBeLessThan(numberOf(answer.results['torque']).value)
  })

  it('two conditions, named in their order, for what oil does; the other way round it is the other way round', async () => {
    const ask = await desk()
    const asked = { torque: '80 N·m', from: 'dry', to: 'oiled' }
    const answer = await ask('lubricant', { ...asked, bench: 'B-01 A; B-01 B' })
    expect(answer.status).toBe('answered')
    expect(numberOf(answer.results['reduced-torque']).value).toBeCloseTo((80 * 33.4) / 37.6, 0)
    expect(answer.given.filter(({ from }) => from === 'bench').map(({ input }) => input)).toEqual(['k-from', 'k-to'])
    // Never above the asked one for what is slipperier by name, whatever was typed.
    const back = await ask('lubricant', { ...asked, bench: 'B-01 B; B-01 A' })
    expect(numberOf(back.results['reduced-torque']).value).toBeLessThanOrEqual(80)
  })

  it('is cited beside a topic, with its sign and its ends', async () => {
    const ask = await desk()
    const answer = await ask('does-it-matter', { topic: 'oil', bench: 'B-01' })
    expect(answer.cautions[0]?.text).toMatch(
      /^Measured here, B-01: B against A 12\.57 % \(\d.*\), which matters \(±4 %\); n = 10, 2026-05-01\.$/,
    )
    expect(answer.sources[0]).toMatchObject({ standing: 'measured here' })
  })

  it('what the asker tells goes before, and another size is told', async () => {
    const ask = await desk()
    const answer = await ask('clamp-force', { torque: '80 N·m', size: 'M10', bench: 'B-01 A' })
    expect(answer.given.find(({ input }) => input === 'size')).toMatchObject({ from: 'asked' })
    expect(answer.cautions.map(({ code }) => code)).toContain('bench-other-size')
    const own = await ask('clamp-force', { torque: '80 N·m', k: '0.15', bench: 'B-01 A' })
    expect(own.given.find(({ input }) => input === 'k')).toMatchObject({ from: 'asked', value: 0.15 })
    expect(own.cautions.map(({ code }) => code)).not.toContain('bench-factor')
  })
})

describe('what is refused', () => {
  const underWay = async (shop: ReturnType<typeof testShop>): Promise<void> => {
    await beginOil(shop)
    await addReadings(shop, 'A', dry)
    await addReadings(shop, 'B', oiled)
  }
  it.each<[string, QuestionName, Record<string, string>, string]>([
    ['no such run', 'clamp-force', { torque: '80 N·m', bench: 'B-9' }, 'not-in-register'],
    ['a run of several conditions without one', 'clamp-force', { torque: '80 N·m', bench: 'B-01' }, 'two-readings'],
    ['a condition that is none', 'clamp-force', { torque: '80 N·m', bench: 'B-01 C' }, 'not-allowed'],
    ['two runs for one number', 'clamp-force', { torque: '80 N·m', bench: 'B-01 A; B-01 B' }, 'too-many'],
    [
      'one run for two numbers',
      'lubricant',
      { torque: '80 N·m', from: 'dry', to: 'oiled', bench: 'B-01 A' },
      'too-few',
    ],
    ['a name that is none', 'clamp-force', { torque: '80 N·m', bench: '?' }, 'not-allowed'],
    [
      'a condition of the tables beside it',
      'clamp-force',
      { torque: '80 N·m', condition: 'dry', bench: 'B-01 A' },
      'conflict',
    ],
  ])('%s', async (_name, question, raw, code) => {
    const answer = await (await desk())(question, raw)
    expect(answer.status).toBe('refused')
    expect(answer.faults.map((one) => one.code)).toContain(code)
  })

  it('a run that goes on, one without clamp forces, and a desk that keeps none', async () => {
    const asked = { torque: '80 N·m', size: 'M12', bench: 'B-01 A' }
    expect((await (await desk(underWay))('clamp-force', asked)).faults[0]?.hint).toContain('still goes on')
    const torques = await desk(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', { torque: '80; 81 N·m' })
      await shop.keep('run-finish', { run: 'B-01', date: '2026-05-02' }, { role: 'keeper', door: 'http' })
    })
    expect((await torques('clamp-force', asked)).faults[0]?.hint).toContain('no nut factor')
    expect(testDesk().ask('clamp-force', asked, { door: 'http' }).faults[0]?.hint).toContain('No bench runs')
  })
})

describe('a nut factor of one’s own', () => {
  it.each(['0.18 to 0.22', '0.18–0.22', '0.2 ± 0.02', '0,18 - 0,22'])('may be a span: %s', (k) => {
    const answer = testDesk().ask('clamp-force', { torque: '80 N·m', size: 'M12', k }, { door: 'http' })
    const force = numberOf(answer.results['clamp-force'])
    expect(force.low as number).toBeCloseTo(80 / 0.22 / 12, 2)
    expect(force.high as number).toBeCloseTo(80 / 0.18 / 12, 2)
  })

  it.each(['0.2 ± 0.3', '0.01 to 0.2', '0.2 to 1.4', '0.3 to 0.2'])('within sense: not %s', (k) => {
    expect(testDesk().ask('clamp-force', { torque: '80 N·m', size: 'M12', k }, { door: 'http' }).status).toBe('refused')
  })
})

describe('a reference to a run', () => {
  it.each<[string, number | undefined]>([
    ['B-01', 1],
    ['B-01 dry, as delivered', 1],
    ['B-01 A; B-01 B', 2],
    ['', undefined],
    ['B-01;', undefined],
    ['A; B; C', undefined],
    ['-x', undefined],
    [`${'B'.repeat(25)}`, undefined],
  ])('%j', (text, count) => {
    const read = parseRunReferences([text], 'bench', 2)
    expect(read.ok ? read.value.length : undefined).toBe(count)
  })
})
