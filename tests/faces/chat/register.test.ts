// Who writes in chat, as a table; and the form of a check, however Discord nests what was typed.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { checkForm, rawOfForm, textsOfForm } from '../../../src/faces/chat/register/form.ts'
import { roleIn } from '../../../src/faces/chat/register/rights.ts'
import { keepables } from '../../../src/keeping/index.ts'
import { languages } from '../../../src/words/index.ts'

const roles = { keeper: '1', mechanic: '2' }
const someone = (held: readonly string[], permissions: string, guild: string | undefined = '9') =>
  ({ member: { roles: held, permissions }, guild_id: guild }) as never

describe('who writes in chat', () => {
  it.each([
    [['1'], '0', 'keeper'],
    [['2'], '0', 'mechanic'],
    [['1', '2'], '0', 'keeper'],
    [['3'], '0', undefined],
    [[], '32', 'keeper'], // Manage Guild is 1 << 5
    [[], '8', 'keeper'], // Administrator is 1 << 3
    [[], '2248473465835073', undefined],
    [[], '0', undefined],
  ])('with roles %j and permissions %s: %s', (held, permissions, role) => {
    expect(roleIn(someone(held, permissions), roles)).toBe(role)
  })

  it('nobody in a direct message, and nobody by a role that the shop did not name', () => {
    expect(roleIn({ guild_id: undefined, member: undefined } as never, roles)).toBeUndefined()
    expect(roleIn(someone(['1', '2'], '0'), { keeper: undefined, mechanic: undefined })).toBeUndefined()
  })
})

describe('the form of a check', () => {
  const nested = [
    { type: 18, component: { type: 4, custom_id: 'way', value: 'pull' } },
    { type: 1, components: [{ type: 4, custom_id: 'when', value: '2026-06-01  as left' }] },
    { type: 1, components: [{ type: 4, custom_id: 'gauge', value: ' ' }] },
    { type: 1, components: [{ type: 4, custom_id: 'evil', value: 'x' }] },
    null,
  ]

  it('is read however it is nested, and nothing but its own fields', () => {
    expect(textsOfForm(nested)).toEqual({ way: 'pull', when: '2026-06-01  as left', gauge: ' ' })
  })

  it('becomes the inputs of a check; blanks say nothing, and without a state it is as found', () => {
    expect(rawOfForm('W-07', textsOfForm(nested))).toEqual({
      wrench: 'W-07',
      way: 'pull',
      date: '2026-06-01',
      state: 'as-left',
    })
    expect(rawOfForm('W-07', { when: '2026-06-01' })['state']).toBe('as-found')
  })

  it('keeps within Discord’s limits whatever was typed', () => {
    const form = checkForm(
      'check:W-07',
      'W'.repeat(24),
      { points: 'x'.repeat(9000), way: 'y'.repeat(90) },
      languages.en.words,
    )
    expect(form.title.length).toBeLessThanOrEqual(45)
    expect(form.components).toHaveLength(5)
    expect(JSON.stringify(form).length).toBeLessThan(6000)
  })
})

describe('the commands of the register', () => {
  it('ask for what the declarations name, and for nothing else', () => {
    const command = buildCommands(topics, languages.en.words).find(({ name }) => name === 'wrench')
    const parts = (command && 'options' in command ? command.options : []) as Array<{
      name: string
      options?: Array<{ name: string }>
    }>
    const names = (word: string) => parts.find(({ name }) => name === word)?.options?.map(({ name }) => name) ?? []
    const declared = (kind: 'wrench' | 'event', without: readonly string[]) =>
      Object.keys(keepables[kind].inputs).filter((name) => !without.includes(name))
    expect(parts.map(({ name }) => name)).toEqual(['add', 'show', 'list', 'event', 'checks', 'due', 'retire', 'which'])
    expect(names('add')).toEqual(declared('wrench', ['supersedes', 'why']))
    expect(names('event')).toEqual(declared('event', ['supersedes', 'why']))
    expect(names('retire')).toEqual(['wrench', 'date', 'note'])
  })
})
