// which-wrench: which of the shop's wrenches can do a torque, with or without adapters: what each is set to, whether that suits
// it, and why. Best first. Takes the shop's fleet, which the desk looks up.
import type { Fault } from '../core/fault.ts'
import type { Adapter } from '../core/parse-list.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { reachAhead } from '../mechanics/lever.ts'
import { quantityOf } from '../register/parts.ts'
import { type Candidate, type FitReason, whichWrench as ranked } from '../register/which.ts'
import { citations } from '../tables/citation.ts'
import { angle, torque } from './input.ts'
import { adapters } from './input-lists.ts'
import { type Caution, caution, type Outcome, put, type Related, type Row, result, type Step, step } from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion, type FleetKnown, type ResultUnits } from './question.ts'
import { anglesAssumed, chainOf, checkReach, directionFirst, writeAdapter } from './reach.ts'

const inputs = {
  torque: torque({ needed: true }),
  adapter: adapters(),
  angle: angle(),
}

interface Asked {
  readonly torque: Quantity
  readonly adapter?: readonly Adapter[] | undefined
  readonly angle?: Quantity | undefined
}

/** A screen holds as many; the rest are counted. */
const MOST_ROWS = 12

const rowOf = ({ folder, fit, why, setting }: Candidate, unit: Quantity['unit']): Row => {
  const { tag, name } = folder.card.entry.body
  return {
    wrench: { named: tag, text: `${tag}, ${name}` },
    ...(setting === undefined ? {} : { setting: result(fromSi(setting, unit)) }),
    fit: { word: fit },
    why: { words: why },
  }
}

const headlineOf = (given: Asked, all: readonly Candidate[], unit: Quantity['unit']): Phrase => {
  const { torque: wanted } = given
  const [best] = all
  if (!best) return phrase('which.empty')
  const wrench = best.folder.tag
  if (best.fit === 'no' || best.setting === undefined) return phrase('which.none', { torque: wanted })
  const setting = fromSi(best.setting, unit)
  return best.fit === 'good'
    ? phrase('which.best', { wrench, setting, torque: wanted })
    : phrase('which.care', { wrench, setting, torque: wanted })
}

const stepsOf = (given: Asked, best: Candidate | undefined, unit: Quantity['unit']): Step[] => {
  const lever = best?.folder.card.entry.body.lever
  if (!best || best.setting === undefined) return []
  const setting = fromSi(best.setting, unit)
  const X = reachAhead(chainOf({ adapter: given.adapter ?? [], angle: given.angle }))
  if (X === 0 || !lever) return [step(phrase('which.same'), 'S = T', put`${given.torque}`, setting)]
  const L = quantityOf(lever)
  const reach = fromSi(X, L.unit)
  return [
    step(
      phrase('which.step', { wrench: best.folder.tag }),
      'S = T L/(L + X)',
      put`${given.torque} · ${L} / (${L} + ${reach})`,
      setting,
    ),
  ]
}

// Said of the wrench that leads; the others have it in their row.
const ofBest: Readonly<Partial<Record<FitReason, Caution>>> = { 'check-due': caution('check-due') }

const cautionsOf = (given: Asked, best: Candidate | undefined): Caution[] => {
  const adapter = given.adapter ?? []
  return [
    ...(best?.why.flatMap((reason) => ofBest[reason] ?? []) ?? []),
    ...(adapter.length > 0 && anglesAssumed({ adapter, angle: given.angle }) ? [caution('direction-assumed')] : []),
    ...(adapter.length > 0 ? [caution('one-hand')] : []),
    caution('click-once'),
  ]
}

const relatedOf = (given: Asked, all: readonly Candidate[]): Related[] => {
  const adapter = (given.adapter ?? []).map((link) =>
    writeAdapter(link.angle || !given.angle ? link : { ...link, angle: given.angle }),
  )
  if (adapter.length === 0) return []
  return all
    .filter(({ fit }) => fit !== 'no')
    .slice(0, 3)
    .map(({ folder }) => ({
      question: 'adapter-setting',
      inputs: { torque: writeQuantity(given.torque), wrench: folder.tag, adapter },
      label: phrase('which.work-out', { wrench: folder.tag }),
    }))
}

const answerWhich = (given: Asked, { of }: ResultUnits, fleet: FleetKnown | undefined): Outcome => {
  const unit = of('torque')
  const chain = chainOf({ adapter: given.adapter ?? [], angle: given.angle })
  const all = fleet ? ranked(fleet.book, { torque: si(given.torque), chain }, fleet.now) : []
  const shown = all.slice(0, MOST_ROWS)
  const more = all.length - shown.length
  return {
    headline: directionFirst({ adapter: given.adapter ?? [], angle: given.angle }, headlineOf(given, all, unit)),
    assumed: (given.adapter ?? []).flatMap((link, index) =>
      link.angle || given.angle
        ? []
        : [{ input: 'angle', value: quantity(0, units['°']), index, from: 'assumed' as const }],
    ),
    results: {
      wrenches: { rows: shown.map((candidate) => rowOf(candidate, unit)) },
      ...(more > 0 ? { 'more-wrenches': result(quantity(more, units['1'])) } : {}),
    },
    steps: stepsOf(given, all[0], unit),
    cautions: cautionsOf(given, all[0]),
    pointers: ['torque-figure', 'wrench-manual'],
    sources: [citations.statics, citations.classLimits],
    related: relatedOf(given, all),
  }
}

const checkAngle = ({ adapter, angle: turn }: Partial<Asked>): readonly Fault[] =>
  checkReach({ ...(adapter ? { adapter } : {}), ...(turn ? { angle: turn } : {}) })

export const whichWrench = defineQuestion({
  name: 'which-wrench',
  inputs,
  results: ['wrenches', 'more-wrenches'],
  needsFleet: true,
  check: checkAngle,
  answer: answerWhich,
})
