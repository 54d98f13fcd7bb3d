// What chat offers while a topic is typed: the slugs that fit, the likeliest first; nobody is held to them.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { isTyping, type OfferParts, offersFor } from '../../../src/faces/chat/offers.ts'
import { slugs } from '../../../src/questions/matters/topic.ts'
import { languages } from '../../../src/words/index.ts'

const typing = (name: string, options: readonly object[]) =>
  ({ type: 4, data: { id: '1', type: 1, name, options } }) as never
const parts: OfferParts = { words: () => languages.en.words, system: async () => 'metric', recent: () => [] }
const offered = async (value: unknown, name = 'topic'): Promise<readonly string[]> =>
  (
    (await offersFor(typing('does-it-matter', [{ type: 3, name, value, focused: true }]), topics, parts)).choices ?? []
  ).map((one) => String(one.value))

describe('while a topic is typed', () => {
  it('all are offered before a letter is typed, no more than Discord shows', async () => {
    expect(await offered('')).toEqual(slugs)
    expect(slugs.length).toBeLessThanOrEqual(25)
  })

  it.each<[string, readonly string[]]>([
    ['antiseize on lugs', ['anti-seize']],
    ['extension', ['adapter-square', 'adapter-straight', 'bars']],
    ['ada', ['adapter-square', 'adapter-straight', 'size-adapters']],
    ['wheel re', ['wheel-re-torque']],
    ['STORED', ['stored-wound-up']],
    ['the weather', []],
    ['x'.repeat(6000), []],
  ])('“%s” offers %j', async (typed, expected) => {
    expect(await offered(typed)).toEqual(expected)
  })

  it('an option without offers, one that is not ours and a number offer nothing or everything, and never fail', async () => {
    expect((await offered('1', 'torque'))[0]).toBe('1 N·m')
    expect(await offered('1', 'constructor')).toEqual([])
    expect(await offered(5)).toEqual(slugs)
    expect(await offersFor(typing('does-it-matter', []), topics, parts)).toEqual({ choices: [] })
    expect(
      await offersFor(typing('other', [{ type: 3, name: 'topic', value: '9', focused: true }]), topics, parts),
    ).toEqual({
      choices: [],
    })
  })

  it.each([
    ['en', 'Extension bars under the drive'],
    ['de', 'Verlängerungen unter dem Antrieb'],
    ['es', 'Extensiones bajo el cuadrado'],
    ['fr', 'Des rallonges sous le carré'],
  ] as const)(
    'what is picked is read in plain words (%s: %s), each its own; its slug is what is sent',
    async (language, bars) => {
      const typed = typing('does-it-matter', [{ type: 3, name: 'topic', value: '', focused: true }])
      const { choices = [] } = await offersFor(typed, topics, { ...parts, words: () => languages[language].words })
      expect(choices).toContainEqual({ name: bars, value: 'bars' })
      expect(new Set(choices.map(({ name }) => name)).size).toBe(slugs.length)
      for (const { name } of choices) expect(name.length).toBeLessThanOrEqual(100)
    },
  )

  it('is told from a command by its type', () => {
    expect(isTyping(typing('does-it-matter', []))).toBe(true)
    expect(isTyping({ type: 2 } as never)).toBe(false)
  })

  it('wrenches and gauges are found by any part of tag or name; nothing is offered while the register is away', async () => {
    const find = async (kind: string, text: string) => [{ tag: 'W-07', name: `${kind} ${text}` }]
    const option = { type: 3, name: 'wrench', value: 'half', focused: true }
    const typed = typing('wrench', [{ type: 1, name: 'show', options: [option] }])
    expect(await offersFor(typed, topics, { ...parts, find })).toEqual({
      choices: [{ name: 'W-07: wrench half', value: 'W-07' }],
    })
    const away = () => Promise.reject(new Error('away'))
    expect(await offersFor(typed, topics, { ...parts, find: away })).toEqual({ choices: [] })
  })

  it('what is completed is registered so, and without choices, which would hold everybody to them', () => {
    type Told = { name: string; autocomplete?: boolean; choices?: unknown; options?: readonly Told[] }
    const flat = (all: readonly Told[]): Told[] => all.flatMap((one) => [one, ...flat(one.options ?? [])])
    const options = flat(
      buildCommands(topics, languages.en.words).flatMap((command) =>
        'options' in command ? ((command.options ?? []) as readonly Told[]) : [],
      ),
    )
    const completing = options.filter(({ autocomplete }) => autocomplete)
    const names = new Set(completing.map(({ name }) => name))
    for (const name of ['topic', 'wrench', 'torque', 'lever', 'size', 'quantity']) expect(names).toContain(name)
    for (const name of ['points', 'events', 'last-check', 'seen-by']) expect(names).not.toContain(name)
    for (const { choices } of completing) expect(choices).toBeUndefined()
  })
})

describe('while a value is typed', () => {
  const value = async (
    command: string,
    name: string,
    text: string,
    more: { readonly system?: 'metric' | 'inch'; readonly recent?: readonly string[]; readonly part?: string } = {},
  ): Promise<readonly string[]> => {
    const option = { type: 3, name, value: text, focused: true }
    const options = more.part === undefined ? [option] : [{ type: 1, name: more.part, options: [option] }]
    const offers: OfferParts = {
      ...parts,
      system: async () => more.system ?? 'metric',
      recent: () => more.recent ?? [],
    }
    const { choices = [] } = await offersFor(typing(command, options), topics, offers)
    expect(choices.length).toBeLessThanOrEqual(25)
    return choices.map((one) => String(one.value))
  }

  it.each([
    ['torque', '95', 'metric', ['95 N·m', '95 lbf·ft', '95 lbf·in']],
    ['torque', '95', 'inch', ['95 lbf·ft', '95 N·m', '95 lbf·in']],
    ['torque', '13,5', 'metric', ['13,5 N·m', '13,5 lbf·ft', '13,5 lbf·in']],
    ['lever', '14 1/2', 'inch', ['14 1/2 in', '14 1/2 mm', '14 1/2 cm']],
    ['torque', '95 ft-lb', 'metric', ['95 lbf·ft']],
    ['angle', '30', 'metric', ['30°']],
    ['torque', '', 'inch', ['70 lbf·ft']],
  ] as const)('%s “%s” (%s) offers each unit that it may have: %j', async (name, text, system, first) => {
    const offers = await value('adapter', name, text, { system })
    if (text === '') expect(offers.length).toBeGreaterThan(0)
    else expect(offers.slice(0, first.length)).toEqual(first)
  })

  it.each([
    ['1,234', 'it can be read two ways'],
    ['much', 'it is no number'],
    ['95 bananas', 'it is no unit'],
    ['x'.repeat(6000), 'it is longer than a value'],
  ])('“%s” offers nothing: %s', async (text) => {
    expect(await value('adapter', 'torque', text)).toEqual([])
  })

  it('what was typed last comes first, and only where it fits', async () => {
    const recent = ['380 mm', '14 in']
    expect((await value('adapter', 'lever', '', { recent })).slice(0, 2)).toEqual(recent)
    expect(await value('adapter', 'lever', '14', { recent })).toContain('14 in')
    expect(await value('adapter', 'lever', '14', { recent })).not.toContain('380 mm')
  })

  it('threads are found by how they begin, the coarse one first', async () => {
    expect((await value('bolt', 'size', 'm12', { part: 'clamp' })).slice(0, 3)).toEqual(['M12', 'M12x1.75', 'M12x1.5'])
    expect(await value('bolt', 'size', '3/8', { part: 'clamp' })).toEqual(['3/8-16', '3/8-24'])
  })
})
