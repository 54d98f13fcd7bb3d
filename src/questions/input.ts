// The kinds of input: how each is read, what it may be, what it looks like. A question declares its inputs once, from these;
// validation, OpenAPI, chat options, forms, terminal help and the catalogue are all made from that one declaration.
import { type Fault, fault, type Read, read, refuse } from '../core/fault.ts'
import { parseQuantity, type Wanted } from '../core/parse-quantity.ts'
import { hasAngleStage, isSpan, parseTarget } from '../core/parse-target.ts'
import { type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { type Dimension, units } from '../core/unit.ts'
import type { Given } from './outcome.ts'

export type InputKind =
  | 'torque'
  | 'torque-or-span'
  | 'length'
  | 'adapters'
  | 'angle'
  | 'force'
  | 'mass'
  | 'percent'
  | 'number'
  | 'choice'
  | 'size'
  | 'quantity'
  | 'seat'
  | 'share'
  | 'unit'
  | 'points'
  | 'readings'
  | 'reading'
  | 'date'
  | 'count'
  | 'interval'
  | 'events'
  | 'wrench'
  | 'bench'
  | 'topic'
  | 'text'
  | 'tag'
  | 'tolerance'
  | 'temperature'

/** Texts that can be typed as they stand, in each system. */
export interface Example {
  readonly metric: string
  readonly inch: string
}

export interface Ladder {
  readonly metric: readonly string[]
  readonly inch: readonly string[]
}

export interface Input<T, Needed extends boolean = boolean> {
  readonly kind: InputKind
  readonly needed: Needed
  /** How many values it may be given; 1 where it is single. */
  readonly most: number
  readonly choices?: readonly string[]
  /** What stands between several values in one text, where it is not `; `. */
  readonly between?: string
  /** What is offered beside free text; nothing holds anybody to it. */
  readonly suggestions?: readonly string[]
  /** Those of them that fit what has been typed so far, the likeliest first; all where nothing was. */
  readonly fitting?: (typed: string) => readonly string[]
  readonly example: Example
  /** Values to show the answer for when only this input is missing. */
  readonly ladder?: Ladder
  readonly read: (texts: readonly string[], input: string) => Read<T>
  given(value: T, input: string): readonly Given[]
}

export interface Options<Needed extends boolean> {
  readonly needed?: Needed
  readonly example?: Example
  readonly ladder?: Ladder
}

export const same = (text: string): Example => ({ metric: text, inch: text })

export const common = <N extends boolean>(options: Options<N>, example: Example, ladder?: Ladder) => ({
  needed: (options.needed ?? false) as N,
  example: options.example ?? example,
  ...((options.ladder ?? ladder) ? { ladder: (options.ladder ?? ladder) as Ladder } : {}),
})

export const asked = (input: string, value: Given['value']): Given => ({ input, value, from: 'asked' })

/** Bounds in SI, each with the quantity that names it in a fault. `zero`: 0 is allowed. */
export interface Bounds {
  readonly signed?: boolean
  readonly zero?: boolean
  readonly least?: Quantity
  readonly most?: Quantity
}

const widest: Readonly<Partial<Record<Dimension, Quantity>>> = {
  torque: quantity(1_000_000, units['N·m']),
  length: quantity(100, units.m),
  force: quantity(10_000, units.kN),
  mass: quantity(1000, units.kg),
}
// Below these nothing is a wrench, a bolt or a pull; they keep every ratio finite.
const finest: Readonly<Partial<Record<Dimension, Quantity>>> = {
  torque: quantity(0.000_01, units['N·m']),
  length: quantity(0.001, units.mm),
  force: quantity(0.000_01, units.N),
  mass: quantity(0.000_001, units.kg),
}

export const within = (q: Quantity, wanted: Wanted, got: string, bounds: Bounds): Fault | undefined => {
  const { dimension } = q.unit
  const size = si(q)
  if (size < 0 && !bounds.signed) return fault('negative', wanted.input, got, { kind: dimension })
  const most = bounds.most ?? widest[dimension]
  if (most && Math.abs(size) > si(most)) return fault('above-limit', wanted.input, got, { limit: most })
  const least = bounds.least ?? (bounds.signed || bounds.zero ? undefined : finest[dimension])
  const isZero = size === 0 && (bounds.zero || bounds.signed)
  if (least && !isZero && size < si(least)) return fault('below-limit', wanted.input, got, { limit: least })
  const smallest = finest[dimension]
  if (smallest && !isZero && Math.abs(size) < si(smallest)) {
    return fault('below-limit', wanted.input, got, { limit: smallest })
  }
  return undefined
}

export const one = (texts: readonly string[], input: string): Read<string> => {
  const [text, ...more] = texts
  if (text === undefined) return refuse(fault('empty', input, ''))
  return more.length > 0 ? refuse(fault('repeated', input, texts.join(' | '))) : read(text)
}

export const single =
  (dimension: Dimension, bounds: Bounds, wantedAlso: readonly Dimension[] = []) =>
  (texts: readonly string[], input: string): Read<Quantity> => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted: Wanted = { input, dimensions: [dimension, ...wantedAlso] }
    if (dimension === 'torque' && hasAngleStage(text.value)) return refuse(fault('angle-stage', input, text.value))
    const parsed = parseQuantity(text.value, wanted)
    if (!parsed.ok) return isSpan(text.value, wanted) ? refuse(fault('one-value-only', input, text.value)) : parsed
    const wrong = within(parsed.value, wanted, text.value, bounds)
    return wrong ? refuse(wrong) : parsed
  }

const measured =
  (kind: InputKind & Dimension, example: Example, ladder?: Ladder) =>
  <N extends boolean = false>(options: Options<N> & Bounds = {}): Input<Quantity, N> => ({
    kind,
    most: 1,
    ...common(options, example, ladder),
    read: single(kind, options),
    given: (value, input) => [asked(input, value)],
  })

const torqueLadder: Ladder = {
  metric: ['20 N·m', '40 N·m', '60 N·m', '80 N·m', '100 N·m', '120 N·m', '160 N·m', '200 N·m'],
  inch: ['15 lbf·ft', '30 lbf·ft', '45 lbf·ft', '60 lbf·ft', '75 lbf·ft', '90 lbf·ft', '120 lbf·ft', '150 lbf·ft'],
}
const leverLadder: Ladder = {
  metric: ['200 mm', '250 mm', '300 mm', '350 mm', '400 mm', '450 mm', '500 mm', '600 mm'],
  inch: ['8 in', '10 in', '12 in', '14 in', '16 in', '18 in', '20 in', '22 in', '24 in'],
}

export const torque = measured('torque', { metric: '120 N·m', inch: '90 lbf·ft' }, torqueLadder)
export const length = measured('length', { metric: '380 mm', inch: '15 in' }, leverLadder)
// Shorter than this nothing is held by hand, and what people misjudge of it would be most of it.
const shortestLever = quantity(20, units.mm)
/** A length along the handle: lever, hand, distance to a hook. */
export const handleLength = <N extends boolean = false>(options: Options<N> = {}): Input<Quantity, N> =>
  length({ least: shortestLever, ...options })

export const percent = measured('percent', same('4 %'))
export const mass = measured('mass', { metric: '1.2 kg', inch: '2.6 lb' })
export const plainNumber = measured('number', same('0.2'))

/** An angle in degrees, −180…180 unless told otherwise. */
export const angle = <N extends boolean = false>(options: Options<N> & Bounds = {}): Input<Quantity, N> => ({
  kind: 'angle',
  most: 1,
  ...common(options, same('45°')),
  read: single('angle', { signed: true, most: quantity(180, units['°']), ...options }),
  given: (value, input) => [asked(input, value)],
})

/** A torque that is asked for: one value, or a span or tolerance with both ends. */
export const targetTorque = <N extends boolean = false>(options: Options<N> = {}): Input<Target, N> => ({
  kind: 'torque-or-span',
  most: 1,
  ...common(options, { metric: '120 N·m', inch: '90 lbf·ft' }, torqueLadder),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted: Wanted = { input, dimensions: ['torque'] }
    const target = parseTarget(text.value, wanted)
    if (!target.ok) return target
    const ends = [target.value.low, target.value.value, target.value.high].filter((end) => end !== undefined)
    for (const end of ends) {
      const wrong = within({ value: end, unit: target.value.unit }, wanted, text.value, {})
      if (wrong) return refuse(wrong)
    }
    return target
  },
  given: (value, input) => [
    {
      ...asked(input, value),
      ...(value.low === undefined ? {} : { low: value.low }),
      ...(value.high === undefined ? {} : { high: value.high }),
    },
  ],
})
