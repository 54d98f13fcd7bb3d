// The size of what changes the lever: an adapter, the hand, a head; worked out from the asker's own numbers.
import { fromSi, type Quantity, quantity, si } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { factor, reachAside, settingForHead } from '../../mechanics/lever.ts'
import { caution, put, type Row, result, type Step, step } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import type { ResultUnits } from '../question.ts'
import { anglesAssumed, chainOf, handAway, leverOf, pivotOf, type Reach, reachSteps } from '../reach.ts'
import { reachCautions } from '../reach-cautions.ts'
import { habits, percentOf } from '../reach-doubt.ts'
import type { Asked } from './inputs.ts'
import { assumedTolerance, between, changed, judge, judgeWith } from './judge.ts'
import type { Work, Worked } from './topic.ts'

const ratio = (value: number): Quantity => quantity(value, units['1'])

/** The lever as it was told; links without an angle stand at the one that the topic is about. */
const reachOf = (given: Asked & { readonly lever: Quantity }, unsaid: number): Reach => {
  const { angle: lone, adapter = [], ...rest } = given
  return {
    ...rest,
    adapter: adapter.map((link) => ({
      ...link,
      angle: link.angle ?? (adapter.length === 1 ? lone : undefined) ?? quantity(unsaid, units['°']),
    })),
  }
}

const handStep = (reach: Reach, units_: ResultUnits, p: number): Step => {
  const unit = units_.of('length')
  const { L, H } = leverOf(reach, p)
  return step(
    phrase('matter.hand-factor'),
    'T/S = (L − p)/L · H/(H − p)',
    put`${fromSi(L - p, unit)} / ${reach.lever} · ${fromSi(H, unit)} / ${fromSi(H - p, unit)}`,
    ratio(factor(leverOf(reach, p))),
  )
}

const factorSteps = (reach: Reach, units_: ResultUnits, p: number): Step[] =>
  reach.adapter.length > 0 ? reachSteps(reach, units_, p) : [handStep(reach, units_, p)]

const squareStep = (reach: Reach, units_: ResultUnits): Step[] => {
  const { H, X } = leverOf(reach, 0)
  const Y = reachAside(chainOf(reach))
  if (Math.abs(Y) <= H * 1e-9) return []
  const delta = habits(units_.system).square
  const unit = units_.of('length')
  return [
    step(
      phrase('matter.square-doubt'),
      '± tan δ · Y/(H + X)',
      put`tan ${delta} · ${fromSi(Math.abs(Y), unit)} / ${fromSi(H + X, unit)}`,
      percentOf((Math.tan((delta.value * Math.PI) / 180) * Math.abs(Y)) / (H + X)),
    ),
  ]
}

/** The change for a lone adapter of unknown direction at each of the usual ones; past the hand there is none. */
const directionRows = (reach: Reach, pLow: number, pHigh: number): Row[] =>
  [0, 45, 90, 135, 180].flatMap((degrees) => {
    const angle = quantity(degrees, units['°'])
    const turned = { ...reach, adapter: reach.adapter.map((link) => ({ ...link, angle })) }
    const { H, X } = leverOf(turned, 0)
    if (H + X <= H * 1e-9) return []
    const changes = [pLow, pHigh].map((p) => factor(leverOf(turned, p)) - 1)
    return [{ angle: result(angle), change: between(Math.min(...changes), Math.max(...changes)) }]
  })

/** What a setting becomes by this lever, at both ends of where the wrench may trip. */
const workReach = (given: Asked, units_: ResultUnits, reach: Reach, unsaid: number): Worked => {
  const { low: pLow, high: pHigh } = handAway(reach) ? pivotOf(reach) : { low: 0, high: 0 }
  const factors = [pLow, pHigh].map((p) => factor(leverOf(reach, p)))
  const low = Math.min(...factors)
  const high = Math.max(...factors)
  const change = changed(given, units_, low - 1, high - 1)
  const open = given.adapter !== undefined && anglesAssumed({ ...given, adapter: given.adapter })
  const correction =
    given.torque && low === high && reach.adapter.length > 0
      ? fromSi(si(given.torque) / low, units_.of('torque'))
      : undefined
  return {
    ...(low === high ? judgeWith(given, low - 1, correction) : judge(given, low - 1, high - 1)),
    results: {
      ...change.results,
      factor: low === high ? result(ratio(low)) : result(ratio((low + high) / 2), low, high),
      ...(correction ? { setting: result(correction) } : {}),
      ...(open && reach.adapter.length === 1 ? { directions: { rows: directionRows(reach, pLow, pHigh) } } : {}),
    },
    steps: [
      ...factorSteps(reach, units_, pLow),
      ...(low === high ? [] : factorSteps(reach, units_, pHigh).slice(-1)),
      step(
        phrase('matter.change'),
        'T/S − 1',
        low === high ? put`${ratio(low)} − 1` : put`${ratio(low)} − 1 … ${ratio(high)} − 1`,
        percentOf((low + high) / 2 - 1),
      ),
      ...squareStep(reach, units_),
      ...change.steps,
      ...(correction && given.torque
        ? [step(phrase('adapter-setting.setting'), 'S = T ÷ (T/S)', put`${given.torque} / ${ratio(low)}`, correction)]
        : []),
    ],
    assumed: [
      ...change.assumed,
      ...(given.adapter ?? []).flatMap((link, index) =>
        link.angle === undefined && !(given.angle && given.adapter?.length === 1)
          ? [{ input: 'angle', value: quantity(unsaid, units['°']), index, from: 'assumed' as const }]
          : [],
      ),
      ...(given.hand ? [] : [{ input: 'hand', value: reach.lever, from: 'assumed' as const }]),
      ...(handAway(reach) && !given.pivot
        ? [
            {
              input: 'pivot',
              value: fromSi((pLow + pHigh) / 2, reach.lever.unit),
              ...(pLow === pHigh
                ? {}
                : { low: fromSi(pLow, reach.lever.unit).value, high: fromSi(pHigh, reach.lever.unit).value }),
              from: 'assumed' as const,
            },
          ]
        : []),
      ...assumedTolerance(given),
    ],
    cautions: [
      ...(open ? [caution(unsaid === 0 ? 'direction-assumed' : 'square-assumed')] : []),
      ...reachCautions(reach).filter(({ code }) => reach.adapter.length > 0 || code === 'no-pipe'),
    ],
    sources: [],
  }
}

/** `unsaid`: the angle [°] that the topic takes for an adapter whose angle was not told. */
export const workAdapter =
  (unsaid: number): Work =>
  (given, units_) =>
    given.lever && given.adapter
      ? workReach(given, units_, reachOf({ ...given, lever: given.lever }, unsaid), unsaid)
      : undefined

/** The hand, with or without an adapter on. */
export const workHand: Work = (given, units_) =>
  given.lever && given.hand ? workReach(given, units_, reachOf({ ...given, lever: given.lever }, 0), 0) : undefined

/** A pipe matters whatever it changes: its numbers are shown, its verdict stays. */
export const workPipe: Work = (given, units_) => {
  const worked = workHand(given, units_)
  if (!worked) return undefined
  const { code: _code, headline: _headline, ...numbers } = worked
  return numbers
}

/** A wrench that senses at its drive, held without an adapter: the kind alone decides. */
export const workSensesAtDrive: Work = (given) => {
  const type = given['wrench-type']
  if (given.adapter || given.pivot || (type !== 'dial' && type !== 'electronic')) return undefined
  return {
    code: 'no',
    headline: phrase('matter.at-drive'),
    results: {},
    steps: [],
    assumed: [],
    cautions: [],
    sources: [],
  }
}

export const workHead: Work = (given, units_) => {
  const { lever, 'fitting-change': delta, torque } = given
  if (!lever || !delta) return undefined
  const L = si(lever)
  const share = si(delta) / L
  const used = fromSi(L + si(delta), units_.of('length'))
  const change = changed(given, units_, share, share)
  const correction = torque ? fromSi(settingForHead(si(torque), L, si(delta)), units_.of('torque')) : undefined
  return {
    ...judgeWith(given, share, correction),
    results: {
      ...change.results,
      factor: result(ratio(1 + share)),
      ...(correction ? { setting: result(correction) } : {}),
    },
    steps: [
      step(phrase('end-fitting.factor'), 'T/S = (L + Δ)/L', put`${used} / ${lever}`, ratio(1 + share)),
      step(phrase('matter.change'), 'T/S − 1', put`${ratio(1 + share)} − 1`, percentOf(share)),
      ...change.steps,
      ...(correction && torque
        ? [step(phrase('end-fitting.setting'), 'S = T L/(L + Δ)', put`${torque} · ${lever} / ${used}`, correction)]
        : []),
    ],
    assumed: [...change.assumed, ...assumedTolerance(given)],
    cautions: [],
    sources: [],
  }
}
