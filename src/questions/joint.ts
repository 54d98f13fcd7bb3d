// What the questions about bolts share: the thread of a size, the seat, the friction, and the levers that they make.
import { type Fault, fault } from '../core/fault.ts'
import type { SeatText } from '../core/parse-seat.ts'
import type { Size } from '../core/parse-size.ts'
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { muTotal } from '../mechanics/mu-total.ts'
import type { Span } from '../mechanics/nut-factor.ts'
import { type Seat, seatHolds, seatRadius } from '../mechanics/seat.ts'
import { inchThread, metricThread, type Thread, threadLever } from '../mechanics/thread-friction.ts'
import { tighteningLever } from '../mechanics/torque-split.ts'
import { type Citation, citations } from '../tables/citation.ts'
import { type Condition, conditionTable } from '../tables/conditions.ts'
import { findHead, hexagonHeads, inchHexagonHeads } from '../tables/heads.ts'
import { findHole, inchHoles, metricHoles } from '../tables/holes.ts'
import { type ClassRow, findClass } from '../tables/property-classes.ts'
import { findThread } from '../tables/threads.ts'
import { seatName, spanOfOwn } from './input-joint.ts'
import { type Caution, caution, type Given } from './outcome.ts'

export interface Joint {
  readonly size?: Size | undefined
  readonly condition?: Condition | undefined
  /** One's own: one value, or where the next bolt will lie. */
  readonly k?: Target | undefined
  readonly 'mu-threads'?: Quantity | undefined
  readonly 'mu-seat'?: Quantity | undefined
  readonly class?: string | undefined
  readonly seat?: SeatText | undefined
}

const systemOf = (size: Size): 'metric' | 'inch' => (size.diameter.unit === units.mm ? 'metric' : 'inch')

/** The pitch of a size: as written, else of the coarse thread; undefined where the tables know none. */
export const pitchOf = (size: Size): Quantity | undefined => {
  if (size.pitch) return size.pitch
  const row = findThread(systemOf(size), si(size.diameter))
  return row && fromSi(row.P, size.diameter.unit)
}

export const threadOf = (size: Size): Thread => {
  const P = si(pitchOf(size) as Quantity)
  return systemOf(size) === 'metric' ? metricThread(si(size.diameter), P) : inchThread(si(size.diameter), P)
}

interface SeatFound {
  readonly seat: Seat
  readonly text: SeatText
  readonly sources: readonly Citation[]
  readonly assumed: boolean
}

const seatFrom = (text: SeatText): Seat => {
  const ring = { dw: si(text.outer), dh: si(text.hole) }
  if (text.kind === 'cone') return { kind: 'cone', ...ring, alpha: (text.angle as Quantity).value / 2 }
  if (text.kind === 'ball') return { kind: 'ball', ...ring, R: si(text.radius as Quantity) }
  return { kind: 'flat', ...ring }
}

/** The seat as told, else a hexagon's least bearing face over a medium hole; undefined where the tables have none. */
export const seatOf = ({ size, seat }: Pick<Joint, 'size' | 'seat'>): SeatFound | undefined => {
  if (seat) return { seat: seatFrom(seat), text: seat, sources: [], assumed: false }
  if (!size) return undefined
  const d = si(size.diameter)
  const metric = systemOf(size) === 'metric'
  const head = findHead(metric ? hexagonHeads : inchHexagonHeads, d)
  const medium = metric ? findHole(metricHoles, d) : undefined
  const normal = metric ? undefined : findHole(inchHoles, d)
  const dh = medium?.hole.medium ?? normal?.normal
  const from = medium?.from ?? normal?.from
  if (!head || dh === undefined || !from) return undefined
  const unit = size.diameter.unit
  const text: SeatText = { kind: 'flat', outer: fromSi(head.dw, unit), hole: fromSi(dh, unit) }
  return { seat: seatFrom(text), text, sources: [head.from, from], assumed: true }
}

export const seatRadiusOf = (joint: Pick<Joint, 'size' | 'seat'>): number =>
  seatRadius((seatOf(joint) as SeatFound).seat)

/** Tightening lever Λ = T/F and its part in the thread λ [m], for low, typical and high friction. */
export interface Levers {
  readonly whole: Span
  readonly thread: Span
  readonly byNutFactor: boolean
}

const threadPart = (thread: Thread, whole: number, rs: number): number =>
  threadLever(thread, Math.max(muTotal(whole, 1, thread, rs), 0), 'linear')

const overSpan = (span: Span, at: (value: number) => number): Span => ({
  low: at(span.low),
  typical: at(span.typical),
  high: at(span.high),
})

/** Dry stainless rubs far more than dry steel: of a stainless class, dry is its own row. */
const stateOf = ({ condition, class: name }: Pick<Joint, 'condition' | 'class'>): Condition | undefined =>
  condition === 'dry' && name?.startsWith('A') ? 'stainless-dry' : condition

const nutFactorSpan = (joint: Joint): Span => {
  const { k } = joint
  return k ? spanOfOwn(k) : conditionTable[stateOf(joint) as Condition]
}

/**
 * K of the tables is of a flat hexagon; on another seat the same friction makes another lever. A factor of one's own was
 * measured on its own seat, and stays.
 */
const leverByNutFactor = (joint: Joint, thread: Thread, K: number, rs: number): number => {
  const flat = seatOf({ size: joint.size })
  if (joint.k || !joint.seat || !flat) return K * thread.d
  const mu = Math.max(muTotal(K * thread.d, 1, thread, seatRadius(flat.seat)), 0)
  return tighteningLever(thread, { thread: mu, seat: mu }, rs, 'linear')
}

export const leversOf = (joint: Joint): Levers => {
  const thread = threadOf(joint.size as Size)
  const rs = seatOf(joint) ? seatRadiusOf(joint) : 0.65 * thread.d
  if (joint['mu-threads'] && joint['mu-seat']) {
    const mu = { thread: joint['mu-threads'].value, seat: joint['mu-seat'].value }
    const whole = tighteningLever(thread, mu, rs, 'wedge')
    const part = threadLever(thread, mu.thread, 'wedge')
    return {
      whole: { low: whole, typical: whole, high: whole },
      thread: { low: part, typical: part, high: part },
      byNutFactor: false,
    }
  }
  const whole = overSpan(nutFactorSpan(joint), (K) => leverByNutFactor(joint, thread, K, rs))
  return { whole, thread: overSpan(whole, (lever) => threadPart(thread, lever, rs)), byNutFactor: true }
}

export const classOf = ({ class: name, size }: Joint): ClassRow | undefined =>
  name === undefined || !size ? undefined : findClass(name, si(size.diameter))

export const frictionGroups = [['condition', 'k', 'mu-threads']] as const

/** What else friction and seat need, because of what was given. */
export const jointNeeds = (joint: Joint): ReadonlyArray<'mu-threads' | 'mu-seat' | 'seat'> => {
  const { 'mu-threads': t, 'mu-seat': s, size } = joint
  const pair = t && !s ? (['mu-seat'] as const) : s && !t ? (['mu-threads'] as const) : []
  const seatless = size !== undefined && (t !== undefined || s !== undefined) && !seatOf(joint)
  return [...pair, ...(seatless ? (['seat'] as const) : [])]
}

export const checkJoint = (joint: Joint): Fault[] => {
  const faults: Fault[] = []
  const { size, k, condition, 'mu-threads': mu, class: name, seat } = joint
  const told = [condition && 'condition', k && 'k', mu && 'mu-threads'].filter((one) => one !== undefined)
  if (told.length > 1) faults.push(fault('friction-twice', told[1] as string, told.join(', ')))
  if (size && !pitchOf(size)) faults.push(fault('no-usual-pitch', 'size', size.name))
  if (size && name !== undefined && !classOf(joint))
    faults.push(fault('class-not-for-size', 'class', name, { size: size.name }))
  if (seat && !seatHolds(seatFrom(seat))) faults.push(fault('seat-cannot-be', 'seat', seatName(seat)))
  return faults
}

/** What was taken from tables: pitch, seat, nut factors. */
export const jointAssumed = (joint: Joint, withSeat: boolean): Given[] => {
  const { size, condition, k } = joint
  const found = withSeat ? seatOf(joint) : undefined
  const pitch = size && !size.pitch ? pitchOf(size) : undefined
  const state = stateOf(joint)
  const row = state && !k ? conditionTable[state] : undefined
  return [
    ...(state && state !== condition ? [{ input: 'condition', value: state, from: 'assumed' as const }] : []),
    ...(pitch ? [{ input: 'pitch', value: pitch, from: 'table' as const }] : []),
    ...(found?.assumed
      ? [{ input: 'seat', value: found.text.outer, name: seatName(found.text), from: 'table' as const }]
      : []),
    ...(row
      ? [{ input: 'k', value: quantity(row.typical, units['1']), low: row.low, high: row.high, from: 'table' as const }]
      : []),
  ]
}

export const jointSources = (joint: Joint, withSeat: boolean): Citation[] => {
  const state = stateOf(joint)
  const row = state && !joint.k ? conditionTable[state] : undefined
  const found = withSeat ? seatOf(joint) : undefined
  const strength = classOf(joint)
  return [
    joint['mu-threads'] ? citations.wedge : citations.nutFactor,
    ...(row ? [row.rangeFrom, row.typicalFrom] : []),
    ...(found?.sources ?? []),
    ...(strength ? [strength.source] : []),
  ]
}

/** What every question about a bolt's friction warns of, by rule. */
export const jointCautions = (joint: Joint): Caution[] => {
  const { whole, byNutFactor } = leversOf(joint)
  const metric = joint.size !== undefined && systemOf(joint.size) === 'metric'
  const inchClass = joint.class?.startsWith('SAE') ?? false
  const stainless = joint.class?.startsWith('A') ?? false
  return [
    ...(joint.class && !stainless && inchClass === metric ? [caution('class-of-other-system')] : []),
    ...(byNutFactor && whole.high > whole.low * 2 * (1 + 1e-9) ? [caution('friction-wide')] : []),
    ...(joint.k && joint.seat ? [caution('own-factor-holds-seat')] : []),
    ...(stainless || joint.condition === 'stainless-dry' ? [caution('galling')] : []),
  ]
}
