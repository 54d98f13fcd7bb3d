// How far the clamp force spreads, by how the bolt is tightened: ± of the middle, as a fraction. Two lists, as a lecture note
// reprints them; they agree on the torque wrench only roughly, and neither says how many bolts stand behind a row.
import type { Citation } from './citation.ts'

const nasa: Citation = { title: 'NASA NSTS 08307, preload accuracy (reprint)', where: 'table 2', standing: 'published' }
const handbook: Citation = {
  title: "Machinery's Handbook, preload accuracy (reprint)",
  where: 'table 1',
  standing: 'published',
}

export interface ScatterRow {
  readonly list: 'nasa' | 'handbook'
  readonly method: string
  readonly half: number
  readonly from: Citation
}

const row = (list: ScatterRow['list'], method: string, half: number): ScatterRow => ({
  list,
  method,
  half,
  from: list === 'nasa' ? nasa : handbook,
})

export const scatterTable: readonly ScatterRow[] = [
  row('nasa', 'torque_unlubricated', 0.35),
  row('nasa', 'torque_cadmium_plated', 0.3),
  row('nasa', 'torque_lubricated', 0.25),
  row('nasa', 'hydraulic_tensioner', 0.15),
  row('nasa', 'preload_indicating_washer', 0.1),
  row('nasa', 'ultrasonic', 0.1),
  row('nasa', 'bolt_elongation', 0.05),
  row('nasa', 'instrumented_bolt', 0.05),
  row('handbook', 'feel', 0.35),
  row('handbook', 'torque_wrench', 0.25),
  row('handbook', 'turn_of_nut', 0.15),
  row('handbook', 'preload_indicating_washer', 0.1),
  row('handbook', 'yield_point_sensing', 0.08),
]

export const findScatter = (list: ScatterRow['list'], method: string): ScatterRow | undefined =>
  scatterTable.find((candidate) => candidate.list === list && candidate.method === method)
