// While one thing is missing: the answer over 5 to 12 values of it, each row the very answer that the value would have got.
import { describe, expect, it } from 'vitest'
import { type QuestionName, questionNames } from '../../src/questions/index.ts'
import { answered, ask, numberOf, quantityIn } from '../support/desk.ts'
import { exampleInputs, neededOf, systems } from '../support/examples.ts'

/** Inputs for which a ladder would say nothing: readings that only the asker has, and what the question is about. */
const none: ReadonlySet<string> = new Set([
  'convert quantity',
  'nut-factor torque',
  'nut-factor clamp-force',
  'wrench-check points',
  'next-check last-check',
  'compare a',
  'compare b',
  'does-it-matter topic',
])

const missingOne = questionNames.flatMap((name) =>
  neededOf(name).flatMap((input) => systems.map((system) => [name, input, system] as const)),
)

const without = (name: QuestionName, input: string, system: 'metric' | 'inch') =>
  Object.fromEntries(Object.entries(exampleInputs(name, system)).filter(([one]) => one !== input))

describe('a ladder', () => {
  const laddered = missingOne.filter(([name, input]) => !none.has(`${name} ${input}`))

  it.each(laddered)('of %s stands in for the %s (%s): 5 to 12 rows', (name, input, system) => {
    const answer = ask(name, without(name, input, system), system)
    expect(answer.status).toBe('incomplete')
    expect(answer.missing.map((one) => one.input)).toEqual([input])
    expect(answer.ladder?.by).toBe(input)
    expect(answer.ladder?.rows.length).toBeGreaterThanOrEqual(5)
    expect(answer.ladder?.rows.length).toBeLessThanOrEqual(12)
    const texts = answer.ladder?.rows.map(({ at }) => at.text) ?? []
    expect(new Set(texts).size).toBe(texts.length)
  })

  it.each(laddered)(
    'of %s over the %s (%s) holds the answers that its values get when they are typed',
    (name, input, system) => {
      const rest = without(name, input, system)
      for (const { at, results } of ask(name, rest, system).ladder?.rows ?? []) {
        expect(answered(name, { ...rest, [input]: at.text }, system).results, at.text).toEqual(results)
      }
    },
  )

  it.each([...none])('is not made up for %s', (pair) => {
    const [name, input] = pair.split(' ') as [QuestionName, string]
    const answer = ask(name, without(name, input, 'metric'), 'metric')
    expect(answer.status).toBe('incomplete')
    expect(answer.ladder).toBeUndefined()
  })

  it('is not shown while two things are missing', () => {
    expect(ask('adapter-setting', { torque: '120 N·m' }).ladder).toBeUndefined()
  })

  it('speaks the system of what was given, else the shop’s', () => {
    const first = (inputs: Record<string, string>, system: 'metric' | 'inch'): string | undefined =>
      ask('adapter-setting', inputs, system).ladder?.rows[0]?.at.text
    expect(first({ torque: '40 lbf·ft', adapter: '2 in' }, 'metric')).toBe('8 in')
    expect(first({ torque: '40 N·m', adapter: '50 mm' }, 'inch')).toBe('200 mm')
    expect(ask('tolerance-band', { tolerance: '4 %' }, 'inch').ladder?.rows[0]?.at.text).toBe('15 lbf·ft')
  })

  it('leaves out values that cannot be: an adapter that ends behind the hand, or too near it', () => {
    const answer = ask('adapter-setting', { torque: '40 N·m', lever: '60 mm', angle: '180' })
    // Four of them end ahead of the hand: too few to be a ladder.
    expect(answer.ladder).toBeUndefined()
    const longer = ask('adapter-setting', { torque: '40 N·m', lever: '120 mm', angle: '180' })
    expect(longer.ladder?.rows.map(({ at }) => at.text)).toEqual(['20 mm', '30 mm', '40 mm', '50 mm', '75 mm'])
  })

  it('of an unknown pivot goes over 0 to 10 % of the lever', () => {
    const answer = ask('hand-position', { setting: '100 N·m', lever: '400 mm', hand: '300 mm' })
    expect(answer.missing.map(({ input }) => input)).toEqual(['pivot'])
    expect(answer.ladder?.rows.map(({ at }) => at.value)).toEqual(
      [0, 8, 16, 24, 32, 40].map((p) => expect.closeTo(p, 9)),
    )
    const torques = answer.ladder?.rows.map(({ results }) => quantityIn(results, 'torque').value) ?? []
    expect(torques).toEqual(
      [0, 8, 16, 24, 32, 40].map((p) => expect.closeTo((100 * ((400 - p) / 400) * 300) / (300 - p), 9)),
    )
  })

  it('rises or falls as the lever does: a longer lever, a higher setting', () => {
    const rows = ask('adapter-setting', { torque: '100 N·m', adapter: '50 mm@0' }).ladder?.rows ?? []
    const settings = rows.map(({ results }) => quantityIn(results, 'setting').value)
    expect(settings).toEqual([...settings].sort((one, other) => one - other))
    const typed = { torque: '100 N·m', adapter: '50 mm@0', lever: '200 mm' }
    expect(settings[0]).toBe(numberOf(answered('adapter-setting', typed), 'setting'))
  })
})
