// turn-angle: how far to turn from snug for a clamp force, or what a turn gives. Linear, and only up to yield.
import { type Fault, fault, refuse } from '../core/fault.ts'
import { parseQuantity } from '../core/parse-quantity.ts'
import type { Size } from '../core/parse-size.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { boltLength, gripParts, threadedLength } from '../mechanics/bolt-length.ts'
import { boltStiffness, jointStiffness } from '../mechanics/stiffness.ts'
import { clampForTurn, pastYield, turnForClamp } from '../mechanics/turn.ts'
import { citations } from '../tables/citation.ts'
import { inchNuts, metricNuts } from '../tables/nuts.ts'
import { findClass } from '../tables/property-classes.ts'
import { clampUnit } from './clamp-force.ts'
import { angle, common, type Input, length, one, within } from './input.ts'
import { classInput } from './input-joint.ts'
import { size } from './input-words.ts'
import { checkJoint, classOf, pitchOf, threadOf } from './joint.ts'
import { caution, type Given, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

/** One force: a clamp force in kN, N or lbf. */
const clampForceInput = (): Input<Quantity, false> => ({
  kind: 'force',
  most: 1,
  ...common(
    {},
    { metric: '30 kN', inch: '6500 lbf' },
    {
      metric: ['10 kN', '20 kN', '30 kN', '40 kN', '60 kN'],
      inch: ['2000 lbf', '4000 lbf', '6000 lbf', '8000 lbf', '12000 lbf'],
    },
  ),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted = { input, dimensions: ['force' as const] }
    const force = parseQuantity(text.value, wanted)
    if (!force.ok) return force
    const wrong = within(force.value, wanted, text.value, {})
    return wrong ? refuse(wrong) : force
  },
  given: (value, input) => [{ input, value, from: 'asked' }],
})

const inputs = {
  size: size({ needed: true }),
  'grip-length': length({
    needed: true,
    example: { metric: '40 mm', inch: '1-1/2 in' },
    ladder: {
      metric: ['10 mm', '20 mm', '30 mm', '40 mm', '60 mm', '80 mm'],
      inch: ['1/2 in', '1 in', '1-1/2 in', '2 in', '3 in'],
    },
  }),
  'clamp-force': clampForceInput(),
  turn: angle({
    signed: false,
    least: quantity(1, units['°']),
    most: quantity(720, units['°']),
    example: { metric: '90°', inch: '90°' },
  }),
  class: classInput(),
  'thread-length': length({ example: { metric: '30 mm', inch: '1-1/4 in' } }),
}

interface Asked {
  readonly size: Size
  readonly 'grip-length': Quantity
  readonly 'clamp-force'?: Quantity | undefined
  readonly turn?: Quantity | undefined
  readonly class?: string | undefined
  readonly 'thread-length'?: Quantity | undefined
}

const springs = (given: Asked) => {
  const thread = threadOf(given.size)
  const metric = given.size.diameter.unit === units.mm
  const grip = si(given['grip-length'])
  const nut = (metric ? metricNuts : inchNuts).find(({ d }) => Math.abs(d - thread.d) < 1e-6)?.m ?? 0.85 * thread.d
  const L = boltLength(grip, nut, metric ? 0.005 : 0.00635)
  const threaded = given['thread-length']
    ? si(given['thread-length'])
    : threadedLength(thread.d, L, metric ? 'metric' : 'inch')
  const body = { d: thread.d, As: thread.As, ...gripParts(grip, Math.max(L, threaded), threaded) }
  return { thread, threaded, kb: boltStiffness(body, 'counted'), kj: jointStiffness(thread.d, grip) }
}

const answerTurnAngle = (given: Asked, resultUnits: ResultUnits): Outcome => {
  const { thread, threaded, kb, kj } = springs(given)
  const unit = clampUnit(resultUnits)
  const force = given['clamp-force'] ?? fromSi(clampForTurn((given.turn as Quantity).value, thread.P, kb, kj), unit)
  const turn = given.turn ?? quantity(turnForClamp(si(force), thread.P, kb, kj), units['°'])
  const bySide = given['clamp-force'] ? 'turn-angle.turn' : 'turn-angle.force'
  const thread_ = given['thread-length']
    ? []
    : [{ input: 'thread-length', value: fromSi(threaded, given['grip-length'].unit), from: 'assumed' as const }]
  const pitch = given.size.pitch
    ? []
    : [{ input: 'pitch', value: pitchOf(given.size) as Quantity, from: 'table' as const }]
  const assumed: Given[] = [...pitch, ...thread_]
  const stiffness = (k: number): Quantity => quantity(k / 1e6, units['1'])
  return {
    headline: phrase(bySide, { turn, force }),
    assumed,
    results: given['clamp-force'] ? { turn: result(turn) } : { 'clamp-force': result(force) },
    steps: [
      step(
        phrase('turn-angle.bolt'),
        '1/k_b = Σ l/(E A)',
        put`${given.size.diameter}, ${given['grip-length']}`,
        stiffness(kb),
      ),
      step(
        phrase('turn-angle.joint'),
        'k_j: two cones of 30°',
        put`${given.size.diameter}, ${given['grip-length']}`,
        stiffness(kj),
      ),
      given['clamp-force']
        ? step(
            phrase('turn-angle.turn-step'),
            'turn = 360/P · F (1/k_b + 1/k_j)',
            put`360° / ${fromSi(thread.P, given.size.diameter.unit)} · ${force}`,
            turn,
          )
        : step(
            phrase('turn-angle.force-step'),
            'F = P/360 · turn/(1/k_b + 1/k_j)',
            put`${fromSi(thread.P, given.size.diameter.unit)} / 360° · ${turn}`,
            force,
          ),
    ],
    cautions: [
      caution('from-snug'),
      ...(given.class ? [] : [caution('yield-not-checked')]),
      caution('yield-fastener'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure'],
    sources: [citations.springs, citations.turn],
    related: [],
  }
}

const strongest = (size: Size) => findClass(size.diameter.unit === units.mm ? '12.9' : 'SAE 8', si(size.diameter))

/** Past yield the formula does not hold: refused, with the force at which it stops. */
const checkYield = (given: Partial<Asked>): Fault[] => {
  const { size: named, 'grip-length': grip, 'clamp-force': asked, turn } = given
  if (asked && turn) return [fault('turn-or-force', 'turn', writeQuantity(turn))]
  // No class told: past the strongest there is, no bolt of this size holds it.
  const row = named && pitchOf(named) ? (classOf(given) ?? strongest(named)) : undefined
  if (!row || !named || !grip || (!asked && !turn)) return []
  const { thread, kb, kj } = springs(given as Asked)
  const F = asked ? si(asked) : clampForTurn((turn as Quantity).value, thread.P, kb, kj)
  if (!pastYield(F, row.yield, thread.As)) return []
  const unit = asked?.unit ?? (named.diameter.unit === units.mm ? units.kN : units.lbf)
  const limit = fromSi(row.yield * thread.As, unit)
  return [
    fault('force-past-yield', asked ? 'clamp-force' : 'turn', writeQuantity((asked ?? turn) as Quantity), {
      limit,
      turn: quantity(turnForClamp(row.yield * thread.As, thread.P, kb, kj), units['°']),
    }),
  ]
}

// Clamp forces from a tenth to nine tenths of yield: of the class where it is told, else of a common one.
const forceRungs = (named: Size, name: string | undefined): readonly Quantity[] | undefined => {
  const metric = named.diameter.unit === units.mm
  const row = findClass(name ?? (metric ? '8.8' : 'SAE 5'), si(named.diameter))
  if (!row) return undefined
  const unit = metric ? units.kN : units.lbf
  // Rounded, so that a rung can be typed as it stands.
  return [0.1, 0.3, 0.5, 0.6, 0.75, 0.9].map((share) =>
    quantity(Number(fromSi(share * row.yield * threadOf(named).As, unit).value.toPrecision(2)), unit),
  )
}

export const turnAngle = defineQuestion({
  name: 'turn-angle',
  inputs,
  results: ['turn', 'clamp-force'],
  oneOf: [['clamp-force', 'turn']],
  rungs: ({ size: named, class: name }, missing) =>
    missing === 'clamp-force' && named && pitchOf(named) ? forceRungs(named, name) : undefined,
  check: (given) => {
    const joint = checkJoint({ size: given.size, class: given.class })
    return joint.length > 0 ? joint : checkYield(given)
  },
  answer: answerTurnAngle,
})
