// adapter-setting: what to dial so that the fastener gets the asked torque through one to four adapters.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si, type Target, tidy } from '../core/quantity.ts'
import { echoQuantity, writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { effectiveLever, factor, settingFor } from '../mechanics/lever.ts'
import { wrenchTypes } from '../mechanics/pivot-range.ts'
import { citations } from '../tables/citation.ts'
import { directions, marks, type SettingAsked } from './adapter-setting-rows.ts'
import { angle, handleLength, length, percent, targetTorque, torque } from './input.ts'
import { adapters } from './input-lists.ts'
import { wrenchTag } from './input-shop.ts'
import { choice } from './input-words.ts'
import { type Caution, caution, type Outcome, put, type Related, result, type Step, step } from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import {
  checkReach,
  directionFirst,
  firstOf,
  handAway,
  leverOf,
  pivotOf,
  reachSteps,
  writeAdapter,
  writeReach,
} from './reach.ts'
import { endCautions, partInRange, rangeCautions, reachCautions } from './reach-cautions.ts'
import { assumptions, checkDoubt, doubtOf, doubtStep, spanOf, toleranceOf } from './reach-doubt.ts'

const inputs = {
  torque: targetTorque({ needed: true }),
  lever: handleLength({ needed: true }),
  adapter: adapters({ needed: true }),
  angle: angle(),
  hand: handleLength({ example: { metric: '330 mm', inch: '13 in' } }),
  pivot: length({ zero: true, example: { metric: '20 mm', inch: '3/4 in' } }),
  'wrench-type': choice({ of: wrenchTypes }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  mark: torque({ example: { metric: '1 N·m', inch: '1 lbf·ft' } }),
  least: torque({ example: { metric: '40 N·m', inch: '30 lbf·ft' } }),
  most: torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  wrench: wrenchTag(),
}

/** Where the setting is told at: the pivot that gives the lowest one, and the setting at the other end. */
const settings = (given: SettingAsked, T: number) => {
  const range = pivotOf(given)
  const ends = [range.low, range.high].map((p) => ({ p, S: settingFor(T, leverOf(given, p)) }))
  ends.sort((one, other) => one.S - other.S)
  const [lowest, highest] = ends as [{ p: number; S: number }, { p: number; S: number }]
  const open = handAway(given) && highest.S > lowest.S * (1 + 1e-12)
  // At the lever's own mark the pivot has no say; the middle only serves the hand's share of the doubt.
  const known = handAway(given) ? lowest.p : given.pivot || given['wrench-type'] ? (range.low + range.high) / 2 : 0
  return { p: known, S: lowest.S, highest: highest.S, open, range }
}

const related = (given: SettingAsked, setting: Quantity): Related[] => {
  const known = { torque: writeTarget(given.torque), ...writeReach(given), ...writeScale(given) }
  const [only, ...more] = given.adapter
  const links: Related[] = []
  if (only && more.length === 0) {
    const now = (only.angle ?? given.angle)?.value ?? 0
    for (const degrees of [0, 90, 180]) {
      const back = si(given.hand ?? given.lever) - si(only.length) <= 0
      if (degrees === Math.abs(now) || (degrees === 180 && back)) continue
      links.push({
        question: 'adapter-setting',
        inputs: { ...known, adapter: writeAdapter({ length: only.length, angle: quantity(degrees, units['°']) }) },
        label: phrase('related.direction', { angle: quantity(degrees, units['°']) }),
      })
    }
  }
  links.push({
    question: 'adapter-reading',
    inputs: {
      reading: writeQuantity(tidy(setting)),
      ...writeReach(given),
      adapter: given.adapter.map((link) =>
        writeAdapter(link.angle || !given.angle ? link : { ...link, angle: given.angle }),
      ),
    },
    label: phrase('related.reading', { setting }),
  })
  return links
}

const writeScale = (given: SettingAsked): Record<string, string> =>
  Object.fromEntries(
    (['mark', 'least', 'most'] as const).flatMap((name) => (given[name] ? [[name, writeQuantity(given[name])]] : [])),
  )

const writeTarget = (target: Target): string => {
  const { low, high, unit } = target
  return low === undefined || high === undefined
    ? writeQuantity(target)
    : `${writeQuantity(quantity(low, unit))} – ${writeQuantity(quantity(high, unit))}`
}

const headline = (
  given: SettingAsked,
  setting: Quantity,
  ends: { low: Quantity; high: Quantity } | undefined,
  open: Quantity | undefined,
  cautions: readonly Caution[],
): Phrase => {
  const torque = given.torque
  if (cautions.some(({ code }) => code === 'beyond-range')) {
    const part = ends && partInRange(ends, given)
    if (part) return phrase('adapter-setting.part', { ...part, setting, torque })
    // Square, the setting is the torque: a way out only where the torque itself lies in the range and the hand at the grip.
    const square =
      !handAway(given) &&
      rangeCautions(torque, torque, given.least, given.most).every(({ code }) => code !== 'beyond-range')
    return phrase(square ? 'adapter-setting.beyond' : 'adapter-setting.beyond-all', { setting, torque })
  }
  if (open && ends)
    return si(ends.low) <= si(ends.high)
      ? phrase('adapter-setting.open-span', { from: ends.low, to: ends.high })
      : phrase('adapter-setting.open-none', { setting, high: open, torque })
  if (open) return phrase('adapter-setting.open', { setting, high: open, torque })
  const part = ends && partInRange(ends, given)
  if (ends && part && (part.from !== ends.low || part.to !== ends.high))
    return phrase('adapter-setting.span-part', { setting, ...part, torque })
  if (ends) return phrase('adapter-setting.span', { setting, low: ends.low, high: ends.high, torque })
  const straight = Math.abs(setting.value - torque.value) < Math.abs(torque.value) * 1e-12
  return straight ? phrase('adapter-setting.same', { setting }) : phrase('adapter-setting.set', { setting, torque })
}

const settingSteps = (
  given: SettingAsked,
  p: number,
  setting: Quantity,
  ends: { low: Quantity; high: Quantity } | undefined,
  open: Quantity | undefined,
): Step[] => {
  const ratio = quantity(factor(leverOf(given, p)), units['1'])
  const steps = [step(phrase('adapter-setting.setting'), 'S = T ÷ (T/S)', put`${given.torque} / ${ratio}`, setting)]
  if (open)
    steps.push(step(phrase('adapter-setting.pivot-unknown'), 'S at both ends of p', put`${setting} … ${open}`, open))
  if (ends) steps.push(step(phrase('adapter-setting.ends'), 'S = T ÷ (T/S)', put`${ends.low} … ${ends.high}`, setting))
  const l = toleranceOf(given).value / 100
  steps.push(
    step(
      phrase('adapter-setting.tolerance-alone', { tolerance: toleranceOf(given) }),
      'S (1 ± l)',
      put`${quantity(setting.value * (1 - l), setting.unit)} … ${quantity(setting.value * (1 + l), setting.unit)}`,
      setting,
    ),
  )
  return steps
}

const insideStep = (given: SettingAsked, low: number, high: number): Step[] => {
  const { torque } = given
  if (torque.low === undefined || torque.high === undefined) return []
  const inside = low >= torque.low && high <= torque.high
  const width = quantity(high - low, torque.unit)
  return [
    step(
      phrase(inside ? 'adapter-setting.inside' : 'adapter-setting.not-inside'),
      inside ? 'T_low ≤ T − U, T + U ≤ T_high' : 'T − U < T_low or T + U > T_high',
      put`${quantity(low, torque.unit)} … ${quantity(high, torque.unit)}; ${quantity(torque.low, torque.unit)} … ${quantity(torque.high, torque.unit)}`,
      width,
    ),
  ]
}

const answerAdapterSetting = (given: SettingAsked, { of, system }: ResultUnits): Outcome => {
  const T = si(given.torque)
  const unit = of('torque')
  const { p, S, highest, open } = settings(given, T)
  const setting = fromSi(S, unit)
  const span = given.torque.low !== undefined && given.torque.high !== undefined
  // The ends that keep the fastener inside wherever the wrench trips: its low end at the pivot that gives the least torque,
  // its high end at the one that gives the most. Where these cross, no setting is sure.
  const ends = span
    ? {
        low: fromSi(highest * ((given.torque.low ?? 0) / given.torque.value), unit),
        high: fromSi(S * ((given.torque.high ?? 0) / given.torque.value), unit),
      }
    : undefined
  const other = open ? fromSi(highest, unit) : undefined
  const doubt = doubtOf(given, p, system)
  const reached = spanOf(given, S, system, doubt)
  const low = reached.low / given.torque.unit.factor
  const high = reached.high / given.torque.unit.factor
  const rows = directions(given, T, p, unit)
  const ranged = rangeCautions(setting, given.torque, given.least, given.most)
  const reaches = { low: ends?.low ?? setting, high: ends?.high ?? other ?? setting }
  const cautions = [
    ...(ranged.every(({ code }) => code !== 'beyond-range') ? endCautions(reaches, given) : []),
    ...ranged,
    ...reachCautions(given),
  ]
  const lever = leverOf(given, p)
  return {
    headline: directionFirst(given, headline(given, setting, ends, other, cautions)),
    assumed: assumptions(given, system, true),
    results: {
      setting:
        ends && ends.low.value <= ends.high.value
          ? result(setting, ends.low.value, ends.high.value)
          : result(setting, other ? setting.value : undefined, other?.value),
      factor: result(quantity(factor(lever), units['1'])),
      'effective-lever': result(fromSi(effectiveLever(lever), of('length'))),
      torque: result(quantity(given.torque.value, given.torque.unit), low, high),
      ...marks(S, given, p, unit),
      ...(rows.length > 0 ? { directions: { rows } } : {}),
    },
    steps: [
      ...reachSteps(given, { of }, p),
      ...settingSteps(given, p, setting, ends, other),
      doubtStep(given.torque, low, high, doubt),
      ...insideStep(given, low, high),
    ],
    cautions: [...cautions, caution('critical-joint')],
    pointers: ['torque-figure', 'adapter-rating', 'wrench-manual'],
    sources: [
      citations.adapterRule,
      citations.aviationRule,
      citations.statics,
      ...(handAway(given) && !given.pivot ? [citations.pivotPractice] : []),
      citations.doubtPractice,
      citations.gum,
    ],
    related: related(given, setting),
  }
}

const checkRange = (given: { least?: Quantity; most?: Quantity }): Fault[] =>
  given.least && given.most && si(given.least) >= si(given.most)
    ? [fault('least-above-most', 'least', echoQuantity(given.least), { limit: given.most })]
    : []

export const adapterSetting = defineQuestion({
  name: 'adapter-setting',
  inputs,
  results: ['setting', 'factor', 'effective-lever', 'torque', 'mark-below', 'mark-above', 'directions'],
  check: (given) => [
    ...firstOf(
      () => checkReach(given),
      () => checkDoubt(given, 'adapter'),
    ),
    ...checkRange(given),
  ],
  answer: answerAdapterSetting,
})
