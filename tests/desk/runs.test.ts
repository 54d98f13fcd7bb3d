// Bench runs through the one gate and through every store: what is taken and refused, what stands, out as a sheet and in again.
import { describe, expect, it } from 'vitest'
import { createShop, type Shop, type Writer } from '../../src/desk/shop.ts'
import { sheetHead, sheetRow } from '../../src/keeping/sheet.ts'
import type { Kind } from '../../src/register/records.ts'
import type { Store } from '../../src/store/store.ts'
import { testShop } from '../support/doors.ts'
import { onEveryStore } from '../support/stores.ts'

const keeper: Writer = { role: 'keeper', door: 'terminal' }
const mechanic: Writer = { role: 'mechanic', door: 'chat' }

type Raw = Readonly<Record<string, string | readonly string[]>>
const opening: Raw = {
  tag: 'B-01',
  date: '2026-05-01',
  asked: 'Does oil on the thread change the clamp force?',
  conditions: 'A: dry, as delivered | B: oil on thread; seat dry',
  same: ['one washer a bolt', 'pulled by one hand'],
  wrench: 'W-07',
  size: 'M12',
  class: '8.8',
  seat: 'flat 18 mm x 13.5 mm',
  again: '6; 1; 3 months',
}
const first: Raw = {
  run: 'b-01',
  condition: 'a',
  date: '2026-05-01',
  torque: '80; 80; 81 N·m',
  'clamp-force': '33,1; 34; 33.6 kN',
  piece: '1; 2; 3',
}

const filled = async (shop: Shop): Promise<Shop> => {
  await shop.keep('wrench', { tag: 'W-07', name: 'Click wrench', 'wrench-type': 'click', most: '200 N·m' }, keeper)
  expect((await shop.keep('run', opening, mechanic)).kind).toBe('kept')
  return shop
}

const faultsOf = async (shop: Shop, kind: Kind, raw: Raw, who: Writer = keeper): Promise<string[]> => {
  const kept = await shop.keep(kind, raw, who)
  return kept.kind === 'refused' ? [...kept.faults.map(({ tell }) => tell), ...kept.missing] : [kept.kind]
}

const idOf = async (shop: Shop, kind: Kind, raw: Raw): Promise<string> => {
  const kept = await shop.keep(kind, raw, keeper)
  if (kept.kind !== 'kept') throw new Error(JSON.stringify(kept))
  return kept.entry.id
}

describe('what a run takes', () => {
  it('an opening as it was typed, its diameter by its size, its months in order', async () => {
    const shop = await filled(testShop())
    const found = await shop.runs.one('b-01')
    expect(found?.folder.opening.entry.body).toEqual({
      tag: 'B-01',
      date: '2026-05-01',
      asked: 'Does oil on the thread change the clamp force?',
      same: ['one washer a bolt', 'pulled by one hand'],
      conditions: [
        { name: 'A', what: 'dry, as delivered' },
        { name: 'B', what: 'oil on thread; seat dry' },
      ],
      wrench: 'W-07',
      size: 'M12',
      'property-class': '8.8',
      diameter: { value: 0.012, text: '12 mm', unit: 'mm' },
      seat: 'flat 18 mm x 13.5 mm',
      again: [1, 3, 6],
    })
    expect(found?.folder.again.map(({ due, isDone }) => [due, isDone])).toEqual([
      ['2026-06-01', false],
      ['2026-08-01', false],
      ['2026-11-01', false],
    ])
  })

  it('readings pasted with a comma for the decimals and one unit, each turn with its clamp force and piece', async () => {
    const shop = await filled(testShop())
    await shop.keep('run-reading', first, mechanic)
    const readings = (await shop.runs.one('B-01'))?.folder.readings[0]?.entry.body.readings
    expect(readings?.map(({ torque, clamp, piece }) => [torque?.value, clamp?.value, piece])).toEqual([
      [80, 33_100, '1'],
      [80, 34_000, '2'],
      [81, 33_600, '3'],
    ])
  })

  it('readings of several at once: none is lost', async () => {
    const shop = await filled(testShop())
    const kept = await Promise.all(
      ['A', 'B', 'A', 'B'].map((condition, n) =>
        shop.keep('run-reading', { run: 'B-01', condition, date: '2026-05-02', torque: `${80 + n} N·m` }, mechanic),
      ),
    )
    expect(kept.map(({ kind }) => kind)).toEqual(['kept', 'kept', 'kept', 'kept'])
    expect((await shop.runs.one('B-01'))?.folder.readings).toHaveLength(4)
  })

  it.each<[string, Kind, Raw, readonly string[]]>([
    ['a tag that is taken', 'run', opening, ['tag-taken']],
    ['a day to come', 'run', { ...opening, tag: 'B-02', date: '2026-07-01' }, ['day-ahead']],
    ['a wrench that is not here', 'run', { ...opening, tag: 'B-02', wrench: 'W-99' }, ['no-such-wrench']],
    [
      'two conditions of one name',
      'run',
      { ...opening, tag: 'B-02', conditions: 'A: dry | a: wet' },
      ['conditions-alike'],
    ],
    ['a condition without a name', 'run', { ...opening, tag: 'B-02', conditions: 'A | : wet' }, ['not-a-condition']],
    ['seven conditions', 'run', { ...opening, tag: 'B-02', conditions: '1|2|3|4|5|6|7' }, ['too-many']],
    ['weeks for months', 'run', { ...opening, tag: 'B-02', again: '6 weeks' }, ['not-months']],
    ['a diameter of another size', 'run', { ...opening, tag: 'B-02', diameter: '10 mm' }, ['diameter-not-size']],
    ['no question', 'run', { tag: 'B-02', date: '2026-05-01', conditions: 'A' }, ['asked']],
    ['a run that is none', 'run-reading', { ...first, run: 'B-9' }, ['no-such-run']],
    ['a condition that is none', 'run-reading', { ...first, condition: 'C' }, ['no-such-condition']],
    ['a re-run that was not planned', 'run-reading', { ...first, again: '2 months' }, ['not-planned']],
    ['two forces for three torques', 'run-reading', { ...first, 'clamp-force': '33; 34 kN' }, ['lists-uneven']],
    [
      'a force as a torque',
      'run-reading',
      { ...first, torque: '80; 80; 81 kN' },
      ['unit-wrong-kind', 'unit-wrong-kind', 'unit-wrong-kind'],
    ],
    ['no unit', 'run-reading', { ...first, torque: '80; 80; 81' }, ['unit-missing', 'unit-missing', 'unit-missing']],
    ['no reading', 'run-reading', { run: 'B-01', condition: 'A', date: '2026-05-01' }, ['torque']],
    ['thirty-one readings', 'run-reading', { ...first, torque: `${'80; '.repeat(30)}80 N·m` }, ['too-many']],
    ['the end of no run', 'run-finish', { run: 'B-9', date: '2026-05-02' }, ['no-such-run']],
  ])('not %s', async (_name, kind, raw, faults) => {
    const shop = await filled(testShop())
    expect(await faultsOf(shop, kind, raw)).toEqual(faults)
  })

  it('finished: no more readings of the run itself and no second end, but what was planned for later', async () => {
    const shop = await filled(testShop())
    await shop.keep('run-finish', { run: 'B-01', date: '2026-05-02', note: 'oil it is' }, mechanic)
    expect(await faultsOf(shop, 'run-reading', first)).toEqual(['run-finished'])
    expect(await faultsOf(shop, 'run-finish', { run: 'B-01', date: '2026-05-03' })).toEqual(['run-finished'])
    expect(await faultsOf(shop, 'run-reading', { ...first, again: '1 month', date: '2026-06-01' })).toEqual(['kept'])
    expect((await shop.runs.one('B-01'))?.folder.again.map(({ isDone }) => isDone)).toEqual([true, false, false])
  })

  it('a correction of readings by a keeper; what was there before stays to be seen', async () => {
    const shop = await filled(testShop())
    const id = await idOf(shop, 'run-reading', first)
    const mended = { ...first, torque: '80; 80; 80 N·m', supersedes: id, why: 'misread' }
    expect((await shop.keep('run-reading', mended, mechanic)).kind).toBe('forbidden')
    expect(await faultsOf(shop, 'run-reading', mended)).toEqual(['kept'])
    const [one, ...more] = (await shop.runs.one('B-01'))?.folder.readings ?? []
    expect(more).toEqual([])
    expect([one?.entry.body.readings[2]?.torque?.value, one?.earlier.map((entry) => entry.id)]).toEqual([80, [id]])
  })

  it('a condition that was read under stays, and a run with readings is not taken back', async () => {
    const shop = await filled(testShop())
    const run = (await shop.runs.one('B-01'))?.folder.opening.entry.id as string
    const readings = await idOf(shop, 'run-reading', first)
    const mend = { supersedes: run, why: 'clearer' }
    expect(await faultsOf(shop, 'run', { ...opening, ...mend, conditions: 'B | C' })).toEqual(['condition-in-use'])
    expect(await faultsOf(shop, 'run', { ...opening, ...mend, tag: 'B-77' })).toEqual(['tag-fixed'])
    expect(await faultsOf(shop, 'withdrawal', mend)).toEqual(['run-in-use'])
    await shop.keep('withdrawal', { supersedes: readings, why: 'the gauge slipped' }, keeper)
    expect((await shop.runs.one('B-01'))?.withdrawn.map(({ by, earlier }) => [by.why, earlier[0]?.id])).toEqual([
      ['the gauge slipped', readings],
    ])
    expect(await faultsOf(shop, 'withdrawal', mend)).toEqual(['kept'])
    expect(await shop.runs.one('B-01')).toBeUndefined()
    expect((await shop.runs.page(10)).runs).toEqual([])
  })

  it('the same key again is the same readings', async () => {
    const shop = await filled(testShop())
    const send = () => shop.keep('run-reading', first, { ...mechanic, key: 'k-1' })
    await send()
    expect(await send()).toMatchObject({ kind: 'kept', again: true })
    expect((await shop.runs.one('B-01'))?.folder.readings).toHaveLength(1)
  })
})

onEveryStore('bench runs', (open) => {
  const shopIn = (store: Store): Shop => {
    let count = 0
    const now = (): Date => new Date('2026-06-01T10:00:00Z')
    return createShop({ store: store as never, now, id: () => `e-${++count}`, timeZone: 'UTC' })
  }

  it('stand, are listed by tag and by when they are to be measured again, and found by their question', async () => {
    const shop = await filled(shopIn(await open()))
    await shop.keep('run', { ...opening, tag: 'B-10', date: '2026-04-15', again: '1 month' }, keeper)
    await shop.keep(
      'run',
      { tag: 'B-2', date: '2026-04-15', asked: 'Do washers matter on M12?', conditions: 'with | without' },
      keeper,
    )
    await shop.keep('run-reading', first, mechanic)
    const tagsOf = (runs: Awaited<ReturnType<Shop['runs']['dueBy']>>) => runs.map((run) => run.opening.entry.body.tag)
    const page = await shop.runs.page(2)
    expect(tagsOf(page.runs)).toEqual(['B-01', 'B-2'])
    expect(page.runs[0]?.readings).toHaveLength(1)
    expect(tagsOf((await shop.runs.page(2, page.next)).runs)).toEqual(['B-10'])
    expect(tagsOf(await shop.runs.dueBy('2026-06-01'))).toEqual(['B-10', 'B-01'])
    expect(tagsOf(await shop.runs.dueBy('2026-05-20'))).toEqual(['B-10'])
    const foundBy = async (text: string) => (await shop.find('run', text)).map(({ tag }) => tag)
    expect(await foundBy('washers')).toEqual(['B-2'])
    // Words that stand apart, in any order.
    expect(await foundBy('M12 washers')).toEqual(['B-2'])
    expect(await foundBy('M12 rust')).toEqual([])
    // None of it is a wrench.
    expect((await shop.board(10)).rows.map(({ folder }) => folder.tag)).toEqual(['W-07'])
  })

  it('go out as a sheet and come in as the same record, corrections and takings back too', async () => {
    const shop = await filled(shopIn(await open()))
    const id = await idOf(shop, 'run-reading', first)
    await shop.keep('run-reading', { ...first, torque: '80; 80; 80 N·m', supersedes: id, why: 'misread' }, keeper)
    const gone = await idOf(shop, 'run-reading', { ...first, condition: 'B', angle: '40; 41°; 42°' })
    await shop.keep('withdrawal', { supersedes: gone, why: 'the wrong bolts' }, keeper)
    await shop.keep('run-finish', { run: 'B-01', date: '2026-05-03', note: '=not a formula' }, mechanic)
    const out = (await shop.since(0, 100)).map(({ entry }) => entry)
    const sheet = sheetHead() + out.map(sheetRow).join('')
    const other = shopIn(await open())
    const dry = await other.takeIn(sheet, { role: 'import', door: 'http' }, true)
    expect(dry).toEqual({ kind: 'read', fresh: out.length, again: 0, kept: false })
    expect(await other.takeIn(sheet, { role: 'import', door: 'http' }, false)).toMatchObject({
      fresh: out.length,
      kept: true,
    })
    expect((await other.since(0, 100)).map(({ entry }) => entry)).toEqual(out)
    expect(await other.runs.one('B-01')).toEqual(await shop.runs.one('B-01'))
    expect(await other.takeIn(sheet, { role: 'import', door: 'http' }, false)).toMatchObject({
      fresh: 0,
      again: out.length,
    })
  })
})
