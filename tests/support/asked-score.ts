// Scores the reader on questions as people ask them: what was right, asked back, refused as it should be, and what was wrong.
// Half of the items, by a hash of their id, were set aside before anything was tuned; both halves are told.
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { spelledUnits, units } from '../../src/core/unit.ts'
import type { Answer } from '../../src/questions/answer.ts'
import { desks } from './desk.ts'

export interface AskedItem {
  readonly id: string
  readonly kind: string
  readonly text: string
  readonly missing: readonly string[]
  readonly expected: Readonly<Record<string, { readonly value: number; readonly unit: string } | string>>
}

export const asked = JSON.parse(
  readFileSync(join(import.meta.dirname, '../fixtures/asked.json'), 'utf8'),
) as readonly AskedItem[]

export const isAside = ({ id }: AskedItem): boolean => (createHash('sha256').update(id).digest()[0] ?? 0) % 2 === 1

export const verdicts = [
  'right answer',
  'asked back rightly',
  'right refusal',
  'asked without need',
  'wrong topic',
  'wrong number',
] as const
export type Verdict = (typeof verdicts)[number]
export const isGood = (verdict: Verdict): boolean => verdicts.indexOf(verdict) < 3

const reach = ['adapter-setting', 'adapter-reading', 'does-it-matter']
/** The questions that may answer an item of a kind. */
const questionsOf: Readonly<Record<string, readonly string[]>> = {
  adapter: reach,
  adapter_angle: reach,
  adapter_reverse: reach,
  multi_adapter: reach,
  end_fitting: ['end-fitting', 'adapter-setting', 'adapter-reading', 'does-it-matter'],
  hand_position: ['hand-position', 'adapter-setting', 'adapter-reading', 'does-it-matter', 'pull'],
  handle_extension: ['hand-position', 'adapter-setting', 'does-it-matter', 'pull'],
  extension_bar: ['extension-bar', 'does-it-matter'],
  multiplier: ['multiplier'],
  lubricant_same_torque: ['lubricant', 'does-it-matter', 'clamp-force'],
  lubricant_reduced_torque: ['lubricant', 'does-it-matter'],
  preload: ['clamp-force', 'bolt-torque'],
  k_factor: ['nut-factor', 'clamp-force', 'lubricant'],
  wrench_check_scale: ['scale-check', 'scale-plan', 'pull'],
  wrench_check_tester: ['wrench-check', 'tolerance-band'],
  tolerance: ['tolerance-band', 'wrench-check', 'adapter-setting', 'does-it-matter'],
  calibration_interval: ['next-check', 'does-it-matter'],
  storage: ['does-it-matter', 'next-check'],
  unit_conversion: ['convert'],
  compare_readings: ['compare', 'does-it-matter', 'wrench-check'],
  flex_head: ['flex-head', 'does-it-matter'],
  universal_joint: ['swivel', 'does-it-matter'],
}

export interface Number_ {
  readonly value: number
  readonly dimension: string
}

const dimensions = ['torque', 'force', 'length', 'angle', 'percent'] as const

const expectedNumbers = ({ expected }: AskedItem): Number_[] =>
  Object.values(expected).flatMap((one): Number_[] => {
    if (typeof one === 'string') return []
    const spelling = dimensions
      .map((dimension) => spelledUnits(one.unit).find(({ unit }) => unit.dimension === dimension))
      .find((known) => known !== undefined)
    if (spelling) return [{ value: one.value * spelling.unit.factor, dimension: spelling.unit.dimension }]
    // A ratio of two torques may be told as a factor or as a change in percent.
    return [
      { value: one.value, dimension: 'number' },
      { value: (one.value - 1) * 100, dimension: 'percent' },
    ]
  })

export const numbersIn = (value: unknown): Number_[] => {
  if (Array.isArray(value)) return value.flatMap(numbersIn)
  if (value === null || typeof value !== 'object') return []
  const { value: number, unit, low, high } = value as Record<string, unknown>
  if (typeof number === 'number' && typeof unit === 'string') {
    const known = Object.values(units).find(({ symbol }) => symbol === unit)
    return [number, low, high].flatMap((one) =>
      typeof one === 'number' && known ? [{ value: one * known.factor, dimension: known.dimension }] : [],
    )
  }
  return Object.values(value).flatMap(numbersIn)
}

const NEAR = 0.01

const matches = (one: Number_, other: Number_): boolean =>
  one.dimension === other.dimension && Math.abs(one.value - other.value) <= NEAR * Math.max(1e-9, Math.abs(other.value))

const ofAnswered = (item: AskedItem, answer: Answer): Verdict => {
  const wanted = expectedNumbers(item)
  const { 'as-quoted': _theirs, ...own } = answer.results
  // What was worked back from the text (torque in times ratio) is told under given, not as typed.
  const worked = answer.given.filter(
    ({ from, input }) => from === 'assumed' && answer.reading?.taken.some((one) => one.input === input),
  )
  const given = numbersIn([own, worked, answer.steps])
  if (given.length === 0 || wanted.length === 0) return 'right answer'
  return wanted.some((one) => given.some((other) => matches(other, one))) ? 'right answer' : 'wrong number'
}

export const judge = (item: AskedItem, answer: Answer): Verdict => {
  const codes = answer.faults.map(({ code }) => code)
  const refusal =
    item.kind === 'torque_lookup' ? 'maker-figure' : item.kind === 'out_of_scope' ? 'out-of-scope' : undefined
  if (refusal) {
    if (codes.includes(refusal as never)) return 'right refusal'
    return answer.status === 'answered' && numbersIn(answer.results).length > 0 ? 'wrong number' : 'wrong topic'
  }
  const allowed = questionsOf[item.kind] ?? []
  const complete = item.missing.length === 0 && expectedNumbers(item).length > 0
  const asks: Verdict = complete ? 'asked without need' : 'asked back rightly'
  if (answer.question === null) {
    const some = answer.reading?.alternatives.some(({ question }) => allowed.includes(question))
    return answer.status === 'incomplete' && some ? asks : 'wrong topic'
  }
  if (answer.status === 'answered') {
    const verdict = ofAnswered(item, answer)
    return allowed.includes(answer.question) || verdict === 'wrong number' ? verdict : 'wrong topic'
  }
  return allowed.includes(answer.question) ? asks : 'wrong topic'
}

export interface Scored {
  readonly item: AskedItem
  readonly answer: Answer
  readonly verdict: Verdict
}

export const score = (items: readonly AskedItem[]): readonly Scored[] =>
  items.map((item) => {
    const answer = desks.inch.askText(item.text, { door: 'terminal' })
    return { item, answer, verdict: judge(item, answer) }
  })

export const goodShare = (scored: readonly Scored[]): number =>
  scored.filter(({ verdict }) => isGood(verdict)).length / scored.length

/** Lines of a table: a row a kind, a column a verdict. */
export const table = (scored: readonly Scored[]): string[] => {
  const kinds = [...new Set(scored.map(({ item }) => item.kind))].sort()
  const row = (name: string, of: readonly Scored[]): string =>
    [
      name.padEnd(24),
      ...verdicts.map((verdict) =>
        String(of.filter((one) => one.verdict === verdict).length || '·').padStart(verdict.length),
      ),
    ].join('  ')
  return [
    [''.padEnd(24), ...verdicts].join('  '),
    ...kinds.map((kind) =>
      row(
        kind,
        scored.filter(({ item }) => item.kind === kind),
      ),
    ),
    row('all', scored),
    `right, asked back or refused rightly: ${(goodShare(scored) * 100).toFixed(1)} %`,
  ]
}
