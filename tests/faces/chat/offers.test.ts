// What chat offers while a topic is typed: the slugs that fit, the likeliest first; nobody is held to them.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { isTyping, offersFor } from '../../../src/faces/chat/offers.ts'
import { slugs } from '../../../src/questions/matters/topic.ts'
import { languages } from '../../../src/words/index.ts'

const typing = (name: string, options: readonly object[]) =>
  ({ type: 4, data: { id: '1', type: 1, name, options } }) as never
const offered = async (value: unknown, name = 'topic'): Promise<readonly string[]> =>
  ((await offersFor(typing('does-it-matter', [{ type: 3, name, value, focused: true }]), topics)).choices ?? []).map(
    (one) => String(one.value),
  )

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
    expect(await offered('1', 'torque')).toEqual([])
    expect(await offered('1', 'constructor')).toEqual([])
    expect(await offered(5)).toEqual(slugs)
    expect(await offersFor(typing('does-it-matter', []), topics)).toEqual({ choices: [] })
    expect(
      await offersFor(typing('adapter', [{ type: 3, name: 'torque', value: '9', focused: true }]), topics),
    ).toEqual({
      choices: [],
    })
    expect(await offersFor(typing('other', [{ type: 3, name: 'topic', value: '9', focused: true }]), topics)).toEqual({
      choices: [],
    })
  })

  it('is told from a command by its type', () => {
    expect(isTyping(typing('does-it-matter', []))).toBe(true)
    expect(isTyping({ type: 2 } as never)).toBe(false)
  })

  it('wrenches and gauges are found by any part of tag or name; nothing is offered while the register is away', async () => {
    const find = async (kind: string, text: string) => [{ tag: 'W-07', name: `${kind} ${text}` }]
    const option = { type: 3, name: 'wrench', value: 'half', focused: true }
    const typed = typing('wrench', [{ type: 1, name: 'show', options: [option] }])
    expect(await offersFor(typed, topics, find)).toEqual({ choices: [{ name: 'W-07: wrench half', value: 'W-07' }] })
    const away = () => Promise.reject(new Error('away'))
    expect(await offersFor(typed, topics, away)).toEqual({ choices: [] })
  })

  it('only topics and wrenches are registered so, and without choices, which would hold everybody to them', () => {
    type Told = { name: string; autocomplete?: boolean; choices?: unknown; options?: readonly Told[] }
    const flat = (all: readonly Told[]): Told[] => all.flatMap((one) => [one, ...flat(one.options ?? [])])
    const options = flat(
      buildCommands(topics, languages.en.words).flatMap((command) =>
        'options' in command ? ((command.options ?? []) as readonly Told[]) : [],
      ),
    )
    const completing = options.filter(({ autocomplete }) => autocomplete)
    expect([...new Set(completing.map(({ name }) => name))].sort()).toEqual(['topic', 'wrench'])
    for (const { choices } of completing) expect(choices).toBeUndefined()
  })
})
