// The shop's own list of where makers' figures are found: what covers a question is offered with its answer, first; a figure is
// never taken into it; and an answer never waits for it.
import { describe, expect, it } from 'vitest'
import { createDesk } from '../../src/desk/desk.ts'
import { createSpecs, type SpecTexts } from '../../src/desk/specs.ts'
import { memoryStore } from '../../src/store/memory.ts'

const by = { role: 'keeper', door: 'chat' } as const
const open = () => {
  let at = Date.parse('2026-06-01T10:00:00Z')
  const store = memoryStore()
  const specs = createSpecs(store, () => new Date(at))
  return { store, specs, later: (ms: number) => (at += ms) }
}
const folder: SpecTexts = { title: 'Van workshop book', where: 'red folder, bay 2', covers: 'wheel nuts, M14x1.5' }
const page: SpecTexts = { title: 'Crowfoot sheet', where: 'https://shop.invalid/crowfoot', covers: 'adapter-setting' }

describe('the list', () => {
  it('finds by any word of title, place and covers, best first, and all where nothing is said', async () => {
    const { specs } = open()
    expect(await specs.add(folder, 'a', by)).toEqual([])
    expect(await specs.add(page, 'b', by)).toEqual([])
    expect((await specs.find('')).map(({ id }) => id)).toEqual(['a', 'b'])
    expect((await specs.find('where is the wheel nuts book')).map(({ id }) => id)).toEqual(['a'])
    expect(await specs.find('something else')).toEqual([])
    expect(await specs.remove('a', by)).toBe(true)
    expect(await specs.remove('a', by)).toBe(false)
    expect((await specs.find('')).map(({ id }) => id)).toEqual(['b'])
  })

  it.each<[string, SpecTexts, string]>([
    ['a torque in the title', { ...folder, title: 'Wheel nuts 160 Nm' }, 'spec-holds-figure'],
    ['a torque in feet and pounds', { ...folder, covers: 'wheels 118 lb-ft' }, 'spec-holds-figure'],
    ['a torque on a shelf', { ...folder, where: 'bay 2: 75 ft lbs' }, 'spec-holds-figure'],
    ['no title', { ...folder, title: ' ' }, 'empty'],
    ['no place', { title: 'x', covers: '' }, 'empty'],
    ['a title without end', { ...folder, title: 'x'.repeat(201) }, 'too-long'],
  ])('%s is refused, and nothing is kept', async (_name, texts, tell) => {
    const { specs } = open()
    expect((await specs.add(texts, 'a', by)).map((fault) => fault.tell)).toContain(tell)
    expect(await specs.find('')).toEqual([])
  })

  it.each([['M14x1.5 studs, 18 mm heads'], ['bay 2, 3rd shelf'], ['2019 vans'], ['8.8 and 10.9 bolts']])(
    '%j is no torque',
    async (covers) => {
      const { specs } = open()
      expect(await specs.add({ ...folder, covers }, 'a', by)).toEqual([])
    },
  )
})

describe('an answer', () => {
  it('has what covers it before the general pointers; another question has it not', async () => {
    const { specs } = open()
    await specs.add(folder, 'a', by)
    await specs.add(page, 'b', by)
    const desk = createDesk({ system: 'metric', locale: 'en', specs })
    const raw = { torque: '120 N·m', lever: '380 mm', adapter: '45 mm' }
    const { pointers } = desk.ask('adapter-setting', raw, { door: 'terminal' })
    expect(pointers[0]).toEqual({ text: 'Crowfoot sheet', url: 'https://shop.invalid/crowfoot' })
    expect(pointers.length).toBeGreaterThan(1)
    const pull = desk.ask('pull', { torque: '120 N·m', lever: '380 mm' }, { door: 'terminal' })
    expect(JSON.stringify(pull.pointers)).not.toContain('Crowfoot sheet')
    const asked = desk.askText('what torque for the wheel nuts of my van?', { door: 'terminal' })
    expect(asked.pointers[0]?.text).toBe('Van workshop book: red folder, bay 2')
  })

  it.each([
    ['the nuts of the van', 'what do I set for the 45 mm crowfoot on the 380 mm wrench, 120 N·m'],
    ['für die Räder', 'Was muss ich für die Schraube einstellen'],
  ])('is not covered by %j only because of its little words', async (covers, text) => {
    const { specs } = open()
    await specs.add({ ...folder, covers }, 'a', by)
    await specs.find('')
    expect(specs.pointersFor([text])).toEqual([])
  })

  it('does not wait: a list that another process changed is known soon after', async () => {
    const { store, specs, later } = open()
    const other = createSpecs(store, () => new Date(0))
    await other.add(page, 'b', by)
    const before = specs.version()
    expect(specs.pointersFor(['adapter-setting'])).toEqual([])
    await new Promise((resolve) => setImmediate(resolve))
    expect(specs.pointersFor(['adapter-setting'])).toHaveLength(1)
    expect(specs.version()).not.toBe(before)
    await store.close()
    later(60_000)
    expect(specs.pointersFor(['adapter-setting'])).toHaveLength(1)
  })
})
