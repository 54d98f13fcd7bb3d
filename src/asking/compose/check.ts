// Checks: a wrench against a scale, against a reference, one wrench against another; units of it all.

import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { type Unit, units } from '../../core/unit.ts'
import { type Facts, percentBy, pickTorque } from '../facts.ts'
import { isDimension, type Measure, textOf } from '../measure.ts'
import { type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import { type Placed, pull } from '../scene.ts'
import { type Torque, torqueText } from '../torques.ts'
import { unitChoices } from './reach.ts'

const torqueEntry = (input: string, torque: Torque | undefined): Entry | undefined =>
  torque?.unit ? entry(input, torqueText(torque), torque, torque.assumed) : undefined

const forceUnit = ({ weight, unit }: Measure): Unit =>
  weight === 'kg' ? units.kgf : weight === 'lb' ? units.lbf : (unit ?? units.N)

const distanceOf = (facts: Facts): Placed | undefined =>
  facts.lengthOf('hook', 'from-drive', 'lever', 'hand') ??
  facts.lengths.find(({ role, unitless }) => (role === undefined || role === 'jaw' || role === 'bar') && !unitless)

const settingRoles = ['dialled', 'at-setting', undefined, 'wanted', 'range'] as const

const massUnit = ({ weight }: Measure): Unit => (weight === 'lb' ? units.lb : units.kg)

const ALIKE = 1.05

/** Readings of one pull are one row or alike; what differs is something else (a bucket, a man on the scale), and is asked. */
const pullsOf = ({ forces, scene }: Facts): readonly Placed[] => {
  const pulls = forces.filter((one) => pull(scene, one, 'own-weight') < OWN_WEIGHT)
  // A bucket that is weighed by itself belongs to the pull: how much hangs there in all is asked.
  if (pulls.length < forces.length && scene.has('weight')) return []
  const sizes = pulls.map(({ measure }) => measure.value * forceUnit(measure).factor)
  const row = pulls.every(({ measure }) => measure.list !== undefined && measure.list === pulls[0]?.measure.list)
  return row || Math.max(...sizes) <= ALIKE * Math.min(...sizes) ? pulls : []
}

const OWN_WEIGHT = 8

/** With a pull on the scale the wrench is judged; without one it is told what the scale must show. */
export const composeScale = (facts: Facts): Proposal => {
  const distance = distanceOf(facts)
  const { torque } = pickTorque(facts, settingRoles)
  const gauge = percentBy(facts, 'weigh-scale', 'tolerance', 'tester')
  const at = distance && entry('distance', textOf(distance.measure), distance)
  if (facts.forces.length > 0) {
    const pulls = pullsOf(facts)
    const wrench = pulls.length > 0 ? facts.forces.find((one) => !pulls.includes(one)) : undefined
    const entries = [
      at,
      ...pulls.map((force) => entry('force', textOf(force.measure, forceUnit(force.measure)), force)),
      torqueEntry('setting', torque),
      wrench && entry('wrench-mass', textOf(wrench.measure, massUnit(wrench.measure)), wrench),
      gauge && entry('gauge-tolerance', textOf(gauge.measure), gauge),
    ]
    return proposal('scale-check', entries, {
      others: unitChoices('setting', torque).map((change) => otherwise('scale-check', entries, change)),
    })
  }
  if (!torque) return proposal('scale-check', [at])
  const entries = [torqueEntry('torque', torque), distance && entry('hand', textOf(distance.measure), distance)]
  const plan = [torqueEntry('most', torque), at]
  return proposal('pull', entries, {
    others: [
      ...unitChoices('torque', torque).map((change) => otherwise('pull', entries, change)),
      otherwise('scale-plan', plan),
    ],
  })
}

/** %: nobody calls so much a margin, and less no confidence. */
const LEAST_SURE = 60

/** Two rows of readings are compared; single readings are asked for again, several of each. */
export const composeCompare = (facts: Facts): Proposal => {
  const lists = new Map<number, Placed[]>()
  for (const one of facts.scene.placed)
    if (one.measure.list !== undefined) lists.set(one.measure.list, [...(lists.get(one.measure.list) ?? []), one])
  const [a, b] = [...lists.values()].filter((row) => row.length > 1)
  const row = (input: string, places: readonly Placed[] | undefined): Entry | undefined =>
    places &&
    entry(input, places.map(({ measure }) => textOf(measure)).join('; '), {
      start: places[0]?.start ?? 0,
      end: places.at(-1)?.end ?? 0,
    })
  const sure = facts.percents.filter(({ measure }) => measure.value >= LEAST_SURE)
  const margins = facts.percents.filter((one) => !sure.includes(one))
  const shareOf = (input: string, [one, ...more]: readonly Placed[]): Entry | undefined =>
    one && more.length === 0 ? entry(input, textOf(one.measure), one) : undefined
  // Of several shares none is taken, and none is put in their place.
  const asks = margins.length > 1 ? ['margin'] : []
  return proposal('compare', [row('a', a), row('b', b), shareOf('margin', margins), shareOf('confidence', sure)], {
    asks,
  })
}

const dates = (facts: Facts): Placed | undefined => facts.scene.placed.find(({ measure }) => measure.kind === 'date')

const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const
const named = `(${monthNames.join('|')})[a-z]*\\.?`
const ordinal = '(?:st|nd|rd|th)?'
/** `12 May 2024`, `May 12th, 2024`, `May 2024`. */
const monthOfYear = new RegExp(
  `\\b(?:(\\d{1,2})${ordinal} (?:of )?)?${named} (?:(\\d{1,2})${ordinal},? )?(20\\d\\d)\\b`,
)
const usesSince = /\b(\d{1,6}) (?:clicks|uses|cycles|pulls|operations)\b/

const spanOf = (found: RegExpExecArray) => ({ start: found.index, end: found.index + found[0].length })

/** A day by its month's name; of a month alone its first day, from which on the check is due the soonest, shown as assumed. */
const dayNamed = (facts: Facts): Entry | undefined => {
  const found = monthOfYear.exec(facts.scene.folded)
  if (!found) return undefined
  const [, before, name, behind, year] = found
  const month = monthNames.indexOf(name as (typeof monthNames)[number]) + 1
  const day = before ?? behind
  const two = (number: number): string => String(number).padStart(2, '0')
  return entry('last-check', `${year}-${two(month)}-${two(Number(day ?? 1))}`, spanOf(found), day === undefined)
}

export const composeInterval = (facts: Facts): Proposal => {
  const date = dates(facts)
  const months = /\b(\d{1,2}) months?\b/.exec(facts.scene.folded)
  const uses = usesSince.exec(facts.scene.folded)
  return proposal('next-check', [
    date ? entry('last-check', textOf(date.measure), date) : dayNamed(facts),
    uses ? entry('uses', uses[1] as string, spanOf(uses)) : undefined,
    months ? entry('interval', months[0], { start: months.index, end: months.index + months[0].length }) : undefined,
  ])
}

const convertible = ({ measure }: Placed): boolean =>
  measure.kind === 'quantity' && ['torque', 'length', 'force', 'mass', 'stress'].includes(measure.unit?.dimension ?? '')

/** The quantity to tell in another unit: the one that is not in the unit wanted. */
export const composeConvert = (facts: Facts): Proposal => {
  const named = facts.scene.unitsNamed
  const all = facts.scene.everyPlaced.filter(convertible)
  const ranges = new Set(facts.torques.filter(({ role }) => role === 'range').map(({ at }) => at))
  const target = named.at(-1)
  const torques = all.filter(({ measure, at }) => isDimension(measure, 'torque') && !ranges.has(at))
  const from = torques.find(({ measure }) => measure.unit !== target?.unit) ?? torques[0] ?? all[0]
  const second = torques.find((one) => one !== from && one.measure.unit !== from?.measure.unit)
  const to = target
    ? { symbol: target.unit.symbol, from: target }
    : second
      ? { symbol: second.measure.unit?.symbol ?? '', from: second }
      : undefined
  const dimension = from?.measure.unit?.dimension
  const fits = to && dimension === 'torque'
  const entries = [
    from && entry('quantity', textOf(from.measure), from),
    fits ? entry('to', to.symbol, to.from) : undefined,
  ]
  // Pounds are no torque, and of two quantities none is left out: which is meant, is asked.
  const isOther = target !== undefined && dimension !== undefined && target.unit.dimension !== dimension
  const rest = torques.filter(({ measure }) => measure.unit !== target?.unit)
  const isOneOf = target !== undefined && new Set(rest.map(({ measure }) => measure.unit)).size > 1
  if (isOther || isOneOf) return proposal('convert', entries.slice(1), { asks: ['quantity'] })
  const back =
    second?.measure.unit && from?.measure.unit
      ? [
          otherwise('convert', [], {
            quantity: writeQuantity(quantity(second.measure.value, second.measure.unit)),
            to: from.measure.unit.symbol,
          }),
        ]
      : []
  return proposal('convert', entries, { others: back })
}
