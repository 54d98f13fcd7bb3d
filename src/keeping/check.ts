// A check of a wrench as it is typed: what was read on what, and how.
import { type Fault, fault } from '../core/fault.ts'
import type { Point } from '../core/parse-points.ts'
import { quantity } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { handleLength, length, mass, percent } from '../questions/input.ts'
import { date } from '../questions/input-history.ts'
import { points } from '../questions/input-samples.ts'
import { choice } from '../questions/input-words.ts'
import { type CheckWay, checkStates, checkWays, forceWays, LONGEST_NOTE } from '../register/bodies.ts'
import { measured } from '../register/parts.ts'
import { tag, temperature, text } from './inputs.ts'
import { defineKeepable, present } from './keepable.ts'

const lies = ['level', 'upright'] as const
const directions = ['down', 'up'] as const

const pointFaults = (all: readonly Point[], way: CheckWay | undefined): Fault[] => {
  const readings = all.flatMap((point) => point.readings)
  const wanted = way === undefined ? undefined : forceWays.includes(way) ? 'force' : 'torque'
  const wrong = readings.find(({ unit }) => wanted !== undefined && unit.dimension !== wanted)
  if (wrong) return [fault('readings-not-of-way', 'points', echoQuantity(wrong), { way: way ?? '' })]
  const mixed = all.flatMap(({ readings: [first, ...rest] }) => rest.filter(({ unit }) => unit !== first?.unit))
  return mixed[0] ? [fault('units-differ', 'points', echoQuantity(mixed[0]))] : []
}

const inputs = {
  wrench: tag({ needed: true }),
  date: date({ needed: true }),
  way: choice({ of: checkWays, needed: true }),
  state: choice({ of: checkStates, needed: true }),
  points: points({
    needed: true,
    readIn: ['torque', 'force'],
    example: {
      metric: '40 N·m: 39.8; 40.3 N·m | 100 N·m: 99.5; 101 N·m',
      inch: '30 lbf·ft: 29.8; 30.3 lbf | 75 lbf·ft: 74; 75.5 lbf',
    },
  }),
  gauge: tag({ sample: 'S-1' }),
  distance: handleLength({ example: { metric: '380 mm', inch: '12 in' } }),
  lie: choice({ of: lies }),
  'wrench-mass': mass(),
  'balance-point': length({ example: { metric: '180 mm', inch: '7 in' } }),
  'pull-direction': choice({ of: directions }),
  'gauge-uncertainty': percent({ least: quantity(0.001, units['%']), most: quantity(50, units['%']) }),
  temperature: temperature(),
  notes: text({ longest: LONGEST_NOTE, lines: true, sample: 'five pulls each, rising' }),
}

export const checkRecord = defineKeepable({
  kind: 'check',
  inputs: inputs,
  alsoNeeded: ({ way, lie, 'wrench-mass': weight, 'balance-point': balance }) => [
    ...(way && forceWays.includes(way) ? (['distance'] as const) : []),
    ...(weight || balance ? (['lie'] as const) : []),
    ...(lie === 'level' ? (['wrench-mass', 'balance-point', 'pull-direction'] as const) : []),
  ],
  check: ({ way, distance, points: all }): Fault[] => [
    ...(way && distance && !forceWays.includes(way)
      ? [fault('distance-not-of-way', 'distance', echoQuantity(distance), { way })]
      : []),
    ...(all ? pointFaults(all, way) : []),
  ],
  body: (given, keep) => {
    const { distance, lie, temperature: celsius, notes } = given
    const [weight, balance] = [given['wrench-mass'], given['balance-point']]
    const own =
      lie &&
      present({
        lie,
        mass: weight && keep('wrench-mass', weight),
        'balance-point': balance && keep('balance-point', balance),
        'pull-direction': given['pull-direction'],
      })
    const stated = given['gauge-uncertainty']
    const conditions =
      celsius === undefined && notes === undefined ? undefined : present({ 'temperature-c': celsius, notes })
    return present({
      wrench: given.wrench,
      date: given.date,
      gauge: given.gauge,
      way: given.way,
      distance: distance && keep('distance', distance),
      'own-weight': own,
      'gauge-uncertainty': stated && keep('gauge-uncertainty', stated),
      state: given.state,
      conditions,
      points: given.points.map(({ setting, readings }) => ({
        setting: measured(setting),
        readings: readings.map((reading) => measured(reading)),
      })),
    })
  },
})
