// How each published row on levers, checks and units is worked out: by the desk where it is a question of the desk, else by the formula.
import { units } from '../../src/core/unit.ts'
import { verdictOfDeviation } from '../../src/mechanics/check-verdict.ts'
import { checkShares, deviation, LEAST_SHARE, referenceAtMost, standardLimit } from '../../src/mechanics/deviation.ts'
import { reachAhead } from '../../src/mechanics/lever.ts'
import { swivelRatio } from '../../src/mechanics/swivel.ts'
import { twistOf } from '../../src/mechanics/twist.ts'
import { combined, coverage, effectiveDegrees } from '../../src/mechanics/uncertainty.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { testDesk } from '../support/doors.ts'
import type { Cells } from './agreement.ts'

type Inputs = Readonly<Record<string, unknown>>
type Check = (inputs: Inputs) => Cells

const desk = testDesk()

/** The value of a result, as the desk gives it in the unit that was asked in. */
export const resultOf = (
  question: QuestionName,
  raw: Readonly<Record<string, string | readonly string[]>>,
  name: string,
): number => {
  const answer = desk.ask(question, raw, { door: 'terminal' })
  if (answer.status !== 'answered') throw new Error(`${question} ${JSON.stringify(raw)}: ${answer.headline}`)
  return (answer.results[name] as { value: number }).value
}

const n = (inputs: Inputs, ...names: readonly string[]): number => {
  const found = names.map((name) => inputs[name]).find((value) => value !== undefined)
  if (typeof found !== 'number') throw new Error(`no ${names.join(' or ')} in ${JSON.stringify(inputs)}`)
  return found
}

const write = (value: number, unit: string): string => `${value.toFixed(6)} ${unit}`

const setting = (T: string, L: string, E: string, angle = 0): number =>
  resultOf('adapter-setting', { torque: T, lever: L, adapter: `${E}@${angle}` }, 'setting')
const lengthUnit = (inputs: Inputs): [number, number, string] =>
  'wrench_length_mm' in inputs
    ? [n(inputs, 'wrench_length_mm'), n(inputs, 'adapter_length_mm'), 'mm']
    : 'wrench_length_ft' in inputs
      ? [n(inputs, 'wrench_length_ft'), n(inputs, 'adapter_length_ft'), 'ft']
      : [n(inputs, 'wrench_length_in', 'wrench_length'), n(inputs, 'adapter_length_in', 'adapter_length'), 'in']
const torqueOf = (inputs: Inputs): string => {
  if ('target_torque_kgf_m' in inputs) return write(n(inputs, 'target_torque_kgf_m'), 'kgf·m')
  if ('target_torque_in_lb' in inputs) return write(n(inputs, 'target_torque_in_lb'), 'lbf·in')
  const feet = ['target_torque_lb_ft', 'target_torque_ft_lb', 'target_torque'].find((name) => name in inputs)
  return feet ? write(n(inputs, feet), 'lbf·ft') : write(n(inputs, 'target_torque_N_m'), 'N·m')
}

const straight: Check = (inputs) => {
  const [L, E, unit] = lengthUnit(inputs)
  const raw = { torque: torqueOf(inputs), lever: write(L, unit), adapter: `${write(E, unit)}@0` }
  const S = resultOf('adapter-setting', raw, 'setting')
  const back = setting(raw.torque, raw.lever, write(E, unit), 180)
  const metric =
    'target_torque_N_m' in inputs
      ? setting(write(n(inputs, 'target_torque_N_m'), 'N·m'), raw.lever, write(E, unit))
      : undefined
  const sum = resultOf('adapter-setting', raw, 'effective-lever')
  return {
    printed_setting_lb_ft: S,
    exact_setting_lb_ft: S,
    printed_setting_ft_lb: S,
    exact_setting_ft_lb: S,
    printed_setting_kgf_m: S,
    exact_setting_kgf_m: S,
    printed_setting: S,
    exact_setting: S,
    printed_setting_N_m: metric,
    exact_setting_N_m: metric,
    setting_forward_in_lb: S,
    setting_reversed_in_lb: back,
    exact_if_adapter_points_back: back,
    exact_if_adapter_points_forward: S,
    intermediate_product: S * sum,
    intermediate_sum: sum,
    intermediate_sum_in: sum,
    printed_factor: resultOf('adapter-setting', raw, 'factor'),
  }
}

const convert = (text: string, to: string): number => resultOf('convert', { quantity: text, to }, 'value')
const factorOf = (L: number, E: number): number =>
  resultOf('adapter-setting', { torque: '100 lbf·ft', lever: `${L} in`, adapter: `${E} in@0` }, 'factor')
const effective = (L: number, E: number, angle: number): number =>
  resultOf(
    'adapter-setting',
    { torque: '100 lbf·ft', lever: `${L} in`, adapter: `${E} in@${angle}` },
    'effective-lever',
  )
const list = (inputs: Inputs, name: string): readonly number[] => inputs[name] as readonly number[]

const gum: Check = (inputs) => {
  const ls = n(inputs, 'l_s_mm') * 1e6 // nm
  const parts = [
    { name: 'l_s', u: n(inputs, 'u_l_s_nm'), nu: n(inputs, 'dof_l_s') },
    { name: 'd', u: n(inputs, 'u_d_nm'), nu: n(inputs, 'dof_d') },
    {
      name: 'dalpha',
      u: ls * Math.abs(n(inputs, 'theta_bar_C')) * n(inputs, 'u_dalpha_per_C'),
      nu: n(inputs, 'dof_dalpha'),
    },
    { name: 'dtheta', u: ls * n(inputs, 'alpha_s_per_C') * n(inputs, 'u_dtheta_C'), nu: n(inputs, 'dof_dtheta') },
  ]
  const [one, two, three, four] = parts.map(({ u }) => u) as [number, number, number, number]
  const u = combined(parts)
  const nu = effectiveDegrees(parts)
  const k = coverage(0.99, Math.floor(nu))
  const second = [
    ls * n(inputs, 'u_dalpha_per_C') * n(inputs, 'u_theta_C'),
    ls * n(inputs, 'u_alpha_s_per_C') * n(inputs, 'u_dtheta_C'),
  ]
  return {
    printed_l_mm: n(inputs, 'l_s_mm') + n(inputs, 'd_nm') * 1e-6,
    printed_contrib_nm: [one, two, 0, 0, three, four],
    recomputed_contrib_nm: [one, two, 0, 0, three, four],
    printed_uc_nm: u,
    printed_uc2_nm2: u * u,
    recomputed_uc_nm: u,
    printed_dof_eff: Math.floor(nu),
    recomputed_dof: nu,
    printed_k99: k,
    printed_U99_nm: k * u,
    second_order_nm: second,
    recomputed_uc_with_second_order_nm: Math.hypot(u, ...second),
  }
}

const twistCells: Check = (inputs) => {
  const d =
    'J_mm4' in inputs
      ? ((32 * n(inputs, 'J_mm4')) / Math.PI) ** 0.25 * 1e-3
      : n(inputs, 'diameter_in') * units.in.factor
  const G = 'G_N_per_mm2' in inputs ? n(inputs, 'G_N_per_mm2') * 1e6 : n(inputs, 'G_psi') * units.psi.factor
  const T = 'torque_N_m' in inputs ? n(inputs, 'torque_N_m') : n(inputs, 'torque_in_lb') * units['lbf·in'].factor
  const l = 'length_mm' in inputs ? n(inputs, 'length_mm') * 1e-3 : n(inputs, 'length_in') * units.in.factor
  const twist = twistOf(T, l, d, G)
  const rad = (twist * Math.PI) / 180
  return {
    printed_twist_rad: rad,
    exact_twist_rad: rad,
    printed_twist_deg: twist,
    exact_twist_deg: twist,
    formula_584_deg: twist,
  }
}

// Where a limit stands: the largest deviation, in steps of 0.01 %, that still passes.
const acceptance = (limit: number, U: number, rule: 'simple' | 'guarded'): number => {
  let last = 0
  for (let a = 0; a <= 600; a++)
    if (verdictOfDeviation(a / 10_000, { limit: limit / 100, rule, uncertainty: U / 100 }) === 'pass') last = a / 100
  return last
}

export const checks: Readonly<Record<string, Check>> = {
  adapter_straight: straight,
  adapter_straight_rounded: straight,
  adapter_straight_metric: straight,
  adapter_sign_error: (inputs) => ({
    ...straight(inputs),
    printed_setting: straight(inputs).exact_if_adapter_points_back,
  }),
  adapter_straight_faulty_print: (inputs) => ({
    printed_quotient: factorOf(n(inputs, 'example_wrench_length_B_in'), n(inputs, 'text_adapter_length_in')),
    exact_quotient_of_printed_division: factorOf(
      n(inputs, 'example_wrench_length_B_in'),
      n(inputs, 'text_adapter_length_in'),
    ),
    exact_quotient_of_text_lengths: factorOf(n(inputs, 'text_wrench_length_in'), n(inputs, 'text_adapter_length_in')),
  }),
  adapter_angled_45: (inputs) => {
    const reach = reachAhead([{ E: n(inputs, 'adapter_length_in'), theta: n(inputs, 'angle_deg') }])
    return { printed_effective_adapter_length_in: reach, exact_effective_adapter_length_in: reach }
  },
  adapter_angled_90: (inputs) => {
    const S = setting(torqueOf(inputs), '15 in', `${n(inputs, 'adapter_length_in')} in`, n(inputs, 'angle_deg'))
    return { printed_setting_ft_lb: S, exact_setting_ft_lb: S }
  },
  adapter_universal_joint_rule: (inputs) => ({
    correction_factor: 1,
    cos15_max_shortfall_pct: (1 - swivelRatio(n(inputs, 'joint_angle_deg_max')).low) * 100,
  }),
  adapter_rules: (inputs) => {
    const [L, E] = [n(inputs, 'lever_in'), n(inputs, 'adapter_in')]
    return {
      effective_ahead: effective(L, E, 0),
      effective_back: effective(L, E, 180),
      effective_square: effective(L, E, 90),
    }
  },
  adapter_formula_misprint: (inputs) =>
    'lever_in' in inputs
      ? { effective_lever: effective(n(inputs, 'lever_in'), n(inputs, 'adapter_in'), n(inputs, 'angle_deg')) }
      : straight(inputs),
  adapter_formula: (inputs) => {
    const at = (angle: number): number =>
      setting(
        write(n(inputs, 'torque'), 'lbf·ft'),
        write(n(inputs, 'lever_in'), 'in'),
        write(n(inputs, 'adapter_in'), 'in'),
        angle,
      )
    return { shortening: at(180), lengthening: at(0), right_angle: at(90) }
  },
  adapter_formula_metric: (inputs) => {
    const [low = 0, high = 0] = list(inputs, 'target_torque_N_m')
    return {
      low_kgf_m: convert(`${low} N·m`, 'kgf·m'),
      high_kgf_m: convert(`${high} N·m`, 'kgf·m'),
      low_ft_lbf: convert(`${low} N·m`, 'lbf·ft'),
      high_ft_lbf: convert(`${high} N·m`, 'lbf·ft'),
    }
  },
  adapter_rule_metric: (inputs) => ({
    fulcrum_length_in: list(inputs, 'fulcrum_length_mm').map((mm) => convert(`${mm} mm`, 'in')),
  }),
  adapter_angle_table_derived: (inputs) => ({
    exact_settings_in_lb: list(inputs, 'angles_deg').map((angle) => setting(torqueOf(inputs), '12 in', '2 in', angle)),
  }),
  relative_deviation: (inputs) => ({
    relative_deviation_pct: deviation(n(inputs, 'tool_value_N_m'), n(inputs, 'reference_value_N_m')),
  }),
  pivot_hand_position_derived: (inputs) => ({ torque_change_pct: handChanges(inputs) }),
  axis_sensing_hand_position: (inputs) => ({ torque_change_pct: handChanges(inputs) }),
  hand_position_with_adapter_derived: (inputs) => ({
    fastener_torque_in_lb: list(inputs, 'hand_at_in').map((hand) =>
      resultOf(
        'adapter-reading',
        {
          reading: write(n(inputs, 'reading_in_lb'), 'lbf·in'),
          lever: '12 in',
          adapter: '6 in@0',
          hand: `${hand} in`,
          'wrench-type': 'dial',
        },
        'torque',
      ),
    ),
  }),
  load_application: () => ({
    test_points_pct: checkShares.map((share) => share * 100),
    device_max_uncertainty_pct: referenceAtMost(4),
  }),
  max_permissible_deviation: (inputs) => ({
    limit_pct: list(inputs, 'max_torque_N_m').map((most) => standardLimit(most) * 100),
  }),
  cal_device_ratio: (inputs) => ({ max_reference_uncertainty_pct: referenceAtMost(n(inputs, 'tool_limit_pct')) }),
  universal_joint_table: (inputs) => {
    const ratios = list(inputs, 'angle_deg').map(swivelRatio)
    return {
      min_ratio: ratios.map(({ low }) => low),
      max_ratio: ratios.map(({ high }) => high),
      nonuniformity_tan_x_sin: ratios.map(({ low, high }) => high - low),
    }
  },
  universal_joint_example: (inputs) => {
    const { low, high } = swivelRatio(n(inputs, 'angle_deg'))
    return { min_rpm: n(inputs, 'input_rpm') * low, max_rpm: n(inputs, 'input_rpm') * high }
  },
  angle_of_twist: twistCells,
  angle_of_twist_imperial: twistCells,
  extension_windup_derived: (inputs) => ({
    twist_deg: resultOf(
      'extension-bar',
      {
        torque: `${n(inputs, 'torque_N_m')} N·m`,
        length: `${n(inputs, 'length_mm')} mm`,
        diameter: write(n(inputs, 'round_diameter_mm'), 'mm'),
      },
      'twist',
    ),
  }),
  gum_H1: gum,
  guard_band_ilac_g8: (inputs) => ({
    simple_acceptance_limit_pct: acceptance(n(inputs, 'tolerance_limit_pct'), n(inputs, 'U_pct'), 'simple'),
    guard_band_w_equals_U_acceptance_limit_pct: acceptance(
      n(inputs, 'tolerance_limit_pct'),
      n(inputs, 'U_pct'),
      'guarded',
    ),
  }),
  unit_exact: () => ({
    lbf_ft_in_SI: units['lbf·ft'].factor,
    lbf_in_in_SI: units['lbf·in'].factor,
    ozf_in_in_SI: units['ozf·in'].factor,
    kgf_m_in_SI: units['kgf·m'].factor,
    kgf_cm_in_SI: units['kgf·cm'].factor,
    lbf_N_in_SI: units.lbf.factor,
    kgf_N_in_SI: units.kgf.factor,
    printed_lbf_ft: convert('1 lbf·ft', 'N·m'),
    printed_lbf_in: convert('1 lbf·in', 'N·m'),
    printed_ozf_in: convert('1 ozf·in', 'N·m'),
    printed_kgf_m: convert('1 kgf·m', 'N·m'),
  }),
  unit_print: (inputs) =>
    'kgf_m' in inputs
      ? {
          printed_ft_lb: convert('1 kgf·m', 'lbf·ft'),
          exact_ft_lb: convert('1 kgf·m', 'lbf·ft'),
          printed_in_lb: convert('1 kgf·m', 'lbf·in'),
          exact_in_lb: convert('1 kgf·m', 'lbf·in'),
        }
      : {
          printed_N_m: convert('1 lbf·in', 'N·m'),
          printed_N: convert('1 lbf', 'N'),
          printed_kN_m_tonf_ft: convert('2000 lbf·ft', 'N·m') / 1000,
        },
  unit_misprint: (inputs) => {
    const inNm = list(inputs, 'kgf_cm').map((value) => convert(`${value} kgf·cm`, 'N·m'))
    const inFeet = list(inputs, 'kgf_cm').map((value) => convert(`${value} kgf·cm`, 'lbf·ft'))
    return {
      printed_N_m: inNm,
      exact_N_m: inNm,
      printed_ft_lbf: inFeet,
      exact_ft_lbf: inFeet,
      fulcrum_cm: 42,
      fulcrum_in: convert('42 cm', 'in'),
    }
  },
  range_rule: (inputs) => ({
    min_usable_ft_lb: n(inputs, 'full_scale_ft_lb') * LEAST_SHARE,
    limit_pct_of_reading: standardLimit(n(inputs, 'full_scale_ft_lb') * units['lbf·ft'].factor) * 100,
  }),
}

const handChanges = (inputs: Inputs): number[] =>
  list(inputs, 'load_point_shift_mm').map((shift) =>
    resultOf(
      'hand-position',
      {
        setting: '100 N·m',
        lever: `${n(inputs, 'calibrated_length_mm')} mm`,
        hand: `${n(inputs, 'calibrated_length_mm') + shift} mm`,
        pivot: `${n(inputs, 'pivot_offset_mm')} mm`,
      },
      'change',
    ),
  )
