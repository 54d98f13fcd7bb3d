// flex-head: what the fastener gets when the handle of a hinged head is tilted, and how hard it is pulled then.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import {
  type FlexHead,
  type Sensing,
  sensings,
  straightPull,
  tiltedArm,
  tiltedPull,
  tiltedTorque,
} from '../mechanics/flex-head.ts'
import { cosine } from '../mechanics/lever.ts'
import { citations } from '../tables/citation.ts'
import { angle, handleLength, length, torque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { choice } from './input-words.ts'
import { caution, type Given, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { wrenchSpanStep } from './reach-doubt.ts'

const degrees = ['5°', '10°', '15°', '20°', '30°', '45°']

const inputs = {
  torque: torque({ needed: true }),
  lever: handleLength({ needed: true }),
  tilt: angle({
    needed: true,
    signed: false,
    zero: true,
    most: quantity(80, units['°']),
    example: { metric: '15°', inch: '15°' },
    ladder: { metric: degrees, inch: degrees },
  }),
  hinge: length({ zero: true, example: { metric: '30 mm', inch: '1-1/4 in' } }),
  sensing: choice({ of: sensings }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly torque: Quantity
  readonly lever: Quantity
  readonly tilt: Quantity
  readonly hinge?: Quantity | undefined
  readonly sensing?: Sensing | undefined
}

/** Where the arm stands among the steps, for the figure. */
export const armStep = 0

const ends = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) })

const answerFlexHead = (given: Asked, { of }: ResultUnits): Outcome => {
  const hinge = given.hinge ?? quantity(0, given.lever.unit)
  const head: FlexHead = { S: si(given.torque), L: si(given.lever), h: si(hinge), phi: given.tilt.value }
  const kinds = given.sensing ? [given.sensing] : sensings
  const unit = of('torque')
  const force = of('force')
  const torques = ends(kinds.map((kind) => tiltedTorque(head, kind) / unit.factor))
  const pulls = ends(kinds.map((kind) => tiltedPull(head, kind) / force.factor))
  const middle = quantity((torques.low + torques.high) / 2, unit)
  const arm = fromSi(tiltedArm(head), of('length'))
  const straight = fromSi(straightPull(head), force)
  const assumed: Given[] = given.hinge ? [] : [{ input: 'hinge', value: hinge, from: 'assumed' }]
  const params = {
    torque: middle,
    low: quantity(torques.low, unit),
    high: quantity(torques.high, unit),
    setting: given.torque,
  }
  return {
    headline: given.sensing
      ? phrase(given.sensing === 'ahead' ? 'flex-head.ahead' : 'flex-head.behind', {
          torque: middle,
          setting: given.torque,
        })
      : phrase('flex-head.unknown', { low: params.low, high: params.high, setting: given.torque }),
    assumed,
    results: {
      torque: result(middle, torques.low, torques.high),
      pull: result(quantity((pulls.low + pulls.high) / 2, force), pulls.low, pulls.high),
      'pull-straight': result(straight),
    },
    steps: [
      step(
        phrase('flex-head.arm'),
        'r = h + (L − h) cos φ',
        put`${hinge} + (${given.lever} − ${hinge}) · ${quantity(cosine(head.phi), units['1'])}`,
        arm,
      ),
      ...kinds.map((kind) =>
        kind === 'ahead'
          ? step(phrase('flex-head.torque-ahead'), 'T = S', put`${given.torque}`, given.torque)
          : step(
              phrase('flex-head.torque-behind'),
              'T = S r/L',
              put`${given.torque} · ${arm} / ${given.lever}`,
              fromSi(tiltedTorque(head, kind), unit),
            ),
      ),
      step(phrase('flex-head.straight'), 'F = S/L', put`${given.torque} / ${given.lever}`, straight),
      wrenchSpanStep(middle, torques.low, torques.high),
    ],
    cautions: [caution('side-load'), caution('critical-joint')],
    pointers: ['wrench-manual', 'torque-figure'],
    sources: [citations.statics],
    related: [],
  }
}

const checkHinge = ({ lever, hinge }: Partial<Asked>): Fault[] =>
  lever && hinge && si(hinge) >= si(lever)
    ? [fault('hinge-past-lever', 'hinge', writeQuantity(hinge), { limit: lever })]
    : []

export const flexHead = defineQuestion({
  name: 'flex-head',
  inputs,
  results: ['torque', 'pull', 'pull-straight'],
  check: checkHinge,
  answer: answerFlexHead,
})
