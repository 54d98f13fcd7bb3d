// Inputs that are words more than numbers: a choice, a thread size, a unit, and a quantity of any kind.
import { fault, read, refuse } from '../core/fault.ts'
import { LONGEST_QUANTITY, type Wanted } from '../core/parse-quantity.ts'
import { parseSize, type Size } from '../core/parse-size.ts'
import { parseTarget } from '../core/parse-target.ts'
import { quantity, type Target } from '../core/quantity.ts'
import { spelledUnits, type Unit, type UnitSymbol, units } from '../core/unit.ts'
import { threadTable } from '../tables/threads.ts'
import { asked, common, type Input, type Options, one, same, within } from './input.ts'

const foldWord = (text: string): string => text.toLowerCase().replace(/[\s\-_/,&+.]/g, '')

/** One of a closed list; `spellings` are what else people write for each. */
export const choice = <C extends string, N extends boolean = false>(
  options: Options<N> & { readonly of: readonly C[]; readonly spellings?: Readonly<Record<C, readonly string[]>> },
): Input<C, N> => ({
  kind: 'choice',
  most: 1,
  choices: options.of,
  ...common(options, same(options.of[0] as string)),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    if (text.value.trim() === '') return refuse(fault('empty', input, text.value, { options: options.of }))
    if (text.value.length > LONGEST_QUANTITY) {
      return refuse(fault('too-long', input, text.value, { most: String(LONGEST_QUANTITY) }))
    }
    const folded = foldWord(text.value)
    const found = options.of.find((one) => foldWord(one) === folded || options.spellings?.[one].includes(folded))
    return found ? read(found) : refuse(fault('not-a-choice', input, text.value, { options: options.of }))
  },
  given: (value, input) => [asked(input, value)],
})

// A coarse metric thread is written without its pitch as a rule, and so comes first so.
const sizeNames: readonly string[] = threadTable.flatMap(({ name, series, system, d }) =>
  series === 'coarse' && system === 'metric' ? [`M${Math.round(d * 1e5) / 100}`, name] : [name],
)
const sizesLike = (typed: string): readonly string[] => {
  const wanted = typed.trim().toLowerCase()
  return sizeNames.filter((name) => name.toLowerCase().startsWith(wanted))
}

/** A thread size: M12, M12x1.5, 3/8-16, #10-32. */
export const size = <N extends boolean = false>(options: Options<N> = {}): Input<Size, N> => ({
  kind: 'size',
  most: 1,
  fitting: sizesLike,
  ...common(
    options,
    { metric: 'M12', inch: '3/8-16' },
    {
      metric: ['M6', 'M8', 'M10', 'M12', 'M14', 'M16', 'M20'],
      inch: ['1/4-20', '5/16-18', '3/8-16', '7/16-14', '1/2-13', '5/8-11'],
    },
  ),
  read: (texts, input) => {
    const text = one(texts, input)
    return text.ok ? parseSize(text.value, input) : text
  },
  given: (value, input) => [{ ...asked(input, value.diameter), name: value.name }],
})

/** A quantity of any dimension that is converted; a bare lb or kg is a mass here. */
export const anyQuantity = <N extends boolean = false>(options: Options<N> = {}): Input<Target, N> => ({
  kind: 'quantity',
  most: 1,
  ...common(options, { metric: '20 N·m', inch: '15 lbf·ft' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted: Wanted = { input, dimensions: ['torque', 'length', 'mass', 'force', 'stress', 'angle', 'percent'] }
    const target = parseTarget(text.value, wanted)
    if (!target.ok) return target
    const wrong = within(target.value, wanted, text.value, {
      signed: true,
      zero: true,
      most: quantity(1e9, target.value.unit),
    })
    return wrong ? refuse(wrong) : target
  },
  given: (value, input) => [
    {
      ...asked(input, value),
      ...(value.low === undefined ? {} : { low: value.low }),
      ...(value.high === undefined ? {} : { high: value.high }),
    },
  ],
})

/** The name of a unit; it may stand for several (lb: a mass or a force), so all are handed on. */
export const unitName = <N extends boolean = false>(options: Options<N> = {}): Input<readonly Unit[], N> => ({
  kind: 'unit',
  most: 1,
  ...common(options, { metric: 'lbf·ft', inch: 'N·m' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    if (text.value.trim() === '') return refuse(fault('empty', input, text.value, { options: ['N·m', 'lbf·ft'] }))
    const spelled = spelledUnits(text.value.slice(0, 64)).filter(({ times }) => times === 1)
    if (spelled.length === 0) return refuse(fault('not-a-unit', input, text.value, { options: convertible }))
    return read(spelled.map(({ unit }) => unit))
  },
  given: (value, input) => [asked(input, (value[0] as Unit).symbol)],
})

export const convertible: readonly string[] = (Object.keys(units) as UnitSymbol[]).filter((symbol) => symbol !== '1')
