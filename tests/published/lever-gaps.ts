// Where print and this desk disagree on levers, checks and units, each with its reason; and what the desk does not work out.

export interface Gap {
  readonly id: string
  readonly cell: string
  readonly reason: string
}

export const knownGaps: readonly Gap[] = [
  {
    id: 'adp-05',
    cell: 'printed_setting_N_m',
    reason: 'converted from the rounded 17 lbf·ft; its own metric inputs give 22.70',
  },
  {
    id: 'adp-24',
    cell: 'low_kgf_m',
    reason: 'the print rounds the lower end up, to stay inside: 69 N·m are 7.04 kgf·m',
  },
  {
    id: 'adp-24',
    cell: 'high_kgf_m',
    reason: 'the print rounds the upper end down, to stay inside: 98 N·m are 9.99 kgf·m',
  },
  { id: 'tor-03', cell: 'formula_584_deg', reason: 'the handbook rounds 583.61 to 584 in its formula, 0.07 % more' },
  { id: 'unit-03', cell: 'printed_in_lb', reason: 'the print is off in its last digits: 1 kgf·m are 86.796 lbf·in' },
  {
    id: 'unit-04',
    cell: 'printed_N_m',
    reason: 'misprint: 117 for 177, 210 for 216; the other two columns agree with each other',
  },
  {
    id: 'gum-01',
    cell: 'printed_contrib_nm',
    reason: 'the print cuts the last part to 16.6; from its own inputs it is 16.68',
  },
  { id: 'gum-01', cell: 'printed_uc2_nm2', reason: 'the print adds the parts as rounded: 1002 for 1005.6' },
]

/** Printed cells that are no number of this desk, each with the reason. */
export const notAsked: readonly Gap[] = [
  ...[
    'slow_zone_start_N_m',
    'slow_zone_time_s',
    'type1_preloads',
    'type2_preloads',
    'ambient_C',
    'ambient_stability_C',
  ].map((cell) => ({ id: 'iso-02', cell, reason: 'how a check is pulled: told in words, no number is worked out' })),
  {
    id: 'dec-01',
    cell: 'pfa_max_simple_pct',
    reason: 'the desk gives verdicts, not probabilities of false acceptance',
  },
  {
    id: 'dec-01',
    cell: 'pfa_max_w_equals_U_pct',
    reason: 'the desk gives verdicts, not probabilities of false acceptance',
  },
  {
    id: 'dec-02',
    cell: 'single_sided_conformance_probability',
    reason: 'the desk gives verdicts, not probabilities of conformance',
  },
  { id: 'dec-02', cell: 'g_95_pct', reason: 'the desk guards by U, not by 0.82 U' },
  {
    id: 'dec-03',
    cell: 'max_measurement_error_pct',
    reason: 'ten to one is an older rule; the desk holds to a quarter',
  },
  { id: 'unit-01', cell: 'gf_cm_in_SI', reason: 'gf·cm is not a unit of this desk' },
  { id: 'unit-01', cell: 'dyn_cm_in_SI', reason: 'dyn·cm is not a unit of this desk' },
  { id: 'unit-01', cell: 'printed_dyn_cm', reason: 'dyn·cm is not a unit of this desk' },
  { id: 'unit-01', cell: 'gn_m_s2_in_SI', reason: 'an acceleration; the desk holds it inside kgf and lbf' },
  { id: 'use-02', cell: 'best_zone_pct', reason: 'advice of one manual, no number is worked out' },
  { id: 'use-02', cell: 'max_graduation_pct_of_value', reason: 'advice of one manual, no number is worked out' },
]
