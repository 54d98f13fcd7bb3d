// Which way of checking goes with which gauge: a tester reads torque, every other gauge a force.
import { type Fault, fault } from '../core/fault.ts'
import { type CheckWay, forceWays } from './bodies.ts'
import type { GaugeCard } from './records.ts'

/** How a gauge is used where nobody says. */
export const usualWay: Readonly<Record<GaugeCard['gauge-type'], CheckWay>> = {
  'torque-tester': 'tester',
  weights: 'hang',
  'luggage-scale': 'pull',
  'force-gauge': 'pull',
}

export const gaugeReads = (gauge: GaugeCard): 'force' | 'torque' =>
  forceWays.includes(usualWay[gauge['gauge-type']]) ? 'force' : 'torque'

/** With another kind of gauge its tolerance, in newtons, would be set against newton metres. */
export const wayFaults = (way: CheckWay | undefined, gauge: GaugeCard | undefined): Fault[] => {
  // A certificate names the laboratory's own reference.
  if (!gauge || way === undefined || way === 'laboratory') return []
  if (gaugeReads(gauge) === (forceWays.includes(way) ? 'force' : 'torque')) return []
  const type = gauge['gauge-type']
  return [fault('gauge-not-of-way', 'gauge', gauge.tag, { type, way, options: [usualWay[type]] })]
}
