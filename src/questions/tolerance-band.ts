// tolerance-band: what a setting may deliver by the wrench's tolerance alone, of the reading or of full scale, and whether that fits a span.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { LEAST_SHARE } from '../mechanics/deviation.ts'
import { citations } from '../tables/citation.ts'
import { percent, targetTorque, torque } from './input.ts'
import { wrenchTag } from './input-shop.ts'
import { choice } from './input-words.ts'
import { caution, type Outcome, put, type Result, result, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

const bases = ['reading', 'full-scale'] as const

const inputs = {
  setting: torque({ needed: true }),
  tolerance: percent({
    needed: true,
    least: quantity(0.01, units['%']),
    most: quantity(50, units['%']),
    ladder: { metric: ['1 %', '2 %', '3 %', '4 %', '6 %', '10 %'], inch: ['1 %', '2 %', '3 %', '4 %', '6 %', '10 %'] },
  }),
  of: choice({ of: bases }),
  most: torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  spec: targetTorque({ example: { metric: '90–110 N·m', inch: '66–81 lbf·ft' } }),
  wrench: wrenchTag(),
}

interface Asked {
  readonly setting: Quantity
  readonly tolerance: Quantity
  readonly of?: (typeof bases)[number] | undefined
  readonly most?: Quantity | undefined
  readonly spec?: Target | undefined
}

const placeIn = (low: number, high: number, spec: Target): 'inside' | 'outside' | 'partly-outside' => {
  const factor = spec.unit.factor
  const from = (spec.low ?? spec.value) * factor
  const to = (spec.high ?? spec.value) * factor
  const slack = to * 1e-12
  if (low >= from - slack && high <= to + slack) return 'inside'
  return high < from || low > to ? 'outside' : 'partly-outside'
}

const answerToleranceBand = (given: Asked, { of }: ResultUnits): Outcome => {
  const base = given.of ?? 'reading'
  const S = si(given.setting)
  const whole = base === 'full-scale' ? si(given.most as Quantity) : S
  const half = (whole * given.tolerance.value) / 100
  const unit = of('torque')
  // Of full scale, the tolerance may be more than the setting; no wrench delivers less than nothing.
  const least = Math.max(S - half, 0)
  const low = fromSi(least, unit)
  const high = fromSi(S + half, unit)
  const share = quantity((half / S) * 100, units['%'])
  const place = given.spec ? placeIn(least, S + half, given.spec) : undefined
  const steps: Step[] = [
    base === 'reading'
      ? step(
          phrase('tolerance-band.of-reading'),
          'S (1 ± l)',
          put`${given.setting} · (1 ± ${given.tolerance})`,
          fromSi(half, unit),
        )
      : step(
          phrase('tolerance-band.of-full-scale'),
          'S ± l · most',
          put`${given.setting} ± ${given.tolerance} · ${given.most as Quantity}`,
          fromSi(half, unit),
        ),
    step(phrase('tolerance-band.share'), 'l_S = half / S', put`${fromSi(half, unit)} / ${given.setting}`, share),
  ]
  const beyond = given.most && S > si(given.most) * (1 + 1e-12) ? given.most : undefined
  const params = { setting: given.setting, low, high }
  return {
    headline: beyond
      ? phrase('tolerance-band.beyond', { ...params, most: beyond })
      : place
        ? phrase(`tolerance-band.${place}`, params)
        : phrase('tolerance-band.band', params),
    assumed: given.of ? [] : [{ input: 'of', value: 'reading', from: 'assumed' }],
    results: {
      torque: result(fromSi(S, unit), low.value, high.value),
      ...(place && !beyond ? { inside: { word: place } } : {}),
    } satisfies Record<string, Result>,
    steps,
    cautions: [
      ...(beyond ? [caution('beyond-range', { setting: given.setting, limit: beyond })] : []),
      ...(given.most && S < si(given.most) * LEAST_SHARE
        ? [caution('below-a-fifth', { fifth: fromSi(si(given.most) * LEAST_SHARE, given.most.unit) })]
        : []),
      caution('tolerance-is-not-all'),
    ],
    pointers: ['wrench-manual', 'torque-figure'],
    sources: [citations.limits],
    related: [],
  }
}

export const toleranceBand = defineQuestion({
  name: 'tolerance-band',
  inputs,
  results: ['torque', 'inside'],
  alsoNeeded: (given) => (given.of === 'full-scale' && given.most === undefined ? ['most'] : []),
  // A wrench whose highest mark lies below the setting cannot be set to it: such rungs would look the better ones.
  rungs: ({ setting }, missing) =>
    missing === 'most' && setting
      ? [1, 1.5, 2, 2.5, 3, 4, 5].map((times) => quantity(setting.value * times, setting.unit))
      : undefined,
  check: ({ spec }): Fault[] =>
    spec && spec.low === undefined ? [fault('too-few', 'spec', echoQuantity(spec), { kind: 'torque' })] : [],
  answer: answerToleranceBand,
})
