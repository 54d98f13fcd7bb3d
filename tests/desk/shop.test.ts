// The shop's register behind the desk: what is kept, what is refused, and what a wrench lends to a question.
import { describe, expect, it } from 'vitest'
import { Outage } from '../../src/core/outage.ts'
import { askKnowing, createDesk } from '../../src/desk/desk.ts'
import { lenderOf } from '../../src/desk/lend.ts'
import { createShop, type Keeping, type Shop, type Writer } from '../../src/desk/shop.ts'
import type { Answer } from '../../src/questions/answer.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { memoryStore } from '../../src/store/memory.ts'
import { testShop } from '../support/doors.ts'

const keeper: Writer = { role: 'keeper', door: 'terminal' }
const mechanic: Writer = { role: 'mechanic', door: 'terminal' }
const card = {
  tag: 'W-07',
  name: 'Half-inch click wrench',
  'wrench-type': 'click',
  most: '200 N·m',
  least: '40 N·m',
  lever: '400 mm',
  tolerance: '3 %',
  place: 'Bay 2',
}
const good =
  '40 N·m: 40; 40; 40; 40; 40 N·m | 120 N·m: 121; 120; 120; 120; 120 N·m | 200 N·m: 201; 200; 200; 200; 200 N·m'
const bad = '100 N·m: 82; 82.5; 83; 82; 82 N·m'

const kept = (one: Keeping): string => {
  if (one.kind !== 'kept') throw new Error(JSON.stringify(one))
  return one.entry.id
}
const withWrench = async (more: Record<string, string> = {}): Promise<Shop> => {
  const shop = testShop()
  kept(await shop.keep('wrench', { ...card, ...more }, keeper))
  return shop
}
const check = (points: string, date = '2026-05-01') => ({
  wrench: 'w-07',
  date,
  way: 'tester',
  state: 'as-found',
  points,
  'gauge-uncertainty': '0.5 %',
})
const ask = (shop: Shop, question: QuestionName, raw: Record<string, string>): Promise<Answer> =>
  Promise.resolve(
    askKnowing(createDesk({ system: 'metric', locale: 'en', borrow: lenderOf(shop) }), question, raw, {
      door: 'terminal',
    }),
  )
const codes = ({ cautions }: Answer): string[] => cautions.map(({ code }) => code)
const statusOf = async (shop: Shop) => (await shop.board(10)).rows[0]?.status.status

describe('keeping', () => {
  it('tells everything that is wrong or missing at once, and writes nothing', async () => {
    const shop = testShop()
    const refused = await shop.keep('wrench', { tag: 'W 7', most: '200', lever: '400 mm' }, keeper)
    expect(refused).toMatchObject({ kind: 'refused', missing: ['name', 'wrench-type'] })
    expect(refused.kind === 'refused' && refused.faults.map(({ input }) => input)).toEqual(['tag', 'most'])
    expect(await shop.since(0, 10)).toEqual([])
  })

  it('is a table of rights', async () => {
    const shop = await withWrench()
    expect((await shop.keep('wrench', { ...card, tag: 'W-08' }, mechanic)).kind).toBe('forbidden')
    expect((await shop.keep('check', check(good), mechanic)).kind).toBe('kept')
    expect((await shop.keep('withdrawal', { supersedes: 'e-1', why: 'typo' }, mechanic)).kind).toBe('forbidden')
  })

  it('takes a tag once, and a wrench that there is', async () => {
    const shop = await withWrench()
    const again = await shop.keep('wrench', { ...card, tag: 'w-07' }, keeper)
    expect(again.kind === 'refused' && again.faults.map(({ tell }) => tell)).toEqual(['tag-taken'])
    const nobody = await shop.keep('check', { ...check(good), wrench: 'W-99' }, keeper)
    expect(nobody.kind === 'refused' && nobody.faults.map(({ tell }) => tell)).toEqual(['no-such-wrench'])
  })

  it('knows what it has kept by its key, and refuses another entry under it', async () => {
    const shop = await withWrench()
    const one = await shop.keep('check', check(good), { ...mechanic, key: 'k-1' })
    const same = await shop.keep('check', check(good), { ...mechanic, key: 'k-1' })
    expect(one).toMatchObject({ kind: 'kept', again: false })
    expect(same).toMatchObject({ kind: 'kept', again: true, entry: { id: kept(one) } })
    const other = await shop.keep('check', check(bad), { ...mechanic, key: 'k-1' })
    expect(other.kind === 'refused' && other.faults.map(({ tell }) => tell)).toEqual(['key-taken'])
    expect(await shop.since(0, 10)).toHaveLength(2)
  })

  it('dates what was never checked by the day of the shop, wherever the clock is', async () => {
    const now = () => new Date('2026-06-01T02:30:00Z')
    const shop = createShop({ store: memoryStore(), now, id: () => 'e-1', timeZone: 'America/Chicago' })
    kept(await shop.keep('wrench', card, keeper))
    const reason = { code: 'never-checked', date: '2026-05-31' }
    expect((await shop.board(1)).rows[0]?.status.reasons).toMatchObject([reason])
    expect((await shop.wrench('W-07'))?.row.status.reasons).toMatchObject([reason])
    expect((await shop.lists.list('never', 1)).rows[0]?.status.reasons).toMatchObject([reason])
  })

  it('that fails under it is known as a failure to keep, at every door', async () => {
    const broken = createShop({
      store: { ...memoryStore(), append: () => Promise.reject(new Outage('disk-full', 'no room')) },
      now: () => new Date('2026-06-01T10:00:00Z'),
      id: () => 'e-1',
      timeZone: 'UTC',
    })
    const sheet = 'tag,name,wrench-type,most\nW-1,Small,click,25 N·m\n'
    const unkept = { name: 'Outage', code: 'disk-full', isWriting: true, isSurelyUnkept: true }
    await expect(broken.keep('wrench', card, keeper)).rejects.toMatchObject(unkept)
    await expect(broken.takeIn(sheet, keeper, false)).rejects.toMatchObject(unkept)
    expect(new Outage('unreachable', 'gone')).toMatchObject({ isWriting: false, isSurelyUnkept: false })
  })

  it('keeps all of many writers at once', async () => {
    const shop = await withWrench()
    const days = Array.from({ length: 5 }, (_, n) => `2026-05-0${n + 1}`)
    const all = await Promise.all(days.map((day) => shop.keep('check', check(good, day), mechanic)))
    const sure = all.filter(({ kind }) => kind === 'kept')
    // Whoever was overtaken too often is told so; nobody's entry is lost or doubled.
    expect((await shop.wrench('W-07'))?.row.folder.checks).toHaveLength(sure.length)
    expect(sure.length).toBeGreaterThan(0)
    for (const one of all) if (one.kind === 'refused') expect(one.faults[0]?.tell).toBe('others-write')
  })

  it('corrects a card and takes a check back; the board follows', async () => {
    const shop = await withWrench()
    expect(await statusOf(shop)).toBe('check-due')
    const wrong = kept(await shop.keep('check', check(bad), mechanic))
    expect(await statusOf(shop)).toBe('out-of-limit')
    kept(await shop.keep('withdrawal', { supersedes: wrong, why: 'read off the wrong scale' }, keeper))
    expect(await statusOf(shop)).toBe('check-due')
    kept(await shop.keep('check', check(good), mechanic))
    expect(await statusOf(shop)).toBe('in-service')
    kept(await shop.keep('event', { wrench: 'W-07', what: 'dropped', date: '2026-05-20' }, mechanic))
    expect(await statusOf(shop)).toBe('check-before-use')
    const found = await shop.wrench('w-07')
    expect(found?.row.status.status).toBe('check-before-use')
    kept(await shop.keep('wrench', { ...card, place: 'Bay 3', supersedes: 'e-1', why: 'it moved' }, keeper))
    expect((await shop.board(10)).rows[0]?.folder.card.entry.body.place).toBe('Bay 3')
    expect(await statusOf(shop)).toBe('check-before-use')
  })
})

describe('a question that names a wrench', () => {
  const asked = { torque: '120 N·m', adapter: '45 mm@0', wrench: 'W-07' }

  it('is answered with its lever, marked as from the register', async () => {
    const answer = await ask(await withWrench(), 'adapter-setting', asked)
    const told = await ask(testShop(), 'adapter-setting', {
      torque: '120 N·m',
      adapter: '45 mm@0',
      lever: '400 mm',
      'wrench-type': 'click',
      tolerance: '3 %',
      least: '40 N·m',
      most: '200 N·m',
    })
    expect(answer.results).toEqual(told.results)
    const lent = answer.given.filter(({ from }) => from === 'register').map(({ input }) => input)
    expect(lent).toEqual(['lever', 'wrench-type', 'tolerance', 'least', 'most'])
  })

  it("takes the asker's own word before the register's", async () => {
    const answer = await ask(await withWrench(), 'adapter-setting', { ...asked, lever: '300 mm' })
    expect(answer.given.find(({ input }) => input === 'lever')).toMatchObject({ text: '300 mm', from: 'asked' })
  })

  it('leads with what its status says, and tells the last check without applying it', async () => {
    const shop = await withWrench()
    expect(codes(await ask(shop, 'adapter-setting', asked)).slice(0, 2)).toEqual(['check-due', 'never-checked'])
    const before = (await ask(shop, 'adapter-setting', asked)).results
    kept(await shop.keep('check', check(bad), mechanic))
    const answer = await ask(shop, 'adapter-setting', asked)
    expect(codes(answer).slice(0, 3)).toEqual(['out-of-limit', 'failed-on', 'last-check'])
    expect(answer.cautions[2]?.text).toMatch(/on 2026-05-01, it was 22 % low \(gives less\) at 100 N·m/)
    expect(answer.results).toEqual(before)
    kept(await shop.keep('event', { wrench: 'W-07', what: 'retired', date: '2026-05-20' }, keeper))
    expect(codes(await ask(shop, 'adapter-setting', asked))[0]).toBe('wrench-not-to-be-used')
  })

  it('is refused where there is no such wrench, or no register', async () => {
    const nobody = await ask(await withWrench(), 'adapter-setting', { ...asked, wrench: 'W-99' })
    expect(nobody.faults.map(({ code, input }) => [code, input])).toEqual([['not-in-register', 'wrench']])
    const alone = createDesk({ system: 'metric', locale: 'en' }).ask('adapter-setting', asked, { door: 'terminal' })
    expect(alone.faults.map(({ code, input }) => [code, input])).toContainEqual(['not-allowed', 'wrench'])
  })

  it('asks back what the card does not hold', async () => {
    const shop = testShop()
    const { lever: _, ...rest } = card
    kept(await shop.keep('wrench', rest, keeper))
    expect((await ask(shop, 'adapter-setting', asked)).missing.map(({ input }) => input)).toEqual(['lever'])
  })

  it('of full scale lends its tolerance only where that can be said', async () => {
    const shop = await withWrench({ tolerance: '4 % of full scale' })
    const band = await ask(shop, 'tolerance-band', { setting: '100 N·m', wrench: 'W-07' })
    expect(band.results['torque']).toMatchObject({ low: 92, high: 108 })
    const setting = await ask(shop, 'adapter-setting', asked)
    expect(setting.given.find(({ input }) => input === 'tolerance')).toMatchObject({ from: 'assumed' })
    expect(setting.cautions.find(({ code }) => code === 'tolerance-of-scale')?.text).toMatch(/4 % of full scale/)
    expect(codes(band)).not.toContain('tolerance-of-scale')
    const told = await ask(shop, 'adapter-setting', { ...asked, tolerance: '6 %' })
    expect(codes(told)).not.toContain('tolerance-of-scale')
  })

  it('waits for a silent register no longer than a second', async () => {
    const shop = { ...testShop(), wrench: () => new Promise<never>(() => undefined) }
    await expect(ask(shop, 'adapter-setting', asked)).rejects.toMatchObject({ name: 'Outage', code: 'unreachable' })
  })
})
