// What the register lends to a question that names a wrench: its card as texts that anybody could have typed, and what must be
// said of the wrench first. The last check is told, never silently applied.

import { deviationShown } from '../core/deviation-shown.ts'
import { fault } from '../core/fault.ts'
import { LATE, within } from '../core/in-time.ts'
import { Outage } from '../core/outage.ts'
import { fromSi, quantity } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { isQuestionName, questions } from '../questions/index.ts'
import { type Caution, caution } from '../questions/outcome.ts'
import { echo, type Phrase, phrase } from '../questions/phrase.ts'
import type { FleetRow } from '../register/fleet.ts'
import { limitAt } from '../register/limit.ts'
import { quantityOf } from '../register/parts.ts'
import type { WrenchCard } from '../register/records.ts'
import { type ReasonCode, reasonStatus } from '../register/status-rules.ts'
import { benchLoan } from './lend-bench.ts'
import type { Loan, RawInputs } from './read.ts'
import type { Shop } from './shop.ts'

/** Cards as inputs, by the names that the questions use. */
export const lentInputs = (card: WrenchCard, asked: RawInputs): RawInputs => {
  const { tolerance, interval } = card
  // A tolerance of full scale is no tolerance of a reading: it is only lent together with what it is of.
  const share =
    tolerance === undefined
      ? {}
      : tolerance.of === 'reading'
        ? { tolerance: echoQuantity(quantityOf(tolerance.share)) }
        : asked['tolerance'] === undefined && asked['of'] === undefined
          ? { of: tolerance.of, 'full-scale-tolerance': echoQuantity(quantityOf(tolerance.share)) }
          : {}
  const all = {
    lever: card.lever?.text,
    pivot: card.pivot?.value.text,
    // Where the pivot is known, the kind adds nothing but a tolerance, which the card has of its own.
    'wrench-type': card['wrench-type'],
    'iso-type': card['iso-type'],
    'iso-class': card['iso-class'],
    least: card.least?.text,
    most: card.most.text,
    mark: card.mark?.text,
    interval: interval && [
      ...(interval.months === undefined ? [] : [`${interval.months} months`]),
      ...(interval.uses === undefined ? [] : [`${interval.uses} uses`]),
    ],
    ...share,
  }
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined))
}

const deviationPhrase = (percent: number, limit: number): Phrase => {
  const { side, size } = deviationShown(percent, limit)
  if (side === 'right') return phrase('deviation.right')
  const told = { size: echo(quantity(size, units['%'])) }
  return side === 'low' ? phrase('deviation.low', told) : phrase('deviation.high', told)
}

type Happened = {
  [Code in ReasonCode]: (typeof reasonStatus)[Code] extends 'check-before-use' ? Code : never
}[ReasonCode]

const isHappened = (code: ReasonCode): code is Happened => reasonStatus[code] === 'check-before-use'

/** What leads an answer about a wrench, by its status today; then the last check at its worst, which is told and not applied. */
export const wrenchCautions = ({ folder, status }: FleetRow): Caution[] => {
  const [{ code, date }] = status.reasons
  const wrench = folder.tag
  const last = status.lastCheck
  const lead: Readonly<Record<typeof status.status, readonly Caution[]>> = {
    retired: [caution('wrench-not-to-be-used', { wrench })],
    'set-aside': [caution('wrench-not-to-be-used', { wrench })],
    'out-of-limit': [caution('out-of-limit'), caution('failed-on', { wrench, date })],
    'check-before-use': isHappened(code)
      ? [caution('check-before-use', { wrench, date, what: phrase(`happened.${code}`) })]
      : [],
    'check-due': [
      caution('check-due'),
      code === 'never-checked' ? caution('never-checked', { wrench }) : caution('due-since', { wrench, date }),
    ],
    'in-service': [],
  }
  if (!last) return [...lead[status.status]]
  const { points } = last.judged
  const worst = points.reduce((far, one) => (Math.abs(one.deviation) > Math.abs(far.deviation) ? one : far))
  const unit = units[folder.card.entry.body.unit]
  return [
    ...lead[status.status],
    caution('last-check', {
      wrench,
      date: last.kept.entry.body.date,
      setting: fromSi(worst.setting, unit),
      deviation: deviationPhrase(worst.deviation * 100, limitAt(last.judged.limit, worst.mean) * 100),
    }),
  ]
}

const isRaw = (raw: unknown): raw is RawInputs => typeof raw === 'object' && raw !== null && !Array.isArray(raw)

const wrenchIn = (raw: unknown): string | undefined => {
  const named = typeof raw === 'object' && raw !== null ? (raw as RawInputs)['wrench'] : undefined
  return typeof named === 'string' && named.trim() !== '' ? named.trim() : undefined
}

/** Looks the wrench of a question up; undefined where the question takes none or names none. */
export const lenderOf =
  (shop: Shop) =>
  (name: string, raw: unknown): Promise<Loan> | undefined => {
    if (isQuestionName(name) && questions[name].needsFleet) {
      const now = shop.today()
      return inTime(shop.fleet()).then((book) => ({ inputs: {}, faults: [], cautions: [], fleet: { book, now } }))
    }
    const bench = isQuestionName(name) && isRaw(raw) ? benchLoan(shop, name, raw) : undefined
    if (bench) return inTime(bench)
    const tag = wrenchIn(raw)
    if (tag === undefined || !isQuestionName(name) || !Object.hasOwn(questions[name].inputs, 'wrench')) return undefined
    return inTime(shop.wrench(tag)).then((found): Loan => {
      if (!found) return { inputs: {}, faults: [fault('wrench-not-here', 'wrench', tag)], cautions: [] }
      const lent = lentInputs(found.row.folder.card.entry.body, raw as RawInputs)
      const inputs = forQuestion(name, lent, raw as RawInputs)
      const ofScale = lent['full-scale-tolerance']
      // Of full scale it is more than its share of every reading below: where a question cannot take it so, that is said.
      const wider = ofScale !== undefined && inputs['tolerance'] === undefined && 'tolerance' in questions[name].inputs
      const scale = wider ? [caution('tolerance-of-scale', { wrench: tag, tolerance: String(ofScale) })] : []
      return { inputs, faults: [], cautions: [...wrenchCautions(found.row), ...scale] }
    })
  }

// An answer waits no longer than this for the register.
const LONGEST_WAIT_MS = 1000

const inTime = async <T>(looking: Promise<T>): Promise<T> => {
  const found = await within(looking, LONGEST_WAIT_MS)
  if (found === LATE) throw new Outage('unreachable', 'the register took too long')
  return found
}

const forQuestion = (name: string, lent: RawInputs, raw: RawInputs): RawInputs => {
  const { 'full-scale-tolerance': ofScale, of, ...rest } = lent
  // tolerance-band alone knows what a tolerance is of.
  const band = name === 'tolerance-band' && ofScale !== undefined ? { tolerance: ofScale, of } : {}
  // A pivot that the asker tells goes before the kind on the card, and one on the card before its kind.
  const known = raw['pivot'] !== undefined || rest['pivot'] !== undefined
  const senses = rest['wrench-type'] === 'dial' || rest['wrench-type'] === 'electronic'
  const { 'wrench-type': type, ...others } = rest
  return { ...others, ...(known && senses ? {} : { 'wrench-type': type }), ...band }
}
