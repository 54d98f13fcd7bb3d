// Which wrench of the shop can do a torque, with or without adapters: what it must be set to, whether that lies in its range,
// and whether it may be used today. Best first, each with its reasons.
//
// Statement  S = T L/(L + X), the hand at the lever's own mark (lever.ts); X = Σ E cos θ. Without adapters S = T.
//            Doubt of a setting = its limit there + half a mark, as a share of it.
// Holds      Adapters ahead of the hand. From a fifth of the largest torque up; below it the standard promises nothing.
// Example    120 N·m with 45 mm ahead of 380 mm: S = 107.3 N·m.
import { LEAST_SHARE } from '../mechanics/deviation.ts'
import { type Link, reachAhead, settingFor } from '../mechanics/lever.ts'
import type { Book, WrenchFolder } from './book.ts'
import { asTheyHang } from './fleet.ts'
import { limitAt, limitOfCard } from './limit.ts'
import type { WrenchCard } from './records.ts'
import { statusOf, type Today, type WrenchStatus } from './status.ts'
import { usable } from './status-rules.ts'

/** Why a wrench does not fit, or only with care, or does; told in this order. */
export const fitReasons = {
  'above-most': 'no',
  'below-least': 'no',
  'lever-unknown': 'no',
  'behind-the-hand': 'no',
  'not-to-be-used': 'no',
  'below-a-fifth': 'care',
  'check-due': 'care',
  'in-range': 'good',
} as const
export type FitReason = keyof typeof fitReasons
export const fits = ['good', 'care', 'no'] as const
export type Fit = (typeof fits)[number]

export interface Wanted {
  /** Torque at the fastener [N·m]. */
  readonly torque: number
  readonly chain?: readonly Link[]
}

export interface Candidate {
  readonly folder: WrenchFolder
  readonly status: WrenchStatus
  readonly fit: Fit
  readonly why: readonly [FitReason, ...FitReason[]]
  /** What to set [N·m]; not where it cannot be worked out. */
  readonly setting?: number
  /** The setting as a share of its largest torque. */
  readonly share?: number
  /** Doubt of the setting [fraction]. */
  readonly doubt?: number
}

const SLACK = 1e-9
/** The middle of the three points at which a wrench is checked. */
const MIDDLE = 0.6

const reach = (card: WrenchCard, { torque, chain = [] }: Wanted): { setting: number } | { why: FitReason } => {
  const X = reachAhead(chain)
  if (X === 0) return { setting: torque }
  if (!card.lever) return { why: 'lever-unknown' }
  const L = card.lever.value
  if (L + X <= 0) return { why: 'behind-the-hand' }
  return { setting: settingFor(torque, { L, H: L, p: 0, X }) }
}

const reasonsAt = (setting: number, card: WrenchCard): FitReason[] => [
  ...(setting > card.most.value * (1 + SLACK) ? (['above-most'] as const) : []),
  ...(card.least && setting < card.least.value * (1 - SLACK) ? (['below-least'] as const) : []),
  ...(setting < card.most.value * LEAST_SHARE * (1 - SLACK) ? (['below-a-fifth'] as const) : []),
]

const judgeFit = (book: Book, folder: WrenchFolder, wanted: Wanted, now: Today): Candidate => {
  const card = folder.card.entry.body
  const status = statusOf(book, folder, now)
  const reached = reach(card, wanted)
  const found: FitReason[] = [
    ...('why' in reached ? [reached.why] : reasonsAt(reached.setting, card)),
    ...(usable(status.status) ? [] : (['not-to-be-used'] as const)),
    ...(status.status === 'check-due' ? (['check-due'] as const) : []),
  ]
  const order = Object.keys(fitReasons) as FitReason[]
  const why = order.filter((reason) => found.includes(reason))
  const [first = 'in-range', ...rest] = why
  const common = { folder, status, fit: fitReasons[first], why: [first, ...rest] as const }
  if ('why' in reached) return common
  const { setting } = reached
  return {
    ...common,
    setting,
    share: setting / card.most.value,
    doubt: limitAt(limitOfCard(card), setting) + (card.mark ? card.mark.value / 2 / setting : 0),
  }
}

const byDoubt = (one: Candidate, other: Candidate): number => {
  const [doubt, otherDoubt] = [one.doubt ?? Number.POSITIVE_INFINITY, other.doubt ?? Number.POSITIVE_INFINITY]
  return Math.abs(doubt - otherDoubt) > SLACK ? doubt - otherDoubt : 0
}

const best = (one: Candidate, other: Candidate): number => {
  const off = ({ share = Number.POSITIVE_INFINITY }: Candidate): number => Math.abs(share - MIDDLE)
  const middle = off(one) === off(other) ? 0 : off(one) - off(other)
  return (
    fits.indexOf(one.fit) - fits.indexOf(other.fit) ||
    byDoubt(one, other) ||
    middle ||
    asTheyHang(one.folder, other.folder)
  )
}

/** Every wrench of the book but the retired ones, best first. */
export const whichWrench = (book: Book, wanted: Wanted, now: Today): readonly Candidate[] =>
  [...book.wrenches.values()]
    .map((folder) => judgeFit(book, folder, wanted, now))
    .filter(({ status }) => status.status !== 'retired')
    .sort(best)
