// Raw options to values: whatever a door received, all faults at once, each naming its input; nothing coerced, nothing dropped.
import { describe, expect, it } from 'vitest'
import { readQuestion } from '../../src/desk/read.ts'
import { questions } from '../../src/questions/index.ts'
import { ask, codesOf } from '../support/desk.ts'

const setting = questions['adapter-setting']
const good = { torque: '120 N·m', lever: '380 mm', adapter: '45 mm@30' }

describe('reading', () => {
  it('collects the faults of every input at once, in the order of the declaration', () => {
    const { faults } = readQuestion(setting, {
      nonsense: '1',
      most: '0x10 N·m',
      adapter: '2 + 3 in@x',
      lever: '14',
      torque: '100 lb',
    })
    expect(faults.map(({ input, tell }) => `${input} ${tell}`)).toEqual([
      'torque pound-alone',
      'lever unit-missing',
      'adapter unit-missing',
      'adapter not-a-number',
      'most not-a-number',
      'nonsense unknown-input',
    ])
  })

  it('gives the same document whatever order the inputs came in', () => {
    const turned = Object.fromEntries(Object.entries({ ...good, most: '200 N·m', hand: '300 mm' }).reverse())
    expect(ask('adapter-setting', turned)).toEqual(ask('adapter-setting', { ...good, most: '200 N·m', hand: '300 mm' }))
  })

  it('lists what is missing beside the faults, but not what was tried and failed', () => {
    const answer = ask('adapter-setting', { torque: '120' })
    expect(answer.status).toBe('refused')
    expect(answer.missing.map(({ input }) => input)).toEqual(['lever', 'adapter'])
    expect(answer.ladder).toBeUndefined()
  })

  it('shows what was understood beside the faults', () => {
    const answer = ask('adapter-setting', { torque: '120', lever: '380 mm' })
    expect(answer.given.map(({ input, text }) => [input, text])).toEqual([['lever', '380 mm']])
  })

  it.each<[string, unknown]>([
    ['null', null],
    ['a number', 120],
    ['a boolean', true],
    ['an object', { value: 120, unit: 'N·m' }],
    ['a list with a number', ['120 N·m', 5]],
    ['a list with a list', [['120 N·m']]],
  ])('refuses %s where a text is wanted', (_, raw) => {
    const { faults } = readQuestion(setting, { ...good, torque: raw })
    expect(faults.map(({ input, tell }) => [input, tell])).toEqual([['torque', 'not-a-text']])
  })

  it.each<[string, unknown, string]>([
    ['an empty text', '', 'empty'],
    ['a text of spaces', '   ', 'empty'],
    ['an empty list', [], 'empty'],
    ['a list of one', ['120 N·m'], ''],
    ['a single input twice', ['120 N·m', '130 N·m'], 'repeated'],
    ['a single input twice, alike', ['120 N·m', '120 N·m'], 'repeated'],
    ['an input that is undefined', undefined, ''],
  ])('takes %s for what it is', (_, raw, tell) => {
    const { faults } = readQuestion(setting, { ...good, torque: raw })
    expect(faults.map((one) => one.tell)).toEqual(tell === '' ? [] : [tell])
  })

  it('takes undefined as not given', () => {
    expect(readQuestion(setting, { ...good, torque: undefined }).missing).toEqual(['torque'])
  })

  it.each(['constructor', 'toString', 'hasOwnProperty', '__proto__', 'Torque', 'torque '])(
    'knows no input %j',
    (name) => {
      const raw = JSON.parse(`{"torque":"120 N·m","lever":"380 mm","adapter":"45 mm",${JSON.stringify(name)}:"1 N·m"}`)
      expect(codesOf(ask('adapter-setting', raw))).toEqual(['unknown-input'])
    },
  )

  it('says which inputs there are, where one is not known', () => {
    const [fault] = ask('pull', { ...{ torque: '120 N·m', lever: '380 mm' }, weight: '1 kg' }).faults
    expect(fault?.allowed).toBe('torque, lever, hand or wrench')
  })

  it('cuts names and texts that are too long to be shown', () => {
    const answer = ask('pull', { ['x'.repeat(5000)]: 'y'.repeat(5000), torque: 'z'.repeat(5000) })
    for (const { input, got, hint, allowed } of answer.faults) {
      expect(Math.max(input.length, got.length, hint.length, allowed.length)).toBeLessThan(300)
    }
    expect(answer.faults).toHaveLength(2)
  })

  it('quotes no more of an adapter than can be shown', () => {
    const answer = ask('adapter-setting', { ...good, adapter: `2 in${'@'.repeat(1500)}` })
    expect(answer.faults[0]?.hint.length).toBeLessThan(300)
    expect(answer.headline.length).toBeLessThan(400)
  })

  it('reports a fault of the whole beside faults of single inputs', () => {
    const answer = ask('adapter-setting', { ...good, torque: '120', adapter: '400 mm@180' })
    expect(codesOf(answer)).toEqual(['unit-missing', 'behind-the-hand'])
  })
})
