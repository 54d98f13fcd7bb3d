// Free text that names a wrench of the shop by its tag gets what the question with that wrench gets; a word that only looks like a tag
// changes nothing.
import { beforeAll, describe, expect, it } from 'vitest'
import { readText } from '../../src/asking/read-text.ts'
import { askKnowing, askTextKnowing, createDesk, type Desk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import type { TagOf } from '../../src/desk/named-wrench.ts'
import { tagOfIn } from '../../src/desk/named-wrench.ts'
import type { Shop } from '../../src/desk/shop.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import type { Answer } from '../../src/questions/answer.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { testHttp, testShop } from '../support/doors.ts'

const asker = { door: 'terminal' } as const
const who = { role: 'keeper', door: 'http' } as const
const base = { name: 'Half-inch click wrench', 'wrench-type': 'click', most: '200 N·m', lever: '400 mm' }

let shop: Shop
let desk: Desk
let alone: Desk
const deskWith = (tagOf?: TagOf): Desk =>
  createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop), ...(tagOf ? { tagOf } : {}) })

beforeAll(async () => {
  shop = testShop()
  for (const tag of ['W-03', 'W-07', 'tw300', 'M12', 'BLUE'])
    await shop.keep('wrench', { ...base, tag, tolerance: '3 %' }, { ...who, key: tag })
  desk = deskWith(tagOfIn(shop))
  alone = deskWith()
})

const asked = async (text: string): Promise<Answer> => askTextKnowing(desk, text, asker)
const truth = async (question: QuestionName, raw: object): Promise<Answer> => askKnowing(desk, question, raw, asker)

const setting = { torque: '95 N·m', adapter: '45 mm', angle: '30°', wrench: 'W-03' }

describe('a text that names a wrench of the shop', () => {
  it.each([
    'W-03, 45 mm crowfoot at 30°, 95 Nm, what do I set?',
    'w-03: what do I set for 95 Nm with a 45 mm crowfoot at 30°?',
    'what do I set on W–03 with a 45 mm crowfoot at 30°, 95 Nm',
    '95 Nm with a 45 mm crowfoot at 30°, what do I set on W-03.',
    '"W-03" 45 mm crowfoot at 30°, 95 Nm, what do I set on W-03?',
    'W-03, Krähenfuß 45 mm unter 30°, 95 Nm, was stelle ich ein?',
  ])('%s', async (text) => {
    const answer = await asked(text)
    const told = await truth('adapter-setting', setting)
    expect([answer.question, answer.status]).toEqual(['adapter-setting', 'answered'])
    expect(answer.results).toEqual(told.results)
    expect(answer.cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(['check-due', 'never-checked']))
    expect(answer.reading?.taken).toContainEqual(expect.objectContaining({ input: 'wrench', text: 'W-03' }))
    expect(answer.reading?.ignored).toEqual([])
    expect(answer.given.find(({ input }) => input === 'lever')).toEqual(
      told.given.find(({ input }) => input === 'lever'),
    )
  })

  it('whose tag holds a number keeps that number out of the question', async () => {
    const answer = await asked('on tw300 with a 45 mm crowfoot at 30°, 95 Nm, what do I set?')
    expect(answer.results).toEqual((await truth('adapter-setting', { ...setting, wrench: 'tw300' })).results)
    expect(answer.reading?.taken[0]).toEqual({ span: 'tw300', input: 'wrench', text: 'tw300' })
  })

  it('is told what the text itself says of the wrench, before the register', async () => {
    const answer = await asked('W-03, 380 mm wrench, 45 mm crowfoot at 30°, 95 Nm, what do I set?')
    expect(answer.results).toEqual((await truth('adapter-setting', { ...setting, lever: '380 mm' })).results)
  })

  it('is asked what is missing besides', async () => {
    const answer = await asked('W-03, 95 Nm with a crowfoot, what do I set?')
    expect([answer.question, answer.status]).toEqual(['adapter-setting', 'incomplete'])
    expect(answer.missing.map(({ input }) => input)).toEqual(['adapter'])
  })

  it('offers its other readings with that wrench', async () => {
    const answer = await asked('W-03, 95 Nm with a 45 mm crowfoot on it')
    const others = answer.reading?.alternatives ?? []
    expect(others.length).toBeGreaterThan(0)
    for (const { inputs } of others) expect(inputs['wrench']).toBe('W-03')
  })

  it('gets it over HTTP, on the page and in the terminal', async () => {
    const text = 'W-03, 45 mm crowfoot at 30°, 95 Nm, what do I set?'
    const { headline } = await truth('adapter-setting', setting)
    const http = await testHttp(desk)
    const reply = await http.inject(`/v1/ask?${new URLSearchParams({ text })}`)
    expect(reply.json<Answer>().headline).toBe(headline)
    const page = await http.inject(`/ask?${new URLSearchParams({ text })}`)
    expect(page.body).toContain(headline)
    await http.close()
    const lines: string[] = []
    const io = { out: (line: string) => lines.push(line), err: (line: string) => lines.push(line) }
    expect(await runTerminal([text], desk, io)).toBe(0)
    expect(lines).toContain(headline)
  })
})

describe('a word that is no tag of the shop changes nothing', () => {
  it.each([
    'W-99, 45 mm crowfoot at 30°, 380 mm wrench, 95 Nm, what do I set?',
    'my QD3R200 with a 3 in crowfoot on 18 in, 75 lb-ft',
    'TW-1000 XL, 45 mm crowfoot, 95 Nm, what do I set?',
    'M12 8.8 bolt at 80 Nm, what clamp force?',
    'what do I set on BLUE for 95 Nm with a 45 mm crowfoot, 380 mm?',
    '75 lb-ft, 18 in wrench, 3 in crowfoot straight',
    'W-03 or W-07, 45 mm crowfoot at 30°, 95 Nm, what do I set?',
    'convert 300 kgf·cm to Nm, W-03 says',
    'hello W-03',
  ])('%s', async (text) => expect(await asked(text)).toEqual(await askTextKnowing(alone, text, asker)))

  it('nor does a register that is away, slow, or not there', async () => {
    const text = 'W-03, 45 mm crowfoot at 30°, 95 Nm, what do I set?'
    const without = await askTextKnowing(alone, text, asker)
    expect(without.status).toBe('incomplete')
    const away = deskWith(() => Promise.reject(new Error('away')))
    expect(await askTextKnowing(away, text, asker)).toEqual(without)
    const start = performance.now()
    expect(
      await askTextKnowing(
        deskWith(() => new Promise(() => {})),
        text,
        asker,
      ),
    ).toEqual(without)
    expect(performance.now() - start).toBeLessThan(1500)
  })

  it('looks up a few words at most, and none of a text that is not read', async () => {
    const looked: string[] = []
    const counting = deskWith(async (word) => {
      looked.push(word)
      return undefined
    })
    await askTextKnowing(counting, `${Array.from({ length: 200 }, (_, n) => `x${n}`).join(' ')} 95 Nm`, asker)
    expect(looked).toEqual(['x0', 'x1', 'x2', 'x3', 'x4', 'x5'])
    looked.length = 0
    for (const text of ['95 Nm and M10x1.5, A2-70', '', 'W-03 '.repeat(3000), 7, undefined])
      await askTextKnowing(counting, text, asker)
    expect(looked).toEqual([])
  })

  it('is the reader’s own matter no more than before', () => {
    expect(readText('W-03, 45 mm crowfoot at 30°, 95 Nm, what do I set?').inputs['wrench']).toBeUndefined()
  })
})
