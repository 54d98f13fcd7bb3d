// Bench runs in chat: who may write, what is kept and shown, within Discord's limits; and the digest that reminds of re-runs.
import { describe, expect, it } from 'vitest'
import { topics } from '../../../commands/index.ts'
import { createBenchDoor } from '../../../src/faces/chat/bench/door.ts'
import { buildCommands } from '../../../src/faces/chat/commands.ts'
import { digestEmbed } from '../../../src/faces/chat/digest-message.ts'
import { keepables } from '../../../src/keeping/index.ts'
import { digestOf, isQuiet } from '../../../src/register/digest.ts'
import { languageFor, languages } from '../../../src/words/index.ts'
import { testShop } from '../../support/doors.ts'
import { beginOil, wholeOil } from '../../support/oil-run.ts'

const KEEPERS = '1'
const MECHANICS = '2'
let count = 0
const interaction = (word: string, raw: Record<string, string>, roles: readonly string[] = [MECHANICS]) =>
  ({
    id: String(++count),
    type: 2,
    guild_id: '9',
    member: { roles, permissions: '0' },
    data: {
      name: 'bench',
      options: [
        { name: word, type: 1, options: Object.entries(raw).map(([name, value]) => ({ name, value, type: 3 })) },
      ],
    },
  }) as never

const open = () => {
  const shop = testShop()
  const pictures = { png: async () => Buffer.from('png') }
  const door = createBenchDoor({ shop, roles: { keeper: KEEPERS, mechanic: MECHANICS }, pictures })
  const say = (word: string, raw: Record<string, string> = {}, roles?: readonly string[]) =>
    door.handle(interaction(word, raw, roles), topics, languageFor('en-US', 'en'))
  return { shop, say }
}
interface Data {
  readonly embeds?: Array<{ readonly description?: string }>
  readonly content?: string
  readonly flags?: number
  readonly attachments?: Array<{ readonly description: string }>
}
type Reply = Awaited<ReturnType<ReturnType<typeof open>['say']>>
const dataOf = (reply: Reply): Data => (reply?.data ?? {}) as Data
const described = (reply: Reply): string => {
  const { embeds, content } = dataOf(reply)
  return String(embeds?.[0]?.description ?? content)
}

describe('bench runs in chat', () => {
  it('are begun and read by a mechanic, the day taken as today, and shown with their picture', async () => {
    const { shop, say } = open()
    const begun = await say('start', {
      tag: 'B-01',
      asked: 'Does oil matter?',
      conditions: 'A: dry | B: oiled',
      size: 'M12',
    })
    expect(described(begun)).toContain('Nothing was read yet.')
    expect(described(begun)).toContain('today was taken')
    await say('add', { run: 'B-01', condition: 'A', 'clamp-force': '33,1; 34; 33.6 kN' })
    const added = await say('add', { run: 'B-01', condition: 'B', 'clamp-force': '37; 38.2; 37.5 kN' })
    expect(described(added)).toContain('clamp force, B against A: ')
    expect(added?.files).toHaveLength(1)
    expect(dataOf(added).attachments?.[0]?.description).toContain('B-01: Does oil matter?')
    expect((await shop.runs.one('B-01'))?.entries.map(({ by }) => by.door)).toEqual(['chat', 'chat', 'chat'])
    expect(described(await say('list'))).toContain('**B-01** Does oil matter? (under way)')
  })

  it('are not written by who may not, who may look all the same', async () => {
    const { shop, say } = open()
    await wholeOil(shop)
    const before = (await shop.since(0, 100)).length
    expect(described(await say('add', { run: 'B-01', condition: 'A', torque: '80 N·m' }, []))).toContain(
      'You may not write',
    )
    expect((await shop.since(0, 100)).length).toBe(before)
    expect(described(await say('show', { run: 'b-01' }, []))).toContain('a difference that matters')
    expect(described(await say('show', { run: 'B-9' }, []))).toContain('No bench run has this tag')
  })

  it('readings are corrected and taken back by a keeper, by the number that the run shows', async () => {
    const { shop, say } = open()
    await beginOil(shop)
    await say('add', { run: 'B-01', condition: 'A', 'clamp-force': '33.1; 34; 33.6 kN', note: 'first box' })
    const added = await say('add', { run: 'B-01', condition: 'B', 'clamp-force': '37; 83.2; 37.5 kN' })
    expect(described(added)).toContain('2\\. 2026-06-01 B: ')
    const mend = { run: 'b-01', reading: '2', 'clamp-force': '37; 38.2; 37.5 kN', why: 'digits swapped' }
    expect(described(await say('correct', mend))).toContain('You may not write')
    const corrected = await say('correct', mend, [KEEPERS])
    expect(described(corrected)).toContain('38.2')
    expect(described(corrected)).not.toContain('83.2')
    expect(described(await say('take-back', { run: 'B-01', reading: '7', why: 'x' }, [KEEPERS]))).toContain(
      'reading: “7”',
    )
    expect(described(await say('take-back', { run: 'B-01', reading: '1' }, [KEEPERS]))).toContain('why: ')
    await say('take-back', { run: 'B-01', reading: '1', why: 'another box' }, [KEEPERS])
    const run = await shop.runs.one('B-01')
    expect(run?.folder.readings.map(({ entry, earlier }) => [entry.body.condition, earlier.length])).toEqual([['B', 1]])
    expect(run?.withdrawn.map(({ by }) => by.why)).toEqual(['another box'])
  })

  it('say what is wrong, privately', async () => {
    const { shop, say } = open()
    await beginOil(shop)
    const refused = await say('add', { run: 'B-01', condition: 'C', torque: '80' })
    expect(described(refused)).toContain('torque: “80”')
    expect(dataOf(refused).flags).toBe(64)
  })

  it('ask for what the declarations name; a run and a wrench are completed', () => {
    const command = buildCommands(topics, languages.en.words).find(({ name }) => name === 'bench')
    const parts = (command && 'options' in command ? command.options : []) as Array<{
      name: string
      options?: Array<{ name: string; autocomplete?: boolean }>
    }>
    expect(parts.map(({ name }) => name)).toEqual([
      'start',
      'add',
      'correct',
      'take-back',
      'show',
      'finish',
      'list',
      'compare',
    ])
    const names = (word: string) => parts.find(({ name }) => name === word)?.options?.map(({ name }) => name)
    const declared = (kind: 'run' | 'run-reading') =>
      Object.keys(keepables[kind].inputs).filter((name) => !['supersedes', 'why'].includes(name))
    expect(names('start')).toEqual(declared('run'))
    expect(names('add')).toEqual(declared('run-reading'))
    expect(names('show')).toEqual(['run'])
    expect(names('take-back')).toEqual(['run', 'reading', 'why'])
    expect(new Set(names('correct'))).toEqual(new Set([...(declared('run-reading') ?? []), 'reading', 'why']))
    const completed = parts
      .slice(0, 7)
      .flatMap(({ options = [] }) => options.filter(({ autocomplete }) => autocomplete))
    expect(new Set(completed.map(({ name }) => name))).toEqual(new Set(['run', 'wrench']))
  })
})

describe('the weekly digest', () => {
  it('reminds of a re-run that is due within two weeks, until it is read', async () => {
    const shop = testShop('2026-05-25')
    await beginOil(shop)
    const digest = async () => digestOf(await shop.fleet(), shop.today(), await shop.runs.dueBy('2026-06-08'))
    const due = await digest()
    expect(due.again).toEqual([
      { tag: 'B-01', name: 'Does oil on the thread change the clamp force?', date: '2026-06-01' },
    ])
    expect(isQuiet(due)).toBe(false)
    expect(digestEmbed(due, '2026-05-25', languages.en.words).fields?.map(({ name }) => name)).toContain(
      'Bench runs to be measured again: 1',
    )
    const read = { run: 'B-01', condition: 'A', date: '2026-05-25', torque: '80 N·m', again: '1 month' }
    expect((await shop.keep('run-reading', read, { role: 'mechanic', door: 'chat' })).kind).toBe('kept')
    expect((await digest()).again).toEqual([])
  })
})
