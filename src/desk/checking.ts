// The guided check of a wrench behind every door: raw texts in, the check document out. Nothing is remembered between two calls:
// what was read so far is handed in again, as the text that a check is kept from.
import { type Fault, fault } from '../core/fault.ts'
import { POINT_MARK } from '../core/parse-points.ts'
import { parseQuantity } from '../core/parse-quantity.ts'
import { fromSi, type Quantity, quantity } from '../core/quantity.ts'
import { echoQuantity, writeQuantity } from '../core/quantity-text.ts'
import { writeReadings } from '../core/readings-text.ts'
import { units } from '../core/unit.ts'
import { growingInputs } from '../keeping/check-inputs.ts'
import { keepables } from '../keeping/index.ts'
import type { CheckDocument } from '../questions/check-document.ts'
import { type FoundSlip, type GrowingCheck, growCheck, type ReadPoint, withReading } from '../register/check-growing.ts'
import { measured, quantityOf } from '../register/parts.ts'
import { slipOf } from '../register/reading-slip.ts'
import type { Language } from '../words/index.ts'
import { type CheckAsked, readCheck } from './check-reading.ts'
import { sayerFor } from './say.ts'
import { sayCheck } from './say-check.ts'
import type { Shop } from './shop.ts'

export interface Checking {
  /** Where to set the wrench and what the gauge must show then; readings that are handed in are left aside. */
  readonly plan: (raw: unknown, language: Language) => Promise<CheckDocument>
  /** The check so far, with one `reading` more where there is one. */
  readonly grow: (raw: unknown, language: Language) => Promise<CheckDocument>
}

const slipFault = (
  { kind, setting, reading, shows, likely }: FoundSlip,
  input: string,
  { plan, card }: CheckAsked,
): Fault =>
  fault(kind === 'by-ten' ? 'reading-by-ten' : 'reading-in-other-unit', input, reading.text, {
    setting: fromSi(setting.value, units[card.unit]),
    low: fromSi(shows.low, plan.unit),
    high: fromSi(shows.high, plan.unit),
    reading: reading.text,
    options: likely.map((q) => echoQuantity(q)),
  })

const isSure = ({ sure }: CheckAsked, reading: Quantity): boolean =>
  sure.some(({ value, unit }) => value === reading.value && unit === reading.unit)

/** A bare number is in the unit of the reading before it; the first one needs its own. */
const inItsUnit = (typed: Quantity, read: readonly ReadPoint[], { plan }: CheckAsked): Quantity | readonly Fault[] => {
  const before = read.at(-1)?.readings.at(-1)
  if (typed.unit === units['1'] && before) return quantity(typed.value, units[before.unit])
  const own = parseQuantity(writeQuantity(typed), { input: 'reading', dimensions: [plan.reads] })
  return own.ok ? own.value : own.faults
}

interface Taken {
  readonly read: readonly ReadPoint[]
  readonly faults: readonly Fault[]
}

/** What was handed in without what looks like a slip, which is asked back. */
const withoutSlips = (asked: CheckAsked): Taken => {
  const slips = growCheck(asked, asked.read).slips.filter(({ reading }) => !isSure(asked, quantityOf(reading)))
  const read = asked.read
    .map((point) => ({
      ...point,
      readings: point.readings.filter((reading) => !slips.some((slip) => slip.reading === reading)),
    }))
    .filter(({ readings }) => readings.length > 0)
  return { read, faults: slips.map((slip) => slipFault(slip, 'points', asked)) }
}

const withTyped = ({ read, faults }: Taken, typed: Quantity, asked: CheckAsked): Taken => {
  const refuse = (more: readonly Fault[]): Taken => ({ read, faults: [...faults, ...more] })
  const { next } = growCheck(asked, read)
  if (!next) return refuse([fault('reading-not-asked', 'reading', echoQuantity(typed))])
  const q = inItsUnit(typed, read, asked)
  if (!('unit' in q)) return refuse(q)
  const reading = measured(q)
  const unit = read.find(({ setting }) => setting.value === next.setting.value)?.readings[0]?.unit
  if (unit !== undefined && unit !== reading.unit) return refuse([fault('units-differ', 'reading', reading.text)])
  const slip = slipOf(q, next.shows.middle)
  if (slip && !isSure(asked, q)) {
    return refuse([slipFault({ ...slip, setting: next.setting, reading, shows: next.shows }, 'reading', asked)])
  }
  return { read: withReading(read, next, reading), faults }
}

const pointsText = (read: readonly ReadPoint[]): string =>
  read
    .map(({ setting, readings }) => `${writeQuantity(quantityOf(setting))}: ${writeReadings(readings.map(quantityOf))}`)
    .join(POINT_MARK)

/** Everything that was handed in, as texts to be handed in again; the one reading has become part of the points. */
const inputsAgain = ({ texts, sure }: CheckAsked, read: readonly ReadPoint[]): Record<string, string> => {
  const kept = Object.entries(texts).filter(
    ([name, raw]) => name in keepables.check.inputs && name !== 'points' && raw !== undefined,
  )
  return {
    ...Object.fromEntries(kept.map(([name, raw]) => [name, [raw].flat().join('; ')])),
    ...(read.length > 0 ? { points: pointsText(read) } : {}),
    ...(sure.length > 0 ? { sure: writeReadings(sure) } : {}),
  }
}

/** What may be handed in of a check under way. */
export const checkInputs = growingInputs.inputs

/** Of what a check document hands out, what a check is kept from. */
export const toKeep = (inputs: CheckDocument['inputs']): CheckDocument['inputs'] =>
  Object.fromEntries(Object.entries(inputs).filter(([name]) => Object.hasOwn(keepables.check.inputs, name)))

/**
 * The readings of a document that look like a slip, and stand where somebody says so. What is wrong with the check itself (its day,
 * its gauge) is told under the same codes, and nobody can say that it stands: then the document has no points.
 */
export const slipsIn = ({ faults, points }: Pick<CheckDocument, 'faults' | 'points'>): CheckDocument['faults'] =>
  points.length === 0
    ? []
    : faults.filter(({ input, code }) => code === 'out-of-range' && (input === 'points' || input === 'reading'))

export const checkingOf = (shop: Shop): Checking => {
  const answer = async (raw: unknown, language: Language, planOnly: boolean): Promise<CheckDocument> => {
    const reading = await readCheck(shop, raw)
    const say = sayCheck(language)
    const inputs = language.words.register.inputs
    const wanted = (names: readonly string[]) =>
      names.map((input) => ({ input, ...inputs[input as keyof typeof inputs] }))
    if (reading.kind === 'incomplete') return say.incomplete(wanted(reading.missing))
    if (reading.kind === 'refused') {
      return say.refused(reading.faults.map(sayerFor(language).fault), wanted(reading.missing))
    }
    const { asked } = reading
    const before = planOnly ? { read: [], faults: [] } : withoutSlips(asked)
    const { typed } = asked
    const { read, faults } = typed && !planOnly ? withTyped(before, typed, asked) : before
    const grown: GrowingCheck = growCheck(asked, read)
    return say.check(asked, grown, inputsAgain(asked, read), faults.map(sayerFor(language).fault))
  }
  return {
    plan: (raw, language) => answer(raw, language, true),
    grow: (raw, language) => answer(raw, language, false),
  }
}
