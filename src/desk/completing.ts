// What is offered while a value is typed: a number with each unit that it may have, sizes, classes. It holds nobody to it.
import { parseQuantity } from '../core/parse-quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { type Dimension, everyday, unitsOf } from '../core/unit.ts'
import type { Input, InputKind } from '../questions/input.ts'
import type { System } from './own-units.ts'

const dimensionOf: Readonly<Partial<Record<InputKind, Dimension>>> = {
  torque: 'torque',
  'torque-or-span': 'torque',
  length: 'length',
  adapters: 'length',
  force: 'force',
  mass: 'mass',
  angle: 'angle',
  percent: 'percent',
}

const number = /^\s*([-+]?[\d.,½¼¾⅛⅜⅝⅞/ -]*[\d½¼¾⅛⅜⅝⅞])\s*$/u

// Units of the system that is wanted come first, the everyday one before all.
const unitsFor = (dimension: Dimension, system: System): readonly string[] => {
  const first = everyday[dimension][system]
  const other = everyday[dimension][system === 'metric' ? 'inch' : 'metric']
  const rest = unitsOf(dimension).filter((unit) => unit !== first && unit !== other)
  return [...new Set([first, other, ...rest].map(({ symbol }) => symbol))]
}

const quantities = (dimension: Dimension, typed: string, system: System, input: string): readonly string[] => {
  const bare = number.exec(typed)?.[1]?.trim()
  if (bare !== undefined) {
    const whole = unitsFor(dimension, system).map((unit) => (unit === '°' ? `${bare}°` : `${bare} ${unit}`))
    // Only what would be read is offered: 1,234 has two readings whatever its unit.
    return whole.filter((text) => parseQuantity(text, { input, dimensions: [dimension] }).ok)
  }
  const read = parseQuantity(typed, { input, dimensions: [dimension] })
  return read.ok ? [echoQuantity(read.value)] : []
}

// What is converted may be of any kind: the usual ones.
const anyKind: readonly Dimension[] = ['torque', 'length', 'force', 'mass']

/** Offers for an input by what has been typed so far, the likeliest first; the example where nothing was. */
export const completionsFor = (
  input: Pick<Input<unknown>, 'kind' | 'example' | 'fitting'>,
  name: string,
  typed: string,
  system: System,
): readonly string[] => {
  if (input.fitting) return input.fitting(typed)
  const dimension = dimensionOf[input.kind]
  if (typed.trim() === '') return [input.example[system]]
  if (input.kind === 'quantity') return anyKind.flatMap((one) => quantities(one, typed, system, name).slice(0, 4))
  return dimension === undefined ? [] : quantities(dimension, typed, system, name)
}

/** Whether anything can be offered while it is typed. */
export const completable = ({
  kind,
  fitting,
  choices,
}: Pick<Input<unknown>, 'kind' | 'fitting' | 'choices'>): boolean =>
  choices === undefined &&
  (fitting !== undefined || kind === 'wrench' || kind === 'bench' || kind === 'quantity' || kind in dimensionOf)
