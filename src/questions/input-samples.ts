// Inputs of what was read on a bench: check points against a reference, and sets of readings of any one kind.
import { type Fault, fault, read, refuse } from '../core/fault.ts'
import { parseReadings } from '../core/parse-list.ts'
import { MOST_POINTS, POINT_MARK, type Point, parsePoints } from '../core/parse-points.ts'
import { parseQuantity, type Wanted } from '../core/parse-quantity.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { writeReadings } from '../core/readings-text.ts'
import type { Dimension } from '../core/unit.ts'
import { asked, common, type Input, type Options, one, within } from './input.ts'

/** One to twelve points, each `setting: readings`; left what the wrench says, right the reference. `readIn`: what that shows. */
export const points = <N extends boolean = false>(
  options: Options<N> & { readonly readIn?: readonly Dimension[] } = {},
): Input<readonly Point[], N> => ({
  kind: 'points',
  most: MOST_POINTS,
  between: POINT_MARK,
  ...common(options, {
    metric: '40 N·m: 39.8; 40.3 N·m | 100 N·m: 99.5; 101 N·m',
    inch: '30 lbf·ft: 29.8; 30.3 lbf·ft | 75 lbf·ft: 74; 75.5 lbf·ft',
  }),
  read: (texts, input) => {
    const all = parsePoints(texts, input, options.readIn)
    if (!all.ok) return all
    const wanted: Wanted = { input, dimensions: ['torque'] }
    const faults = all.value
      .flatMap(({ setting, readings }) => [setting, ...readings])
      .map((q) => within(q, wanted, shown(q, texts), {}))
      .filter((found) => found !== undefined)
    return faults.length > 0 ? refuse(...faults) : all
  },
  given: (all, input) =>
    all.map(({ setting, readings }, index) => ({ ...asked(input, setting), index, values: readings })),
})

// A number that is not finite cannot be written; then the text that held it is shown.
const shown = (q: Quantity, texts: readonly string[]): string =>
  Number.isFinite(q.value) ? writeQuantity(q) : texts.join(POINT_MARK)

/** Five hundred readings with a unit on each fit; the parser takes a time that grows with the text and no faster. */
export const LONGEST_SAMPLES = 12_000
export const MOST_SAMPLES = 500
const LARGEST = 1e9
const SMALLEST = 1e-9

// A bare number is a plain number here. A bare lb or kg is a mass: two sets of one kind compare alike either way.
const anyKind: readonly Dimension[] = [
  'number',
  'torque',
  'mass',
  'force',
  'length',
  'angle',
  'stress',
  'percent',
] as const

const tooFar = (q: Quantity, input: string, texts: readonly string[]): Fault[] => {
  const size = Math.abs(q.value)
  if (size > LARGEST) return [fault('above-limit', input, shown(q, texts), { limit: quantity(LARGEST, q.unit) })]
  if (size > 0 && size < SMALLEST)
    return [fault('below-limit', input, shown(q, texts), { limit: quantity(SMALLEST, q.unit) })]
  return []
}

/** A set of readings, all of one kind: torques, forces, lengths, or plain numbers. */
export const samples = <N extends boolean = false>(options: Options<N> = {}): Input<readonly Quantity[], N> => ({
  kind: 'readings',
  most: MOST_SAMPLES,
  ...common(options, { metric: '99.5; 101; 100.2 N·m', inch: '74; 75.5; 74.8 lbf·ft' }),
  read: (texts, input) => {
    const all = parseReadings(texts, { input, dimensions: anyKind }, { longest: LONGEST_SAMPLES, most: MOST_SAMPLES })
    if (!all.ok) return all
    const [first] = all.value
    if (!first || all.value.length < 2)
      return refuse(fault('too-few-readings', input, texts.join('; '), { least: '2' }))
    const faults = all.value.flatMap((q) => tooFar(q, input, texts))
    if (faults.length > 0) return refuse(...faults)
    const other = all.value.find(({ unit }) => unit.dimension !== first.unit.dimension)
    return other ? refuse(fault('readings-differ', input, writeQuantity(other), { kind: first.unit.dimension })) : all
  },
  given: (all, input) => [{ ...asked(input, writeReadings(all)), values: all }],
})

/** One value of any kind, above 0: the step of what the readings were read on. */
export const anyStep = <N extends boolean = false>(options: Options<N> = {}): Input<Quantity, N> => ({
  kind: 'reading',
  most: 1,
  ...common(options, { metric: '0.1 N·m', inch: '0.1 lbf·ft' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const step = parseQuantity(text.value, { input, dimensions: anyKind })
    if (!step.ok) return step
    if (step.value.value < 0) return refuse(fault('negative', input, text.value, { kind: step.value.unit.dimension }))
    const far = tooFar(step.value, input, texts)
    return far.length > 0 ? refuse(...far) : read(step.value)
  },
  given: (value, input) => [asked(input, value)],
})
