// How each kind of published row is worked out again: one formula and one convention a topic, never a cell.
// Inputs and results carry their unit in the name; inside it is SI.

import { boltLength, gripParts, threadedLength } from '../../src/mechanics/bolt-length.ts'
import { deviation } from '../../src/mechanics/deviation.ts'
import { muTotal } from '../../src/mechanics/mu-total.ts'
import { clampForTorque, nutFactorOf, torqueForClamp } from '../../src/mechanics/nut-factor.ts'
import { finalTorque, finalTorqueFromThird } from '../../src/mechanics/prevailing.ts'
import { mean, sampleDeviation } from '../../src/mechanics/scale-pull.ts'
import { coneRadius, flatRadius, seatTorque } from '../../src/mechanics/seat.ts'
import { boltForce, boltShare, boltStiffness, jointStiffness } from '../../src/mechanics/stiffness.ts'
import { clampAtPlainShare, clampAtYieldShare, stressOf, type TwistModulus } from '../../src/mechanics/strength.ts'
import {
  inchThread,
  metricThread,
  screwEfficiency,
  type ThreadForm,
  threadForms,
  threadLever,
  wedgeLever,
} from '../../src/mechanics/thread-friction.ts'
import { halfRange, leastOf, scatterBand, settingBelow } from '../../src/mechanics/tightening-scatter.ts'
import { clampRatio, nutFactorByFriction, tighteningLever, torqueShares } from '../../src/mechanics/torque-split.ts'
import { turnForClamp } from '../../src/mechanics/turn.ts'
import { conditionTable } from '../../src/tables/conditions.ts'
import { type FrictionClass, frictionClassTable } from '../../src/tables/friction.ts'
import { findHead, hexagonHeads } from '../../src/tables/heads.ts'
import { findHole, metricHoles } from '../../src/tables/holes.ts'
import { findNutFactor, nutFactorSources, PCC1_K_ABOVE_MU } from '../../src/tables/nut-factors.ts'
import { inchNuts } from '../../src/tables/nuts.ts'
import { findClass } from '../../src/tables/property-classes.ts'
import { findScatter } from '../../src/tables/scatter.ts'
import { findStructuralTurn } from '../../src/tables/structural-turns.ts'
import { threadTable } from '../../src/tables/threads.ts'
import { wheelsAgain } from '../../src/tables/wheels.ts'

export type Cell = number | null | readonly number[]
export type Cells = Readonly<Record<string, Cell | undefined>>
type Inputs = Readonly<Record<string, unknown>>
/** Works out every printed cell of a row; `printed` serves only where a source derives one printed cell from another. */
export type Check = (inputs: Inputs, printed: Readonly<Record<string, number>>, id: string) => Cells

const MM = 0.001
const INCH = 0.0254
const LBF = 4.4482216152605
const LBF_IN = LBF * INCH
const LBF_FT = LBF_IN * 12
const PSI = LBF / INCH ** 2
const MPA = 1e6

const n = (inputs: Inputs, name: string): number => {
  const value = inputs[name]
  if (typeof value !== 'number') throw new Error(`the row has no number ${name}`)
  return value
}
const word = (inputs: Inputs, name: string): string => String(inputs[name])
const list = (inputs: Inputs, name: string): number[] => inputs[name] as number[]
const byClass = (inputs: Inputs, name: string): Array<[string, number]> =>
  Object.entries(inputs[name] as Record<string, number>)
const slug = (name: string): string => name.replace('.', '_')

/** Where the table of a thread is named M12x1.75 or 1/2-13 NC. */
const threadNamed = (name: string) => {
  const row = threadTable.find((candidate) => candidate.name === name.split(' ')[0])
  if (!row) throw new Error(`no thread ${name}`)
  return row
}

/** Clamp force and torque of a bolt at a share of yield, in the convention of a table. */
interface Convention {
  readonly form: ThreadForm
  readonly modulus: TwistModulus
  readonly seat: (d: number, inputs: Inputs) => number
}

// Tables of VDI 2230 since 2001: wedge form, plastic modulus, diameters to the micrometre, seat d_w of ISO 4014 over a medium hole.
const current: Convention = {
  form: 'wedge',
  modulus: 'plastic',
  seat: (_d, inputs) => flatRadius(n(inputs, 'bearing_outer_dw_mm') * MM, n(inputs, 'hole_dh_mm') * MM),
}
// Tables by the method of 1986: rounded form, elastic modulus. The reprint does not name its seat; a washer face of 1.5 d over a hole of d, as
// textbooks take it (Shigley: mean collar diameter 1.25 d), gives all torques but one.
const of1986: Convention = { form: 'rounded', modulus: 'elastic', seat: (d) => flatRadius(1.5 * d, d) }

const atYield = (inputs: Inputs, Rp: number, { form, modulus, seat }: Convention): { kN: number; Nm: number } => {
  const d = n(inputs, 'nominal_diameter_mm') * MM
  const thread = metricThread(d, n(inputs, 'pitch_mm') * MM, 'micrometre')
  const mu = { thread: n(inputs, 'mu_thread'), seat: n(inputs, 'mu_bearing') }
  const lever = threadLever(thread, mu.thread, form)
  const F = clampAtYieldShare(n(inputs, 'yield_utilisation'), Rp * MPA, thread, lever, modulus)
  return { kN: F / 1000, Nm: F * tighteningLever(thread, mu, seat(d, inputs), form) }
}

const threeClasses = (inputs: Inputs, yields: string, convention: Convention): Cells =>
  Object.fromEntries(
    byClass(inputs, yields).flatMap(([name, Rp]) => {
      const { kN, Nm } = atYield(inputs, Rp, convention)
      return [
        [`preload_${slug(name)}_kN`, kN],
        [`torque_${slug(name)}_Nm`, Nm],
      ]
    }),
  )

const kdf = (inputs: Inputs, K: string): number =>
  torqueForClamp(n(inputs, K), n(inputs, 'nominal_diameter_in') * INCH, n(inputs, 'preload_lbf') * LBF)

const nutFactorInch = (ftlbf: number, inch: number, lbf: number): number =>
  nutFactorOf(ftlbf * LBF_FT, inch * INCH, lbf * LBF)

const inchTable: Check = (inputs, printed, id) => {
  const d = n(inputs, 'nominal_diameter_in')
  const As = n(inputs, 'stress_area_in2')
  if (id.startsWith('TAB-SAE')) {
    const F = clampAtPlainShare(n(inputs, 'proof_fraction'), n(inputs, 'proof_strength_psi'), As)
    return {
      clamp_load_lbf: F,
      torque_dry_inlbf: torqueForClamp(n(inputs, 'K_dry'), d, F),
      torque_lubricated_inlbf: torqueForClamp(n(inputs, 'K_lubricated'), d, F),
    }
  }
  if (id.startsWith('TAB-ARMY')) {
    // Clean and dry: K 0.2 (the desk's own typical) at three quarters of proof.
    const F = (grade: string): number => {
      const row = findClass(`SAE ${grade}`, d * INCH)
      return clampAtPlainShare(0.75, (row?.proof ?? Number.NaN) / PSI, As)
    }
    const torque = (grade: string): number => torqueForClamp(conditionTable.dry.typical, d, F(grade)) / 12
    return {
      torque_grade1_2_ftlbf: torque('2'),
      torque_grade5_ftlbf: torque('5'),
      torque_grade8_ftlbf: torque('8'),
      K_implied_grade5_at_75pct_proof: nutFactorOf((printed['torque_grade5_ftlbf'] as number) * 12, d, F('5')),
      K_implied_grade8_at_75pct_proof: nutFactorOf((printed['torque_grade8_ftlbf'] as number) * 12, d, F('8')),
    }
  }
  // Aviation: the table's own 40 ksi, and its most at 90 ksi; each torque again from the K that the other end implies.
  const F = n(inputs, 'bolt_stress_psi') * As
  const low = nutFactorOf(printed['torque_min_inlbf'] as number, d, F)
  const high = nutFactorOf(printed['torque_max_inlbf'] as number, d, F)
  return {
    torque_min_inlbf: torqueForClamp(printed['K_implied_min'] as number, d, F),
    torque_max_inlbf: torqueForClamp(printed['K_implied_max'] as number, d, F),
    max_allowable_inlbf: torqueForClamp((low + high) / 2, d, n(inputs, 'max_bolt_stress_psi') * As),
    K_implied_min: low,
    K_implied_max: high,
  }
}

const frictionModel: Check = (inputs, _printed, id) => {
  if (id.startsWith('FRIC-EXACT')) {
    const thread = metricThread(n(inputs, 'nominal_diameter_mm') * MM, n(inputs, 'pitch_mm') * MM)
    const [wedge, linear, rounded] = threadForms.map(
      (form) => threadLever(thread, n(inputs, 'mu_thread'), form) * n(inputs, 'preload_kN') * 1000,
    )
    return { exact_Nm: wedge, linear_Nm: linear, vdi_rounded_Nm: rounded }
  }
  // This book's mean diameter lies midway between major and minor; the collar's mean radius is 0.625 d.
  const d = n(inputs, 'nominal_diameter_in')
  const wedge = {
    lead: threadNamed(word(inputs, 'thread')).P / INCH,
    dm: n(inputs, 'thread_mean_diameter_in'),
    mu: n(inputs, 'mu_thread'),
    flank: n(inputs, 'thread_half_angle_deg'),
  }
  const collar = (n(inputs, 'collar_mean_diameter_factor') * d) / 2
  return { torque_inlbf: n(inputs, 'preload_lbf') * (wedgeLever(wedge) + n(inputs, 'mu_collar') * collar) }
}

const screw: Check = (inputs, printed) => {
  if ('torque_raise_Nm' in printed) {
    const F = n(inputs, 'preload_kN') * 1000
    const lead = n(inputs, 'lead_mm') * MM
    const wedge = { lead, dm: n(inputs, 'mean_diameter_mm') * MM, mu: n(inputs, 'mu_thread'), flank: 0 }
    const collar = seatTorque(F, n(inputs, 'mu_collar'), (n(inputs, 'collar_mean_diameter_mm') * MM) / 2)
    const raise = F * wedgeLever(wedge) + collar
    return {
      torque_raise_Nm: raise,
      torque_lower_Nm: F * wedgeLever(wedge, 'loosen') + collar,
      efficiency: screwEfficiency(F, lead, raise),
    }
  }
  const F = n(inputs, 'preload_lbf')
  const thread =
    F *
    wedgeLever({
      lead: n(inputs, 'lead_in'),
      dm: n(inputs, 'mean_diameter_in'),
      mu: n(inputs, 'mu_thread'),
      flank: n(inputs, 'thread_half_angle_deg'),
    })
  const collar = seatTorque(F, n(inputs, 'mu_collar'), n(inputs, 'collar_mean_diameter_in') / 2)
  return { thread_torque_inlbf: thread, collar_torque_inlbf: collar, total_inlbf: thread + collar }
}

const vdiTable: Check = (inputs, printed) => {
  if (!('preload_max_kN' in printed)) {
    const { kN, Nm } = atYield(inputs, n(inputs, 'Rp02_min_MPa'), current)
    return { preload_kN: kN, torque_Nm: Nm }
  }
  const { d, P } = threadNamed(word(inputs, 'thread'))
  const row = findClass(word(inputs, 'property_class'), d)
  const thread = metricThread(d, P, 'micrometre')
  const F = clampAtYieldShare(
    n(inputs, 'yield_utilisation'),
    row?.yield ?? Number.NaN,
    thread,
    threadLever(thread, n(inputs, 'mu_thread'), 'wedge'),
    'plastic',
  )
  return { preload_max_kN: F / 1000, preload_min_kN: leastOf(F, n(inputs, 'alpha_A')) / 1000 }
}

const stressArea: Check = (inputs, printed) => {
  if ('stress_area_mm2' in printed) {
    const thread = metricThread(n(inputs, 'nominal_diameter_mm') * MM, n(inputs, 'pitch_mm') * MM)
    return { stress_area_mm2: thread.As / MM ** 2 }
  }
  const thread = inchThread(n(inputs, 'nominal_diameter_in') * INCH, INCH / n(inputs, 'threads_per_inch'))
  return {
    stress_area_in2: thread.As / INCH ** 2,
    minor_area_in2: ((Math.PI / 4) * thread.d3 ** 2) / INCH ** 2,
  }
}

const wheelTension: Check = (inputs, printed) => {
  if ('K_implied_at_475' in printed) {
    const [low, high] = list(inputs, 'torque_ftlbf') as [number, number]
    const K = nutFactorInch((low + high) / 2, n(inputs, 'nominal_diameter_in'), printed['clamp_lbf'] as number)
    return {
      K_implied_at_475: K,
      clamp_lbf: clampForTorque(
        printed['K_implied_at_475'] as number,
        n(inputs, 'nominal_diameter_in'),
        ((low + high) / 2) * 12,
      ),
    }
  }
  if ('clamp_good_min_lbf' in printed) {
    const [low, high] = list(inputs, 'torque_ftlbf') as [number, number]
    const d = threadNamed(word(inputs, 'thread')).d / INCH
    const good = printed['clamp_good_min_lbf'] as number
    const loss = -deviation(printed['clamp_high_friction_lbf'] as number, good) / 100
    return {
      // What the desk would foresee for an oiled thread.
      clamp_good_min_lbf: clampForTorque(conditionTable.oiled.typical, d, ((low + high) / 2) * 12),
      clamp_high_friction_lbf: good * (1 - (printed['clamp_loss_fraction'] as number)),
      clamp_loss_fraction: loss,
    }
  }
  // Torque and tension in proportion: each printed pair again from the other.
  const d = threadNamed(word(inputs, 'thread')).d
  const T0 = n(inputs, 'torque_initial_Nm')
  const T1 = n(inputs, 'torque_final_Nm')
  const F0 = printed['tension_initial_min_kN'] as number
  const F1 = printed['tension_final_min_kN'] as number
  const most = printed['tension_final_max_kN']
  return {
    tension_initial_min_kN: F1 * (T0 / T1),
    tension_final_min_kN: F0 * (T1 / T0),
    K_implied_max: nutFactorOf(T1, d, F1 * 1000),
    ...(most === undefined
      ? {}
      : {
          tension_final_max_kN: clampForTorque(printed['K_implied_min'] as number, d, T1) / 1000,
          K_implied_min: nutFactorOf(T1, d, most * 1000),
        }),
  }
}

const stiffness: Check = (inputs, printed) => {
  if ('preload_stress_kpsi' in printed) {
    const C = boltShare(n(inputs, 'kb_Mlbf_per_in'), n(inputs, 'km_Mlbf_per_in'))
    const As = n(inputs, 'stress_area_in2')
    const F = n(inputs, 'preload_kip')
    return {
      preload_stress_kpsi: F / As,
      C,
      service_stress_kpsi: boltForce(F, n(inputs, 'external_load_kip'), C) / As,
    }
  }
  const { d, P } = threadNamed(word(inputs, 'bolt'))
  const grip = n(inputs, 'grip_in') * INCH
  const E = n(inputs, 'E_Mpsi') * 1e6 * PSI
  const nut = inchNuts.find((row) => Math.abs(row.d - d) < 1e-6)?.m ?? Number.NaN
  const L = boltLength(grip, nut, 0.25 * INCH)
  const kb = boltStiffness(
    { d, As: inchThread(d, P).As, ...gripParts(grip, L, threadedLength(d, L, 'inch')) },
    'not-counted',
    E,
  )
  const kj = jointStiffness(d, grip, E, {
    alpha: n(inputs, 'frustum_half_angle_deg'),
    D: n(inputs, 'washer_face_factor') * d,
  })
  const M = (1e6 * LBF) / INCH
  // The table goes on from its stiffnesses as it prints them, with two decimals.
  const print = (k: number): number => Math.round((k / M) * 100) / 100
  return {
    bolt_stiffness_Mlbf_per_in: kb / M,
    member_stiffness_Mlbf_per_in: kj / M,
    C: boltShare(print(kb), print(kj)),
  }
}

const turn: Check = (inputs, printed) => {
  if ('turn_deg' in printed) {
    // The bolt alone: k_b = E A/L, rigid joint, A cancels; the pitch by the thread's name, not by its rounded print.
    const L = n(inputs, 'effective_bolt_length_in')
    return {
      turn_deg: turnForClamp(
        n(inputs, 'axial_stress_psi'),
        threadNamed(word(inputs, 'thread')).P / INCH,
        n(inputs, 'E_psi') / L,
        Number.POSITIVE_INFINITY,
      ),
    }
  }
  const upTo = Number(/L<=(\d+)d/.exec(word(inputs, 'length_rule'))?.[1])
  return { rotation_from_snug_deg: findStructuralTurn(upTo)?.square }
}

const scatter: Check = (inputs, printed, id) => {
  if ('set_torque_Nm' in printed) {
    // The note goes on from the set torque as it prints it, in whole newton metres.
    const set = settingBelow(n(inputs, 'max_torque_Nm'), n(inputs, 'scatter'))
    return { set_torque_Nm: set, min_torque_Nm: scatterBand(Math.round(set), n(inputs, 'scatter')).low }
  }
  if ('nominal_lbf' in printed) {
    const F = clampForTorque(n(inputs, 'K'), n(inputs, 'nominal_diameter_in'), n(inputs, 'torque_inlbf'))
    const { low, high } = scatterBand(F, n(inputs, 'uncertainty'))
    return { nominal_lbf: F, min_lbf: low, max_lbf: high }
  }
  const half = findScatter(id.startsWith('SCATTER-NASA') ? 'nasa' : 'handbook', word(inputs, 'method'))?.half
  return { preload_uncertainty_percent: half === undefined ? undefined : half * 100 }
}

const rangeCells = (row: { low?: number; mean?: number; high?: number } | undefined): Cells => ({
  K_min: row?.low ?? null,
  K_max: row?.high ?? null,
  K_mean: row?.mean ?? null,
})

const prevailing: Check = (inputs, printed) => {
  if ('wrench_min_inlbf' in printed) {
    const final = (name: string): number =>
      finalTorqueFromThird(n(inputs, name), n(inputs, 'run_on_inlbf'), n(inputs, 'add_threshold_fraction'))
    return { wrench_min_inlbf: final('recommended_min_inlbf'), wrench_max_inlbf: final('recommended_max_inlbf') }
  }
  const middle = (n(inputs, 'base_min_inlbf') + n(inputs, 'base_max_inlbf')) / 2
  return { final_inlbf: finalTorque(middle, n(inputs, 'run_on_inlbf')) }
}

const wheelSources: Readonly<Record<string, string>> = {
  'WHEEL-RETORQUE-FORD': 'car-manual',
  'WHEEL-RETORQUE-FRTL': 'truck-manual',
  'WHEEL-RETORQUE-UK': 'uk-practice',
  'WHEEL-RETORQUE-TB': 'tyre-trade',
}

export const checks: Readonly<Record<string, Check>> = {
  nut_factor: (inputs, _printed, id) => {
    if (id !== 'K-SHIG-unknown') return { K: findNutFactor('shigley', word(inputs, 'condition'))?.mean }
    // For every inch thread of a quarter inch and more, the book's own collar; the one that lies farthest from the print.
    const factors = threadTable
      .filter(({ system, d }) => system === 'inch' && d >= 0.25 * INCH)
      .map(({ d, P }) =>
        nutFactorByFriction(
          inchThread(d, P),
          { thread: n(inputs, 'mu_thread'), seat: n(inputs, 'mu_collar') },
          flatRadius(1.5 * d, d),
          'wedge',
        ),
      )
    const off = (K: number): number => Math.abs(K - 0.2)
    return { K: factors.reduce((worst, K) => (off(K) > off(worst) ? K : worst)) }
  },
  torque_KDF: (inputs, printed) => {
    if ('preload_kN' in printed) {
      const F = clampAtPlainShare(
        n(inputs, 'proof_fraction'),
        n(inputs, 'proof_strength_MPa') * MPA,
        n(inputs, 'stress_area_mm2') * MM ** 2,
      )
      return {
        preload_kN: F / 1000,
        torque_Nm: torqueForClamp(n(inputs, 'K'), n(inputs, 'nominal_diameter_mm') * MM, F),
      }
    }
    return 'torque_dry_ftlbf' in printed
      ? {
          torque_dry_ftlbf: kdf(inputs, 'K_dry') / LBF_FT,
          torque_lubricated_ftlbf: kdf(inputs, 'K_lubricated') / LBF_FT,
        }
      : { torque_inlbf: kdf(inputs, 'K') / LBF_IN }
  },
  preload_proof_fraction: (inputs) => {
    const share = n(inputs, 'proof_fraction')
    if ('stress_area_in2' in inputs) {
      return { preload_kip: clampAtPlainShare(share, n(inputs, 'proof_strength_ksi'), n(inputs, 'stress_area_in2')) }
    }
    const S = n(inputs, 'proof_strength_MPa')
    return { preload_kN: clampAtPlainShare(share, S, n(inputs, 'stress_area_mm2')) / 1000, stress_MPa: share * S }
  },
  nut_factor_implied: (inputs) => {
    const F = n(inputs, 'root_stress_psi') * n(inputs, 'root_area_in2')
    const K = (torque: string): number => nutFactorInch(n(inputs, torque), n(inputs, 'nominal_diameter_in'), F)
    return { K_noncoated: K('torque_noncoated_ftlbf'), K_coated: K('torque_coated_ftlbf') }
  },
  measured_lubrication_effect: (inputs) => ({
    K: nutFactorInch(n(inputs, 'torque_ftlbf'), n(inputs, 'nominal_diameter_in'), n(inputs, 'clamp_force_lbf')),
  }),
  measured_scatter: (inputs) => {
    const sample = list(inputs, 'preload_sample_kN')
    return { mean_kN: mean(sample), sd_kN: sampleDeviation(sample) }
  },
  inch_torque_table: inchTable,
  torque_friction_model: frictionModel,
  screw_thread_friction: screw,
  vdi_table_verified: vdiTable,
  vdi_table_memory: (inputs) => threeClasses(inputs, 'Rp02_min_MPa', current),
  vdi_table_verified_1986: (inputs) => threeClasses(inputs, 'yield_MPa', of1986),
  torque_split: (inputs) => {
    const thread = metricThread(n(inputs, 'nominal_diameter_mm') * MM, n(inputs, 'pitch_mm') * MM, 'micrometre')
    const mu = { thread: n(inputs, 'mu_thread'), seat: n(inputs, 'mu_bearing') }
    const rs = (n(inputs, 'Dkm_mm') * MM) / 2
    const { pitch, thread: inThread, seat } = torqueShares(thread, mu, rs)
    return {
      pitch_share: pitch,
      thread_share: inThread,
      bearing_share: seat,
      K: nutFactorByFriction(thread, mu, rs, 'linear'),
    }
  },
  torsion_von_mises: (inputs) => {
    const thread = metricThread(n(inputs, 'nominal_diameter_mm') * MM, n(inputs, 'pitch_mm') * MM)
    const section = { d0: n(inputs, 'd0_mm') * MM, As: n(inputs, 'stress_area_mm2') * MM ** 2 }
    const F = n(inputs, 'preload_kN') * 1000
    const Rp = n(inputs, 'Rp02_min_MPa') * MPA
    const lever = threadLever(thread, n(inputs, 'mu_thread'), 'linear')
    const { sigma, tau, reduced } = stressOf(F, F * lever, section, 'plastic')
    return {
      sigma_MPa: sigma / MPA,
      tau_plastic_MPa: tau / MPA,
      sigma_red_MPa: reduced / MPA,
      utilisation: reduced / Rp,
      preload_reduction_factor: F / (0.9 * Rp * section.As),
    }
  },
  bearing_mean_diameter: (inputs) => {
    const outer = n(inputs, 'outer_mm')
    const inner = n(inputs, 'inner_mm')
    const flat = 2 * flatRadius(outer, inner)
    const even = 2 * flatRadius(outer, inner, 'even-pressure')
    return { arithmetic_mean_mm: flat, uniform_pressure_mm: even, ratio: even / flat }
  },
  iso16047_mu_total: (inputs) => ({
    mu_total: muTotal(
      n(inputs, 'torque_Nm'),
      n(inputs, 'clamp_force_kN') * 1000,
      { P: n(inputs, 'pitch_mm') * MM, d2: n(inputs, 'd2_mm') * MM },
      (n(inputs, 'Db_mm') * MM) / 2,
    ),
  }),
  stress_area: stressArea,
  iso898_proof_load: (inputs, printed) => {
    const d = n(inputs, 'nominal_diameter_mm') * MM
    const As = n(inputs, 'stress_area_mm2') * MM ** 2
    return Object.fromEntries(
      Object.keys(printed).map((key) => {
        const name = key.replace('proof_load_', '').replace('_N', '').replace('_', '.')
        return [key, clampAtPlainShare(1, findClass(name, d)?.proof ?? Number.NaN, As)]
      }),
    )
  },
  iso898_strength: (inputs) => {
    const [name, limit] = word(inputs, 'property_class').split('_d')
    const row = findClass(name as string, (limit === '>16' ? 20 : 16) * MM)
    return {
      Rm_min_MPa: (row?.tensile ?? Number.NaN) / MPA,
      yield_min_MPa: (row?.yield ?? Number.NaN) / MPA,
      proof_MPa: (row?.proof ?? Number.NaN) / MPA,
    }
  },
  sae_j429_strength: (inputs, _printed, id) => {
    // Both ends of the printed size range must give the same row.
    const ends = word(inputs, 'size_range_in')
      .split('-')
      .map((text) =>
        text.split(' ').reduce(
          (sum, part) =>
            sum +
            part
              .split('/')
              .map(Number)
              .reduce((a, b) => a / b),
          0,
        ),
      )
    const rows = ends.map((d) => findClass(`SAE ${word(inputs, 'sae_grade')}`, d * INCH))
    if (rows.length !== 2 || rows[0] === undefined || rows[0] !== rows[1]) throw new Error(`${id}: sizes of two rows`)
    const { proof = Number.NaN, yield: yields, tensile } = rows[0]
    return { proof_ksi: proof / PSI / 1000, yield_ksi: yields / PSI / 1000, tensile_ksi: tensile / PSI / 1000 }
  },
  iso3506_strength: (inputs) => {
    const rows = (['A2', 'A4'] as const).map((steel) =>
      findClass(word(inputs, 'property_class').replace('A2/A4', steel), 10 * MM),
    )
    if (rows.some((row) => row === undefined || row.proof !== undefined))
      throw new Error('stainless has no proof stress')
    return { Rm_min_MPa: (rows[0]?.tensile ?? Number.NaN) / MPA, Rp02_min_MPa: (rows[1]?.yield ?? Number.NaN) / MPA }
  },
  conical_seat: (inputs) => {
    const F = n(inputs, 'axial_force_kN') * 1000
    const [dw, dh] = [n(inputs, 'seat_outer_dia_mm') * MM, n(inputs, 'seat_inner_dia_mm') * MM]
    const alpha = n(inputs, 'cone_half_angle_deg')
    const torque = (flat: number): number => seatTorque(F, n(inputs, 'mu'), coneRadius(flat, alpha))
    return {
      torque_uniform_wear_Nm: torque(flatRadius(dw, dh)),
      torque_uniform_pressure_Nm: torque(flatRadius(dw, dh, 'even-pressure')),
      factor_vs_flat: coneRadius(1, alpha),
    }
  },
  wheel_nut_torque_tension: wheelTension,
  wheel_retorque: (_inputs, _printed, id) => {
    const row = wheelsAgain.find(({ source }) => source === wheelSources[id])
    return {
      min_km: row?.km?.[0],
      max_km: row?.km?.[1],
      max_miles: row?.miles?.[1],
      first_miles: row?.miles?.[0],
      second_miles: row?.miles?.[1],
      min_minutes: row?.minutes,
    }
  },
  joint_stiffness: stiffness,
  turn_of_nut: turn,
  aisc_pretension: (inputs) =>
    'tensile_ksi' in inputs
      ? {
          pretension_kip: clampAtPlainShare(
            n(inputs, 'fraction'),
            n(inputs, 'tensile_ksi'),
            n(inputs, 'stress_area_in2'),
          ),
        }
      : {
          pretension_kN:
            clampAtPlainShare(n(inputs, 'fraction'), n(inputs, 'tensile_MPa'), n(inputs, 'stress_area_mm2')) / 1000,
        },
  tightening_scatter: scatter,
  alpha_A: (inputs) => ({ half_range_percent: halfRange(n(inputs, 'alpha_A')) * 100 }),
  prevailing_torque: prevailing,
  nut_factor_range: (inputs, printed) => {
    if (!('K_mean_min' in printed)) return rangeCells(findNutFactor('supplier', word(inputs, 'fastener_finish')))
    const { low, high } = nutFactorSources.means[0]
    return { K_mean_min: low, K_mean_max: high }
  },
  nut_factor_range_memory: (inputs, printed) => {
    if ('K_lubricated_min' in printed) {
      const lubricated = findNutFactor('nasa', 'lubricated')
      return {
        K_lubricated_min: lubricated?.low,
        K_lubricated_max: lubricated?.high,
        K_unlubricated: findNutFactor('nasa', 'unlubricated')?.mean,
      }
    }
    if ('K_minus_mu' in printed) {
      return {
        ...rangeCells(findNutFactor('pcc1', 'low_alloy_studs')),
        K_minus_mu: PCC1_K_ABOVE_MU,
        K_at_mu: list(inputs, 'mu').map((mu) => mu + PCC1_K_ABOVE_MU),
      }
    }
    return rangeCells(findNutFactor('bickford', word(inputs, 'condition')))
  },
  friction_class: (inputs) => {
    const { low, high } = frictionClassTable[word(inputs, 'friction_class') as FrictionClass]
    return { mu_min: low, mu_max: high ?? null }
  },
  head_dimension: (inputs) => {
    const row = findHead(hexagonHeads, n(inputs, 'nominal_diameter_mm') * MM)
    return { across_flats_mm: (row?.s ?? Number.NaN) / MM, washer_face_dw_min_mm: (row?.dw ?? Number.NaN) / MM }
  },
  clearance_hole: (inputs) => {
    const hole = findHole(metricHoles, n(inputs, 'nominal_diameter_mm') * MM)?.hole
    return Object.fromEntries(
      (['fine', 'medium', 'coarse'] as const).map((series) => [`${series}_mm`, (hole?.[series] ?? Number.NaN) / MM]),
    )
  },
  lubrication_effect_identity: (inputs) => {
    const thread = { P: n(inputs, 'pitch_mm') * MM, d2: n(inputs, 'd2_mm') * MM }
    const rs = n(inputs, 'effective_bearing_radius_mm') * MM
    const dry = { thread: n(inputs, 'mu_dry'), seat: n(inputs, 'mu_dry') }
    const both = { thread: n(inputs, 'mu_lubricated'), seat: n(inputs, 'mu_lubricated') }
    const threadsOnly = { thread: both.thread, seat: dry.seat }
    const ratio = clampRatio(thread, rs, dry, threadsOnly, 'linear')
    return {
      preload_ratio_thread_only: ratio,
      preload_ratio_thread_and_bearing: clampRatio(thread, rs, dry, both, 'linear'),
      torque_ratio_for_same_preload_thread_only: 1 / ratio,
    }
  },
}
