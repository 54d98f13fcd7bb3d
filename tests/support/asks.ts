// Questions made by chance for the fuzzer: grammar-made options that know their value, and nonsense of every kind.
import fc from 'fast-check'
import { quantity } from '../../src/core/quantity.ts'
import { writeQuantity } from '../../src/core/quantity-text.ts'
import { type Dimension, unitsOf } from '../../src/core/unit.ts'
import { type QuestionName, questionNames, questions } from '../../src/questions/index.ts'

const nonsense = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(
    '',
    ' ',
    '0',
    '-0',
    '-1 N·m',
    'NaN',
    'Infinity N·m',
    '1e309 mm',
    '0x10 in',
    '1,234 mm',
    '١٢ mm',
    '🔧',
    '1/0 in',
    '@',
    ';',
    '+',
    ' + ',
    '@@',
    '5@',
    '±',
    '..',
    '-',
    '--',
    '999999999999999999999 N·m',
    '0.0000000001 mm',
    '\u202e5 mm',
    '__proto__',
    '100 N·m\u0000',
    '1'.repeat(300),
  ),
)

const number = fc.oneof(
  fc.integer({ min: 1, max: 2000 }).map(Number),
  fc.double({ min: 0.001, max: 5000, noNaN: true }).map((value) => Number(value.toPrecision(4))),
)

const measure = (dimension: Dimension): fc.Arbitrary<string> =>
  fc.tuple(number, fc.constantFrom(...unitsOf(dimension))).map(([value, unit]) => writeQuantity(quantity(value, unit)))

/** A text that fits the kind of an input more often than not. */
const fitting = (name: QuestionName, input: string): fc.Arbitrary<string> => {
  const spec = questions[name].inputs[input]
  const examples = [
    spec?.example.metric ?? '',
    spec?.example.inch ?? '',
    ...(spec?.ladder?.metric ?? []),
    ...(spec?.choices ?? []),
  ]
  const example = fc.constantFrom(...examples)
  const dimension = (['torque', 'length', 'force', 'mass', 'angle', 'percent', 'number'] as const).find(
    (kind) => kind === spec?.kind,
  )
  if (spec?.kind === 'torque-or-span')
    return fc.oneof(
      measure('torque'),
      fc.tuple(measure('torque'), measure('torque')).map(([a, b]) => `${a}–${b}`),
      example,
    )
  if (spec?.kind === 'adapters')
    return fc.oneof(
      fc.tuple(measure('length'), fc.integer({ min: -200, max: 200 })).map(([l, a]) => `${l}@${a}`),
      example,
    )
  return dimension ? fc.oneof(measure(dimension), example) : example
}

export interface FuzzAsk {
  readonly question: QuestionName
  readonly raw: Readonly<Record<string, string>>
}

/** A question with some of its inputs, each fitting or nonsense, and now and then an input that it does not have. */
export const fuzzAsk: fc.Arbitrary<FuzzAsk> = fc.constantFrom(...questionNames).chain((question) => {
  const inputs = Object.keys(questions[question].inputs)
  const needed = (input: string): boolean => questions[question].inputs[input]?.needed === true
  const option = (input: string): fc.Arbitrary<[string, string | undefined]> =>
    fc
      .oneof(
        { weight: needed(input) ? 12 : 3, arbitrary: fitting(question, input) },
        { weight: 1, arbitrary: nonsense },
        { weight: needed(input) ? 1 : 8, arbitrary: fc.constant(undefined) },
      )
      .map((text) => [input, text])
  const stray = fc.oneof(
    { weight: 15, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.tuple(nonsense, nonsense) },
  )
  return fc.tuple(fc.tuple(...inputs.map(option)), stray).map(([options, more]) => {
    const told = options.filter((one): one is [string, string] => one[1] !== undefined)
    return { question, raw: Object.fromEntries(more ? [...told, more] : told) }
  })
})

/** A JSON body of anything at all, for the door that takes JSON. */
export const fuzzBody = fc.tuple(
  fc.constantFrom(...questionNames),
  fc.oneof(
    fc.jsonValue().map((value) => JSON.stringify(value)),
    fc.string(),
    fc
      .dictionary(fc.constantFrom('torque', 'lever', 'adapter', 'size', 'x'), fc.jsonValue())
      .map((value) => JSON.stringify(value)),
  ),
)
