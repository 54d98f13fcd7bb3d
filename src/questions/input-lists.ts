// Inputs that hold several values: a chain of adapters, readings.
import { fault, refuse } from '../core/fault.ts'
import { type Adapter, parseAdapters, parseReadings } from '../core/parse-list.ts'
import type { Wanted } from '../core/parse-quantity.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { asked, common, type Input, type Options, within } from './input.ts'

const longestAdapter = quantity(10, units.m)

/** One to four adapters, each `length` or `length@angle`. */
export const adapters = <N extends boolean = false>(options: Options<N> = {}): Input<readonly Adapter[], N> => ({
  kind: 'adapters',
  most: 4,
  between: ' + ',
  ...common(
    options,
    { metric: '45 mm@30', inch: '2 in@90' },
    {
      metric: ['20 mm', '30 mm', '40 mm', '50 mm', '75 mm', '100 mm', '150 mm'],
      inch: ['1 in', '1-1/2 in', '2 in', '2-1/2 in', '3 in', '4 in', '6 in'],
    },
  ),
  read: (texts, input) => {
    const chain = parseAdapters(texts, input, 4)
    if (!chain.ok) return chain
    const faults = chain.value.flatMap(({ length: reach, angle: turn }) => [
      reach.value < 0
        ? fault('adapter-negative', input, texts.join('; '))
        : within(reach, { input, dimensions: ['length'] }, texts.join('; '), { most: longestAdapter }),
      turn && Math.abs(turn.value) > 180
        ? fault('above-limit', input, texts.join('; '), { limit: quantity(180, units['°']) })
        : undefined,
    ])
    const wrong = faults.filter((found) => found !== undefined)
    return wrong.length > 0 ? refuse(...wrong) : chain
  },
  given: (chain, input) =>
    chain.map(({ length: reach, angle: turn }, index) => ({
      ...asked(input, reach),
      index,
      ...(turn === undefined ? {} : { angle: turn.value }),
    })),
})

/** Several readings of one dimension, a unit on each or once at the end. */
export const readings = <N extends boolean = false>(
  options: Options<N> & { readonly dimension: 'torque' | 'force'; readonly most: number },
): Input<readonly Quantity[], N> => ({
  kind: options.dimension,
  most: options.most,
  ...common(
    options,
    options.dimension === 'force'
      ? { metric: '14.2; 14.3 kg', inch: '33; 33.5 lb' }
      : { metric: '59.5; 60.2 N·m', inch: '44; 45 lbf·ft' },
  ),
  read: (texts, input) => {
    const wanted: Wanted = { input, dimensions: [options.dimension] }
    const all = parseReadings(texts, wanted, { most: options.most })
    if (!all.ok) return all
    const wrong = all.value
      .map((reading) => within(reading, wanted, texts.join('; '), {}))
      .filter((found) => found !== undefined)
    return wrong.length > 0 ? refuse(...wrong) : all
  },
  given: (all, input) => all.map((reading, index) => ({ ...asked(input, reading), index })),
})
