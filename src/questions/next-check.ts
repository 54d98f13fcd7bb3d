// next-check: the day on which a wrench is due for its next check, and why. No clock: what day it is today is the asker's to know.
import type { EventKinds, EventRead, IntervalRead } from '../core/parse-history.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import {
  addMonths,
  type CheckInterval,
  type Due,
  daysBetween,
  nextCheck as nextCheckDue,
  usualInterval,
  type VoidingEvent,
} from '../mechanics/check-due.ts'
import { citations } from '../tables/citation.ts'
import { count, date, events, interval, intervalParts } from './input-history.ts'
import { wrenchTag } from './input-shop.ts'
import { type Caution, caution, type Given, type Outcome, put, type Result, type Step, step } from './outcome.ts'
import { day, type Phrase, phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const kinds: EventKinds<VoidingEvent> = {
  dropped: { spellings: ['drop', 'fell', 'fallen'], lasts: false },
  overloaded: { spellings: ['overload', 'overtorqued'], lasts: false },
  repaired: { spellings: ['repair', 'serviced'], lasts: false },
  modified: { spellings: ['modification', 'changed', 'adjusted'], lasts: false },
  'wound-up': { spellings: ['leftwoundup', 'storedwoundup'], lasts: true },
}

const inputs = {
  'last-check': date({ needed: true, example: { metric: '2026-01-31', inch: '2026-01-31' } }),
  uses: count(),
  interval: interval(),
  events: events({ of: kinds }),
  wrench: wrenchTag(),
}

type WrenchPast = EventRead<VoidingEvent>

interface Asked {
  readonly 'last-check': string
  readonly uses?: Quantity | undefined
  readonly interval?: IntervalRead | undefined
  readonly events?: readonly WrenchPast[] | undefined
}

const plain = (value: number): Quantity => quantity(value, units['1'])

/** Less than a month wound up since the check: weeks change little. How long a single day stands for is not known. */
const isBrief = ({ kind, from, to }: WrenchPast, lastCheck: string): boolean =>
  kind === 'wound-up' && from !== undefined && to < addMonths(from > lastCheck ? from : lastCheck, 1)

const reasonOf = ({ reason }: Due): VoidingEvent | 'months' | 'uses' =>
  reason.why === 'event' ? reason.event : reason.why === 'months' ? 'months' : 'uses'

const headline = (due: Due, allowed: CheckInterval, uses: Quantity | undefined): Phrase => {
  const reason = reasonOf(due)
  if (reason === 'months') return phrase('next-check.months', { date: day(due.on), months: plain(allowed.months) })
  if (reason === 'uses') {
    return phrase('next-check.uses', { uses: uses ?? plain(0), allowed: plain(allowed.uses) })
  }
  return phrase('next-check.event', { date: day(due.on), event: phrase(`event.${reason}`) })
}

const stepsOf = (
  lastCheck: string,
  allowed: CheckInterval,
  uses: Quantity | undefined,
  past: readonly WrenchPast[],
): Step[] => {
  const monthsOut = addMonths(lastCheck, allowed.months)
  return [
    step(
      phrase('next-check.months-out', { date: day(monthsOut) }),
      'D = D₀ + M',
      put`${lastCheck} + ${plain(allowed.months)} → ${monthsOut}`,
      plain(daysBetween(lastCheck, monthsOut)),
    ),
    ...(uses
      ? [
          step(
            phrase('next-check.uses-left'),
            'N − n',
            put`${plain(allowed.uses)} − ${uses}`,
            plain(allowed.uses - uses.value),
          ),
        ]
      : []),
    ...past.map(({ kind, from, to }) =>
      step(
        phrase('next-check.event-after', { event: phrase(`event.${kind}`), date: day(to) }),
        'D − D₀',
        put`${from === undefined ? '' : `${from}..`}${to} − ${lastCheck}`,
        plain(daysBetween(lastCheck, to)),
      ),
    ),
  ]
}

const cautionsOf = (due: Due, given: Asked): Caution[] => {
  const past = given.events ?? []
  const lastCheck = given['last-check']
  const covered = past.some(({ to }) => to < lastCheck)
  const brief = past.some((event) => event.to >= lastCheck && isBrief(event, lastCheck))
  return [
    ...(due.reason.why === 'months' ? [] : [caution('check-due')]),
    ...(covered ? [caution('event-before-check')] : []),
    ...(brief ? [caution('wound-up-briefly')] : []),
    ...(past.some(({ kind }) => kind === 'wound-up') ? [caution('store-low')] : []),
    ...(given.uses ? [] : [caution('uses-not-counted')]),
  ]
}

const answerNextCheck = (given: Asked): Outcome => {
  const lastCheck = given['last-check']
  const allowed: CheckInterval = { ...usualInterval, ...given.interval }
  const past = given.events ?? []
  const due = nextCheckDue({
    lastCheck,
    interval: allowed,
    ...(given.uses ? { uses: given.uses.value } : {}),
    events: past.filter((event) => !isBrief(event, lastCheck)).map(({ kind, to }) => ({ kind, at: to })),
  })
  const { months, uses } = given.interval ?? {}
  const untold = intervalParts({
    ...(months === undefined ? { months: allowed.months } : {}),
    ...(uses === undefined ? { uses: allowed.uses } : {}),
  })
  return {
    headline: headline(due, allowed, given.uses),
    assumed: untold.map((part): Given => ({ input: 'interval', value: part, from: 'assumed' })),
    results: {
      // On which day the uses ran out nobody knows: after the last check, and not later than now.
      due: { date: due.on, passed: due.reason.why === 'uses' },
      reason: { word: reasonOf(due) },
    } satisfies Record<string, Result>,
    steps: stepsOf(lastCheck, allowed, given.uses, past),
    cautions: cautionsOf(due, given),
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [citations.checkInterval, ...(past.some(({ kind }) => kind === 'wound-up') ? [citations.woundUp] : [])],
    related: [],
  }
}

export const nextCheck = defineQuestion({
  name: 'next-check',
  inputs,
  results: ['due', 'reason'],
  answer: answerNextCheck,
})
