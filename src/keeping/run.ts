// A bench run as it is typed: its opening, its readings, its end.
import { type Fault, fault } from '../core/fault.ts'
import { quantity, si } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { length, percent } from '../questions/input.ts'
import { date } from '../questions/input-history.ts'
import { classInput, conditionInput, seatInput, seatName } from '../questions/input-joint.ts'
import { size } from '../questions/input-words.ts'
import { measured } from '../register/parts.ts'
import { LONGEST_CONDITION, LONGEST_NOTE, LONGEST_QUESTION } from '../register/run-bodies.ts'
import { tag, text } from './inputs.ts'
import { defineKeepable, present } from './keepable.ts'
import { conditions, heldSame, ofMonths, pieces, plannedMonths, runReadings } from './run-inputs.ts'

// 12.7 mm may be typed as 13.
const SAME_DIAMETER = 0.05

const runTag = () => tag({ needed: true, sample: 'B-01' })

const openingInputs = {
  tag: runTag(),
  date: date({ needed: true }),
  asked: text({ needed: true, longest: LONGEST_QUESTION, sample: 'Does oil on the thread change the clamp force?' }),
  conditions: conditions({ needed: true }),
  same: heldSame(),
  wrench: tag(),
  size: size(),
  class: classInput(),
  diameter: length({ example: { metric: '12 mm', inch: '1/2 in' } }),
  threads: conditionInput(),
  seat: seatInput(),
  again: plannedMonths(),
  // As compare takes them.
  margin: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  confidence: percent({
    least: quantity(50, units['%']),
    most: quantity(99.9, units['%']),
    example: { metric: '95 %', inch: '95 %' },
  }),
  note: text({ longest: LONGEST_NOTE, sample: 'after the winter service' }),
}

export const runRecord = defineKeepable({
  kind: 'run',
  inputs: openingInputs,
  check: ({ size: thread, diameter }) =>
    thread && diameter && Math.abs(si(diameter) / si(thread.diameter) - 1) > SAME_DIAMETER
      ? [fault('diameter-not-size', 'diameter', echoQuantity(diameter), { size: thread.name })]
      : [],
  body: (
    { conditions: all, same, size: thread, class: strength, seat, diameter, again, margin, confidence, ...rest },
    keep,
  ) =>
    present({
      tag: rest.tag,
      date: rest.date,
      asked: rest.asked,
      same: same ?? [],
      conditions: all,
      wrench: rest.wrench,
      size: thread?.name,
      'property-class': strength,
      diameter: diameter ? keep('diameter', diameter) : thread && measured(thread.diameter),
      threads: rest.threads,
      seat: seat && seatName(seat),
      again,
      margin: margin && keep('margin', margin),
      confidence: confidence && keep('confidence', confidence),
      note: rest.note,
    }),
})

const readingInputs = {
  run: runTag(),
  condition: text({ needed: true, longest: LONGEST_CONDITION, sample: 'A' }),
  date: date({ needed: true }),
  torque: runReadings('torque'),
  'clamp-force': runReadings('force'),
  angle: runReadings('angle'),
  'wrench-reading': runReadings('torque'),
  piece: pieces(),
  again: ofMonths(),
  note: text({ longest: LONGEST_NOTE, sample: 'third pull jerked a little' }),
}

/** What may be read at each turn of the wrench, by its input. */
export const readingLists = ['torque', 'clamp-force', 'angle', 'wrench-reading'] as const

/** Lists that stand beside each other are of the same turns, one by one: all are as long as the first. */
const unevenLists = (given: Readonly<Partial<Record<string, unknown>>>): Fault[] => {
  const lists = [...readingLists, 'piece' as const].flatMap((name) => {
    const list = given[name] as readonly unknown[] | undefined
    return list ? [{ name, count: list.length }] : []
  })
  const [first, ...others] = lists
  return others
    .filter(({ count }) => count !== first?.count)
    .map(({ name, count }) =>
      fault('lists-uneven', name, String(count), { other: first?.name ?? '', count: String(first?.count) }),
    )
}

export const runReadingRecord = defineKeepable({
  kind: 'run-reading',
  inputs: readingInputs,
  // Any one of them makes a reading; the torque is what is asked for where there is none.
  alsoNeeded: (given) => (readingLists.some((name) => given[name] !== undefined) ? [] : (['torque'] as const)),
  check: unevenLists,
  body: ({ run, date: day, condition, torque, angle, piece, again, note, ...rest }) => {
    const lists = { wrench: rest['wrench-reading'], torque, clamp: rest['clamp-force'], angle }
    const turns = Math.max(...Object.values(lists).map((list) => list?.length ?? 0))
    const readings = Array.from({ length: turns }, (_, turn) => {
      const at = (list: typeof torque) => list?.[turn] && measured(list[turn])
      return present({
        wrench: at(lists.wrench),
        torque: at(lists.torque),
        clamp: at(lists.clamp),
        angle: at(lists.angle),
        piece: piece?.[turn],
      })
    })
    return present({ run, date: day, condition, again, readings, note })
  },
})

export const runFinishRecord = defineKeepable({
  kind: 'run-finish',
  inputs: {
    run: runTag(),
    date: date({ needed: true }),
    note: text({ longest: LONGEST_NOTE, sample: 'oil it is, from now on' }),
  },
  body: ({ run, date: day, note }) => present({ run, date: day, note }),
})
