// Lists audited as lists: every fault, caution, code, pointer, condition and kind has words, is reached by some question, and is no leftover.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { topics } from '../../commands/index.ts'
import { faultTells } from '../../src/core/fault.ts'
import { type Answer, answerSchema } from '../../src/questions/answer.ts'
import { questionNames, questions } from '../../src/questions/index.ts'
import { links } from '../../src/questions/matters/links.ts'
import { slugs, statements } from '../../src/questions/matters/topic.ts'
import { citations } from '../../src/tables/citation.ts'
import { conditionSpellings, conditions, conditionTable } from '../../src/tables/conditions.ts'
import { frictionTable } from '../../src/tables/friction.ts'
import { en } from '../../src/words/en/index.ts'
import { cases } from '../contract/cases.ts'
import { testDesk } from '../support/doors.ts'
import { loanFor } from '../support/fleet.ts'

const root = join(import.meta.dirname, '../..')
const source = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name) && !name.startsWith('words/'))
  .map((name) => readFileSync(join(root, 'src', name), 'utf8'))
  .join('\n')

const named = (key: string): boolean =>
  [`'${key}'`, `"${key}"`, `\`${key}`, `.${key}`].some((form) => source.includes(form))
// Phrases that are put together from a kind: condition.dry, cause.wrench, place.both, tolerance-band.inside.
// Of a topic: matter.bars.verdict and so on, and the links that any topic has.
const families = [
  ...['condition.', 'cause.', 'place.', 'tolerance-band.', 'wrench-check.', 'compare.', 'event.', 'happened.'],
  ...slugs.flatMap((slug) => statements.map((statement) => `matter.${slug}.${statement}`)),
  ...slugs.flatMap((slug) => links[slug].map((link) => `matter.link.${link}`)),
]

describe('words', () => {
  it('every phrase is said somewhere', () => {
    const silent = Object.keys(en.say).filter(
      (key) => !named(key) && !families.some((family) => key.startsWith(family)),
    )
    expect(silent).toEqual([])
  })

  it.each([
    ['caution', Object.keys(en.cautions)],
    ['pointer', Object.keys(en.pointers)],
    ['fault', Object.keys(en.faults)],
  ])('every %s is told by some rule', (_name, keys) => {
    expect(keys.filter((key) => !named(key))).toEqual([])
  })

  it('every input and result of every question has its words', () => {
    for (const name of questionNames) {
      for (const input of Object.keys(questions[name].inputs))
        expect(en.inputs, `${name} ${input}`).toHaveProperty([input])
      for (const result of questions[name].results) expect(en.results, `${name} ${result}`).toHaveProperty([result])
    }
  })

  it('every place in a text is a name that can be filled', () => {
    const texts = [
      ...Object.values(en.say),
      ...Object.values(en.cautions),
      ...Object.values(en.faults).flatMap(({ allowed, hint }) => [allowed, hint]),
    ]
    for (const text of texts) expect(text.replace(/\{[a-z]+\}/g, ''), text).not.toMatch(/[{}]/)
  })

  it('no text holds a tracked mark, a double space or an unfinished sentence', () => {
    for (const text of [...Object.values(en.say), ...Object.values(en.cautions)])
      expect(text).not.toMatch(/ {2}|\?\?\?|TBD/)
    for (const text of Object.values(en.cautions)) expect(text).toMatch(/[.!]$/)
  })
})

describe('faults', () => {
  it('have words each, and every code is told by at least one', () => {
    expect(Object.keys(en.faults).sort()).toEqual(Object.keys(faultTells).sort())
  })
})

describe('questions', () => {
  const answers: readonly Answer[] = cases.map(({ question, raw }) =>
    testDesk().ask(question, raw, { door: 'terminal' }, loanFor(question)),
  )

  it('give the results that they declare, and no others', () => {
    for (const answer of answers) {
      const declared = questions[answer.question as (typeof questionNames)[number]].results
      for (const name of Object.keys(answer.results)) expect(declared, `${answer.question} ${name}`).toContain(name)
    }
    for (const name of questionNames) {
      const seen = new Set(
        answers.filter(({ question }) => question === name).flatMap(({ results }) => Object.keys(results)),
      )
      expect(
        [...questions[name].results].filter((result) => !seen.has(result)),
        name,
      ).toEqual([])
    }
  })

  it('carry the maker first, a pointer, and where answered a source and a working', () => {
    for (const answer of answers) {
      expect(answerSchema.safeParse(answer).error).toBeUndefined()
      expect(answer.cautions.map(({ code }) => code)).toContain('maker-first')
      if (answer.status !== 'answered') continue
      expect(answer.sources.length, `${answer.question}`).toBeGreaterThan(0)
      // A topic alone has nothing to work out: its why and how much are said in words.
      const inWords = answer.question === 'does-it-matter' && Object.keys(answer.results).length === 4
      if (!inWords) expect(answer.steps.length, `${answer.question}`).toBeGreaterThan(0)
      expect(new Set(answer.cautions.map(({ code }) => code)).size).toBe(answer.cautions.length)
    }
  })

  it('examples of every input are read by the input itself, in both systems', () => {
    for (const name of questionNames) {
      for (const [input, spec] of Object.entries(questions[name].inputs)) {
        for (const text of [
          spec.example.metric,
          spec.example.inch,
          ...(spec.ladder?.metric ?? []),
          ...(spec.ladder?.inch ?? []),
        ]) {
          expect(spec.read([text], input).ok, `${name} ${input} ${text}`).toBe(true)
        }
        for (const choice of spec.choices ?? [])
          expect(spec.read([choice], input).ok, `${name} ${input} ${choice}`).toBe(true)
      }
    }
  })

  it('a missing input that can be laddered is, with 5 to 12 rows', () => {
    for (const name of questionNames) {
      const { inputs, oneOf } = questions[name]
      const needed = Object.keys(inputs).filter(
        (input) => inputs[input]?.needed || oneOf.some(([first]) => first === input),
      )
      const full = Object.fromEntries(needed.map((input) => [input, inputs[input]?.example.metric as string]))
      for (const input of needed.filter((one) => inputs[one]?.ladder)) {
        const { [input]: _left, ...rest } = full
        const answer = testDesk().ask(name, rest, { door: 'terminal' }, loanFor(name))
        expect([answer.status, answer.missing.map((one) => one.input)], `${name} without ${input}`).toEqual([
          'incomplete',
          [input],
        ])
        expect(answer.ladder?.rows.length ?? 0, `${name} without ${input}`).toBeGreaterThanOrEqual(5)
        expect(answer.ladder?.rows.length ?? 0).toBeLessThanOrEqual(12)
      }
    }
  })
})

describe('tables', () => {
  it('every condition has a nut factor with its ends in order, a friction row, and spellings that no other has', () => {
    const all = conditions.flatMap((condition) => conditionSpellings[condition])
    expect(new Set(all).size).toBe(all.length)
    for (const condition of conditions) {
      const { low, typical, high } = conditionTable[condition]
      expect(low <= typical && typical <= high, condition).toBe(true)
      expect(frictionTable[condition].length).toBeGreaterThan(0)
      expect(en.say).toHaveProperty([`condition.${condition}`])
    }
  })

  it('every citation is cited, and every topic has its words', () => {
    expect(Object.keys(citations).filter((key) => !source.includes(`citations.${key}`))).toEqual([])
    for (const { name } of topics) expect(en.topics).toHaveProperty([name])
  })
})
