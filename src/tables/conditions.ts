// Nut factors K by the state of threads and seat. Sources disagree, and that is the message: a range reaches over all that
// nut-factors.ts has of a state, its low end rounded down and its high end up.
// Ranges printed by a fastener supplier carry no sample size; Bickford's and the PCC-1 figures are from memory.

import type { Citation } from './citation.ts'

export const conditions = [
  'dry',
  'oiled',
  'greased',
  'anti-seize',
  'moly',
  'wax',
  'zinc',
  'zinc-oiled',
  'cadmium',
  'phosphate-oiled',
  'black-oxide',
  'stainless-dry',
  'thread-locker',
] as const
export type Condition = (typeof conditions)[number]

const supplier: Citation = {
  title: 'Fastener supplier engineering data: nut factor by finish',
  where: 'nut factor chart',
  standing: 'published',
}
const shigley: Citation = {
  title: "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
  where: 'table 8-15, p. 439',
  standing: 'published',
}
const bickford: Citation = {
  title: 'Bickford, An Introduction to the Design and Behavior of Bolted Joints, 3rd ed.',
  where: 'reported nut factors, table 7.1',
  standing: 'from memory',
}
const practice: Citation = { title: 'Common practice', where: 'no published source', standing: 'common practice' }

export interface ConditionRow {
  readonly condition: Condition
  readonly low: number
  readonly typical: number
  readonly high: number
  /** The ends of the range, then the typical value, each with where it is from. */
  readonly rangeFrom: Citation
  readonly typicalFrom: Citation
}

const row = (
  condition: Condition,
  [low, typical, high]: readonly [number, number, number],
  rangeFrom: Citation,
  typicalFrom: Citation,
): ConditionRow => ({ condition, low, typical, high, rangeFrom, typicalFrom })

export const conditionTable: Readonly<Record<Condition, ConditionRow>> = {
  dry: row(
    'dry',
    [0.15, 0.2, 0.3],
    {
      ...bickford,
      where: 'as-received steel 0.158–0.267; supplier chart 0.18–0.27; upper end: black finish 0.30 (Shigley)',
    },
    { ...bickford, where: 'as-received steel, mean 0.199' },
  ),
  oiled: row(
    'oiled',
    [0.1, 0.18, 0.26],
    { ...supplier, where: 'machine oil 0.10–0.26' },
    { ...shigley, where: 'table 8-15: lubricated 0.18' },
  ),
  greased: row('greased', [0.1, 0.15, 0.2], practice, {
    ...bickford,
    where: 'lubricated steel, between moly grease 0.13 and oil 0.18',
  }),
  'anti-seize': row(
    'anti-seize',
    [0.08, 0.13, 0.27],
    { ...bickford, where: 'copper 0.08–0.23, nickel 0.13–0.27' },
    { ...shigley, where: 'table 8-15: anti-seize compound 0.12; copper mean 0.132 (Bickford)' },
  ),
  moly: row('moly', [0.1, 0.13, 0.18], bickford, bickford),
  wax: row('wax', [0.07, 0.12, 0.2], practice, practice),
  zinc: row(
    'zinc',
    [0.07, 0.2, 0.53],
    { ...bickford, where: 'dry zinc 0.075–0.53; supplier chart 0.17–0.35' },
    { ...shigley, where: 'table 8-15: zinc plated 0.20' },
  ),
  'zinc-oiled': row('zinc-oiled', [0.1, 0.17, 0.26], practice, practice),
  cadmium: row(
    'cadmium',
    [0.1, 0.16, 0.33],
    { ...bickford, where: 'dry cadmium 0.106–0.328; supplier chart 0.15–0.19' },
    { ...shigley, where: 'table 8-15: cadmium plated 0.16' },
  ),
  'phosphate-oiled': row(
    'phosphate-oiled',
    [0.15, 0.19, 0.23],
    { ...bickford, where: 'phosphate and oil 0.15–0.23; supplier chart 0.15–0.22' },
    { ...bickford, where: 'phosphate and oil, mean 0.19' },
  ),
  'black-oxide': row('black-oxide', [0.18, 0.3, 0.35], practice, {
    ...shigley,
    where: 'table 8-15: non-plated, black finish 0.30',
  }),
  'stainless-dry': row(
    'stainless-dry',
    [0.3, 0.35, 0.5],
    { ...supplier, where: 'stainless on stainless 0.30–0.50' },
    { ...bickford, where: 'as-received stainless on steel, mean 0.30; taken higher for stainless on stainless' },
  ),
  'thread-locker': row('thread-locker', [0.14, 0.2, 0.28], practice, practice),
}

/** What people write for each condition; folded to lower case without spaces, hyphens or slashes. */
export const conditionSpellings: Readonly<Record<Condition, readonly string[]>> = {
  dry: ['dry', 'clean', 'cleananddry', 'unlubricated', 'plain', 'asreceived', 'nolube'],
  oiled: [
    'oiled',
    'oil',
    'lightlyoiled',
    'engineoil',
    'motoroil',
    'machineoil',
    'lightoil',
    'lubricated',
    'lubed',
    'wet',
  ],
  greased: ['greased', 'grease'],
  'anti-seize': [
    'antiseize',
    'antisieze',
    'antisize',
    'copperpaste',
    'coppergrease',
    'copper',
    'nickelpaste',
    'copperbased',
  ],
  moly: ['moly', 'mos2', 'molygrease', 'molypaste', 'molybdenum', 'molybdenumdisulfide', 'molybdenumdisulphide'],
  wax: ['wax', 'waxed'],
  zinc: ['zinc', 'zincplated', 'galvanised', 'galvanized', 'zincdry', 'zp'],
  'zinc-oiled': ['zincoiled', 'zincandoil', 'zincplatedoiled'],
  cadmium: ['cadmium', 'cad', 'cadplated', 'cadmiumplated'],
  'phosphate-oiled': ['phosphateoiled', 'phosphate', 'phosphateandoil', 'phosphated'],
  'black-oxide': ['blackoxide', 'black', 'blackfinish', 'blackened'],
  'stainless-dry': ['stainlessdry', 'stainless', 'a2', 'a4', 'drystainless'],
  'thread-locker': ['threadlocker', 'threadlock', 'lockingcompound', 'threadlockingcompound'],
}
