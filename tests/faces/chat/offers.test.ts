// What chat offers while a topic is typed: the slugs that fit, the likeliest first; nobody is held to them.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { isTyping, offersFor } from '../../../src/faces/chat/offers.ts'
import { slugs } from '../../../src/questions/matters/topic.ts'
import { languages } from '../../../src/words/index.ts'

const typing = (name: string, options: readonly object[]) =>
  ({ type: 4, data: { id: '1', type: 1, name, options } }) as never
const offered = (value: unknown, name = 'topic'): readonly string[] =>
  (offersFor(typing('does-it-matter', [{ type: 3, name, value, focused: true }]), topics).choices ?? []).map((one) =>
    String(one.value),
  )

describe('while a topic is typed', () => {
  it('all are offered before a letter is typed, no more than Discord shows', () => {
    expect(offered('')).toEqual(slugs)
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
  ])('“%s” offers %j', (typed, expected) => {
    expect(offered(typed)).toEqual(expected)
  })

  it('an option without offers, one that is not ours and a number offer nothing or everything, and never fail', () => {
    expect(offered('1', 'torque')).toEqual([])
    expect(offered('1', 'constructor')).toEqual([])
    expect(offered(5)).toEqual(slugs)
    expect(offersFor(typing('does-it-matter', []), topics)).toEqual({ choices: [] })
    expect(offersFor(typing('adapter', [{ type: 3, name: 'torque', value: '9', focused: true }]), topics)).toEqual({
      choices: [],
    })
    expect(offersFor(typing('other', [{ type: 3, name: 'topic', value: '9', focused: true }]), topics)).toEqual({
      choices: [],
    })
  })

  it('is told from a command by its type', () => {
    expect(isTyping(typing('does-it-matter', []))).toBe(true)
    expect(isTyping({ type: 2 } as never)).toBe(false)
  })

  it('only the topic is registered so, and without choices, which would hold everybody to them', () => {
    const options = buildCommands(topics, languages.en.words).flatMap((command) =>
      'options' in command ? (command.options ?? []) : [],
    ) as Array<{
      name: string
      autocomplete?: boolean
      choices?: unknown
    }>
    const completing = options.filter(({ autocomplete }) => autocomplete)
    expect(completing.map(({ name }) => name)).toEqual(['topic'])
    expect(completing[0]?.choices).toBeUndefined()
  })
})
