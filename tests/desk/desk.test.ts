// One path, three outcomes: answered, incomplete, refused. What every answer holds whatever was asked.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Asked, createDesk } from '../../src/desk/desk.ts'
import { questions } from '../../src/questions/index.ts'
import { answered, ask, cautionsOf } from '../support/desk.ts'
import { everyQuestion, exampleInputs, exampleOf, neededOf } from '../support/examples.ts'

describe.each(everyQuestion)('%s by its %s examples', (name, system) => {
  const question = questions[name]
  const inputs = exampleInputs(name, system)
  const answer = ask(name, inputs, system)

  it('is answered, with a headline, steps, sources and every input under given', () => {
    expect(answer.status).toBe('answered')
    expect(answer.headline).toMatch(/^[A-Z0-9].*\.$/)
    // A topic alone has nothing to work out: its why and how much are said in words.
    if (name !== 'does-it-matter') expect(answer.steps.length).toBeGreaterThan(0)
    expect(answer.sources.length).toBeGreaterThan(0)
    const asked = answer.given.filter(({ from }) => from === 'asked').map(({ input }) => input)
    expect([...new Set(asked)].sort()).toEqual(Object.keys(inputs).sort())
    expect(answer.faults).toEqual([])
    expect(answer.missing).toEqual([])
  })

  it('holds results that its question declares, in the declared order', () => {
    const names = Object.keys(answer.results)
    expect(names.length).toBeGreaterThan(0)
    expect(names).toEqual(question.results.filter((result) => names.includes(result)))
  })

  it('puts the maker’s own figure first among what is always said', () => {
    expect(cautionsOf(answer).at(-1)).toBe('maker-first')
    expect(new Set(cautionsOf(answer)).size).toBe(answer.cautions.length)
  })

  it('leaves no place of a text unfilled', () => {
    expect(JSON.stringify(answer)).not.toMatch(/\{[a-z]+\}|undefined|NaN|Infinity/)
  })

  it('takes the example of every other input as well, alone', () => {
    for (const input of Object.keys(question.inputs).filter((one) => !(one in inputs))) {
      // A wrench is lent by a register, a run by the bench: lend.test.ts, lend-bench.test.ts.
      if (['wrench', 'bench'].includes(question.inputs[input]?.kind ?? '')) continue
      const more = ask(name, { ...inputs, [input]: exampleOf(name, input, system) }, system)
      expect(
        more.faults.filter((fault) => fault.code !== 'conflict'),
        `${name} ${input}`,
      ).toEqual([])
    }
  })

  it('is incomplete without anything, and asks for each thing once, with how to measure it', () => {
    const empty = ask(name, {}, system)
    expect(empty.status).toBe('incomplete')
    expect(empty.missing.map(({ input }) => input)).toEqual(neededOf(name))
    for (const { ask: words, measure } of empty.missing) {
      expect(words).not.toBe('')
      expect(measure).not.toBe('')
      expect(empty.headline).toContain(words)
    }
    expect(cautionsOf(empty).at(-1)).toBe('maker-first')
    expect(empty.pointers).toHaveLength(1)
  })

  it('is refused with a caution and a pointer where an input is not known', () => {
    const refused = ask(name, { ...inputs, nonsense: '1' }, system)
    expect(refused.status).toBe('refused')
    expect(refused.results).toEqual({})
    expect(refused.headline).toContain(refused.faults[0]?.hint)
    expect(cautionsOf(refused)).toEqual(['maker-first'])
    expect(refused.pointers).toHaveLength(1)
  })

  it('offers related questions that are answered as they stand', () => {
    for (const { question: other, inputs: told, label } of answer.related) {
      expect(label).not.toBe('')
      // A topic says where to go on; without numbers the next question has to ask for them.
      const open = name === 'does-it-matter' ? ['answered', 'incomplete'] : ['answered']
      expect(open, `${label}: ${JSON.stringify(told)}`).toContain(ask(other as typeof name, told, system).status)
    }
  })
})

describe('the desk', () => {
  it('says how many inputs need another look, and leads with the first', () => {
    expect(ask('pull', { torque: '120', lever: '380 mm' }).headline).toBe(
      'That cannot be worked out as it stands: Say the unit: type 120 N·m or 120 lbf·ft.',
    )
    expect(ask('pull', { torque: '120', lever: '380' }).headline).toMatch(/several inputs need another look\. First: /)
  })

  it('keeps of an ask its question, outcome, door and fault codes, and no value', () => {
    const kept: Asked[] = []
    const desk = createDesk({ system: 'metric', locale: 'en', record: (one) => kept.push(one) })
    desk.ask('pull', { torque: '120 N·m', lever: '380 mm' }, { door: 'chat' })
    desk.ask('pull', { torque: '120 N·m' }, { door: 'kiosk' })
    desk.ask('pull', { torque: '120', lever: 'long' }, { door: 'http' })
    expect(kept).toEqual([
      { question: 'pull', status: 'answered', door: 'chat', faults: [] },
      { question: 'pull', status: 'incomplete', door: 'kiosk', faults: [] },
      { question: 'pull', status: 'refused', door: 'http', faults: ['unit-missing', 'not-a-number'] },
    ])
  })

  it('gives the same answer to every door and every language that is not spoken here', () => {
    const desk = createDesk({ system: 'metric', locale: 'en' })
    const raw = { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30' }
    const first = desk.ask('adapter-setting', raw, { door: 'chat' })
    for (const door of ['http', 'kiosk', 'terminal'] as const) {
      for (const locale of [undefined, '', 'en-GB', 'xx-YY,xx;q=0.9', '*', ';;;', 'en;q=0']) {
        expect(desk.ask('adapter-setting', raw, { door, locale })).toEqual(first)
      }
    }
  })

  it.each(['toString', 'constructor', '__proto__', 'dry'])(
    'says %j as it was typed, whatever objects are made of',
    (wrench) => {
      const desk = createDesk({ system: 'metric', locale: 'de' })
      const { given } = desk.ask('next-check', { 'last-check': '2026-01-31', wrench }, { door: 'http' })
      for (const { text } of given) expect(typeof text).toBe('string')
    },
  )

  it('tells the engine’s version as the package does', () => {
    const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
    expect(answered('pull', { torque: '120 N·m', lever: '380 mm' }).versions.engine).toBe(manifest.version)
  })

  it('rounds texts and leaves values alone', () => {
    const { setting } = answered('adapter-setting', { torque: '100 N·m', lever: '300 mm', adapter: '55 mm@0' }).results
    expect(setting).toMatchObject({ value: (100 * 300) / 355, text: '84.5 N·m' })
  })
})
