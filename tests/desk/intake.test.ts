// Reading a sheet in: all or nothing, every fault by its line, nothing twice; and what went out comes in as the same record.
import { describe, expect, it } from 'vitest'
import { fillDemo } from '../../src/demo/fill.ts'
import { kilnLane } from '../../src/demo/kiln-lane.ts'
import type { Intake } from '../../src/desk/intake.ts'
import type { Shop, Writer } from '../../src/desk/shop.ts'
import { sheetHead, sheetRow } from '../../src/keeping/sheet.ts'
import type { Entry } from '../../src/register/records.ts'
import { testShop } from '../support/doors.ts'

const who: Writer = { role: 'import', door: 'terminal' }
const all = async (shop: Shop): Promise<Entry[]> => (await shop.since(0, 10_000)).map(({ entry }) => entry)
const sheetOf = (entries: readonly Entry[]): string => sheetHead() + entries.map(sheetRow).join('')
const told = (read: Intake): string[] =>
  read.kind === 'refused' ? read.faults.map(({ line, fault }) => `${line} ${fault.input}: ${fault.tell}`) : []
const board = async (shop: Shop) =>
  (await shop.board(200)).rows.map(({ folder, status }) => [folder.tag, status.status, status.reasons[0].code])

const own =
  'kind,tag,name,wrench-type,most,wrench,what,date\nwrench,W-1,Small,click,25 N·m,,,\nevent,,,,,W-1,dropped,2026-05-01\n'

describe('a sheet read in', () => {
  it('is tried first without keeping anything, then kept, then known', async () => {
    const shop = testShop()
    expect(await shop.takeIn(own, who, true)).toEqual({ kind: 'read', fresh: 2, again: 0, kept: false })
    expect(await all(shop)).toEqual([])
    expect(await shop.takeIn(own, who, false)).toEqual({ kind: 'read', fresh: 2, again: 0, kept: true })
    expect(await board(shop)).toEqual([['W-1', 'check-before-use', 'dropped']])
    expect(await shop.takeIn(own, who, false)).toEqual({ kind: 'read', fresh: 0, again: 2, kept: true })
    const longer = `${own}event,,,,,W-1,repaired,2026-05-03\n`
    expect(await shop.takeIn(longer, who, false)).toEqual({ kind: 'read', fresh: 1, again: 2, kept: true })
    expect((await all(shop)).length).toBe(3)
  })

  it('tells every fault with its line, and keeps nothing of it', async () => {
    const shop = testShop()
    const bad = `${own}wrench,W-1,Twice,click,25 N·m,,,\nwrench,W-2,,click,25,,,\nevent,,,,,W-9,dropped,2027-01-01\n`
    const read = await shop.takeIn(bad, who, false)
    expect(told(read)).toEqual([
      '4 tag: tag-taken',
      '5 most: unit-missing',
      '5 name: sheet-missing',
      '6 wrench: no-such-wrench',
      '6 date: day-ahead',
    ])
    expect(await all(shop)).toEqual([])
  })

  it('lets others have a turn while it is long', async () => {
    const rows = Array.from({ length: 400 }, (_, n) => `wrench,W-${n},Small,click,25 N·m`)
    let turns = 0
    const timer = setInterval(() => turns++, 0)
    await testShop().takeIn(['kind,tag,name,wrench-type,most', ...rows].join('\n'), who, true)
    clearInterval(timer)
    expect(turns).toBeGreaterThan(5)
  })

  it('two rows alike are no two entries in silence: they are told with their lines, or have keys of their own', async () => {
    const shop = testShop()
    const row = 'event,,,,,W-1,dropped,2026-05-01'
    const twice = `${own}${row}\n`
    for (const dry of [true, false]) expect(told(await shop.takeIn(twice, who, dry))).toEqual(['4 : sheet-twice'])
    const [fault] = ((await shop.takeIn(twice, who, true)) as Extract<Intake, { kind: 'refused' }>).faults
    expect(fault?.fault.facts).toEqual({ line: '3' })
    const keyed = (...keys: readonly string[]) =>
      ['kind,tag,name,wrench-type,most,wrench,what,date,key', 'wrench,W-1,Small,click,25 N·m,,,,']
        .concat(keys.map((key) => `${row},${key}`))
        .join('\n')
    expect(await shop.takeIn(keyed('k1', 'k2', 'k1'), who, false)).toMatchObject({ fresh: 3, again: 1 })
    expect(await shop.takeIn(keyed('k1', 'k2', 'k1'), who, false)).toMatchObject({ fresh: 0, again: 4 })
    const other = `${keyed('k3')}\nevent,,,,,W-1,dropped,2026-05-02,k3`
    expect(told(await shop.takeIn(other, who, true))).toEqual(['4 key: key-taken'])
  })

  it('one id twice is told with its line, in the dry run as well', async () => {
    const from = testShop()
    await fillDemo(from)
    const [first, second] = await all(from)
    const sheet = sheetOf([first as Entry, { ...(second as Entry), id: first?.id ?? '' } as Entry])
    for (const dry of [true, false])
      expect(told(await testShop().takeIn(sheet, who, dry))).toEqual(['3 id: sheet-twice'])
  })

  it('of entries that were recorded later than now is not read', async () => {
    const from = testShop()
    await fillDemo(from)
    const [first] = await all(from)
    const at = (instant: string) => testShop().takeIn(sheetOf([{ ...(first as Entry), at: instant }]), who, true)
    expect(told(await at('2026-06-02T00:00:00.000Z'))).toEqual(['2 at: sheet-head'])
    expect(await at('2026-06-01T10:04:00.000Z')).toMatchObject({ fresh: 1 })
  })

  it('sent five times at once is kept once, and four times there already', async () => {
    const shop = testShop()
    const more = `${own}event,,,,,W-1,repaired,2026-05-03\n`
    const reads = await Promise.all(Array.from({ length: 5 }, () => shop.takeIn(more, who, false)))
    expect(reads.filter((read) => read.kind === 'read' && read.fresh === 3)).toHaveLength(1)
    expect(reads.filter((read) => read.kind === 'read' && read.again === 3)).toHaveLength(4)
    expect((await all(shop)).length).toBe(3)
  })

  it('with many rows of one wrench takes about as long as with many wrenches, and judges each row by those before', async () => {
    const rows = (count: number) =>
      Array.from({ length: count }, (_, n) => `uses,W-1,,,,2026-05-01,${n},count`).join('\n')
    const head = 'kind,wrench,tag,name,wrench-type,date,count,since,most,what\nwrench,,W-1,Small,click,,,,25 N·m,\n'
    const took = async (count: number): Promise<number> => {
      const begun = performance.now()
      expect(await testShop().takeIn(head + rows(count), who, true)).toMatchObject({ fresh: count + 1 })
      return performance.now() - begun
    }
    await took(200)
    const short = await took(500)
    // Eight times the rows took sixty times as long where each folded all those before it.
    expect(await took(4000)).toBeLessThan(short * 25)
    const late = `${head}${rows(3)}\nevent,W-1,,,,2026-05-01,,,,retired\n${rows(1)}9`
    expect(told(await testShop().takeIn(late.replace(/0,count9$/, '9,count'), who, true))).toEqual([
      '7 wrench: wrench-retired',
    ])
  }, 60_000)

  it('is for a keeper or an import, not for a mechanic', async () => {
    expect((await testShop().takeIn(own, { role: 'mechanic', door: 'http' }, false)).kind).toBe('forbidden')
  })

  it('what went out comes in as the same record, corrections and withdrawals too, and the wrenches stand alike', async () => {
    const [from, to] = [testShop(), testShop()]
    await fillDemo(from)
    const [first] = await all(from)
    await from.keep('event', { wrench: 'W-01', what: 'dropped', date: '2026-05-01' }, { role: 'keeper', door: 'chat' })
    const event = (await all(from)).at(-1)?.id ?? ''
    await from.keep('withdrawal', { supersedes: event, why: 'it was another one' }, { role: 'keeper', door: 'chat' })
    const entries = await all(from)
    expect(await to.takeIn(sheetOf(entries), who, false)).toMatchObject({ kind: 'read', fresh: entries.length })
    expect(await all(to)).toEqual(entries)
    expect(sheetOf(await all(to))).toBe(sheetOf(entries))
    expect(await board(to)).toEqual(await board(from))
    expect(await to.takeIn(sheetOf(entries), who, false)).toMatchObject({ fresh: 0, again: entries.length })
    expect(first?.by).toEqual({ role: 'keeper', door: 'terminal' })
  })

  it('what was kept at the edge of what is taken goes out and comes in again', async () => {
    const from = testShop()
    const keeper: Writer = { role: 'keeper', door: 'http' }
    const card = {
      tag: 'W-1',
      name: 'Small',
      'wrench-type': 'click',
      most: '25 N·m',
      pivot: '0 mm',
      'pivot-found': 'told',
    }
    expect((await from.keep('wrench', card, keeper)).kind).toBe('kept')
    const check = {
      wrench: 'W-1',
      date: '2026-05-01',
      way: 'tester',
      state: 'as-found',
      points: '20 N·m: 20 N·m',
      temperature: '0.0000001 °C',
      notes: 'two\nlines',
    }
    expect((await from.keep('check', check, keeper)).kind).toBe('kept')
    const entries = await all(from)
    const to = testShop()
    expect(await to.takeIn(sheetOf(entries), who, false)).toMatchObject({ fresh: 2 })
    expect(await all(to)).toEqual(entries)
  })

  it('an id that stands for something else is a slip', async () => {
    const shop = testShop()
    await fillDemo(shop)
    const [first] = await all(shop)
    const changed = { ...(first as Entry), body: { ...(first as Entry).body, name: 'Another' } } as Entry
    expect(told(await shop.takeIn(sheetOf([changed]), who, false))).toEqual(['2 id: key-taken'])
  })
})

describe('the demo shop', () => {
  it('is a dozen wrenches in every state but one, with months of checks, whatever day it is', async () => {
    for (const today of ['2026-06-01', '2026-11-25', '2028-02-29']) {
      const shop = testShop(today)
      await fillDemo(shop)
      const states = new Map((await board(shop)).map(([tag, status]) => [tag, status]))
      expect(states.size).toBe(12)
      for (const state of ['in-service', 'check-due', 'check-before-use', 'set-aside', 'retired'])
        expect([...states.values()], `${today} ${state}`).toContain(state)
      const checks = kilnLane(today).filter(({ kind }) => kind === 'check')
      expect(checks.length).toBeGreaterThan(35)
    }
  })

  it('is the same every time', () => expect(kilnLane('2026-06-01')).toEqual(kilnLane('2026-06-01')))
})
