// What happens to a wrench between checks as it is typed: an event, a count of uses; and taking an entry back.
import { echoQuantity } from '../core/quantity-text.ts'
import { torque } from '../questions/input.ts'
import { count, date } from '../questions/input-history.ts'
import { choice } from '../questions/input-words.ts'
import { countsSince, eventKinds, LONGEST_NOTE } from '../register/bodies.ts'
import { eventFaults } from '../register/event-rules.ts'
import { tag, text } from './inputs.ts'
import { defineKeepable, present } from './keepable.ts'

const eventInputs = {
  wrench: tag({ needed: true }),
  what: choice({
    of: eventKinds,
    needed: true,
    spellings: {
      dropped: ['drop', 'fell', 'fallen'],
      overloaded: ['overload', 'overtorqued'],
      'wound-up': ['leftwoundup', 'storedwoundup'],
      repaired: ['repair', 'serviced'],
      adjusted: ['adjust', 'adjustment'],
      lent: ['lentout', 'lend', 'loaned'],
      returned: ['back', 'cameback'],
      lost: ['missing'],
      found: ['foundagain'],
      retired: ['retire', 'scrapped'],
    },
  }),
  date: date({ needed: true }),
  from: date({ example: { metric: '2026-01-01', inch: '2026-01-01' } }),
  setting: torque({ zero: true, example: { metric: '180 N·m', inch: '130 lbf·ft' } }),
  note: text({ longest: LONGEST_NOTE, lines: true, sample: 'off the bench, on its head' }),
}

export const eventRecord = defineKeepable({
  kind: 'event',
  inputs: eventInputs,
  check: ({ setting, ...given }) => eventFaults({ ...given, setting: setting && echoQuantity(setting) }),
  body: ({ setting, ...given }, keep) =>
    present({
      wrench: given.wrench,
      what: given.what,
      date: given.date,
      from: given.from,
      setting: setting && keep('setting', setting),
      note: given.note,
    }),
})

const usesInputs = {
  wrench: tag({ needed: true }),
  date: date({ needed: true }),
  count: count({ needed: true }),
  since: choice({ of: countsSince, needed: true }),
}

export const usesRecord = defineKeepable({
  kind: 'uses',
  inputs: usesInputs,
  body: (given) => ({ wrench: given.wrench, date: given.date, count: given.count.value, since: given.since }),
})

export const withdrawalRecord = defineKeepable({ kind: 'withdrawal', inputs: {}, body: () => ({}) })
