// A torque multiplier: which of its ratios was told, what it loses, and whether what goes in or what comes out is asked for.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import { type Facts, percentBy, pickTorque } from '../facts.ts'
import { textOf } from '../measure.ts'
import { entry, type Proposal, proposal } from '../proposal.ts'
import { torqueEntry, unitOffers } from './line.ts'

/** One behind another: their ratios multiply, and each is to be told. */
const SEVERAL = /\b(?:two|three|2|3|another|second) multipliers?\b|\bin series\b|\bstages?\b/

/** The ratio that is stamped or certified counts before one that is a name (`x-4`). */
const ratioOf = (facts: Facts) => {
  const [first, ...more] = [...facts.ratios].sort(
    (one, other) => Number(other.measure.raw.includes(':')) - Number(one.measure.raw.includes(':')),
  )
  const several = more.some(({ measure }) => measure.raw.includes(':')) || SEVERAL.test(facts.scene.folded)
  return several ? undefined : first
}

/** `loses 12 %`, `12 % losses`; what a book adds for losses is a rule of its own. */
const LOSS = /\b(?:loses?|lost|loss(?:es)?(?: of|:)?) (?:about |around )?\d|(?:%|percent) loss(?:es)?\b/

/** `eff 0.8`, `efficiency .85` */
const SHARE = /\beff(?:icien\w*)?(?: of| is|:| =|=)? ?(0?\.\d+)\b/

/** `150 Nm into a 4:1 multiplier`. */
const isPutIn = ({ scene }: Facts, at: number): boolean => {
  const behind = scene.pieces[at + 1]
  return behind?.kind === 'word' && behind.text === 'into'
}

export const composeMultiplier = (facts: Facts): Proposal => {
  const { scene } = facts
  const ratio = ratioOf(facts)
  const gears = /\b(?:turns?|gear) ratio\b|\d ?: ?1 (?:turns?|gears?)\b|\bturns? in\b/.test(scene.folded)
  const efficiency = percentBy(facts, 'loss')
  const given = /\beff(?:icien\w*)?\b/.test(scene.folded) ? efficiency : undefined
  const share = SHARE.exec(scene.folded)
  // `5:1, loses 12 %`: what is left of the turns is the efficiency, shown as assumed.
  const isLoss = given === undefined && LOSS.test(scene.folded)
  const left = efficiency && isLoss && efficiency.measure.value < 50 ? 100 - efficiency.measure.value : undefined
  const ratioEntry =
    ratio &&
    entry(
      gears || given || share || left !== undefined ? 'turns-ratio' : 'torque-ratio',
      writeQuantity(quantity(ratio.measure.value, units['1'])),
      ratio,
    )
  // What was put in, or what the wrench is set to, is no torque that is wanted: what comes out is asked, whatever it is called.
  const put = facts.torques.some(({ at }) => isPutIn(facts, at))
  const dialled = (put || facts.torques.some(({ role }) => role === 'dialled')) && !scene.has('ask-setting')
  const output = (scene.has('ask-got') || dialled) && !facts.torques.some(({ role }) => role === 'wanted')
  const { torque } = pickTorque(facts, output ? ['dialled', undefined] : ['wanted', undefined, 'dialled'])
  const out = output && ratio && torque?.unit && !gears && !given && !share && left === undefined
  // What came out is what went in times the ratio: the question is asked the other way round, and shows both.
  const reached = out
    ? writeQuantity(quantity(Number((torque.measure.value * ratio.measure.value).toPrecision(12)), torque.unit))
    : undefined
  const entries = [
    reached !== undefined && torque
      ? entry('torque', reached, torque, true)
      : output
        ? undefined
        : torqueEntry('torque', torque),
    ratioEntry,
    given && entry('efficiency', textOf(given.measure), given),
    share && !given
      ? entry('efficiency', `${Number((Number(share[1]) * 100).toPrecision(6))} %`, {
          start: share.index,
          end: share.index + share[0].length,
        })
      : undefined,
    left === undefined ? undefined : entry('efficiency', `${Number(left.toPrecision(6))} %`, efficiency, true),
  ]
  return proposal('multiplier', entries, { others: output ? [] : unitOffers('multiplier', entries, 'torque', torque) })
}
