// Raw texts of a check under way to what the register works with: the wrench's card, the gauge's, how it is checked, what was
// read so far, and the plan that follows. All faults at once; what is missing is listed.
import { type Fault, fault } from '../core/fault.ts'
import type { Quantity } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { growingInputs } from '../keeping/check-inputs.ts'
import { keepables } from '../keeping/index.ts'
import { admissionFaults } from '../register/admit.ts'
import type { CheckWay } from '../register/bodies.ts'
import type { Book } from '../register/book.ts'
import type { ReadPoint } from '../register/check-growing.ts'
import { type CheckHead, type CheckPlan, planCheck } from '../register/check-plan.ts'
import { usualWay, wayFaults } from '../register/gauge-ways.ts'
import { foldTag } from '../register/parts.ts'
import type { Check, Entry, GaugeCard, WrenchCard } from '../register/records.ts'
import { type RawInputs, readQuestion } from './read.ts'
import type { Shop } from './shop.ts'

export interface CheckAsked {
  readonly head: CheckHead
  readonly card: WrenchCard
  readonly gauge: GaugeCard | undefined
  readonly plan: CheckPlan
  /** What was read before. */
  readonly read: readonly ReadPoint[]
  /** One reading more. */
  readonly typed: Quantity | undefined
  readonly sure: readonly Quantity[]
  /** What was handed in, with what was taken for granted put in. */
  readonly texts: RawInputs
}

export type CheckReading =
  | { readonly kind: 'refused'; readonly faults: readonly Fault[]; readonly missing: readonly string[] }
  | { readonly kind: 'incomplete'; readonly missing: readonly string[] }
  | { readonly kind: 'read'; readonly asked: CheckAsked }

const withGauge = (book: Book, gauge: Entry<'gauge'> | undefined): Book => {
  if (!gauge) return book
  const kept = { entry: gauge, order: 0, earlier: [] }
  return { ...book, gauges: new Map([...book.gauges, [foldTag(gauge.body.tag), kept]]) }
}

/** Where the wrench's own weight gives a torque by itself, there is nothing to pull for it. */
const weightFaults = ({ points }: CheckPlan, given: Readonly<Record<string, unknown>>): Fault[] =>
  points.some(({ shows }) => shows.low <= 0)
    ? [fault('weight-is-enough', 'wrench-mass', echoQuantity(given['wrench-mass'] as Quantity))]
    : []

export const readCheck = async (shop: Shop, raw: unknown): Promise<CheckReading> => {
  const first = readQuestion(growingInputs, raw)
  const { wrench: tag, gauge: named } = first.values as { wrench?: string; gauge?: string }
  const found = tag === undefined ? undefined : await shop.wrench(tag)
  const entry =
    named === undefined ? undefined : (await shop.gauges()).find(({ body }) => foldTag(body.tag) === foldTag(named))
  const today = shop.today().today
  const usual = entry && first.missing.includes('way') ? { way: usualWay[entry.body['gauge-type']] } : {}
  const texts: RawInputs = { state: 'as-found', date: today, ...usual, ...(raw as object) }
  const { values, faults, missing } = Object.keys(usual).length > 0 ? readQuestion(growingInputs, texts) : first
  const all = [
    ...faults,
    ...(tag !== undefined && !found ? [fault('no-such-wrench', 'wrench', tag)] : []),
    ...(named !== undefined && !entry ? [fault('no-such-gauge', 'gauge', named)] : []),
    ...wayFaults(values['way'] as CheckWay | undefined, entry?.body),
  ]
  if (all.length > 0) return { kind: 'refused', faults: all, missing }
  if (missing.length > 0 || !found) return { kind: 'incomplete', missing }
  const given = { state: 'as-found', date: today, points: [], ...values }
  const body = keepables.check.body(given, texts) as Check
  const { points: read, ...head } = body
  const card = found.row.folder.card.entry.body
  const plan = planCheck(head, card, entry?.body)
  const draft = { kind: 'check', body, by: { role: 'mechanic', door: 'terminal' } } as const
  const refused = [...admissionFaults(withGauge(found.book, entry), draft, today), ...weightFaults(plan, given)]
  if (refused.length > 0) return { kind: 'refused', faults: refused, missing }
  const typed = values['reading'] as Quantity | undefined
  const sure = (values['sure'] ?? []) as readonly Quantity[]
  return { kind: 'read', asked: { head, card, gauge: entry?.body, plan, read, typed, sure, texts } }
}
