// bolt-torque: which torque uses a share of a bolt's strength. The highest that cannot pass the share leads; one made from high friction is never offered.
import { type Fault, fault } from '../core/fault.ts'
import type { SeatText } from '../core/parse-seat.ts'
import type { Share } from '../core/parse-share.ts'
import type { Size } from '../core/parse-size.ts'
import { fromSi, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { clampAtPlainShare, clampAtYieldShare } from '../mechanics/strength.ts'
import { citations } from '../tables/citation.ts'
import type { ClassRow } from '../tables/property-classes.ts'
import { clampUnit } from './clamp-force.ts'
import { classInput, conditionInput, frictionInput, nutFactorInput, seatInput, shareInput } from './input-joint.ts'
import { benchRuns } from './input-shop.ts'
import { size } from './input-words.ts'
import {
  checkJoint,
  classOf,
  frictionGroups,
  type Joint,
  jointAssumed,
  jointCautions,
  jointNeeds,
  jointSources,
  leversOf,
  seatOf,
  threadOf,
} from './joint.ts'
import { bounded, caution, type Given, type Outcome, put, result, step } from './outcome.ts'
import { atMost, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { splitOf } from './torque-split.ts'

const inputs = {
  size: size({ needed: true }),
  class: classInput({ needed: true }),
  condition: conditionInput(),
  k: nutFactorInput(),
  'mu-threads': frictionInput(),
  'mu-seat': frictionInput(),
  share: shareInput(),
  seat: seatInput(),
  bench: benchRuns(),
}

interface Asked extends Joint {
  readonly size: Size
  readonly class: string
  readonly share?: Share | undefined
  readonly seat?: SeatText | undefined
}

/** Where nobody says: 75 % of proof, which lets the fastener be used again; of yield where the class has no proof load. */
const shareOf = ({ share }: Pick<Asked, 'share'>, row: ClassRow): Share =>
  share ?? { percent: quantity(75, units['%']), of: row.proof === undefined ? 'yield' : 'proof' }

const answerBoltTorque = (given: Asked, resultUnits: ResultUnits): Outcome => {
  const row = classOf(given) as ClassRow
  const thread = threadOf(given.size)
  const { whole, thread: part, byNutFactor } = leversOf(given)
  const share = shareOf(given, row)
  const nu = share.percent.value / 100
  // Of yield, twist counts, and with it the thread's part of the torque at that friction; of proof it does not.
  const clampAt = (lever: number): number =>
    share.of === 'proof'
      ? clampAtPlainShare(nu, row.proof as number, thread.As)
      : clampAtYieldShare(nu, row.yield, thread, lever, 'plastic')
  const most = clampAt(part.low)
  const highest = most * whole.low
  const typical = clampAt(part.typical) * whole.typical
  const unit = resultUnits.of('torque')
  const force = clampUnit(resultUnits)
  const lead = fromSi(highest, unit)
  const middle = fromSi(typical, unit)
  const clamp = {
    low: fromSi(highest / whole.high, force),
    typical: fromSi(highest / whole.typical, force),
    high: fromSi(most, force),
  }
  const known = whole.low === whole.high
  const split = splitOf(given)
  const withSeat = seatOf(given) !== undefined && (!byNutFactor || share.of === 'yield')
  const shareText = `${share.percent.value} % ${share.of === 'proof' ? 'S_p' : 'R_p'}`
  const assumed: Given[] = given.share
    ? []
    : [{ input: 'share', value: share.percent, name: `${share.percent.value} % of ${share.of}`, from: 'assumed' }]
  const stress = fromSi(share.of === 'proof' ? (row.proof as number) : row.yield, units.MPa)
  return {
    headline: known
      ? phrase('bolt-torque.known', { torque: atMost(lead), clamp: clamp.high })
      : phrase('bolt-torque.highest', { torque: atMost(lead), low: clamp.low, high: clamp.high }),
    assumed: [...assumed, ...jointAssumed(given, withSeat)],
    results: {
      'highest-torque': bounded(result(lead), 'down'),
      torque: bounded(result(middle, lead.value, middle.value), 'low'),
      'clamp-force': result(clamp.typical, clamp.low.value, clamp.high.value),
      ...split.results,
    },
    steps: [
      step(
        phrase(share.of === 'proof' ? 'bolt-torque.clamp-proof' : 'bolt-torque.clamp-yield'),
        share.of === 'proof' ? 'F = ν S_p A_s' : 'F = ν R_p A_s/√(1 + 3 (λ A_s/W_p)²)',
        put`${shareText} · ${stress} · ${quantity(thread.As * 1e6, units['1'])} mm²`,
        clamp.high,
      ),
      step(
        phrase('bolt-torque.highest-step'),
        byNutFactor ? 'T = K_low d F' : 'T = Λ F',
        put`${clamp.high} · ${fromSi(whole.low, units.mm)}`,
        lead,
      ),
      ...(known
        ? []
        : [
            step(
              phrase('bolt-torque.typical-step'),
              'T = K_typical d F',
              put`${fromSi(clampAt(part.typical), force)} · ${fromSi(whole.typical, units.mm)}`,
              middle,
            ),
          ]),
      step(phrase('bolt-torque.floor'), 'F = T/Λ_high', put`${lead} / ${fromSi(whole.high, units.mm)}`, clamp.low),
      ...split.steps,
    ],
    cautions: [
      caution('which-condition'),
      caution('estimate-only'),
      ...jointCautions(given),
      caution('yield-fastener'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure', 'lubricant-maker'],
    sources: [...jointSources(given, withSeat), citations.strength],
    related: [],
  }
}

const checkShare = (given: Partial<Asked>): Fault[] => {
  const row = classOf(given)
  return row && row.proof === undefined && given.share?.of === 'proof'
    ? [fault('no-proof-load', 'share', `${given.share.percent.value} % of proof`, { class: row.name })]
    : []
}

export const boltTorque = defineQuestion({
  name: 'bolt-torque',
  inputs,
  results: ['highest-torque', 'torque', 'clamp-force', 'torque-split'],
  oneOf: frictionGroups,
  alsoNeeded: jointNeeds,
  check: (given) => [...checkJoint(given), ...checkShare(given)],
  answer: answerBoltTorque,
})
