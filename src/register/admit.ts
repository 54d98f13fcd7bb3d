// What the record takes: every rule that a new entry must keep, judged against the book as it stands. All faults at once.
// Who may write what is a table; the shapes themselves are the schemas' to judge.
import { type Fault, fault } from '../core/fault.ts'
import { fromSi, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { classesOf } from '../mechanics/check-verdict.ts'
import { type Book, gaugeOf, type Kept, runOf, wrenchOf } from './book.ts'
import { eventFaults } from './event-rules.ts'
import { wayFaults } from './gauge-ways.ts'
import { foldTag, quantityOf } from './parts.ts'
import { type By, type Check, type Draft, type Kind, kindNames, tagOf, type WrenchCard } from './records.ts'
import { ownWeightOf, torqueOfReading } from './reference.ts'
import { runFaults } from './run-rules.ts'

/** What each role may add; corrections and withdrawals are a keeper's. An import brings what a keeper wrote elsewhere. */
export const mayAdd: Readonly<Record<By['role'], readonly Kind[]>> = {
  mechanic: ['check', 'event', 'uses', 'run', 'run-reading', 'run-finish'],
  keeper: kindNames,
  import: kindNames,
}

/** Whether a role may record this at all; a door tells it as forbidden, not as a fault. */
export const mayRecord = ({ by, kind, supersedes }: Pick<Draft, 'by' | 'kind' | 'supersedes'>): boolean =>
  mayAdd[by.role].includes(kind) && (supersedes === undefined || by.role !== 'mechanic')

/** No hand pulls at a longer one: a longer number is a slip of the unit. Common practice, no source. */
const longestLever = quantity(3, units.m)

const cardFaults = (card: WrenchCard): Fault[] => {
  const { least, most, mark, lever, pivot, 'iso-type': type, 'iso-class': isoClass } = card
  return [
    ...(least && least.value >= most.value
      ? [fault('least-above-most', 'least', least.text, { limit: quantityOf(most) })]
      : []),
    ...(mark && mark.value > most.value ? [fault('above-limit', 'mark', mark.text, { limit: quantityOf(most) })] : []),
    ...(lever && lever.value > si(longestLever)
      ? [fault('above-limit', 'lever', lever.text, { limit: longestLever })]
      : []),
    ...(type && isoClass && !classesOf[type].includes(isoClass)
      ? [fault('class-not-of-type', 'iso-class', isoClass, { type, options: classesOf[type] })]
      : []),
    ...(lever && pivot && pivot.value.value >= lever.value
      ? [fault('above-limit', 'pivot', pivot.value.text, { limit: quantityOf(lever) })]
      : []),
  ]
}

/** A weight that beats the pull leaves no torque to compare with. */
const pullFaults = (check: Check): Fault[] => {
  const { distance } = check
  const beaten = check.points
    .flatMap(({ readings }) => readings)
    .find((reading) => torqueOfReading(check, reading) <= 0)
  if (!beaten || !distance) return []
  const weight = fromSi(Math.abs(ownWeightOf(check) ?? 0) / distance.value, units[beaten.unit])
  return [fault('weight-beats-pull', 'points', beaten.text, { weight })]
}

/** Where a wrench is asked for by its tag, this asks for something else. */
const NO_TAG = 'summary'

/** A card's tag is free, or it is the one that the card replaces. */
const tagFaults = (book: Book, draft: Draft<'wrench'> | Draft<'gauge'>, replaced: Kept | undefined): Fault[] => {
  const { tag } = draft.body
  if (draft.kind === 'wrench' && !replaced && foldTag(tag) === NO_TAG) return [fault('tag-taken', 'tag', tag)]
  if (replaced) {
    const held = tagOf(replaced.entry) ?? ''
    return foldTag(held) === foldTag(tag) ? [] : [fault('tag-fixed', 'tag', tag, { tag: held })]
  }
  const taken = draft.kind === 'wrench' ? wrenchOf(book, tag) : gaugeOf(book, tag)
  return taken && draft.supersedes === undefined ? [fault('tag-taken', 'tag', tag)] : []
}

const wrenchFaults = (book: Book, tag: string, isCorrection: boolean): Fault[] => {
  const folder = wrenchOf(book, tag)
  if (!folder) return [fault('no-such-wrench', 'wrench', tag)]
  const retired = folder.events.some(({ entry }) => entry.body.what === 'retired')
  return retired && !isCorrection ? [fault('wrench-retired', 'wrench', tag)] : []
}

const dayFaults = (input: string, day: string | undefined, today: string): Fault[] =>
  day !== undefined && day > today ? [fault('day-ahead', input, day, { date: today })] : []

/** What is replaced stands, is of the same kind, and no wrench with a history is taken back. */
const replacedFaults = (book: Book, draft: Draft): Fault[] => {
  const { supersedes } = draft
  if (supersedes === undefined) return []
  const replaced = book.standing.get(supersedes)
  if (!replaced) {
    return [fault(book.past.has(supersedes) ? 'superseded-already' : 'no-such-entry', 'supersedes', supersedes)]
  }
  if (draft.kind === 'withdrawal') return inUse(book, replaced)
  const { kind } = replaced.entry
  return kind === draft.kind ? [] : [fault('entry-of-other-kind', 'supersedes', supersedes, { event: kind })]
}

/** Whether a check that stands in this book was made with a gauge. */
export const checkedWith = (book: Book, gauge: string): boolean =>
  [...book.wrenches.values()].some(({ checks }) =>
    checks.some(({ entry: { body } }) => body.gauge !== undefined && foldTag(body.gauge) === foldTag(gauge)),
  )

const inUse = (book: Book, { entry }: Kept): Fault[] => {
  const tag = tagOf(entry) ?? ''
  if (entry.kind === 'wrench') {
    const folder = wrenchOf(book, tag)
    const history = folder ? folder.checks.length + folder.events.length + folder.uses.length : 0
    return history > 0 ? [fault('card-in-use', 'supersedes', tag)] : []
  }
  if (entry.kind === 'run') {
    const folder = runOf(book, tag)
    const isUsed = folder !== undefined && (folder.readings.length > 0 || folder.finish !== undefined)
    return isUsed ? [fault('run-in-use', 'supersedes', tag)] : []
  }
  if (entry.kind !== 'gauge') return []
  return checkedWith(book, tag) ? [fault('card-in-use', 'supersedes', tag)] : []
}

const bodyFaults = (book: Book, draft: Draft, today: string): Fault[] => {
  const isCorrection = draft.supersedes !== undefined
  const replaced = isCorrection ? book.standing.get(draft.supersedes as string) : undefined
  switch (draft.kind) {
    case 'wrench':
      return [...tagFaults(book, draft, replaced), ...cardFaults(draft.body)]
    case 'gauge':
      return [...tagFaults(book, draft, replaced), ...dayFaults('checked', draft.body.checked, today)]
    case 'check': {
      const { wrench, gauge, date, way } = draft.body
      const held = gaugeOf(book, gauge)?.entry.body
      const unknown = gauge !== undefined && !held ? [fault('no-such-gauge', 'gauge', gauge)] : []
      return [
        ...wrenchFaults(book, wrench, isCorrection),
        ...unknown,
        ...wayFaults(way, held),
        ...dayFaults('date', date, today),
        ...pullFaults(draft.body),
      ]
    }
    case 'event': {
      const { wrench, date } = draft.body
      return [
        ...wrenchFaults(book, wrench, isCorrection),
        ...dayFaults('date', date, today),
        ...eventFaults({ ...draft.body, setting: draft.body.setting?.text }),
      ]
    }
    case 'uses':
      return [...wrenchFaults(book, draft.body.wrench, isCorrection), ...dayFaults('date', draft.body.date, today)]
    case 'run': {
      const { wrench, date } = draft.body
      return [
        ...runFaults(book, draft, replaced),
        ...(wrench === undefined ? [] : wrenchFaults(book, wrench, isCorrection)),
        ...dayFaults('date', date, today),
      ]
    }
    case 'run-reading':
    case 'run-finish':
      return [...runFaults(book, draft, replaced), ...dayFaults('date', draft.body.date, today)]
    case 'withdrawal':
      return isCorrection ? [] : [fault('no-such-entry', 'supersedes', '')]
  }
}

/** Every fault of a new entry against the book; none: it may be appended as it is. */
export const admissionFaults = (book: Book, draft: Draft, today: string): readonly Fault[] => [
  ...replacedFaults(book, draft),
  ...(draft.supersedes !== undefined && draft.why === undefined ? [fault('why-missing', 'why', '')] : []),
  ...bodyFaults(book, draft, today),
]
