// nut-factor: a shop's own K from torque and clamp force; with several runs the interval for the next bolt.
import { type Fault, fault } from '../core/fault.ts'
import type { Size } from '../core/parse-size.ts'
import { type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { muSeat, muThread, muTotal } from '../mechanics/mu-total.ts'
import { nextBolt, nutFactorOf } from '../mechanics/nut-factor.ts'
import { citations } from '../tables/citation.ts'
import { length } from './input.ts'
import { readings } from './input-lists.ts'
import { size } from './input-words.ts'
import { jointAssumed, pitchOf, seatOf, seatRadiusOf, threadOf } from './joint.ts'
import { caution, type Outcome, put, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const inputs = {
  size: size(),
  diameter: length({ example: { metric: '12 mm', inch: '1/2 in' } }),
  torque: readings({
    needed: true,
    dimension: 'torque',
    most: 50,
    example: { metric: '60; 61.5 N·m', inch: '45; 46 lbf·ft' },
  }),
  'clamp-force': readings({
    needed: true,
    dimension: 'force',
    most: 50,
    example: { metric: '24; 25.1 kN', inch: '5400; 5600 lbf' },
  }),
  'thread-torque': readings({
    dimension: 'torque',
    most: 50,
    example: { metric: '30; 31 N·m', inch: '22; 23 lbf·ft' },
  }),
}

interface Asked {
  readonly 'thread-torque'?: readonly Quantity[] | undefined
  readonly size?: Size | undefined
  readonly diameter?: Quantity | undefined
  readonly torque: readonly Quantity[]
  readonly 'clamp-force': readonly Quantity[]
}

const diameterOf = (given: Pick<Asked, 'size' | 'diameter'>): Quantity =>
  (given.diameter ?? given.size?.diameter) as Quantity

const mean = (values: readonly number[]): Quantity =>
  quantity(values.reduce((sum, value) => sum + value, 0) / values.length, units['1'])

/** Friction of thread and seat, where the size tells their geometry. */
const frictionOf = (given: Asked): { muTotal?: Quantity; steps: Step[] } => {
  const { size: named, torque, 'clamp-force': force, 'thread-torque': inThread } = given
  if (!named || !pitchOf(named) || !seatOf({ size: named })) return { steps: [] }
  const thread = threadOf(named)
  const rs = seatRadiusOf({ size: named })
  const runs = torque.map((T, run) => ({
    T: si(T),
    F: si(force[run] as Quantity),
    T_th: inThread?.[run] && si(inThread[run]),
  }))
  const total = mean(runs.map(({ T, F }) => muTotal(T, F, thread, rs)))
  const apart = runs.flatMap(({ T, F, T_th }) =>
    T_th === undefined ? [] : [{ t: muThread(T_th, F, thread), s: muSeat(T, T_th, F, rs) }],
  )
  return {
    muTotal: total,
    steps: [
      step(
        phrase('nut-factor.mu-total'),
        'μ_tot = (T/F − P/2π)/(d2/(2 cos 30°) + r_s)',
        put`${named.diameter}, r_s ${quantity(rs * 1000, units.mm)}`,
        total,
      ),
      ...(apart.length === 0
        ? []
        : [
            step(
              phrase('nut-factor.mu-thread'),
              'μ_t = (T_th/F − P/2π) · 2 cos 30°/d2',
              put`${(inThread as readonly Quantity[])[0] as Quantity}`,
              mean(apart.map(({ t }) => t)),
            ),
            step(
              phrase('nut-factor.mu-seat'),
              'μ_s = (T − T_th)/(F r_s)',
              put`${torque[0] as Quantity}`,
              mean(apart.map(({ s }) => s)),
            ),
          ]),
    ],
  }
}

// Outside of these no table of nut factors has a value (common practice): a slip of a unit or of the size is likelier.
const LEAST_LIKELY = 0.05
const MOST_LIKELY = 0.6

const answerNutFactor = (given: Asked): Outcome => {
  const d = diameterOf(given)
  const values = given.torque.map((T, run) => nutFactorOf(si(T), si(d), si(given['clamp-force'][run] as Quantity)))
  const { mean: middle, halfWidth: scatter } = nextBolt(values)
  // Runs alike to the last digit show no scatter; an interval down to zero says that there are too few of them.
  const halfWidth = scatter !== undefined && scatter > middle * 1e-9 ? scatter : undefined
  const told = halfWidth !== undefined && halfWidth < middle
  const friction = frictionOf(given)
  const k = quantity(middle, units['1'])
  const low = halfWidth === undefined ? undefined : Math.max(0, middle - halfWidth)
  const high = halfWidth === undefined ? undefined : middle + halfWidth
  const steps: Step[] = values.map((value, run) =>
    step(
      phrase('nut-factor.run', { run: String(run + 1) }),
      'K = T/(d F)',
      put`${given.torque[run] as Quantity} / (${d} · ${given['clamp-force'][run] as Quantity})`,
      quantity(value, units['1']),
    ),
  )
  if (halfWidth !== undefined) {
    steps.push(
      step(
        phrase('nut-factor.next'),
        'mean ± t s √(1 + 1/n)',
        put`${quantity(low as number, units['1'])} … ${quantity(high as number, units['1'])}`,
        quantity(halfWidth, units['1']),
      ),
    )
  }
  return {
    headline:
      !told || low === undefined || high === undefined
        ? values.length > 1
          ? phrase('nut-factor.unseen', { k, n: String(values.length) })
          : phrase('nut-factor.one', { k })
        : phrase('nut-factor.several', {
            k,
            low: quantity(low, units['1']),
            high: quantity(high, units['1']),
            n: String(values.length),
          }),
    assumed: friction.muTotal ? jointAssumed({ size: given.size }, true) : [],
    results: { k: result(k, low, high), ...(friction.muTotal ? { 'mu-total': result(friction.muTotal) } : {}) },
    steps: [...steps, ...friction.steps],
    cautions: [
      ...(middle < LEAST_LIKELY || middle > MOST_LIKELY ? [caution('k-unlikely')] : []),
      caution('one-joint'),
      caution('estimate-only'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure'],
    sources: [
      citations.nutFactor,
      ...(halfWidth === undefined ? [] : [citations.nextBolt]),
      ...(friction.muTotal ? [citations.iso16047] : []),
    ],
    related: [],
  }
}

const checkRuns = (given: Partial<Asked>): Fault[] => {
  const faults: Fault[] = []
  const { torque, 'clamp-force': force, size: named, diameter } = given
  if (torque && force && torque.length !== force.length) {
    faults.push(fault('pairs-uneven', 'clamp-force', String(force.length), { count: String(torque.length) }))
  }
  const inThread = given['thread-torque']
  if (torque && inThread && torque.length !== inThread.length) {
    faults.push(fault('pairs-uneven', 'thread-torque', String(inThread.length), { count: String(torque.length) }))
  } else if (torque && inThread) {
    const above = inThread.find((part, run) => si(part) >= si(torque[run] as Quantity))
    if (above)
      faults.push(
        fault('thread-part-above-torque', 'thread-torque', writeQuantity(above), {
          limit: torque[inThread.indexOf(above)] as Quantity,
        }),
      )
  }
  if (named && diameter && Math.abs(si(named.diameter) - si(diameter)) > 1e-5) {
    faults.push(fault('diameter-not-size', 'diameter', writeQuantity(diameter), { size: named.name }))
  }
  return faults
}

export const nutFactor = defineQuestion({
  name: 'nut-factor',
  inputs,
  results: ['k', 'mu-total'],
  oneOf: [['size', 'diameter']],
  check: checkRuns,
  answer: answerNutFactor,
})
