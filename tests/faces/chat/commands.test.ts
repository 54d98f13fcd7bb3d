// The slash commands as a set: Discord's limits, every question reachable, every input there, nothing required that could be asked back.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { offersOf } from '../../../commands/topic.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { readCommand } from '../../../src/faces/chat/reading.ts'
import { questionNames, questions } from '../../../src/questions/index.ts'
import { languages, localeNames } from '../../../src/words/index.ts'
import { commandFor } from '../../support/doors.ts'
import { checkCommandList } from '../../support/fake-discord/limits.ts'

interface Option {
  name: string
  description: string
  type: number
  required?: boolean
  options?: Option[]
  choices?: Array<{ name: string; value: string }>
}

const commands = buildCommands(topics, languages.en.words) as unknown as Array<
  Option & { integration_types: number[]; contexts: number[] }
>
const flatten = (option: Option): Option[] => [option, ...(option.options ?? []).flatMap(flatten)]
const all = commands.flatMap(flatten)

describe('the commands', () => {
  it('are the topics, once each, each offering questions that no other offers', () => {
    expect(commands.map(({ name }) => name)).toEqual([...topics.map(({ name }) => name), 'Work this out'])
    const offered = topics.flatMap(offersOf)
    expect([...offered].sort()).toEqual([...questionNames].sort())
  })

  it('has one command for messages, with a name that is read and nothing else', () => {
    const messages = commands.filter(({ type }) => type === 3)
    expect(messages.map(({ name }) => name)).toEqual(['Work this out'])
    expect(messages[0]).not.toHaveProperty('description')
    expect(messages[0]).not.toHaveProperty('options')
  })

  it.each(all.filter((option) => option.description !== undefined).map((option) => [option.name, option] as const))(
    '%s keeps within the limits of Discord',
    (_name, option) => {
      expect(option.name).toMatch(/^[-_a-z0-9]{1,32}$/)
      expect(option.description.length).toBeGreaterThan(0)
      expect(option.description.length).toBeLessThanOrEqual(100)
      expect(option.options?.length ?? 0).toBeLessThanOrEqual(25)
      expect(option.choices?.length ?? 0).toBeLessThanOrEqual(25)
      for (const { name, value } of option.choices ?? []) expect(name.length <= 100 && value.length <= 100).toBe(true)
      expect(new Set((option.options ?? []).map(({ name }) => name)).size).toBe(option.options?.length ?? 0)
    },
  )

  it.each(localeNames)(
    'in the words of a shop that speaks %s, with every language laid over, are what Discord takes',
    (name) => {
      const list = JSON.parse(JSON.stringify(buildCommands(topics, languages[name].words)))
      expect(checkCommandList(list)).toEqual([])
    },
  )

  it('are told in every language that Discord and we share, names and descriptions, en-US among them', () => {
    type Told = { name_localizations?: Record<string, string>; description_localizations?: Record<string, string> }
    for (const command of buildCommands(topics, languages.en.words) as Told[]) {
      const { name_localizations: names = {}, description_localizations: told } = command
      expect(Object.keys(names).sort()).toEqual(['de', 'en-GB', 'en-US', 'es-419', 'es-ES', 'fr'])
      if (told) expect(Object.keys(told).sort()).toEqual(Object.keys(names).sort())
    }
  })

  it('have a name each in every language, within a command and beside the others', () => {
    const commandsOf = buildCommands(topics, languages.en.words) as unknown as Array<{
      name: string
      name_localizations: Record<string, string>
      options?: Array<{ name: string; type: number; name_localizations?: Record<string, string> }>
    }>
    for (const tag of ['de', 'es-ES', 'es-419', 'fr']) {
      const names = commandsOf.map((one) => one.name_localizations[tag])
      expect(new Set(names).size).toBe(names.length)
      for (const { name, options = [] } of commandsOf) {
        const parts = options.filter(({ type }) => type === 1).map((one) => one.name_localizations?.[tag])
        expect(new Set(parts).size, `${name} in ${tag}`).toBe(parts.length)
      }
    }
  })

  it('no command is longer than 8000 characters in all', () => {
    for (const command of commands) {
      const length = flatten(command).reduce(
        (sum, { name, description, choices = [] }) =>
          sum +
          name.length +
          (description?.length ?? 0) +
          choices.reduce((more, one) => more + one.name.length + one.value.length, 0),
        0,
      )
      expect(length).toBeLessThanOrEqual(8000)
    }
  })

  it('requires nothing: what is missing is asked back', () => {
    expect(all.filter(({ required }) => required)).toEqual([])
  })

  it('can be used in servers, in direct messages, and by a user who brought it', () => {
    for (const { integration_types, contexts } of commands)
      expect([integration_types, contexts]).toEqual([
        [0, 1],
        [0, 1, 2],
      ])
  })

  it.each(questionNames)('%s is reached with all of its inputs', (name) => {
    const raw = Object.fromEntries(Object.keys(questions[name].inputs).map((input) => [input, 'x']))
    const data = commandFor(name, raw) as { name: string; options: Option[] }
    expect(readCommand(data as never, topics)).toEqual({ question: name, raw, seen: 'all' })
    const command = commands.find((one) => one.name === data.name)
    const part = command?.options?.find(({ type, name: word }) => type === 1 && word === data.options[0]?.name)
    const offered = (part ?? command)?.options?.map((option) => option.name) ?? []
    for (const input of Object.keys(raw)) expect(offered).toContain(input)
  })

  it('adapter without find asks for the setting; a find or a part that is not ours is not guessed', () => {
    expect(readCommand({ id: '1', type: 1, name: 'adapter', options: [] } as never, topics)).toMatchObject({
      question: 'adapter-setting',
    })
    expect(
      readCommand(
        { id: '1', type: 1, name: 'adapter', options: [{ type: 3, name: 'find', value: 'other' }] } as never,
        topics,
      ),
    ).toBeUndefined()
    expect(
      readCommand(
        { id: '1', type: 1, name: 'hand', options: [{ type: 1, name: 'other', options: [] }] } as never,
        topics,
      ),
    ).toBeUndefined()
    expect(readCommand({ id: '1', type: 1, name: 'other' } as never, topics)).toBeUndefined()
  })

  it('an option that comes as a number is told as a fault, not read as a text', () => {
    const ask = readCommand(
      { id: '1', type: 1, name: 'convert', options: [{ type: 10, name: 'quantity', value: 5 }] } as never,
      topics,
    )
    expect(ask).toMatchObject({ raw: { quantity: 5 } })
  })
})
