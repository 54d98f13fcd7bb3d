// The cards of a wrench and of a gauge as they are typed.
import { type Fault, fault } from '../core/fault.ts'
import { type Quantity, si } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { isoClasses, isoTypes } from '../mechanics/check-verdict.ts'
import { wrenchTypes } from '../mechanics/pivot-range.ts'
import { handleLength, length, torque } from '../questions/input.ts'
import { date, interval } from '../questions/input-history.ts'
import { readings } from '../questions/input-lists.ts'
import { choice } from '../questions/input-words.ts'
import { gaugeTypes, LONGEST_NAME, pivotsFound } from '../register/bodies.ts'
import type { WrenchCard } from '../register/records.ts'
import { type ToleranceRead, tag, text, tolerance } from './inputs.ts'
import { defineKeepable, type Keep, present } from './keepable.ts'

const name = text({ needed: true, longest: LONGEST_NAME, sample: 'Half-inch click wrench' })
const serial = text({ longest: LONGEST_NAME, sample: 'A1234' })
const place = text({ longest: LONGEST_NAME, sample: 'Bay 2' })

const keptTolerance = (keep: Keep, told: ToleranceRead | undefined) =>
  told && { share: keep('tolerance', told.share), of: told.of }

const keptOr = (keep: Keep, input: string, value: Quantity | undefined) => value && keep(input, value)

const wrenchInputs = {
  tag: tag({ needed: true }),
  name,
  serial,
  'wrench-type': choice({ of: wrenchTypes, needed: true }),
  'iso-type': choice({ of: isoTypes }),
  'iso-class': choice({ of: isoClasses }),
  least: torque({ example: { metric: '40 N·m', inch: '30 lbf·ft' } }),
  most: torque({ needed: true, example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  mark: torque({ example: { metric: '1 N·m', inch: '1 lbf·ft' } }),
  lever: handleLength(),
  pivot: length({ zero: true, example: { metric: '20 mm', inch: '0.8 in' } }),
  'pivot-found': choice({ of: pivotsFound }),
  tolerance: tolerance(),
  interval: interval(),
  place,
}

export const wrenchCard = defineKeepable({
  kind: 'wrench',
  inputs: wrenchInputs,
  alsoNeeded: ({ pivot, 'iso-class': isoClass }) => [
    ...(pivot ? (['pivot-found'] as const) : []),
    ...(isoClass ? (['iso-type'] as const) : []),
  ],
  check: ({ least, most }): Fault[] =>
    least && most && si(least) >= si(most)
      ? [fault('least-above-most', 'least', echoQuantity(least), { limit: most })]
      : [],
  body: (given, keep) =>
    present({
      tag: given.tag,
      name: given.name,
      serial: given.serial,
      'wrench-type': given['wrench-type'],
      'iso-type': given['iso-type'],
      'iso-class': given['iso-class'],
      least: keptOr(keep, 'least', given.least),
      most: keep('most', given.most),
      mark: keptOr(keep, 'mark', given.mark),
      lever: keptOr(keep, 'lever', given.lever),
      pivot:
        given.pivot && given['pivot-found']
          ? { value: keep('pivot', given.pivot), found: given['pivot-found'] }
          : undefined,
      tolerance: keptTolerance(keep, given.tolerance),
      interval: given.interval,
      place: given.place,
      // What its largest torque is told in is what stands on its scale.
      unit: given.most.unit.symbol as WrenchCard['unit'],
    }),
})

const gaugeInputs = {
  tag: tag({ needed: true, sample: 'S-1' }),
  name: text({ needed: true, longest: LONGEST_NAME, sample: 'Luggage scale' }),
  serial,
  'gauge-type': choice({ of: gaugeTypes, needed: true }),
  'most-force': readings({ dimension: 'force', most: 1, example: { metric: '50 kg', inch: '110 lb' } }),
  'most-torque': torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  tolerance: tolerance(),
  checked: date(),
  place,
}

export const gaugeCard = defineKeepable({
  kind: 'gauge',
  inputs: gaugeInputs,
  // Of the full scale says nothing without that scale.
  alsoNeeded: (given) => {
    const wanted = given['gauge-type'] === 'torque-tester' ? 'most-torque' : 'most-force'
    return given.tolerance?.of === 'full-scale' && given['gauge-type'] ? [wanted] : []
  },
  check: (given): Fault[] => {
    const isTester = given['gauge-type'] === 'torque-tester'
    const wrong = isTester ? 'most-force' : 'most-torque'
    const value = isTester ? given['most-force']?.[0] : given['most-torque']
    const type = given['gauge-type']
    return type && value ? [fault('most-not-of-gauge', wrong, echoQuantity(value), { type })] : []
  },
  body: (given, keep) => {
    const force = given['most-force']?.[0]
    return present({
      tag: given.tag,
      name: given.name,
      serial: given.serial,
      'gauge-type': given['gauge-type'],
      most: force ? keep('most-force', force) : keptOr(keep, 'most-torque', given['most-torque']),
      tolerance: keptTolerance(keep, given.tolerance),
      checked: given.checked,
      place: given.place,
    })
  },
})
