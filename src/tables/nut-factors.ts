// Nut factors K as each source prints them, side by side. What the desk works with per condition is in conditions.ts.
// Shigley's table gives no scatter; the supplier's chart gives ranges without a sample size; Bickford, NASA and PCC-1 from memory.
import type { Citation } from './citation.ts'

const shigley: Citation = {
  title: "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
  where: 'table 8-15, p. 439',
  standing: 'published',
}
const chart: Citation = {
  title: 'Fastener supplier engineering data: nut factor by finish',
  where: 'nut factor chart',
  standing: 'published',
}
const means: Citation = {
  title: 'Handbook of Bolts and Bolted Joints (Bickford & Nassar)',
  where: 'table 1, abstract: extremes of the means over all combinations',
  standing: 'published',
}
const bickford: Citation = {
  title: 'Bickford, An Introduction to the Design and Behavior of Bolted Joints, 3rd ed.',
  where: 'reported nut factors, table 7.1',
  standing: 'from memory',
}
const nasa: Citation = {
  title: 'NASA NSTS 08307 Rev A; NASA TM-106943',
  where: 'typical nut factors',
  standing: 'from memory',
}
const pcc1: Citation = { title: 'ASME PCC-1', where: 'appendix K', standing: 'from memory' }

export interface NutFactorRow {
  /** The source's own name of the state, as a slug. */
  readonly state: string
  readonly low?: number
  readonly mean?: number
  readonly high?: number
  readonly from: Citation
}

const one = (state: string, mean: number, from: Citation): NutFactorRow => ({ state, mean, from })
const range = (state: string, low: number, high: number, from: Citation): NutFactorRow => ({ state, low, high, from })
const full = (state: string, low: number, mean: number, high: number): NutFactorRow => ({
  state,
  low,
  mean,
  high,
  from: bickford,
})

export const nutFactorSources = {
  shigley: [
    one('nonplated_black_finish', 0.3, shigley),
    one('zinc_plated', 0.2, shigley),
    one('lubricated', 0.18, shigley),
    one('cadmium_plated', 0.16, shigley),
    one('anti_seize_compound', 0.12, shigley),
    one('low_friction_locking_grip_nut', 0.09, shigley),
  ],
  supplier: [
    range('dry_steel', 0.18, 0.27, chart),
    range('machine_oil', 0.1, 0.26, chart),
    range('cadmium', 0.15, 0.19, chart),
    range('phosphate_and_oil', 0.15, 0.22, chart),
    range('zinc', 0.17, 0.35, chart),
    range('stainless_302', 0.3, 0.5, chart),
    range('zinc_flake', 0.16, 0.32, chart),
  ],
  means: [range('all_combinations', 0.086, 0.52, means)],
  bickford: [
    full('as_received_steel_on_steel', 0.158, 0.199, 0.267),
    one('as_received_stainless_on_steel', 0.3, bickford),
    full('cadmium_plate_dry', 0.106, 0.194, 0.328),
    full('copper_based_antiseize', 0.08, 0.132, 0.23),
    full('machine_oil', 0.1, 0.21, 0.225),
    full('moly_paste_or_grease', 0.1, 0.13, 0.18),
    full('phosphate_and_oil', 0.15, 0.19, 0.23),
    full('solid_film_PTFE', 0.09, 0.12, 0.16),
    full('zinc_plate_dry', 0.075, 0.295, 0.53),
    full('zinc_plate_waxed', 0.071, 0.288, 0.52),
    full('nickel_antiseize_paste', 0.13, 0.15, 0.27),
    full('multi_metal_antiseize_paste', 0.11, 0.17, 0.21),
  ],
  nasa: [range('lubricated', 0.11, 0.15, nasa), one('unlubricated', 0.2, nasa)],
  pcc1: [range('low_alloy_studs', 0.16, 0.23, pcc1)],
} as const satisfies Record<string, readonly NutFactorRow[]>

export type NutFactorSource = keyof typeof nutFactorSources

/** ASME PCC-1's short cut: K is about μ and this (from memory). */
export const PCC1_K_ABOVE_MU = 0.04

/** The row that a source gives for a state. */
export const findNutFactor = (source: NutFactorSource, state: string): NutFactorRow | undefined =>
  nutFactorSources[source].find((row) => row.state === state)
