// Properties: noise sentences, other units, other spellings and another order of the clauses do not change the answer, or it asks.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Unit, units } from '../../src/core/unit.ts'
import { desks, numberOf } from '../support/desk.ts'

interface Spelled {
  readonly unit: Unit
  readonly text: string
}

const torqueUnits: readonly Spelled[] = [
  ...['Nm', 'N·m', 'newton meters', 'nm', 'N.m'].map((text) => ({ unit: units['N·m'], text })),
  ...['ft-lb', 'ft lbs', 'lb-ft', 'foot pounds', 'ft/lbs', 'lbf·ft', 'lb. ft.'].map((text) => ({
    unit: units['lbf·ft'],
    text,
  })),
  ...['in-lb', 'inch pounds', 'in.-lbs'].map((text) => ({ unit: units['lbf·in'], text })),
]
const lengthUnits: readonly Spelled[] = [
  ...['mm', ' mm', ' millimetres'].map((text) => ({ unit: units.mm, text })),
  ...['cm', ' cm'].map((text) => ({ unit: units.cm, text })),
  ...[' in', '"', ' inch', ' inches'].map((text) => ({ unit: units.in, text })),
]

const noise = [
  'It is a 2009 van.',
  'There are 4 bolts.',
  'Heads are 17 mm.',
  'I paid $45 for it.',
  'Done 60000 miles on it.',
  'I am 62 years old.',
  'It has the 1.9 diesel.',
  'Part number is 92T-1187.',
  'My neighbour laughed at me.',
  'Never had a problem before.',
]

// The number in the unit that is written, rounded so that it reads as one number; what it stands for is taken from that.
const written = (siValue: number, { unit }: Spelled): number => {
  const value = Math.round((siValue / unit.factor) * 10) / 10
  return value
}

const torque = fc.tuple(fc.integer({ min: 20, max: 200 }), fc.constantFrom(...torqueUnits))
const lever = fc.tuple(fc.integer({ min: 250, max: 600 }), fc.constantFrom(...lengthUnits))
const adapter = fc.tuple(fc.integer({ min: 40, max: 120 }), fc.constantFrom(...lengthUnits))
const adapterNoun = fc.constantFrom('crowfoot', 'crow foot', "crow's foot", 'adapter', 'adaptor', 'offset adapter')
const direction = fc.constantFrom<readonly [string, number]>(
  ['straight', 0],
  ['in line', 0],
  ['at 90 degrees', 90],
  ['at right angles to the wrench', 90],
  ['at 45°', 45],
  ['pointing back toward my hand', 180],
)

const told = fc
  .record({
    torque,
    lever,
    adapter,
    noun: adapterNoun,
    direction,
    noises: fc.subarray(noise, { maxLength: 4 }),
    order: fc.shuffledSubarray([0, 1, 2], { minLength: 3, maxLength: 3 }),
    ends: fc.constantFrom('What do I set?', 'what should I dial', 'Setting please.'),
    wants: fc.constantFrom('I want', 'need', 'book says', 'spec is', 'target is'),
    wrench: fc.constantFrom('wrench is', 'lever', 'my torque wrench is', 'drive to grip'),
  })
  .map(
    ({
      torque: [T, tu],
      lever: [L, lu],
      adapter: [E, eu],
      noun,
      direction: [words, angle],
      noises,
      order,
      ends,
      wants,
      wrench,
    }) => {
      const values = { T: written(T, tu), L: written(L / 1000, lu), E: written(E / 1000, eu) }
      const clauses = [
        `${wants} ${values.T} ${tu.text}`,
        `${wrench} ${values.L}${lu.text}`,
        `${values.E}${eu.text} ${noun} ${words}`,
      ]
      const said = order.map((place) => clauses[place] as string)
      const text = [...noises.slice(0, 2), `${said.join(', ')}.`, ...noises.slice(2), ends].join(' ')
      const [lm, em] = [values.L * lu.unit.factor, values.E * eu.unit.factor]
      const setting = (values.T * tu.unit.factor * lm) / (lm + em * Math.cos((angle * Math.PI) / 180))
      return { text, setting }
    },
  )

const settingOf = (text: string): number | undefined => {
  const answer = desks.inch.askText(text, { door: 'terminal' })
  if (answer.status !== 'answered') return undefined
  if (answer.question !== 'adapter-setting') return Number.NaN
  const result = answer.results['setting'] as { unit: string }
  const unit = Object.values(units).find(({ symbol }) => symbol === result.unit) as Unit
  return numberOf(answer, 'setting') * unit.factor
}

describe('however it is told', () => {
  it('the setting is the same, or it is asked', () => {
    fc.assert(
      fc.property(told, ({ text, setting }) => {
        const found = settingOf(text)
        if (found === undefined) return
        expect(found / setting, text).toBeCloseTo(1, 6)
      }),
      { numRuns: 1500, seed: 11 },
    )
  })

  it('most of it is answered: what asks always would hold the property too', () => {
    const all = fc.sample(told, { numRuns: 400, seed: 5 })
    const answered = all.filter(({ text }) => settingOf(text) !== undefined)
    expect(answered.length / all.length).toBeGreaterThan(0.9)
  })

  it('noise alone is no question, and gives no number', () => {
    fc.assert(
      fc.property(fc.subarray(noise, { minLength: 1 }), (sentences) => {
        const answer = desks.inch.askText(sentences.join(' '), { door: 'terminal' })
        expect([answer.status, answer.results]).toEqual(['refused', {}])
      }),
      { numRuns: 200, seed: 3 },
    )
  })

  it('a pull on a scale gives the same torque in any unit and order', () => {
    const scale = fc.record({
      force: fc.tuple(
        fc.integer({ min: 5, max: 60 }),
        fc.constantFrom<Spelled>(
          { unit: units.kgf, text: 'kg' },
          { unit: units.kgf, text: 'kilos' },
          { unit: units.lbf, text: 'lb' },
          { unit: units.N, text: 'N' },
        ),
      ),
      distance: lever,
      first: fc.boolean(),
      noises: fc.subarray(noise, { maxLength: 2 }),
    })
    fc.assert(
      fc.property(scale, ({ force: [F, fu], distance: [D, du], first, noises }) => {
        const value = written(D / 1000, du)
        const clauses = [`luggage scale shows ${F} ${fu.text}`, `hook is ${value}${du.text} from the drive`]
        const text = `${noises.join(' ')} ${(first ? clauses : clauses.reverse()).join(', ')}.`
        const answer = desks.metric.askText(text, { door: 'terminal' })
        expect([answer.question, answer.status], text).toEqual(['scale-check', 'answered'])
        const unit = Object.values(units).find(
          ({ symbol }) => symbol === (answer.results['torque'] as { unit: string }).unit,
        ) as Unit
        expect(
          (numberOf(answer, 'torque') * unit.factor) / (F * fu.unit.factor * value * du.unit.factor),
          text,
        ).toBeCloseTo(1, 6)
      }),
      { numRuns: 300, seed: 7 },
    )
  })
})
