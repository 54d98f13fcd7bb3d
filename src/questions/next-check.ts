// next-check: when a wrench is due, by months, by uses, or because of what happened to it. No clock: a day comes out, not a warning.
import { type EventText, type IntervalText, parseDay, parseEvents, parseInterval } from '../core/parse-date.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { nextCheck as nextCheckOf, usualInterval, voidingEvents } from '../mechanics/check-due.ts'
import { citations } from '../tables/citation.ts'
import { common, type Input, one, plainNumber } from './input.ts'
import { caution, type Given, type Outcome, put, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion } from './question.ts'

const events = [...voidingEvents, 'lent', 'adjusted'] as const

const dayInput = (): Input<string, true> => ({
  kind: 'date',
  most: 1,
  ...common({ needed: true }, { metric: '2026-03-01', inch: '2026-03-01' }),
  read: (texts, input) => {
    const text = one(texts, input)
    return text.ok ? parseDay(text.value, input) : text
  },
  given: (value, input) => [{ input, value, from: 'asked' }],
})

const intervalName = ({ months, uses }: IntervalText): string =>
  [months === undefined ? '' : `${months} months`, uses === undefined ? '' : `${uses} uses`]
    .filter((part) => part !== '')
    .join('; ')

const intervalInput = (): Input<IntervalText, false> => ({
  kind: 'interval',
  most: 2,
  ...common({}, { metric: '12 months', inch: '5000 uses' }),
  read: parseInterval,
  given: (value, input) => [{ input, value: intervalName(value), from: 'asked' }],
})

const eventsInput = (): Input<readonly EventText[], false> => ({
  kind: 'events',
  most: 50,
  ...common({}, { metric: 'dropped@2026-03-01', inch: 'wound-up@2026-01-01..2026-07-01' }),
  read: (texts, input) => parseEvents(texts, input, events),
  given: (value, input) =>
    value.map(({ kind, at, from }, index) => ({
      input,
      value: `${kind}@${from ? `${from}..` : ''}${at}`,
      index,
      from: 'asked',
    })),
})

const inputs = {
  'last-check': dayInput(),
  uses: plainNumber({ zero: true, most: quantity(10_000_000, units['1']), example: { metric: '1200', inch: '1200' } }),
  interval: intervalInput(),
  events: eventsInput(),
}

interface Asked {
  readonly 'last-check': string
  readonly uses?: Quantity | undefined
  readonly interval?: IntervalText | undefined
  readonly events?: readonly EventText[] | undefined
}

const answerNextCheck = (given: Asked): Outcome => {
  const interval = { ...usualInterval, ...given.interval }
  const due = nextCheckOf({
    lastCheck: given['last-check'],
    interval,
    ...(given.uses ? { uses: given.uses.value } : {}),
    events: given.events ?? [],
  })
  const reason = due.reason.why === 'event' ? (`event-${due.reason.event}` as const) : due.reason.why
  const assumed: Given[] =
    given.interval?.months !== undefined && given.interval.uses !== undefined
      ? []
      : [{ input: 'interval', value: intervalName(interval), from: 'assumed' }]
  return {
    headline: phrase('next-check.due', { date: due.on, reason: phrase(`due.${reason}`) }),
    assumed,
    results: { due: { date: due.on }, reason: { word: reason } },
    steps: [
      step(
        phrase('next-check.months'),
        'last check + interval',
        put`${given['last-check']} + ${String(interval.months)} months`,
        quantity(interval.months, units['1']),
      ),
      ...(given.uses
        ? [
            step(
              phrase('next-check.uses'),
              'uses of interval',
              put`${given.uses} / ${String(interval.uses)}`,
              given.uses,
            ),
          ]
        : []),
    ],
    cautions: [caution('check-after-events'), caution('not-accredited')],
    pointers: ['wrench-manual', 'calibration-lab'],
    sources: [citations.interval],
    related: [],
  }
}

export const nextCheck = defineQuestion({
  name: 'next-check',
  inputs,
  results: ['due', 'reason'],
  answer: answerNextCheck,
})
