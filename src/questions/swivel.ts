// swivel: what the fastener gets through a bent universal joint. A band, and no corrected setting: nobody knows where in its turn it stands.
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { BEND_UNCORRECTED, SWIVEL_LOSS, swivelOutput, swivelRatio } from '../mechanics/swivel.ts'
import { citations } from '../tables/citation.ts'
import { angle, torque } from './input.ts'
import { type Caution, caution, type Outcome, put, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { percentOf, wrenchSpanStep } from './reach-doubt.ts'

const degrees = ['5°', '10°', '15°', '20°', '30°', '45°']

const inputs = {
  torque: torque({ needed: true }),
  angle: angle({
    needed: true,
    signed: false,
    zero: true,
    most: quantity(80, units['°']),
    example: { metric: '20°', inch: '20°' },
    ladder: { metric: degrees, inch: degrees },
  }),
}

interface Asked {
  readonly torque: Quantity
  readonly angle: Quantity
}

const answerSwivel = (given: Asked, { of }: ResultUnits): Outcome => {
  const beta = given.angle.value
  const unit = of('torque')
  const ratio = swivelRatio(beta)
  const out = swivelOutput(si(given.torque), beta)
  const low = fromSi(out.low, unit)
  const high = fromSi(out.high, unit)
  const straight = beta === 0
  const bent: Caution[] = straight ? [] : [caution('lower-still', { loss: percentOf(SWIVEL_LOSS) })]
  return {
    headline: straight
      ? phrase('swivel.straight', { torque: given.torque })
      : phrase('swivel.band', { low, high, setting: given.torque, angle: given.angle }),
    assumed: [],
    results: { torque: result(given.torque, low.value, high.value) },
    steps: [
      step(phrase('swivel.low'), 'T cos β', put`${given.torque} · ${quantity(ratio.low, units['1'])}`, low),
      step(phrase('swivel.high'), 'T/cos β', put`${given.torque} · ${quantity(ratio.high, units['1'])}`, high),
      step(
        phrase(beta <= BEND_UNCORRECTED ? 'swivel.allowed' : 'swivel.not-allowed'),
        'β ≤ 15°',
        put`${given.angle}`,
        given.angle,
      ),
      wrenchSpanStep(given.torque, low.value, high.value),
    ],
    cautions: [...bent, caution('no-corrected-setting'), caution('critical-joint')],
    pointers: ['torque-figure', 'wrench-manual'],
    sources: [citations.cardan, citations.swivelManuals, citations.swivelPractice],
    related: [],
  }
}

export const swivel = defineQuestion({ name: 'swivel', inputs, results: ['torque'], answer: answerSwivel })
